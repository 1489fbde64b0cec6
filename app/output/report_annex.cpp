// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_builder.h"
#include "app/wording/companions.h"
#include "app/wording/findings.h"

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

/// "2, 3, 5\u20139": runs as the day had them, neighbours drawn together.
std::string runList(const std::vector<int>& numbers)
{
    std::string text;
    for (std::size_t i = 0; i < numbers.size();) {
        std::size_t last = i;
        while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1)
            ++last;
        text += text.empty() ? "" : ", ";
        if (last < i + 2) // two neighbours are no range
            last = i;
        text += last == i ? std::to_string(numbers[i])
                          : fmt::format("{}\u2013{}", numbers[i], numbers[last]);
        i = last + 1;
    }
    return text;
}

/// Runs that a rule could not look at, and why; the same for several rules is one fact.
struct Unchecked {
    std::string why;
    std::vector<int> runs;
    std::vector<std::string> rules;
};

std::vector<Unchecked> uncheckedFacts(const std::vector<core::NotChecked>& entries)
{
    std::vector<Unchecked> single; // of one rule each
    for (const core::NotChecked& entry : entries) {
        const std::string rule(ruleName(entry.rule));
        const std::string why = wording::whyNotChecked(Language::english(), entry);
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

void addFindings(Builder& page, const ReportInput& in)
{
    page.heading("What screening found");
    std::vector<std::string> found;
    for (const core::Finding& finding : in.screening.findings)
        found.push_back(fmt::format("[{}] {}", gradeName(finding.grade),
                                    wording::findingSentence(Language::english(), finding)));
    if (found.empty())
        page.paragraph("No rule that could be checked found anything.");
    page.bullets(found);
    if (in.screening.pattern)
        page.paragraph(wording::patternSentence(Language::english(), *in.screening.pattern));
    std::vector<std::string> unchecked;
    for (const Unchecked& fact : uncheckedFacts(in.screening.not_checked)) {
        const bool all = fact.runs.size() == in.study.runs.size();
        unchecked.push_back(fmt::format("{}: {} ({})", fmt::join(fact.rules, ", "), fact.why,
                                        all                     ? "all runs"
                                        : fact.runs.size() == 1 ? "run " + runList(fact.runs)
                                                                : "runs " + runList(fact.runs)));
    }
    if (unchecked.empty())
        return;
    page.paragraph("Not checked, which is not the same as passed:");
    page.bullets(unchecked);
}

void addSettings(Builder& page, const ReportInput& in)
{
    page.heading("Settings and limits used");
    const core::AnalysisOptions& o = in.analysis.options;
    Table settings{"Settings", {{"setting"}, {"value", Column::words}}, {}};
    addRow(settings, {"baseline (A)", in.analysis.baseline});
    addRow(settings, {"device (B)", in.analysis.device});
    addRow(settings, {"margin", fmt::format("{} %", o.margin_pct)});
    addRow(settings, {"confidence", fmt::format("{}", o.confidence)});
    addRow(settings, {"widest gap inside a pair", fmt::format("{} min", o.max_gap_min)});
    addRow(settings, {"seed of random deals", std::to_string(o.seed)});
    for (const auto& [key, value] : core::propertiesAsText(in.study.properties)) {
        const bool shown = key == "margin" || key == "confidence" || key == "max_gap" ||
                           key == "baseline" || key == "name" || key == "notes";
        if (!shown && core::findLimit(key) == nullptr)
            addRow(settings, {key, value});
    }
    page.table(std::move(settings));

    Table limits{"Limits of the rules",
                 {{"limit"}, {"value", Column::number}, {"unit"}, {"whose", Column::words}},
                 {}};
    for (const core::LimitInfo& info : core::allLimits()) {
        const std::optional<double> value = core::limitOf(in.study.properties.limits, info.name);
        const bool set = in.study.properties.limits.count(info.name) > 0;
        addRow(limits,
               {std::string(info.name), value ? fmt::format("{}", *value) : "\u2013",
                std::string(info.unit),
                set     ? "set for this study"
                : value ? "usual"
                        : "not set"},
               value ? RowTone::plain : RowTone::quiet);
    }
    page.table(std::move(limits));
    for (const core::Note& note : in.analysis.notes)
        page.paragraph(wording::noteSentence(Language::english(), note));
}

void addHistory(Builder& page, const std::vector<std::string>& lines)
{
    if (lines.empty())
        return;
    page.heading("What was changed, and when");
    page.bullets(lines);
}

} // namespace bothways::app::report
