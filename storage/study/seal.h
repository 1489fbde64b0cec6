// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/study/session.h"

#include <cstdint>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace SQLite {
class Database;
}

/// A checksum over what a study says, stored with every commit and compared when the file is
/// opened. SQLite notices a broken page; the seal notices a flipped bit in a number, and a row that
/// anything but Bothways wrote.
namespace bothways::storage {

/// SHA-256 of pages of rows, of tables over their pages, and of all over the tables: a tree. A
/// change touches its own pages alone, however long the study is. Two contents with one top would
/// be two with one SHA-256; rows cannot be exchanged, for a page holds them in order of their keys,
/// keys and all, and a table holds the number of each page.
///
/// The file keeps the top alone. The rest is made when everything is read anyway, at opening, and
/// is remembered as long as nobody else writes.
class Seal {
public:
    /// Reads everything.
    explicit Seal(SQLite::Database& database);
    /// Reads the pages of these rows again.
    void renew(SQLite::Database& database, const std::vector<ChangedRow>& rows);
    /// 64 hexadecimal digits.
    [[nodiscard]] const std::string& top() const { return m_top; }

private:
    struct Table {
        std::map<std::int64_t, std::string> pages; ///< those that have a row
        std::string sha256;
    };
    void makeTop();
    std::vector<Table> m_tables; ///< in the order of the list in seal.cpp
    std::string m_top;
};

/// The tables under the seal whose rows have keys: what a session is to watch.
[[nodiscard]] std::span<const std::string_view> sealedTables();

/// What the file says; empty where it says nothing.
[[nodiscard]] std::string storedSeal(SQLite::Database& database);
void storeSeal(SQLite::Database& database, const std::string& top);

/// The checksum of one line of the history.
[[nodiscard]] std::string checksumOfEntry(std::string_view at, std::string_view kind,
                                          std::string_view detail, std::string_view changeset);
/// True when each line of the history has a state and the checksum of what it says. Ids, states and
/// checksums are under the seal.
[[nodiscard]] bool historyFits(SQLite::Database& database);

} // namespace bothways::storage
