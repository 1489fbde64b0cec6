// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/sheet_layout.h"

#include "core/study/units.h"
#include "storage/sheet/date_forms.h"
#include "storage/sheet/number_forms.h"
#include "storage/sheet/run_columns.h"

#include <algorithm>
#include <array>
#include <set>

namespace bothways::storage {
namespace {

using core::Error;
using core::ErrorCode;

Error layoutFault(const std::string& name, int line, core::Message message)
{
    core::Place where(name);
    where.line = line;
    return Error{ErrorCode::badInput, std::move(message), std::move(where)};
}

/// The first words of lines that sum up; folded.
bool isTotalWord(std::string_view folded)
{
    constexpr std::array<std::string_view, 37> kWords = {"sum",
                                                         "total",
                                                         "totals",
                                                         "average",
                                                         "avg",
                                                         "mean",
                                                         "median",
                                                         "min",
                                                         "max",
                                                         "minimum",
                                                         "maximum",
                                                         "std",
                                                         "stdev",
                                                         "sd",
                                                         "subtotal",
                                                         "summe",
                                                         "gesamt",
                                                         "mittel",
                                                         "mittelwert",
                                                         "durchschnitt",
                                                         "schnitt",
                                                         "anzahl",
                                                         "zwischensumme",
                                                         "somme",
                                                         "moyenne",
                                                         "mediane",
                                                         "ecart",
                                                         "sous",
                                                         "suma",
                                                         "media",
                                                         "promedio",
                                                         "mediana",
                                                         "desviacion",
                                                         "count",
                                                         "difference",
                                                         "differenz",
                                                         "standardabweichung"};
    const std::string_view first = folded.substr(0, folded.find(' '));
    return std::find(kWords.begin(), kWords.end(), first) != kWords.end();
}

std::size_t filledCells(const Row& row)
{
    return static_cast<std::size_t>(std::count_if(row.cells.begin(), row.cells.end(),
                                                  [](const Cell& c) { return !c.empty(); }));
}

bool isComment(const Table& table, const Row& row)
{
    return table.sheet.empty() && !row.cells.empty() && row.cells.front().text.starts_with('#');
}

bool saysAMoment(const Cell& cell)
{
    switch (cell.kind) {
    case CellKind::date:
    case CellKind::time:
    case CellKind::dateTime: return true;
    case CellKind::text: return writtenMoment(cell.text).has_value();
    default: return false;
    }
}

/// What one line below the header is.
class LineKinds {
public:
    LineKinds(const SheetLayout& layout, const SheetOptions& options)
        : m_options(options),
          m_start(layout.find("start")),
          m_date(layout.find(kDateColumn)),
          m_configuration(layout.find("configuration")),
          m_direction(layout.find("direction"))
    {
    }
    [[nodiscard]] bool isRun(const Row& row) const
    {
        return row.fault != csv::RecordFault::none || (m_start && saysAMoment(at(row, m_start)));
    }
    /// A sum or a mean: it says so, where no start stands.
    [[nodiscard]] bool isTotal(const Row& row) const
    {
        return m_start && std::any_of(row.cells.begin(), row.cells.end(), [](const Cell& cell) {
                   return cell.kind == CellKind::text && isTotalWord(foldedName(cell.text));
               });
    }
    /// Below the runs: nothing of what every run has, but numbers.
    [[nodiscard]] bool isUnnamedTotal(const Row& row) const
    {
        return m_start && at(row, m_start).empty() && at(row, m_configuration).empty() &&
               at(row, m_direction).empty() && at(row, m_date).empty();
    }
    /// Below the runs: words in one cell.
    [[nodiscard]] bool isRemark(const Row& row) const
    {
        return m_start && filledCells(row) == 1 && at(row, m_start).empty() &&
               std::all_of(row.cells.begin(), row.cells.end(), [](const Cell& cell) {
                   return cell.empty() || (cell.kind == CellKind::text && !parseNumber(cell.text) &&
                                           !parseNumber(cell.text, true));
               });
    }
    [[nodiscard]] bool isSecondHeader(const Row& row) const
    {
        const HeaderScore score = scoreOf(row, m_options);
        return score.needed >= 2 && score.known >= 3;
    }

private:
    [[nodiscard]] static const Cell& at(const Row& row, const LaidColumn* column)
    {
        static const Cell kNone;
        return column ? cellAt(row, column->at) : kNone;
    }
    const SheetOptions& m_options;
    const LaidColumn *m_start, *m_date, *m_configuration, *m_direction;
};

/// "[hh:mm]", "A/B", "dd.mm.yyyy": no unit, and no value.
bool describesCells(const Cell& cell)
{
    const std::string_view text = cell.text;
    if (text.starts_with('[') || text.starts_with('('))
        return true;
    const std::string letters = foldedName(text);
    const bool form =
        letters.size() > 1 && letters.find_first_not_of("dmytjahs ") == std::string::npos;
    return form || (text.find_first_of(":/") != std::string::npos && !saysAMoment(cell));
}

bool isUnitsLine(const Row& row, const Row& header)
{
    std::size_t units = 0;
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const Cell& cell = row.cells[i];
        if (cell.empty())
            continue;
        if (cell.kind != CellKind::text || cellAt(header, i).empty())
            return false;
        const bool unit = isUnitText(cell.text);
        if (!unit && !describesCells(cell))
            return false;
        if (unit && cell.text.find_first_not_of("-()[] ") != std::string::npos)
            ++units;
    }
    return units > 0;
}

void nameColumns(const Table& table, const SheetOptions& options, SheetLayout& layout)
{
    const Row& header = table.rows[layout.header];
    const Row* units = layout.units ? &table.rows[*layout.units] : nullptr;
    for (std::size_t i = 0; i < header.cells.size(); ++i) {
        if (header.cells[i].empty())
            continue;
        LaidColumn column;
        column.at = i;
        column.written = csv::trimmedLines(header.cells[i].text);
        column.meaning = givenMeaning(column.written, units ? cellAt(*units, i).text : "", options,
                                      column.mapped);
        const bool drop = column.mapped && column.own() &&
                          (isKnownColumn(canonicalColumn(column.written)) ||
                           canonicalColumn(column.written) == kDateColumn);
        if (drop)
            layout.leftOut.push_back(column.written);
        else
            layout.columns.push_back(std::move(column));
    }
}

/// The same quantity: any two consumptions are.
bool meanTheSame(const ColumnMeaning& a, const ColumnMeaning& b)
{
    return a.column == b.column || ((a.guessed || b.guessed) && core::unitFromName(a.column) &&
                                    core::unitFromName(b.column));
}

/// Where several columns mean the same, the one whose name is ours, or that a person named, is it;
/// one whose name is in no table is it last.
void settleTwins(SheetLayout& layout, const std::string& name, int line)
{
    const auto strength = [](const LaidColumn& c) {
        return c.mapped ? 3 : c.canonical() ? 2 : c.meaning.guessed ? 0 : 1;
    };
    for (LaidColumn& column : layout.columns)
        for (const LaidColumn& other : layout.columns) {
            if (&other == &column || column.own() || !meanTheSame(other.meaning, column.meaning))
                continue;
            if (strength(column) < strength(other)) {
                column.meaning = {};
                break;
            }
            if (strength(column) > strength(other) || &other > &column ||
                core::sameWord(column.written, other.written))
                continue; // the same name twice is said by the reader
            Error fault = layoutFault(
                name, line,
                core::message("says the same as '{}'; expected one of the two"_t, other.written));
            fault.where.column = shownCell(column.written);
            layout.faults.push_back(std::move(fault));
        }
}

/// A second header beside the first: a gap, and then what every sheet needs once more.
void findTableBeside(const Row& header, SheetLayout& layout, const std::string& name)
{
    std::set<std::string, std::less<>> seen;
    for (const LaidColumn& column : layout.columns) {
        const bool needed = isNeededColumn(column.meaning.column);
        if (!needed || seen.insert(column.meaning.column).second)
            continue;
        std::size_t gap = column.at;
        while (gap > 0 && !cellAt(header, gap - 1).empty())
            --gap;
        if (gap == 0)
            return;
        Error fault = layoutFault(name, header.line,
                                  core::message("a second table begins at column {}; expected one "
                                                "table on a sheet"_t,
                                                columnLetters(gap)));
        fault.where.column = shownCell(column.written);
        layout.faults.assign(1, std::move(fault));
        return;
    }
}

void sortLines(const Table& table, const SheetOptions& options, const std::string& name,
               SheetLayout& layout)
{
    const LineKinds kinds(layout, options);
    const bool hashHeader = cellAt(table.rows[layout.header], 0).text.starts_with('#');
    std::vector<std::size_t> lines;
    std::size_t end = 0; // behind the last run
    for (std::size_t i = layout.units.value_or(layout.header) + 1; i < table.rows.size(); ++i) {
        const Row& row = table.rows[i];
        if (isComment(table, row) && !hashHeader)
            continue;
        const bool run = kinds.isRun(row);
        if (!run && kinds.isSecondHeader(row)) {
            layout.faults.assign(
                1, layoutFault(name, row.line,
                               "a second table begins here; expected one table on a sheet"_t));
            return;
        }
        lines.push_back(i);
        if (run)
            end = lines.size();
    }
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const Row& row = table.rows[lines[i]];
        const bool below = end > 0 && i >= end;
        if (!kinds.isRun(row) && kinds.isTotal(row))
            layout.totals.push_back(lines[i]);
        else if (below && kinds.isRemark(row))
            layout.remarks.push_back(lines[i]);
        else if (below && kinds.isUnnamedTotal(row))
            layout.totals.push_back(lines[i]);
        else
            layout.runs.push_back(lines[i]);
    }
}

