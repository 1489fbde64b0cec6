// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/connection.h"

#include <SQLiteCpp/Exception.h>
#include <sqlite3.h>

#include <array>
#include <utility>

namespace bothways::storage {
namespace {

namespace fs = std::filesystem;

constexpr int kWait_ms = 2000; // a Waiting takes its place
constexpr int kStride = 1000;
/// The longest statement of our schema has some 2,000 bytes.
constexpr int kLongestSql = 16 << 10;
/// 10,000 runs in one sheet make a changeset of some megabytes; notes may be long.
constexpr int kLongestValue = 64 << 20;

void set(SQLite::Database& database, int option, int value)
{
    int now = 0;
    const int code = sqlite3_db_config(database.getHandle(), option, value, &now);
    if (code != SQLITE_OK || now != value)
        throw SQLite::Exception("SQLite cannot be made safe", SQLITE_ERROR);
}

void limit(SQLite::Database& database, int which, int value)
{
    sqlite3_limit(database.getHandle(), which, value);
}

void harden(SQLite::Database& database)
{
    for (const auto& [option, value] : {std::pair{SQLITE_DBCONFIG_DEFENSIVE, 1},
                                        {SQLITE_DBCONFIG_ENABLE_TRIGGER, 0},
                                        {SQLITE_DBCONFIG_ENABLE_VIEW, 0},
                                        {SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0},
                                        {SQLITE_DBCONFIG_WRITABLE_SCHEMA, 0},
                                        {SQLITE_DBCONFIG_DQS_DML, 0},
                                        {SQLITE_DBCONFIG_DQS_DDL, 0},
                                        {SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0}})
        set(database, option, value);
    for (const auto& [which, value] : {std::pair{SQLITE_LIMIT_LENGTH, kLongestSql},
                                       {SQLITE_LIMIT_SQL_LENGTH, kLongestSql},
                                       {SQLITE_LIMIT_COLUMN, 100},
                                       {SQLITE_LIMIT_EXPR_DEPTH, 50},
                                       {SQLITE_LIMIT_COMPOUND_SELECT, 5},
                                       {SQLITE_LIMIT_VDBE_OP, 100'000},
                                       {SQLITE_LIMIT_FUNCTION_ARG, 10},
                                       {SQLITE_LIMIT_ATTACHED, 0},
                                       {SQLITE_LIMIT_LIKE_PATTERN_LENGTH, 100},
                                       {SQLITE_LIMIT_VARIABLE_NUMBER, 100},
                                       {SQLITE_LIMIT_TRIGGER_DEPTH, 1},
                                       {SQLITE_LIMIT_WORKER_THREADS, 0}})
        limit(database, which, value);
}

int spendOf(void* budget)
{
    return static_cast<Budget*>(budget)->spend() ? 0 : 1;
}

} // namespace

DatabasePtr connect(const fs::path& file, int flags)
{
    // Absolute, so that no name means anything special to SQLite.
    auto database =
        std::make_unique<SQLite::Database>(fs::absolute(file).string(), flags, kWait_ms);
    harden(*database);
    return database;
}

void lowerLimits(SQLite::Database& database)
{
    limit(database, SQLITE_LIMIT_LENGTH, kLongestSql);
}

void liftLimits(SQLite::Database& database)
{
    limit(database, SQLITE_LIMIT_LENGTH, kLongestValue);
}

void boundCache(SQLite::Database& database)
{
    database.exec("PRAGMA cache_size = -4000"); // KiB; a file's header may name another size
}

void configure(SQLite::Database& database, bool readOnly)
{
    database.exec("PRAGMA foreign_keys = ON");
    database.exec("PRAGMA cell_size_check = ON");
    database.exec("PRAGMA temp_store = MEMORY");
    database.exec("PRAGMA mmap_size = 0"); // a file cut short meanwhile is an error, not a signal
    boundCache(database);
    if (readOnly) {
        database.exec("PRAGMA query_only = ON");
        return;
    }
    database.exec("PRAGMA synchronous = FULL");
    Query(database, "PRAGMA journal_mode = TRUNCATE").step();
}

void rewriteWithoutGaps(SQLite::Database& database)
{
    limit(database, SQLITE_LIMIT_ATTACHED, 1);
    try {
        database.exec("VACUUM");
    } catch (...) {
        limit(database, SQLITE_LIMIT_ATTACHED, 0);
        throw;
    }
    limit(database, SQLITE_LIMIT_ATTACHED, 0);
}

Budget::Budget(SQLite::Database& database, std::int64_t steps)
    : m_database(&database), m_left(steps)
{
    sqlite3_progress_handler(database.getHandle(), kStride, spendOf, this);
}

Budget::~Budget()
{
    sqlite3_progress_handler(m_database->getHandle(), 0, nullptr, nullptr);
}

bool Budget::spend()
{
    m_left -= kStride;
    return m_left >= 0;
}

} // namespace bothways::storage
