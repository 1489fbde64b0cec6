// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/verdict.h"

#include "app/wording/checks.h"
#include "app/wording/companions.h"
#include "app/wording/numbers.h"
#include "core/study/units.h"

#include <algorithm>
#include <cmath>

namespace bothways::app::wording {
namespace {

using core::Analysis;
using core::pctFromLog;
using core::VerdictClass;

bool usesControl(const Analysis& analysis)
{
    return std::any_of(analysis.notes.begin(), analysis.notes.end(), [](const core::Note& note) {
        return note.kind == core::NoteKind::controlUsed;
    });
}

int decimalsOf(const core::Headline& headline)
{
    return decimalsFor(0.5 * (pctFromLog(headline.high_log) - pctFromLog(headline.low_log)));
}

/// The two consumptions that are compared, as the reader reads them.
struct Consumptions {
    std::string with, without, unit;
};

/// Not with a control vehicle: then only ratios are known.
std::optional<Consumptions> consumptionsOf(const Language& in, const Analysis& analysis,
                                           const Units& units)
{
    if (!analysis.headline)
        return std::nullopt;
    const core::Headline& headline = *analysis.headline;
    const double without_l = headline.baseline_l_per_100km;
    const double with_l = without_l + headline.difference_l_per_100km;
    if (usesControl(analysis) || !(without_l > 0.0) || !(with_l > 0.0))
        return std::nullopt;
    const ShownUnit unit = units.consumption;
    const double without = shownConsumption(without_l, unit, analysis.electric);
    const int decimals =
        std::clamp(decimalsFor(0.5 * without * (headline.high_log - headline.low_log)), 1, 3);
    return Consumptions{consumptionText(in, with_l, unit, decimals, analysis.electric),
                        consumptionText(in, without_l, unit, decimals, analysis.electric),
                        unitText(in, unit, analysis.electric)};
}

std::string moreOrLess(const Language& in, const Analysis& analysis,
                       const std::optional<Consumptions>& consumptions)
{
    const core::Headline& headline = *analysis.headline;
    const std::string meaning = consumptions
                                    ? in.say(": {} {} in place of {}"_t, consumptions->with,
                                             consumptions->unit, consumptions->without)
                                    : std::string();
    return in.say(analysis.electric ? "{} used {} energy than {} ({} interval: {}){}."_t
                                    : "{} used {} fuel than {} ({} interval: {}){}."_t,
                  deviceWords(in, analysis),
                  change(in, pctFromLog(headline.effect_log), decimalsOf(headline)),
                  baselineWords(in, analysis), intervalPercent(in, headline.confidence),
                  changeRange(in, pctFromLog(headline.low_log), pctFromLog(headline.high_log),
                              decimalsOf(headline)),
                  meaning);
}

std::string equivalent(const Language& in, const Analysis& analysis)
{
    const core::Headline& headline = *analysis.headline;
    const double low = pctFromLog(headline.low_equivalence_log);
    const double high = pctFromLog(headline.high_equivalence_log);
    return in.say("No difference as large as {} % between {} and {}: the effect lies between {} "
                  "({} interval)."_t,
                  shortest(in, analysis.verdict.margin_pct), deviceWords(in, analysis),
                  baselineWords(in, analysis),
                  changeBetween(in, low, high, decimalsFor(0.5 * (high - low))),
                  intervalPercent(in, 1.0 - 2.0 * (1.0 - headline.confidence)));
}

std::string undecided(const Language& in, const Analysis& analysis)
{
    const core::Headline& headline = *analysis.headline;
    return in.say("These runs cannot tell {} from {}: the effect lies between {} ({} interval)."_t,
                  deviceWords(in, analysis), baselineWords(in, analysis),
                  changeBetween(in, pctFromLog(headline.low_log), pctFromLog(headline.high_log),
                                decimalsOf(headline)),
                  intervalPercent(in, headline.confidence));
}

std::string answer(const Language& in, const Analysis& analysis,
                   const std::optional<Consumptions>& consumptions)
{
    if (!analysis.headline || analysis.verdict.cls == VerdictClass::none)
        return noVerdictSentence(in, analysis.verdict.reason.value_or(core::NoVerdict::noRuns),
                                 analysis);
    switch (analysis.verdict.cls) {
    case VerdictClass::less:
    case VerdictClass::more: return moreOrLess(in, analysis, consumptions);
    case VerdictClass::equivalent: return equivalent(in, analysis);
    case VerdictClass::undecided: return undecided(in, analysis);
    case VerdictClass::none: break;
    }
    return {};
}

int pairsIn(const Analysis& analysis, bool device)
{
    return static_cast<int>(
        std::count_if(analysis.pairs.begin(), analysis.pairs.end(),
                      [&](const core::Pair& pair) { return pair.device == device; }));
}

std::string tooFewPairs(const Language& in, const Analysis& analysis)
{
    const int a = pairsIn(analysis, false);
    const int b = pairsIn(analysis, true);
    std::string text = in.sayCount(a, "No verdict: {} pair of {} and {} of {}."_t,
                                   "No verdict: {} pairs of {} and {} of {}."_t, grouped(in, a),
                                   baselineWords(in, analysis), b, deviceWords(in, analysis));
    text += in.say(a < 2 || b < 2
                       ? " Each needs at least 2 pairs, out and back in one block."_t
                       : " Effect and drift use them up, and nothing is left to judge the noise "
                         "by: drive one pair more."_t);
    const std::string gap = shortest(in, analysis.options.max_gap_min);
    if (analysis.unpaired.size() == 1)
        text +=
            in.say(" Run {} has no partner within {} minutes."_t, analysis.unpaired.front(), gap);
    else if (!analysis.unpaired.empty())
        text += in.say(" {} counted runs have no partner within {} minutes."_t,
                       analysis.unpaired.size(), gap);
    return text;
}

std::string presentConfiguration(const Analysis& analysis)
{
    for (const core::Block& block : analysis.blocks)
        if (block.runs > 0)
            return block.configuration;
    return analysis.baseline;
}

} // namespace

std::string inQuotes(const Language& in, std::string_view name)
{
    return name.size() == 1 ? std::string(name) : in.say("'{}'"_t, name);
}

std::string baselineWords(const Language& in, const Analysis& analysis)
{
    return analysis.baseline.empty() ? in.say("the baseline"_t) : inQuotes(in, analysis.baseline);
}

std::string deviceWords(const Language& in, const Analysis& analysis)
{
    return analysis.device.empty() ? in.say("the device"_t) : inQuotes(in, analysis.device);
}

std::string classWords(const Language& in, VerdictClass cls)
{
    switch (cls) {
    case VerdictClass::less: return in.say("less##verdict"_t);
    case VerdictClass::more: return in.say("more##verdict"_t);
    case VerdictClass::equivalent: return in.say("no difference as large as the margin"_t);
    case VerdictClass::undecided: return in.say("cannot tell"_t);
    case VerdictClass::none: return in.say("no verdict"_t);
    }
    return {};
}

std::string verdictSentence(const Language& in, const Analysis& analysis, const Units& units)
{
    std::string text = answer(in, analysis, consumptionsOf(in, analysis, units));
    for (const std::string& next : {atLeastSentence(in, analysis), claimSentence(in, analysis),
                                    whatItWouldTake(in, analysis)})
        if (!next.empty())
            text = in.say("{} {}##two sentences"_t, text, next);
    return text;
}

std::string shortVerdict(const Language& in, const Analysis& analysis)
{
    return answer(in, analysis, std::nullopt);
}

std::string inUnits(const Language& in, const Analysis& analysis, const Units& units)
{
    const auto consumptions = consumptionsOf(in, analysis, units);
    if (!consumptions)
        return {};
    if (analysis.verdict.cls == VerdictClass::less || analysis.verdict.cls == VerdictClass::more)
        return in.say("That is {} in place of {} {}."_t, consumptions->with, consumptions->without,
                      consumptions->unit);
    return in.say("The average of {} was {} {}."_t, baselineWords(in, analysis),
                  consumptions->without, consumptions->unit);
}

std::string atLeastSentence(const Language& in, const Analysis& analysis)
{
    if (!analysis.headline)
        return {};
    const core::Headline& headline = *analysis.headline;
    const auto atLeast = [&](double log) {
        return in.say("That is at least {}."_t, change(in, pctFromLog(log), decimalsOf(headline)));
    };
    if (analysis.verdict.cls == VerdictClass::less)
        return atLeast(headline.high_log);
    if (analysis.verdict.cls == VerdictClass::more)
        return atLeast(headline.low_log);
    return {};
}

std::string claimSentence(const Language& in, const Analysis& analysis)
{
    if (!analysis.headline || !analysis.verdict.claim)
        return {};
    const core::Headline& headline = *analysis.headline;
    const core::ClaimAnswer& claim = *analysis.verdict.claim;
    const std::string claimed = claim.pct < 0.0
                                    ? in.say("{} % less##a claim"_t, shortest(in, -claim.pct))
                                    : in.say("{} % more##a claim"_t, shortest(in, claim.pct));
    switch (claim.state) {
    case core::ClaimState::borneOut: return in.say("The claimed {} is borne out."_t, claimed);
    case core::ClaimState::open:
        return in.say("These runs neither bear out nor rule out the claimed {}."_t, claimed);
    case core::ClaimState::refuted: break;
    }
    // The end of the interval that is nearer to the claim; beyond zero the claim has the sign
    // wrong.
    const double nearest = claim.pct < 0.0 ? headline.low_log : headline.high_log;
    const bool sameSign = (nearest < 0.0) == (claim.pct < 0.0);
    return in.say(sameSign ? "The claimed {} is ruled out: it is at most {}."_t
                           : "The claimed {} is ruled out: it is at least {}."_t,
                  claimed, change(in, pctFromLog(nearest), decimalsOf(headline)));
}

std::string whatItWouldTake(const Language& in, const Analysis& analysis)
{
    if (!analysis.headline || analysis.verdict.cls != VerdictClass::undecided ||
        !analysis.detectable)
        return {};
    const std::string seen = significant(in, pctFromLog(analysis.detectable->log));
    const std::string margin = shortest(in, analysis.verdict.margin_pct);
    if (!analysis.verdict.more_pairs_per_block)
        return in.say("They could have shown {} % or more; more pairs alone would hardly show {} % "
                      "at this noise."_t,
                      seen, margin);
    const int more = *analysis.verdict.more_pairs_per_block;
    if (more <= 0)
        return in.say("They could have shown {} % or more; such a day can show {} %, so driving it "
                      "once more is worth while."_t,
                      seen, margin);
    return in.sayCount(
        more, "They could have shown {} % or more; {} more pair a block would show {} %."_t,
        "They could have shown {} % or more; {} more pairs a block would show {} %."_t, seen,
        grouped(in, more), margin);
}

std::string noVerdictSentence(const Language& in, core::NoVerdict reason, const Analysis& analysis)
{
    switch (reason) {
    case core::NoVerdict::noRuns:
        return in.say(analysis.runs == 0 ? "No verdict: there are no runs yet."_t
                                         : "No verdict: every run is discarded."_t);
    case core::NoVerdict::oneConfiguration:
        return in.say("No verdict: only {} has runs that count. The comparison needs the other "
                      "configuration, too."_t,
                      inQuotes(in, presentConfiguration(analysis)));
    case core::NoVerdict::tooFewPairs: return tooFewPairs(in, analysis);
    case core::NoVerdict::noTimeSpread:
        return in.say("No verdict: by their times, drift and effect cannot be told apart in these "
                      "pairs. Check the start times, or drive another block."_t);
    case core::NoVerdict::noVariation:
        return in.say("No verdict: the readings agree to the last digit, so there is no noise to "
                      "judge by. Were they copied, or is the display too coarse?"_t);
    }
    return {};
}

std::string tally(const Language& in, const Analysis& analysis)
{
    const auto blocksWithPairs =
        std::count_if(analysis.blocks.begin(), analysis.blocks.end(),
                      [](const core::Block& block) { return block.pairs > 0; });
    const std::string pairs =
        counted(in, static_cast<long long>(analysis.pairs.size()), "pair"_t, "pairs"_t);
    const std::string runs =
        counted(in, analysis.counted, "counted run##after from"_t, "counted runs##after from"_t);
    const std::string blocks =
        counted(in, blocksWithPairs, "block##after in"_t, "blocks##after in"_t);
    if (analysis.discarded == 0)
        return in.say("{} from {} in {}; none discarded."_t, pairs, runs, blocks);
    return in.say("{} from {} in {}; {} discarded."_t, pairs, runs, blocks,
                  grouped(in, analysis.discarded));
}

} // namespace bothways::app::wording
