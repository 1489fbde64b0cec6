// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/rule.h"
#include "storage/sheet/run_columns.h"
#include "storage/study/content.h"
#include "storage/study/query.h"
#include "storage/study/study_rows.h"

#include <cmath>
#include <initializer_list>

namespace bothways::storage {
namespace {

/// What a column of these tables may hold.
enum class Holds { text, name, key, count, place, number, seconds, moment, offset, rule };
struct Column {
    const char* name;
    Holds holds;
    bool mayLack = false;
};

// A recording has fewer rows and channels, and is nearer to 1970, than what is refused here.
constexpr std::int64_t kMostRows = std::int64_t{1} << 40;
constexpr std::int64_t kLongestTime_us = std::int64_t{300'000'000'000} * 1'000'000;
constexpr double kFarthest_s = 1e12;
constexpr std::int64_t kMostOffset_min = 24 * 60;

bool isStoredText(const Query& row, int at)
{
    return row.isText(at) && row.bytes(at).size() <= kLongestText;
}

bool isWhole(const Query& row, int at, std::int64_t least, std::int64_t most)
{
    return row.isInteger(at) && row.integer(at) >= least && row.integer(at) <= most;
}

bool isWithin(const Query& row, int at, double most)
{
    return (row.isReal(at) || row.isInteger(at)) && std::abs(row.real(at)) <= most;
}

bool fits(const Query& row, int at, const Column& column)
{
    if (row.isNull(at))
        return column.mayLack;
    switch (column.holds) {
    case Holds::text: return isStoredText(row, at);
    case Holds::name: return isStoredText(row, at) && !row.bytes(at).empty();
    case Holds::key: return isWhole(row, at, 1, kMostRows);
    case Holds::count:
    case Holds::place: return isWhole(row, at, 0, kMostRows);
    case Holds::number: return isWithin(row, at, 1e300);
    case Holds::seconds: return isWithin(row, at, kFarthest_s);
    case Holds::moment: return isWhole(row, at, -kLongestTime_us, kLongestTime_us);
    case Holds::offset: return isWhole(row, at, -kMostOffset_min, kMostOffset_min);
    case Holds::rule: return isStoredText(row, at) && core::ruleFromName(row.bytes(at));
    }
    return false;
}

void checkTable(SQLite::Database& database, const char* table,
                std::initializer_list<Column> columns)
{
    std::string sql = "SELECT ";
    for (const Column& column : columns)
        sql += std::string(sql.size() > 7 ? ", \"" : "\"") + column.name + "\"";
    Query rows(database, sql + " FROM " + table);
    while (rows.step()) {
        int at = 0;
        for (const Column& column : columns)
            if (!fits(rows, at++, column))
                throw DamagedRow{core::message("{} of line {} in table {}"_t, column.name,
                                               rows.integer(0), table)};
    }
}

} // namespace

void checkOtherRows(SQLite::Database& database)
{
    checkTable(database, "overruled",
               {{"run", Holds::key}, {"rule", Holds::rule}, {"words", Holds::name}});
    checkTable(database, "recording",
               {{"id", Holds::key},
                {"name", Holds::text},
                {"clock_start_us", Holds::moment, true},
                {"utc_offset_min", Holds::offset, true},
                {"from_s", Holds::seconds},
                {"to_s", Holds::seconds},
                {"rows", Holds::count}});
    checkTable(database, "channel",
               {{"recording", Holds::key},
                {"place", Holds::place},
                {"name", Holds::name},
                {"unit", Holds::text},
                {"factor", Holds::number},
                {"offset", Holds::number},
                {"samples", Holds::count}});
    checkTable(database, "recording_mark",
               {{"recording", Holds::key},
                {"place", Holds::place},
                {"at_s", Holds::seconds},
                {"words", Holds::name}});
    checkTable(database, "run_trace",
               {{"run", Holds::key}, {"recording", Holds::key}, {"offset_s", Holds::seconds}});
    checkTable(database, "mapping",
               {{"place", Holds::place},
                {"header", Holds::text},
                {"name", Holds::text},
                {"channel", Holds::text},
                {"factor", Holds::number},
                {"offset", Holds::number}});
}

} // namespace bothways::storage
