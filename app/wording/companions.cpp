// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/companions.h"

#include "app/wording/findings.h"
#include "app/wording/numbers.h"
#include "app/wording/verdict.h"
#include "core/companions/borrowed.h"
#include "core/companions/relabelling.h"
#include "core/study/units.h"

#include <cmath>
#include <vector>

namespace bothways::app::wording {
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

std::string labelsSentence(const Language& in, const Analysis& analysis)
{
    if (!analysis.companions.labels)
        return in.say("Dealing the labels A and B again over the pairs asks how often chance alone "
                      "would look like this; not to be had from these runs."_t);
    const core::LabelsTest& test = *analysis.companions.labels;
    std::string text = in.say(
        test.exact ? "Dealing the labels A and B again over the pairs asks how often chance alone "
                     "would look like this: {}, over all {} deals. The labels were not drawn by "
                     "lot, so this p is exact only if pairs could be swapped where there is no "
                     "effect."_t
                   : "Dealing the labels A and B again over the pairs asks how often chance alone "
                     "would look like this: {}, over {} random deals. The labels were not drawn by "
                     "lot, so this p is exact only if pairs could be swapped where there is no "
                     "effect."_t,
        pText(in, test.p), grouped(in, static_cast<double>(test.deals)));
    const double smallest = core::smallestLabelsP(analysis);
    if (test.exact && smallest > 1.0 - analysis.options.confidence)
        text +=
            in.say(" With so few deals no p below {} is possible."_t, significant(in, smallest));
    return text;
}

std::string whatItIs(const Language& in, core::Companion companion)
{
    switch (companion) {
    case core::Companion::bracket:
        return in.say("Bracketing compares each device block with the line between its two "
                      "neighbouring baseline blocks"_t);
    case core::Companion::runs:
        return in.say("Single runs, unpaired ones too, with the direction as a term of its own"_t);
    case core::Companion::blocks:
        return in.say("Block means: few numbers, but the only way that stays honest when something "
                      "besides the device changes at a switch"_t);
    case core::Companion::correlated:
        return in.say("Allowing for pairs that resemble their neighbours widens the interval to "
                      "where such noise would put it"_t);
    case core::Companion::curved:
        return in.say("Without the assumption of a straight drift: it may bend as well"_t);
    case core::Companion::anyLook:
        return in.say("The interval that keeps its promise however often the result was looked at "
                      "on the way; so it is wider"_t);
    case core::Companion::borrowed:
        return in.say("With the noise of this vehicle on earlier days"_t);
    case core::Companion::labels:
    case core::Companion::days: break;
    }
    return {};
}

/// "day 1: 2.6 % less (95 % interval: 1.7 to 3.4 % less)"
std::string dayWords(const Language& in, const core::DayEffect& day, const Analysis& analysis)
{
    const double low = pctFromLog(day.low_log), high = pctFromLog(day.high_log);
    const int decimals = decimalsFor(0.5 * (high - low));
    return in.say(
        "day {}: {} ({} interval: {})"_t, day.day, change(in, pctFromLog(day.effect_log), decimals),
        intervalPercent(in, analysis.options.confidence), changeRange(in, low, high, decimals));
}

std::string daysSentence(const Language& in, const Analysis& analysis)
{
    if (analysis.companions.days.empty())
        return in.say("Each day for itself; it takes two days that can tell the effect."_t);
    constexpr std::size_t kDaysNamed = 6; // more would be a list, not a sentence
    std::vector<std::string> days;
    for (const core::DayEffect& day : analysis.companions.days)
        days.push_back(dayWords(in, day, analysis));
    if (days.size() > kDaysNamed)
        return in.say("Each day for itself: {} days, each with an effect of its own."_t,
                      days.size());
    return in.say("Each day for itself: {}."_t, joined(in, days));
}

/// What is said of the borrowed noise beside the interval.
std::string borrowedNoise(const Language& in, const Analysis& analysis)
{
    const core::BorrowedInterval& borrowed = *analysis.companions.borrowed;
    const std::string here = significant(in, 100.0 * analysis.headline->s);
    const std::string there = significant(in, 100.0 * borrowed.from_s);
    if (borrowed.ratio_p < core::kNotComparable)
        return in.say("One pair scatters by {} % here and by {} % there ({}): the two are not "
                      "comparable, so go by the headline."_t,
                      here, there, pText(in, borrowed.ratio_p));
    return in.say("One pair scatters by {} % here and by {} % there ({} degrees of freedom)."_t,
                  here, there, shortest(in, borrowed.from_df));
}

std::string companionInterval(const Language& in, core::Companion companion,
                              const core::Interval* interval, const Analysis& analysis)
{
    const std::string what = whatItIs(in, companion);
    if (interval == nullptr)
        return in.say("{}; not to be had from these runs."_t, what);
    const double low = pctFromLog(interval->low_log);
    const double high = pctFromLog(interval->high_log);
    const int decimals = decimalsFor(0.5 * (high - low));
    return in.say(
        "{}: {} ({} interval: {})."_t, what, change(in, pctFromLog(interval->effect_log), decimals),
        intervalPercent(in, analysis.options.confidence), changeRange(in, low, high, decimals));
}

std::string movedUp(const Language& in, int n)
{
    if (n == 0)
        return in.say("none moves it up"_t);
    return in.sayCount(n, "{} moves it up"_t, "{} move it up"_t, n);
}

std::string movedDown(const Language& in, int n)
{
    if (n == 0)
        return in.say("none moves it down"_t);
    return in.sayCount(n, "{} moves it down"_t, "{} move it down"_t, n);
}

/// "run 9 (over-speed), run 12 (timed accessory dropped out)"
std::string leftOutWords(const Language& in, const std::vector<core::LeftOut>& runs, Names names)
{
    std::string words;
    for (const core::LeftOut& one : runs)
        words += (words.empty() ? "" : ", ") +
                 in.say("run {} ({})"_t, one.run,
                        names == Names::ofFiles ? one.reason : reasonWord(in, one.reason));
    return words.empty() ? in.say("nothing##left out by screening"_t) : words;
}

} // namespace

