// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/seal_version_1.h"

#include "storage/study/query.h"
#include "storage/study/row_hash.h"
#include "storage/study/schema.h"

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include <string>

namespace bothways::storage {
namespace {

void addRows(SQLite::Database& database, Sha256& hash, const std::string& sql)
{
    addValue(hash, 'q', sql);
    Query rows(database, sql);
    while (rows.step())
        addRow(hash, rows);
}

} // namespace

bool firstSealFits(SQLite::Database& database)
{
    Sha256 hash;
    for (const std::string_view table : undoableTables()) {
        // Names of our own tables, not a user's words. The first two columns hold every key.
        addRows(database, hash, fmt::format("SELECT * FROM {} ORDER BY 1, 2", table));
        addRows(database, hash,
                fmt::format("SELECT type, name, sql FROM sqlite_schema WHERE tbl_name = '{}' "
                            "ORDER BY type, name",
                            table));
    }
    addRows(database, hash, "SELECT id, state, checksum FROM history ORDER BY id");
    Query stored(database, "SELECT sha256 FROM seal");
    return stored.step() && stored.bytes(0) == hash.hex();
}

} // namespace bothways::storage
