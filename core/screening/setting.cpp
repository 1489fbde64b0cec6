// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/rules.h"
#include "core/statistics/robust.h"

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
    const ChannelSoFar* soFar = context.channels.soFar(set);
    const bool constant = soFar ? soFar->constant
                                : std::adjacent_find(values.begin(), values.end(),
                                                     std::not_equal_to<>()) == values.end();
    return constant || context.fastEnough(rule, set, seconds);
}

void settingMismatchOfPart(RunContext& context)
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
    const auto difference = [&, held = Held(*set, Held::Age::unlimited)](std::size_t i) mutable {
        const double wanted = held.at(time_s[i]);
        return std::isnan(wanted) ? 0.0 : values[i] - wanted;
    };
    const auto off = [&, apart = difference](std::size_t i) mutable {
        return exceeds(std::abs(apart(i)), tolerance);
    };
    for (const Stretch& event : joined(time_s, stretches(time_s, kSeconds, off)))
        context.found(Rule::settingMismatch, *measured, event, furthestFromZero(event, difference),
                      tolerance, kUnit);
    if (context.channels.underWay())
        return; // the last second is that of the whole run

    const double last_s = std::min(context.channels.end_s(), time_s.back()) - 1.0 - kTimeGrace_s;
    const auto last = static_cast<std::size_t>(
        std::lower_bound(time_s.begin(), time_s.end(), last_s) - time_s.begin());
    std::vector<double> lastSecond;
    auto apart = difference;
    for (std::size_t i = last; i < values.size(); ++i)
        lastSecond.push_back(apart(i));
    const double atEnd = median(lastSecond);
    if (exceeds(std::abs(atEnd), tolerance))
        context.found(Rule::settingMismatch, *measured, {last, values.size() - 1}, atEnd, tolerance,
                      kUnit);
}

void settingChangedOfPart(RunContext& context)
{
    constexpr double kSeconds = 1.0;
    const Channel* set = context.needed(Rule::settingChanged, "setting_set");
    if (!set || !setOften(context, Rule::settingChanged, *set, kSeconds) ||
        context.startIsUnderWay())
        return;
    const std::optional<double> started = medianAtStart(*set);
    if (!started) {
        context.notChecked(Rule::settingChanged, WhyNotChecked::noChannel, set->name);
        return;
    }
    const double tolerance = context.limitWithDefault("setting_changed.tolerance");
    const auto time_s = set->time_s();
    const auto values = set->value();
    const auto change = [&](std::size_t i) { return values[i] - *started; };
    const auto changed = [&](std::size_t i) { return reaches(std::abs(change(i)), tolerance); };
    for (const Stretch& event : joined(time_s, stretches(time_s, kSeconds, changed)))
        context.found(Rule::settingChanged, *set, event, furthestFromZero(event, change), tolerance,
                      kUnit);
}

} // namespace

void settingMismatch(RunContext& context)
{
    eachPart(context, {"setting"}, [&] { settingMismatchOfPart(context); });
}

void settingChanged(RunContext& context)
{
    eachPart(context, {"setting_set"}, [&] { settingChangedOfPart(context); });
}

} // namespace bothways::core::rules
