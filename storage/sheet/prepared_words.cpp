// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/text_parts.h"
#include "storage/sheet/ordinary_sheet.h"
#include "storage/sheet/run_columns.h"
#include "storage/sheet/sheet_preparer.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

// What SheetPreparer says of a sheet, and what it has to be told.
namespace bothways::storage {
namespace {

constexpr auto kColumnsTaken = "columns taken as {}"_t;

/// "9, 10 and 14" would be words; lines are a list.
std::string lineList(const Table& table, const std::vector<std::size_t>& rows)
{
    constexpr std::size_t kMostNamed = 12;
    std::string list;
    for (std::size_t i = 0; i < std::min(rows.size(), kMostNamed); ++i)
        list += (i > 0 ? ", " : "") + std::to_string(table.rows[rows[i]].line);
    return list + (rows.size() > kMostNamed ? ", …" : "");
}

/// Dates that a cell above the header holds, alone or among other words.
std::vector<WrittenDate> datesIn(const Cell& cell)
{
    constexpr std::size_t kMostWords = 40, kLongestDate = 4; // words: "Saturday 9 May 2026"
    std::vector<WrittenDate> dates;
    const auto words = core::wordsBetween(" \t\n(),;", cell.text, kMostWords);
    for (std::size_t i = 0; i < words.size(); ++i) {
        std::string text;
        for (std::size_t n = 0; n < kLongestDate && i + n < words.size(); ++n) {
            text += (n > 0 ? " " : "") + std::string(words[i + n]);
            if (const auto moment = writtenMoment(text); moment && moment->date)
                dates.push_back(*moment->date);
        }
    }
    return dates;
}

} // namespace

/// Which number is the day, from dates that can be read in one way alone; never by a guess.
std::optional<core::Error> SheetPreparer::settleDates()
{
    std::size_t dayFirst = 0, monthFirst = 0;
    const LaidColumn* unclearIn = nullptr;
    int unclearLine = 0;
    for (const LaidColumn* column : {m_start, m_date}) {
        if (!column)
            continue;
        for (const std::size_t i : m_layout.runs) {
            const Cell& cell = cellAt(m_table.rows[i], column->at);
            const auto moment =
                cell.kind == CellKind::text ? writtenMoment(cell.text) : std::nullopt;
            if (!moment || !moment->date || moment->date->certain)
                continue;
            m_orderFound = true;
            const bool asDay = moment->date->possible(DateOrder::dayFirst);
            const bool asMonth = moment->date->possible(DateOrder::monthFirst);
            dayFirst += asDay && !asMonth ? 1U : 0U;
            monthFirst += asMonth && !asDay ? 1U : 0U;
            if (asDay && asMonth && moment->date->first != moment->date->second && !unclearIn) {
                unclearIn = column;
                unclearLine = m_table.rows[i].line;
                m_unclearDate = cell.text;
            }
        }
    }
    m_order = m_options.dates != DateOrder::unknown ? m_options.dates
              : dayFirst > 0                        ? DateOrder::dayFirst
              : monthFirst > 0                      ? DateOrder::monthFirst
                                                    : DateOrder::unknown;
    const bool both = dayFirst > 0 && monthFirst > 0;
    if (m_options.dates != DateOrder::unknown || !unclearIn ||
        (m_order != DateOrder::unknown && !both)) {
        m_unclearDate.clear();
        return std::nullopt;
    }
    core::Place where(m_sheet.name);
    where.line = unclearLine;
    where.column = shownCell(unclearIn->written);
    return core::Error{
        core::ErrorCode::badInput,
        core::message("{} may have the day first or the month first; expected to be told "
                      "which: --dates day-first or --dates month-first"_t,
                      inQuotes(m_unclearDate)),
        std::move(where)};
}

/// The date above the header, where there is one alone.
void SheetPreparer::findTitleDate()
{
    if (!m_layout.hasTitles)
        return;
    std::set<std::string> days;
    for (std::size_t i = 0; i < m_layout.header; ++i)
        for (const Cell& cell : m_table.rows[i].cells)
            for (const WrittenDate& date : datesIn(cell))
                if (const auto iso = isoOf(date); iso && days.insert(*iso).second) {
                    m_sheet.titleDate = *iso;
                    m_sheet.titleLine = m_table.rows[i].line;
                }
    if (days.size() != 1)
        m_sheet.titleDate.clear();
}

/// What nobody sees in the workbook counts all the same.
void SheetPreparer::sayHidden()
{
    std::vector<std::size_t> lines;
    for (const std::size_t i : m_layout.runs)
        if (m_table.rows[i].hidden)
            lines.push_back(i);
    if (!lines.empty())
        m_sheet.found.push_back(
            core::message("hidden lines as well: {}"_t, lineList(m_table, lines)));
    std::string columns;
    for (const LaidColumn& column : m_layout.columns)
        for (const HiddenColumns& hidden : m_table.hiddenColumns)
            if (column.at >= hidden.first && column.at <= hidden.last)
                columns += (columns.empty() ? "" : ", ") + shownCell(column.written);
    if (!columns.empty())
        m_sheet.found.push_back(core::message("hidden columns as well: {}"_t, columns));
}

bool namesColumns(const core::Message& found)
{
    return std::string_view(found.key) == kColumnsTaken.key();
}

/// What was found, for people.
void SheetPreparer::say()
{
    auto& found = m_sheet.found;
    const int header = m_table.rows[m_layout.header].line;
    if (!m_table.sheet.empty())
        found.push_back(core::message("its sheet '{}'"_t, m_table.sheet));
    if (m_layout.hasTitles)
        found.push_back(
            core::message("line {} as its header, and what stands above it passed over"_t, header));
    if (m_layout.units)
        found.push_back(core::message("line {} as units"_t, m_table.rows[*m_layout.units].line));
    if (!m_layout.totals.empty())
        found.push_back(
            core::message("lines passed over as totals: {}"_t, lineList(m_table, m_layout.totals)));
    if (!m_layout.remarks.empty())
        found.push_back(core::message("lines passed over as remarks: {}"_t,
                                      lineList(m_table, m_layout.remarks)));
    std::string renamed;
    for (const LaidColumn& column : m_layout.columns)
        if (!column.own() && !column.canonical())
            renamed += fmt::format("{}{}={}", renamed.empty() ? "" : ", ",
                                   shownCell(column.written), column.meaning.column);
    if (!renamed.empty())
        found.push_back(core::message(kColumnsTaken, renamed));
    sayHidden();
    if (m_orderFound)
        found.push_back(m_order == DateOrder::monthFirst ? "the month before the day in dates"_t
                                                         : "the day before the month in dates"_t);
    if (m_dateCarried)
        found.push_back("the date of the line above where there is none"_t);
    if (!m_grouped.empty())
        found.push_back(
            core::message("signs between thousands: '{}' is {}"_t, m_grouped, m_groupedAs));
}

} // namespace bothways::storage
