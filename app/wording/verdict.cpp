// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/sentences.h"

#include "app/wording/numbers.h"
#include "core/study/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace bothways::app::english {
namespace {

using core::Analysis;
using core::ConsumptionUnit;
using core::pctFromLog;
using core::VerdictClass;

bool usesControl(const Analysis& analysis)
{
    return std::any_of(analysis.notes.begin(), analysis.notes.end(), [](const core::Note& note) {
        return note.kind == core::NoteKind::controlUsed;
    });
}

std::string fuelWord(const Analysis& analysis)
{
    return analysis.electric ? "energy" : "fuel";
}

ConsumptionUnit consumptionUnit(ShownUnit unit)
{
    switch (unit) {
    case ShownUnit::lPer100km: return ConsumptionUnit::lPer100km;
    case ShownUnit::mpgUs: return ConsumptionUnit::mpgUs;
    case ShownUnit::mpgImp: return ConsumptionUnit::mpgImp;
    case ShownUnit::kmPerL: return ConsumptionUnit::kmPerL;
    }
    return ConsumptionUnit::lPer100km;
}

int decimalsOf(const core::Headline& headline)
{
    return decimalsFor(0.5 * (pctFromLog(headline.high_log) - pctFromLog(headline.low_log)));
}

/// ": 8.22 L/100 km in place of 8.32". Not with a control vehicle: then only ratios are known.
std::string inUnits(const Analysis& analysis, ShownUnit unit)
{
    const core::Headline& headline = *analysis.headline;
    const double without_l = headline.baseline_l_per_100km;
    const double with_l = without_l + headline.difference_l_per_100km;
    if (usesControl(analysis) || !(without_l > 0.0) || !(with_l > 0.0))
        return {};
    const double without = shownConsumption(without_l, unit, analysis.electric);
    const int decimals =
        std::clamp(decimalsFor(0.5 * without * (headline.high_log - headline.low_log)), 1, 3);
    return fmt::format(": {} {} in place of {}",
                       consumptionText(with_l, unit, decimals, analysis.electric),
                       unitText(unit, analysis.electric),
                       consumptionText(without_l, unit, decimals, analysis.electric));
}

std::string moreOrLess(const Analysis& analysis, ShownUnit unit)
{
    const core::Headline& headline = *analysis.headline;
    return fmt::format("{} used {} {} than {} ({} interval: {}){}.", inQuotes(analysis.device),
                       change(pctFromLog(headline.effect_log), decimalsOf(headline)),
                       fuelWord(analysis), inQuotes(analysis.baseline),
                       percentText(headline.confidence),
                       changeRange(pctFromLog(headline.low_log), pctFromLog(headline.high_log),
                                   decimalsOf(headline)),
                       inUnits(analysis, unit));
}

std::string equivalent(const Analysis& analysis)
{
    const core::Headline& headline = *analysis.headline;
    const double low = pctFromLog(headline.low_equivalence_log);
    const double high = pctFromLog(headline.high_equivalence_log);
    return fmt::format("No difference as large as {} % between {} and {}: the effect lies between "
                       "{} ({} interval).",
                       shortest(analysis.verdict.margin_pct), inQuotes(analysis.device),
                       inQuotes(analysis.baseline),
                       changeBetween(low, high, decimalsFor(0.5 * (high - low))),
                       percentText(1.0 - 2.0 * (1.0 - headline.confidence)));
}

std::string morePairs(const Analysis& analysis)
{
    const std::string margin = shortest(analysis.verdict.margin_pct);
    if (!analysis.verdict.more_pairs_per_block)
        return fmt::format("more pairs alone would hardly show {} % at this noise", margin);
    const int more = *analysis.verdict.more_pairs_per_block;
    if (more <= 0)
        return fmt::format("such a day can show {} %, so driving it once more is worth while",
                           margin);
    return fmt::format("{} a block would show {} %", counted(more, "more pair", "more pairs"),
                       margin);
}

std::string undecided(const Analysis& analysis)
{
    const core::Headline& headline = *analysis.headline;
    std::string text =
        fmt::format("These runs cannot tell {} from {}: the effect lies between {} "
                    "({} interval).",
                    inQuotes(analysis.device), inQuotes(analysis.baseline),
                    changeBetween(pctFromLog(headline.low_log), pctFromLog(headline.high_log),
                                  decimalsOf(headline)),
                    percentText(headline.confidence));
    if (analysis.detectable)
        text += fmt::format(" They could have shown {} % or more; {}.",
                            significant(pctFromLog(analysis.detectable->log)), morePairs(analysis));
    return text;
}

int pairsIn(const Analysis& analysis, bool device)
{
    return static_cast<int>(
        std::count_if(analysis.pairs.begin(), analysis.pairs.end(),
                      [&](const core::Pair& pair) { return pair.device == device; }));
}

std::string tooFewPairs(const Analysis& analysis)
{
    const int a = pairsIn(analysis, false);
    const int b = pairsIn(analysis, true);
    std::string text =
        fmt::format("No verdict: {} of {} and {} of {}.", counted(a, "pair", "pairs"),
                    inQuotes(analysis.baseline), b, inQuotes(analysis.device));
    if (a < 2 || b < 2)
        text += " Each needs at least 2 pairs, out and back in one block.";
    else
        text += " Effect and drift use them up, and nothing is left to judge the noise by: drive "
                "one pair more.";
    if (!analysis.unpaired.empty())
        text += fmt::format(" {} no partner within {} minutes.",
                            analysis.unpaired.size() == 1
                                ? fmt::format("Run {} has", analysis.unpaired.front())
                                : fmt::format("{} counted runs have", analysis.unpaired.size()),
                            shortest(analysis.options.max_gap_min));
    return text;
}

std::string presentConfiguration(const Analysis& analysis)
{
    for (const core::Block& block : analysis.blocks)
        if (block.runs > 0)
            return block.configuration;
    return analysis.baseline;
}

std::string joined(const std::vector<std::string>& parts, const char* last = " and ")
{
    std::string text;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i > 0)
            text += i + 1 == parts.size() ? last : ", ";
        text += parts[i];
    }
    return text;
}

