// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a colour stands for, in the window, in the report, on the run card and in the handbook: one
/// table. A shape says the same as each colour: the baseline is a disc, the device a square, what
/// was discarded is hollow.
///
/// Colours of series are those of Okabe and Ito, "Color Universal Design" (2008), which stay apart
/// with every common kind of colour blindness; on their ground each has a contrast of 3 to 1 or
/// more (WCAG 2.1, 1.4.11).
namespace bothways::app::roles {

struct RoleColour {
    const char* light; ///< "#rrggbb" on white
    const char* night; ///< on a dark ground; the report and the card are always light
};

inline constexpr RoleColour kInk{"#1c2127", "#e8eaed"};      ///< the effect and its intervals, axes
inline constexpr RoleColour kFaintInk{"#5a636e", "#a6aeb8"}; ///< what is said beside
inline constexpr RoleColour kBaseline{"#0072b2", "#56b4e9"};
inline constexpr RoleColour kDevice{"#d55e00", "#e69f00"};
inline constexpr RoleColour kHolds{"#009e73", "#2fc296"}; ///< also the model through the pairs
inline constexpr RoleColour kFails{"#d55e00", "#ff7f2a"};

// Shades behind blocks, as the handbook's pictures have them.
inline constexpr const char* kBaselineShade = "#f0f0f0";
inline constexpr const char* kDeviceShade = "#fbeee5";

} // namespace bothways::app::roles
