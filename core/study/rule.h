// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <string_view>

/// The screening rules by name: what a run can be discarded for, and what limits belong to.
/// (Method, section 9.)
namespace bothways::core {

enum class Rule {
    accessoryChange,
    accessoryTimer,
    overspeed,
    loadLost,
    driveSlip,
    outputDrop,
    settingMismatch,
    settingChanged,
    vibration,
    roadSpeed,
    interrupted,
    notCruising,
    stretch,
    passingTraffic,
    sensorLost,
    traceEndsEarly,
    batteryBalance,
    warmingUp,
    sameRunTwice,
    adjusted
};

enum class Grade { note, doubtful, spoils };

/// "accessory_change", ...: the name in files, JSON, limits, marks and reasons.
[[nodiscard]] std::string_view ruleName(Rule rule);
[[nodiscard]] std::optional<Rule> ruleFromName(std::string_view name);
[[nodiscard]] std::span<const Rule> allRules();
[[nodiscard]] std::string_view gradeName(Grade grade);

} // namespace bothways::core
