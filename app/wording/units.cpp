// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/units.h"

#include "app/wording/numbers.h"
#include "core/study/units.h"

namespace bothways::app::wording {
namespace {

using core::ConsumptionUnit;

ConsumptionUnit consumptionUnit(ShownUnit unit)
{
    switch (unit) {
    case ShownUnit::lPer100km: return ConsumptionUnit::lPer100km;
    case ShownUnit::mpgUs: return ConsumptionUnit::mpgUs;
    case ShownUnit::mpgImp: return ConsumptionUnit::mpgImp;
    case ShownUnit::kmPerL: return ConsumptionUnit::kmPerL;
    }
    return ConsumptionUnit::lPer100km;
}

} // namespace

std::optional<ShownUnit> shownUnitFromName(std::string_view name)
{
    for (const ShownUnit unit :
         {ShownUnit::lPer100km, ShownUnit::mpgUs, ShownUnit::mpgImp, ShownUnit::kmPerL})
        if (core::unitName(consumptionUnit(unit)) == name)
            return unit;
    return std::nullopt;
}

ShownUnit shownUnitOf(const core::Study& study)
{
    for (const core::Run& run : study.runs) {
        if (!run.consumption)
            continue;
        switch (run.consumption->unit) {
        case ConsumptionUnit::mpgUs:
        case ConsumptionUnit::fuelGalUs: return ShownUnit::mpgUs;
        case ConsumptionUnit::mpgImp: return ShownUnit::mpgImp;
        case ConsumptionUnit::kmPerL: return ShownUnit::kmPerL;
        default: return ShownUnit::lPer100km;
        }
    }
    return ShownUnit::lPer100km;
}

std::string unitText(const Language& in, ShownUnit unit, bool electric)
{
    return unitText(in, electric ? ConsumptionUnit::kwhPer100km : consumptionUnit(unit));
}

std::string unitText(const Language& in, ConsumptionUnit unit)
{
    return in.say(core::unitSign(unit));
}

std::string signText(const Language& in, std::string_view sign)
{
    if (sign == "rpm")
        return in.say("rpm"_t);
    if (sign == "L/h")
        return in.say("L/h"_t);
    if (sign == "L")
        return in.say("L##litres"_t);
    return std::string(sign);
}

double shownConsumption(double l_per_100km, ShownUnit unit, bool electric)
{
    return electric ? l_per_100km : core::fromLPer100km(l_per_100km, consumptionUnit(unit));
}

std::string consumptionText(const Language& in, double l_per_100km, ShownUnit unit, int decimals,
                            bool electric)
{
    return grouped(in, shownConsumption(l_per_100km, unit, electric), decimals);
}

std::string speedText(const Language& in, double kmh, const Units& units)
{
    return units.miles ? in.say("{} mph"_t, significant(in, kmh / core::kKmPerMile))
                       : in.say("{} km/h"_t, significant(in, kmh));
}

} // namespace bothways::app::wording
