// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/study/study.h"

#include <optional>
#include <string>
#include <string_view>

/// Units in which a person reads. Files and JSON never use them.
namespace bothways::app::wording {

enum class ShownUnit { lPer100km, mpgUs, mpgImp, kmPerL };

/// All that a sentence names in a unit; as they are here, it is what the command line says.
struct Units {
    ShownUnit consumption = ShownUnit::lPer100km;
    bool miles = false; ///< and mph, for wind, too
    bool fahrenheit = false;
    Units() = default;
    Units(ShownUnit unit) : consumption(unit) {}
    Units(ShownUnit unit, bool inMiles, bool inFahrenheit)
        : consumption(unit), miles(inMiles), fahrenheit(inFahrenheit)
    {
    }
};

/// "l_per_100km", "mpg_us", "mpg_imp", "km_per_l": as the option --unit takes them.
[[nodiscard]] std::optional<ShownUnit> shownUnitFromName(std::string_view name);
/// What the study's own runs are given in, as near as a shown unit comes: that of the first run.
[[nodiscard]] ShownUnit shownUnitOf(const core::Study& study);
/// "L/100 km", "mpg (US)", ...; "kWh/100 km" with electric drive.
[[nodiscard]] std::string unitText(const Language& in, ShownUnit unit, bool electric);
/// The same for whatever a run was given in: "L" and "gal (US)", too.
[[nodiscard]] std::string unitText(const Language& in, core::ConsumptionUnit unit);
/// A unit's sign as files and limits have it ("rpm", "L/h"), as the reader writes it.
[[nodiscard]] std::string signText(const Language& in, std::string_view sign);

[[nodiscard]] double shownConsumption(double l_per_100km, ShownUnit unit, bool electric);
/// Consumption in a shown unit, without the unit's name.
[[nodiscard]] std::string consumptionText(const Language& in, double l_per_100km, ShownUnit unit,
                                          int decimals, bool electric);
/// "12 km/h", "12 mph": two significant digits.
[[nodiscard]] std::string speedText(const Language& in, double kmh, const Units& units = {});

} // namespace bothways::app::wording
