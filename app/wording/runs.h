// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/units.h"
#include "core/screening/odd_runs.h"
#include "core/study/walk_round.h"

#include <optional>
#include <string>
#include <vector>

namespace bothways::app::wording {

/// "2, 3, 5–9": numbers of runs or of lines, neighbours drawn together. In the order that is
/// given; one that follows itself is said once.
[[nodiscard]] std::string runList(std::vector<int> numbers);
/// "run 9", "runs 2, 3, 5–9"
[[nodiscard]] std::string runsWords(const Language& in, std::vector<int> numbers);

/// Why a person should look at the run again: a question, not a finding.
/// @param unit  none: that of the study's runs
[[nodiscard]] std::string oddRunSentence(const Language& in, const core::OddRun& odd,
                                         const core::Study& study,
                                         std::optional<ShownUnit> unit = {});

/// "tyre pressure: 245 kPa now, 230 before: more than 10 apart"
[[nodiscard]] std::string walkDifference(const Language& in, const core::WalkDifference& one);
/// "walk-round before run 7: lines that are not ticked: 1"
[[nodiscard]] std::string walkRoundMade(const Language& in, const core::WalkRound& round);

} // namespace bothways::app::wording
