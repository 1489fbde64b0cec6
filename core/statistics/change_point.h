// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>

namespace bothways::core {

/// One change of level somewhere in a series, by ranks.
struct ChangePoint {
    std::size_t after =
        0; ///< number of values before the change: the first `after` are the old level
    double statistic = 0.0; ///< U at the change; its size is K
    double p = 1.0;         ///< approximate, at most 1
};

/// Pettitt's test: U_t = sum over i <= t < j of sgn(x_i - x_j); the change is where |U_t| is
/// largest (the first such t); p = 2 exp(-6 K^2/(n^3 + n^2)), K = |U|. U > 0: the values before are
/// larger.
///
/// @param values  in order of time, finite; ties are allowed (mid-ranks)
/// @return  nothing for fewer than two values. Time n log n.
///
/// Source: A. N. Pettitt 1979, A non-parametric approach to the change-point problem, Applied
/// Statistics 28(2):126-135. Checked: tests/core/statistics/change_point_test.cpp (Nile; brute
/// force).
[[nodiscard]] std::optional<ChangePoint> pettittChangePoint(std::span<const double> values);

} // namespace bothways::core
