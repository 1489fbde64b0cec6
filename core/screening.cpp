// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening.h"

#include "core/rules/marks.h"
#include "core/rules/rules.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <utility>

namespace bothways::core {
namespace {

/// Rules that nothing but a recording can check.
constexpr Rule kTraceRules[] = {Rule::loadLost,        Rule::driveSlip,      Rule::outputDrop,
                                Rule::settingMismatch, Rule::settingChanged, Rule::vibration,
                                Rule::roadSpeed,       Rule::interrupted,    Rule::notCruising,
                                Rule::passingTraffic,  Rule::sensorLost,     Rule::traceEndsEarly};

void screenRun(rules::RunContext& context)
{
    rules::accessoryChangeFromSheet(context);
    rules::accessoryTimer(context);
    rules::overspeedFromSheet(context);
    rules::stretchFromSheet(context);
    rules::batteryBalance(context);
    rules::warmingUp(context);
    rules::sameRunTwice(context);
    rules::marks(context);
    for (const Rule rule : kTraceRules)
        context.notChecked(rule, WhyNotChecked::noTrace, "");
}

/// A rule that found something was checked, if only by a mark.
void dropWhatWasFound(Screening& screening)
{
    std::set<std::pair<int, Rule>> found;
    for (const Finding& finding : screening.findings)
        found.emplace(finding.run, finding.rule);
    std::erase_if(screening.not_checked, [&](const NotChecked& skipped) {
        return found.contains({skipped.run, skipped.rule});
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
    if (finding.value && finding.limit)
        add(fmt::format("{:.6g} {} (limit {:.6g} {})", *finding.value, finding.unit, *finding.limit,
                        finding.unit));
    else if (finding.value && !finding.unit.empty())
        add(fmt::format("{:.6g} {}", *finding.value, finding.unit));
    else if (finding.value)
        add(fmt::format("run {:.6g}", *finding.value));
    if (finding.from_s && finding.to_s)
        add(fmt::format("{:.1f}-{:.1f} s", *finding.from_s, *finding.to_s));
    if (!finding.detail.empty())
        add(finding.detail);
    return words;
}

} // namespace

Screening screen(const Study& study, const TraceProvider&,
                 const std::function<void(double)>& progress, std::stop_token stop)
{
    Screening screening;
    for (std::size_t place = 0; place < study.runs.size() && !stop.stop_requested(); ++place) {
        rules::RunContext context{study, place, screening.findings, screening.not_checked};
        screenRun(context);
        if (progress)
            progress(static_cast<double>(place + 1) / static_cast<double>(study.runs.size()));
    }
    dropWhatWasFound(screening);
    putInOrder(screening);
    return screening;
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
        const Finding& finding = *spoiled->second;
        run.discard = Discard{std::string(ruleName(finding.rule)), evidenceOf(finding)};
        discarded.push_back(run.number);
    }
    return discarded;
}

} // namespace bothways::core
