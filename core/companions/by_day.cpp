// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/companions/by_day.h"

#include "core/effect/effect_model.h"
#include "core/effect/headline.h"
#include "core/effect/verdict.h"
#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>

namespace bothways::core {

double ByDayFit::s() const
{
    return df > 0 ? std::sqrt(rss / df) : 0.0;
}

ByDayFit byDayFitOf(const PreparedStudy& prepared)
{
    std::vector<std::vector<Observation>> pairsOfDay(static_cast<std::size_t>(prepared.days));
    for (const Observation& pair : pairObservations(prepared))
        pairsOfDay[static_cast<std::size_t>(pair.day)].push_back(pair);
    ByDayFit byDay;
    for (std::size_t day = 0; day < pairsOfDay.size(); ++day) {
        const std::vector<Observation>& pairs = pairsOfDay[day];
        if (pairs.empty())
            continue;
        const LeastSquaresFit fit =
            leastSquares(effectColumns(pairs, prepared.sloped()), responses(pairs));
        byDay.rss += fit.rss;
        byDay.rank += fit.rank;
        byDay.df += fit.df;
        if (fit.estimable[kEffectColumn])
            byDay.days.push_back({static_cast<int>(day) + 1, static_cast<int>(pairs.size()),
                                  fit.coefficients[kEffectColumn],
                                  fit.cov(kEffectColumn, kEffectColumn)});
    }
    return byDay;
}

std::vector<DayEffect> dayEffectsOf(const ByDayFit& byDay, const AnalysisOptions& options)
{
    if (byDay.days.size() < 2 || byDay.df < 1 || !(byDay.s() >= kNoVariation))
        return {};
    const double t = tQuantile(0.5 + options.confidence / 2.0, byDay.df);
    std::vector<DayEffect> effects;
    for (const ByDayFit::Day& day : byDay.days) {
        const double half = t * byDay.s() * std::sqrt(day.v);
        effects.push_back(
            {day.day, day.pairs, day.effect_log, day.effect_log - half, day.effect_log + half});
    }
    return effects;
}

DaysCheck daysCheckOf(const ByDayFit& byDay, const Headline& headline)
{
    DaysCheck check;
    const double more = headline.df - byDay.df; // the ranks' difference
    if (!(more >= 1.0) || byDay.df < kLeastDf || !(byDay.s() >= kNoVariation))
        return check;
    const double together = headline.s * headline.s * headline.df;
    const double f = std::max(0.0, together - byDay.rss) / more / (byDay.rss / byDay.df);
    check.statistic = f;
    check.df1 = more;
    check.df2 = byDay.df;
    check.p = fUpper(f, more, byDay.df);
    check.state = checkStateOf(*check.p);
    return check;
}

} // namespace bothways::core
