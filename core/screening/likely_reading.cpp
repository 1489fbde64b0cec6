// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/likely_reading.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace bothways::core {

std::optional<Consumption> likelyReading(const Run& run, double usual_l_per_100km)
{
    if (!run.consumption || !(usual_l_per_100km > 0.0))
        return std::nullopt;
    const auto fits = [&](const Consumption& reading) {
        constexpr double kFits = 0.25;
        Run other = run;
        other.consumption = reading;
        const auto c = lPer100km(other);
        return c && *c > 0.0 && std::abs(std::log(*c / usual_l_per_100km)) < kFits;
    };
    for (const auto& [factor, digits] :
         {std::pair{0.1, 1}, std::pair{0.01, 2}, std::pair{10.0, -1}, std::pair{100.0, -2}}) {
        Consumption reading = *run.consumption;
        reading.value *= factor;
        reading.decimals = std::max(0, reading.decimals + digits);
        if (fits(reading))
            return reading;
    }
    for (const ConsumptionUnit unit : kConsumptionUnits) {
        Consumption reading = *run.consumption;
        reading.unit = unit;
        const bool energy = unit == ConsumptionUnit::kwhPer100km ||
                            run.consumption->unit == ConsumptionUnit::kwhPer100km;
        if (unit != run.consumption->unit && !energy && fits(reading))
            return reading;
    }
    return std::nullopt;
}

} // namespace bothways::core
