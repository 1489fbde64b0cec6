// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/study/forged_study.h"

#include "storage/study/seal.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

namespace bothways::tests {
namespace {

void makeAllFit(SQLite::Database& database)
{
    SQLite::Statement lines(database, "SELECT id, at, kind, detail, changeset FROM history");
    SQLite::Statement checksum(database, "UPDATE history SET checksum = ? WHERE id = ?");
    while (lines.executeStep()) {
        checksum.bind(1, storage::checksumOfEntry(
                             lines.getColumn(1).getString(), lines.getColumn(2).getString(),
                             lines.getColumn(3).getString(), lines.getColumn(4).getString()));
        checksum.bind(2, lines.getColumn(0).getInt64());
        checksum.exec();
        checksum.reset();
    }
    storage::storeSeal(database, storage::Seal(database).top());
}

} // namespace

void runSql(const std::filesystem::path& study, const std::string& statements)
{
    SQLite::Database(study.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE).exec(statements);
}

void forge(const std::filesystem::path& study, const std::string& statements)
{
    SQLite::Database database(study.string(), SQLite::OPEN_READWRITE);
    database.exec("PRAGMA ignore_check_constraints = ON");
    database.exec(statements);
    makeAllFit(database);
}

void forgeChangeset(const std::filesystem::path& study, const std::string& changeset)
{
    SQLite::Database database(study.string(), SQLite::OPEN_READWRITE);
    SQLite::Statement row(database, "UPDATE history SET changeset = ? WHERE id = "
                                    "(SELECT max(id) FROM history WHERE state = 'stands')");
    row.bind(1, changeset.data(), static_cast<int>(changeset.size()));
    row.exec();
    makeAllFit(database);
}

std::string askSql(const std::filesystem::path& study, const std::string& query)
{
    SQLite::Database database(study.string(), SQLite::OPEN_READONLY);
    return database.execAndGet(query).getString();
}

} // namespace bothways::tests
