// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/changeset_check.h"

#include "storage/study/query.h"
#include "storage/study/schema.h"

#include <SQLiteCpp/Database.h>

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace bothways::storage {
namespace {

/// Which columns are the key; as many elements as the table has columns.
using KeyColumns = std::vector<bool>;
/// Of a record: which columns have a value.
using Given = std::vector<bool>;

// SQLite's numbers for kinds of changes and of values.
constexpr unsigned char kTable = 'T', kDelete = 9, kInsert = 18, kUpdate = 23;
enum ValueKind : unsigned char { undefined, integer, real, text, blob, null };

KeyColumns keyColumnsOf(SQLite::Database& database, const std::string& table)
{
    KeyColumns keys;
    Query columns(database, "SELECT pk FROM pragma_table_info(?) ORDER BY cid");
    columns.bind(1, table);
    while (columns.step())
        keys.push_back(columns.integer(0) > 0);
    return keys;
}

class ChangesetReader {
public:
    ChangesetReader(SQLite::Database& database, std::string_view bytes)
        : m_database(&database), m_rest(bytes)
    {
    }

    bool isPossible()
    {
        if (m_rest.empty() || static_cast<unsigned char>(m_rest.front()) != kTable)
            return false;
        while (!m_rest.empty()) {
            const auto kind = byte();
            if (!(kind == kTable ? table() : change(*kind)))
                return false;
        }
        return true;
    }

private:
    bool table()
    {
        const auto columns = number();
        constexpr std::uint64_t kMostColumns = 100;
        if (!columns || *columns == 0 || *columns > kMostColumns || *columns > m_rest.size())
            return false;
        m_keys.clear();
        for (std::uint64_t i = 0; i < *columns; ++i)
            m_keys.push_back(*byte() != 0);
        const std::size_t end = m_rest.find('\0');
        if (end == std::string_view::npos)
            return false;
        const std::string name(m_rest.substr(0, end));
        m_rest.remove_prefix(end + 1);
        const auto known = undoableTables();
        return std::find(known.begin(), known.end(), name) != known.end() && fits(name);
    }

    /// A migration may have added columns at the end since; they are no keys.
    bool fits(const std::string& name) const
    {
        const KeyColumns now = keyColumnsOf(*m_database, name);
        return m_keys.size() <= now.size() &&
               std::equal(m_keys.begin(), m_keys.end(), now.begin()) &&
               std::find(now.begin() + static_cast<std::ptrdiff_t>(m_keys.size()), now.end(),
                         true) == now.end();
    }

    bool change(unsigned char kind)
    {
        const auto indirect = byte();
        if (!indirect || *indirect > 1)
            return false;
        if (kind == kInsert || kind == kDelete) {
            const auto row = record();
            return row && std::all_of(row->begin(), row->end(), [](bool given) { return given; });
        }
        if (kind != kUpdate)
            return false;
        const auto before = record();
        const auto after = record();
        if (!before || !after)
            return false;
        for (std::size_t i = 0; i < m_keys.size(); ++i)
            if (m_keys[i] ? !(*before)[i] || (*after)[i] : (*before)[i] != (*after)[i])
                return false;
        return true;
    }

    std::optional<Given> record()
    {
        Given given;
        for (std::size_t i = 0; i < m_keys.size(); ++i) {
            const auto kind = byte();
            if (!kind || *kind > null || !value(*kind))
                return std::nullopt;
            given.push_back(*kind != undefined);
        }
        return given;
    }

    bool value(unsigned char kind)
    {
        if (kind == integer || kind == real)
            return skip(8);
        if (kind != text && kind != blob)
            return true;
        const auto length = number();
        return length && skip(*length);
    }

    bool skip(std::uint64_t count)
    {
        if (count > m_rest.size())
            return false;
        m_rest.remove_prefix(count);
        return true;
    }

    std::optional<unsigned char> byte()
    {
        if (m_rest.empty())
            return std::nullopt;
        const auto first = static_cast<unsigned char>(m_rest.front());
        m_rest.remove_prefix(1);
        return first;
    }

    /// SQLite's variable-length number, as far as it fits into 31 bits: seven bits a byte, the
    /// highest first.
    std::optional<std::uint64_t> number()
    {
        std::uint64_t value = 0;
        for (int i = 0; i < 5; ++i) {
            const auto next = byte();
            if (!next)
                return std::nullopt;
            value = value << 7 | (*next & 0x7FU);
            if (*next < 0x80U)
                return value <= 0x7FFF'FFFFU ? std::optional(value) : std::nullopt;
        }
        return std::nullopt;
    }

    SQLite::Database* m_database;
    std::string_view m_rest;
    KeyColumns m_keys;
};

} // namespace

bool isPossibleChangeset(SQLite::Database& database, std::string_view changeset)
{
    return ChangesetReader(database, changeset).isPossible();
}

} // namespace bothways::storage
