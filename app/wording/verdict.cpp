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

constexpr std::size_t kPairsNamed = 4; // more would be a list, not a sentence

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

std::string fragileBy(const Language& in, core::Companion companion, const Analysis& analysis)
{
    const core::Companions& others = analysis.companions;
    const std::string name = companionName(in, companion);
    const auto says = [&](const std::optional<core::Interval>& interval) {
        return interval ? in.say("{} ({})"_t, name, classWords(in, interval->cls)) : name;
    };
    switch (companion) {
    case core::Companion::bracket: return says(others.bracket);
    case core::Companion::runs: return says(others.runs);
    case core::Companion::blocks:
        return in.say("{} (their interval leaves the estimate out)"_t, name);
    case core::Companion::labels:
        return others.labels ? in.say("{} ({})"_t, name, pText(in, others.labels->p)) : name;
    case core::Companion::correlated: return says(others.correlated);
    }
    return {};
}

std::string fragile(const Language& in, const Analysis& analysis)
{
    std::vector<std::string> parts;
    for (const core::Companion companion : analysis.verdict.fragile_by)
        parts.push_back(fragileBy(in, companion, analysis));
    return in.say("Fragile: another honest way to the same number disagrees: {}."_t,
                  joined(in, parts));
}

std::string sensitive(const Language& in, const Analysis& analysis)
{
    std::vector<std::string> pairs;
    if (analysis.leave_one_out)
        for (const core::LeaveOneOutTurn& turn : analysis.leave_one_out->turns)
            if (turn.cls != analysis.verdict.cls)
                pairs.push_back(in.say("{} ({})"_t, turn.pair, classWords(in, turn.cls)));
    if (pairs.empty())
        return in.say("Sensitive: leaving out a single pair changes the verdict."_t);
    if (pairs.size() > kPairsNamed)
        return in.say("Sensitive: leaving out a single pair changes the verdict for {} of the {} "
                      "pairs."_t,
                      pairs.size(), analysis.pairs.size());
    return in.say("Sensitive: the verdict hangs on single pairs. It changes when pair {} is left "
                  "out."_t,
                  anyOf(in, pairs));
}

std::string failingChecks(const Language& in, const Analysis& analysis)
{
    std::vector<std::string> names;
    for (const CheckKind kind : kCheckKinds)
        if (kind != CheckKind::baseline && kind != CheckKind::resolution && // no assumptions
            stateOf(analysis.checks, kind) == core::CheckState::fails)
            names.push_back(in.say("{}: {}"_t, checkWord(in, kind), checkName(in, kind)));
    return joined(in, names);
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
    const std::string text = answer(in, analysis, consumptionsOf(in, analysis, units));
    const std::string more = whatItWouldTake(in, analysis);
    return more.empty() ? text : in.say("{} {}##two sentences"_t, text, more);
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

std::string qualifierName(const Language& in, core::Qualifier qualifier)
{
    switch (qualifier) {
    case core::Qualifier::openDesign: return in.say("one switch only"_t);
    case core::Qualifier::fragile: return in.say("fragile"_t);
    case core::Qualifier::sensitive: return in.say("sensitive"_t);
    case core::Qualifier::assumptions: return in.say("assumption not met"_t);
    case core::Qualifier::smallerThanMargin: return in.say("smaller than the margin"_t);
    case core::Qualifier::interim: return in.say("interim"_t);
    }
    return {};
}

std::string qualifierSentence(const Language& in, core::Qualifier qualifier,
                              const Analysis& analysis)
{
    switch (qualifier) {
    case core::Qualifier::openDesign:
        return in.say("One switch only: whatever else changed over the day (wind, warmth, traffic) "
                      "cannot be told from the effect. Go back to the first configuration and "
                      "drive it again."_t);
    case core::Qualifier::fragile: return fragile(in, analysis);
    case core::Qualifier::sensitive: return sensitive(in, analysis);
    case core::Qualifier::assumptions:
        return in.say("An assumption is not met ({}): read that check before you trust the "
                      "interval."_t,
                      failingChecks(in, analysis));
    case core::Qualifier::smallerThanMargin:
        return in.say("There is an effect, but it is smaller than the {} % that you care about."_t,
                      shortest(in, analysis.verdict.margin_pct));
    case core::Qualifier::interim:
        return in.say("Interim: the plan is not driven to its end. Stopping at the first 'less' or "
                      "'more' gives some 15 % false alarms where 5 % are promised."_t);
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
