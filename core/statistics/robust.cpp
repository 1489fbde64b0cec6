// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/robust.h"

#include <cmath>
#include <numeric>

namespace bothways::core::detail {

double meanOfRanks(std::span<double> values, std::size_t low, std::size_t high)
{
    const auto upper = values.begin() + static_cast<std::ptrdiff_t>(high);
    std::nth_element(values.begin(), upper, values.end());
    if (low == high)
        return *upper;
    const double lower = *std::max_element(values.begin(), upper);
    return std::midpoint(lower, *upper);
}

Bracket bracketOf(std::span<double> sample)
{
    // Three standard deviations of a sample median's rank, sqrt(n)/2, either side.
    const std::size_t middle = sample.size() / 2;
    const auto reach =
        static_cast<std::size_t>(1.5 * std::sqrt(static_cast<double>(sample.size())));
    std::sort(sample.begin(), sample.end());
    return {sample[middle - reach], sample[middle + reach]};
}

} // namespace bothways::core::detail
