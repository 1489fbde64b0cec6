// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/seal.h"

#include "storage/bytes/sha256.h"
#include "storage/study/schema.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>

#include <array>
#include <bit>
#include <cstdint>

namespace bothways::storage {
namespace {

/// Low byte first, on every machine.
std::array<char, 8> bytesOf(std::uint64_t bits)
{
    std::array<char, 8> bytes{};
    for (std::size_t i = 0; i < bytes.size(); ++i)
        bytes[i] = static_cast<char>(bits >> (8 * i) & 0xFFU);
    return bytes;
}

/// Type and length go before each value, so that no two contents give the same bytes.
void add(Sha256& hash, char type, std::string_view value)
{
    const auto length = bytesOf(value.size());
    hash.add(std::string_view(&type, 1));
    hash.add(std::string_view(length.data(), length.size()));
    hash.add(value);
}

void addBits(Sha256& hash, char type, std::uint64_t bits)
{
    const auto bytes = bytesOf(bits);
    add(hash, type, std::string_view(bytes.data(), bytes.size()));
}

void addRow(Sha256& hash, const SQLite::Statement& row)
{
    for (int i = 0; i < row.getColumnCount(); ++i) {
        const SQLite::Column column = row.getColumn(i);
        if (column.isInteger())
            addBits(hash, 'i', static_cast<std::uint64_t>(column.getInt64()));
        else if (column.isFloat())
            addBits(hash, 'f', std::bit_cast<std::uint64_t>(column.getDouble()));
        else if (column.isNull())
            add(hash, 'n', {});
        else
            add(hash, 't',
                std::string_view(static_cast<const char*>(column.getBlob()),
                                 static_cast<std::size_t>(column.getBytes())));
    }
}

void addRows(SQLite::Database& database, Sha256& hash, const std::string& sql)
{
    add(hash, 'q', sql);
    SQLite::Statement rows(database, sql);
    while (rows.executeStep())
        addRow(hash, rows);
}

} // namespace

std::string computeSeal(SQLite::Database& database)
{
    Sha256 hash;
    for (const std::string_view table : undoableTables()) {
        // Names of our own tables, not a user's words. The first two columns hold every key.
        addRows(database, hash, fmt::format("SELECT * FROM {} ORDER BY 1, 2", table));
        addRows(database, hash,
                fmt::format("SELECT type, name, sql FROM sqlite_schema WHERE tbl_name = '{}' "
                            "ORDER BY type, name",
                            table));
    }
    addRows(database, hash, "SELECT id, state, checksum FROM history ORDER BY id");
    return hash.hex();
}

void renewSeal(SQLite::Database& database)
{
    SQLite::Statement statement(database, "INSERT OR REPLACE INTO seal (id, sha256) VALUES (1, ?)");
    statement.bind(1, computeSeal(database));
    statement.exec();
}

bool sealFits(SQLite::Database& database)
{
    SQLite::Statement stored(database, "SELECT sha256 FROM seal");
    if (!stored.executeStep() || stored.getColumn(0).getString() != computeSeal(database))
        return false;
    SQLite::Statement entries(database,
                              "SELECT at, kind, detail, changeset, checksum FROM history");
    while (entries.executeStep()) {
        const std::string changeset = entries.getColumn(3).getString();
        if (checksumOfEntry(entries.getColumn(0).getString(), entries.getColumn(1).getString(),
                            entries.getColumn(2).getString(),
                            changeset) != entries.getColumn(4).getString())
            return false;
    }
    return true;
}

std::string checksumOfEntry(std::string_view at, std::string_view kind, std::string_view detail,
                            std::string_view changeset)
{
    Sha256 hash;
    for (const std::string_view part : {at, kind, detail, changeset})
        add(hash, 't', part);
    return hash.hex();
}

} // namespace bothways::storage
