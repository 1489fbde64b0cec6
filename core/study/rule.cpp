// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/rule.h"

#include <array>

namespace bothways::core {
namespace {

struct NamedRule {
    Rule rule;
    std::string_view name;
};

// In the order of the method's table, which is also the order of findings that begin together.
constexpr std::array kRules = {NamedRule{Rule::accessoryChange, "accessory_change"},
                               NamedRule{Rule::accessoryTimer, "accessory_timer"},
                               NamedRule{Rule::overspeed, "overspeed"},
                               NamedRule{Rule::loadLost, "load_lost"},
                               NamedRule{Rule::driveSlip, "drive_slip"},
                               NamedRule{Rule::outputDrop, "output_drop"},
                               NamedRule{Rule::settingMismatch, "setting_mismatch"},
                               NamedRule{Rule::settingChanged, "setting_changed"},
                               NamedRule{Rule::vibration, "vibration"},
                               NamedRule{Rule::roadSpeed, "road_speed"},
                               NamedRule{Rule::interrupted, "interrupted"},
                               NamedRule{Rule::notCruising, "not_cruising"},
                               NamedRule{Rule::stretch, "stretch"},
                               NamedRule{Rule::passingTraffic, "passing_traffic"},
                               NamedRule{Rule::sensorLost, "sensor_lost"},
                               NamedRule{Rule::traceEndsEarly, "trace_ends_early"},
                               NamedRule{Rule::batteryBalance, "battery_balance"},
                               NamedRule{Rule::warmingUp, "warming_up"},
                               NamedRule{Rule::sameRunTwice, "same_run_twice"},
                               NamedRule{Rule::adjusted, "adjusted"}};

constexpr auto kRuleValues = [] {
    std::array<Rule, kRules.size()> rules{};
    for (std::size_t i = 0; i < rules.size(); ++i)
        rules[i] = kRules[i].rule;
    return rules;
}();

} // namespace

std::string_view ruleName(Rule rule)
{
    for (const NamedRule& named : kRules)
        if (named.rule == rule)
            return named.name;
    return {};
}

std::optional<Rule> ruleFromName(std::string_view name)
{
    for (const NamedRule& named : kRules)
        if (named.name == name)
            return named.rule;
    return std::nullopt;
}

std::span<const Rule> allRules()
{
    return kRuleValues;
}

std::string_view gradeName(Grade grade)
{
    switch (grade) {
    case Grade::note: return "note";
    case Grade::doubtful: return "doubtful";
    case Grade::spoils: return "spoils";
    }
    return {};
}

} // namespace bothways::core
