// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/rules.h"
#include "core/screening/screening.h"
#include "core/statistics/robust.h"
#include "core/study/limits.h"
#include "core/watching/watcher_private.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

// What the watcher knows, as alarms.
namespace bothways::core {
namespace {

constexpr double kUnheard_s = 3.0;  ///< a channel that never had a sample is waited for so long
constexpr double kOnItsWay_s = 0.2; ///< from the instrument to here

AlarmLevel levelOf(Grade grade)
{
    switch (grade) {
    case Grade::spoils: return AlarmLevel::spoiled;
    case Grade::doubtful: return AlarmLevel::warning;
    case Grade::note: return AlarmLevel::note;
    }
    return AlarmLevel::note;
}

Alarm alarmOf(Alarm::Kind kind, AlarmLevel level, std::string key, std::string name = {})
{
    Alarm alarm;
    alarm.kind = kind;
    alarm.level = level;
    alarm.key = std::move(key);
    alarm.name = std::move(name);
    return alarm;
}

/// Half of the study's runs take longer; nothing without one that says how long.
std::optional<double> usualDuration_s(const Study& study)
{
    std::vector<double> durations;
    for (const Run& run : study.runs)
        if (const auto seconds = duration_s(run))
            durations.push_back(*seconds);
    return durations.empty() ? std::nullopt : std::optional(median(durations));
}

} // namespace

bool isLack(const Alarm& alarm)
{
    return alarm.kind == Alarm::Kind::limitMissing || alarm.kind == Alarm::Kind::noChannel;
}

void Watcher::Private::addFindings(std::vector<Alarm>& alarms) const
{
    for (const Standing& each : standing.all()) {
        Alarm alarm = alarmOf(Alarm::Kind::finding, levelOf(each.finding.grade), each.key);
        alarm.finding = each.finding;
        alarms.push_back(std::move(alarm));
    }
    for (const Finding& finding : near) {
        std::string key = "near:" + std::string(ruleName(finding.rule)) + '@' + finding.part;
        Alarm alarm = alarmOf(Alarm::Kind::nearLimit, AlarmLevel::warning, std::move(key));
        alarm.finding = finding;
        alarms.push_back(std::move(alarm));
    }
}

/// What rules would lack in a run that began now.
void Watcher::Private::addMissing(double now_s, std::vector<Alarm>& alarms) const
{
    constexpr double kEnough_s = 10.0;
    Study next;
    next.properties = study.properties;
    Run asked = upcoming ? upcoming->run : Run();
    asked.duration_s = kEnough_s;
    next.runs = {asked};
    MemoryTrace trace;
    for (const LiveChannel& channel : channels) {
        // That there are samples, over all of the run, is all that counts here.
        Samples some;
        if (channel.last_s() && now_s - *channel.last_s() < kKept_s)
            for (double at_s = 0.0; at_s <= kEnough_s; at_s += 1.0) {
                some.time_s.push_back(at_s);
                some.value.push_back(1.0 + at_s); // a distance that grows, too
            }
        trace.add(channel.name(), channel.unit(), std::move(some));
    }
    const Screening screening = screenOne(next, 0, &trace, {}, {});
    std::set<std::string> said;
    for (const NotChecked& skipped : screening.not_checked) {
        const bool limit = skipped.why == WhyNotChecked::noLimit && findLimit(skipped.what);
        if (!limit && skipped.why != WhyNotChecked::noChannel)
            continue;
        // A limit serves several rules and parts; it is missing once.
        std::string key =
            limit ? "limit:" + skipped.what
                  : "channel:" + std::string(ruleName(skipped.rule)) + ':' + skipped.what;
        if (!said.insert(key).second)
            continue;
        Alarm alarm =
            alarmOf(limit ? Alarm::Kind::limitMissing : Alarm::Kind::noChannel,
                    limit ? AlarmLevel::warning : AlarmLevel::note, std::move(key), skipped.what);
        alarm.finding.rule = skipped.rule;
        alarm.finding.run = asked.number;
        alarm.finding.part = skipped.part;
        alarms.push_back(std::move(alarm));
    }
}

void Watcher::Private::addTimers(double now_s, std::vector<Alarm>& alarms) const
{
    const RunUnderWay* which = run ? &*run : upcoming ? &*upcoming : nullptr;
    if (!which)
        return;
    const auto expected_s = which->expected_s ? which->expected_s : usualDuration_s(study);
    if (!expected_s)
        return;
    const double end_s = (run ? which->start_s : now_s) + *expected_s;
    for (const TimedAccessory& accessory : study.properties.timed_accessories) {
        const auto off_s = rules::timerOff_s(which->run, accessory);
        if (!off_s)
            continue;
        const double drops_s = which->start_s + *off_s;
        if (drops_s >= end_s || (run && drops_s <= now_s))
            continue; // one that has dropped out is a finding
        Alarm alarm = alarmOf(Alarm::Kind::timerWillDrop, AlarmLevel::warning,
                              "timer:" + accessory.name, accessory.name);
        alarm.in_s = drops_s - now_s;
        alarms.push_back(std::move(alarm));
    }
}

void Watcher::Private::addSilent(double now_s, std::vector<Alarm>& alarms)
{
    known_since_s.resize(channels.size());
    for (std::size_t i = 0; i < channels.size(); ++i) {
        const LiveChannel& channel = channels[i];
        known_since_s[i] = known_since_s[i].value_or(now_s);
        const auto last_s = channel.last_s();
        const double longest_s =
            last_s ? rules::longestGap_s(channel.pace_s()) + kOnItsWay_s : kUnheard_s;
        if (now_s - last_s.value_or(*known_since_s[i]) <= longest_s)
            continue;
        const std::vector gap{LostSensor{channel.name(), LostSensor::How::gap}};
        const bool said =
            run &&
            std::any_of(standing.all().begin(), standing.all().end(), [&](const Standing& each) {
                return each.finding.lost == gap &&
                       each.finding.to_s >= now_s - run->start_s - kRecent_s;
            });
        if (!said)
            alarms.push_back(alarmOf(Alarm::Kind::channelSilent, AlarmLevel::warning,
                                     "silent:" + channel.name(), channel.name()));
    }
}

void Watcher::Private::putInOrder(double now_s, std::vector<Alarm>& alarms)
{
    std::map<std::string, double, std::less<>> still;
    for (Alarm& alarm : alarms) {
        const auto known = since_s.find(alarm.key);
        alarm.since_s = known == since_s.end() ? now_s : known->second;
        still.emplace(alarm.key, alarm.since_s);
    }
    since_s = std::move(still);
    std::stable_sort(alarms.begin(), alarms.end(), [](const Alarm& a, const Alarm& b) {
        return std::tuple(b.level, b.since_s) < std::tuple(a.level, a.since_s);
    });
}

} // namespace bothways::core
