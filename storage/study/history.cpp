// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/history.h"

#include "storage/study/changeset_check.h"
#include "storage/study/connection.h"
#include "storage/study/content.h"
#include "storage/study/seal.h"
#include "storage/study/session.h"
#include "storage/study/study_rows.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>
#include <sqlite3.h>

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

bool isShortText(const Query& row, int column)
{
    constexpr std::size_t kLongest = 100;
    return row.isText(column) && !row.bytes(column).empty() && row.bytes(column).size() <= kLongest;
}

[[noreturn]] void refuseLine(std::int64_t id)
{
    throw DamagedRow{core::message("line {} of the history"_t, id)};
}

/// A row of id, at, kind, detail, state.
HistoryEntry entryOf(const Query& row)
{
    const std::string_view state = row.bytes(4);
    if (!isShortText(row, 1) || !isShortText(row, 2) || !row.isText(3))
        refuseLine(row.integer(0));
    return {row.integer(0), row.text(1), row.text(2), row.text(3),
            state == "undone" || state == "gone"};
}

std::optional<HistoryEntry> first(SQLite::Database& database, const char* sql)
{
    Query row(database, sql);
    if (!row.step())
        return std::nullopt;
    return entryOf(row);
}

/// Of a line that says what its checksum says, a changeset that Bothways could have kept.
std::string changesetOf(SQLite::Database& database, const HistoryEntry& entry)
{
    Query row(database, "SELECT at, kind, detail, changeset, checksum FROM history WHERE id = ?");
    row.bind(1, entry.id);
    if (!row.step() ||
        checksumOfEntry(row.bytes(0), row.bytes(1), row.bytes(2), row.bytes(3)) != row.bytes(4) ||
        !isPossibleChangeset(database, row.bytes(3)))
        refuseLine(entry.id);
    return row.text(3);
}

/// With as much work as an honest changeset of the length can be, and with rows that have a meaning
/// afterwards.
void apply(SQLite::Database& database, const HistoryEntry& entry, const std::string& changeset)
{
    constexpr std::int64_t kFewest = 1'000'000, kForByte = 200;
    const Budget budget(database, kFewest + kForByte * static_cast<std::int64_t>(changeset.size()));
    try {
        applyChangeset(database.getHandle(), changeset);
        checkOtherRows(database);
    } catch (const SQLite::Exception& problem) {
        const int code = problem.getErrorCode() & 0xFF;
        if (code == SQLITE_INTERRUPT || code == SQLITE_ABORT || code == SQLITE_CORRUPT)
            refuseLine(entry.id);
        throw;
    }
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
    apply(database, entry, inverted(changesetOf(database, entry)));
    setState(database, entry, "undone");
    appendNote(database, at, "undo", fmt::format("{} {}", entry.kind, entry.detail));
}

void doAgain(SQLite::Database& database, const HistoryEntry& entry, const std::string& at)
{
    apply(database, entry, changesetOf(database, entry));
    setState(database, entry, "stands");
    appendNote(database, at, "redo", fmt::format("{} {}", entry.kind, entry.detail));
}

std::vector<HistoryEntry> readHistory(SQLite::Database& database)
{
    std::vector<HistoryEntry> entries;
    Query rows(database, "SELECT id, at, kind, detail, state FROM history ORDER BY id");
    while (rows.step())
        entries.push_back(entryOf(rows));
    return entries;
}

} // namespace bothways::storage
