// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/history.h"
#include "storage/study/study_database.h"

#include <SQLiteCpp/Transaction.h>

namespace bothways::storage {

using core::Done;
using core::ErrorCode;

namespace {

/// A change of the history taken back, or done again.
struct Step {
    std::optional<HistoryEntry> (*next)(SQLite::Database&);
    void (*take)(SQLite::Database&, const HistoryEntry&, const std::string& at);
    core::Text<0> none; ///< said where there is no such change
    bool undone;        ///< what the change is then
};

Result<HistoryEntry> taken(StudyFile::Private& d, const Step& step)
{
    HistoryEntry change;
    const Outcome outcome = d.inTransaction([&](SQLite::Database& db) -> Outcome {
        const auto entry = step.next(db);
        if (!entry)
            return d.error(ErrorCode::wrongUse, step.none);
        step.take(db, *entry, d.now());
        change = *entry;
        change.undone = step.undone;
        return Done{};
    });
    if (!outcome)
        return outcome.error();
    return change;
}

} // namespace

Result<HistoryEntry> StudyFile::undo()
{
    return taken(*d, {storage::nextUndo, takeBack, "there is nothing to undo"_t, true});
}

Result<HistoryEntry> StudyFile::redo()
{
    return taken(*d, {storage::nextRedo, doAgain, "there is nothing to redo"_t, false});
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
