// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"
#include "core/study/study.h"
#include "storage/study/seal.h"

#include <SQLiteCpp/Database.h>

#include <cstdint>
#include <filesystem>
#include <optional>

/// What is asked of a file before it is believed. Within a transaction of the caller's; SQLite's
/// problems are thrown, and what is not ours as RefusedContent or DamagedRow.
namespace bothways::storage {

/// A file that is not opened, or no longer believed: the whole sentence.
struct RefusedContent {
    core::Message message;
};

/// The version of the study, once its whole schema was found to be the one that this program makes
/// for it. Reads nothing else, and not more than an honest schema has.
[[nodiscard]] int checkedVersion(SQLite::Database& database);

/// Pages, references, seal, history, rows: all of a study but the chunks of its recordings.
struct Content {
    std::optional<Seal> seal; ///< none in a study of version 1, which has another
    core::Study study;
};
/// @param bytes  the size of the file, which says how much work an honest one can be
[[nodiscard]] Content checkedContent(SQLite::Database& database, int version, std::uintmax_t bytes);
/// The same without the pages: for a file that was looked through before.
[[nodiscard]] Content checkedRows(SQLite::Database& database, int version);

/// Findings put aside, recordings and what belongs to them: thrown where a row has no meaning.
void checkOtherRows(SQLite::Database& database);

} // namespace bothways::storage
