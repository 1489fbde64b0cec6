// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/csv.h"
#include "storage/instruments/line_parser.h"
#include "storage/instruments/line_words.h"
#include "storage/loggers/trace_names.h"

#include <algorithm>
#include <deque>
#include <map>

namespace bothways::storage {
namespace {

/// Columns or pairs to channels.
struct LineColumn {
    std::vector<std::uint32_t> channels;
    bool mark = false;
    bool ownClock = false;
    std::optional<double> clockUnit_s;
    bool hadNumbers = false;
};

constexpr std::size_t kMostHeaders = 4; ///< that are remembered until numbers come
constexpr std::size_t kMostNames = 256; ///< columns, and names of pairs
constexpr std::size_t kLinesToFollow =
    3; ///< of another number of columns, where there is no header

/// Lines of numbers: with a header or without, or pairs of name and value.
class NumbersParser final : public LineParser {
public:
    explicit NumbersParser(FindChannels find) : m_find(std::move(find)) {}
    void take(std::string_view line, bool suspect, ParsedLine& parsed) override;
    core::Message notice() const override { return m_notice; }

private:
    void takePairs(ParsedLine& parsed);
    void takeCells(std::string_view line, ParsedLine& parsed);
    bool layoutFits(std::size_t cells, std::string_view line);
    bool adoptHeader(std::size_t cells);
    void setColumns(const std::vector<std::string>& names);
    LineColumn makeColumn(std::string_view name);
    static void put(const LineColumn& column, const TypedNumber& number, ParsedLine& parsed);

