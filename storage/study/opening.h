// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/study/study_database.h"

namespace bothways::storage {

/// Opens study.file, which study.hold has in hand, as study.readOnly says: checks everything, and
/// brings an older version up to date unless it is only read. Fills in the database and what is
/// known of it.
[[nodiscard]] Outcome openDatabase(StudyFile::Private& study);

/// Makes a study in a new file: whole, or nothing of it. Of two at once one wins, and the other
/// finds a file that exists.
[[nodiscard]] Outcome createFile(const std::filesystem::path& file,
                                 const core::StudyProperties& properties, const std::string& now);

} // namespace bothways::storage