std::string companionName(const Language& in, core::Companion companion)
{
    switch (companion) {
    case core::Companion::bracket: return in.say("bracketing"_t);
    case core::Companion::runs: return in.say("single runs"_t);
    case core::Companion::blocks: return in.say("block means"_t);
    case core::Companion::labels: return in.say("dealing the labels"_t);
    case core::Companion::correlated:
        return in.say("allowing for pairs that resemble their neighbours"_t);
    case core::Companion::curved: return in.say("allowing for a bent drift"_t);
    case core::Companion::anyLook: return in.say("allowing for any number of looks"_t);
    case core::Companion::borrowed: return in.say("noise of earlier days"_t);
    case core::Companion::days: return in.say("each day for itself"_t);
    }
    return {};
}

std::string companionWord(const Language& in, core::Companion companion)
{
    switch (companion) {
    case core::Companion::bracket: return in.say("bracket##companion"_t);
    case core::Companion::runs: return in.say("runs##companion"_t);
    case core::Companion::blocks: return in.say("blocks##companion"_t);
    case core::Companion::labels: return in.say("labels##companion"_t);
    case core::Companion::correlated: return in.say("correlated##companion"_t);
    case core::Companion::curved: return in.say("curved##companion"_t);
    case core::Companion::anyLook: return in.say("any_look##companion"_t);
    case core::Companion::borrowed: return in.say("borrowed##companion"_t);
    case core::Companion::days: return in.say("days##companion"_t);
    }
    return {};
}

std::string detectableSentence(const Language& in, const Analysis& analysis)
{
    if (!analysis.detectable || !analysis.headline)
        return in.say("What these runs could have shown is not known without a verdict."_t);
    return in.say("An effect of {} % would have been found by such a day {} times in 100; one pair "
                  "scatters by {} %."_t,
                  significant(in, pctFromLog(analysis.detectable->log)),
                  shortest(in, 100.0 * analysis.detectable->power),
                  significant(in, 100.0 * analysis.headline->s));
}

std::string leaveOneOutSentence(const Language& in, const Analysis& analysis)
{
    if (analysis.leave_one_out && !analysis.leave_one_out->turns.empty() &&
        static_cast<std::size_t>(analysis.leave_one_out->without_verdict) ==
            analysis.leave_one_out->turns.size())
        return in.say("No pair can be spared: without any one of the {} there is no verdict."_t,
                      analysis.leave_one_out->turns.size());
    if (!analysis.leave_one_out || !analysis.leave_one_out->min_effect_log ||
        !analysis.leave_one_out->max_effect_log)
        return in.say("Leaving pairs out one by one needs a verdict."_t);
    const core::LeaveOneOut& turns = *analysis.leave_one_out;
    const std::string rest =
        turns.without_verdict == 0
            ? std::string()
            : " " + in.sayCount(turns.without_verdict,
                                "Without {} of them there would be no verdict."_t,
                                "Without any of {} of them there would be no verdict."_t,
                                grouped(in, turns.without_verdict));
    const double low = pctFromLog(*turns.min_effect_log);
    const double high = pctFromLog(*turns.max_effect_log);
    return in.say(turns.changes_class
                      ? "Without any one of the {} pairs the effect stays between {}; the verdict "
                        "does not stay the same."_t
                      : "Without any one of the {} pairs the effect stays between {}; the verdict "
                        "stays the same."_t,
                  turns.turns.size(), changeBetween(in, low, high, shownDecimals(analysis))) +
           rest;
}