std::string fragileBy(core::Companion companion, const Analysis& analysis)
{
    const core::Companions& others = analysis.companions;
    const auto says = [](const char* what, const std::optional<core::Interval>& interval) {
        return interval ? fmt::format("{} ({})", what, classWords(interval->cls))
                        : std::string(what);
    };
    switch (companion) {
    case core::Companion::bracket: return says("bracketing", others.bracket);
    case core::Companion::runs: return says("single runs", others.runs);
    case core::Companion::blocks: return "block means (their interval leaves the estimate out)";
    case core::Companion::labels:
        return others.labels ? fmt::format("dealing the labels ({})", pText(others.labels->p))
                             : std::string("dealing the labels");
    case core::Companion::correlated: {
        const std::optional<core::Interval> interval = others.correlated;
        return says("allowing for pairs that resemble their neighbours", interval);
    }
    }
    return {};
}

std::string fragile(const Analysis& analysis)
{
    std::vector<std::string> parts;
    for (const core::Companion companion : analysis.verdict.fragile_by)
        parts.push_back(fragileBy(companion, analysis));
    return fmt::format("Fragile: another honest way to the same number disagrees: {}.",
                       joined(parts));
}

std::string sensitive(const Analysis& analysis)
{
    std::vector<std::string> pairs;
    if (analysis.leave_one_out)
        for (const core::LeaveOneOutTurn& turn : analysis.leave_one_out->turns)
            if (turn.cls != analysis.verdict.cls)
                pairs.push_back(fmt::format("{} ({})", turn.pair, classWords(turn.cls)));
    if (pairs.empty() || pairs.size() > 4)
        return fmt::format("Sensitive: leaving out a single pair changes the verdict{}.",
                           pairs.empty() ? ""
                                         : fmt::format(" for {} of the {} pairs", pairs.size(),
                                                       analysis.pairs.size()));
    return fmt::format("Sensitive: the verdict hangs on single pairs. It changes when pair {} is "
                       "left out.",
                       joined(pairs, " or "));
}

std::string failingChecks(const Analysis& analysis)
{
    const core::Checks& checks = analysis.checks;
    std::vector<std::string> names;
    const auto add = [&](const char* checkName, core::CheckState state) {
        if (state == core::CheckState::fails)
            names.emplace_back(checkName);
    };
    add("normal: ordinary scatter", checks.normal.state);
    add("outlier: no pair apart", checks.outlier.state);
    add("order: independent pairs", checks.order.state);
    add("curve: straight drift", checks.curve.state);
    add("spread: equal scatter", checks.spread.state);
    add("direction: steady wind", checks.direction.state);
    add("air: same air", checks.air.state);
    return joined(names);
}

} // namespace

std::optional<ShownUnit> shownUnitFromName(std::string_view name)
{
    for (const ShownUnit unit :
         {ShownUnit::lPer100km, ShownUnit::mpgUs, ShownUnit::mpgImp, ShownUnit::kmPerL})
        if (core::unitName(consumptionUnit(unit)) == name)
            return unit;
    return std::nullopt;
}

