// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/spreadsheet/cell_values.h"
#include "storage/spreadsheet/workbook.h"
#include "storage/spreadsheet/xml_part.h"

namespace bothways::storage {
namespace {

using core::Error;
using core::Result;
using Event = XmlPull::Event;

constexpr long kMostLines = 10'000'000;
constexpr std::size_t kMostOdsColumns = 16'384;
constexpr std::size_t kMostSpans = 10'000;

/// Reads content.xml of ISO/IEC 26300-3: <table:table> with rows and cells, each of which may stand
/// for many.
class OdsReader {
public:
    OdsReader(Archive& archive, const std::string& content)
        : m_archive(archive), m_xml(xmlOf(content))
    {
    }
    Result<std::vector<Table>> read();

private:
    Table readTable();
    void readRow(Table& table);
    void readCell(Table& table, Row& row, std::size_t& column, bool covered);
    std::string readText();
    [[nodiscard]] Cell cellOf() const;
    /// Of a line or a column (19.749): "collapse" by hand, "filter" by a filter.
    [[nodiscard]] bool isHidden() const
    {
        const std::string visibility = attribute("visibility");
        return visibility == "collapse" || visibility == "filter";
    }
    [[nodiscard]] std::string attribute(std::string_view name) const
    {
        return std::string(m_xml.attribute(name).value_or(""));
    }

