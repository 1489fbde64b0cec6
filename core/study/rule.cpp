// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/rule.h"

#include "core/base/named_values.h"

#include <array>

namespace bothways::core {
namespace {

struct NamedRule {
    Rule value;
    std::string_view name; ///< in files
    Text<0> text;          ///< for people
};

// In the order of the method's table, which is also the order of findings that begin together.
constexpr std::array kRules = {
    NamedRule{Rule::accessoryChange, "accessory_change", "accessory load changed"_t},
    NamedRule{Rule::accessoryTimer, "accessory_timer", "timed accessory dropped out"_t},
    NamedRule{Rule::overspeed, "overspeed", "over-speed"_t},
    NamedRule{Rule::loadLost, "load_lost", "load lost"_t},
    NamedRule{Rule::driveSlip, "drive_slip", "drive slipped"_t},
    NamedRule{Rule::outputDrop, "output_drop", "output dropped"_t},
    NamedRule{Rule::settingMismatch, "setting_mismatch", "setting not as set"_t},
    NamedRule{Rule::settingChanged, "setting_changed", "setting changed"_t},
    NamedRule{Rule::vibration, "vibration", "vibration"_t},
    NamedRule{Rule::roadSpeed, "road_speed", "road speed off target"_t},
    NamedRule{Rule::interrupted, "interrupted", "run interrupted"_t},
    NamedRule{Rule::notCruising, "not_cruising", "not yet cruising"_t},
    NamedRule{Rule::stretch, "stretch", "wrong distance"_t},
    NamedRule{Rule::passingTraffic, "passing_traffic", "passing traffic"_t},
    NamedRule{Rule::sensorLost, "sensor_lost", "sensor lost"_t},
    NamedRule{Rule::traceEndsEarly, "trace_ends_early", "recording ends early"_t},
    NamedRule{Rule::batteryBalance, "battery_balance", "battery not balanced"_t},
    NamedRule{Rule::warmingUp, "warming_up", "warming up"_t},
    NamedRule{Rule::sameRunTwice, "same_run_twice", "same run twice"_t},
    NamedRule{Rule::adjusted, "adjusted", "adjusted during the run"_t}};

constexpr auto kRuleValues = [] {
    std::array<Rule, kRules.size()> rules{};
    for (std::size_t i = 0; i < rules.size(); ++i)
        rules[i] = kRules[i].value;
    return rules;
}();

static_assert([] {
    for (std::size_t i = 0; i < kRules.size(); ++i)
        if (kRules[i].value != static_cast<Rule>(i))
            return false;
    return kRules.size() == static_cast<std::size_t>(Rule::adjusted) + 1;
}());

} // namespace

std::string_view ruleName(Rule rule)
{
    return kRules[static_cast<std::size_t>(rule)].name;
}

std::optional<Rule> ruleFromName(std::string_view name)
{
    return valueIn(kRules, name);
}

Text<0> ruleText(Rule rule)
{
    return kRules[static_cast<std::size_t>(rule)].text;
}

Value reasonValue(std::string_view reason)
{
    if (const auto rule = ruleFromName(reason))
        return ruleText(*rule);
    return reason == "other" ? Value(kOtherReason) : Value(reason);
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
