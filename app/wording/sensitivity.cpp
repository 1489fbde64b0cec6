// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/sentences.h"

#include "app/wording/numbers.h"
#include "core/companions/relabelling.h"
#include "core/study/units.h"

#include <fmt/format.h>

#include <cmath>

// Sentences about how sure the answer is, and what other roads say.
namespace bothways::app::english {
namespace {

using core::Analysis;
using core::pctFromLog;

int shownDecimals(const Analysis& analysis)
{
    if (!analysis.headline)
        return 2;
    return decimalsFor(
        0.5 * (pctFromLog(analysis.headline->high_log) - pctFromLog(analysis.headline->low_log)));
}

std::string labelsSentence(const Analysis& analysis)
{
    const std::string how =
        "Dealing the labels A and B again over the pairs asks how often chance alone would look "
        "like this";
    if (!analysis.companions.labels)
        return how + "; not to be had from these runs.";
    const core::LabelsTest& test = *analysis.companions.labels;
    const std::string number = grouped(static_cast<double>(test.deals));
    std::string text = fmt::format("{}: {}, over {}.", how, pText(test.p),
                                   test.exact ? fmt::format("all {} deals", number)
                                              : fmt::format("{} random deals", number));
    text += " The labels were not drawn by lot, so this p is exact only if pairs could be swapped "
            "where there is no effect.";
    const double smallest = core::smallestLabelsP(analysis);
    if (test.exact && smallest > 1.0 - analysis.options.confidence)
        text += fmt::format(" With so few deals no p below {} is possible.", significant(smallest));
    return text;
}

std::string whatItIs(core::Companion companion)
{
    switch (companion) {
    case core::Companion::bracket:
        return "Bracketing compares each device block with the line between its two neighbouring "
               "baseline blocks";
    case core::Companion::runs:
        return "Single runs, unpaired ones too, with the direction as a term of its own";
    case core::Companion::blocks:
        return "Block means: few numbers, but the only way that stays honest when something "
               "besides "
               "the device changes at a switch";
    case core::Companion::correlated:
        return "Allowing for pairs that resemble their neighbours widens the interval to where "
               "such noise would put it";
    case core::Companion::labels: break;
    }
    return {};
}

std::string intervalSentence(core::Companion companion, const core::Interval* interval,
                             const Analysis& analysis)
{
    const std::string what = whatItIs(companion);
    if (interval == nullptr)
        return what + "; not to be had from these runs.";
    const double low = pctFromLog(interval->low_log);
    const double high = pctFromLog(interval->high_log);
    const int decimals = decimalsFor(0.5 * (high - low));
    return fmt::format("{}: {} ({} interval: {}).", what,
                       change(pctFromLog(interval->effect_log), decimals),
                       percentText(analysis.options.confidence), changeRange(low, high, decimals));
}

std::string besides(int n, const char* way)
{
    return fmt::format("{} it {}",
                       n == 0   ? "none moves"
                       : n == 1 ? "1 moves"
                                : fmt::format("{} move", n),
                       way);
}

} // namespace

std::string detectableSentence(const Analysis& analysis)
{
    if (!analysis.detectable || !analysis.headline)
        return "What these runs could have shown is not known without a verdict.";
    return fmt::format(
        "An effect of {} % would have been found by such a day {} times in 100; one pair "
        "scatters by {} %.",
        significant(pctFromLog(analysis.detectable->log)),
        shortest(100.0 * analysis.detectable->power), significant(100.0 * analysis.headline->s));
}

std::string leaveOneOutSentence(const Analysis& analysis)
{
    if (!analysis.leave_one_out || !analysis.leave_one_out->min_effect_log ||
        !analysis.leave_one_out->max_effect_log)
        return "Leaving pairs out one by one needs a verdict.";
    const core::LeaveOneOut& turns = *analysis.leave_one_out;
    const double low = pctFromLog(*turns.min_effect_log);
    const double high = pctFromLog(*turns.max_effect_log);
    return fmt::format(
        "Without any one of the {} pairs the effect stays between {}; the verdict {}.",
        turns.turns.size(), changeBetween(low, high, shownDecimals(analysis)),
        turns.changes_class ? "does not stay the same" : "stays the same");
}

std::string discardsRestoredSentence(const Analysis& analysis)
{
    if (analysis.discarded == 0)
        return "No run was discarded, so the discards did not choose this result.";
    const core::DiscardsRestored& restored = analysis.discards_restored;
    if (!restored.all)
        return fmt::format("{} discarded; none of them can be put back.",
                           counted(analysis.discarded, "run is", "runs are"));
    std::string text = "With every discarded run put back: ";
    if (restored.all->effect_log && restored.all->low_log && restored.all->high_log) {
        const double low = pctFromLog(*restored.all->low_log);
        const double high = pctFromLog(*restored.all->high_log);
        const int decimals = decimalsFor(0.5 * (high - low));
        text += fmt::format("{} ({} interval: {}), verdict: {}.",
                            change(pctFromLog(*restored.all->effect_log), decimals),
                            percentText(analysis.options.confidence),
                            changeRange(low, high, decimals), classWords(restored.all->cls));
    } else {
        text += "no verdict.";
    }
    if (restored.up + restored.down > 0)
        text += fmt::format(" Put back singly, {} and {}.", besides(restored.up, "up"),
                            besides(restored.down, "down"));
    return text;
}

std::string companionSentence(core::Companion companion, const Analysis& analysis)
{
    const core::Companions& others = analysis.companions;
    const auto pointer = [](const auto& interval) -> const core::Interval* {
        return interval ? &*interval : nullptr;
    };
    switch (companion) {
    case core::Companion::bracket:
        return intervalSentence(companion, pointer(others.bracket), analysis);
    case core::Companion::runs: return intervalSentence(companion, pointer(others.runs), analysis);
    case core::Companion::blocks:
        return intervalSentence(companion, pointer(others.blocks), analysis);
    case core::Companion::correlated:
        return intervalSentence(companion, pointer(others.correlated), analysis);
    case core::Companion::labels: return labelsSentence(analysis);
    }
    return {};
}

std::string noteSentence(const core::Note& note)
{
    switch (note.kind) {
    case core::NoteKind::discardedByScreening:
        return fmt::format("Screening left out: {}.", note.text);
    case core::NoteKind::controlUsed:
        return "Consumption is taken relative to the control vehicle that drove in step.";
    case core::NoteKind::controlIncomplete:
        return "The control vehicle is not used: some counted runs lack its consumption.";
    case core::NoteKind::pairMarkIgnored:
        return fmt::format("The pair tied by hand as '{}' is set aside: it takes one out and one "
                           "return run of one block, both counted.",
                           note.text);
    case core::NoteKind::consumptionFromTrace:
        return fmt::format("Consumption taken from the recording: run {}.", note.text);
    case core::NoteKind::consumptionLacking:
        return fmt::format("No consumption, neither typed nor recorded, so not used: run {}.",
                           note.text);
    case core::NoteKind::pairingNotExact:
        return fmt::format("In block {} there are more runs within reach of one another than exact "
                           "pairing can weigh; they were paired in order.",
                           note.text);
    case core::NoteKind::mixedUnits:
        return "Runs are given in more than one unit; they were converted before anything else.";
    case core::NoteKind::dateAssumed:
        return fmt::format("The sheet has times of day only; {} was taken as its date.", note.text);
    case core::NoteKind::sheetDialect: return fmt::format("The sheet was read with {}.", note.text);
    case core::NoteKind::densityOutsideRange:
        return "The air was outside the range of the density formula (15 to 27 °C, 600 to "
               "1,100 hPa): take its density as approximate.";
    }
    return {};
}

} // namespace bothways::app::english
