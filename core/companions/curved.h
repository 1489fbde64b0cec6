// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/effect/prepared_study.h"
#include "core/statistics/least_squares.h"

#include <optional>

/// The headline's model with a bend in the drift. (Method, sections 5 and 7.)
namespace bothways::core {

struct CurvedFit {
    LeastSquaresFit fit;
    std::size_t bend = 0; ///< the column of the squared time
};
/// Closed designs: the headline's model and one more column (t - tMean of the day)^2, one
/// coefficient for all days.
/// @return  nothing for an open design, df < 2, without noise, or where that column depends on the
///          others
[[nodiscard]] std::optional<CurvedFit> curvedFitOf(const PreparedStudy& prepared);

/// The effect beside that bend: without the assumption that the drift is straight.
[[nodiscard]] std::optional<Interval> curvedOf(const std::optional<CurvedFit>& curved,
                                               const AnalysisOptions& options);

} // namespace bothways::core
