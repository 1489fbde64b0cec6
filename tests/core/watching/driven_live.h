// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"
#include "core/screening/screening.h"
#include "core/watching/watcher.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <memory>
#include <optional>
#include <random>
#include <sstream>
#include <string>
#include <vector>

/// A recorded run driven again through a Watcher: samples in random cuts, a look each second. What
/// was said is held against what screen() says of the same study.
namespace bothways::core::tests {

struct SaidLive {
    Finding finding;
    double at_s = 0.0; ///< of the run
};

struct DrivenLive {
    std::vector<SaidLive> said; ///< each finding each time that it was said, first to last
    Screening at_the_end;
};

inline constexpr double kStartInRecording_s = 1000.0;

/// @param study  in order; `place` is the run driven now, those before it were driven earlier
// Long: one drive from before the start to the end, told in its order.
inline DrivenLive driveAgain(const Study& study, std::size_t place, const TraceProvider& traces,
                             unsigned seed)
{
    Study before = study;
    before.runs.resize(place);
    Watcher watcher(before);
    watcher.learn(traces);
    const Run& run = study.runs[place];
    const std::unique_ptr<RunTrace> trace = traces(run);
    struct Feed {
        std::size_t channel;
        std::shared_ptr<const Samples> samples;
        std::vector<double> time_s;
        std::size_t next = 0;
    };
    std::vector<Feed> feeds;
    for (const ChannelInfo& info : trace->channels()) {
        Feed feed{watcher.channel(info.name, info.unit), trace->samples(info.name), {}, 0};
        if (feed.samples)
            for (const double time_s : feed.samples->time_s)
                feed.time_s.push_back(time_s + kStartInRecording_s);
        feeds.push_back(std::move(feed));
    }
    std::mt19937 random(seed);
    const auto feedUntil = [&](double time_s) {
        for (bool more = true; more;) {
            more = false;
            std::shuffle(feeds.begin(), feeds.end(), random);
            for (Feed& feed : feeds) {
                std::size_t end = feed.next;
                const std::size_t most = feed.next + 1 + random() % 300;
                while (end < feed.time_s.size() && feed.time_s[end] <= time_s && end < most)
                    ++end;
                if (end == feed.next)
                    continue;
                more = true;
                watcher.put(feed.channel,
                            std::span(feed.time_s).subspan(feed.next, end - feed.next),
                            std::span(feed.samples->value).subspan(feed.next, end - feed.next));
                feed.next = end;
            }
        }
    };
    DrivenLive driven;
    const double first_s = -std::floor(6.0 + static_cast<double>(random() % 100) / 100.0);
    for (double at_s = first_s; at_s < 0.0; at_s += 1.0) {
        feedUntil(kStartInRecording_s + at_s);
        (void)watcher.look(kStartInRecording_s + at_s);
    }
    RunUnderWay underWay{run, kStartInRecording_s, {}};
    underWay.run.duration_s.reset();
    underWay.run.marks.clear();
    feedUntil(kStartInRecording_s);
    watcher.begin(underWay);
    std::vector<Mark> marks = run.marks;
    const double end_s = duration_s(run).value_or(trace->last_s());
    const double phase_s = static_cast<double>(random() % 1000) / 1000.0;
    for (double at_s = phase_s; at_s < end_s; at_s += 1.0) {
        feedUntil(kStartInRecording_s + at_s);
        for (const Mark& mark : marks)
            if (mark.at_s <= at_s)
                watcher.mark(kStartInRecording_s + mark.at_s, mark.word, mark.words);
        std::erase_if(marks, [&](const Mark& mark) { return mark.at_s <= at_s; });
        for (const Alarm& alarm : watcher.look(kStartInRecording_s + at_s))
            if (alarm.kind == Alarm::Kind::finding)
                driven.said.push_back({alarm.finding, at_s});
    }
    feedUntil(kStartInRecording_s + end_s + 2.0);
    driven.at_the_end = watcher.end(kStartInRecording_s + end_s);
    return driven;
}

/// How long after `from_s` a rule can know at the earliest. (Method, section 9: "Rules".)
inline double knownAfter_s(const Finding& finding, const Limits& limits)
{
    const auto setting = [&](std::string_view name) { return limitOf(limits, name).value(); };
    const double startIsOver_s = std::max(0.0, 5.0 - finding.from_s.value_or(0.0));
    if (!finding.value)
        return 0.0; // a mark
    switch (finding.rule) {
    case Rule::accessoryChange: return std::max(startIsOver_s, 5.0 + 2.5);
    case Rule::overspeed: return setting("overspeed.seconds");
    case Rule::loadLost: return setting("load_lost.seconds");
    case Rule::driveSlip: return 1.0;
    case Rule::settingMismatch: return 2.0;
    case Rule::settingChanged: return std::max(startIsOver_s, 1.0);
    case Rule::vibration: return 1.0;
    case Rule::roadSpeed: return 3.0;
    case Rule::interrupted: return 2.0;
    case Rule::notCruising: return 5.0;
    case Rule::sensorLost: return finding.limit.value_or(0.0);
    default: return 0.0;
    }
}

/// Rules of which nothing but a mark can be said before the run is over, and why. (Method, section
/// 9.)
struct WaitsForTheEnd {
    Rule rule;
    const char* why;
};
inline constexpr WaitsForTheEnd kWaitForTheEnd[] = {
    {Rule::outputDrop, "where the output changed is told from all of it"},
    {Rule::stretch, "the distance is that of the whole run"},
    {Rule::passingTraffic, "the scatter is that of the whole run"},
    {Rule::traceEndsEarly, "the recording goes on"},
    {Rule::batteryBalance, "it is read at the end"},
    {Rule::sameRunTwice, "the consumption is read at the end"},
};

/// What only the end can say, also of a rule that is else asked while driving.
inline bool waitsForTheEnd(const Finding& finding, double end_s)
{
    for (const WaitsForTheEnd& waits : kWaitForTheEnd)
        if (waits.rule == finding.rule)
            return finding.value.has_value(); // a mark is heard at once
    if (finding.rule == Rule::roadSpeed)
        return finding.of_mean;
    if (finding.rule == Rule::settingMismatch)
        return finding.to_s && *finding.to_s - *finding.from_s < 2.0 && *finding.to_s > end_s - 1.0;
    return finding.rule == Rule::sensorLost && detailOf(finding).ends_with(":fell");
}

inline std::string wordsOf(const Finding& finding)
{
    std::ostringstream words;
    words << ruleName(finding.rule) << '@' << finding.part << " '" << detailOf(finding) << "' "
          << finding.from_s.value_or(-1.0) << " to " << finding.to_s.value_or(-1.0) << " value "
          << finding.value.value_or(-1.0);
    return words.str();
}

/// Empty, or what was said that screen() does not say, and what it says that was not heard within
/// `late_s` of the moment at which the rule could know it.
inline std::string differences(const DrivenLive& driven, const Screening& whole, const Run& run,
                               const Limits& limits, double late_s = 1.2)
{
    std::string wrong;
    const auto isPartOf = [](const Finding& part, const Finding& all) {
        constexpr double kGrace_s = 1e-3;
        if (part.rule != all.rule || part.part != all.part)
            return false;
        if (!part.from_s || !all.from_s)
            return part.from_s == all.from_s;
        return *part.from_s >= *all.from_s - kGrace_s && *part.to_s <= *all.to_s + kGrace_s;
    };
    for (const SaidLive& said : driven.said) {
        const bool known =
            std::any_of(whole.findings.begin(), whole.findings.end(), [&](const Finding& finding) {
                return finding.run == run.number && isPartOf(said.finding, finding);
            });
        if (!known)
            wrong += "said at " + std::to_string(said.at_s) +
                     " s and not true: " + wordsOf(said.finding) + "\n";
    }
    const double end_s = duration_s(run).value_or(0.0);
    for (const Finding& finding : whole.findings) {
        if (finding.run != run.number || waitsForTheEnd(finding, end_s))
            continue;
        const double due_s = finding.from_s.value_or(0.0) + knownAfter_s(finding, limits) + late_s;
        if (due_s > end_s)
            continue; // there was no look any more
        const bool heard =
            std::any_of(driven.said.begin(), driven.said.end(), [&](const SaidLive& said) {
                return said.at_s <= due_s + 1e-6 && isPartOf(said.finding, finding);
            });
        if (!heard)
            wrong += "not heard by " + std::to_string(due_s) + " s: " + wordsOf(finding) + "\n";
    }
    return wrong;
}

} // namespace bothways::core::tests