ShownUnit shownUnitOf(const core::Study& study)
{
    for (const core::Run& run : study.runs) {
        if (!run.consumption)
            continue;
        switch (run.consumption->unit) {
        case ConsumptionUnit::mpgUs:
        case ConsumptionUnit::fuelGalUs: return ShownUnit::mpgUs;
        case ConsumptionUnit::mpgImp: return ShownUnit::mpgImp;
        case ConsumptionUnit::kmPerL: return ShownUnit::kmPerL;
        default: return ShownUnit::lPer100km;
        }
    }
    return ShownUnit::lPer100km;
}

std::string unitText(ShownUnit unit, bool electric)
{
    if (electric)
        return "kWh/100 km";
    switch (unit) {
    case ShownUnit::lPer100km: return "L/100 km";
    case ShownUnit::mpgUs: return "mpg (US)";
    case ShownUnit::mpgImp: return "mpg (imperial)";
    case ShownUnit::kmPerL: return "km/L";
    }
    return {};
}

double shownConsumption(double l_per_100km, ShownUnit unit, bool electric)
{
    return electric ? l_per_100km : core::fromLPer100km(l_per_100km, consumptionUnit(unit));
}

std::string consumptionText(double l_per_100km, ShownUnit unit, int decimals, bool electric)
{
    return grouped(shownConsumption(l_per_100km, unit, electric), decimals);
}

std::string inQuotes(std::string_view name)
{
    if (name.size() == 1)
        return std::string(name);
    return fmt::format("'{}'", name);
}

std::string classWords(VerdictClass cls)
{
    switch (cls) {
    case VerdictClass::less: return "less";
    case VerdictClass::more: return "more";
    case VerdictClass::equivalent: return "no difference as large as the margin";
    case VerdictClass::undecided: return "cannot tell";
    case VerdictClass::none: return "no verdict";
    }
    return {};
}

std::string verdictSentence(const Analysis& analysis, ShownUnit unit)
{
    if (!analysis.headline || analysis.verdict.cls == VerdictClass::none)
        return noVerdictSentence(analysis.verdict.reason.value_or(core::NoVerdict::noRuns),
                                 analysis);
    switch (analysis.verdict.cls) {
    case VerdictClass::less:
    case VerdictClass::more: return moreOrLess(analysis, unit);
    case VerdictClass::equivalent: return equivalent(analysis);
    case VerdictClass::undecided: return undecided(analysis);
    case VerdictClass::none: break;
    }
    return {};
}

std::string noVerdictSentence(core::NoVerdict reason, const Analysis& analysis)
{
    switch (reason) {
    case core::NoVerdict::noRuns:
        return analysis.runs == 0 ? "No verdict: there are no runs yet."
                                  : "No verdict: every run is discarded.";
    case core::NoVerdict::oneConfiguration:
        return fmt::format("No verdict: only {} has runs that count. The comparison needs the "
                           "other configuration, too.",
                           inQuotes(presentConfiguration(analysis)));
    case core::NoVerdict::tooFewPairs: return tooFewPairs(analysis);
    case core::NoVerdict::noTimeSpread:
        return "No verdict: by their times, drift and effect cannot be told apart in these pairs. "
               "Check the start times, or drive another block.";
    case core::NoVerdict::noVariation:
        return "No verdict: the readings agree to the last digit, so there is no noise to judge "
               "by. Were they copied, or is the display too coarse?";
    }
    return {};
}

std::string qualifierSentence(core::Qualifier qualifier, const Analysis& analysis)
{
    switch (qualifier) {
    case core::Qualifier::openDesign:
        return "One switch only: whatever else changed over the day (wind, warmth, traffic) cannot "
               "be told from the effect. Go back to the first configuration and drive it again.";
    case core::Qualifier::fragile: return fragile(analysis);
    case core::Qualifier::sensitive: return sensitive(analysis);
    case core::Qualifier::assumptions:
        return fmt::format("An assumption is not met ({}): read that check before you trust the "
                           "interval.",
                           failingChecks(analysis));
    case core::Qualifier::smallerThanMargin:
        return fmt::format("There is an effect, but it is smaller than the {} % that you care "
                           "about.",
                           shortest(analysis.verdict.margin_pct));
    case core::Qualifier::interim:
        return "Interim: the plan is not driven to its end. Stopping at the first 'less' or "
               "'more' gives some 15 % false alarms where 5 % are promised.";
    }
    return {};
}

} // namespace bothways::app::english
