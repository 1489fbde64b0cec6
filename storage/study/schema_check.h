// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"

#include <optional>

namespace SQLite {
class Database;
}

namespace bothways::storage {

/// Compares all of sqlite_schema (type, name, tbl_name, sql) byte for byte with what this program
/// makes for a study of the version. What a row says, SQLite obeys: a trigger falsifies, a view
/// never ends, an index on an expression runs code.
///
/// @return  what is more, less or different, as a sentence that names it; nothing when all is ours
[[nodiscard]] std::optional<core::Message> foreignSchema(SQLite::Database& database, int version);

} // namespace bothways::storage
