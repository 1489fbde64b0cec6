// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/companions/curved.h"

#include "core/effect/effect_model.h"
#include "core/effect/headline.h"
#include "core/effect/verdict.h"

#include <algorithm>
#include <cmath>

namespace bothways::core {

std::optional<CurvedFit> curvedFitOf(const PreparedStudy& prepared)
{
    if (!prepared.sloped())
        return std::nullopt;
    const std::vector<Observation> pairs = pairObservations(prepared);
    Columns columns = effectColumns(pairs, true);
    CurvedFit curved;
    curved.bend = columns.count();
    const std::vector<double> times = centredTimes(pairs);
    std::ranges::transform(times, columns.add().begin(), [](double t) { return t * t; });
    curved.fit = leastSquares(columns, responses(pairs));
    if (curved.fit.df < kLeastDf || !curved.fit.estimable[curved.bend] ||
        !(curved.fit.s() >= kNoVariation))
        return std::nullopt;
    return curved;
}

std::optional<Interval> curvedOf(const std::optional<CurvedFit>& curved,
                                 const AnalysisOptions& options)
{
    if (!curved || !curved->fit.estimable[kEffectColumn])
        return std::nullopt;
    const LeastSquaresFit& fit = curved->fit;
    return intervalOf(fit.coefficients[kEffectColumn],
                      fit.s() * std::sqrt(fit.cov(kEffectColumn, kEffectColumn)), fit.df, options);
}

} // namespace bothways::core
