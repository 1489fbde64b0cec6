// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

namespace bothways::core {

struct ShapiroWilk {
    double w = 1.0; ///< in (0, 1]; near 1: the values lie like normal ones
    double p = 1.0; ///< chance of a w as small as this, or smaller, when they are normal
};

/// Shapiro-Wilk test of normality.
///
/// W is the squared correlation of the ordered values with Royston's approximate normal scores; p
/// comes from his normalising transformation of ln(1 - W) (exact for n = 3).
///
/// @param values  in any order
/// @return  nothing for n < 3 or n > 5000, values that are not finite, or all alike
///
/// Accuracy: W to 1e-13; p as good as the approximation itself (some 1e-3 relative), and equal to
/// that of other programs with the same algorithm to 1e-9.
/// Source: P. Royston, "Remark AS R94: a remark on algorithm AS 181: the W-test for normality",
/// Applied Statistics 44 (1995) 547-551. Checked: tests/published/shapiro_wilk_test.cpp.
[[nodiscard]] std::optional<ShapiroWilk> shapiroWilk(std::span<const double> values);

} // namespace bothways::core
