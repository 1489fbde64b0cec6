// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

struct sqlite3;
struct sqlite3_session;

/// SQLite's session extension: what a transaction changed, row by row, as a blob that can be turned
/// round and applied.
namespace bothways::storage {

/// A row that is not as it was, or is gone.
struct ChangedRow {
    std::string table;
    std::int64_t key = 0; ///< its first column; 0 where that is a text
};

/// Records the changes of one connection to some tables while it lives. SQLite's problems are
/// thrown as SQLite::Exception, here and below.
class Session {
public:
    Session(sqlite3* database, std::span<const std::string_view> tables);
    ~Session();
    Session(const Session&) = delete;
    Session& operator=(const Session&) = delete;
    /// Empty when nothing is different from before.
    [[nodiscard]] std::string changeset();
    [[nodiscard]] std::vector<ChangedRow> changedRows();

private:
    sqlite3_session* m_session = nullptr;
};

/// The changeset that takes `changeset` back.
[[nodiscard]] std::string inverted(std::string_view changeset);

/// Applies it whole; throws where the rows are not as the changeset expects them. Of a changeset
/// that came with a file: see changeset_check.h first.
void applyChangeset(sqlite3* database, std::string_view changeset);

} // namespace bothways::storage
