// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/query.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <sqlite3.h>

namespace bothways::storage {

Query::Query(SQLite::Database& database, std::string_view sql) : m_database(database.getHandle())
{
    check(sqlite3_prepare_v2(m_database, sql.data(), static_cast<int>(sql.size()), &m_statement,
                             nullptr));
}

Query::~Query()
{
    sqlite3_finalize(m_statement);
}

void Query::check(int code) const
{
    if (code != SQLITE_OK)
        throw SQLite::Exception(m_database, code);
}

Query& Query::bind(int parameter, std::int64_t value)
{
    check(sqlite3_bind_int64(m_statement, parameter, value));
    return *this;
}

Query& Query::bind(int parameter, std::string_view text)
{
    check(sqlite3_bind_text(m_statement, parameter, text.data(), static_cast<int>(text.size()),
                            SQLITE_TRANSIENT));
    return *this;
}

Query& Query::bindReal(int parameter, double value)
{
    check(sqlite3_bind_double(m_statement, parameter, value));
    return *this;
}

bool Query::step()
{
    const int code = sqlite3_step(m_statement);
    if (code != SQLITE_ROW && code != SQLITE_DONE)
        throw SQLite::Exception(m_database, code);
    return code == SQLITE_ROW;
}

void Query::reset()
{
    sqlite3_reset(m_statement);
}

int Query::columns() const
{
    return sqlite3_column_count(m_statement);
}

bool Query::isNull(int column) const
{
    return sqlite3_column_type(m_statement, column) == SQLITE_NULL;
}

bool Query::isInteger(int column) const
{
    return sqlite3_column_type(m_statement, column) == SQLITE_INTEGER;
}

bool Query::isReal(int column) const
{
    return sqlite3_column_type(m_statement, column) == SQLITE_FLOAT;
}

bool Query::isText(int column) const
{
    return sqlite3_column_type(m_statement, column) == SQLITE_TEXT;
}

std::int64_t Query::integer(int column) const
{
    return sqlite3_column_int64(m_statement, column);
}

double Query::real(int column) const
{
    return sqlite3_column_double(m_statement, column);
}

std::string_view Query::bytes(int column) const
{
    const auto* bytes = static_cast<const char*>(sqlite3_column_blob(m_statement, column));
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_statement, column));
    // A value that does not fit into memory is no empty one.
    if (!bytes && sqlite3_errcode(m_database) == SQLITE_NOMEM)
        throw SQLite::Exception(m_database, SQLITE_NOMEM);
    return {bytes, bytes ? size : 0};
}

std::int64_t oneNumber(SQLite::Database& database, std::string_view sql)
{
    Query row(database, sql);
    return row.step() ? row.integer(0) : 0;
}

} // namespace bothways::storage
