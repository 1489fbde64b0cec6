// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/study/study_database.h"

#include <cstdint>

namespace bothways::storage {

/// Takes away what imports that never finished left behind. For the one who opens a study, before
/// any import begins.
[[nodiscard]] Outcome removeUnfinishedTraces(StudyFile::Private& study);

/// Takes an import's data away, within a transaction of the caller's.
void removeTraceData(SQLite::Database& database, std::int64_t data);

} // namespace bothways::storage
