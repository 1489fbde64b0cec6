// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "core/study/study.h"

#include <QString>

#include <span>

namespace bothways::app {

/// What a person may write about a run, in driving order: before, on the road, at the end.
enum class RunField {
    number,
    start,
    configuration,
    setting,
    direction,
    batteryStart,
    temperature,
    pressure,
    humidity,
    wind,
    windFrom,
    accessories,
    accessoryOn,
    accessoryLoad,
    marks,
    consumption,
    control,
    distance,
    duration,
    speed,
    output,
    rotor,
    batteryEnd,
    notes
};
[[nodiscard]] std::span<const RunField> allRunFields();

/// One name for object names, tests and faults of storage: the run sheet's column.
[[nodiscard]] QString fieldName(RunField field);
/// "Temperature"; its unit is apart.
[[nodiscard]] QString fieldTitle(RunField field);
/// "°C"; empty where there is none.
[[nodiscard]] QString fieldUnit(RunField field, const UnitsShown& units);
/// What may be written there, for tooltips: "6:40, 6:40:15 or 2026-05-09 6:40".
[[nodiscard]] QString fieldHelp(RunField field);

/// The field as it stands in a cell or an editor; empty where nothing is noted.
[[nodiscard]] QString fieldText(RunField field, const core::Run& run, const UnitsShown& units);

/// Writes what was typed into the run. An empty text takes an optional value away.
/// @param consumptionUnit  of the number, where `field` is consumption
/// @return  what was expected instead, and the run is unchanged; empty when all is well. Whether
///          the run fits its study is for storage::faultsOf() to say.
[[nodiscard]] QString writeField(RunField field, const QString& text, const UnitsShown& units,
                                 core::ConsumptionUnit consumptionUnit, core::Run& run);

/// A time of day as people type it: "6:40", "0640", "06:40:15.5". Microseconds since midnight.
[[nodiscard]] std::optional<std::int64_t> parseClock_us(const QString& text);

} // namespace bothways::app
