// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>

/// Descriptions of numbers, few or millions.
namespace bothways::core {

/// Mean and spread, through Boost.Accumulators (recursions of Welford's kind).
struct Moments {
    std::size_t n = 0;
    double mean = 0.0;     ///< 0 without numbers
    double variance = 0.0; ///< divisor n - 1; 0 with fewer than two numbers
    double sd = 0.0;       ///< its root
};
[[nodiscard]] Moments moments(std::span<const double> values);

/// The exact median: the middle number, or the mean of the middle two. NaN without numbers. Time
/// linear in their count (core/statistics/robust.h).
[[nodiscard]] double median(std::span<const double> values);

/// Median of |value - median|, as it is (not scaled). NaN without numbers.
[[nodiscard]] double medianAbsoluteDeviation(std::span<const double> values);
/// The same around another centre.
[[nodiscard]] double medianAbsoluteDeviation(std::span<const double> values, double centre);

} // namespace bothways::core
