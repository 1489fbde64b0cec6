// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/context.h"

#include "core/screening/finding.h"
#include "core/study/limits.h"
#include "core/study/parts.h"
#include "core/study/rule.h"

namespace bothways::core::rules {
std::optional<double> RunContext::limit(std::string_view name) const
{
    return limitOf(study.properties.limits, limitOfPart(name, part));
}

double RunContext::limitWithDefault(std::string_view name) const
{
    return limit(name).value();
}

std::optional<double> RunContext::neededLimit(Rule rule, std::string_view name)
{
    const std::optional<double> value = limit(name);
    if (!value)
        notChecked(rule, WhyNotChecked::noLimit, name);
    return value;
}

void RunContext::notChecked(Rule rule, WhyNotChecked why, std::string_view what)
{
    not_checked.push_back({run().number, rule, why, std::string(what), part});
}

void RunContext::notNoted(Rule rule, std::string_view column, std::string_view channel)
{
    if (channels.hasTrace())
        notChecked(rule, WhyNotChecked::noChannel, channel);
    else
        notChecked(rule, WhyNotChecked::notNoted, column);
}

Finding& RunContext::found(Rule rule, Grade grade, std::optional<double> value,
                           std::optional<double> limit, std::string_view unit)
{
    Finding finding;
    finding.rule = rule;
    finding.run = run().number;
    finding.value = value && std::isfinite(*value) ? value : std::nullopt;
    finding.limit = limit;
    finding.unit = unit;
    finding.grade = grade;
    finding.part = hasParts(rule) ? part : std::string();
    return findings.emplace_back(std::move(finding));
}

Finding& RunContext::found(Rule rule, const Channel& channel, const Stretch& event, double value,
                           double limit, std::string_view unit)
{
    Finding& finding = found(rule, gradeOf(rule), value, limit, unit);
    finding.from_s = channel.at_s(event.first);
    finding.to_s = channel.at_s(event.last);
    return finding;
}

const Channel* RunContext::find(std::string_view channel)
{
    const Channel* own = channels.find(ofPart(channel, part));
    return own || part.empty() || !channels.names(channel) ? own : channels.find(channel);
}

const Channel* RunContext::needed(Rule rule, std::string_view channel)
{
    const Channel* found = find(channel);
    if (!found && channels.hasTrace())
        notChecked(rule, WhyNotChecked::noChannel, ofPart(channel, part));
    else if (!found)
        notChecked(rule, WhyNotChecked::noTrace, "");
    return found;
}

bool RunContext::fastEnough(Rule rule, const Channel& channel, double seconds)
{
    if (!channel.tooSlowFor(seconds))
        return true;
    notChecked(rule, WhyNotChecked::recordedTooSlowly, channel.name);
    return false;
}

Grade gradeOf(Rule rule)
{
    switch (rule) {
    case Rule::accessoryChange:
    case Rule::accessoryTimer:
    case Rule::overspeed:
    case Rule::loadLost:
    case Rule::driveSlip:
    case Rule::settingChanged:
    case Rule::interrupted:
    case Rule::notCruising:
    case Rule::sameRunTwice:
    case Rule::adjusted: return Grade::spoils;
    case Rule::outputDrop:
    case Rule::settingMismatch:
    case Rule::vibration:
    case Rule::roadSpeed:
    case Rule::stretch:
    case Rule::passingTraffic:
    case Rule::sensorLost:
    case Rule::batteryBalance: return Grade::doubtful;
    case Rule::traceEndsEarly:
    case Rule::warmingUp: return Grade::note;
    }
    return Grade::note;
}

} // namespace bothways::core::rules
