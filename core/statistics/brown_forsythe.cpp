// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/brown_forsythe.h"

#include "core/statistics/descriptive.h"
#include "core/statistics/distributions.h"

#include <cmath>
#include <vector>

namespace bothways::core {
namespace {

constexpr std::size_t kFewest = 3;

Moments deviationsOf(std::span<const double> values)
{
    const double middle = median(values);
    std::vector<double> deviations;
    for (const double value : values)
        deviations.push_back(std::abs(value - middle));
    return moments(deviations);
}

} // namespace

std::optional<BrownForsythe> brownForsythe(std::span<const double> a, std::span<const double> b)
{
    if (a.size() < kFewest || b.size() < kFewest)
        return std::nullopt;
    const Moments first = deviationsOf(a), second = deviationsOf(b);
    const double na = static_cast<double>(a.size()), nb = static_cast<double>(b.size());
    const double df = na + nb - 2.0;
    const double within = ((na - 1.0) * first.variance + (nb - 1.0) * second.variance) / df;
    const double step = first.mean - second.mean;
    const double f = step * step * na * nb / (na + nb) / within;
    if (!std::isfinite(f) || !(std::sqrt(within) > 1e-13 * (first.mean + second.mean)))
        return std::nullopt;
    return BrownForsythe{f, fUpper(f, 1.0, df)};
}

} // namespace bothways::core
