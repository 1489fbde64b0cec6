// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/fuel.h"

#include <algorithm>
#include <array>
#include <ranges>

namespace bothways::core {
namespace {

constexpr std::array<std::string_view, 4> kFuelNames = {"petrol", "e10", "diesel", "electric"};

} // namespace

std::string_view fuelName(Fuel fuel)
{
    return kFuelNames[static_cast<std::size_t>(fuel)];
}

std::optional<Fuel> fuelFromName(std::string_view name)
{
    const std::string wanted = inSmallLetters(name);
    const auto at = std::find(kFuelNames.begin(), kFuelNames.end(), wanted);
    return at == kFuelNames.end() ? std::nullopt
                                  : std::optional(static_cast<Fuel>(at - kFuelNames.begin()));
}

std::optional<bool> runsAreElectric(std::span<const Run> runs)
{
    std::size_t with[2] = {0, 0}, electric[2] = {0, 0}; // of the discarded, of the counted
    for (const Run& run : runs) {
        if (!run.consumption)
            continue;
        const std::size_t which = run.counted() ? 1 : 0;
        ++with[which];
        if (run.consumption->unit == ConsumptionUnit::kwhPer100km)
            ++electric[which];
    }
    for (const std::size_t which : {std::size_t{1}, std::size_t{0}})
        if (with[which] > 0)
            return electric[which] == with[which];
    return std::nullopt;
}

bool isElectric(const Study& study)
{
    return runsAreElectric(study.runs).value_or(study.properties.fuel == Fuel::electric);
}

std::optional<ConsumptionUnit> lastUnit(std::span<const Run> runs)
{
    for (const Run& run : runs | std::views::reverse)
        if (run.consumption)
            return run.consumption->unit;
    return std::nullopt;
}

Fuel fuelOf(const Study& study)
{
    if (isElectric(study))
        return Fuel::electric;
    return study.properties.fuel == Fuel::electric ? Fuel::petrol : study.properties.fuel;
}

Outcome checkFuel(const Study& study, Fuel chosen)
{
    const auto electric = runsAreElectric(study.runs);
    if (!electric || *electric == (chosen == Fuel::electric))
        return Done{};
    return Error{ErrorCode::wrongUse,
                 *electric ? "the consumption of the runs is in kWh/100 km; the one fuel that fits "
                             "is electric"_t
                           : "the consumption of the runs is that of a fuel; electric is for "
                             "kWh/100 km"_t,
                 {}};
}

} // namespace bothways::core
