// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/walk_round.h"
#include "storage/study/study_file.h"

#include <vector>

/// Walk-rounds that were made: lines of the history, which nothing is taken out of.
namespace bothways::storage {

/// In order. Lines that cannot be read as one are left out.
[[nodiscard]] std::vector<core::WalkRound> walkRoundsIn(const std::vector<HistoryEntry>& history);
[[nodiscard]] Result<std::vector<core::WalkRound>> walkRounds(const StudyFile& study);
/// Puts it into the history. The numbers become columns of the run that is driven next, which is
/// the caller's to add (core::putNumbers()).
[[nodiscard]] Outcome noteWalkRound(StudyFile& study, const core::WalkRound& round);

} // namespace bothways::storage
