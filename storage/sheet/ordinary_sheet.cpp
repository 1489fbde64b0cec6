// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/ordinary_sheet.h"

#include "core/study/units.h"
#include "storage/sheet/run_columns.h"
#include "storage/sheet/run_rules.h"
#include "storage/sheet/sheet_layout.h"
#include "storage/sheet/sheet_preparer.h"
#include "storage/spreadsheet/text_decoding.h"
#include "storage/spreadsheet/workbook.h"

#include <algorithm>

namespace bothways::storage {
namespace {

using core::Error;
using core::ErrorCode;
using core::message;
using core::Result;

/// A file's tables, and which of them holds the runs.
struct ChosenTable {
    std::vector<Table> tables; ///< of a text: one
    std::optional<std::size_t> table;
    std::optional<std::size_t> header;
    std::vector<std::size_t> withRuns; ///< tables that have a header
    char separator = ',';
    Encoding encoding = Encoding::utf8;
    bool named = false; ///< "sep=" says the separator
};

Error aboutFile(const std::string& name, core::Message words, ErrorCode code = ErrorCode::badInput)
{
    return Error{code, std::move(words), name};
}

/// A text has a first line, where what is said of all of it stands.
Error aboutText(const std::string& name, core::Message words)
{
    core::Place where(name);
    where.line = 1;
    return Error{ErrorCode::badInput, std::move(words), std::move(where)};
}

std::string placeName(const std::string& name, const Table& table)
{
    return table.sheet.empty() ? name : name + "[" + table.sheet + "]";
}

std::string quotedNames(const std::vector<Table>& tables, const std::vector<std::size_t>& which)
{
    std::string list;
    for (const std::size_t i : which)
        list += (list.empty() ? "'" : ", '") + shownCell(tables[i].sheet) + "'";
    return list;
}

void chooseSheet(ChosenTable& chosen, const SheetOptions& options)
{
    for (std::size_t i = 0; i < chosen.tables.size(); ++i) {
        const Table& table = chosen.tables[i];
        const bool meant =
            options.sheet.empty() ? !table.hidden : core::sameWord(table.sheet, options.sheet);
        if (!meant)
            continue;
        if (!options.sheet.empty())
            chosen.table = i;
        if (!table.pivot && findHeader(table, options))
            chosen.withRuns.push_back(i);
    }
    if (chosen.withRuns.size() == 1)
        chosen.table = chosen.withRuns.front();
    if (chosen.table)
        chosen.header = findHeader(chosen.tables[*chosen.table], options);
}

Result<ChosenTable> chooseText(std::string_view bytes, const std::string& name,
                               const SheetOptions& options)
{
    const auto decoded = decodeText(bytes);
    if (!decoded)
        return aboutText(name, "is no text (it holds zero bytes); expected .xlsx, .ods, or text "
                               "with columns"_t);
    ChosenTable chosen;
    chosen.encoding = decoded->encoding;
    const auto named = namedSeparator(decoded->text);
    chosen.named = named.has_value();
    constexpr std::size_t kLooked = 80; // lines: a header stands among them
    const std::string_view head = std::string_view(decoded->text).substr(0, std::size_t{1} << 20);
    std::pair<HeaderScore, std::size_t> best;
    for (const char separator : {',', ';', '\t', '|'}) {
        if (named && separator != *named)
            continue;
        const Table table = tableOfText(head, separator, kLooked);
        const auto header = findHeader(table, options);
        const std::pair found(header ? scoreOf(table.rows[*header], options) : HeaderScore{},
                              table.rows.empty() ? 0 : table.rows.front().cells.size());
        if (named || found > best) {
            best = found;
            chosen.separator = separator;
        }
    }
    const bool found = best.first.enough();
    chosen.tables.push_back(found ? tableOfText(decoded->text, chosen.separator, kMostRows)
                                  : tableOfText(head, chosen.separator, kLooked));
    chosen.table = 0;
    chosen.header = findHeader(chosen.tables.front(), options);
    if (chosen.header)
        chosen.withRuns.push_back(0);
    return chosen;
}

Result<ChosenTable> chooseTable(std::string_view bytes, const std::string& name,
                                const SheetOptions& options)
{
    if (const auto why = whyNoSpreadsheet(bytes))
        return aboutText(name, *why);
    if (!isArchive(bytes)) {
        if (!options.sheet.empty())
            return aboutFile(
                name,
                message("is a text, which has no sheets; '{}' cannot be chosen"_t, options.sheet),
                ErrorCode::wrongUse);
        return chooseText(bytes, name, options);
    }
    auto tables = readWorkbook(bytes, name);
    if (!tables)
        return tables.error();
    ChosenTable chosen;
    chosen.tables = std::move(tables).take();
    if (chosen.tables.empty())
        return aboutFile(name, "has no sheet; expected one with runs, a line each"_t);
    chooseSheet(chosen, options);
    if (!options.sheet.empty() && !chosen.table) {
        std::vector<std::size_t> all(chosen.tables.size());
        for (std::size_t i = 0; i < all.size(); ++i)
            all[i] = i;
        return aboutFile(name,
                         message("has no sheet '{}'; expected one of {}"_t, options.sheet,
                                 quotedNames(chosen.tables, all)),
                         ErrorCode::wrongUse);
    }
    return chosen;
}

/// Why no table is the one.
Error noTable(const ChosenTable& chosen, const std::string& name)
{
    if (chosen.withRuns.size() > 1)
        return aboutFile(name, message("has {} sheets with runs: {}; expected to be told which: "
                                       "--sheet NAME"_t,
                                       chosen.withRuns.size(),
                                       quotedNames(chosen.tables, chosen.withRuns)));
    const Table* shown = nullptr;
    for (const Table& table : chosen.tables)
        if (!table.hidden && (!table.rows.empty() || table.pivot) && !shown)
            shown = &table;
    if (chosen.table)
        shown = &chosen.tables[*chosen.table];
    if (!shown || (shown->rows.empty() && !shown->pivot))
        return aboutFile(name, "is empty; expected a header line with the names of the columns"_t);
    core::Place where(placeName(name, *shown));
    where.line = shown->rows.empty() ? 1 : shown->rows.front().line;
    if (shown->pivot)
        return Error{ErrorCode::badInput,
                     "is a pivot table, which sums up; expected the runs themselves, a line each"_t,
                     std::move(where)};
    return Error{ErrorCode::badInput,
                 "is no header of a run sheet; expected names of columns like configuration, "
                 "direction, start, l_per_100km"_t,
                 std::move(where)};
}

std::optional<core::Message> encodingWords(Encoding encoding)
{
    switch (encoding) {
    case Encoding::utf16LittleEnd:
    case Encoding::utf16BigEnd: return core::Message("UTF-16 letters"_t);
    case Encoding::windows1252: return core::Message("Windows-1252 (Latin-1) letters"_t);
    case Encoding::utf8: break;
    }
    return std::nullopt;
}

std::string keyOf(const Row& header)
{
    std::string key = "sheet";
    for (const Cell& cell : header.cells)
        key += '\n' + std::string(csv::trimmedLines(cell.text));
    return key;
}

/// What a person said of a column that is not there.
std::optional<Error> lackingColumn(const SheetOptions& options, const Row& header,
                                   const std::string& where, std::vector<std::string>& lacking)
{
    for (const ColumnMapping& mapping : options.columns) {
        const bool there =
            std::any_of(header.cells.begin(), header.cells.end(), [&](const Cell& cell) {
                return core::sameWord(csv::trimmedLines(cell.text), mapping.column);
            });
        if (there)
            continue;
        if (options.lacking_columns) {
            lacking.push_back(mapping.column);
            continue;
        }
        core::Place place(where);
        place.line = header.line;
        return Error{
            ErrorCode::wrongUse,
            message("has no column {}; expected a name of its header"_t, inQuotes(mapping.column)),
            std::move(place)};
    }
    return std::nullopt;
}

/// A column needs a unit, and none is said: that is why there is no consumption.
void nameUnclearConsumption(const SheetLayout& layout, const Table& table, PreparedSheet& sheet)
{
    const bool known =
        std::any_of(layout.columns.begin(), layout.columns.end(), [](const LaidColumn& c) {
            return core::unitFromName(c.meaning.column) || c.meaning.column == "trace";
        });
    for (const LaidColumn& column : layout.columns) {
        const auto& candidates = column.meaning.candidates;
        const bool unclear = !column.meaning.known() && !candidates.empty() &&
                             core::unitFromName(candidates.front());
        if (known || !unclear)
            continue;
        std::string list;
        for (const std::string_view candidate : candidates)
            list += (list.empty() ? "" : ", ") + std::string(candidate);
        sheet.consumptionUnclear = true;
        sheet.faults.push_back(
            {table.rows[layout.header].line, canonicalColumn(column.written), 0,
             message("has no unit that is known; expected one of {}, as in --column '{}={}'"_t,
                     list, shownCell(column.written), candidates.front())});
    }
}

} // namespace

Result<PreparedSheet> prepareSheet(std::string_view bytes, const std::string& name,
                                   const SheetOptions& options)
{
    const auto chosen = chooseTable(bytes, name, options);
    if (!chosen)
        return chosen.error();
    if (!chosen.value().table || !chosen.value().header)
        return noTable(chosen.value(), name);
    const Table& table = chosen.value().tables[*chosen.value().table];
    const std::string where = placeName(name, table);
    if (table.stoppedAt > 0) {
        core::Place place(where);
        place.line = table.stoppedAt;
        return Error{ErrorCode::badInput,
                     message("is one line too many; expected at most {} lines, and {} runs"_t,
                             kMostRows, kMostRuns),
                     std::move(place)};
    }
    if (table.rows[*chosen.value().header].cells.size() > kMostColumns) {
        core::Place place(where);
        place.line = table.rows[*chosen.value().header].line;
        place.column_number = static_cast<std::int64_t>(kMostColumns) + 1;
        return Error{ErrorCode::badInput,
                     message("is one column too many; expected at most {}"_t, kMostColumns),
                     std::move(place)};
    }
    std::vector<std::string> lacking;
    if (auto fault = lackingColumn(options, table.rows[*chosen.value().header], where, lacking))
        return *fault;
    SheetLayout layout = layOut(table, *chosen.value().header, options, where);
    if (!layout.faults.empty())
        return inOne(std::move(layout.faults));
    auto prepared = SheetPreparer(table, layout, options, where).prepare(chosen.value().separator);
    if (!prepared)
        return prepared;
    PreparedSheet& sheet = prepared.value();
    sheet.lacking = std::move(lacking);
    nameUnclearConsumption(layout, table, sheet);
    if (const auto words = encodingWords(chosen.value().encoding)) {
        sheet.found.insert(sheet.found.begin(), *words);
        sheet.adapted = true;
    }
    sheet.adapted = sheet.adapted || chosen.value().named || chosen.value().separator == '|';
    return prepared;
}

Result<SheetPreview> previewSheet(std::string_view bytes, const std::string& name,
                                  const SheetOptions& options, std::size_t mostRows)
{
    const auto chosen = chooseTable(bytes, name, options);
    if (!chosen)
        return chosen.error();
    SheetPreview preview;
    for (const Table& table : chosen.value().tables)
        if (!table.sheet.empty())
            preview.sheets.push_back(table.sheet);
    preview.several_sheets = chosen.value().withRuns.size() > 1 && options.sheet.empty();
    const std::size_t at = chosen.value().table.value_or(
        chosen.value().withRuns.empty() ? 0 : chosen.value().withRuns.front());
    const Table& table = chosen.value().tables[at];
    preview.sheet = table.sheet;
    const auto header = chosen.value().table ? chosen.value().header : findHeader(table, options);
    preview.header_found = header.has_value();
    for (std::size_t i = header.value_or(0);
         i < table.rows.size() && preview.rows.size() < mostRows; ++i) {
        std::vector<std::string> cells;
        for (const Cell& cell : table.rows[i].cells)
            cells.push_back(cell.text);
        preview.rows.push_back(std::move(cells));
        preview.lines.push_back(table.rows[i].line);
    }
    if (!header)
        return preview;
    preview.header_line = table.rows[*header].line;
    const SheetLayout layout = layOut(table, *header, options, placeName(name, table));
    bool consumption = false;
    for (const LaidColumn& column : layout.columns) {
        const ColumnMeaning& meaning = column.meaning;
        preview.columns.push_back({column.at,
                                   column.written,
                                   meaning.column,
                                   meaning.converts() ? meaning.unit : std::string(),
                                   {meaning.candidates.begin(), meaning.candidates.end()}});
        consumption =
            consumption || core::unitFromName(meaning.column) || meaning.column == "trace";
    }
    for (const std::string_view needed : {"configuration", "direction", "start"})
        if (!layout.find(needed))
            preview.missing.emplace_back(needed);
    if (!consumption)
        preview.missing.emplace_back("l_per_100km");
    SheetPreparer preparer(table, layout, options, placeName(name, table));
    if (auto prepared = preparer.prepare(chosen.value().separator))
        preview.found = prepared.value().found;
    preview.unclear_date = preparer.unclearDate();
    preview.dates_unclear = !preview.unclear_date.empty();
    return preview;
}

bool isOrdinaryText(std::string_view bytes, const SheetOptions& options)
{
    const auto decoded = decodeText(bytes);
    if (!decoded)
        return false;
    const auto chosen = chooseText(bytes, {}, options);
    return decoded->encoding != Encoding::utf8 || (chosen && chosen.value().header);
}

std::string sheetHeaderKey(std::string_view bytes, const std::string& name,
                           const SheetOptions& options)
{
    const auto chosen = chooseTable(bytes, name, options);
    if (!chosen || !chosen.value().table || !chosen.value().header)
        return {};
    return keyOf(chosen.value().tables[*chosen.value().table].rows[*chosen.value().header]);
}

std::vector<std::string> possibleHeaderKeys(std::string_view bytes, const std::string& name,
                                            const SheetOptions& options)
{
    constexpr std::size_t kLooked = 60;
    std::vector<Table> tables;
    if (isArchive(bytes)) {
        if (auto read = readWorkbook(bytes, name))
            tables = std::move(read).take();
    } else if (const auto decoded = decodeText(bytes)) {
        for (const char separator : {',', ';', '\t', '|'})
            tables.push_back(
                tableOfText(std::string_view(decoded->text).substr(0, std::size_t{1} << 20),
                            separator, kLooked));
    }
    std::vector<std::string> keys;
    for (const Table& table : tables)
        if (options.sheet.empty() || core::sameWord(options.sheet, table.sheet))
            for (std::size_t i = 0; i < std::min(kLooked, table.rows.size()); ++i)
                keys.push_back(keyOf(table.rows[i]));
    return keys;
}

} // namespace bothways::storage
