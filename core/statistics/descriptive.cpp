// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/descriptive.h"

#include "core/statistics/robust.h"

#include <boost/accumulators/accumulators.hpp>
#include <boost/accumulators/statistics/count.hpp>
#include <boost/accumulators/statistics/mean.hpp>
#include <boost/accumulators/statistics/stats.hpp>
#include <boost/accumulators/statistics/variance.hpp>

#include <cmath>

namespace bothways::core {
namespace {

namespace ba = boost::accumulators;

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
    return medianOf(values.size(), [&](std::size_t i) { return values[i]; });
}

double medianAbsoluteDeviation(std::span<const double> values)
{
    return medianAbsoluteDeviation(values, median(values));
}

double medianAbsoluteDeviation(std::span<const double> values, double centre)
{
    return medianOf(values.size(), [&](std::size_t i) { return std::abs(values[i] - centre); });
}

} // namespace bothways::core
