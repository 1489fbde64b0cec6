// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/robust.h"
#include "core/rules/rules.h"

#include <algorithm>
#include <cmath>

// Rules about the setting of the device: the set point, and what was measured.
namespace bothways::core::rules {
namespace {

constexpr std::string_view kUnit = "°";

/// A set point that never changes may be recorded as rarely as one likes.
bool setOften(RunContext& context, Rule rule, const Channel& set, double seconds)
{
    const auto values = set.value();
    const bool constant =
        std::adjacent_find(values.begin(), values.end(), std::not_equal_to<>()) == values.end();
    return constant || context.fastEnough(rule, set, seconds);
}

} // namespace

void settingMismatch(RunContext& context)
{
    constexpr double kSeconds = 2.0;
    const Channel* measured = context.needed(Rule::settingMismatch, "setting");
    const Channel* set = measured ? context.needed(Rule::settingMismatch, "setting_set") : nullptr;
    if (!set || !context.fastEnough(Rule::settingMismatch, *measured, kSeconds) ||
        !setOften(context, Rule::settingMismatch, *set, kSeconds))
        return;
    const double tolerance = context.limitWithDefault("setting_mismatch.tolerance");
    const auto time_s = measured->time_s();
    const auto values = measured->value();
    std::vector<double> difference(values.size());
    Held held(*set, Held::Age::unlimited);
    for (std::size_t i = 0; i < values.size(); ++i) {
        const double wanted = held.at(time_s[i]);
        difference[i] = std::isnan(wanted) ? 0.0 : values[i] - wanted;
    }
    const auto off = [&](std::size_t i) { return exceeds(std::abs(difference[i]), tolerance); };
    for (const Stretch& event : joined(time_s, stretches(time_s, kSeconds, off)))
        context.found(Rule::settingMismatch, *measured, event, furthestFromZero(difference, event),
                      tolerance, kUnit);

    const double last_s = std::min(context.channels.end_s(), time_s.back()) - 1.0 - kTimeGrace_s;
    const auto last = static_cast<std::size_t>(
        std::lower_bound(time_s.begin(), time_s.end(), last_s) - time_s.begin());
    const double atEnd = median(std::span(difference).subspan(last));
    if (exceeds(std::abs(atEnd), tolerance))
        context.found(Rule::settingMismatch, *measured, {last, values.size() - 1}, atEnd, tolerance,
                      kUnit);
}

void settingChanged(RunContext& context)
{
    constexpr double kSeconds = 1.0;
    const Channel* set = context.needed(Rule::settingChanged, "setting_set");
    if (!set || !setOften(context, Rule::settingChanged, *set, kSeconds))
        return;
    const std::optional<double> started = medianAtStart(*set);
    if (!started) {
        context.notChecked(Rule::settingChanged, WhyNotChecked::noChannel, set->name);
        return;
    }
    const double tolerance = context.limitWithDefault("setting_changed.tolerance");
    const auto time_s = set->time_s();
    std::vector<double> change(set->value().begin(), set->value().end());
    for (double& value : change)
        value -= *started;
    const auto changed = [&](std::size_t i) { return reaches(std::abs(change[i]), tolerance); };
    for (const Stretch& event : joined(time_s, stretches(time_s, kSeconds, changed)))
        context.found(Rule::settingChanged, *set, event, furthestFromZero(change, event), tolerance,
                      kUnit);
}

} // namespace bothways::core::rules
