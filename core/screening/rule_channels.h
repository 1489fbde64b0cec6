// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/rule.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Which channels of a recording each rule of screening reads: for whoever wires a car, and asks
/// what a sensor is good for. (Method, section 9.)
namespace bothways::core {

/// Channels that a rule needs together; one of several ways is enough.
using RuleWay = std::vector<std::string_view>;
struct RuleChannels {
    Rule rule;
    std::vector<RuleWay> ways;
};
/// Rules that read a recording. (sensor_lost and trace_ends_early look at every channel: they are
/// not among these.)
[[nodiscard]] std::span<const RuleChannels> rulesWithChannels();

/// @param channel  with its part ("rotor_rpm@left") or without
[[nodiscard]] std::vector<Rule> rulesThatRead(std::string_view channel);
/// Whether the consumption of a run can be taken from it.
[[nodiscard]] bool tellsConsumption(std::string_view channel);

struct RuleLack {
    Rule rule;
    std::vector<std::string> channels; ///< of the way that lacks fewest
    friend bool operator==(const RuleLack&, const RuleLack&) = default;
};
/// Rules that cannot be asked with these channels, and what each of them lacks.
[[nodiscard]] std::vector<RuleLack> rulesLacking(const std::vector<std::string>& channels);

} // namespace bothways::core
