// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/trace_pyramid.h"

#include <algorithm>
#include <cassert>
#include <limits>

namespace bothways::core {
namespace {

constexpr std::size_t kBlock = 64;
constexpr std::size_t kFan = 8;

constexpr MinMax kEmpty{std::numeric_limits<double>::infinity(),
                        -std::numeric_limits<double>::infinity()};

// comparisons with not-a-number are false, so it changes neither
void take(MinMax& sum, double value)
{
    sum.minimum = value < sum.minimum ? value : sum.minimum;
    sum.maximum = value > sum.maximum ? value : sum.maximum;
}

void take(MinMax& sum, const MinMax& part)
{
    sum.minimum = std::min(sum.minimum, part.minimum);
    sum.maximum = std::max(sum.maximum, part.maximum);
}

std::vector<MinMax> blocksOf(std::span<const double> values)
{
    std::vector<MinMax> blocks((values.size() + kBlock - 1) / kBlock, kEmpty);
    for (std::size_t block = 0; block < blocks.size(); ++block) {
        MinMax sum = kEmpty;
        const std::size_t end = std::min(values.size(), (block + 1) * kBlock);
        for (std::size_t i = block * kBlock; i < end; ++i)
            take(sum, values[i]);
        blocks[block] = sum;
    }
    return blocks;
}

std::vector<MinMax> coarser(const std::vector<MinMax>& fine)
{
    std::vector<MinMax> coarse((fine.size() + kFan - 1) / kFan, kEmpty);
    for (std::size_t i = 0; i < fine.size(); ++i)
        take(coarse[i / kFan], fine[i]);
    return coarse;
}

/// First index in [begin, end) whose place is not below `at`, sought from `guess` in steps that
/// double, then halves. Columns of equal width mostly hold as many samples as the one before, so a
/// guess is a few samples off, and hardly any memory is touched.
std::size_t firstNotBelow(std::span<const double> places, std::size_t begin, std::size_t end,
                          std::size_t guess, double at)
{
    std::size_t low = begin, high = end; // the answer is in [low, high]
    std::size_t step = 1;
    if (guess < end && places[guess] < at) {
        low = guess + 1;
        while (low + step < end && places[low + step] < at) {
            low += step + 1;
            step *= 2;
        }
        high = std::min(end, low + step);
    } else {
        high = std::min(guess, end);
        while (high - begin > step && !(places[high - step] < at)) {
            high -= step;
            step *= 2;
        }
        low = high - begin > step ? high - step : begin;
    }
    const auto from = places.begin() + static_cast<std::ptrdiff_t>(low);
    const auto to = places.begin() + static_cast<std::ptrdiff_t>(high);
    return static_cast<std::size_t>(std::lower_bound(from, to, at) - places.begin());
}

} // namespace

TracePyramid::TracePyramid(std::span<const double> values) : m_values(values)
{
    if (values.empty())
        return;
    m_levels.push_back(blocksOf(values));
    while (m_levels.back().size() > kFan)
        m_levels.push_back(coarser(m_levels.back()));
}

std::optional<MinMax> TracePyramid::over(std::size_t first, std::size_t last) const
{
    assert(last <= m_values.size());
    MinMax sum = kEmpty;
    while (first < last && first % kBlock != 0)
        take(sum, m_values[first++]);
    while (first < last && last % kBlock != 0)
        take(sum, m_values[--last]);
    std::size_t from = first / kBlock;
    std::size_t to = last / kBlock;
    for (std::size_t level = 0; from < to; ++level) {
        const std::vector<MinMax>& blocks = m_levels[level];
        const bool top = level + 1 == m_levels.size();
        while (from < to && (top || from % kFan != 0))
            take(sum, blocks[from++]);
        while (from < to && to % kFan != 0)
            take(sum, blocks[--to]);
        from /= kFan;
        to /= kFan;
    }
    if (sum.minimum > sum.maximum)
        return std::nullopt;
    return sum;
}

SampleRange samplesBetween(std::span<const double> places, double from, double to)
{
    const auto first = std::lower_bound(places.begin(), places.end(), from);
    const auto last = std::lower_bound(first, places.end(), to);
    return {static_cast<std::size_t>(first - places.begin()),
            static_cast<std::size_t>(last - places.begin())};
}

std::vector<PlacedColumn> columnsOf(std::span<const double> places, const TracePyramid& pyramid,
                                    double from, double to, std::size_t count)
{
    std::vector<PlacedColumn> columns;
    if (count == 0 || !(from < to))
        return columns;
    columns.reserve(count);
    const SampleRange all = samplesBetween(places, from, to);
    std::size_t first = all.first;
    std::size_t inOne = (all.last - all.first) / count;
    for (std::size_t column = 0; column < count && first < all.last; ++column) {
        // the last bound is `to` itself, whatever the rounding
        const double bound =
            from + (to - from) * (static_cast<double>(column + 1) / static_cast<double>(count));
        const std::size_t last = column + 1 == count
                                     ? all.last
                                     : firstNotBelow(places, first, all.last, first + inOne, bound);
        if (last > first)
            if (const auto extent = pyramid.over(first, last))
                columns.push_back({column, {first, last, extent->minimum, extent->maximum}});
        inOne = last - first;
        first = last;
    }
    return columns;
}

} // namespace bothways::core