std::string discardsRestoredSentence(const Language& in, const Analysis& analysis)
{
    if (analysis.discarded == 0)
        return in.say("No run was discarded, so the discards did not choose this result."_t);
    const core::DiscardsRestored& restored = analysis.discards_restored;
    if (!restored.all)
        return in.sayCount(analysis.discarded,
                           "{} run is discarded; none of them can be put back."_t,
                           "{} runs are discarded; none of them can be put back."_t,
                           grouped(in, analysis.discarded));
    std::string text;
    if (restored.all->effect_log && restored.all->low_log && restored.all->high_log) {
        const double low = pctFromLog(*restored.all->low_log);
        const double high = pctFromLog(*restored.all->high_log);
        const int decimals = decimalsFor(0.5 * (high - low));
        text = in.say("With every discarded run put back: {} ({} interval: {}), verdict: {}."_t,
                      change(in, pctFromLog(*restored.all->effect_log), decimals),
                      intervalPercent(in, analysis.options.confidence),
                      changeRange(in, low, high, decimals), classWords(in, restored.all->cls));
    } else {
        text = in.say("With every discarded run put back: no verdict."_t);
    }
    if (restored.up + restored.down > 0)
        text += in.say(" Put back singly, {} and {}."_t, movedUp(in, restored.up),
                       movedDown(in, restored.down));
    return text;
}

std::string companionSentence(const Language& in, core::Companion companion,
                              const Analysis& analysis)
{
    const core::Companions& others = analysis.companions;
    const auto sentence = [&](const auto& interval) {
        return companionInterval(in, companion, interval ? &*interval : nullptr, analysis);
    };
    switch (companion) {
    case core::Companion::bracket: return sentence(others.bracket);
    case core::Companion::runs: return sentence(others.runs);
    case core::Companion::blocks: return sentence(others.blocks);
    case core::Companion::correlated: return sentence(others.correlated);
    case core::Companion::curved: return sentence(others.curved);
    case core::Companion::anyLook: return sentence(others.any_look);
    case core::Companion::borrowed:
        return others.borrowed && analysis.headline
                   ? in.say("{} {}##two sentences"_t, sentence(others.borrowed),
                            borrowedNoise(in, analysis))
                   : in.say("With the noise of this vehicle on earlier days; none was named."_t);
    case core::Companion::days: return daysSentence(in, analysis);
    case core::Companion::labels: return labelsSentence(in, analysis);
    }
    return {};
}

std::string noteSentence(const Language& in, const core::Note& note, Names names)
{
    switch (note.kind) {
    case core::NoteKind::discardedByScreening:
        return in.say("Screening left out: {}."_t, leftOutWords(in, note.left_out, names));
    case core::NoteKind::controlUsed:
        return in.say("Consumption is taken relative to the control vehicle that drove in step."_t);
    case core::NoteKind::controlIncomplete:
        return in.say("The control vehicle is not used: some counted runs lack its consumption."_t);
    case core::NoteKind::pairMarkIgnored:
        return in.say("The pair tied by hand as '{}' is set aside: it takes one out and one return "
                      "run of one block, both counted."_t,
                      note.text);
    case core::NoteKind::consumptionFromTrace:
        return in.say("Consumption taken from the recording: {}."_t, note.text);
    case core::NoteKind::consumptionLacking:
        return in.say("No consumption, neither typed nor recorded, so not used: {}."_t, note.text);
    case core::NoteKind::pairingNotExact:
        return in.say("In block {} there are more runs within reach of one another than exact "
                      "pairing can weigh; they were paired in order."_t,
                      note.text);
    case core::NoteKind::mixedUnits:
        return in.say("Runs are given in more than one unit; they were converted before anything "
                      "else."_t);
    case core::NoteKind::dateAssumed:
        return in.say("The sheet has times of day only; {} was taken as its date."_t, note.text);
    case core::NoteKind::sheetDialect: return in.say("The sheet was read with {}."_t, note.text);
    case core::NoteKind::densityOutsideRange:
        return in.say("The air was outside the range of the density formula (15 to 27 °C, 600 to "
                      "1,100 hPa): take its density as approximate."_t);
    }
    return {};
}

} // namespace bothways::app::wording
