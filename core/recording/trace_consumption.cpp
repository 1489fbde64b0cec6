// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/trace_consumption.h"

#include "core/recording/trace_totals.h"
#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace bothways::core {
namespace {

/// Digits after the point of the shortest text that is the same number.
int decimalsOf(double value)
{
    std::array<char, 400> text{};
    const auto result =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    const auto point = std::find(text.data(), result.ptr, '.');
    return point == result.ptr ? 0 : static_cast<int>(result.ptr - point) - 1;
}

} // namespace

std::optional<Consumption> consumptionFromTrace(const Run& run, const RunTrace& trace)
{
    const double length_s = duration_s(run).value_or(trace.last_s());
    const auto fuel = fuelFromTrace(trace, length_s);
    const auto distance_km =
        run.distance_km ? run.distance_km : distanceFromTrace_km(trace, length_s);
    if (!fuel || !distance_km || !(*distance_km > 0.0))
        return std::nullopt;
    const double per100km = 100.0 * fuel->fuel_l / *distance_km;
    if (!std::isfinite(per100km) || !(per100km > 0.0))
        return std::nullopt;
    const bool energy = fuel->channel == "energy_used_kwh" || fuel->channel == "power_kw";
    return Consumption{per100km, energy ? ConsumptionUnit::kwhPer100km : ConsumptionUnit::lPer100km,
                       decimalsOf(per100km), true};
}

int shownDecimals(const Consumption& consumption)
{
    return consumption.from_trace ? std::min(consumption.decimals, 2) : consumption.decimals;
}

ConsumptionTaken takeConsumptionFromTraces(Study& study, const TraceProvider& traces)
{
    ConsumptionTaken result;
    for (Run& run : study.runs) {
        if (!run.counted() || run.consumption)
            continue;
        const auto trace = traces ? traces(run) : nullptr;
        if (trace)
            run.consumption = consumptionFromTrace(run, *trace);
        (run.consumption ? result.taken : result.lacking).push_back(run.number);
    }
    return result;
}

} // namespace bothways::core
