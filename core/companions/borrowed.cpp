// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/companions/borrowed.h"

#include "core/effect/verdict.h"
#include "core/statistics/distributions.h"

#include <algorithm>
#include <cmath>

namespace bothways::core {

std::optional<BorrowedInterval> borrowedOf(const Headline& headline, const AnalysisOptions& options)
{
    if (!options.noise || !(options.noise->s > 0.0) || !(options.noise->df > 0.0))
        return std::nullopt;
    const BorrowedNoise& from = *options.noise;
    const double df = headline.df + from.df;
    const double s =
        std::sqrt((headline.df * headline.s * headline.s + from.df * from.s * from.s) / df);
    BorrowedInterval borrowed;
    static_cast<Interval&>(borrowed) =
        intervalOf(headline.effect_log, s * headline.sqrt_v, df, options);
    borrowed.s = s;
    borrowed.from_s = from.s;
    borrowed.from_df = from.df;
    borrowed.ratio_p = fTwoSided(headline.s * headline.s / (from.s * from.s), headline.df, from.df);
    return borrowed;
}

} // namespace bothways::core
