// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/change_point.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

namespace bothways::core {
namespace {

/// Twice the mid-rank of each value (from 2 for the smallest), so that ties stay whole numbers.
std::vector<long long> doubledRanks(std::span<const double> values)
{
    std::vector<std::size_t> order(values.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return values[a] < values[b]; });
    std::vector<long long> ranks(values.size());
    for (std::size_t first = 0; first < order.size();) {
        std::size_t last = first;
        while (last + 1 < order.size() && values[order[last + 1]] == values[order[first]])
            ++last;
        for (std::size_t i = first; i <= last; ++i)
            ranks[order[i]] = static_cast<long long>(first + last) + 2;
        first = last + 1;
    }
    return ranks;
}

} // namespace

std::optional<ChangePoint> pettittChangePoint(std::span<const double> values)
{
    if (values.size() < 2)
        return std::nullopt;
    const std::vector<long long> ranks = doubledRanks(values);
    const auto count = static_cast<long long>(values.size());
    ChangePoint best;
    long long sum = 0, u_best = 0;
    for (std::size_t t = 1; t < values.size(); ++t) {
        sum += ranks[t - 1];
        // U_t = 2 (sum of the first t ranks) - t (n + 1), here with doubled ranks.
        const long long u = sum - static_cast<long long>(t) * (count + 1);
        if (t == 1 || std::abs(u) > std::abs(u_best)) {
            u_best = u;
            best.after = t;
        }
    }
    const auto n = static_cast<double>(count);
    const auto k = static_cast<double>(u_best);
    best.statistic = k;
    best.p = std::min(1.0, 2.0 * std::exp(-6.0 * k * k / (n * n * n + n * n)));
    return best;
}

} // namespace bothways::core
