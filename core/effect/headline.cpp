// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/headline.h"

#include "core/effect/effect_model.h"
#include "core/effect/verdict.h"
#include "core/statistics/distributions.h"

#include <cmath>

namespace bothways::core {
namespace {

/// mu at the mean pair time, and over the days their mean.
double meanBaselineLog(const std::vector<Observation>& pairs, const PreparedStudy& prepared,
                       const LeastSquaresFit& fit)
{
    std::vector<std::size_t> interceptOfDay(static_cast<std::size_t>(prepared.days), 0);
    std::vector<int> pairsOfDay(interceptOfDay.size(), 0);
    for (const Observation& pair : pairs)
        ++pairsOfDay[static_cast<std::size_t>(pair.day)];
    double sum = 0.0;
    std::size_t column = kEffectColumn + 1; // as effectColumns() lays them out
    for (std::size_t day = 0; day < pairsOfDay.size(); ++day) {
        if (pairsOfDay[day] == 0)
            continue;
        sum += pairsOfDay[day] * fit.coefficients[column];
        column += prepared.day_closed[day] ? 2 : 1;
    }
    return sum / static_cast<double>(pairs.size());
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
    const Columns columns = effectColumns(pairs, prepared.day_closed);
    const auto n = static_cast<int>(pairs.size());
    const auto terms = static_cast<int>(columns.count());
    const bool severalDays = prepared.days > 1;
    if (!severalDays && n - terms < kLeastDf)
        return NoVerdict::tooFewPairs;

    HeadlineFit result;
    result.fit =
        leastSquares(columns, responses(pairs), {.weightsOf = static_cast<int>(kEffectColumn)});
    const LeastSquaresFit& fit = result.fit;
    if (fit.df < kLeastDf)
        return NoVerdict::tooFewPairs;
    if (!fit.estimable[kEffectColumn] || (!severalDays && fit.rank < terms))
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
    if (!severalDays && prepared.design == Design::closed)
        headline.drift_log_per_h = fit.coefficients[kEffectColumn + 2];
    headline.baseline_l_per_100km =
        std::exp(meanBaselineLog(pairs, prepared, fit) + meanControlLog(prepared));
    headline.difference_l_per_100km =
        headline.baseline_l_per_100km * std::expm1(headline.effect_log);
    headline.fitted = fit.fitted;
    headline.residuals = fit.residuals;
    headline.leverage = fit.leverage;
    return result;
}

} // namespace bothways::core
