// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"
#include "storage/study/history_detail.h"
#include "storage/study/hold.h"
#include "storage/study/study_file.h"

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
    std::unique_ptr<SQLite::Database> database;

    ~Private();

    /// One action of a person: runs `apply` in a transaction with a line of history and the
    /// information for undo, or does nothing of it. `apply` changes rows of undoableTables(); what
    /// it refuses (its Error) or throws leaves the file as it was. An action that changes nothing
    /// leaves no line. `detail` may be filled in by `apply`.
    [[nodiscard]] Outcome change(std::string_view kind, const HistoryDetail& detail,
                                 const std::function<Outcome(SQLite::Database&)>& apply);
    /// `work` in a transaction without history: for chunks of traces, mappings, notes.
    [[nodiscard]] Outcome inTransaction(const std::function<Outcome(SQLite::Database&)>& work);

    [[nodiscard]] core::Error error(core::ErrorCode code, core::Message message) const
    {
        return {code, std::move(message), file.string()};
    }

    /// Gives what `work` gives; what it throws becomes an Error.
    template <class T>
    Result<T> guarded(const std::function<Result<T>()>& work) const;

private:
    [[nodiscard]] core::Error current() const; ///< of the exception being handled
};

template <class T>
Result<T> StudyFile::Private::guarded(const std::function<Result<T>()>& work) const
{
    try {
        return work();
    } catch (...) {
        return current();
    }
}

/// The run with wanted.id becomes `wanted`, in the file and in `study`, under the rules for an
/// edit; what differs is added to `edits`. Within a transaction of the caller's.
[[nodiscard]] Outcome changeRun(const StudyFile::Private& d, SQLite::Database& db,
                                core::Study& study, const core::Run& wanted,
                                HistoryValue::List& edits);

/// Opens, checks and prepares the database of an existing study.
[[nodiscard]] Result<std::unique_ptr<SQLite::Database>>
openDatabase(const std::filesystem::path& file, bool readOnly);

/// Makes a new database with the tables and properties; an Error when the file exists.
[[nodiscard]] Result<std::unique_ptr<SQLite::Database>>
createDatabase(const std::filesystem::path& file, const core::StudyProperties& properties,
               const std::string& now);

/// Now, as ISO 8601 in UTC.
[[nodiscard]] std::string nowInUtc();

} // namespace bothways::storage
