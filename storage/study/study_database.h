// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"
#include "storage/study/content.h"
#include "storage/study/history_detail.h"
#include "storage/study/hold.h"
#include "storage/study/study_file.h"
#include "storage/study/waiting.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <string_view>

/// The connection behind a StudyFile, for the files of storage/ alone.
namespace bothways::storage {

/// An Error from what SQLite threw: one sentence that says what can be done.
[[nodiscard]] core::Error explain(const SQLite::Exception& problem,
                                  const std::filesystem::path& file);

/// Thrown where a recording cannot be read: the whole sentence.
struct DamagedRecording {
    core::Message message;
};

struct StudyFile::Private {
    std::filesystem::path file;
    bool readOnly = false;
    std::shared_ptr<Hold> hold;
    std::function<std::string()> now; ///< ISO 8601, UTC
    std::unique_ptr<Waiting> waiting; ///< outlives the database, which asks it
    std::unique_ptr<SQLite::Database> database;
    int version = 0;

    // What was read and checked, as long as nobody else writes. A change keeps it up to date.
    std::optional<Seal> seal;
    std::optional<core::Study> known;

    ~Private();

    /// Keeps what was read of the database's present state.
    void remember(Content content);
    /// What the study says now. Where another program wrote since: reads and checks it again, and
    /// throws RefusedContent when it is not ours any more. Within a transaction.
    [[nodiscard]] const core::Study& current(SQLite::Database& db);
    /// The same for a change that works in it: what is in it is read from the rows afterwards.
    [[nodiscard]] core::Study& editable(SQLite::Database& db);

    /// One action of a person: runs `apply` in a transaction with a line of history and the
    /// information for undo, or does nothing of it. `apply` changes rows of undoableTables(); what
    /// it refuses (its Error) or throws leaves the file as it was. An action that changes nothing
    /// leaves no line. `detail` may be filled in by `apply`.
    [[nodiscard]] Outcome change(std::string_view kind, const HistoryDetail& detail,
                                 const std::function<Outcome(SQLite::Database&)>& apply);
    /// The same, where `apply` makes changes by change(): they are parts of this one action, and
    /// its line of history is the only one.
    [[nodiscard]] Outcome changeAsOne(std::string_view kind, const HistoryDetail& detail,
                                      const std::function<Outcome(SQLite::Database&)>& apply);
    /// `work` in a transaction, without a line of history of its own: for undo, notes, mappings.
    /// Whatever it changed is read back under the rules for every row, and comes under the seal,
    /// before it is committed.
    /// Changes that `work` makes by change() or inTransaction() are parts of it: all are done, or
    /// none.
    [[nodiscard]] Outcome inTransaction(const std::function<Outcome(SQLite::Database&)>& work);

    [[nodiscard]] core::Error error(core::ErrorCode code, core::Message message) const
    {
        return {code, std::move(message), file.string()};
    }

    /// Gives what `work` gives; what it throws becomes an Error.
    template <class T>
    Result<T> guarded(const std::function<Result<T>()>& work) const;

private:
    /// As SQLite counts them: changes of the tables, and commits of others.
    struct Stamp {
        std::int64_t schema = 0;
        std::int64_t data = 0;
        friend bool operator==(const Stamp&, const Stamp&) = default;
    };
    [[nodiscard]] static Stamp stampOf(SQLite::Database& db);
    void forget();
    /// True when the file has this seal now: a commit that failed at its very end was done.
    [[nodiscard]] bool isStored(const std::string& top) const;
    /// Within the transaction: `work`, and what it changed is read back and sealed.
    [[nodiscard]] Outcome doAndSeal(const std::function<Outcome(SQLite::Database&)>& work);
    /// Before the commit.
    void settle(SQLite::Database& db, const std::vector<ChangedRow>& rows);
    void readBack(SQLite::Database& db, const std::vector<ChangedRow>& rows);
    [[nodiscard]] core::Error problem() const; ///< of the exception being handled

    Stamp m_stamp;
    bool m_knownIsAhead = false; ///< of the rows, until they are read back
    bool m_inTransaction = false;
    bool m_hasParts = false; ///< changes within the present transaction
    bool m_asOne = false;    ///< within changeAsOne()
};

template <class T>
Result<T> StudyFile::Private::guarded(const std::function<Result<T>()>& work) const
{
    try {
        return work();
    } catch (...) {
        return problem();
    }
}

/// The run with wanted.id becomes `wanted`, in the file and in `study`, under the rules for an
/// edit; what differs is added to `edits`. Within a transaction of the caller's.
[[nodiscard]] Outcome changeRun(const StudyFile::Private& d, SQLite::Database& db,
                                core::Study& study, const core::Run& wanted,
                                HistoryValue::List& edits);

/// Now, as ISO 8601 in UTC.
[[nodiscard]] std::string nowInUtc();
/// The same of a moment, in seconds from 1970 on.
[[nodiscard]] std::string asUtc(long long seconds);

} // namespace bothways::storage
