// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/session.h"

#include <SQLiteCpp/Exception.h>
#include <sqlite3.h>

namespace bothways::storage {
namespace {

void check(int code, sqlite3* database)
{
    if (code == SQLITE_OK)
        return;
    if (database && sqlite3_errcode(database) == code)
        throw SQLite::Exception(database, code);
    throw SQLite::Exception(sqlite3_errstr(code), code);
}

/// Takes over what SQLite allocated.
std::string taken(void* bytes, int size)
{
    std::string text(static_cast<const char*>(bytes), static_cast<std::size_t>(size));
    sqlite3_free(bytes);
    return text;
}

int refuseConflict(void*, int, sqlite3_changeset_iter*)
{
    return SQLITE_CHANGESET_ABORT;
}

} // namespace

Session::Session(sqlite3* database, std::span<const std::string_view> tables)
{
    check(sqlite3session_create(database, "main", &m_session), database);
    for (const std::string_view table : tables)
        check(sqlite3session_attach(m_session, std::string(table).c_str()), database);
}

Session::~Session()
{
    sqlite3session_delete(m_session);
}

std::string Session::changeset()
{
    int size = 0;
    void* bytes = nullptr;
    check(sqlite3session_changeset(m_session, &size, &bytes), nullptr);
    return size == 0 ? (sqlite3_free(bytes), std::string()) : taken(bytes, size);
}

std::vector<ChangedRow> Session::changedRows()
{
    std::string bytes = changeset();
    std::vector<ChangedRow> rows;
    if (bytes.empty())
        return rows;
    sqlite3_changeset_iter* iterator = nullptr;
    check(sqlite3changeset_start(&iterator, static_cast<int>(bytes.size()), bytes.data()), nullptr);
    while (sqlite3changeset_next(iterator) == SQLITE_ROW) {
        const char* table = nullptr;
        int columns = 0;
        int operation = 0;
        sqlite3_value* key = nullptr;
        check(sqlite3changeset_op(iterator, &table, &columns, &operation, nullptr), nullptr);
        check(operation == SQLITE_INSERT ? sqlite3changeset_new(iterator, 0, &key)
                                         : sqlite3changeset_old(iterator, 0, &key),
              nullptr);
        const bool isNumber = key && sqlite3_value_type(key) == SQLITE_INTEGER;
        rows.push_back({table, isNumber ? sqlite3_value_int64(key) : 0});
    }
    check(sqlite3changeset_finalize(iterator), nullptr);
    return rows;
}

std::string inverted(std::string_view changeset)
{
    int size = 0;
    void* bytes = nullptr;
    check(sqlite3changeset_invert(static_cast<int>(changeset.size()), changeset.data(), &size,
                                  &bytes),
          nullptr);
    return taken(bytes, size);
}

void applyChangeset(sqlite3* database, std::string_view changeset)
{
    std::string bytes(changeset); // SQLite asks for a pointer to non-const, and only reads
    check(sqlite3changeset_apply(database, static_cast<int>(bytes.size()), bytes.data(), nullptr,
                                 refuseConflict, nullptr),
          database);
}

} // namespace bothways::storage
