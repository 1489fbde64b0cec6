// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/history.h"

#include "storage/study/seal.h"
#include "storage/study/session.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>

namespace bothways::storage {
namespace {

void append(SQLite::Database& database, const std::string& at, std::string_view kind,
            std::string_view detail, const std::string* changeset)
{
    SQLite::Statement line(database,
                           "INSERT INTO history (at, kind, detail, state, changeset, checksum) "
                           "VALUES (?, ?, ?, ?, ?, ?)");
    line.bind(1, at);
    line.bind(2, std::string(kind));
    line.bind(3, std::string(detail));
    line.bind(4, changeset ? "stands" : "note");
    if (changeset)
        line.bind(5, changeset->data(), static_cast<int>(changeset->size()));
    line.bind(6, checksumOfEntry(at, kind, detail, changeset ? *changeset : std::string()));
    line.exec();
}

/// A row of id, at, kind, detail, state.
HistoryEntry entryOf(const SQLite::Statement& row)
{
    const std::string state = row.getColumn(4).getString();
    return {row.getColumn(0).getInt64(), row.getColumn(1).getString(), row.getColumn(2).getString(),
            row.getColumn(3).getString(), state == "undone" || state == "gone"};
}

std::optional<HistoryEntry> first(SQLite::Database& database, const char* sql)
{
    SQLite::Statement row(database, sql);
    if (!row.executeStep())
        return std::nullopt;
    return entryOf(row);
}

std::string changesetOf(SQLite::Database& database, const HistoryEntry& entry)
{
    SQLite::Statement row(database, "SELECT changeset FROM history WHERE id = ?");
    row.bind(1, entry.id);
    row.executeStep();
    return row.getColumn(0).getString();
}

void setState(SQLite::Database& database, const HistoryEntry& entry, const char* state)
{
    SQLite::Statement row(database, "UPDATE history SET state = ? WHERE id = ?");
    row.bind(1, state);
    row.bind(2, entry.id);
    row.exec();
}

} // namespace

void appendChange(SQLite::Database& database, const std::string& at, std::string_view kind,
                  std::string_view detail, const std::string& changeset)
{
    database.exec("UPDATE history SET state = 'gone' WHERE state = 'undone'");
    append(database, at, kind, detail, &changeset);
}

void appendNote(SQLite::Database& database, const std::string& at, std::string_view kind,
                std::string_view detail)
{
    append(database, at, kind, detail, nullptr);
}

std::optional<HistoryEntry> nextUndo(SQLite::Database& database)
{
    return first(database, "SELECT id, at, kind, detail, state FROM history "
                           "WHERE state = 'stands' ORDER BY id DESC LIMIT 1");
}

std::optional<HistoryEntry> nextRedo(SQLite::Database& database)
{
    return first(database, "SELECT id, at, kind, detail, state FROM history "
                           "WHERE state = 'undone' ORDER BY id LIMIT 1");
}

void takeBack(SQLite::Database& database, const HistoryEntry& entry, const std::string& at)
{
    applyChangeset(database.getHandle(), inverted(changesetOf(database, entry)));
    setState(database, entry, "undone");
    appendNote(database, at, "undo", fmt::format("{} {}", entry.kind, entry.detail));
}

void doAgain(SQLite::Database& database, const HistoryEntry& entry, const std::string& at)
{
    applyChangeset(database.getHandle(), changesetOf(database, entry));
    setState(database, entry, "stands");
    appendNote(database, at, "redo", fmt::format("{} {}", entry.kind, entry.detail));
}

std::vector<HistoryEntry> readHistory(SQLite::Database& database)
{
    std::vector<HistoryEntry> entries;
    SQLite::Statement rows(database, "SELECT id, at, kind, detail, state FROM history ORDER BY id");
    while (rows.executeStep())
        entries.push_back(entryOf(rows));
    return entries;
}

} // namespace bothways::storage
