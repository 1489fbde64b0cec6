// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/seal.h"

#include "storage/study/query.h"
#include "storage/study/row_hash.h"

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace bothways::storage {
namespace {

/// A table under the seal. Rows of one page have the same key / 32, where the table has pages.
struct SealedTable {
    std::string_view name;
    std::string_view key;     ///< a whole number, the first column; empty: all rows are one page
    std::string_view columns; ///< what is summed
    std::string_view where = "TRUE";
};

// In the order of this list, which is part of the format. The recordings' chunks are under the sums
// of trace_data; data that no import finished is nobody's yet.
constexpr std::array kSealed = {
    SealedTable{"property", "", "*"},
    SealedTable{"run", "id", "*"},
    SealedTable{"mark", "run", "*"},
    SealedTable{"accessory_on", "run", "*"},
    SealedTable{"extra", "run", "*"},
    SealedTable{"overruled", "run", "*"},
    SealedTable{"trace_data", "id", "id, state, chunks, sha256", "state = 'complete'"},
    SealedTable{"recording", "id", "*"},
    SealedTable{"channel", "recording", "*"},
    SealedTable{"recording_mark", "recording", "*"},
    SealedTable{"run_trace", "run", "*"},
    SealedTable{"mapping", "", "*"},
    SealedTable{"history", "id", "id, state, checksum"},
    SealedTable{"sqlite_sequence", "", "name, seq", "name IN ('run', 'history')"}};
constexpr std::size_t kSequences = kSealed.size() - 1;
constexpr int kPageBits = 5;

constexpr auto kSealedNames = [] {
    std::array<std::string_view, kSequences> names{};
    for (std::size_t i = 0; i < names.size(); ++i)
        names[i] = kSealed[i].name;
    return names;
}();

/// -7 / 32 is -1 here: no page is twice as long.
std::int64_t pageOf(const SealedTable& table, std::int64_t key)
{
    return table.key.empty() ? 0 : key >> kPageBits;
}

std::string selectOf(const SealedTable& table, bool onePage)
{
    return fmt::format(
        "SELECT {} FROM {} WHERE {}{} ORDER BY 1, 2", table.columns, table.name, table.where,
        onePage && !table.key.empty() ? fmt::format(" AND {} BETWEEN ? AND ?", table.key) : "");
}

/// Empty for a page without rows.
std::string sumOfPage(SQLite::Database& database, const SealedTable& table, std::int64_t page)
{
    Query rows(database, selectOf(table, true));
    if (!table.key.empty()) {
        const std::int64_t first = page * (1 << kPageBits);
        rows.bind(1, first).bind(2, first + (1 << kPageBits) - 1);
    }
    Sha256 hash;
    bool any = false;
    while (rows.step()) {
        addRow(hash, rows);
        any = true;
    }
    return any ? hash.hex() : std::string();
}

std::map<std::int64_t, std::string> sumsOfPages(SQLite::Database& database,
                                                const SealedTable& table)
{
    std::map<std::int64_t, std::string> pages;
    Query rows(database, selectOf(table, false));
    Sha256 hash;
    std::int64_t page = 0;
    bool any = false;
    while (rows.step()) {
        const std::int64_t next = table.key.empty() ? 0 : pageOf(table, rows.integer(0));
        if (any && next != page) {
            pages.emplace(page, hash.hex());
            hash = Sha256();
        }
        page = next;
        any = true;
        addRow(hash, rows);
    }
    if (any)
        pages.emplace(page, hash.hex());
    return pages;
}

std::string sumOfTable(const SealedTable& table, const std::map<std::int64_t, std::string>& pages)
{
    Sha256 hash;
    addValue(hash, 't', table.name);
    for (const auto& [number, sha256] : pages) {
        addWord(hash, static_cast<std::uint64_t>(number));
        hash.add(sha256);
    }
    return hash.hex();
}

} // namespace

Seal::Seal(SQLite::Database& database)
{
    for (const SealedTable& table : kSealed) {
        Table sums{sumsOfPages(database, table), {}};
        sums.sha256 = sumOfTable(table, sums.pages);
        m_tables.push_back(std::move(sums));
    }
    makeTop();
}

void Seal::renew(SQLite::Database& database, const std::vector<ChangedRow>& rows)
{
    std::set<std::pair<std::size_t, std::int64_t>> pages = {{kSequences, 0}};
    for (const ChangedRow& row : rows) {
        const auto* at = std::find(kSealedNames.begin(), kSealedNames.end(), row.table);
        if (at == kSealedNames.end())
            continue;
        const auto table = static_cast<std::size_t>(at - kSealedNames.begin());
        pages.emplace(table, pageOf(kSealed[table], row.key));
    }
    std::set<std::size_t> changed;
    for (const auto& [table, page] : pages) {
        std::string sha256 = sumOfPage(database, kSealed[table], page);
        if (sha256.empty())
            m_tables[table].pages.erase(page);
        else
            m_tables[table].pages[page] = std::move(sha256);
        changed.insert(table);
    }
    for (const std::size_t table : changed)
        m_tables[table].sha256 = sumOfTable(kSealed[table], m_tables[table].pages);
    makeTop();
}

void Seal::makeTop()
{
    Sha256 hash;
    for (const Table& table : m_tables)
        hash.add(table.sha256);
    m_top = hash.hex();
}

std::span<const std::string_view> sealedTables()
{
    return kSealedNames;
}

std::string storedSeal(SQLite::Database& database)
{
    Query row(database, "SELECT sha256 FROM seal");
    return row.step() ? row.text(0) : std::string();
}

void storeSeal(SQLite::Database& database, const std::string& top)
{
    Query row(database, "INSERT OR REPLACE INTO seal (id, sha256) VALUES (1, ?)");
    row.bind(1, top).step();
}

std::string checksumOfEntry(std::string_view at, std::string_view kind, std::string_view detail,
                            std::string_view changeset)
{
    Sha256 hash;
    for (const std::string_view part : {at, kind, detail, changeset})
        addValue(hash, 't', part);
    return hash.hex();
}

bool historyFits(SQLite::Database& database)
{
    Query lines(database, "SELECT at, kind, detail, changeset, checksum, "
                          "state IN ('note', 'stands', 'undone', 'gone') AND "
                          "(state = 'note') = (changeset IS NULL) FROM history");
    while (lines.step())
        if (lines.integer(5) != 1 || checksumOfEntry(lines.bytes(0), lines.bytes(1), lines.bytes(2),
                                                     lines.bytes(3)) != lines.bytes(4))
            return false;
    return true;
}

} // namespace bothways::storage
