// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/over_time.h"

#include "core/statistics/robust.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace bothways::core::rules {

std::vector<double> weightsOverTime(std::span<const double> time_s, double longest_s)
{
    std::vector<double> weights(time_s.size(), 0.0);
    for (std::size_t i = 1; i < time_s.size(); ++i) {
        const double way_s = time_s[i] - time_s[i - 1];
        if (way_s > longest_s + kTimeGrace_s)
            continue;
        weights[i - 1] += way_s / 2.0;
        weights[i] += way_s / 2.0;
    }
    if (std::all_of(weights.begin(), weights.end(), [](double weight) { return weight == 0.0; }))
        std::fill(weights.begin(), weights.end(), 1.0);
    return weights;
}

double meanOverTime(const Channel& channel)
{
    const std::vector<double> weights =
        weightsOverTime(channel.time_s(), longestGap_s(channel.interval_s));
    const auto values = channel.value();
    const double sum = std::inner_product(values.begin(), values.end(), weights.begin(), 0.0);
    return sum / std::accumulate(weights.begin(), weights.end(), 0.0);
}

double weightedMedian(std::span<const double> values, std::span<const double> weights)
{
    std::vector<std::size_t> order(values.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return values[a] < values[b]; });
    std::erase_if(order, [&](std::size_t i) { return weights[i] <= 0.0; });
    const double half = std::accumulate(weights.begin(), weights.end(), 0.0) / 2.0;
    double below = 0.0;
    for (std::size_t k = 0; k < order.size(); ++k) {
        below += weights[order[k]];
        if (below > half || k + 1 == order.size())
            return values[order[k]];
        if (below == half)
            return std::midpoint(values[order[k]], values[order[k + 1]]);
    }
    return std::numeric_limits<double>::quiet_NaN(); // no value
}

bool isEven(const Channel& channel)
{
    const auto time_s = channel.time_s();
    for (std::size_t i = 1; i < time_s.size(); ++i)
        if (std::abs(time_s[i] - time_s[i - 1] - channel.interval_s) > kTimeGrace_s)
            return false;
    return true;
}

double medianOverTime(const Channel& channel)
{
    if (isEven(channel))
        return median(channel.value());
    return weightedMedian(channel.value(),
                          weightsOverTime(channel.time_s(), longestGap_s(channel.interval_s)));
}

} // namespace bothways::core::rules
