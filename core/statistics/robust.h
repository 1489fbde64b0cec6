// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/statistics/descriptive.h"

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

inline constexpr std::size_t kSampleSize = 4096;
inline constexpr std::size_t kSmall = 2 * kSampleSize;

/// The values counted against a bracket.
struct Split {
    std::size_t below = 0;
    std::size_t within = 0;     ///< low <= value <= high
    std::vector<double> inside; ///< those; empty where low = high, as they are all alike

    /// Are the order statistics `low` and `high` within the bracket?
    [[nodiscard]] bool holds(std::size_t low, std::size_t high) const
    {
        return low >= below && high < below + within;
    }
};

template <class At>
Split split(std::size_t count, const Bracket& bracket, At at)
{
    constexpr std::size_t kBlock = 512;
    const double low = bracket.low, high = bracket.high;
    Split parts;
    if (low == high) {
        for (std::size_t i = 0; i < count; ++i) {
            parts.below += at(i) < low;
            parts.within += at(i) == low;
        }
        return parts;
    }
    parts.inside.resize(count / 16 + kBlock);
    std::size_t below = 0, kept = 0;
    for (std::size_t begin = 0; begin < count; begin += kBlock) {
        const std::size_t end = std::min(begin + kBlock, count);
        if (parts.inside.size() < kept + kBlock)
            parts.inside.resize(2 * parts.inside.size());
        double* const inside = parts.inside.data();
        for (std::size_t i = begin; i < end; ++i) {
            const double value = at(i);
            inside[kept] = value; // no branch: overwritten unless it is kept
            kept +=
                static_cast<std::size_t>(value >= low) & static_cast<std::size_t>(value <= high);
            below += value < low;
        }
    }
    parts.below = below;
    parts.within = kept;
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
        if (parts.holds(low, high))
            return parts.inside.empty()
                       ? bracket.low
                       : detail::meanOfRanks(parts.inside, low - parts.below, high - parts.below);
    }
    std::vector<double> all(count);
    for (std::size_t i = 0; i < count; ++i)
        all[i] = at(i);
    return detail::meanOfRanks(all, low, high);
}

} // namespace bothways::core
