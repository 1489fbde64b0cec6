// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/history.h"
#include "storage/study/study_database.h"

#include <SQLiteCpp/Transaction.h>

namespace bothways::storage {

using core::Done;
using core::ErrorCode;

Result<HistoryEntry> StudyFile::undo()
{
    HistoryEntry taken;
    const Outcome outcome = d->inTransaction([&](SQLite::Database& db) -> Outcome {
        const auto entry = storage::nextUndo(db);
        if (!entry)
            return d->error(ErrorCode::wrongUse, "there is nothing to undo"_t);
        takeBack(db, *entry, d->now());
        taken = *entry;
        taken.undone = true;
        return Done{};
    });
    if (!outcome)
        return outcome.error();
    return taken;
}

Result<HistoryEntry> StudyFile::redo()
{
    HistoryEntry done;
    const Outcome outcome = d->inTransaction([&](SQLite::Database& db) -> Outcome {
        const auto entry = storage::nextRedo(db);
        if (!entry)
            return d->error(ErrorCode::wrongUse, "there is nothing to redo"_t);
        doAgain(db, *entry, d->now());
        done = *entry;
        done.undone = false;
        return Done{};
    });
    if (!outcome)
        return outcome.error();
    return done;
}

bool StudyFile::canUndo() const
{
    return nextUndo().has_value();
}

bool StudyFile::canRedo() const
{
    return nextRedo().has_value();
}

std::optional<HistoryEntry> StudyFile::nextUndo() const
{
    using Entry = std::optional<HistoryEntry>;
    const auto entry = d->guarded<Entry>([&]() -> Result<Entry> {
        return d->readOnly ? std::nullopt : storage::nextUndo(*d->database);
    });
    return entry ? entry.value() : std::nullopt;
}

std::optional<HistoryEntry> StudyFile::nextRedo() const
{
    using Entry = std::optional<HistoryEntry>;
    const auto entry = d->guarded<Entry>([&]() -> Result<Entry> {
        return d->readOnly ? std::nullopt : storage::nextRedo(*d->database);
    });
    return entry ? entry.value() : std::nullopt;
}

Result<std::vector<HistoryEntry>> StudyFile::history() const
{
    using List = std::vector<HistoryEntry>;
    return d->guarded<List>([&]() -> Result<List> {
        const SQLite::Transaction oneState(*d->database);
        static_cast<void>(d->current(*d->database));
        return readHistory(*d->database);
    });
}

Outcome StudyFile::note(std::string_view kind, std::string_view detail)
{
    return d->inTransaction([&](SQLite::Database& db) -> Outcome {
        appendNote(db, d->now(), kind, detail);
        return Done{};
    });
}

} // namespace bothways::storage
