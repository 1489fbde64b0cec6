// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_model.h"

#include "app/output/markup.h"
#include "app/output/report_builder.h"
#include "app/output/report_pictures.h"
#include "app/wording/checks.h"
#include "app/wording/companions.h"
#include "app/wording/verdict.h"
#include "core/study/clock.h"

#include <fmt/format.h>

#include <optional>

namespace bothways::app::report {
namespace {

using core::Analysis;
using core::pctFromLog;

constexpr const char* kNothing = "\u2013";

std::string signedPct(std::optional<double> log)
{
    if (!log)
        return kNothing;
    const double pct = pctFromLog(*log);
    const std::string digits = fmt::format("{:.2f}", pct < 0.0 ? -pct : pct);
    if (digits == "0.00")
        return "0.00\u00a0%";
    return (pct < 0.0 ? "\u2212" : "+") + digits + "\u00a0%";
}

std::string range(double low_log, double high_log)
{
    return signedPct(low_log) + " to " + signedPct(high_log);
}

std::string pText(double p)
{
    return p < 0.0001 ? "< 0.0001" : fmt::format("{:.4f}", p);
}

std::string number(std::optional<double> value, int decimals)
{
    return value ? fmt::format("{:.{}f}", *value, decimals) : "";
}

void head(Builder& page, const ReportInput& in)
{
    if (!in.study.runs.empty())
        page.paragraph(
            fmt::format("Driven on {}{}. {} runs.", core::formatDate(in.study.runs.front().start),
                        in.analysis.days > 1 ? fmt::format(" and later, {} days", in.analysis.days)
                                             : "",
                        in.study.runs.size()),
            Tone::quiet);
    if (!in.study.properties.notes.empty())
        page.paragraph(in.study.properties.notes);
}

void verdict(Builder& page, const ReportInput& in)
{
    const Analysis& a = in.analysis;
    page.paragraph(wording::verdictSentence(Language::english(), a, in.unit), Tone::verdict);
    std::vector<std::string> weakPoints;
    for (const core::Qualifier qualifier : a.verdict.qualifiers)
        weakPoints.push_back(wording::qualifierSentence(Language::english(), qualifier, a));
    if (!in.warning.empty())
        weakPoints.push_back(in.warning);
    page.bullets(weakPoints);
    page.figure(
        intervalPicture(a),
        fmt::format("The effect with its {:.4g} % interval. Thick bar: the {:.4g} % interval "
                    "of the equivalence test. Grey band: the margin. Line: no effect.",
                    100.0 * a.options.confidence, 200.0 * a.options.confidence - 100.0));
    page.paragraph(wording::detectableSentence(Language::english(), a));
}

void pairs(Builder& page, const ReportInput& in)
{
    const Analysis& a = in.analysis;
    page.heading("The pairs");
    page.paragraph(fmt::format("{} runs, {} counted, {} discarded; {} pairs in {} blocks.", a.runs,
                               a.counted, a.discarded, a.pairs.size(), a.blocks.size()));
    if (!a.unpaired.empty())
        page.paragraph(fmt::format("Counted, but without a partner in {} block: run{} {}.",
                                   a.unpaired.size() == 1 ? "its" : "their",
                                   a.unpaired.size() == 1 ? "" : "s", fmt::join(a.unpaired, ", ")));
    page.figure(pairsPicture(in.study, a, in.unit),
                "Each pair. Grey discs: baseline; blue diamonds: device; hollow: discarded runs; "
                "green: the model.");
    if (a.pairs.empty())
        return;
    Table table{"The pairs",
                {{"pair"},
                 {"runs"},
                 {"block", Column::number},
                 {"configuration"},
                 {"hours", Column::number},
                 {wording::unitText(Language::english(), in.unit, a.electric), Column::number},
                 {"residual", Column::number}},
                {}};
    for (std::size_t i = 0; i < a.pairs.size(); ++i) {
        const core::Pair& pair = a.pairs[i];
        addRow(table,
               {std::to_string(pair.number),
                fmt::format("{} and {}", pair.out_run, pair.return_run), std::to_string(pair.block),
                pair.configuration + (pair.mixed_setting ? " (mixed setting)" : "") +
                    (pair.fixed ? " (tied by hand)" : ""),
                fmt::format("{:.3f}", pair.time_h),
                wording::consumptionText(Language::english(), pair.l_per_100km, in.unit, 3,
                                         a.electric),
                a.headline && i < a.headline->residuals.size() ? signedPct(a.headline->residuals[i])
                                                               : ""});
    }
    page.table(std::move(table));
}

void companionRow(Table& table, core::Companion id, const std::optional<core::Interval>& interval,
                  const Analysis& a)
{
    if (!interval)
        addRow(table,
               {std::string(name(id)), kNothing, kNothing, "", "", "",
                wording::companionSentence(Language::english(), id, a)},
               RowTone::quiet);
    else
        addRow(table, {std::string(name(id)), signedPct(interval->effect_log),
                       range(interval->low_log, interval->high_log), pText(interval->p),
                       fmt::format("{:.4g}", interval->df),
                       wording::classWords(Language::english(), interval->cls),
                       wording::companionSentence(Language::english(), id, a)});
}

void companions(Builder& page, const ReportInput& in)
{
    const Analysis& a = in.analysis;
    if (!a.headline)
        return;
    const core::Headline& h = *a.headline;
    page.heading("Other roads to the same number");
    page.figure(forestPicture(a),
                "Headline, companions and settings. Thin: the Bonferroni interval.");
    Table table{"Headline, companions and settings",
                {{"way"},
                 {"effect", Column::number},
                 {"interval"},
                 {"p", Column::number},
                 {"df", Column::number},
                 {"says"},
                 {"what it is", Column::words}},
                {}};
    addRow(table,
           {"headline", signedPct(h.effect_log), range(h.low_log, h.high_log), pText(h.p),
            fmt::format("{:.4g}", h.df), wording::classWords(Language::english(), a.verdict.cls),
            "Least squares over the pairs: the answer of this page."},
           RowTone::strong);
    const core::Companions& c = a.companions;
    companionRow(table, core::Companion::bracket, c.bracket, a);
    companionRow(table, core::Companion::runs, c.runs, a);
    companionRow(table, core::Companion::blocks, c.blocks, a);
    companionRow(table, core::Companion::correlated,
                 c.correlated ? std::optional<core::Interval>(*c.correlated) : std::nullopt, a);
    if (c.labels)
        addRow(table,
               {"labels", "", "", pText(c.labels->p), "", "",
                wording::companionSentence(Language::english(), core::Companion::labels, a)});
    for (const core::SettingEffect& s : c.settings)
        addRow(table, {"setting " + (s.setting.empty() ? std::string("(none noted)") : s.setting),
                       signedPct(s.effect_log), range(s.low_log, s.high_log), "", "", "",
                       fmt::format("{} pairs; Bonferroni interval {}.", s.pairs,
                                   range(s.low_bonferroni_log, s.high_bonferroni_log))});
    page.table(std::move(table));
}

void checks(Builder& page, const Analysis& a)
{
    if (!a.headline)
        return;
    page.heading("Are the assumptions in order?");
    page.paragraph(wording::checksPowerSentence(Language::english(), a));
    Table table{
        "Checks of the assumptions", {{"check"}, {"state"}, {"in words", Column::words}}, {}};
    for (const auto& [check, state, sentence] : wording::checkWords(Language::english(), a)) {
        addRow(table, {check, wording::stateWords(Language::english(), state), sentence},
               state == core::CheckState::fails ? RowTone::alarmed : RowTone::plain);
    }
    page.table(std::move(table));
}

void sensitivity(Builder& page, const Analysis& a)
{
    if (!a.headline)
        return;
    page.heading("How fragile is it?");
    page.paragraph(wording::leaveOneOutSentence(Language::english(), a));
    page.figure(leaveOneOutPicture(a),
                "The effect in % with each pair left out in turn. Grey band: the headline's "
                "interval; orange diamonds: another verdict.");
    page.paragraph(wording::discardsRestoredSentence(Language::english(), a));
    const core::DiscardsRestored& restored = a.discards_restored;
    if (restored.each.empty())
        return;
    Table table{"Discards put back",
                {{"put back"}, {"effect", Column::number}, {"says", Column::words}},
                {}};
    if (restored.all)
        addRow(table,
               {"all of them", signedPct(restored.all->effect_log),
                wording::classWords(Language::english(), restored.all->cls)},
               RowTone::strong);
    for (const core::RestoredTurn& turn : restored.each)
        addRow(table, {fmt::format("run {}", turn.run), signedPct(turn.effect_log),
                       turn.possible ? wording::classWords(Language::english(), turn.cls)
                                     : "cannot be put back: it has no consumption"});
    page.table(std::move(table));
}

/// Why a run does not count, and what was noted on it.
std::string wordsOn(const core::Run& run)
{
    std::string words;
    if (run.discard)
        words = run.discard->reason +
                (run.discard->evidence.empty() ? "" : ": " + run.discard->evidence);
    if (!run.notes.empty())
        words += (words.empty() ? "" : "; ") + run.notes;
    return words;
}

void runs(Builder& page, const ReportInput& in)
{
    page.heading("Every run, as the day was");
    if (in.study.runs.empty()) {
        page.paragraph("There are no runs.");
        return;
    }
    Table table{
        "Every run",
        {{"run"},
         {"configuration"},
         {"setting"},
         {"direction"},
         {"start"},
         {"s", Column::number},
         {"km", Column::number},
         {wording::unitText(Language::english(), in.unit, in.analysis.electric), Column::number},
         {"state"},
         {"reason, evidence, notes", Column::words}},
        {}};
    std::string day = core::formatDate(in.study.runs.front().start);
    for (const core::Run& run : in.study.runs) {
        const std::string its = core::formatDate(run.start);
        const auto c = core::lPer100km(run);
        addRow(
            table,
            {std::to_string(run.number), run.configuration, run.setting, run.direction,
             (its == day ? "" : its + " ") + core::formatTimeOfDay(run.start),
             number(run.duration_s, 0), number(run.distance_km, 2),
             c ? wording::consumptionText(Language::english(), *c, in.unit, 3, in.analysis.electric)
               : "",
             run.discard ? "discarded" : "counted", wordsOn(run)},
            run.discard ? RowTone::quiet : RowTone::plain);
        day = its;
        if (run.discard)
            for (const std::size_t struck : {0, 7}) {
                std::string& cell = table.rows.back().cells[struck];
                if (!cell.empty())
                    cell = "<s>" + cell + "</s>";
            }
    }
    page.table(std::move(table));
}

void madeFrom(Builder& page, const ReportInput& in)
{
    page.heading("Made from");
    page.paragraph(fmt::format("{}, SHA-256 {}", in.sourceName, in.inputSha256), Tone::quiet);
    page.paragraph(in.madeBy + ".", Tone::quiet);
}

} // namespace

Report makeReport(const ReportInput& in)
{
    Builder page;
    head(page, in);
    verdict(page, in);
    pairs(page, in);
    companions(page, in);
    checks(page, in.analysis);
    sensitivity(page, in.analysis);
    addFindings(page, in);
    runs(page, in);
    addSettings(page, in);
    addHistory(page, in.historyLines);
    page.append(methodParts());
    madeFrom(page, in);
    const std::string& name = in.study.properties.name;
    return {escaped(name.empty() ? in.sourceName : name), in.inputSha256, std::move(page).take()};
}

} // namespace bothways::app::report
