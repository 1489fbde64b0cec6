// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/study_database.h"

#include "core/base/unstoppable.h"
#include "core/recording/unreadable_recording.h"
#include "storage/study/connection.h"
#include "storage/study/history.h"
#include "storage/study/schema.h"
#include "storage/study/session.h"
#include "storage/study/study_rows.h"

#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>
#include <sqlite3.h>

#include <chrono>
#include <ctime>
#include <new>
#include <set>

namespace bothways::storage {
namespace {

namespace fs = std::filesystem;
using core::Done;
using core::Error;
using core::ErrorCode;

/// True as long as it lives.
class Flag {
public:
    explicit Flag(bool& flag) : m_flag(flag) { m_flag = true; }
    ~Flag() { m_flag = false; }
    Flag(const Flag&) = delete;
    Flag& operator=(const Flag&) = delete;

private:
    bool& m_flag;
};

Error bad(const fs::path& file, core::Message message)
{
    return {ErrorCode::studyFile, std::move(message), file.string()};
}

/// Tables whose rows make a run, by its id.
bool isOfRun(const ChangedRow& row)
{
    return row.table == "run" || row.table == "mark" || row.table == "accessory_on" ||
           row.table == "extra";
}

} // namespace

Error explain(const SQLite::Exception& problem, const fs::path& file)
{
    switch (problem.getErrorCode() & 0xFF) {
    case SQLITE_FULL: return bad(file, "the disk is full; nothing was changed"_t);
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return bad(file, "is being written by another program; nothing was changed"_t);
    case SQLITE_TOOBIG:
        return bad(file, "the change is too large for a study; nothing was changed"_t);
    case SQLITE_NOMEM: return bad(file, "the memory is full; nothing was changed"_t);
    case SQLITE_READONLY:
        if (problem.getExtendedErrorCode() == SQLITE_READONLY_DBMOVED)
            return bad(file, "is no longer where it was opened (moved or removed meanwhile); "
                             "nothing was changed"_t);
        return bad(file, "is read-only; nothing was changed"_t);
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

Error StudyFile::Private::problem() const
{
    try {
        throw;
    } catch (const SQLite::Exception& problem) {
        const int code = problem.getErrorCode() & 0xFF;
        if (waiting && (code == SQLITE_BUSY || code == SQLITE_LOCKED))
            return bad(file, waiting->refusal());
        return explain(problem, file);
    } catch (const DamagedRow& row) {
        return bad(file, core::message("is damaged: {} cannot be read; restore it from a copy"_t,
                                       row.what));
    } catch (const RefusedContent& refused) {
        return bad(file, refused.message);
    } catch (const DamagedRecording& damaged) {
        return bad(file, damaged.message);
    } catch (const core::UnreadableRecording& recording) {
        return recording.error();
    } catch (const std::bad_alloc&) {
        return bad(file, "the memory is full; nothing was changed"_t);
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

StudyFile::Private::Stamp StudyFile::Private::stampOf(SQLite::Database& db)
{
    // In this order: the first takes the lock under which the second is the present one.
    const std::int64_t schema = oneNumber(db, "PRAGMA schema_version");
    return {schema, oneNumber(db, "PRAGMA data_version")};
}

void StudyFile::Private::remember(Content content)
{
    seal = std::move(content.seal);
    known = std::move(content.study);
    m_knownIsAhead = false;
    m_stamp = stampOf(*database);
}

void StudyFile::Private::forget()
{
    seal.reset();
    known.reset();
    m_knownIsAhead = false;
    m_stamp = {};
}

const core::Study& StudyFile::Private::current(SQLite::Database& db)
{
    const Stamp stamp = stampOf(db);
    if (known && !m_knownIsAhead && stamp == m_stamp)
        return *known;
    const Stamp before = m_stamp;
    forget();
    if (stamp.schema != before.schema) {
        lowerLimits(db);
        version = checkedVersion(db);
        liftLimits(db);
    }
    remember(checkedRows(db, version));
    return *known;
}

core::Study& StudyFile::Private::editable(SQLite::Database& db)
{
    static_cast<void>(current(db));
    m_knownIsAhead = true;
    return *known;
}

Outcome StudyFile::Private::change(std::string_view kind, const HistoryDetail& detail,
                                   const std::function<Outcome(SQLite::Database&)>& apply)
{
    if (m_asOne)
        return inTransaction(apply);
    return inTransaction([&](SQLite::Database& db) -> Outcome {
        Session session(db.getHandle(), undoableTables());
        Outcome outcome = apply(db);
        if (!outcome)
            return outcome;
        const std::string changeset = session.changeset();
        if (!changeset.empty())
            appendChange(db, now(), kind, detail.written(), changeset);
        return Done{};
    });
}

Outcome StudyFile::Private::changeAsOne(std::string_view kind, const HistoryDetail& detail,
                                        const std::function<Outcome(SQLite::Database&)>& apply)
{
    return change(kind, detail, [&](SQLite::Database& db) -> Outcome {
        const Flag within(m_asOne);
        return apply(db);
    });
}

Outcome StudyFile::Private::inTransaction(const std::function<Outcome(SQLite::Database&)>& work)
{
    if (readOnly)
        return error(ErrorCode::studyFile, "is open for reading only; nothing was changed"_t);
    m_hasParts = m_hasParts || m_inTransaction;
    if (m_inTransaction) // a part of it; whoever began it commits
        return guarded<core::Done>([&]() -> Outcome { return doAndSeal(work); });
    return guarded<core::Done>([&]() -> Outcome {
        std::string promised; // the seal that comes with the commit
        try {
            SQLite::Transaction transaction(*database, SQLite::TransactionBehavior::IMMEDIATE);
            const Flag within(m_inTransaction);
            m_hasParts = false;
            static_cast<void>(current(*database));
            const std::string before = seal->top();
            Outcome outcome = doAndSeal(work);
            if (outcome) {
                if (seal->top() != before)
                    promised = seal->top();
                const core::Unstoppable committing;
                transaction.commit();
            } else if (m_hasParts) {
                forget(); // parts that were done are rolled back, too
            }
            return outcome;
        } catch (const SQLite::Exception& problem) {
            forget(); // rolled back, and what we know may be ahead of it
            if (promised.empty() || !isStored(promised))
                throw;
            return error(ErrorCode::studyFile,
                         core::message("the change is in the study, but the disk did not confirm "
                                       "it ({}); look whether it stays"_t,
                                       problem.what()));
        } catch (...) {
            forget();
            throw;
        }
    });
}

bool StudyFile::Private::isStored(const std::string& top) const
{
    try {
        return storedSeal(*database) == top;
    } catch (const SQLite::Exception&) {
        return false;
    }
}

Outcome StudyFile::Private::doAndSeal(const std::function<Outcome(SQLite::Database&)>& work)
{
    static_cast<void>(current(*database));
    Session session(database->getHandle(), sealedTables());
    Outcome outcome = work(*database);
    if (outcome)
        settle(*database, session.changedRows());
    return outcome;
}

void StudyFile::Private::settle(SQLite::Database& db, const std::vector<ChangedRow>& rows)
{
    if (rows.empty())
        return; // nothing that is under the seal
    readBack(db, rows);
    const std::string before = seal->top();
    seal->renew(db, rows);
    if (seal->top() != before)
        storeSeal(db, seal->top());
}

void StudyFile::Private::readBack(SQLite::Database& db, const std::vector<ChangedRow>& rows)
{
    // With more, all at once is as fast.
    constexpr std::size_t kMostSingleRuns = 50;
    std::set<std::int64_t> runs;
    bool properties = false;
    for (const ChangedRow& row : rows) {
        properties = properties || row.table == "property";
        if (isOfRun(row))
            runs.insert(row.key);
    }
    if (runs.size() > kMostSingleRuns) {
        known = readStudy(db);
    } else {
        for (const std::int64_t run : runs)
            readRunAgain(db, core::RunId{run}, *known);
        if (properties)
            known->properties = readProperties(db);
        if (runs.size() == 1)
            checkAmong(*known, core::RunId{*runs.begin()});
        else if (!runs.empty())
            checkTogether(*known);
    }
    m_knownIsAhead = false;
}

std::string nowInUtc()
{
    return asUtc(static_cast<long long>(std::time(nullptr)));
}

std::string asUtc(long long sinceEpoch_s)
{
    using namespace std::chrono;
    const sys_seconds moment{seconds(sinceEpoch_s)};
    const auto day = floor<days>(moment);
    const year_month_day date(day);
    const hh_mm_ss time(moment - day);
    return fmt::format("{:04}-{:02}-{:02}T{:02}:{:02}:{:02}Z", static_cast<int>(date.year()),
                       static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                       time.hours().count(), time.minutes().count(), time.seconds().count());
}

} // namespace bothways::storage
