// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/rule_channels.h"

#include "core/study/parts.h"

#include <algorithm>

namespace bothways::core {
std::span<const RuleChannels> rulesWithChannels()
{
    static const std::vector<RuleChannels> rules = {
        {Rule::accessoryChange, {{"accessory_w"}}},
        {Rule::overspeed, {{"rotor_rpm"}, {"generator_rpm"}}},
        {Rule::loadLost, {{"rotor_rpm", "output_w"}, {"generator_rpm", "output_w"}}},
        {Rule::driveSlip, {{"rotor_rpm", "generator_rpm"}}},
        {Rule::outputDrop, {{"output_w"}}},
        {Rule::settingMismatch, {{"setting", "setting_set"}}},
        {Rule::settingChanged, {{"setting_set"}}},
        {Rule::vibration, {{"vibration_ms2"}}},
        {Rule::roadSpeed, {{"road_speed_kmh"}}},
        {Rule::interrupted, {{"road_speed_kmh"}}},
        {Rule::notCruising, {{"road_speed_kmh"}}},
        {Rule::stretch, {{"distance_m"}, {"road_speed_kmh"}, {"lat_deg", "lon_deg"}}},
        {Rule::passingTraffic, {{"wind_ms"}, {"yaw_deg_per_s"}}},
    };
    return rules;
}

std::vector<Rule> rulesThatRead(std::string_view channel)
{
    std::vector<Rule> found;
    const std::string_view name = partedName(channel).base;
    for (const RuleChannels& one : rulesWithChannels())
        if (std::any_of(one.ways.begin(), one.ways.end(), [&](const RuleWay& way) {
                return std::find(way.begin(), way.end(), name) != way.end();
            }))
            found.push_back(one.rule);
    return found;
}

bool tellsConsumption(std::string_view channel)
{
    constexpr std::string_view names[] = {"fuel_used_l", "fuel_rate_l_per_h", "energy_used_kwh",
                                          "power_kw"};
    return std::find(std::begin(names), std::end(names), channel) != std::end(names);
}

std::vector<RuleLack> rulesLacking(const std::vector<std::string>& channels)
{
    const auto isThere = [&](std::string_view name) {
        return std::any_of(channels.begin(), channels.end(), [&](const std::string& channel) {
            return partedName(channel).base == name;
        });
    };
    std::vector<RuleLack> lacking;
    for (const RuleChannels& one : rulesWithChannels()) {
        std::vector<std::string> least;
        bool first = true;
        for (const RuleWay& way : one.ways) {
            std::vector<std::string> lacks;
            for (const std::string_view name : way)
                if (!isThere(name))
                    lacks.emplace_back(name);
            if (first || lacks.size() < least.size())
                least = std::move(lacks);
            first = false;
        }
        if (!least.empty())
            lacking.push_back({one.rule, std::move(least)});
    }
    return lacking;
}

} // namespace bothways::core
