// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/verdict.h"

#include "core/statistics/distributions.h"

#include <cmath>

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

bool fulfils(const PlannedStudy& plan, int designBlocks, int baselinePairs, int devicePairs)
{
    int blocks = 0, baseline = 0, device = 0;
    char before = 0;
    for (const char letter : plan.sequence) {
        blocks += letter != before ? 1 : 0;
        before = letter;
        (sameWord({&letter, 1}, "A") ? baseline : device) += plan.pairs_per_block;
    }
    return designBlocks >= blocks && baselinePairs >= baseline && devicePairs >= device;
}

std::vector<Companion> disagreeing(const Headline& headline, VerdictClass headlineClass,
                                   const Companions& companions)
{
    constexpr double kLeastCompanionDf = 2.0;
    const double alpha = 1.0 - headline.confidence;
    const double enough = alpha * (1.0 + 1e-12); // 1 - 0.9 is a little less than 0.1
    const auto otherClass = [&](const Interval* companion) {
        return companion && companion->df >= kLeastCompanionDf && companion->cls != headlineClass;
    };
    const auto get = [](const auto& companion) { return companion ? &*companion : nullptr; };
    std::vector<Companion> names;
    if (otherClass(get(companions.bracket)))
        names.push_back(Companion::bracket);
    if (otherClass(get(companions.runs)))
        names.push_back(Companion::runs);
    if (const auto& blocks = companions.blocks;
        blocks && blocks->df >= kLeastCompanionDf &&
        (headline.effect_log < blocks->low_log || headline.effect_log > blocks->high_log))
        names.push_back(Companion::blocks);
    if (const auto& labels = companions.labels;
        labels && 2.0 <= enough * static_cast<double>(labels->deals) &&
        (labels->p < alpha) != (headline.p < alpha))
        names.push_back(Companion::labels);
    if (otherClass(get(companions.correlated)))
        names.push_back(Companion::correlated);
    return names;
}

bool anyFails(const Checks& checks)
{
    for (const CheckState state :
         {checks.normal.state, checks.outlier.state, checks.order.state, checks.curve.state,
          checks.spread.state, checks.direction.state, checks.air.state})
        if (state == CheckState::fails)
            return true;
    return false;
}

} // namespace bothways::core
