// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/recordings/cut.h"
#include "storage/study/study_database.h"

#include <string>
#include <vector>

/// Parts of a recording become runs: within a transaction of the caller's, for the files of
/// storage/ alone.
namespace bothways::storage {

/// Writes the runs and which part is theirs; SQLite's problems are thrown.
/// @return  for the history: the numbers of the runs, and what changed on those that were there
[[nodiscard]] Result<HistoryValue::List> writeCuts(const StudyFile::Private& d,
                                                   SQLite::Database& database,
                                                   core::RecordingId recording,
                                                   const std::vector<Cut>& cuts);

} // namespace bothways::storage
