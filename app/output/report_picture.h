// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <variant>
#include <vector>

/// A picture of the report as what is on it, so that SVG and paper show the same. Lengths are in
/// units of the picture; y grows downwards.
namespace bothways::app::report {

/// What a mark stands for. Its look is in lookOf(): shape and words say the same as the colour.
enum class Ink {
    axis,
    zero,
    margin,
    interval,
    inner,
    thin,
    fit,
    shadeBaseline,
    shadeDevice,
    baseline,
    device,
    alarm,
    discardedBaseline,
    discardedDevice,
    result
};
inline constexpr Ink kInks[] = {Ink::axis,
                                Ink::zero,
                                Ink::margin,
                                Ink::interval,
                                Ink::inner,
                                Ink::thin,
                                Ink::fit,
                                Ink::shadeBaseline,
                                Ink::shadeDevice,
                                Ink::baseline,
                                Ink::device,
                                Ink::alarm,
                                Ink::discardedBaseline,
                                Ink::discardedDevice,
                                Ink::result};

struct Look {
    const char* name;             ///< the class in the style sheet
    const char* stroke = nullptr; ///< "#rrggbb"; nullptr: none
    double width = 0.0;           ///< of the stroke
    const char* fill = nullptr;   ///< "#rrggbb"; nullptr: none
};
/// Colours are those of role_colours.h.
[[nodiscard]] Look lookOf(Ink ink);
inline constexpr const char* kLabelColour = "#333333";
/// Half of a square, and of a diamond from tip to tip.
inline constexpr double kHalfSquare = 4.5, kHalfDiamond = 6.5;
inline constexpr double kLabelSize = 14.0;

struct Line {
    double x1 = 0.0, y1 = 0.0, x2 = 0.0, y2 = 0.0;
    Ink ink = Ink::axis;
};
struct Box {
    double x = 0.0, y = 0.0, width = 0.0, height = 0.0;
    Ink ink = Ink::axis;
};
enum class Shape { disc, square, diamond };
/// `says` is read by screen readers and shown on hovering.
struct Point {
    double x = 0.0, y = 0.0;
    Shape shape = Shape::disc;
    Ink ink = Ink::axis;
    std::string says;
};
enum class Anchor { start, middle, end };
/// `y` is that of the base line.
struct Words {
    double x = 0.0, y = 0.0;
    Anchor anchor = Anchor::start;
    std::string text;
    bool strong = false;
};
using Mark = std::variant<Line, Box, Point, Words>;

struct Picture {
    double width = 0.0, height = 0.0; ///< 0: there is nothing to show
    std::string title;                ///< what the picture says, in words
    std::vector<Mark> marks;
    bool goes_on = false; ///< an arrowhead points to what is beyond the picture
    [[nodiscard]] bool empty() const { return marks.empty(); }
};

} // namespace bothways::app::report
