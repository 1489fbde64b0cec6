// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/effect/prepared_study.h"

#include <optional>

/// Answers from block means, with the spread inside blocks as their only noise. (Method, sections 5
/// and 7.)
namespace bothways::core {

/// How pairs scatter inside their blocks.
struct WithinBlocks {
    double s = 0.0; ///< of a pair, log
    int df = 0;     ///< sum of (pairs - 1) over the blocks, less 1 for each day's slope
};

/// Residual spread of the pairs about a mean for each block and a slope in time for each day, so
/// that a straight drift is not taken for noise.
/// @return  nothing when df < 1, or when the pairs of every block are alike
[[nodiscard]] std::optional<WithinBlocks> withinBlocks(const PreparedStudy& prepared);

/// Each B block against the straight line between its neighbouring A blocks of the same day, taken
/// at the B block's mean pair time; the mean over those that lie between two A blocks.
///
/// Variance s_w^2 sum w_b^2/n_b, w_b the total weight of a block's mean in the estimate.
/// @return  nothing without such a block, or without withinBlocks()
[[nodiscard]] std::optional<Interval> bracketOf(const PreparedStudy& prepared,
                                                const AnalysisOptions& options);

/// Mean of the day's last A block less that of its first: how far the day itself moved. With
/// several days the mean over those that have two A blocks.
/// @return  nothing without two A blocks on any day, or without withinBlocks()
[[nodiscard]] std::optional<Interval> baselineShiftOf(const PreparedStudy& prepared,
                                                      const AnalysisOptions& options);

} // namespace bothways::core
