// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/analysis_text.h"

#include "app/output/text_layout.h"
#include "app/wording/checks.h"
#include "app/wording/companions.h"
#include "app/wording/findings.h"
#include "app/wording/numbers.h"
#include "app/wording/verdict.h"
#include "core/study/units.h"

#include <fmt/format.h>

namespace bothways::app {
namespace {

using core::Analysis;
using core::CheckState;
using core::pctFromLog;

std::string bullet(std::string_view sentence)
{
    return wrapped(fmt::format("  - {}", sentence), 4) + "\n";
}

std::string verdictPart(const Analysis& analysis, const TextOptions& options, const Paint& paint)
{
    std::string text =
        paint.bold(
            wrapped(wording::verdictSentence(Language::english(), analysis, options.unit), 0)) +
        "\n";
    for (const core::Qualifier qualifier : analysis.verdict.qualifiers)
        text +=
            paint.alarm(wrapped(
                "  ! " + wording::qualifierSentence(Language::english(), qualifier, analysis), 4)) +
            "\n";
    for (const std::string& warning : options.warnings)
        text += paint.alarm(wrapped("  ! " + warning, 4)) + "\n";
    return text;
}

std::string listed(const std::vector<int>& numbers)
{
    return fmt::format("{}", fmt::join(numbers, ", "));
}

std::string dayPart(const Analysis& analysis, const Paint& paint)
{
    std::string text = heading("The day", paint);
    text += fmt::format("  {}: {} counted, {} discarded{}\n", counted(analysis.runs, "run", "runs"),
                        analysis.counted, analysis.discarded,
                        analysis.unpaired.empty()
                            ? std::string()
                            : "; without a partner: run " + listed(analysis.unpaired));
    std::string blocks;
    for (const core::Block& block : analysis.blocks)
        blocks += fmt::format("{}{} {}", blocks.empty() ? "" : ", ",
                              wording::inQuotes(Language::english(), block.configuration),
                              counted(block.pairs, "pair", "pairs"));
    const char* design = "no comparison";
    if (analysis.design)
        design = *analysis.design == core::Design::closed ? "closed design" : "open design";
    if (!blocks.empty())
        text += wrapped(fmt::format("  {}: {}", design, blocks), 4) + "\n";
    if (analysis.days > 1)
        text += fmt::format("  driven over {} days\n", analysis.days);
    return text;
}

std::vector<std::string> effectRow(const char* way, double effect_log, double low_log,
                                   double high_log, double p, double df, core::VerdictClass cls)
{
    const double low = pctFromLog(low_log);
    const double high = pctFromLog(high_log);
    const int decimals = decimalsFor(0.5 * (high - low));
    return {way,
            change(pctFromLog(effect_log), decimals),
            changeRange(low, high, decimals),
            p < 0.001 ? "< 0.001" : significant(p),
            shortest(df),
            wording::classWords(Language::english(), cls)};
}

void addCompanion(TextTable& table, const char* way, const core::Interval* interval)
{
    if (interval == nullptr) {
        table.add({way, "-", "not from these runs"});
        return;
    }
    table.add(effectRow(way, interval->effect_log, interval->low_log, interval->high_log,
                        interval->p, interval->df, interval->cls));
}

std::string waysPart(const Analysis& analysis, const Paint& paint)
{
    if (!analysis.headline)
        return {};
    const core::Headline& headline = *analysis.headline;
    const core::Companions& others = analysis.companions;
    TextTable table(
        {"way", "effect", percentText(headline.confidence) + " interval", "p", "df", "says"});
    table.add(effectRow("headline", headline.effect_log, headline.low_log, headline.high_log,
                        headline.p, headline.df, analysis.verdict.cls));
    addCompanion(table, "bracket", others.bracket ? &*others.bracket : nullptr);
    addCompanion(table, "runs", others.runs ? &*others.runs : nullptr);
    addCompanion(table, "blocks", others.blocks ? &*others.blocks : nullptr);
    addCompanion(table, "correlated", others.correlated ? &*others.correlated : nullptr);
    std::string text = heading("Ways to the number", paint) + table.text();
    if (headline.drift_log_per_h) {
        const double drift = pctFromLog(*headline.drift_log_per_h);
        text += fmt::format("  drift over the day: {} an hour\n",
                            change(drift, decimalsFor(0.5 * std::abs(drift))));
    }
    return text + bullet(wording::companionSentence(Language::english(), core::Companion::labels,
                                                    analysis));
}

std::string settingsPart(const Analysis& analysis, const Paint& paint)
{
    if (analysis.companions.settings.empty())
        return {};
    const std::string confidence = percentText(analysis.options.confidence);
    TextTable table({"setting", "pairs", "effect", confidence + " interval",
                     "the same, for " + std::to_string(analysis.companions.settings.size()) +
                         " at once (Bonferroni)"});
    for (const core::SettingEffect& effect : analysis.companions.settings) {
        const double low = pctFromLog(effect.low_log);
        const double high = pctFromLog(effect.high_log);
        const int decimals = decimalsFor(0.5 * (high - low));
        table.add({effect.setting.empty() ? "(none noted)" : effect.setting,
                   std::to_string(effect.pairs), change(pctFromLog(effect.effect_log), decimals),
                   changeRange(low, high, decimals),
                   changeRange(pctFromLog(effect.low_bonferroni_log),
                               pctFromLog(effect.high_bonferroni_log), decimals)});
    }
    return heading("By setting", paint) + table.text();
}

constexpr std::size_t kStateWidth = 8;

std::string stateText(CheckState state, const Paint& paint)
{
    const std::string word =
        state == CheckState::notComputed ? "-" : wording::stateWords(Language::english(), state);
    const std::string text = fmt::format("{:<{}}", word, kStateWidth);
    switch (state) {
    case CheckState::holds: return text;
    case CheckState::note:
    case CheckState::fails: return paint.alarm(text);
    case CheckState::notComputed: return paint.dim(text);
    }
    return text;
}

std::string checksPart(const Analysis& analysis, const Paint& paint)
{
    if (!analysis.headline)
        return {};
    std::string text = heading("Checks", paint);
    for (const auto& [check, state, sentence] :
         wording::checkWords(Language::english(), analysis)) {
        // Wrapped without colour, so that escape sequences do not count as columns.
        const std::string plain =
            wrapped(fmt::format("  {:<11}{}{}", check, stateText(state, Paint(false)), sentence),
                    13 + kStateWidth);
        std::string line = plain;
        line.replace(13, kStateWidth, stateText(state, paint));
        text += line + "\n";
    }
    const std::string power = wording::checksPowerSentence(Language::english(), analysis);
    return power.empty() ? text : text + wrapped("  " + power, 2) + "\n";
}

std::string surenessPart(const Analysis& analysis, const Paint& paint)
{
    std::string text = heading("How sure, how fragile", paint);
    if (analysis.headline) {
        text += bullet(wording::detectableSentence(Language::english(), analysis));
        text += bullet(wording::leaveOneOutSentence(Language::english(), analysis));
    }
    text += bullet(wording::discardsRestoredSentence(Language::english(), analysis));
    for (const core::RestoredTurn& turn : analysis.discards_restored.each) {
        std::string words = "no verdict with it";
        if (!turn.possible)
            words = "has no consumption, so it cannot be put back";
        else if (turn.effect_log)
            words = fmt::format("{}, {}",
                                change(pctFromLog(*turn.effect_log),
                                       analysis.headline
                                           ? decimalsFor(50.0 * (analysis.headline->high_log -
                                                                 analysis.headline->low_log))
                                           : 2),
                                wording::classWords(Language::english(), turn.cls));
        text += fmt::format("      with run {}: {}\n", turn.run, words);
    }
    return text;
}

std::string notesPart(const Analysis& analysis, const TextOptions& options, const Paint& paint)
{
    if (options.notes.empty() && analysis.notes.empty())
        return {};
    std::string text = heading("Notes", paint);
    for (const std::string& note : options.notes)
        text += bullet(note);
    for (const core::Note& note : analysis.notes)
        text += bullet(wording::noteSentence(Language::english(), note));
    return text;
}

} // namespace

std::string analysisText(const Analysis& analysis, const core::Screening& screening,
                         const TextOptions& options)
{
    const Paint paint(options.colour);
    std::string text = verdictPart(analysis, options, paint);
    text += dayPart(analysis, paint);
    text += waysPart(analysis, paint);
    text += settingsPart(analysis, paint);
    text += checksPart(analysis, paint);
    text += surenessPart(analysis, paint);
    if (!screening.findings.empty()) {
        text += heading("Findings", paint);
        for (const core::Finding& finding : screening.findings)
            text += bullet(fmt::format("{} [{}]",
                                       wording::findingSentence(Language::english(), finding),
                                       core::gradeName(finding.grade)));
    }
    return text + notesPart(analysis, options, paint);
}

} // namespace bothways::app
