// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/analysis_text.h"

#include "app/output/device_rows.h"

#include "app/output/text_layout.h"
#include "app/wording/alike_findings.h"
#include "app/wording/checks.h"
#include "app/wording/companions.h"
#include "app/wording/findings.h"
#include "app/wording/numbers.h"
#include "app/wording/runs.h"
#include "app/wording/verdict.h"
#include "core/companions/companions.h"
#include "core/study/units.h"

#include <fmt/format.h>

#include <algorithm>

namespace bothways::app {
namespace {

using core::Analysis;
using core::CheckState;
using core::pctFromLog;

std::string bullet(std::string_view sentence)
{
    return wrapped(fmt::format("  - {}", sentence), 4) + "\n";
}

std::string verdictPart(const Language& in, const Analysis& analysis, const TextOptions& options,
                        const Paint& paint)
{
    std::string text =
        paint.bold(wrapped(wording::verdictSentence(in, analysis, options.unit), 0)) + "\n";
    const wording::QualifierWords qualifiers = wording::qualifierWords(in, analysis);
    for (const std::string& sentence : qualifiers.first)
        text += paint.alarm(wrapped("  ! " + sentence, 4)) + "\n";
    for (const std::string& warning : options.warnings)
        text += paint.alarm(wrapped("  ! " + warning, 4)) + "\n";
    if (!qualifiers.more.empty())
        text += "  " + in.say("More to this verdict:"_t) + "\n";
    for (const std::string& sentence : qualifiers.more)
        text += bullet(sentence);
    return text;
}

std::string designWords(const Language& in, const std::optional<core::Design>& design)
{
    if (!design)
        return in.say("no comparison"_t);
    return in.say(*design == core::Design::closed ? "closed design"_t : "open design"_t);
}

std::string dayPart(const Language& in, const Analysis& analysis, const Paint& paint)
{
    std::string text = heading(in.say("The day"_t), paint);
    const std::string runs = counted(in, analysis.runs, "run"_t, "runs"_t);
    text += "  ";
    text +=
        analysis.unpaired.empty()
            ? in.say("{}: {} counted, {} discarded"_t, runs, analysis.counted, analysis.discarded)
            : in.say("{}: {} counted, {} discarded; without a partner: {}"_t, runs,
                     analysis.counted, analysis.discarded,
                     wording::runsWords(in, analysis.unpaired));
    text += "\n";
    std::string blocks;
    for (const core::Block& block : analysis.blocks)
        blocks += fmt::format("{}{} {}", blocks.empty() ? "" : ", ",
                              wording::inQuotes(in, block.configuration),
                              counted(in, block.pairs, "pair"_t, "pairs"_t));
    if (!blocks.empty())
        text +=
            wrapped(fmt::format("  {}: {}", designWords(in, analysis.design), blocks), 4) + "\n";
    if (analysis.days > 1)
        text += "  " + in.say("driven over {} days"_t, analysis.days) + "\n";
    return text;
}

std::vector<std::string> effectRow(const Language& in, const std::string& way, double effect_log,
                                   double low_log, double high_log, double p, double df,
                                   core::VerdictClass cls)
{
    const double low = pctFromLog(low_log);
    const double high = pctFromLog(high_log);
    const int decimals = decimalsFor(0.5 * (high - low));
    return {way,
            change(in, pctFromLog(effect_log), decimals),
            changeRange(in, low, high, decimals),
            p < 0.001 ? in.say("< {}"_t, fixed(in, 0.001, 3)) : significant(in, p),
            shortest(in, df),
            wording::classWords(in, cls)};
}

void addCompanion(const Language& in, TextTable& table, core::Companion companion,
                  const core::Interval* interval)
{
    const std::string way = wording::companionWord(in, companion);
    if (interval == nullptr) {
        table.add({way, "-", in.say("not from these runs"_t)});
        return;
    }
    table.add(effectRow(in, way, interval->effect_log, interval->low_log, interval->high_log,
                        interval->p, interval->df, interval->cls));
}

std::string waysPart(const Language& in, const Analysis& analysis, const Paint& paint)
{
    if (!analysis.headline)
        return {};
    const core::Headline& headline = *analysis.headline;
    const core::Companions& others = analysis.companions;
    TextTable table({in.say("way"_t), in.say("effect"_t),
                     in.say("{} interval"_t, intervalPercent(in, headline.confidence)), "p",
                     in.say("df##degrees of freedom"_t), in.say("says##verdict"_t)});
    table.add(effectRow(in, in.say("headline"_t), headline.effect_log, headline.low_log,
                        headline.high_log, headline.p, headline.df, analysis.verdict.cls));
    for (const auto& [companion, interval] : core::intervalsOf(others))
        addCompanion(in, table, companion, interval);
    std::string text = heading(in.say("Ways to the number"_t), paint) + table.text();
    if (headline.drift_log_per_h) {
        const double drift = pctFromLog(*headline.drift_log_per_h);
        text += "  " +
                in.say("drift over the day: {} an hour"_t,
                       change(in, drift, decimalsFor(0.5 * std::abs(drift)))) +
                "\n";
    }
    text += bullet(wording::companionSentence(in, core::Companion::labels, analysis));
    if (others.borrowed)
        text += bullet(wording::companionSentence(in, core::Companion::borrowed, analysis));
    return text;
}

/// What each day says alone, and whether they agree.
std::string daysPart(const Language& in, const Analysis& analysis, const Paint& paint)
{
    if (analysis.companions.days.empty())
        return {};
    TextTable table({in.say("day"_t), in.say("pairs"_t), in.say("effect"_t),
                     in.say("{} interval"_t, intervalPercent(in, analysis.options.confidence))});
    for (const core::DayEffect& day : analysis.companions.days) {
        const double low = pctFromLog(day.low_log);
        const double high = pctFromLog(day.high_log);
        const int decimals = decimalsFor(0.5 * (high - low));
        table.add({std::to_string(day.day), std::to_string(day.pairs),
                   change(in, pctFromLog(day.effect_log), decimals),
                   changeRange(in, low, high, decimals)});
    }
    return heading(in.say("Each day for itself"_t), paint) + table.text() +
           bullet(wording::daysCheckSentence(in, analysis));
}

std::string settingsPart(const Language& in, const Analysis& analysis, const Paint& paint)
{
    if (analysis.companions.settings.empty())
        return {};
    TextTable table(
        {in.say("setting"_t), in.say("pairs"_t), in.say("effect"_t),
         in.say("{} interval"_t, intervalPercent(in, analysis.options.confidence)),
         in.say("the same, for {} at once (Bonferroni)"_t, analysis.companions.settings.size())});
    for (const core::SettingEffect& effect : analysis.companions.settings) {
        const double low = pctFromLog(effect.low_log);
        const double high = pctFromLog(effect.high_log);
        const int decimals = decimalsFor(0.5 * (high - low));
        table.add({effect.setting.empty() ? in.say("(none noted)"_t) : effect.setting,
                   std::to_string(effect.pairs),
                   change(in, pctFromLog(effect.effect_log), decimals),
                   changeRange(in, low, high, decimals),
                   changeRange(in, pctFromLog(effect.low_bonferroni_log),
                               pctFromLog(effect.high_bonferroni_log), decimals)});
    }
    return heading(in.say("By setting"_t), paint) + table.text();
}

/// What a setting is chosen by, beside its effect.
std::string devicePart(const Language& in, const Analysis& analysis,
                       const core::Screening& screening, const Paint& paint)
{
    const DeviceRows shown = deviceRows(in, analysis, screening);
    if (shown.rows.empty())
        return {};
    TextTable table(shown.head);
    for (const std::vector<std::string>& row : shown.rows)
        table.add(row);
    return heading(in.say("Output and rotor speed at road speed"_t), paint) + table.text();
}

std::string stateWord(const Language& in, CheckState state)
{
    return state == CheckState::notComputed ? "-" : wording::stateWords(in, state);
}

std::string painted(CheckState state, const std::string& text, const Paint& paint)
{
    switch (state) {
    case CheckState::holds: return text;
    case CheckState::note:
    case CheckState::fails: return paint.alarm(text);
    case CheckState::notComputed: return paint.dim(text);
    }
    return text;
}

std::string checksPart(const Language& in, const Analysis& analysis, const Paint& paint)
{
    if (!analysis.headline)
        return {};
    std::size_t checkWidth = 0, stateWidth = 0;
    for (const wording::CheckKind kind : wording::kCheckKinds)
        checkWidth = std::max(checkWidth, columnsOf(wording::checkWord(in, kind)) + 1);
    for (const CheckState state : {CheckState::holds, CheckState::note, CheckState::fails})
        stateWidth = std::max(stateWidth, columnsOf(stateWord(in, state)) + 1);
    std::string text = heading(in.say("Checks"_t), paint);
    for (const auto& [check, state, sentence] : wording::checkWords(in, analysis)) {
        // Wrapped without colour, so that escape sequences do not count as columns.
        const std::string first = "  " + padded(check, checkWidth);
        const std::string second = padded(stateWord(in, state), stateWidth);
        std::string line = wrapped(first + second + sentence, 2 + checkWidth + stateWidth);
        line.replace(first.size(), second.size(), painted(state, second, paint));
        text += line + "\n";
    }
    const std::string power = wording::checksPowerSentence(in, analysis);
    return power.empty() ? text : text + wrapped("  " + power, 2) + "\n";
}

std::string restoredWords(const Language& in, const Analysis& analysis,
                          const core::RestoredTurn& turn)
{
    if (!turn.possible)
        return in.say("has no consumption, so it cannot be put back"_t);
    if (!turn.effect_log)
        return in.say("no verdict with it"_t);
    const int decimals =
        analysis.headline
            ? decimalsFor(50.0 * (analysis.headline->high_log - analysis.headline->low_log))
            : 2;
    return fmt::format("{}, {}", change(in, pctFromLog(*turn.effect_log), decimals),
                       wording::classWords(in, turn.cls));
}

std::string surenessPart(const Language& in, const Analysis& analysis, const Paint& paint)
{
    std::string text = heading(in.say("How sure, how fragile"_t), paint);
    if (analysis.headline) {
        text += bullet(wording::detectableSentence(in, analysis));
        text += bullet(wording::leaveOneOutSentence(in, analysis));
    }
    text += bullet(wording::discardsRestoredSentence(in, analysis));
    for (const core::RestoredTurn& turn : analysis.discards_restored.each)
        text += "      " +
                in.say("with run {}: {}"_t, turn.run, restoredWords(in, analysis, turn)) + "\n";
    return text;
}

std::string notesPart(const Language& in, const Analysis& analysis, const TextOptions& options,
                      const Paint& paint)
{
    if (options.notes.empty() && analysis.notes.empty())
        return {};
    std::string text = heading(in.say("Notes"_t), paint);
    for (const std::string& note : options.notes)
        text += bullet(note);
    for (const core::Note& note : analysis.notes)
        text += bullet(wording::noteSentence(in, note));
    return text;
}

} // namespace

std::string analysisText(const Analysis& analysis, const core::Screening& screening,
                         const TextOptions& options)
{
    const Language& in = options.language;
    const Paint paint(options.colour);
    std::string text = verdictPart(in, analysis, options, paint);
    text += dayPart(in, analysis, paint);
    text += waysPart(in, analysis, paint);
    text += daysPart(in, analysis, paint);
    text += settingsPart(in, analysis, paint);
    text += devicePart(in, analysis, screening, paint);
    text += checksPart(in, analysis, paint);
    text += surenessPart(in, analysis, paint);
    if (!screening.findings.empty()) {
        text += heading(in.say("Findings"_t), paint);
        for (const wording::AlikeFindings& alike : wording::alikeFindings(in, screening.findings))
            text += bullet(fmt::format("{} [{}]", alike.sentence(in),
                                       wording::gradeWord(in, alike.first->grade)));
    }
    return text + notesPart(in, analysis, options, paint);
}

} // namespace bothways::app
