// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/companions/any_look.h"

#include "core/effect/effect_model.h"
#include "core/effect/headline.h"
#include "core/effect/verdict.h"
#include "core/statistics/any_look.h"

#include <algorithm>
#include <cmath>

namespace bothways::core {

std::optional<Interval> anyLookOf(const PreparedStudy& prepared, const AnalysisOptions& options)
{
    const std::vector<Observation> pairs = pairObservations(prepared);
    const LeastSquaresFit fit = leastSquares(effectColumns(pairs, true), responses(pairs));
    if (fit.df < 1 || !fit.estimable[kEffectColumn] || !(fit.s() >= kNoVariation))
        return std::nullopt;
    const double v = fit.cov(kEffectColumn, kEffectColumn);
    const double alpha = 1.0 - options.confidence;
    const auto outer = anyLookHalfWidth(v, fit.df, alpha);
    const auto inner = anyLookHalfWidth(v, fit.df, 2.0 * alpha);
    if (!outer || !inner)
        return std::nullopt;
    const double se = fit.s() * std::sqrt(v);
    Interval interval;
    interval.effect_log = fit.coefficients[kEffectColumn];
    interval.low_log = interval.effect_log - *outer * se;
    interval.high_log = interval.effect_log + *outer * se;
    interval.df = fit.df;
    interval.p = std::min(1.0, 1.0 / anyLookBayesFactor(interval.effect_log / se, v, fit.df));
    interval.cls = classOf(interval.low_log, interval.high_log, interval.effect_log - *inner * se,
                           interval.effect_log + *inner * se, options.margin_pct);
    return interval;
}

} // namespace bothways::core
