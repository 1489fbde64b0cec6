// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/descriptive.h"

#include <boost/accumulators/accumulators.hpp>
#include <boost/accumulators/statistics/count.hpp>
#include <boost/accumulators/statistics/mean.hpp>
#include <boost/accumulators/statistics/stats.hpp>
#include <boost/accumulators/statistics/variance.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace bothways::core {
namespace {

namespace ba = boost::accumulators;

double medianOf(std::vector<double>& values)
{
    if (values.empty())
        return std::numeric_limits<double>::quiet_NaN();
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1)
        return *middle;
    const double below = *std::max_element(values.begin(), middle);
    return below + (*middle - below) / 2.0;
}

} // namespace

Moments moments(std::span<const double> values)
{
    Moments result;
    result.n = values.size();
    if (values.empty())
        return result;
    // `immediate_mean` and `variance` are the recursive forms; `lazy_variance` (mean of squares
    // less square of the mean) would lose every digit to a large mean. The numbers are taken from
    // the first one, exactly as far as they are near it, so that the recursion rounds small ones.
    ba::accumulator_set<double,
                        ba::stats<ba::tag::count, ba::tag::immediate_mean, ba::tag::variance>>
        set;
    const double origin = values.front();
    for (const double value : values)
        set(value - origin);
    const auto n = static_cast<double>(result.n);
    result.mean = origin + ba::mean(set);
    if (result.n > 1)
        result.variance = ba::variance(set) * n / (n - 1.0); // Boost's divisor is n
    result.sd = std::sqrt(result.variance);
    return result;
}

double median(std::span<const double> values)
{
    std::vector<double> copy(values.begin(), values.end());
    return medianOf(copy);
}

double medianAbsoluteDeviation(std::span<const double> values)
{
    std::vector<double> copy(values.begin(), values.end());
    const double centre = medianOf(copy);
    for (double& value : copy)
        value = std::abs(value - centre);
    return medianOf(copy);
}

} // namespace bothways::core
