// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

struct sqlite3;
struct sqlite3_stmt;

namespace SQLite {
class Database;
}

namespace bothways::storage {

/// A statement whose rows are read by the ten thousand: columns are looked at in place. SQLite's
/// problems are thrown as SQLite::Exception. Columns count from 0, parameters from 1.
class Query {
public:
    Query(SQLite::Database& database, std::string_view sql);
    ~Query();
    Query(const Query&) = delete;
    Query& operator=(const Query&) = delete;

    Query& bind(int parameter, std::int64_t value);
    Query& bind(int parameter, std::string_view text);
    Query& bindReal(int parameter, double value);
    /// True when there is a row.
    bool step();
    /// Ready to be run again, parameters as they are.
    void reset();

    [[nodiscard]] int columns() const;
    [[nodiscard]] bool isNull(int column) const;
    [[nodiscard]] bool isInteger(int column) const;
    [[nodiscard]] bool isReal(int column) const;
    [[nodiscard]] bool isText(int column) const;
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] double real(int column) const;
    /// Text or blob; good until the next step().
    [[nodiscard]] std::string_view bytes(int column) const;
    [[nodiscard]] std::string text(int column) const { return std::string(bytes(column)); }

private:
    void check(int code) const;
    sqlite3* m_database;
    sqlite3_stmt* m_statement = nullptr;
};

/// The first column of the first row; 0 where there is none.
[[nodiscard]] std::int64_t oneNumber(SQLite::Database& database, std::string_view sql);

} // namespace bothways::storage
