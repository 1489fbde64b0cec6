// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string_view>

namespace SQLite {
class Database;
}

/// The tables of a study file, and how an older file becomes a newer one. The same in prose:
/// study_file.md here.
namespace bothways::storage {

/// "BWay". On disk: never change it.
inline constexpr int kApplicationId = 0x42576179;
/// The version that this program writes. A file with a higher one is refused.
inline constexpr int kSchemaVersion = 2;

/// Makes the tables in an empty database, with application_id and user_version.
/// @param version  an older one: what such a study has to look like
void createSchema(SQLite::Database& database, int version = kSchemaVersion);

/// Brings a study of version `from` to kSchemaVersion, one step a version. Within a transaction of
/// the caller's.
void migrate(SQLite::Database& database, int from);

/// Tables whose changes a person may take back; parents before children.
[[nodiscard]] std::span<const std::string_view> undoableTables();

} // namespace bothways::storage
