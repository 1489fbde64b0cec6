// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/study/study_file.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace SQLite {
class Database;
}

/// The table `history`: what changed when, and how to take it back. Within a transaction of the
/// caller's; SQLite's problems are thrown.
///
/// A change stands, or is undone and can be redone, or is undone and gone (something else was
/// changed after). Undo and redo are lines themselves; lines are never removed.
namespace bothways::storage {

/// A change that stands. What was undone before it can no longer be redone.
void appendChange(SQLite::Database& database, const std::string& at, std::string_view kind,
                  std::string_view detail, const std::string& changeset);
/// A line that changes nothing in the study.
void appendNote(SQLite::Database& database, const std::string& at, std::string_view kind,
                std::string_view detail);

/// The change that undo would take back, or redo would do again.
[[nodiscard]] std::optional<HistoryEntry> nextUndo(SQLite::Database& database);
[[nodiscard]] std::optional<HistoryEntry> nextRedo(SQLite::Database& database);

/// Takes the change back (or does it again) and notes that.
void takeBack(SQLite::Database& database, const HistoryEntry& entry, const std::string& at);
void doAgain(SQLite::Database& database, const HistoryEntry& entry, const std::string& at);

/// From the oldest to the newest.
[[nodiscard]] std::vector<HistoryEntry> readHistory(SQLite::Database& database);

} // namespace bothways::storage
