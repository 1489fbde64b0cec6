// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/rule.h"
#include "core/study/study.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace bothways::core {

/// A confidence that can be answered: beyond it nothing is ever excluded.
inline constexpr double kHighestConfidence = 0.9999;

/// A limit that can be set for a study: "overspeed.rpm".
struct LimitInfo {
    std::string_view name;
    Rule rule;
    std::string_view unit;
    std::optional<double> byDefault; ///< none: the rule is not checked until it is set
    double smallest, largest;        ///< permitted values
};
[[nodiscard]] std::span<const LimitInfo> allLimits();
/// Also for a part: "overspeed@left.rpm" is found as "overspeed.rpm".
[[nodiscard]] const LimitInfo* findLimit(std::string_view name);
/// May parts of a device have limits of their own of this rule?
[[nodiscard]] bool hasParts(Rule rule);
/// "overspeed.rpm", "left": "overspeed@left.rpm"; without a part the name alone.
[[nodiscard]] std::string limitOfPart(std::string_view name, std::string_view part);
/// The study's value, else for a part the common one, else the default, else nothing.
[[nodiscard]] std::optional<double> limitOf(const Limits& limits, std::string_view name);

} // namespace bothways::core
