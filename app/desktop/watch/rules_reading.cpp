// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/rules_reading.h"

#include "core/study/parts.h"

#include <algorithm>

namespace bothways::app {
namespace {

using core::Rule;

/// A rule needs one of `any` for each of its lines. (Method, section 9: the table of the rules.)
struct Need {
    Rule rule;
    std::vector<std::string_view> any;
};

const std::vector<Need>& needs()
{
    static const std::vector<Need> all{{Rule::accessoryChange, {"accessory_w"}},
                                       {Rule::overspeed, {"rotor_rpm", "generator_rpm"}},
                                       {Rule::loadLost, {"rotor_rpm", "generator_rpm"}},
                                       {Rule::loadLost, {"output_w"}},
                                       {Rule::driveSlip, {"rotor_rpm"}},
                                       {Rule::driveSlip, {"generator_rpm"}},
                                       {Rule::outputDrop, {"output_w"}},
                                       {Rule::settingMismatch, {"setting"}},
                                       {Rule::settingMismatch, {"setting_set"}},
                                       {Rule::settingChanged, {"setting_set"}},
                                       {Rule::vibration, {"vibration_ms2"}},
                                       {Rule::roadSpeed, {"road_speed_kmh"}},
                                       {Rule::interrupted, {"road_speed_kmh"}},
                                       {Rule::notCruising, {"road_speed_kmh"}},
                                       {Rule::stretch, {"distance_m", "lat_deg", "road_speed_kmh"}},
                                       {Rule::passingTraffic, {"wind_ms", "yaw_deg_per_s"}},
                                       {Rule::sensorLost, {"road_speed_kmh"}}};
    return all;
}

} // namespace

std::vector<Rule> rulesReading(std::string_view channel)
{
    const std::string_view base = core::partedName(channel).base;
    std::vector<Rule> rules;
    const auto add = [&](Rule rule) {
        if (std::find(rules.begin(), rules.end(), rule) == rules.end())
            rules.push_back(rule);
    };
    for (const Need& need : needs())
        if (std::find(need.any.begin(), need.any.end(), base) != need.any.end())
            add(need.rule);
    if (base == "lon_deg")
        add(Rule::stretch);
    return rules;
}

std::vector<RuleWithout> rulesWithout(const std::vector<std::string>& channels)
{
    std::vector<RuleWithout> without;
    for (const Need& need : needs()) {
        const bool there = std::any_of(channels.begin(), channels.end(), [&](const auto& name) {
            return std::find(need.any.begin(), need.any.end(), core::partedName(name).base) !=
                   need.any.end();
        });
        const bool said = std::any_of(without.begin(), without.end(),
                                      [&](const auto& one) { return one.rule == need.rule; });
        if (!there && !said)
            without.push_back({need.rule, std::string(need.any.front())});
    }
    return without;
}

} // namespace bothways::app
