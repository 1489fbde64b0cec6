// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/study/study.h"
#include "storage/study/study_file.h"

#include <string>
#include <vector>

/// Looks at a verdict, as the history keeps them. Whoever may stop when the answer suits is wrong
/// more often than promised, so looks are counted.
namespace bothways::app {

/// Of each look on record the pairs that there were, oldest first. Lines of earlier versions, which
/// do not say how many, are left out.
[[nodiscard]] std::vector<int> pairsLookedAt(const std::vector<storage::HistoryEntry>& history);

/// What the history says of the plan that is tied now, and of those that stood at looks. Changes
/// that were taken back do not count; a look does, whatever was taken back.
[[nodiscard]] core::PlanRecord planRecordOf(const std::vector<storage::HistoryEntry>& history,
                                            const core::StudyProperties& properties);

/// Whether a look goes on record: every one at a study with a plan; without one the first at each
/// number of pairs that gives a verdict.
[[nodiscard]] bool isLookForTheRecord(const core::StudyProperties& properties,
                                      const core::Analysis& analysis,
                                      const std::vector<int>& lookedAtPairs);

/// The line for the history, with the plan that stands.
[[nodiscard]] std::string lookDetail(const core::Analysis& analysis,
                                     const core::StudyProperties& properties);

} // namespace bothways::app