    FindChannels m_find;
    std::deque<std::vector<std::string>> m_headers; ///< since the last numbers, newest last
    std::vector<std::string> m_names;               ///< of the columns; empty: none yet
    bool m_hasHeader = false;
    std::vector<LineColumn> m_columns;
    std::map<std::string, LineColumn, std::less<>> m_pairs;
    std::size_t m_otherCount = 0, m_otherLines = 0; ///< of lines that do not fit the columns
    core::Message m_notice;
    LineWords m_words;
};

LineColumn NumbersParser::makeColumn(std::string_view name)
{
    LineColumn column;
    const std::string plain = plainName(name);
    const std::string unit = bracketUnit(name);
    if (plain == "mark") {
        column.mark = true;
        return column;
    }
    const TimeName time = timeName(name, unit);
    column.ownClock = time != TimeName::none && time != TimeName::date;
    if (time == TimeName::seconds)
        column.clockUnit_s = 1.0;
    else if (time == TimeName::milliseconds || plain == "ms")
        column.clockUnit_s = 1e-3;
    else if (time == TimeName::microseconds || plain == "us")
        column.clockUnit_s = 1e-6;
    column.ownClock = column.ownClock || column.clockUnit_s.has_value();
    const std::string_view known = channelUnit(plain);
    column.channels =
        m_find(name, known.empty() ? name : plain, known.empty() ? std::string_view(unit) : known);
    return column;
}

void NumbersParser::put(const LineColumn& column, const TypedNumber& number, ParsedLine& parsed)
{
    for (const std::uint32_t channel : column.channels)
        parsed.values.push_back({channel, number});
    if (column.ownClock && !parsed.own) {
        parsed.own = number.value();
        parsed.unit_s = column.clockUnit_s;
    }
}

void NumbersParser::take(std::string_view line, bool suspect, ParsedLine& parsed)
{
    parsed.clear();
    line = csv::trimmed(line);
    switch (m_words.read(line)) {
    case LineWords::Is::nothing: return;
    case LineWords::Is::garbage:
        parsed.is = suspect ? ParsedLine::Is::other : ParsedLine::Is::garbage;
        return;
    case LineWords::Is::words:
        m_headers.push_back(m_words.header());
        if (m_headers.size() > kMostHeaders)
            m_headers.pop_front();
        return;
    case LineWords::Is::pairs:
        if (!suspect)
            takePairs(parsed);
        return;
    case LineWords::Is::cells:
        if (!suspect)
            takeCells(line, parsed);
        return;
    }
}

void NumbersParser::takePairs(ParsedLine& parsed)
{
    parsed.is = ParsedLine::Is::values;
    for (const LineWords::Pair& pair : m_words.pairs()) {
        auto column = m_pairs.find(pair.name);
        if (column == m_pairs.end()) {
            if (m_pairs.size() >= kMostNames)
                continue;
            std::string name(pair.name);
            if (!pair.unit.empty())
                name += " [" + std::string(pair.unit) + "]";
            LineColumn made = makeColumn(name);
            if (made.channels.empty() && !pair.unit.empty()) // a rig names it without the unit
                made.channels = m_find(pair.name, pair.name, pair.unit);
            column = m_pairs.emplace(std::string(pair.name), std::move(made)).first;
        }
        if (column->second.mark)
            parsed.mark = pair.text;
        else if (pair.number)
            put(column->second, *pair.number, parsed);
    }
}

void NumbersParser::setColumns(const std::vector<std::string>& names)
{
    m_names = names;
    m_columns.clear();
    for (const std::string& name : names)
        m_columns.push_back(makeColumn(name));
    m_otherLines = 0;
}

/// The newest header with as many names as there are cells.
bool NumbersParser::adoptHeader(std::size_t cells)
{
    for (auto header = m_headers.rbegin(); header != m_headers.rend(); ++header) {
        if (header->size() != cells)
            continue;
        if (m_hasHeader && *header == m_names)
            return true;
        if (!m_names.empty())
            m_notice = core::message("its header changed to '{}'"_t, m_words.joined(*header));
        m_hasHeader = true;
        setColumns(*header);
        return true;
    }
    return false;
}

bool NumbersParser::layoutFits(std::size_t cells, std::string_view line)
{
    const bool adopted = !m_headers.empty() && adoptHeader(cells);
    m_headers.clear();
    if (adopted || cells == m_columns.size()) {
        m_otherLines = 0;
        return true;
    }
    if (m_hasHeader) {
        // "12,5" under one name is a number with a comma.
        if (m_words.readAs(line, m_columns.size()))
            return true;
        m_notice = core::message("lines of {} numbers under a header of {} names"_t, cells,
                                 m_columns.size());
        return false;
    }
    m_otherLines = cells == m_otherCount ? m_otherLines + 1 : 1;
    m_otherCount = cells;
    if (!m_names.empty() && m_otherLines < kLinesToFollow)
        return false;
    if (!m_names.empty())
        m_notice = core::message("its lines have {} numbers now"_t, cells);
    std::vector<std::string> names;
    for (std::size_t i = 1; i <= cells; ++i)
        names.push_back(std::to_string(i));
    setColumns(names);
    return true;
}

void NumbersParser::takeCells(std::string_view line, ParsedLine& parsed)
{
    if (m_words.cells().size() > kMostNames || !layoutFits(m_words.cells().size(), line)) {
        parsed.is = ParsedLine::Is::garbage;
        return;
    }
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        const LineWords::Cell& cell = m_words.cells()[i];
        if (m_columns[i].mark)
            parsed.mark = cell.text;
        else if (cell.number)
            put(m_columns[i], *cell.number, parsed);
        else if (m_columns[i].hadNumbers && !saysNoValue(cell.text)) {
            parsed.clear(); // bytes were lost or changed: nothing in the line can be trusted
            parsed.is = ParsedLine::Is::garbage;
            return;
        }
    }
    for (std::size_t i = 0; i < m_columns.size(); ++i)
        m_columns[i].hadNumbers |= m_words.cells()[i].number.has_value();
    parsed.is = ParsedLine::Is::values;
}

} // namespace

std::unique_ptr<LineParser> makeNumbersParser(FindChannels find)
{
    return std::make_unique<NumbersParser>(std::move(find));
}

} // namespace bothways::storage
