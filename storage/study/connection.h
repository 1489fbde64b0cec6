// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/study/query.h"

#include <SQLiteCpp/Database.h>

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string_view>

/// Connections to a file that may come from anybody. Nothing that the file says is obeyed: no
/// triggers, no views, no SQL of its schema with side effects, no text longer, no statement larger
/// and no table wider than a study needs.
namespace bothways::storage {

using DatabasePtr = std::unique_ptr<SQLite::Database>;

/// Opens without reading anything, and takes away what a study does not need, for the whole life of
/// the connection. The limits are those for reading a schema: see liftLimits().
[[nodiscard]] DatabasePtr connect(const std::filesystem::path& file, int flags);

/// Back to the limits for reading a schema.
void lowerLimits(SQLite::Database& database);

/// Once the schema was found to be our own: a value may be as long as a long sheet's changeset.
/// What stays: SQL, expressions, columns, parameters and attached databases as few as we use.
void liftLimits(SQLite::Database& database);

/// A cache that no header of a file can make larger. Before its content is read.
void boundCache(SQLite::Database& database);
/// Foreign keys, journal, durability.
void configure(SQLite::Database& database, bool readOnly);

/// VACUUM. It alone attaches a database (its own), which is forbidden otherwise.
void rewriteWithoutGaps(SQLite::Database& database);

/// While it lives, the connection's statements may do `steps` of SQLite's machine; then they end
/// with SQLITE_INTERRUPT. An honest file of a size needs at most a known number.
class Budget {
public:
    Budget(SQLite::Database& database, std::int64_t steps);
    ~Budget();
    Budget(const Budget&) = delete;
    Budget& operator=(const Budget&) = delete;
    /// Asked by SQLite, every kStride steps.
    [[nodiscard]] bool spend();

private:
    SQLite::Database* m_database;
    std::int64_t m_left;
};

} // namespace bothways::storage
