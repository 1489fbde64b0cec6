// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_builder.h"
#include "app/wording/alike_findings.h"
#include "app/wording/companions.h"
#include "app/wording/findings.h"
#include "app/wording/numbers.h"
#include "app/wording/runs.h"

#include "core/screening/finding.h"
#include "core/study/limits.h"
#include "core/study/properties.h"
#include "core/study/rule.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <optional>

/// What stands behind the answer: what screening found, the settings, the history.
namespace bothways::app::report {
namespace {

/// Every digit that it has.
std::string exact(const Language& in, double value)
{
    return localised(in, fmt::format("{}", value));
}

/// Runs that a rule could not look at, and why; the same for several rules is one fact.
struct Unchecked {
    std::string why;
    std::vector<int> runs;
    std::vector<std::string> rules;
};

std::vector<Unchecked> uncheckedFacts(const Language& in,
                                      const std::vector<core::NotChecked>& entries)
{
    std::vector<Unchecked> single; // of one rule each
    for (const core::NotChecked& entry : entries) {
        const std::string rule = wording::ruleName(in, entry.rule);
        const std::string why = wording::whyNotChecked(in, entry);
        const auto known = std::find_if(single.begin(), single.end(), [&](const Unchecked& u) {
            return u.why == why && u.rules.front() == rule;
        });
        if (known == single.end())
            single.push_back({why, {entry.run}, {rule}});
        else
            known->runs.push_back(entry.run);
    }
    std::vector<Unchecked> facts;
    for (const Unchecked& one : single) {
        const auto known = std::find_if(facts.begin(), facts.end(), [&](const Unchecked& u) {
            return u.why == one.why && u.runs == one.runs;
        });
        if (known == facts.end())
            facts.push_back(one);
        else
            known->rules.push_back(one.rules.front());
    }
    return facts;
}

} // namespace

void addFindings(Builder& page, const ReportInput& given)
{
    const Language& in = given.language;
    page.heading(in.say("What screening found"_t));
    std::vector<std::string> found;
    for (const wording::AlikeFindings& alike : wording::alikeFindings(in, given.screening.findings))
        found.push_back(
            fmt::format("[{}] {}", wording::gradeWord(in, alike.first->grade), alike.sentence(in)));
    if (found.empty())
        page.paragraph(in.say("No rule that could be checked found anything."_t));
    page.bullets(found);
    if (given.screening.pattern)
        page.paragraph(wording::patternSentence(in, *given.screening.pattern));
    for (const core::OverspeedPattern& pattern : given.screening.part_patterns)
        page.paragraph(wording::patternSentence(in, pattern));
    std::vector<std::string> unchecked;
    for (const Unchecked& fact : uncheckedFacts(in, given.screening.not_checked)) {
        const bool all = fact.runs.size() == given.study.runs.size();
        unchecked.push_back(fmt::format("{}: {} ({})", fmt::join(fact.rules, ", "), fact.why,
                                        all ? in.say("all runs"_t)
                                        : fact.runs.size() == 1
                                            ? in.say("run {}"_t, wording::runList(fact.runs))
                                            : in.say("runs {}"_t, wording::runList(fact.runs))));
    }
    if (unchecked.empty())
        return;
    page.paragraph(in.say("Not checked, which is not the same as passed:"_t));
    page.bullets(unchecked);
}

void addSettings(Builder& page, const ReportInput& given)
{
    const Language& in = given.language;
    page.heading(in.say("Settings and limits used"_t));
    const core::AnalysisOptions& o = given.analysis.options;
    Table settings{in.say("Settings"_t),
                   {{in.say("setting##of a study"_t)}, {in.say("value"_t), Column::words}},
                   {}};
    addRow(settings, {in.say("baseline (A)"_t), given.analysis.baseline});
    addRow(settings, {in.say("device (B)"_t), given.analysis.device});
    addRow(settings, {in.say("margin"_t), in.say("{} %"_t, exact(in, o.margin_pct))});
    addRow(settings, {in.say("confidence"_t), exact(in, o.confidence)});
    addRow(settings,
           {in.say("widest gap inside a pair"_t), in.say("{} min"_t, exact(in, o.max_gap_min))});
    addRow(settings, {in.say("seed of random deals"_t), std::to_string(o.seed)});
    for (const auto& [key, value] : core::propertiesAsText(given.study.properties)) {
        const bool shown = key == "margin" || key == "confidence" || key == "max_gap" ||
                           key == "baseline" || key == "name" || key == "notes";
        if (!shown && core::findLimit(key) == nullptr)
            addRow(settings, {key, value});
    }
    page.table(std::move(settings));

    Table limits{in.say("Limits of the rules"_t),
                 {{in.say("limit"_t)},
                  {in.say("value"_t), Column::number},
                  {in.say("unit"_t)},
                  {in.say("whose"_t), Column::words}},
                 {}};
    for (const core::LimitInfo& info : core::allLimits()) {
        const std::optional<double> value = core::limitOf(given.study.properties.limits, info.name);
        const bool set = given.study.properties.limits.count(info.name) > 0;
        addRow(limits,
               {std::string(info.name), value ? exact(in, *value) : "\u2013",
                wording::signText(in, info.unit),
                in.say(set     ? "set for this study"_t
                       : value ? "usual"_t
                               : "not set"_t)},
               value ? RowTone::plain : RowTone::quiet);
        for (const auto& [name, of_part] : given.study.properties.limits)
            if (name != info.name && core::findLimit(name) == &info)
                addRow(limits, {name, exact(in, of_part), wording::signText(in, info.unit),
                                in.say("set for this study"_t)});
    }
    page.table(std::move(limits));
    for (const core::Note& note : given.analysis.notes)
        page.paragraph(wording::noteSentence(in, note));
}

void addHistory(const Language& in, Builder& page, const std::vector<std::string>& lines)
{
    if (lines.empty())
        return;
    page.heading(in.say("What was changed, and when"_t));
    page.bullets(lines);
}

} // namespace bothways::app::report
