// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"

#include <cmath>
#include <cstdint>
#include <optional>
#include <string_view>

/// Conversions of what a dashboard shows. Every factor is computed from definitions that are exact:
/// US gallon 3.785411784 L (231 cubic inches), imperial gallon 4.54609 L, mile 1609.344 m.
/// Source: NIST SP 811 (2008), appendix B. Checked: tests/core/study/units_test.cpp.
namespace bothways::core {

/// Microseconds: what an Instant counts.
inline constexpr std::int64_t kSecond_us = 1'000'000;
inline constexpr double kUsPerHour = 3.6e9;

inline constexpr double kLitresPerUsGallon = 3.785411784;
inline constexpr double kLitresPerImperialGallon = 4.54609;
inline constexpr double kKmPerMile = 1.609344;

/// c [L/100 km] = K / mpg. 235.214583... (US) and 282.480936... (imperial).
inline constexpr double kLPer100kmTimesMpgUs = 100.0 * kLitresPerUsGallon / kKmPerMile;
inline constexpr double kLPer100kmTimesMpgImp = 100.0 * kLitresPerImperialGallon / kKmPerMile;

/// The only doors between a difference of natural logs and a per cent change.
[[nodiscard]] inline double pctFromLog(double log)
{
    return 100.0 * std::expm1(log);
}
/// @param pct  > -100
[[nodiscard]] inline double logFromPct(double pct)
{
    return std::log1p(pct / 100.0);
}

/// How a consumption was given. The names of the run sheet's columns are those of unitName().
enum class ConsumptionUnit { lPer100km, mpgUs, mpgImp, kmPerL, kwhPer100km, fuelL, fuelGalUs };
inline constexpr ConsumptionUnit kConsumptionUnits[] = {
    ConsumptionUnit::lPer100km, ConsumptionUnit::mpgUs,       ConsumptionUnit::mpgImp,
    ConsumptionUnit::kmPerL,    ConsumptionUnit::kwhPer100km, ConsumptionUnit::fuelL,
    ConsumptionUnit::fuelGalUs};

/// "l_per_100km", "mpg_us", ... : the column and option name.
[[nodiscard]] std::string_view unitName(ConsumptionUnit unit);
[[nodiscard]] std::optional<ConsumptionUnit> unitFromName(std::string_view name);

/// "L/100 km", "mpg (US)", ... : as people read it.
[[nodiscard]] Text<0> unitSign(ConsumptionUnit unit);

/// True for the two that are an amount of fuel and so need a distance.
[[nodiscard]] constexpr bool needsDistance(ConsumptionUnit unit)
{
    return unit == ConsumptionUnit::fuelL || unit == ConsumptionUnit::fuelGalUs;
}

/// @param value       in `unit`, > 0
/// @param distance_km > 0; used only where needsDistance(unit)
/// @return L/100 km (kWh/100 km for kwhPer100km)
[[nodiscard]] double toLPer100km(double value, ConsumptionUnit unit, double distance_km = 0.0);
/// The inverse of toLPer100km.
[[nodiscard]] double fromLPer100km(double l_per_100km, ConsumptionUnit unit,
                                   double distance_km = 0.0);

} // namespace bothways::core