/// A length without a unit has one where its cells are clock times.
void settleLengths(const Table& table, SheetLayout& layout)
{
    for (LaidColumn& column : layout.columns) {
        const auto& candidates = column.meaning.candidates;
        if (column.meaning.known() || candidates.size() != 1 || candidates[0] != "duration_s")
            continue;
        const auto first = std::find_if(layout.runs.begin(), layout.runs.end(), [&](std::size_t i) {
            return !cellAt(table.rows[i], column.at).empty();
        });
        if (first == layout.runs.end())
            continue;
        const Cell& cell = cellAt(table.rows[*first], column.at);
        if (cell.kind == CellKind::time || secondsOfLength(cell.text, true))
            column.meaning.column = "duration_s";
    }
}

/// Cells that are shown as one, from the header to the last run.
void findMerged(const Table& table, const std::string& name, SheetLayout& layout)
{
    const int first = table.rows[layout.header].line;
    const int last = layout.runs.empty() ? first : table.rows[layout.runs.back()].line;
    for (const Merged& merged : table.merged) {
        if (merged.lastLine < first || merged.firstLine > last)
            continue;
        const std::string from =
            columnLetters(merged.firstColumn) + std::to_string(merged.firstLine);
        const std::string to = columnLetters(merged.lastColumn) + std::to_string(merged.lastLine);
        Error fault = layoutFault(name, merged.firstLine,
                                  core::message("the cells {} to {} are merged; expected a value "
                                                "of its own in each line and column"_t,
                                                from, to));
        fault.where.column = columnLetters(merged.firstColumn);
        layout.faults.push_back(std::move(fault));
    }
}

} // namespace

