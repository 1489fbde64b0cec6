// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/effect/prepared_study.h"
#include "core/statistics/least_squares.h"

#include <variant>

/// The headline: one effect from all pairs. (Method, section 4.)
namespace bothways::core {

struct HeadlineFit {
    Headline headline;
    VerdictClass cls = VerdictClass::undecided;
    LeastSquaresFit fit; ///< column 0 is the effect; `weights` are the effect's
};
using HeadlineOrReason = std::variant<HeadlineFit, NoVerdict>;

/// Least squares over the pairs of m = mu + delta x + beta (t - tMean), without beta where the
/// design is open; with several days an intercept and, in a closed design, a slope for each day
/// that has pairs.
///
/// Columns that depend on others go (df = n - rank); only an effect that cannot be told from the
/// days' own terms is `noTimeSpread`.
///
/// baseline_l_per_100km is exp(mean m - delta mean x); with a control vehicle times the pairs'
/// geometric mean of the control, so that it is litres again.
///
/// Total. Source: method, section 4. Checked: tests/core/effect/headline_test.cpp.
[[nodiscard]] HeadlineOrReason headlineOf(const PreparedStudy& prepared,
                                          const AnalysisOptions& options);

inline constexpr int kFewestPairs = 2; ///< in either configuration
inline constexpr int kLeastDf = 2;     ///< degrees of freedom
/// s below this is no variation: all readings alike.
inline constexpr double kNoVariation = 1e-12;

} // namespace bothways::core
