// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/effect/prepared_study.h"

/// Other honest ways to the same number. (Method, section 5.)
namespace bothways::core {

/// bracket and blocks from block means, runs from all counted runs, labels and correlated from the
/// pairs, settings from the pairs that are not mixed; each under the headline's design.
///
/// @param study     for the settings as written
/// @param prepared  has this headline: two pairs of either configuration, a design, some variation
/// @return  each companion that these runs allow (df >= 1, residuals that are not all 0); total,
///          nothing throws
[[nodiscard]] Companions companionsOf(const Study& study, const PreparedStudy& prepared,
                                      const Headline& headline, const AnalysisOptions& options);

} // namespace bothways::core
