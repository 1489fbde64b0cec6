// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/spreadsheet/cell_values.h"
#include "storage/spreadsheet/workbook.h"
#include "storage/spreadsheet/xml_part.h"

#include <map>

namespace bothways::storage {
namespace {

using core::Error;
using core::Result;
using Event = XmlPull::Event;

constexpr std::size_t kMostStrings = 1'000'000;
constexpr std::size_t kMostStyles = 100'000;
constexpr std::size_t kMostMerged = 10'000;
constexpr std::size_t kMostXlsxColumns = 16'384;

/// A relationship of a part (ISO/IEC 29500-2): where it leads, and what that is.
struct Relation {
    std::string type, target;
};

/// "xl/worksheets/sheet1.xml", from "../worksheets/sheet1.xml" of a part in "xl/other/".
std::string resolved(const std::string& part, std::string_view target)
{
    if (target.starts_with('/'))
        return std::string(target.substr(1));
    std::string folder = part.substr(0, part.rfind('/') == std::string::npos ? 0 : part.rfind('/'));
    while (target.starts_with("../") || target.starts_with("./")) {
        if (target.starts_with("../"))
            folder.resize(folder.rfind('/') == std::string::npos ? 0 : folder.rfind('/'));
        target.remove_prefix(target.find('/') + 1);
    }
    return folder.empty() ? std::string(target) : folder + "/" + std::string(target);
}

/// Column and line of "AB12".
std::optional<std::pair<std::size_t, int>> placeOfReference(std::string_view reference)
{
    std::size_t column = 0, i = 0;
    for (; i < reference.size() && reference[i] >= 'A' && reference[i] <= 'Z'; ++i) {
        column = column * 26 + static_cast<std::size_t>(reference[i] - 'A') + 1;
        if (column > kMostXlsxColumns)
            return std::nullopt;
    }
    const auto line = wholeIn(reference.substr(i));
    if (column == 0 || !line || *line < 1 || *line > 2'000'000)
        return std::nullopt;
    return std::pair(column - 1, static_cast<int>(*line));
}

class XlsxReader {
public:
    explicit XlsxReader(Archive& archive) : m_archive(archive) {}
    Result<std::vector<Table>> read();

private:
    struct Sheet {
        std::string name, part;
        bool hidden = false;
    };
    Error broken(const std::string& part, const XmlPull& xml) const
    {
        return m_archive.fault(core::message("is damaged: its part '{}' has {} on line {}"_t, part,
                                             xml.fault(), static_cast<long long>(xml.line())));
    }
    Result<std::map<std::string, Relation>> relations(const std::string& part);
    std::optional<Error> readBook(const std::string& part);
    std::optional<Error> readStrings(const std::string& part);
    std::optional<Error> readStyles(const std::string& part);
    Result<Table> readSheet(const Sheet& sheet);
    bool readRow(XmlPull& xml, Table& table);
    Cell readCell(XmlPull& xml);
    [[nodiscard]] Cell cellOf(std::string_view type, const std::string& value, bool hasValue,
                              bool hasFormula, std::size_t style) const;

