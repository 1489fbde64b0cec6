// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/units.h"

#include <cassert>

namespace bothways::core {

std::string_view unitName(ConsumptionUnit unit)
{
    switch (unit) {
    case ConsumptionUnit::lPer100km: return "l_per_100km";
    case ConsumptionUnit::mpgUs: return "mpg_us";
    case ConsumptionUnit::mpgImp: return "mpg_imp";
    case ConsumptionUnit::kmPerL: return "km_per_l";
    case ConsumptionUnit::kwhPer100km: return "kwh_per_100km";
    case ConsumptionUnit::fuelL: return "fuel_l";
    case ConsumptionUnit::fuelGalUs: return "fuel_gal_us";
    }
    return {};
}

Text<0> unitSign(ConsumptionUnit unit)
{
    switch (unit) {
    case ConsumptionUnit::lPer100km: return "L/100 km"_t;
    case ConsumptionUnit::mpgUs: return "mpg (US)"_t;
    case ConsumptionUnit::mpgImp: return "mpg (imperial)"_t;
    case ConsumptionUnit::kmPerL: return "km/L"_t;
    case ConsumptionUnit::kwhPer100km: return "kWh/100 km"_t;
    case ConsumptionUnit::fuelL: return "L##litres"_t;
    case ConsumptionUnit::fuelGalUs: return "gal (US)"_t;
    }
    return "L/100 km"_t;
}

std::optional<ConsumptionUnit> unitFromName(std::string_view name)
{
    for (const ConsumptionUnit unit : kConsumptionUnits)
        if (unitName(unit) == name)
            return unit;
    return std::nullopt;
}

double toLPer100km(double value, ConsumptionUnit unit, double distance_km)
{
    assert(value > 0.0);
    assert(!needsDistance(unit) || distance_km > 0.0);
    switch (unit) {
    case ConsumptionUnit::lPer100km:
    case ConsumptionUnit::kwhPer100km: return value;
    case ConsumptionUnit::mpgUs: return kLPer100kmTimesMpgUs / value;
    case ConsumptionUnit::mpgImp: return kLPer100kmTimesMpgImp / value;
    case ConsumptionUnit::kmPerL: return 100.0 / value;
    case ConsumptionUnit::fuelL: return 100.0 * value / distance_km;
    case ConsumptionUnit::fuelGalUs: return 100.0 * kLitresPerUsGallon * value / distance_km;
    }
    return value;
}

double fromLPer100km(double l_per_100km, ConsumptionUnit unit, double distance_km)
{
    switch (unit) {
    case ConsumptionUnit::fuelL: return l_per_100km * distance_km / 100.0;
    case ConsumptionUnit::fuelGalUs:
        return l_per_100km * distance_km / (100.0 * kLitresPerUsGallon);
    default: return toLPer100km(l_per_100km, unit, distance_km); // the others are their own inverse
    }
}

} // namespace bothways::core
