// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"

#include <QColor>
#include <QPalette>

class QApplication;

/// Colours and shapes of the program, light and dark.
///
/// Series colours are those of Okabe and Ito, "Color Universal Design" (2008, revised from 2002),
/// which stay apart with every common kind of colour blindness. Colour never stands alone: the
/// baseline is a disc, the device a square, states have a shape and a word.
namespace bothways::app {

/// Of Okabe and Ito 2008, those that are used here.
namespace okabe_ito {
inline constexpr QRgb kOrange = 0xffe69f00;
inline constexpr QRgb kSkyBlue = 0xff56b4e9;
inline constexpr QRgb kBlue = 0xff0072b2;
inline constexpr QRgb kVermilion = 0xffd55e00;
} // namespace okabe_ito

struct Theme {
    bool dark = false;
    QColor window;                      ///< behind everything
    QColor paper;                       ///< behind plots, tables and text
    QColor ink;                         ///< text and axes
    QColor faint_ink;                   ///< secondary text; at least 4.5 to 1 on paper
    QColor grid;                        ///< grid lines and frames
    QColor baseline;                    ///< configuration A
    QColor device;                      ///< configuration B
    QColor result;                      ///< the effect and its intervals
    QColor margin;                      ///< band of what is too small to care about
    QColor interval;                    ///< band of an interval
    QColor block_tint;                  ///< shade behind blocks with the device
    QColor holds, note, fails, unknown; ///< states of checks
    QColor selection;

    [[nodiscard]] static Theme light();
    [[nodiscard]] static Theme night();
    /// The one that fits a palette: night where its window is darker than its text.
    [[nodiscard]] static Theme of(const QPalette& palette);

    [[nodiscard]] QPalette palette() const;
    [[nodiscard]] const QColor& series(bool isDevice) const { return isDevice ? device : baseline; }
    [[nodiscard]] const QColor& state(core::CheckState state) const;
    /// Runs that are laid over one another keep the colour of their configuration; the n-th of one
    /// configuration is told apart by its dashes.
    [[nodiscard]] static Qt::PenStyle dashes(int n);
    friend bool operator==(const Theme&, const Theme&) = default;
};

/// Contrast of two opaque colours, 1 to 21. Source: W3C, WCAG 2.1, "contrast ratio".
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

} // namespace bothways::app
