// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <string>
#include <string_view>

struct sqlite3;
struct sqlite3_session;

/// SQLite's session extension: what a transaction changed, row by row, as a blob that can be turned
/// round and applied.
namespace bothways::storage {

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

private:
    sqlite3_session* m_session = nullptr;
};

/// The changeset that takes `changeset` back.
[[nodiscard]] std::string inverted(std::string_view changeset);

/// Applies it whole; throws where the rows are not as the changeset expects them.
void applyChangeset(sqlite3* database, std::string_view changeset);

} // namespace bothways::storage