    Archive& m_archive;
    XmlPull m_xml;
    long m_line = 1;
};

/// What the attributes of a cell say (19.385); a text that stands within it is read afterwards.
Cell OdsReader::cellOf() const
{
    const std::string type = attribute("value-type");
    if (type == "float" || type == "currency")
        return cellOfNumber(attribute("value"), NumberShape::number, false);
    if (type == "percentage")
        return cellOfNumber(attribute("value"), NumberShape::percentage, false);
    if (type == "date")
        return cellOfDate(attribute("date-value"));
    if (type == "time")
        return cellOfDuration(attribute("time-value"));
    if (type == "boolean")
        return {CellKind::boolean, attribute("boolean-value")};
    if (type == "string")
        return {CellKind::text, attribute("string-value")};
    return m_xml.attribute("formula") ? Cell{CellKind::noValue, {}} : Cell{};
}

/// After the start of a cell, up to its end: the paragraphs of it, not those of a comment or of a
/// shape that lies over it.
std::string OdsReader::readText()
{
    const std::size_t depth = m_xml.depth();
    std::string text;
    bool first = true, inParagraph = false;
    std::size_t apart = 0; // depth of a comment or a shape; 0: in none
    for (Event event = m_xml.next(); event != Event::broken && event != Event::finished;
         event = m_xml.next()) {
        if (event == Event::end && m_xml.depth() < depth)
            break;
        if (event == Event::start && apart == 0) {
            const std::string& name = m_xml.name();
            if (name == "p" && m_xml.depth() == depth + 1) {
                text += first ? "" : "\n";
                first = false;
                inParagraph = true;
            } else if (name == "s") {
                const long count = wholeIn(m_xml.attribute("c")).value_or(1);
                text.append(static_cast<std::size_t>(std::clamp(count, 0L, 1000L)), ' ');
            } else if (name == "tab") {
                text += '\t';
            } else if (name == "line-break") {
                text += '\n';
            } else if (name != "span" && name != "a") {
                apart = m_xml.depth();
            }
        } else if (event == Event::end) {
            if (apart > 0 && m_xml.depth() < apart)
                apart = 0;
            else if (apart == 0 && m_xml.depth() == depth)
                inParagraph = false;
        } else if (event == Event::text && apart == 0 && inParagraph) {
            text += m_xml.text();
        }
    }
    return text;
}

void OdsReader::readCell(Table& table, Row& row, std::size_t& column, bool covered)
{
    Cell cell = covered ? Cell{} : cellOf();
    const std::string type = attribute("value-type");
    const long repeated =
        std::max(1L, wholeIn(m_xml.attribute("number-columns-repeated")).value_or(1));
    const long wide = std::clamp(wholeIn(m_xml.attribute("number-columns-spanned")).value_or(1), 1L,
                                 static_cast<long>(kMostOdsColumns));
    const long high =
        std::clamp(wholeIn(m_xml.attribute("number-rows-spanned")).value_or(1), 1L, kMostLines);
    if ((wide > 1 || high > 1) && table.merged.size() < kMostSpans)
        table.merged.push_back({static_cast<int>(m_line), static_cast<int>(m_line + high - 1),
                                column, column + static_cast<std::size_t>(wide) - 1});
    const bool hasFormula = m_xml.attribute("formula").has_value();
    std::string text = readText();
    if (!covered && (type == "string" || (type.empty() && cell.kind == CellKind::empty)) &&
        cell.text.empty())
        cell.text = std::move(text);
    if (cell.kind == CellKind::empty && !cell.text.empty())
        cell.kind = CellKind::text;
    // How a formula that failed is stored: as a text.
    if (hasFormula && (cell.text.starts_with('#') || cell.text.starts_with("Err:")))
        cell.kind = CellKind::error;
    for (long i = 0; i < repeated && column < kMostOdsColumns; ++i, ++column) {
        if (cell.empty()) {
            column += static_cast<std::size_t>(std::min(repeated, kMostLines));
            return;
        }
        row.cells.resize(column + 1);
        row.cells[column] = cell;
    }
}

void OdsReader::readRow(Table& table)
{
    const long repeated =
        std::clamp(wholeIn(m_xml.attribute("number-rows-repeated")).value_or(1), 1L, kMostLines);
    const std::size_t depth = m_xml.depth();
    Row row;
    row.hidden = isHidden();
    std::size_t column = 0;
    for (Event event = m_xml.next(); event != Event::broken && event != Event::finished;
         event = m_xml.next()) {
        if (event == Event::end && m_xml.depth() < depth)
            break;
        if (event != Event::start)
            continue;
        if (m_xml.name() == "table-cell" || m_xml.name() == "covered-table-cell")
            readCell(table, row, column, m_xml.name() == "covered-table-cell");
    }
    for (long i = 0; i < repeated && !row.empty() && table.stoppedAt == 0; ++i) {
        row.line = static_cast<int>(m_line + i);
        if (table.rows.size() == kMostRows)
            table.stoppedAt = row.line;
        else
            table.rows.push_back(row);
    }
    m_line = std::min(m_line + repeated, kMostLines);
}

/// After <table:table>, up to its end; a table within a cell or among shapes is none of ours.
Table OdsReader::readTable()
{
    Table table;
    table.sheet = attribute("name");
    m_line = 1;
    const std::size_t depth = m_xml.depth();
    std::size_t apart = 0, column = 0;
    for (Event event = m_xml.next(); event != Event::broken && event != Event::finished;
         event = m_xml.next()) {
        if (event == Event::end) {
            if (m_xml.depth() < depth)
                break;
            if (m_xml.depth() < apart)
                apart = 0;
        } else if (event == Event::start && apart == 0) {
            if (m_xml.name() == "table-column") {
                const long repeated =
                    std::clamp(wholeIn(m_xml.attribute("number-columns-repeated")).value_or(1), 1L,
                               kMostLines);
                const std::size_t last = column + static_cast<std::size_t>(repeated) - 1;
                if (isHidden() && table.hiddenColumns.size() < kMostHidden)
                    table.hiddenColumns.push_back({column, last});
                column = last + 1;
            } else if (m_xml.name() == "table-row" && table.stoppedAt == 0)
                readRow(table);
            else if (m_xml.name() == "shapes" || m_xml.name() == "table")
                apart = m_xml.depth();
        }
    }
    return table;
}

Result<std::vector<Table>> OdsReader::read()
{
    std::vector<Table> tables;
    std::vector<std::string> pivots; // "'Sheet 2'.A1:C9", where each lies
    bool isSpreadsheet = false;
    for (Event event = m_xml.next(); event != Event::finished; event = m_xml.next()) {
        if (event == Event::broken)
            return m_archive.fault(core::message("is damaged: its part '{}' has {} on line {}"_t,
                                                 "content.xml", m_xml.fault(),
                                                 static_cast<long long>(m_xml.line())));
        if (event != Event::start)
            continue;
        isSpreadsheet = isSpreadsheet || m_xml.name() == "spreadsheet";
        if (m_xml.name() == "data-pilot-table")
            pivots.push_back(attribute("target-range-address"));
        else if (m_xml.name() == "table" && isSpreadsheet && tables.size() < kMostSheets)
            tables.push_back(readTable());
    }
    if (!isSpreadsheet)
        return m_archive.fault("is an archive but no workbook; expected .xlsx, .ods, or text with "
                               "columns"_t);
    for (Table& table : tables)
        for (const std::string& pivot : pivots)
            table.pivot = table.pivot || pivot.starts_with(table.sheet + ".") ||
                          pivot.starts_with("$" + table.sheet + ".") ||
                          pivot.starts_with("'" + table.sheet + "'.") ||
                          pivot.starts_with("$'" + table.sheet + "'.");
    return tables;
}

/// Whether META-INF/manifest.xml says that a part is encrypted (ISO/IEC 26300-2, 3.4.1).
Result<bool> isProtected(Archive& archive)
{
    if (!archive.has("META-INF/manifest.xml"))
        return false;
    const auto text = archive.read("META-INF/manifest.xml");
    if (!text)
        return text.error();
    XmlPull xml = xmlOf(text.value());
    for (Event event = xml.next(); event != Event::finished && event != Event::broken;
         event = xml.next())
        if (event == Event::start && xml.name() == "encryption-data")
            return true;
    return false;
}

} // namespace

Result<std::vector<Table>> readOds(Archive& archive)
{
    const auto secret = isProtected(archive);
    if (!secret)
        return secret.error();
    if (secret.value())
        return archive.fault(needsPassword());
    const auto content = archive.read("content.xml");
    if (!content)
        return content.error();
    return OdsReader(archive, content.value()).read();
}

} // namespace bothways::storage
