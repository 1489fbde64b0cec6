// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/descriptive.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <limits>
#include <numeric>
#include <span>
#include <utility>
#include <vector>

/// Medians of long series: exact, in time linear in their length, without sorting them.
namespace bothways::core {

/// 1 / the 0.75 quantile of the standard normal distribution, as the method rounds it: makes the
/// median absolute deviation of normal noise its standard deviation.
inline constexpr double kMadToSigma = 1.4826;

/// Median of at(0) ... at(count - 1), all finite: the middle value, or the mean of the middle two.
/// NaN for count 0. `at` must be cheap and always give the same: it is asked two or three times.
///
/// A regular sample of some thousand values brackets the middle; one pass counts what lies below
/// the bracket and collects what lies inside, which holds the median except for unlucky series;
/// those fall back to selection over everything. (The idea is that of Floyd and Rivest 1975.)
template <class At>
[[nodiscard]] double medianOf(std::size_t count, At at);

namespace detail {

/// Mean of the order statistics `low` and `high` (from 0, equal or neighbours); reorders `values`.
[[nodiscard]] double meanOfRanks(std::span<double> values, std::size_t low, std::size_t high);

struct Bracket {
    double low, high;
};
/// Values of the sample around its middle; reorders it.
[[nodiscard]] Bracket bracketOf(std::span<double> sample);

inline constexpr std::size_t kSampleSize = 2048;
inline constexpr std::size_t kSmall = 4 * kSampleSize;

/// The values counted against a bracket.
struct Split {
    std::size_t below = 0, atLow = 0, atHigh = 0; ///< `inside` holds what lies strictly between
    std::vector<double> inside;

    /// The order statistic `rank`, if it is not outside the bracket.
    [[nodiscard]] bool find(std::size_t rank, const Bracket& bracket, double& value);
};

template <class At>
Split split(std::size_t count, const Bracket& bracket, At at)
{
    constexpr std::size_t kBlock = 512;
    Split parts;
    parts.inside.resize(kBlock);
    std::size_t kept = 0;
    for (std::size_t begin = 0; begin < count; begin += kBlock) {
        const std::size_t end = std::min(begin + kBlock, count);
        if (parts.inside.size() < kept + kBlock)
            parts.inside.resize(2 * parts.inside.size());
        std::size_t below = 0, atLow = 0, atHigh = 0;
        double* const inside = parts.inside.data();
        for (std::size_t i = begin; i < end; ++i) {
            const double value = at(i);
            below += value < bracket.low;
            atLow += value == bracket.low;
            atHigh += value == bracket.high;
            inside[kept] = value;
            kept += value > bracket.low && value < bracket.high;
        }
        parts.below += below;
        parts.atLow += atLow;
        parts.atHigh += bracket.high > bracket.low ? atHigh : 0;
    }
    parts.inside.resize(kept);
    return parts;
}

} // namespace detail

template <class At>
double medianOf(std::size_t count, At at)
{
    if (count == 0)
        return std::numeric_limits<double>::quiet_NaN();
    const std::size_t low = (count - 1) / 2;
    const std::size_t high = count / 2;
    if (count >= detail::kSmall) {
        std::array<double, detail::kSampleSize> sample{};
        for (std::size_t i = 0; i < sample.size(); ++i)
            sample[i] = at(i * count / sample.size());
        const detail::Bracket bracket = detail::bracketOf(sample);
        detail::Split parts = detail::split(count, bracket, at);
        double lower = 0.0, upper = 0.0;
        if (parts.find(low, bracket, lower) && parts.find(high, bracket, upper))
            return std::midpoint(lower, upper);
    }
    std::vector<double> all(count);
    for (std::size_t i = 0; i < count; ++i)
        all[i] = at(i);
    return detail::meanOfRanks(all, low, high);
}

} // namespace bothways::core
