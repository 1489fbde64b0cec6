// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/sheet_preparer.h"

#include "core/study/units.h"
#include "storage/sheet/run_columns.h"

#include <fmt/format.h>

#include <algorithm>

namespace bothways::storage {
namespace {

using core::Error;
using core::ErrorCode;
using core::message;

bool isLength(std::string_view column)
{
    return column == "duration_s" || !timedAccessoryOf(column).empty();
}

bool isNumberColumn(std::string_view column)
{
    return core::unitFromName(column) || !timedAccessoryOf(column).empty() ||
           std::any_of(numberColumns().begin(), numberColumns().end(),
                       [&](const NumberColumn& c) { return c.name == column; });
}

bool isMinutesUnit(std::string_view unit)
{
    const std::string folded = foldedName(unit);
    return folded.starts_with("m") && folded.find("h") == std::string::npos;
}

} // namespace

void SheetPreparer::fault(const LaidColumn& column, core::Message words)
{
    // A date stands in the sheet beside the start that it becomes a part of.
    const bool isDate = &column == m_date && m_start;
    const std::string name = column.own() ? canonicalColumn(column.written)
                             : isDate     ? m_start->meaning.column
                                          : column.meaning.column;
    m_sheet.faults.push_back(
        {m_line, name, 0, std::move(words), isDate ? column.written : std::string()});
}

void SheetPreparer::chooseColumns()
{
    for (const LaidColumn& column : m_layout.columns) {
        if (&column == m_date && m_start)
            continue; // becomes a part of the start
        const bool own = column.own() || column.meaning.column == kDateColumn;
        m_columns.push_back(&column);
        m_sheet.columns.push_back(
            {own ? canonicalColumn(column.written) : column.meaning.column, column.written});
        m_minutesFirst.push_back(isMinutesUnit(column.meaning.unit));
        m_sheet.adapted = m_sheet.adapted || (!own && !column.canonical()) || column.mapped;
    }
    m_sheet.adapted = m_sheet.adapted || m_layout.hasTitles || m_layout.units ||
                      !m_layout.totals.empty() || !m_layout.remarks.empty() ||
                      !m_layout.leftOut.empty() || (m_date && m_start) || !m_table.sheet.empty();
}

void SheetPreparer::lookAtNumbers()
{
    NumberSigns all;
    for (const LaidColumn* column : m_columns) {
        NumberSigns signs;
        if (isNumberColumn(column->meaning.column))
            for (const std::size_t i : m_layout.runs) {
                const Cell& cell = cellAt(m_table.rows[i], column->at);
                if (cell.kind == CellKind::text)
                    signs.look(cell.text);
            }
        all.add(signs);
        m_signs.push_back(signs);
    }
    m_decimal = all.decimal();
    m_sheet.dialect.decimalComma = m_decimal == ',';
}

std::optional<std::string> SheetPreparer::isoOf(const WrittenDate& date) const
{
    return date.inIso(m_order);
}

std::string SheetPreparer::lengthFor(const LaidColumn& column, const Cell& cell)
{
    const auto place = static_cast<std::size_t>(
        std::find(m_columns.begin(), m_columns.end(), &column) - m_columns.begin());
    const bool clock = cell.kind == CellKind::time;
    if (!clock && isTwoPartLength(cell.text) && !m_minutesFirst[place]) {
        fault(column, message("{} may be minutes and seconds or hours and minutes; expected "
                              "h:mm:ss, or a header like 'Duration (min:s)'"_t,
                              inQuotes(cell.text)));
        return {};
    }
    m_sheet.adapted = true;
    return secondsOfLength(cell.text, m_minutesFirst[place]).value_or(cell.text);
}

/// "65 %", or 0.65 in a cell that is shown as per cent.
std::string SheetPreparer::percentFor(const LaidColumn& column, const Cell& cell)
{
    if (cell.kind == CellKind::percentage)
        return convertedNumber(cell.text, 0.0, 100.0, 1.0);
    m_sheet.adapted = true;
    std::string_view text = csv::trimmed(cell.text);
    text.remove_suffix(1);
    while (text.ends_with("\xC2\xA0"))
        text.remove_suffix(2);
    return numberFor(column, {CellKind::text, std::string(csv::trimmed(text))});
}

std::string SheetPreparer::numberFor(const LaidColumn& column, const Cell& cell)
{
    const ColumnMeaning& meaning = column.meaning;
    const bool percent = meaning.column == "humidity_pct" &&
                         (cell.kind == CellKind::percentage ||
                          (cell.kind == CellKind::text && cell.text.ends_with('%')));
    if (percent)
        return percentFor(column, cell);
    const bool clock = cell.kind == CellKind::time || cell.text.find(':') != std::string::npos;
    if (isLength(meaning.column) && clock)
        return lengthFor(column, cell);
    std::string number = cell.text;
    if (cell.kind == CellKind::text) {
        const auto place = static_cast<std::size_t>(
            std::find(m_columns.begin(), m_columns.end(), &column) - m_columns.begin());
        const auto plain = plainNumber(cell.text, m_decimal, m_signs[place]);
        if (!plain) {
            const bool other = parseNumber(cell.text, m_decimal != ',').has_value();
            if (other && isNumberColumn(meaning.column)) {
                fault(column,
                      message(m_decimal == ',' ? "{} has a decimal point; the other numbers of "
                                                 "this sheet have a decimal comma"_t
                                               : "{} has a decimal comma; the other numbers of "
                                                 "this sheet have a decimal point"_t,
                              inQuotes(csv::trimmed(cell.text))));
                return {};
            }
            return cell.text; // the reader says what is wrong with it
        }
        if (plain->grouped && m_grouped.empty()) {
            m_grouped = cell.text;
            m_groupedAs = plain->text;
        }
        m_sheet.adapted = m_sheet.adapted || plain->grouped;
        number = plain->text;
    }
    return convertedNumber(number, meaning.before, meaning.times, meaning.by);
}

/// The day of a line; where its cell is empty, that of the line above.
std::string SheetPreparer::dateFor(const Row& row)
{
    const Cell& cell = cellAt(row, m_date->at);
    if (cell.empty()) {
        m_dateCarried = m_dateCarried || !m_lastDate.empty();
        return m_lastDate;
    }
    std::string date;
    if (cell.kind == CellKind::date || cell.kind == CellKind::dateTime)
        date = cell.text.substr(0, 10);
    else if (const auto moment = writtenMoment(cell.text); moment && moment->date)
        date = isoOf(*moment->date).value_or("");
    if (date.empty())
        fault(*m_date,
              message("{} is no date; expected a day like 2026-05-09"_t, inQuotes(cell.text)));
    else
        m_lastDate = date;
    return date;
}

std::string SheetPreparer::startFor(const Row& row)
{
    const Cell& cell = cellAt(row, m_start->at);
    std::string date, time;
    if (cell.kind == CellKind::dateTime || cell.kind == CellKind::date) {
        date = cell.text.substr(0, 10);
        time = cell.kind == CellKind::date ? "" : cell.text.substr(11);
    } else if (cell.kind == CellKind::time) {
        time = cell.text;
    } else {
        const auto moment = writtenMoment(cell.text);
        if (!moment)
            return cell.text;
        if (moment->asIs && !m_date)
            return moment->own_form;
        if (moment->date)
            date = isoOf(*moment->date).value_or("");
        if (moment->date && date.empty())
            return cell.text;
        time = moment->time;
        m_sheet.adapted = true;
    }
    if (m_date) {
        const std::string day = dateFor(row);
        if (!day.empty() && !date.empty() && day != date) {
            fault(*m_start, message("{} is on another day than {} in column '{}'"_t,
                                    inQuotes(cell.text), day, shownCell(m_date->written)));
            return {};
        }
        date = date.empty() ? day : date;
    }
    if (time.empty()) {
        fault(*m_start,
              message("{} has no time of day; expected one with its date"_t, inQuotes(cell.text)));
        return {};
    }
    return date.empty() ? time : date + "T" + time;
}

std::string SheetPreparer::marksFor(const Cell& cell)
{
    const auto marks = parseMarks(cell.text, m_decimal == ',');
    return marks && m_decimal == ',' ? formatMarks(*marks) : cell.text;
}

std::string SheetPreparer::cellFor(const LaidColumn& column, const Row& row)
{
    const Cell& cell = cellAt(row, column.at);
    if (cell.kind == CellKind::noValue) {
        fault(column, "has a formula without its value; expected the workbook to be saved by the "
                      "program that reckons it"_t);
        return {};
    }
    if (cell.kind == CellKind::error && !column.own()) {
        fault(column, message("holds the error {}; expected a value"_t, inQuotes(cell.text)));
        return {};
    }
    if (&column == m_start)
        return startFor(row);
    const std::string& name = column.meaning.column;
    if (cell.empty() || column.own())
        return cell.text;
    if (isNumberColumn(name))
        return numberFor(column, cell);
    if (name == "marks")
        return marksFor(cell);
    if (name == "setting" && cell.kind == CellKind::text && m_decimal == ',')
        if (const auto setting = parseNumber(cell.text, true))
            return formatNumber(setting->value, setting->decimals);
    return cell.text;
}

/// Cells without a name above them.
void SheetPreparer::takeBeyond(const Row& row)
{
    const Row& header = m_table.rows[m_layout.header];
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        if (row.cells[i].empty() || !cellAt(header, i).empty())
            continue;
        if (m_table.sheet.empty() && i >= header.cells.size())
            m_sheet.faults.push_back(
                {row.line,
                 {},
                 i,
                 message("is beyond the header: {} fields, expected at most {}"_t, row.cells.size(),
                         header.cells.size())});
        else if (std::none_of(m_sheet.faults.begin(), m_sheet.faults.end(),
                              [&](const PreparedFault& f) {
                                  return f.line == header.line && f.column.empty() && f.number == i;
                              }))
            m_sheet.faults.push_back(
                {header.line,
                 {},
                 i,
                 message("has no name but a value on line {}; expected a name in the header"_t,
                         row.line)});
        return;
    }
}

void SheetPreparer::takeLine(const Row& row)
{
    m_line = row.line;
    csv::Record record;
    record.line = row.line;
    record.fault = row.fault;
    record.fields.resize(m_columns.size());
    if (row.fault == csv::RecordFault::none) {
        takeBeyond(row);
        for (std::size_t i = 0; i < m_columns.size(); ++i)
            record.fields[i].text = cellFor(*m_columns[i], row);
    } else {
        record.faultField = m_columns.size();
        for (std::size_t i = 0; i < m_columns.size(); ++i)
            if (m_columns[i]->at == row.faultField)
                record.faultField = i;
    }
    m_sheet.records.push_back(std::move(record));
}

core::Result<PreparedSheet> SheetPreparer::prepare(char separator)
{
    m_sheet.headerLine = m_table.rows[m_layout.header].line;
    m_sheet.dialect.separator = separator;
    chooseColumns();
    lookAtNumbers();
    if (auto unclear = settleDates())
        return *unclear;
    findTitleDate();
    for (const std::size_t i : m_layout.runs)
        takeLine(m_table.rows[i]);
    say();
    return std::move(m_sheet);
}

} // namespace bothways::storage
