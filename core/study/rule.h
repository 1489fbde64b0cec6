// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"

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
/// What people read in its place: "over-speed".
[[nodiscard]] Text<0> ruleText(Rule rule);
/// Why a run is discarded, for people: its rule's text, "other", else as it was given.
[[nodiscard]] Value reasonValue(std::string_view reason);
inline constexpr Text<0> kOtherReason = "other##reason"_t;
[[nodiscard]] std::span<const Rule> allRules();
[[nodiscard]] std::string_view gradeName(Grade grade);

} // namespace bothways::core
