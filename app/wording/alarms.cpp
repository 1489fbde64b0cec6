// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/alarms.h"

#include "app/wording/channels.h"
#include "app/wording/findings.h"
#include "app/wording/numbers.h"

#include <cmath>

namespace bothways::app::wording {
namespace {

using core::Alarm;
using core::Finding;
using core::Rule;

bool below(const Finding& finding)
{
    return finding.value && *finding.value < 0.0;
}

std::string amount(const Language& in, const Finding& finding)
{
    return significant(in, std::abs(finding.value.value_or(0.0)));
}

std::string whole(const Language& in, const std::optional<double>& value)
{
    return grouped(in, std::abs(value.value_or(0.0)));
}

std::string lostHeadline(const Language& in, const Finding& finding)
{
    const std::vector<core::LostSensor>& lost = finding.lost;
    if (lost.empty())
        return ruleName(in, finding.rule);
    const std::string channel = channelName(in, lost.front().channel);
    switch (lost.front().how) {
    case core::LostSensor::How::gap: return in.say("No samples of {}"_t, channel);
    case core::LostSensor::How::frozen: return withCapital(in.say("{} is frozen"_t, channel));
    case core::LostSensor::How::zero: return withCapital(in.say("{} reads 0"_t, channel));
    case core::LostSensor::How::fell: return withCapital(in.say("{} was reset"_t, channel));
    }
    return {};
}

/// Of the rules about the vehicle and the sheet.
std::string roadHeadline(const Language& in, const Finding& finding)
{
    const std::string size = amount(in, finding);
    switch (finding.rule) {
    case Rule::roadSpeed:
        return in.say(below(finding) ? "Road speed {} % too low"_t : "Road speed {} % too high"_t,
                      size);
    case Rule::interrupted: return in.say("Run interrupted"_t);
    case Rule::notCruising: return in.say("Counting began too early"_t);
    case Rule::stretch:
        return in.say(below(finding) ? "Distance {} % too short"_t : "Distance {} % too long"_t,
                      size);
    case Rule::passingTraffic: return in.say("Gust or passing vehicle"_t);
    case Rule::traceEndsEarly: return in.say("Recording ended {} s early"_t, size);
    case Rule::batteryBalance:
        return in.say(below(finding) ? "Battery {} V lower than at the start"_t
                                     : "Battery {} V higher than at the start"_t,
                      size);
    case Rule::warmingUp: return in.say("Cold start only {} min ago"_t, size);
    case Rule::sameRunTwice: return in.say("Same as run {}"_t, whole(in, finding.value));
    case Rule::adjusted: return in.say("Adjusted during the run"_t);
    default: return lostHeadline(in, finding);
    }
}

std::string findingHeadline(const Language& in, const Finding& finding)
{
    const std::string size = amount(in, finding);
    switch (finding.rule) {
    case Rule::accessoryChange:
        return in.say(below(finding) ? "Accessories {} W too low"_t : "Accessories {} W too high"_t,
                      size);
    case Rule::accessoryTimer:
        return in.say("{} has dropped out"_t, finding.accessory.empty()
                                                  ? in.say("a timed accessory"_t)
                                                  : finding.accessory);
    case Rule::overspeed: return in.say("Over-speed: {} rpm"_t, whole(in, finding.value));
    case Rule::loadLost: return in.say("Load lost at {} rpm"_t, whole(in, finding.value));
    case Rule::driveSlip: return in.say("Drive slips by {} %"_t, size);
    case Rule::outputDrop: return in.say("Output fell by {} %"_t, size);
    case Rule::settingMismatch:
        return in.say(below(finding) ? "Setting {}° below the one set"_t
                                     : "Setting {}° above the one set"_t,
                      size);
    case Rule::settingChanged: return in.say("Setting moved by {}°"_t, size);
    case Rule::vibration: return in.say("Vibration: {} m/s²"_t, size);
    default: return roadHeadline(in, finding);
    }
}

/// Made by hand: it has a moment and no value.
bool isMarked(const Finding& finding)
{
    return finding.from_s && !finding.value;
}

std::string timerHeadline(const Language& in, const Alarm& alarm)
{
    constexpr double kInMinutes_s = 120.0;
    if (alarm.in_s <= 0.0)
        return in.say("{} has dropped out"_t, alarm.name);
    if (alarm.in_s < kInMinutes_s)
        return in.say("{} drops out in {} s"_t, alarm.name, fixed(in, std::ceil(alarm.in_s), 0));
    return in.say("{} drops out in {} min"_t, alarm.name, fixed(in, alarm.in_s / 60.0, 0));
}

std::string lookAtSensor(const Language& in, const Finding& finding)
{
    const std::vector<core::LostSensor>& lost = finding.lost;
    if (lost.empty())
        return in.say("Look at its plug and cable."_t);
    if (lost.front().how == core::LostSensor::How::fell)
        return in.say("Do not reset it during a run."_t);
    return in.say("Look at plug and cable of {}."_t, channelName(in, lost.front().channel));
}

std::string roadToDo(const Language& in, const Finding& finding)
{
    switch (finding.rule) {
    case Rule::roadSpeed:
        return in.say("Go back to the target speed. If it was long, drive the run again."_t);
    case Rule::notCruising:
        return in.say("Turn and drive the run again; begin to count at the target speed."_t);
    case Rule::stretch:
        return in.say("Look at start and end of the stretch, then drive the run again."_t);
    case Rule::passingTraffic:
        return in.say("Note what passed. If it was close, drive the run again."_t);
    case Rule::traceEndsEarly: return in.say("See that the recording goes on."_t);
    case Rule::batteryBalance:
        return in.say("Charge the battery before the next run, or let it rest."_t);
    case Rule::warmingUp: return in.say("Drive until the vehicle is warm, then begin."_t);
    case Rule::sameRunTwice: return in.say("Correct the run that was typed twice."_t);
    case Rule::adjusted: return in.say("Turn and drive the run again, and adjust nothing in it."_t);
    case Rule::sensorLost: return lookAtSensor(in, finding);
    default: return in.say("Turn and drive the run again."_t);
    }
}

std::string findingToDo(const Language& in, const Finding& finding)
{
    switch (finding.rule) {
    case Rule::accessoryChange:
        return in.say("Set the accessories as they were. Turn and drive the run again."_t);
    case Rule::accessoryTimer:
        return finding.accessory.empty()
                   ? in.say("Switch it on again. Turn and drive the run again."_t)
                   : in.say("Switch {} on again. Turn and drive the run again."_t,
                            finding.accessory);
    case Rule::overspeed: return in.say("Slow down. Turn and drive the run again."_t);
    case Rule::loadLost:
        return in.say("Slow down. Stop where it is safe; look at belt and wiring."_t);
    case Rule::driveSlip: return in.say("Stop where it is safe; look at the belt."_t);
    case Rule::outputDrop: return in.say("Look at wiring and load before the next run."_t);
    case Rule::settingMismatch:
        return in.say("Look whether the device follows its set point; set it again."_t);
    case Rule::settingChanged:
        return in.say("Leave the setting alone. Turn and drive the run again."_t);
    case Rule::vibration:
        return in.say("Slow down. Stop where it is safe; look for what is loose."_t);
    default: return roadToDo(in, finding);
    }
}

std::string ofItsPart(const Language& in, const std::string& headline, const Finding& finding)
{
    // A lost sensor's channel names its part.
    return finding.part.empty() || finding.rule == Rule::sensorLost
               ? headline
               : in.say("{} ({})"_t, headline, finding.part);
}

} // namespace

std::string alarmHeadline(const Language& in, const Alarm& alarm)
{
    const Finding& finding = alarm.finding;
    switch (alarm.kind) {
    case Alarm::Kind::finding:
        if (isMarked(finding) && finding.rule != Rule::adjusted)
            return in.say("Noted by hand: {}"_t, ruleName(in, finding.rule));
        return ofItsPart(in, findingHeadline(in, finding), finding);
    case Alarm::Kind::nearLimit:
        return ofItsPart(in,
                         in.say("Near over-speed: {} of {} rpm"_t, whole(in, finding.value),
                                whole(in, finding.limit)),
                         finding);
    case Alarm::Kind::timerWillDrop: return timerHeadline(in, alarm);
    case Alarm::Kind::channelSilent:
        return withCapital(in.say("{} is silent"_t, channelName(in, alarm.name)));
    case Alarm::Kind::limitMissing: return in.say("Limit {} is not set"_t, alarm.name);
    case Alarm::Kind::noChannel: return in.say("No channel {}"_t, channelName(in, alarm.name));
    }
    return {};
}

std::string alarmToDo(const Language& in, const Alarm& alarm)
{
    switch (alarm.kind) {
    case Alarm::Kind::finding: return findingToDo(in, alarm.finding);
    case Alarm::Kind::nearLimit: return in.say("Slow down before the limit is passed."_t);
    case Alarm::Kind::timerWillDrop: return in.say("Switch {} on again."_t, alarm.name);
    case Alarm::Kind::channelSilent:
        return in.say("Look at plug and cable of {}."_t, channelName(in, alarm.name));
    case Alarm::Kind::limitMissing:
        return in.say("Set it among the study's limits, or do without this rule: {}."_t,
                      ruleName(in, alarm.finding.rule));
    case Alarm::Kind::noChannel:
        return in.say("Record it, or do without this rule: {}."_t,
                      ruleName(in, alarm.finding.rule));
    }
    return {};
}

std::string alarmSentence(const Language& in, const Alarm& alarm)
{
    return in.say("{}. {}##an alarm, and what to do about it"_t, alarmHeadline(in, alarm),
                  alarmToDo(in, alarm));
}

std::string alarmLine(const Language& in, const Alarm& alarm)
{
    return in.say("{}: {}##how grave an alarm is, and the alarm"_t, alarmLevelName(in, alarm.level),
                  alarmSentence(in, alarm));
}

std::string alarmLevelName(const Language& in, core::AlarmLevel level)
{
    switch (level) {
    case core::AlarmLevel::note: return in.say("note##level of an alarm"_t);
    case core::AlarmLevel::warning: return in.say("warning##level of an alarm"_t);
    case core::AlarmLevel::spoiled: return in.say("spoiled##level of an alarm"_t);
    }
    return {};
}

} // namespace bothways::app::wording
