// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/effect/prepared_study.h"

#include <utility>
#include <vector>

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

/// Those that give an interval, in the order in which they are shown, with null where these runs do
/// not allow one. `borrowed` is among them only where a noise was borrowed.
[[nodiscard]] std::vector<std::pair<Companion, const Interval*>>
intervalsOf(const Companions& companions);

} // namespace bothways::core
