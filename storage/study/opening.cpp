// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/opening.h"

#include "storage/study/connection.h"
#include "storage/study/content.h"
#include "storage/study/history.h"
#include "storage/study/new_file.h"
#include "storage/study/schema.h"
#include "storage/study/study_rows.h"

#include <SQLiteCpp/Transaction.h>
#include <sqlite3.h>

#include <unistd.h>

namespace bothways::storage {
namespace {

namespace fs = std::filesystem;
using core::Done;

/// A program that was killed in a change leaves its journal: the first writer rolls it back.
/// A reader cannot, so one connection is made for that alone.
void recover(const fs::path& file)
{
    const DatabasePtr database = connect(file, SQLite::OPEN_READWRITE);
    static_cast<void>(oneNumber(*database, "PRAGMA user_version"));
}

/// Checks everything as of one commit, and remembers it.
void check(StudyFile::Private& study)
{
    SQLite::Database& database = *study.database;
    const SQLite::Transaction oneState(database);
    study.version = checkedVersion(database);
    liftLimits(database);
    const auto pages = oneNumber(database, "PRAGMA page_count");
    const auto size = oneNumber(database, "PRAGMA page_size");
    Content content =
        checkedContent(database, study.version, static_cast<std::uintmax_t>(pages * size));
    study.remember(std::move(content));
}

void bringUp(StudyFile::Private& study)
{
    SQLite::Database& database = *study.database;
    SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
    migrate(database, study.version);
    Content content{Seal(database), *study.known};
    storeSeal(database, content.seal->top());
    study.version = kSchemaVersion;
    study.remember(std::move(content));
    transaction.commit();
}

Outcome openChecked(StudyFile::Private& study)
{
    study.database =
        connect(study.file, study.readOnly ? SQLite::OPEN_READONLY : SQLite::OPEN_READWRITE);
    study.waiting = std::make_unique<Waiting>(*study.database, study.hold);
    if (!study.readOnly && sqlite3_db_readonly(study.database->getHandle(), "main") == 1)
        return study.error(core::ErrorCode::studyFile,
                           "is read-only; make it writable, or copy it to another place"_t);
    check(study);
    configure(*study.database, study.readOnly);
    if (!study.readOnly && study.version < kSchemaVersion)
        bringUp(study);
    return Done{};
}

/// A new study's bytes, made in memory.
std::string bytesOfNew(const core::StudyProperties& properties, const std::string& now)
{
    SQLite::Database database(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    createSchema(database);
    rewriteProperties(database, properties);
    appendNote(database, now, "new", HistoryDetail{"made", {BOTHWAYS_VERSION}}.written());
    storeSeal(database, Seal(database).top());
    sqlite3_int64 size = 0;
    const std::unique_ptr<unsigned char, void (*)(void*)> bytes(
        sqlite3_serialize(database.getHandle(), "main", &size, 0), sqlite3_free);
    if (!bytes)
        throw std::bad_alloc();
    return {reinterpret_cast<const char*>(bytes.get()), static_cast<std::size_t>(size)};
}

} // namespace

Outcome openDatabase(StudyFile::Private& study)
{
    if (!study.readOnly && ::access(fs::absolute(study.file).parent_path().c_str(), W_OK) != 0)
        return study.error(core::ErrorCode::studyFile,
                           "lies in a folder that is read-only; copy it to another place"_t);
    return study.guarded<Done>([&]() -> Outcome {
        try {
            return openChecked(study);
        } catch (const SQLite::Exception& problem) {
            const int code = problem.getErrorCode() & 0xFF;
            if (!study.readOnly || (code != SQLITE_READONLY && code != SQLITE_CANTOPEN))
                throw;
            recover(study.file);
            return openChecked(study);
        }
    });
}

Outcome createFile(const fs::path& file, const core::StudyProperties& properties,
                   const std::string& now)
{
    std::error_code problem;
    const auto bad = [&file](core::Message message) {
        return core::Error{core::ErrorCode::studyFile, std::move(message), file.string()};
    };
    if (fs::exists(fs::symlink_status(file, problem)))
        return bad("exists already; expected a name that is free"_t);
    if (!fs::is_directory(fs::absolute(file).parent_path(), problem))
        return bad("has no folder to lie in; expected one that exists"_t);
    try {
        return makeNewFile(file, bytesOfNew(properties, now));
    } catch (const SQLite::Exception& e) {
        return explain(e, file);
    } catch (const std::bad_alloc&) {
        return bad("the memory is full; nothing was changed"_t);
    }
}

} // namespace bothways::storage
