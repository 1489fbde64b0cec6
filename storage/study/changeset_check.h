// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace SQLite {
class Database;
}

namespace bothways::storage {

/// True for a changeset that Bothways could have kept: whole, about undoable tables as they are,
/// with every value that a change of its kind needs. SQLite's own reader of changesets is not made
/// for what comes from a stranger; this one reads every byte once and believes no length.
///
/// The form is that of https://www.sqlite.org/sessionintro.html, "changeset format" in
/// sqlite3session.c.
[[nodiscard]] bool isPossibleChangeset(SQLite::Database& database, std::string_view changeset);

} // namespace bothways::storage
