// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/verdict.h"

#include "core/statistics/distributions.h"

#include <cmath>
#include <utility>
#include <vector>

namespace bothways::core {

double equivalenceHalfWidth(double se_log, double df, double confidence)
{
    return tQuantile(confidence, df) * se_log;
}

Interval intervalOf(double effect_log, double se_log, double df, const AnalysisOptions& options)
{
    Interval interval;
    interval.effect_log = effect_log;
    interval.df = df;
    const double half = tQuantile(0.5 + options.confidence / 2.0, df) * se_log;
    interval.low_log = effect_log - half;
    interval.high_log = effect_log + half;
    if (se_log > 0.0)
        interval.p = tTwoSided(effect_log / se_log, df);
    else
        interval.p = effect_log == 0.0 ? 1.0 : 0.0;
    const double inner = equivalenceHalfWidth(se_log, df, options.confidence);
    interval.cls = classOf(interval.low_log, interval.high_log, effect_log - inner,
                           effect_log + inner, options.margin_pct);
    return interval;
}

bool insideMargins(double low_log, double high_log, double margin_pct)
{
    return low_log > logFromPct(-margin_pct) && high_log < logFromPct(margin_pct);
}

VerdictClass classOf(double low_log, double high_log, double lowEquivalence_log,
                     double highEquivalence_log, double margin_pct)
{
    if (high_log < 0.0)
        return VerdictClass::less;
    if (low_log > 0.0)
        return VerdictClass::more;
    if (insideMargins(lowEquivalence_log, highEquivalence_log, margin_pct))
        return VerdictClass::equivalent;
    return VerdictClass::undecided;
}

bool isDeviceLetter(const PlannedStudy& plan, std::size_t i)
{
    return !sameWord({&plan.sequence[i], 1}, "A");
}

std::vector<bool> lettersDriven(const PlannedStudy& plan, std::span<const DesignBlock> driven)
{
    const std::size_t letters = plan.sequence.size();
    const std::size_t planned =
        plan.pairs_per_block > 0 ? static_cast<std::size_t>(plan.pairs_per_block) : 1;
    std::vector<bool> reached(letters + 1, false); // so many letters of the sequence are driven
    reached[0] = true;
    for (const DesignBlock& block : driven) {
        if (reached[letters])
            break;
        std::vector<bool> next(letters + 1, false);
        for (std::size_t from = 0; from < letters; ++from) {
            if (!reached[from])
                continue;
            std::size_t pairs = block.pairs.size();
            for (std::size_t to = from;
                 to < letters && isDeviceLetter(plan, to) == block.device && pairs >= planned;
                 ++to) {
                pairs -= planned;
                next[to + 1] = true;
            }
        }
        reached = std::move(next);
    }
    return reached;
}

bool fulfils(const PlannedStudy& plan, std::span<const DesignBlock> driven)
{
    return lettersDriven(plan, driven).back();
}

namespace {

constexpr double kLeastCompanionDf = 2.0;

bool saysADirection(VerdictClass cls)
{
    return cls == VerdictClass::less || cls == VerdictClass::more;
}

bool intervalDisagrees(const std::optional<Interval>& companion, const Headline& headline,
                       VerdictClass headlineClass)
{
    if (!companion || companion->df < kLeastCompanionDf)
        return false;
    const bool leavesOut =
        headline.effect_log < companion->low_log || headline.effect_log > companion->high_log;
    return leavesOut || (saysADirection(companion->cls) && companion->cls != headlineClass &&
                         headlineClass != VerdictClass::undecided);
}

bool labelsDisagree(const LabelsTest& labels, const Headline& headline, VerdictClass headlineClass)
{
    constexpr double kGuard = 1e-9; // in favour of agreement
    const double alpha = 1.0 - headline.confidence;
    const double enough = alpha * (1.0 + 1e-12); // 1 - 0.9 is a little less than 0.1
    if (headlineClass == VerdictClass::undecided ||
        2.0 > enough * static_cast<double>(labels.deals))
        return false;
    return headline.p < alpha ? labels.p > 2.0 * alpha + kGuard : labels.p < 0.5 * alpha - kGuard;
}

} // namespace

std::vector<Companion> disagreeing(const Headline& headline, VerdictClass headlineClass,
                                   const Companions& companions)
{
    std::vector<Companion> names;
    const auto ask = [&](Companion name, const std::optional<Interval>& companion) {
        if (intervalDisagrees(companion, headline, headlineClass))
            names.push_back(name);
    };
    ask(Companion::bracket, companions.bracket);
    ask(Companion::runs, companions.runs);
    ask(Companion::blocks, companions.blocks);
    ask(Companion::curved, companions.curved);
    if (companions.labels && labelsDisagree(*companions.labels, headline, headlineClass))
        names.push_back(Companion::labels);
    return names;
}

bool needsIndependence(VerdictClass headlineClass, const Companions& companions)
{
    const auto& correlated = companions.correlated;
    return (saysADirection(headlineClass) || headlineClass == VerdictClass::equivalent) &&
           correlated && correlated->df >= kLeastCompanionDf && correlated->cls != headlineClass;
}

ClaimAnswer answerToClaim(double claim_pct, const Headline& headline)
{
    const double claimed = logFromPct(claim_pct);
    ClaimAnswer answer{claim_pct, ClaimState::open,
                       tTwoSided((headline.effect_log - claimed) / headline.se_log, headline.df)};
    const bool less = claim_pct < 0.0;
    if (less ? headline.high_log <= claimed : headline.low_log >= claimed)
        answer.state = ClaimState::borneOut;
    else if (less ? headline.low_log > claimed : headline.high_log < claimed)
        answer.state = ClaimState::refuted;
    return answer;
}

CheckState checkStateOf(double p)
{
    constexpr double kFails = 0.01, kNote = 0.05;
    return p < kFails ? CheckState::fails : p < kNote ? CheckState::note : CheckState::holds;
}

bool anyFails(const Checks& checks)
{
    for (const CheckState state :
         {checks.normal.state, checks.outlier.state, checks.order.state, checks.curve.state,
          checks.spread.state, checks.direction.state, checks.ways.state, checks.settling.state,
          checks.days.state, checks.resolution.state, checks.air.state})
        if (state == CheckState::fails)
            return true;
    return false;
}

} // namespace bothways::core
