// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

namespace bothways::core {

struct BrownForsythe {
    double f = 0.0; ///< on 1 and n - 2 degrees of freedom
    double p = 1.0;
};

/// Do two groups scatter alike? F of the one-way analysis of variance of |value - median of its
/// group|.
///
/// @return  nothing when a group has fewer than 3 values, or when all deviations inside each group
///          are the same
/// Source: M. B. Brown, A. B. Forsythe, "Robust tests for the equality of variances", JASA 69
/// (1974) 364-367. Checked: tests/core/statistics/brown_forsythe_test.cpp.
[[nodiscard]] std::optional<BrownForsythe> brownForsythe(std::span<const double> a,
                                                         std::span<const double> b);

} // namespace bothways::core