    Archive& m_archive;
    std::vector<Sheet> m_sheets;
    std::vector<std::string> m_strings;
    std::vector<NumberShape> m_styles; ///< of cellXfs
    bool m_from1904 = false;
    int m_line = 0;
    std::size_t m_column = 0;
};

Result<std::map<std::string, Relation>> XlsxReader::relations(const std::string& part)
{
    const std::size_t slash = part.rfind('/');
    const std::size_t name = slash == std::string::npos ? 0 : slash + 1;
    const std::string file = part.substr(0, name) + "_rels/" + part.substr(name) + ".rels";
    std::map<std::string, Relation> found;
    if (!m_archive.has(file))
        return found;
    const auto text = m_archive.read(file);
    if (!text)
        return text.error();
    XmlPull xml = xmlOf(text.value());
    for (Event event = xml.next(); event != Event::finished; event = xml.next()) {
        if (event == Event::broken)
            return broken(file, xml);
        if (event != Event::start || xml.name() != "Relationship")
            continue;
        const std::string type(xml.attribute("Type").value_or(""));
        found.emplace(xml.attribute("Id").value_or(""),
                      Relation{type.substr(type.rfind('/') + 1),
                               resolved(part, xml.attribute("Target").value_or(""))});
    }
    return found;
}

std::optional<Error> XlsxReader::readBook(const std::string& part)
{
    const auto leads = relations(part);
    if (!leads)
        return leads.error();
    const auto text = m_archive.read(part);
    if (!text)
        return text.error();
    XmlPull xml = xmlOf(text.value());
    for (Event event = xml.next(); event != Event::finished; event = xml.next()) {
        if (event == Event::broken)
            return broken(part, xml);
        if (event != Event::start)
            continue;
        if (xml.name() == "workbookPr") {
            const auto from = xml.attribute("date1904").value_or("0");
            m_from1904 = from == "1" || from == "true";
        } else if (xml.name() == "sheet" && m_sheets.size() < kMostSheets) {
            const auto at = leads.value().find(std::string(xml.attribute("id").value_or("")));
            if (at != leads.value().end() && at->second.type == "worksheet")
                m_sheets.push_back({std::string(xml.attribute("name").value_or("")),
                                    at->second.target,
                                    xml.attribute("state").value_or("visible") != "visible"});
        }
    }
    for (const auto& [id, relation] : leads.value()) {
        std::optional<Error> error;
        if (relation.type == "sharedStrings" && m_archive.has(relation.target))
            error = readStrings(relation.target);
        else if (relation.type == "styles" && m_archive.has(relation.target))
            error = readStyles(relation.target);
        if (error)
            return error;
    }
    return std::nullopt;
}

/// Texts by number (18.4.8); of a rich one its runs, without what says how it sounds (rPh).
std::optional<Error> XlsxReader::readStrings(const std::string& part)
{
    const auto text = m_archive.read(part);
    if (!text)
        return text.error();
    XmlPull xml = xmlOf(text.value());
    int inSound = 0;
    bool inText = false;
    for (Event event = xml.next(); event != Event::finished; event = xml.next()) {
        if (event == Event::broken)
            return broken(part, xml);
        if (event == Event::start && xml.name() == "si") {
            if (m_strings.size() == kMostStrings)
                return m_archive.fault(core::message("holds more than {} texts; expected a run "
                                                     "sheet"_t,
                                                     kMostStrings));
            m_strings.emplace_back();
        } else if (event == Event::text) {
            if (inText && inSound == 0 && !m_strings.empty())
                m_strings.back() += xml.text();
        } else {
            const bool start = event == Event::start;
            if (xml.name() == "rPh")
                inSound += start ? 1 : -1;
            else if (xml.name() == "t")
                inText = start;
        }
    }
    return std::nullopt;
}

std::optional<Error> XlsxReader::readStyles(const std::string& part)
{
    const auto text = m_archive.read(part);
    if (!text)
        return text.error();
    XmlPull xml = xmlOf(text.value());
    std::map<long, NumberShape> own;
    bool inCells = false;
    for (Event event = xml.next(); event != Event::finished; event = xml.next()) {
        if (event == Event::broken)
            return broken(part, xml);
        if (event == Event::end && xml.name() == "cellXfs")
            inCells = false;
        if (event != Event::start)
            continue;
        if (xml.name() == "cellXfs")
            inCells = true;
        else if (xml.name() == "numFmt")
            own.emplace(wholeIn(xml.attribute("numFmtId")).value_or(-1),
                        shapeOfCode(xml.attribute("formatCode").value_or("")));
        else if (xml.name() == "xf" && inCells && m_styles.size() < kMostStyles) {
            const long format = wholeIn(xml.attribute("numFmtId")).value_or(0);
            const auto known = own.find(format);
            m_styles.push_back(known != own.end() ? known->second
                                                  : shapeOfBuiltIn(static_cast<int>(format)));
        }
    }
    return std::nullopt;
}

/// Cell types of 18.18.11.
Cell XlsxReader::cellOf(std::string_view type, const std::string& value, bool hasValue,
                        bool hasFormula, std::size_t style) const
{
    if (!hasValue)
        return {hasFormula ? CellKind::noValue : CellKind::empty, {}};
    if (type == "s") {
        const auto at = wholeIn(value);
        if (!at || *at < 0 || static_cast<std::size_t>(*at) >= m_strings.size())
            return {CellKind::error, "#REF!"};
        const std::string& text = m_strings[static_cast<std::size_t>(*at)];
        return {text.empty() ? CellKind::empty : CellKind::text, text};
    }
    if (type == "b")
        return {CellKind::boolean, value == "1" ? "true" : "false"};
    if (type == "e")
        return {CellKind::error, value};
    if (type == "d")
        return cellOfDate(value);
    if (type == "str" || type == "inlineStr")
        return {value.empty() ? CellKind::empty : CellKind::text, value};
    const NumberShape shape = style < m_styles.size() ? m_styles[style] : NumberShape::number;
    return value.empty() ? Cell{} : cellOfNumber(value, shape, m_from1904);
}

/// After <c>, up to its end.
Cell XlsxReader::readCell(XmlPull& xml)
{
    const std::string type(xml.attribute("t").value_or("n"));
    const auto style =
        static_cast<std::size_t>(std::max(0L, wholeIn(xml.attribute("s")).value_or(0)));
    const std::size_t depth = xml.depth();
    std::string value;
    bool hasValue = false, hasFormula = false, inValue = false;
    int inSound = 0;
    for (Event event = xml.next(); event != Event::broken && event != Event::finished;
         event = xml.next()) {
        if (event == Event::text) {
            if (inValue && inSound == 0)
                value += xml.text();
            continue;
        }
        const bool start = event == Event::start;
        if (!start && xml.depth() < depth)
            break;
        if (xml.name() == "rPh")
            inSound += start ? 1 : -1;
        else if (xml.name() == "v" || (xml.name() == "t" && type == "inlineStr")) {
            inValue = start;
            hasValue = true;
        } else if (xml.name() == "f")
            hasFormula = true;
    }
    return cellOf(type, value, hasValue, hasFormula, style);
}

/// An attribute of type boolean (22.9.2.19 has its words).
bool isTrue(std::optional<std::string_view> attribute)
{
    return attribute == "1" || attribute == "true";
}

/// After <row>, up to its end. @return false: enough
bool XlsxReader::readRow(XmlPull& xml, Table& table)
{
    const long given = wholeIn(xml.attribute("r")).value_or(m_line + 1);
    m_line = given > 0 && given < 2'000'000 ? static_cast<int>(given) : m_line + 1;
    m_column = 0;
    Row row;
    row.line = m_line;
    row.hidden = isTrue(xml.attribute("hidden"));
    const std::size_t depth = xml.depth();
    for (Event event = xml.next(); event != Event::broken && event != Event::finished;
         event = xml.next()) {
        if (event == Event::end && xml.depth() < depth)
            break;
        if (event != Event::start || xml.name() != "c")
            continue;
        if (const auto at = placeOfReference(xml.attribute("r").value_or("")))
            m_column = at->first;
        Cell cell = readCell(xml);
        if (!cell.empty() && m_column < kMostXlsxColumns) {
            row.cells.resize(std::max(row.cells.size(), m_column + 1));
            row.cells[m_column] = std::move(cell);
        }
        ++m_column;
    }
    if (row.empty())
        return true;
    if (table.rows.size() == kMostRows) {
        table.stoppedAt = row.line;
        return false;
    }
    table.rows.push_back(std::move(row));
    return true;
}

Result<Table> XlsxReader::readSheet(const Sheet& sheet)
{
    const auto leads = relations(sheet.part);
    if (!leads)
        return leads.error();
    const auto text = m_archive.read(sheet.part);
    if (!text)
        return text.error();
    Table table;
    table.sheet = sheet.name;
    table.hidden = sheet.hidden;
    for (const auto& [id, relation] : leads.value())
        table.pivot = table.pivot || relation.type == "pivotTable";
    m_line = 0;
    XmlPull xml = xmlOf(text.value());
    for (Event event = xml.next(); event != Event::finished; event = xml.next()) {
        if (event == Event::broken)
            return broken(sheet.part, xml);
        if (event != Event::start)
            continue;
        if (xml.name() == "row" && !readRow(xml, table))
            return table;
        if (xml.name() == "col" && isTrue(xml.attribute("hidden")) &&
            table.hiddenColumns.size() < kMostHidden) { // 18.3.1.13: numbers from 1
            const long first = wholeIn(xml.attribute("min")).value_or(0);
            const long last = wholeIn(xml.attribute("max")).value_or(0);
            if (first >= 1 && last >= first)
                table.hiddenColumns.push_back(
                    {static_cast<std::size_t>(first - 1), static_cast<std::size_t>(last - 1)});
        }
        if (xml.name() == "mergeCell" && table.merged.size() < kMostMerged) {
            const std::string range(xml.attribute("ref").value_or(""));
            const std::size_t colon = std::min(range.find(':'), range.size());
            const auto from = placeOfReference(std::string_view(range).substr(0, colon));
            const auto to =
                placeOfReference(std::string_view(range).substr(std::min(colon + 1, range.size())));
            if (from && to)
                table.merged.push_back({from->second, to->second, from->first, to->first});
        }
    }
    return table;
}

Result<std::vector<Table>> XlsxReader::read()
{
    const auto leads = relations("");
    if (!leads)
        return leads.error();
    std::string book;
    for (const auto& [id, relation] : leads.value())
        if (relation.type == "officeDocument")
            book = relation.target;
    if (book.empty() || !m_archive.has(book))
        return m_archive.fault("is an archive but no workbook; expected .xlsx, .ods, or text with "
                               "columns"_t);
    if (auto error = readBook(book))
        return *error;
    std::vector<Table> tables;
    for (const Sheet& sheet : m_sheets) {
        auto table = readSheet(sheet);
        if (!table)
            return table.error();
        tables.push_back(std::move(table).take());
    }
    return tables;
}

} // namespace

Result<std::vector<Table>> readXlsx(Archive& archive)
{
    return XlsxReader(archive).read();
}

} // namespace bothways::storage
