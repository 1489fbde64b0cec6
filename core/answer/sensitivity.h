// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/effect/headline.h"
#include "core/effect/prepared_study.h"

/// How much the answer hangs on single pairs and on the discards. (Method, section 8.)
namespace bothways::core {

/// The headline without each pair in turn. Open or closed stays as it was decided with all pairs.
///
/// By the exact update of a least-squares fit that loses a row (Cook & Weisberg 1982, section
/// 2.2.3), so that ten thousand pairs cost no more than one fit; refitted where the update would
/// lose digits or the row carried a column alone.
[[nodiscard]] LeaveOneOut leaveOneOut(const PreparedStudy& prepared, const HeadlineFit& headline,
                                      const AnalysisOptions& options);

/// The headline with all discarded runs counted again, and with each singly; pairs are formed anew
/// each time and so is the design, since a run put back can complete a block.
///
/// A run that cannot be used (no consumption, or none of the control vehicle where that is used)
/// cannot be put back. `up` and `down` count the discarded runs whose return would move the effect;
/// both are 0 without a headline.
/// @param headline  may be null: no verdict from the counted runs
[[nodiscard]] DiscardsRestored discardsRestored(const Study& study, const PreparedStudy& prepared,
                                                const Headline* headline,
                                                const AnalysisOptions& options);

} // namespace bothways::core
