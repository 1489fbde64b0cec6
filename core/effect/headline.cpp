// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/headline.h"

#include "core/effect/effect_model.h"
#include "core/effect/verdict.h"
#include "core/statistics/distributions.h"

#include <cmath>

namespace bothways::core {
namespace {

/// exp of it is the baseline: mean m less the device's share.
double meanBaselineLog(const std::vector<Observation>& pairs, double effect_log)
{
    double m = 0.0, x = 0.0;
    for (const Observation& pair : pairs) {
        m += pair.y;
        x += pair.device ? 1.0 : 0.0;
    }
    const auto n = static_cast<double>(pairs.size());
    return m / n - effect_log * x / n;
}

/// Mean over pairs of the log of the control's consumption; 0 without a control vehicle.
double meanControlLog(const PreparedStudy& prepared)
{
    double sum = 0.0;
    for (const Pair& pair : prepared.pairs)
        sum += std::log(pair.l_per_100km) - pair.log;
    return prepared.control ? sum / static_cast<double>(prepared.pairs.size()) : 0.0;
}

std::optional<NoVerdict> missingRuns(const PreparedStudy& prepared)
{
    bool baseline = false, device = false;
    for (const Block& block : prepared.blocks)
        if (block.runs > 0)
            (block.device ? device : baseline) = true;
    if (!baseline && !device)
        return NoVerdict::noRuns;
    if (!baseline || !device)
        return NoVerdict::oneConfiguration;
    if (prepared.pairsOf(false) < kFewestPairs || prepared.pairsOf(true) < kFewestPairs)
        return NoVerdict::tooFewPairs;
    return std::nullopt;
}

} // namespace

HeadlineOrReason headlineOf(const PreparedStudy& prepared, const AnalysisOptions& options)
{
    if (const auto reason = missingRuns(prepared))
        return *reason;
    const std::vector<Observation> pairs = pairObservations(prepared);
    const Columns columns = effectColumns(pairs, prepared.sloped());
    HeadlineFit result;
    result.fit =
        leastSquares(columns, responses(pairs), {.weightsOf = static_cast<int>(kEffectColumn)});
    const LeastSquaresFit& fit = result.fit;
    if (fit.df < kLeastDf)
        return NoVerdict::tooFewPairs;
    if (!fit.estimable[kEffectColumn])
        return NoVerdict::noTimeSpread;
    if (!(fit.s() >= kNoVariation))
        return NoVerdict::noVariation;

    Headline& headline = result.headline;
    headline.s = fit.s();
    headline.sqrt_v = std::sqrt(fit.cov(kEffectColumn, kEffectColumn));
    headline.effect_log = fit.coefficients[kEffectColumn];
    headline.se_log = headline.s * headline.sqrt_v;
    headline.df = fit.df;
    headline.t = headline.effect_log / headline.se_log;
    headline.confidence = options.confidence;
    const Interval interval =
        intervalOf(headline.effect_log, headline.se_log, headline.df, options);
    headline.p = interval.p;
    headline.low_log = interval.low_log;
    headline.high_log = interval.high_log;
    result.cls = interval.cls;
    const double half = equivalenceHalfWidth(headline.se_log, headline.df, options.confidence);
    headline.low_equivalence_log = headline.effect_log - half;
    headline.high_equivalence_log = headline.effect_log + half;
    constexpr std::size_t kSlope = kEffectColumn + 2; // as effectColumns() lays one day out
    if (prepared.sloped() && prepared.days_with_pairs.size() == 1 && fit.estimable[kSlope])
        headline.drift_log_per_h = fit.coefficients[kSlope];
    headline.baseline_l_per_100km =
        std::exp(meanBaselineLog(pairs, headline.effect_log) + meanControlLog(prepared));
    headline.difference_l_per_100km =
        headline.baseline_l_per_100km * std::expm1(headline.effect_log);
    headline.fitted = fit.fitted;
    headline.residuals = fit.residuals;
    headline.leverage = fit.leverage;
    return result;
}

} // namespace bothways::core
