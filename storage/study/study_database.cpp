// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/study_database.h"

#include "storage/study/history.h"
#include "storage/study/schema.h"
#include "storage/study/seal.h"
#include "storage/study/session.h"
#include "storage/study/study_rows.h"

#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>
#include <sqlite3.h>

#include <unistd.h>

#include <chrono>
#include <fstream>

namespace bothways::storage {
namespace {

namespace fs = std::filesystem;
using core::Done;
using core::Error;
using core::ErrorCode;
using DatabasePtr = std::unique_ptr<SQLite::Database>;

constexpr int kWait_ms = 2000;
/// Above it the pages of the traces are left to the checksums of their chunks.
constexpr std::uintmax_t kCheckWholeBelow = std::uintmax_t{64} << 20;

Error bad(const fs::path& file, core::Message message)
{
    return {ErrorCode::studyFile, std::move(message), file.string()};
}

/// What can be said before SQLite looks at it.
std::optional<Error> refuseFile(const fs::path& file, bool readOnly)
{
    std::error_code problem;
    const fs::file_status status = fs::status(file, problem);
    if (!fs::exists(status))
        return bad(file, "there is no such file; expected a study"_t);
    if (fs::is_directory(status))
        return bad(file, "is a directory; expected a study"_t);
    std::ifstream stream(file, std::ios::binary);
    if (!stream)
        return bad(file, "cannot be read (no permission?); expected a study"_t);
    std::string head(16, '\0');
    stream.read(head.data(), static_cast<std::streamsize>(head.size()));
    if (stream.gcount() == 0)
        return bad(file, "is empty; expected a study"_t);
    if (head != std::string("SQLite format 3\0", 16))
        return bad(file, "is no study; expected a file that Bothways made"_t);
    if (readOnly)
        return std::nullopt;
    if (::access(file.c_str(), W_OK) != 0)
        return bad(file, "is read-only; make it writable, or copy it to another place"_t);
    if (::access(fs::absolute(file).parent_path().c_str(), W_OK) != 0)
        return bad(file, "lies in a folder that is read-only; copy it to another place"_t);
    return std::nullopt;
}

int pragma(SQLite::Database& database, const char* sql)
{
    SQLite::Statement row(database, sql);
    row.executeStep();
    return row.getColumn(0).getInt();
}

std::optional<Error> refuseVersion(SQLite::Database& database, const fs::path& file)
{
    if (pragma(database, "PRAGMA application_id") != kApplicationId)
        return bad(file, "is an SQLite database, but not a study; expected a file that Bothways "
                         "made"_t);
    const int version = pragma(database, "PRAGMA user_version");
    if (version > kSchemaVersion)
        return bad(file, core::message("was made by a newer Bothways (format {}; this one knows "
                                       "formats up to {}); it is left as it is"_t,
                                       version, kSchemaVersion));
    if (version < 1)
        return bad(file, "is damaged: it has no format number"_t);
    return std::nullopt;
}

bool pagesAreSound(SQLite::Database& database, const fs::path& file)
{
    const auto passes = [&database](const std::string& sql) {
        SQLite::Statement row(database, sql);
        return row.executeStep() && row.getColumn(0).getString() == "ok";
    };
    std::error_code problem;
    if (fs::file_size(file, problem) < kCheckWholeBelow)
        return passes("PRAGMA integrity_check(1)");
    for (const std::string_view table : undoableTables())
        if (!passes(fmt::format("PRAGMA integrity_check({})", table)))
            return false;
    return passes("PRAGMA integrity_check(history)");
}

std::optional<Error> refuseDamage(SQLite::Database& database, const fs::path& file)
{
    if (!pagesAreSound(database, file))
        return bad(file, "is damaged (SQLite finds broken pages); restore it from a copy"_t);
    if (!sealFits(database))
        return bad(file, "is damaged: its content is not what Bothways wrote last; restore it "
                         "from a copy"_t);
    static_cast<void>(readStudy(database)); // throws where a row has no meaning
    return std::nullopt;
}

DatabasePtr connect(const fs::path& file, int flags)
{
    // Absolute, so that no name means anything special to SQLite.
    return std::make_unique<SQLite::Database>(fs::absolute(file).string(), flags, kWait_ms);
}

/// A program that was killed in a change leaves its journal: the first writer rolls it back.
/// A reader cannot, so one connection is made for that alone.
void recover(const fs::path& file)
{
    const DatabasePtr database = connect(file, SQLite::OPEN_READWRITE);
    pragma(*database, "PRAGMA user_version");
}

Result<DatabasePtr> openChecked(const fs::path& file, bool readOnly)
{
    DatabasePtr database = connect(file, readOnly ? SQLite::OPEN_READONLY : SQLite::OPEN_READWRITE);
    if (!readOnly && sqlite3_db_readonly(database->getHandle(), "main") == 1)
        return bad(file, "is read-only; make it writable, or copy it to another place"_t);
    if (auto error = refuseVersion(*database, file))
        return *error;
    configure(*database, readOnly);
    {
        const SQLite::Transaction oneState(*database); // read as of one commit
        if (auto error = refuseDamage(*database, file))
            return *error;
    }
    if (readOnly)
        return database;
    if (const int version = pragma(*database, "PRAGMA user_version"); version < kSchemaVersion) {
        SQLite::Transaction transaction(*database, SQLite::TransactionBehavior::IMMEDIATE);
        migrate(*database, version);
        renewSeal(*database);
        transaction.commit();
    }
    return database;
}

} // namespace

Error explain(const SQLite::Exception& problem, const fs::path& file)
{
    switch (problem.getErrorCode() & 0xFF) {
    case SQLITE_FULL: return bad(file, "the disk is full; nothing was changed"_t);
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return bad(file, "is being written by another program; nothing was changed"_t);
    case SQLITE_READONLY: return bad(file, "is read-only; nothing was changed"_t);
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return bad(file,
                   core::message("is damaged ({}); restore it from a copy"_t, problem.what()));
    case SQLITE_IOERR:
    case SQLITE_CANTOPEN:
        return bad(file, core::message("cannot be read or written ({}); nothing was changed"_t,
                                       problem.what()));
    case SQLITE_CONSTRAINT:
        return bad(file, core::message("does not take this change ({}); nothing was changed"_t,
                                       problem.what()));
    default: return bad(file, core::message("{}; nothing was changed"_t, problem.what()));
    }
}

Error StudyFile::Private::current() const
{
    try {
        throw;
    } catch (const SQLite::Exception& problem) {
        return explain(problem, file);
    } catch (const DamagedRow& row) {
        return bad(file, core::message("is damaged: {} cannot be read; restore it from a copy"_t,
                                       row.what));
    } catch (const DamagedRecording& damaged) {
        return bad(file, damaged.message);
    } catch (const std::exception& problem) {
        return bad(file, core::Message::verbatim(problem.what()));
    }
}

StudyFile::Private::~Private()
{
    if (!database || readOnly)
        return;
    try {
        // Takes the empty journal away, so that a closed study is one file.
        SQLite::Statement(*database, "PRAGMA journal_mode = DELETE").executeStep();
    } catch (const SQLite::Exception&) {
        // Another program reads just now; the empty file does no harm.
    }
}

Outcome StudyFile::Private::change(std::string_view kind, const HistoryDetail& detail,
                                   const std::function<Outcome(SQLite::Database&)>& apply)
{
    return inTransaction([&](SQLite::Database& db) -> Outcome {
        Session session(db.getHandle(), undoableTables());
        Outcome outcome = apply(db);
        if (!outcome)
            return outcome;
        const std::string changeset = session.changeset();
        if (changeset.empty())
            return Done{};
        appendChange(db, now(), kind, detail.written(), changeset);
        renewSeal(db);
        return Done{};
    });
}

Outcome StudyFile::Private::inTransaction(const std::function<Outcome(SQLite::Database&)>& work)
{
    if (readOnly)
        return error(ErrorCode::studyFile, "is open for reading only; nothing was changed"_t);
    return guarded<core::Done>([&]() -> Outcome {
        SQLite::Transaction transaction(*database, SQLite::TransactionBehavior::IMMEDIATE);
        Outcome outcome = work(*database);
        if (outcome)
            transaction.commit();
        return outcome;
    });
}

Result<DatabasePtr> openDatabase(const fs::path& file, bool readOnly)
{
    if (auto error = refuseFile(file, readOnly))
        return *error;
    try {
        try {
            return openChecked(file, readOnly);
        } catch (const SQLite::Exception& problem) {
            const int code = problem.getErrorCode() & 0xFF;
            if (!readOnly || (code != SQLITE_READONLY && code != SQLITE_CANTOPEN))
                throw;
            recover(file);
            return openChecked(file, readOnly);
        }
    } catch (const SQLite::Exception& problem) {
        return explain(problem, file);
    } catch (const DamagedRow& row) {
        return bad(file, core::message("is damaged: {} cannot be read; restore it from a copy"_t,
                                       row.what));
    }
}

Result<DatabasePtr> createDatabase(const fs::path& file, const core::StudyProperties& properties,
                                   const std::string& now)
{
    std::error_code problem;
    if (fs::exists(fs::symlink_status(file, problem)))
        return bad(file, "exists already; expected a name that is free"_t);
    if (!fs::is_directory(fs::absolute(file).parent_path(), problem))
        return bad(file, "has no folder to lie in; expected one that exists"_t);
    try {
        DatabasePtr database = connect(file, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        configure(*database, false);
        SQLite::Transaction transaction(*database, SQLite::TransactionBehavior::IMMEDIATE);
        createSchema(*database);
        rewriteProperties(*database, properties);
        appendNote(*database, now, "new", HistoryDetail{"made", {BOTHWAYS_VERSION}}.written());
        renewSeal(*database);
        transaction.commit();
        return database;
    } catch (const SQLite::Exception& e) {
        fs::remove(file, problem); // ours: it was not there
        return explain(e, file);
    }
}

std::string nowInUtc()
{
    using namespace std::chrono;
    const auto now = floor<seconds>(system_clock::now());
    const auto day = floor<days>(now);
    const year_month_day date(day);
    const hh_mm_ss time(now - day);
    return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}Z", static_cast<int>(date.year()),
                       static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                       time.hours().count(), time.minutes().count(), time.seconds().count());
}

} // namespace bothways::storage
