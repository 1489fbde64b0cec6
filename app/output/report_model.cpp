// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/report_model.h"

#include "app/output/device_rows.h"
#include "app/output/markup.h"
#include "app/output/report_builder.h"
#include "app/output/report_pictures.h"
#include "app/wording/checks.h"
#include "app/wording/companions.h"
#include "app/wording/findings.h"
#include "app/wording/numbers.h"
#include "app/wording/runs.h"
#include "app/wording/verdict.h"
#include "core/companions/companions.h"
#include "core/study/clock.h"

#include <fmt/format.h>

#include <optional>

namespace bothways::app::report {
namespace {

using core::Analysis;
using core::pctFromLog;

constexpr const char* kNothing = "\u2013";

std::string signedPct(const Language& in, std::optional<double> log)
{
    if (!log)
        return kNothing;
    const double pct = pctFromLog(*log);
    const std::string digits = fmt::format("{:.2f}", pct < 0.0 ? -pct : pct);
    const std::string sign = digits == "0.00" ? "" : pct < 0.0 ? "\u2212" : "+";
    return sign + localised(in, digits) + "\u00a0%";
}

std::string range(const Language& in, double low_log, double high_log)
{
    return in.say("{} to {}##interval"_t, signedPct(in, low_log), signedPct(in, high_log));
}

std::string pCell(const Language& in, double p)
{
    return p < 0.0001 ? in.say("< {}"_t, fixed(in, 0.0001, 4)) : fixed(in, p, 4);
}

std::string number(const Language& in, std::optional<double> value, int decimals)
{
    return value ? localised(in, fmt::format("{:.{}f}", *value, decimals)) : "";
}

/// "6", "6.25"
std::string general(const Language& in, double value)
{
    return localised(in, fmt::format("{:.4g}", value));
}

void head(Builder& page, const ReportInput& given)
{
    const Language& in = given.language;
    if (!given.study.runs.empty())
        page.paragraph(
            in.say("Driven on {}{}. {} runs."_t, core::formatDate(given.study.runs.front().start),
                   given.analysis.days > 1 ? in.say(" and later, {} days"_t, given.analysis.days)
                                           : std::string(),
                   given.study.runs.size()),
            Tone::quiet);
    if (!given.study.properties.notes.empty())
        page.paragraph(given.study.properties.notes);
}

void verdict(Builder& page, const ReportInput& given)
{
    const Language& in = given.language;
    const Analysis& a = given.analysis;
    page.paragraph(wording::verdictSentence(in, a, given.unit), Tone::verdict);
    wording::QualifierWords qualifiers = wording::qualifierWords(in, a);
    if (!given.warning.empty())
        qualifiers.first.push_back(given.warning);
    page.bullets(qualifiers.first);
    if (!qualifiers.more.empty())
        page.paragraph(in.say("More to this verdict:"_t));
    page.bullets(qualifiers.more);
    page.figure(
        intervalPicture(in, a),
        in.say("The effect with its {} % interval. Thick bar: the {} % interval of the equivalence "
               "test. Grey band: the margin. Line: no effect."_t,
               general(in, 100.0 * a.options.confidence),
               general(in, 200.0 * a.options.confidence - 100.0)));
    page.paragraph(wording::detectableSentence(in, a));
}

void pairs(Builder& page, const ReportInput& given)
{
    const Language& in = given.language;
    const Analysis& a = given.analysis;
    page.heading(in.say("The pairs"_t));
    page.paragraph(in.say("{} runs, {} counted, {} discarded; {} pairs in {} blocks."_t, a.runs,
                          a.counted, a.discarded, a.pairs.size(), a.blocks.size()));
    if (!a.unpaired.empty())
        page.paragraph(in.say(a.unpaired.size() == 1
                                  ? "Counted, but without a partner in its block: run {}."_t
                                  : "Counted, but without a partner in their block: runs {}."_t,
                              wording::runList(a.unpaired)));
    page.figure(pairsPicture(in, given.study, a, given.unit),
                in.say("Each pair. Blue discs: baseline; orange squares: device; hollow: discarded "
                       "runs; green: the model."_t));
    if (a.pairs.empty())
        return;
    Table table{in.say("The pairs"_t),
                {{in.say("pair"_t)},
                 {in.say("runs"_t)},
                 {in.say("block"_t), Column::number},
                 {in.say("configuration"_t)},
                 {in.say("hours"_t), Column::number},
                 {wording::unitText(in, given.unit, a.electric), Column::number},
                 {in.say("residual"_t), Column::number}},
                {}};
    for (std::size_t i = 0; i < a.pairs.size(); ++i) {
        const core::Pair& pair = a.pairs[i];
        addRow(table,
               {std::to_string(pair.number), in.say("{} and {}"_t, pair.out_run, pair.return_run),
                std::to_string(pair.block),
                pair.configuration + (pair.mixed_setting ? " " + in.say("(mixed setting)"_t) : "") +
                    (pair.fixed ? " " + in.say("(tied by hand)"_t) : ""),
                localised(in, fmt::format("{:.3f}", pair.time_h)),
                wording::consumptionText(in, pair.l_per_100km, given.unit, 3, a.electric),
                a.headline && i < a.headline->residuals.size()
                    ? signedPct(in, a.headline->residuals[i])
                    : ""});
    }
    page.table(std::move(table));
}

void companionRow(const Language& in, Table& table, core::Companion id,
                  const core::Interval* interval, const Analysis& a)
{
    if (!interval)
        addRow(table,
               {wording::companionWord(in, id), kNothing, kNothing, "", "", "",
                wording::companionSentence(in, id, a)},
               RowTone::quiet);
    else
        addRow(table, {wording::companionWord(in, id), signedPct(in, interval->effect_log),
                       range(in, interval->low_log, interval->high_log), pCell(in, interval->p),
                       general(in, interval->df), wording::classWords(in, interval->cls),
                       wording::companionSentence(in, id, a)});
}

/// What a setting is chosen by, beside its effect.
void deviceTable(Builder& page, const ReportInput& given)
{
    const DeviceRows shown = deviceRows(given.language, given.analysis, given.screening);
    if (shown.rows.empty())
        return;
    Table table{given.language.say("Output and rotor speed at road speed"_t), {}, {}};
    for (std::size_t i = 0; i < shown.head.size(); ++i)
        table.columns.push_back({shown.head[i], i < 3 ? Column::tight : Column::number});
    for (const std::vector<std::string>& row : shown.rows)
        addRow(table, row);
    page.table(std::move(table));
}

void companions(Builder& page, const ReportInput& given)
{
    const Language& in = given.language;
    const Analysis& a = given.analysis;
    if (!a.headline)
        return;
    const core::Headline& h = *a.headline;
    page.heading(in.say("Other roads to the same number"_t));
    page.figure(forestPicture(in, a),
                in.say("Headline, companions and settings. Thin: the Bonferroni interval."_t));
    Table table{in.say("Headline, companions and settings"_t),
                {{in.say("way"_t)},
                 {in.say("effect"_t), Column::number},
                 {in.say("interval"_t)},
                 {"p", Column::number},
                 {in.say("df##degrees of freedom"_t), Column::number},
                 {in.say("says##verdict"_t)},
                 {in.say("what it is"_t), Column::words}},
                {}};
    addRow(table,
           {in.say("headline"_t), signedPct(in, h.effect_log), range(in, h.low_log, h.high_log),
            pCell(in, h.p), general(in, h.df), wording::classWords(in, a.verdict.cls),
            in.say("Least squares over the pairs: the answer of this page."_t)},
           RowTone::strong);
    const core::Companions& c = a.companions;
    for (const auto& [companion, interval] : core::intervalsOf(c))
        companionRow(in, table, companion, interval, a);
    if (c.labels)
        addRow(table,
               {wording::companionWord(in, core::Companion::labels), "", "", pCell(in, c.labels->p),
                "", "", wording::companionSentence(in, core::Companion::labels, a)});
    for (const core::SettingEffect& s : c.settings)
        addRow(table,
               {in.say("setting {}"_t, s.setting.empty() ? in.say("(none noted)"_t) : s.setting),
                signedPct(in, s.effect_log), range(in, s.low_log, s.high_log), "", "", "",
                in.say("{} pairs; Bonferroni interval {}."_t, s.pairs,
                       range(in, s.low_bonferroni_log, s.high_bonferroni_log))});
    page.table(std::move(table));
    deviceTable(page, given);
}

/// What each day says alone, and whether they agree.
void days(const Language& in, Builder& page, const Analysis& a)
{
    if (a.companions.days.empty())
        return;
    page.heading(in.say("Each day for itself"_t), 3);
    page.paragraph(wording::daysCheckSentence(in, a));
    Table table{in.say("Each day for itself"_t),
                {{in.say("day"_t)},
                 {in.say("pairs"_t), Column::number},
                 {in.say("effect"_t), Column::number},
                 {in.say("interval"_t)}},
                {}};
    for (const core::DayEffect& day : a.companions.days)
        addRow(table, {std::to_string(day.day), std::to_string(day.pairs),
                       signedPct(in, day.effect_log), range(in, day.low_log, day.high_log)});
    page.table(std::move(table));
}

void checks(const Language& in, Builder& page, const Analysis& a)
{
    if (!a.headline)
        return;
    page.heading(in.say("Are the assumptions in order?"_t));
    page.paragraph(wording::checksPowerSentence(in, a));
    Table table{in.say("Checks of the assumptions"_t),
                {{in.say("check"_t)}, {in.say("state"_t)}, {in.say("in words"_t), Column::words}},
                {}};
    for (const auto& [check, state, sentence] : wording::checkWords(in, a)) {
        addRow(table, {check, wording::stateWords(in, state), sentence},
               state == core::CheckState::fails ? RowTone::alarmed : RowTone::plain);
    }
    page.table(std::move(table));
}

void sensitivity(const Language& in, Builder& page, const Analysis& a)
{
    if (!a.headline)
        return;
    page.heading(in.say("How fragile is it?"_t));
    page.paragraph(wording::leaveOneOutSentence(in, a));
    page.figure(leaveOneOutPicture(in, a),
                in.say("The effect in % with each pair left out in turn. Grey band: the headline's "
                       "interval; orange diamonds: another verdict."_t));
    page.paragraph(wording::discardsRestoredSentence(in, a));
    const core::DiscardsRestored& restored = a.discards_restored;
    if (restored.each.empty())
        return;
    Table table{in.say("Discards put back"_t),
                {{in.say("put back"_t)},
                 {in.say("effect"_t), Column::number},
                 {in.say("says##verdict"_t), Column::words}},
                {}};
    if (restored.all)
        addRow(table,
               {in.say("all of them"_t), signedPct(in, restored.all->effect_log),
                wording::classWords(in, restored.all->cls)},
               RowTone::strong);
    for (const core::RestoredTurn& turn : restored.each)
        addRow(table, {in.say("run {}"_t, turn.run), signedPct(in, turn.effect_log),
                       turn.possible ? wording::classWords(in, turn.cls)
                                     : in.say("cannot be put back: it has no consumption"_t)});
    page.table(std::move(table));
}

/// Why a run does not count, and what was noted on it.
std::string wordsOn(const Language& in, const core::Run& run)
{
    std::string words;
    if (run.discard)
        words = wording::reasonWord(in, run.discard->reason) +
                (run.discard->evidence.empty() ? "" : ": " + run.discard->evidence);
    if (!run.notes.empty())
        words += (words.empty() ? "" : "; ") + run.notes;
    return words;
}

void runs(Builder& page, const ReportInput& given)
{
    const Language& in = given.language;
    page.heading(in.say("Every run, as the day was"_t));
    if (given.study.runs.empty()) {
        page.paragraph(in.say("There are no runs."_t));
        return;
    }
    Table table{in.say("Every run"_t),
                {{in.say("run"_t)},
                 {in.say("configuration"_t)},
                 {in.say("setting"_t)},
                 {in.say("direction"_t)},
                 {in.say("start"_t)},
                 {"s", Column::number},
                 {"km", Column::number},
                 {wording::unitText(in, given.unit, given.analysis.electric), Column::number},
                 {in.say("state"_t)},
                 {in.say("reason, evidence, notes"_t), Column::words}},
                {}};
    std::string day = core::formatDate(given.study.runs.front().start);
    for (const core::Run& run : given.study.runs) {
        const std::string its = core::formatDate(run.start);
        const auto c = core::lPer100km(run);
        addRow(table,
               {std::to_string(run.number), run.configuration, run.setting, run.direction,
                (its == day ? "" : its + " ") + core::formatTimeOfDay(run.start),
                number(in, run.duration_s, 0), number(in, run.distance_km, 2),
                c ? wording::consumptionText(in, *c, given.unit, 3, given.analysis.electric) : "",
                in.say(run.discard ? "discarded"_t : "counted"_t), wordsOn(in, run)},
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

void madeFrom(Builder& page, const ReportInput& given)
{
    page.heading(given.language.say("Made from"_t));
    page.paragraph(fmt::format("{}, SHA-256 {}", given.sourceName, given.inputSha256), Tone::quiet);
    for (const std::string& recording : given.liveRecordings)
        page.paragraph(recording + ".", Tone::quiet);
    page.paragraph(given.madeBy + ".", Tone::quiet);
}

} // namespace

Report makeReport(const ReportInput& given)
{
    const Language& in = given.language;
    Builder page(in);
    head(page, given);
    verdict(page, given);
    pairs(page, given);
    companions(page, given);
    days(in, page, given.analysis);
    checks(in, page, given.analysis);
    sensitivity(in, page, given.analysis);
    addFindings(page, given);
    runs(page, given);
    addSettings(page, given);
    addHistory(in, page, given.historyLines);
    page.append(methodParts(in));
    madeFrom(page, given);
    const std::string& name = given.study.properties.name;
    return {escaped(name.empty() ? given.sourceName : name), given.inputSha256,
            std::move(page).take()};
}

} // namespace bothways::app::report
