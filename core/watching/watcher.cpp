// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/watching/watcher.h"

#include "core/screening/rules.h"
#include "core/screening/screening.h"
#include "core/study/limits.h"
#include "core/watching/watcher_private.h"

#include <algorithm>
#include <cassert>
#include <utility>

namespace bothways::core {
namespace {

/// Twice the longest time for which a condition of these rules must hold.
double reach_s(const Limits& limits)
{
    constexpr double kLongestOwn_s = 5.0; // accessory_change, a frozen sensor
    double longest_s = kLongestOwn_s;
    for (const auto& [name, value] : limits)
        if (name.ends_with(".seconds") && !name.starts_with("trace_ends_early"))
            longest_s = std::max(longest_s, value);
    return 2.0 * longest_s + 2.0;
}

} // namespace

void Watcher::Private::placeRun()
{
    with = study;
    auto& runs = with.runs;
    std::erase_if(runs, [&](const Run& other) { return other.number == run->run.number; });
    const auto at =
        std::upper_bound(runs.begin(), runs.end(), run->run,
                         [](const Run& a, const Run& b) { return a.start.us < b.start.us; });
    place = static_cast<std::size_t>(at - runs.begin());
    runs.insert(at, run->run);
}

MemoryTrace Watcher::Private::traceFrom(double from_s) const
{
    MemoryTrace trace;
    for (const LiveChannel& channel : channels)
        trace.add(channel.name(), channel.unit(), channel.part(from_s));
    return trace;
}

void Watcher::Private::lookAtRun(double now_s)
{
    const double so_far_s = now_s - run->start_s;
    if (so_far_s <= 0.0)
        return;
    rules::UnderWay underWay;
    underWay.from_s = std::max(0.0, looked_s - reach_s(study.properties.limits));
    const MemoryTrace trace = traceFrom(underWay.from_s);
    for (const LiveChannel& channel : channels) {
        underWay.so_far.emplace(channel.name(), channel.soFar());
        if (const auto samples = trace.samples(channel.name()))
            own.add(channel.name(), *samples, underWay.from_s);
    }
    with.runs[place].duration_s = so_far_s;
    rules::UsualValues all = usual;
    own.join(with.runs[place], so_far_s, all);
    rules::RunChannels its(&trace, so_far_s, &underWay);
    std::vector<NotChecked> ignored;
    rules::Leftover leftover;
    // Near the limit first: screening forgets the channels that it is through with.
    near.clear();
    rules::RunContext nearly{with, place, its, all, near, ignored, leftover};
    rules::nearOverspeed(nearly, kNearLimit);
    std::erase_if(near, [&](const Finding& finding) {
        return *finding.to_s < so_far_s - kRecent_s || *finding.value > *finding.limit;
    });
    std::vector<Finding> found;
    rules::RunContext context{with, place, its, all, found, ignored, leftover};
    screenUnderWay(context);
    standing.take(found);
    looked_s = so_far_s;
}

void Watcher::Private::forgetOld(double now_s)
{
    double before_s = now_s - kKept_s;
    if (run) {
        if (!recorded || now_s < run->start_s + kKept_s)
            return;
        before_s =
            run->start_s + std::max(0.0, looked_s - reach_s(study.properties.limits)) - kRecent_s;
    }
    for (LiveChannel& channel : channels)
        channel.forgetBefore(before_s);
}

void Watcher::Private::learnFrom(const Run& of, rules::RunChannels& its)
{
    if (!its.hasTrace())
        return;
    usual.add(of, its);
    for (const ChannelInfo& info : its.trace().channels())
        if (its.find(info.name))
            had.insert(info.name);
}

/// The end of this run was taken back.
bool Watcher::Private::goesOn(const RunUnderWay& begun) const
{
    return !run && ended && ended->number == begun.run.number && ended->start_s == begun.start_s;
}

void Watcher::Private::runIsOver()
{
    ended.reset();
    run.reset();
    standing = {};
    own = {};
    near.clear();
    since_s.clear();
    looked_s = 0.0;
}

Watcher::Watcher(Study study) : d(std::make_unique<Private>())
{
    d->study = std::move(study);
}
Watcher::Watcher(Watcher&&) noexcept = default;
Watcher& Watcher::operator=(Watcher&&) noexcept = default;
Watcher::~Watcher() = default;

void Watcher::learn(const TraceProvider& earlier)
{
    d->usual = {};
    d->had.clear();
    for (const Run& run : d->study.runs) {
        const std::unique_ptr<RunTrace> trace = earlier ? earlier(run) : nullptr;
        rules::RunChannels channels(trace.get(), duration_s(run));
        d->learnFrom(run, channels);
    }
}

void Watcher::recordedBy(TraceProvider recorded)
{
    d->recorded = std::move(recorded);
}

void Watcher::setStudy(Study study)
{
    d->study = std::move(study);
    if (d->run)
        d->placeRun();
}

std::size_t Watcher::channel(std::string_view name, std::string_view unit)
{
    if (const auto known = d->places.find(name); known != d->places.end())
        return known->second;
    const std::size_t place = d->channels.size();
    d->channels.emplace_back(std::string(name), std::string(unit));
    if (d->run)
        d->channels.back().beginRun(d->run->start_s);
    d->places.emplace(std::string(name), place);
    return place;
}

void Watcher::put(std::size_t channel, std::span<const double> time_s,
                  std::span<const double> value)
{
    assert(channel < d->channels.size() && time_s.size() == value.size());
    d->channels[channel].put(time_s, value);
}

void Watcher::next(const RunUnderWay& run)
{
    d->upcoming = run;
}

void Watcher::begin(const RunUnderWay& run)
{
    auto before = d->goesOn(run) ? std::exchange(d->ended, {}) : std::nullopt;
    d->runIsOver();
    d->upcoming.reset();
    d->run = run;
    d->placeRun();
    if (before) {
        d->looked_s = before->looked_s;
        d->standing = std::move(before->standing);
        d->own = std::move(before->own);
        d->usual = std::move(before->usual);
    }
    for (std::size_t i = before ? before->channels : 0; i < d->channels.size(); ++i)
        d->channels[i].beginRun(run.start_s);
}

void Watcher::mark(double at_s, std::string_view word, std::string_view words)
{
    if (!d->run)
        return;
    d->run->run.marks.push_back({at_s - d->run->start_s, std::string(word), std::string(words)});
    d->placeRun();
}

bool Watcher::isUnderWay() const
{
    return d->run.has_value();
}

std::vector<Alarm> Watcher::look(double now_s)
{
    for (LiveChannel& channel : d->channels)
        channel.digest();
    std::vector<Alarm> alarms;
    if (d->run) {
        d->lookAtRun(now_s);
        d->addFindings(alarms);
    } else {
        d->addMissing(now_s, alarms);
    }
    d->addTimers(now_s, alarms);
    d->addSilent(now_s, alarms);
    d->putInOrder(now_s, alarms);
    d->forgetOld(now_s);
    return alarms;
}

Screening Watcher::end(double at_s)
{
    if (!d->run)
        return {};
    Run& run = d->with.runs[d->place];
    run.duration_s = std::max(0.0, at_s - d->run->start_s);
    std::unique_ptr<RunTrace> trace;
    if (d->recorded) {
        trace = d->recorded(run);
    } else if (!d->channels.empty()) {
        auto whole = std::make_unique<MemoryTrace>();
        for (const LiveChannel& channel : d->channels)
            whole->add(channel.name(), channel.unit(), channel.whole());
        trace = std::move(whole);
    }
    Private::Ended ended{d->run->run.number, d->run->start_s, d->looked_s, d->channels.size(),
                         d->standing,        d->own,          d->usual};
    {
        rules::RunChannels channels(trace.get(), run.duration_s);
        d->learnFrom(run, channels);
    }
    std::set<std::string, std::less<>> known = d->had;
    for (const LiveChannel& channel : d->channels)
        if (channel.last_s())
            known.insert(channel.name());
    Screening screening = screenOne(d->with, d->place, trace.get(), d->usual, known);
    d->runIsOver();
    d->ended = std::move(ended);
    d->forgetOld(at_s);
    return screening;
}

void Watcher::forget()
{
    d->runIsOver();
}

} // namespace bothways::core
