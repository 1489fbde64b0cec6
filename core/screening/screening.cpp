// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/screening.h"
#include "core/recording/trace.h"
#include "core/screening/finding.h"
#include "core/study/rule.h"

#include "core/screening/marks.h"
#include "core/screening/pattern.h"
#include "core/screening/rules.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <utility>

namespace bothways::core {
namespace {

/// Channels by family: what their rules have read is looked through for lost sensors and forgotten.
constexpr std::string_view kAccessory[] = {"accessory_w"};
constexpr std::string_view kDevice[] = {"rotor_rpm", "generator_rpm", "output_w"};
constexpr std::string_view kSetting[] = {"setting", "setting_set"};
constexpr std::string_view kVibration[] = {"vibration_ms2"};
constexpr std::string_view kAir[] = {"wind_ms", "yaw_deg_per_s"};

/// A rule, and whether a run under way can be asked: what its answer hangs on is there by then, and
/// what comes after does not change it. What waits of the others is inside them.
struct RuleStep {
    void (*ask)(rules::RunContext&);
    bool underWay;
};
constexpr RuleStep kSteps[] = {
    {rules::accessoryChange, true},
    {rules::accessoryTimer, true},
    {[](rules::RunContext& context) { rules::sensorsLost(context, kAccessory); }, true},
    {rules::overspeed, true},
    {rules::loadLost, true},
    {rules::driveSlip, true},
    {rules::outputDrop, false},
    {rules::deviceStopped, true},
    {rules::deviceFigures, false},
    {[](rules::RunContext& context) { rules::sensorsLost(context, kDevice); }, true},
    {rules::settingMismatch, true},
    {rules::settingChanged, true},
    {[](rules::RunContext& context) { rules::sensorsLost(context, kSetting); }, true},
    {rules::vibration, true},
    {[](rules::RunContext& context) { rules::sensorsLost(context, kVibration); }, true},
    {rules::passingTraffic, false},
    {[](rules::RunContext& context) { rules::sensorsLost(context, kAir); }, true},
    {rules::roadSpeed, true},
    {rules::interrupted, true},
    {rules::notCruising, true},
    {rules::stretch, false},
    {rules::sensorLost, true},
    {rules::traceEndsEarly, false},
    {rules::batteryBalance, false},
    {rules::warmingUp, true},
    {rules::sameRunTwice, false},
    {rules::marks, true},
};

void screenRun(rules::RunContext& context, const std::stop_token& stop)
{
    for (const RuleStep& step : kSteps) {
        if (stop.stop_requested())
            return;
        step.ask(context);
    }
}

/// A rule that found something was checked, if only by a mark.
void dropWhatWasFound(Screening& screening)
{
    std::set<std::tuple<int, Rule, std::string>> found;
    for (const Finding& finding : screening.findings)
        found.emplace(finding.run, finding.rule, finding.part);
    std::erase_if(screening.not_checked, [&](const NotChecked& skipped) {
        return found.contains({skipped.run, skipped.rule, skipped.part});
    });
}

void putInOrder(Screening& screening)
{
    rules::joinNeighbours(screening.findings);
    std::stable_sort(screening.findings.begin(), screening.findings.end(),
                     [](const Finding& a, const Finding& b) {
                         return std::tuple(a.run, a.from_s, a.rule) <
                                std::tuple(b.run, b.from_s, b.rule);
                     });
    std::stable_sort(screening.not_checked.begin(), screening.not_checked.end(),
                     [](const NotChecked& a, const NotChecked& b) {
                         return std::tuple(a.run, a.rule) < std::tuple(b.run, b.rule);
                     });
}

/// The facts of a finding in figures, for the run's record: "3410 rpm (limit 3200 rpm), 96.2-97.1
/// s".
std::string evidenceOf(const Finding& finding)
{
    std::string words;
    const auto add = [&](const std::string& part) { words += words.empty() ? part : ", " + part; };
    if (!finding.part.empty())
        add(finding.part);
    if (finding.value && finding.limit)
        add(fmt::format("{:.6g} {} (limit {:.6g} {})", *finding.value, finding.unit, *finding.limit,
                        finding.unit));
    else if (finding.value && !finding.unit.empty())
        add(fmt::format("{:.6g} {}", *finding.value, finding.unit));
    else if (finding.value)
        add(fmt::format("run {:.6g}", *finding.value));
    if (finding.from_s && finding.to_s)
        add(fmt::format("{:.1f}-{:.1f} s", *finding.from_s, *finding.to_s));
    if (const std::string detail = detailOf(finding); !detail.empty())
        add(detail);
    return words;
}

} // namespace

Screening screen(const Study& study, const TraceProvider& traces,
                 const std::function<void(double)>& progress, std::stop_token stop)
{
    const std::vector<Run>& runs = study.runs;
    const std::size_t passes = traces ? 2 : 1;
    std::size_t done = 0;
    const auto step = [&] {
        ++done;
        if (progress)
            progress(static_cast<double>(done) / static_cast<double>(passes * runs.size()));
    };
    const auto recordingOf = [&](const Run& run) {
        return traces ? traces(run) : std::unique_ptr<RunTrace>();
    };

    rules::UsualValues usual;
    for (std::size_t i = 0; traces && i < runs.size() && !stop.stop_requested(); ++i, step()) {
        const std::unique_ptr<RunTrace> trace = recordingOf(runs[i]);
        rules::RunChannels channels(trace.get(), duration_s(runs[i]));
        usual.add(runs[i], channels);
    }
    Screening screening;
    std::vector<rules::Leftover> leftovers(runs.size());
    for (std::size_t i = 0; i < runs.size() && !stop.stop_requested(); ++i, step()) {
        const std::unique_ptr<RunTrace> trace = recordingOf(runs[i]);
        rules::RunChannels channels(trace.get(), duration_s(runs[i]));
        rules::RunContext context{
            study, i, channels, usual, screening.findings, screening.not_checked, leftovers[i]};
        screenRun(context, stop);
    }
    rules::channelsNeverFilled(study, leftovers, screening.findings);
    dropWhatWasFound(screening);
    putInOrder(screening);
    screening.pattern =
        rules::overspeedPattern(study, screening.findings, leftovers, study.properties.confidence);
    screening.device = rules::figuresBySetting(study, leftovers);
    screening.part_patterns = rules::overspeedPatternsOfParts(study, screening.findings, leftovers,
                                                              study.properties.confidence);
    return screening;
}

Screening screenOne(const Study& study, std::size_t place, const RunTrace* trace,
                    const rules::UsualValues& usual,
                    const std::set<std::string, std::less<>>& known)
{
    Screening screening;
    rules::Leftover leftover;
    rules::RunChannels channels(trace, duration_s(study.runs[place]));
    rules::RunContext context{
        study, place, channels, usual, screening.findings, screening.not_checked, leftover};
    screenRun(context, {});
    rules::channelsNeverFilled(context.run(), leftover, known, screening.findings);
    dropWhatWasFound(screening);
    putInOrder(screening);
    return screening;
}

void screenUnderWay(rules::RunContext& context)
{
    for (const RuleStep& step : kSteps)
        if (step.underWay)
            step.ask(context);
}

Discard discardFor(const Finding& finding)
{
    return {std::string(ruleName(finding.rule)), evidenceOf(finding)};
}

std::vector<int> applyScreening(Study& study, const Screening& screening)
{
    std::map<int, const Finding*> first;
    for (const Finding& finding : screening.findings)
        if (finding.grade == Grade::spoils)
            first.emplace(finding.run, &finding);
    std::vector<int> discarded;
    for (Run& run : study.runs) {
        const auto spoiled = first.find(run.number);
        if (!run.counted() || spoiled == first.end())
            continue;
        run.discard = discardFor(*spoiled->second);
        discarded.push_back(run.number);
    }
    return discarded;
}

} // namespace bothways::core