const Cell& cellAt(const Row& row, std::size_t at)
{
    static const Cell kNone;
    return at < row.cells.size() ? row.cells[at] : kNone;
}

bool LaidColumn::canonical() const
{
    return meaning.column == canonicalColumn(written) && !meaning.converts();
}

const LaidColumn* SheetLayout::find(std::string_view column) const
{
    const auto found = std::find_if(columns.begin(), columns.end(), [&](const LaidColumn& c) {
        return c.meaning.column == column;
    });
    return found == columns.end() ? nullptr : &*found;
}

SheetLayout layOut(const Table& table, std::size_t header, const SheetOptions& options,
                   const std::string& name)
{
    SheetLayout layout;
    layout.header = header;
    for (std::size_t i = 0; i < header; ++i)
        layout.hasTitles = layout.hasTitles || !isComment(table, table.rows[i]);
    if (header + 1 < table.rows.size() && isUnitsLine(table.rows[header + 1], table.rows[header]))
        layout.units = header + 1;
    nameColumns(table, options, layout);
    settleTwins(layout, name, table.rows[header].line);
    sortLines(table, options, name, layout);
    settleLengths(table, layout);
    findTableBeside(table.rows[header], layout, name);
    findMerged(table, name, layout);
    return layout;
}

} // namespace bothways::storage
