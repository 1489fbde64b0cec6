// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/outlier.h"

#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>

namespace bothways::core {

std::optional<LargestResidual> largestResidual(std::span<const double> residuals,
                                               std::span<const double> leverage, double df,
                                               double finest)
{
    constexpr double kCarriesAColumn = 1e-9;
    constexpr double kDigitsLost = 1e-11; // of the sum of squares, by the subtraction
    constexpr double kTie = 1e-9;
    if (df < 2.0)
        return std::nullopt;
    double rss = 0.0;
    for (const double e : residuals)
        rss += e * e;
    if (!(rss > 0.0) || !std::isfinite(rss))
        return std::nullopt;
    std::optional<LargestResidual> largest;
    for (std::size_t i = 0; i < residuals.size(); ++i) {
        const double free = 1.0 - leverage[i];
        if (free < kCarriesAColumn)
            continue;
        const double e = residuals[i];
        const double rest = rss - e * e / free;
        const double s = rest > kDigitsLost * rss ? std::sqrt(rest / (df - 1.0)) : finest;
        const double r = e / (s * std::sqrt(free));
        if (!largest || std::abs(r) > std::abs(largest->studentised) * (1.0 + kTie))
            largest = LargestResidual{i, r, 1.0};
    }
    if (largest)
        largest->p = std::min(1.0, static_cast<double>(residuals.size()) *
                                       tTwoSided(largest->studentised, df - 1.0));
    return largest;
}

} // namespace bothways::core
