// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/study/study.h"

#include <optional>
#include <span>
#include <string_view>

/// What the vehicle of a study takes: a fuel by the litre, or kilowatt-hours. Asked here by
/// everyone, so that litres and kilowatt-hours never meet.
namespace bothways::core {

/// "petrol", "e10", "diesel", "electric": as a study's property and an option have it.
[[nodiscard]] std::string_view fuelName(Fuel fuel);
[[nodiscard]] std::optional<Fuel> fuelFromName(std::string_view name);

/// As the units of the runs say: of the counted ones that have a consumption, else of the others.
/// Where both kinds are among them it is a fuel. Nothing: no run says it.
[[nodiscard]] std::optional<bool> runsAreElectric(std::span<const Run> runs);

/// As the runs say, else as the study's property does.
[[nodiscard]] bool isElectric(const Study& study);

/// In which the last run that has a consumption noted it; nothing: no run has one.
[[nodiscard]] std::optional<ConsumptionUnit> lastUnit(std::span<const Run> runs);

/// The property, where the runs do not know better: kWh are electric drive under any property, and
/// litres are petrol where it says electric.
[[nodiscard]] Fuel fuelOf(const Study& study);

/// An Error (wrongUse) where a fuel that somebody chose and the units of the runs contradict each
/// other.
[[nodiscard]] Outcome checkFuel(const Study& study, Fuel chosen);

} // namespace bothways::core
