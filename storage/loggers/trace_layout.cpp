// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/trace_layout.h"

#include "storage/bytes/csv.h"
#include "storage/loggers/trace_clock.h"
#include "storage/loggers/trace_names.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <set>

namespace bothways::storage {
namespace {

using core::Error;

constexpr std::size_t kSampleRows = 100;
constexpr std::size_t kMaxPreamble = 200; ///< lines before the header
/// In order of preference: a comma may be a decimal comma inside the others.
constexpr std::array<char, 4> kSeparators = {'\t', ';', '|', ','};

struct SampleRecord {
    std::int64_t line = 0;
    std::size_t begin = 0; ///< byte
    std::vector<std::string> cells;
};

bool isEither(std::string_view cell)
{
    return isNumber(cell, false) || isNumber(cell, true) || clockFormOf(cell).has_value();
}

/// What the bytes are, where they are clearly no text; empty where they may be text.
std::optional<core::Text<0>> binaryKind(std::string_view head)
{
    using namespace std::string_view_literals;
    if (head.starts_with("PK\x03\x04"sv))
        return "a spreadsheet or an archive"_t;
    if (head.starts_with("\xff\xfe"sv) || head.starts_with("\xfe\xff"sv))
        return "text in UTF-16"_t;
    if (head.starts_with("SQLite format 3"sv))
        return "a database"_t;
    const std::string_view start = head.substr(0, 4096);
    std::size_t controls = 0;
    for (const char c : start)
        controls += static_cast<unsigned char>(c) < 0x20 && c != '\n' && c != '\r' && c != '\t' &&
                    c != '\f' && c != '\x1a' && c != '\0';
    // A file that was never filled is all zeros; one cut by a power loss ends with them.
    const std::size_t zero = start.find('\0');
    const bool zeroInside = zero != std::string_view::npos &&
                            start.find_first_not_of('\0', zero) != std::string_view::npos;
    if (controls > start.size() / 100 || zeroInside || zero == 0)
        return "not text"_t;
    return std::nullopt;
}

std::vector<SampleRecord> records(std::string_view text, char separator, std::size_t offset,
                                  std::size_t most)
{
    std::vector<SampleRecord> result;
    csv::Reader reader(text, separator);
    while (result.size() < most) {
        auto record = reader.next();
        if (!record)
            break;
        SampleRecord sample{record->line, 0, {}};
        for (auto& field : record->fields)
            sample.cells.emplace_back(csv::trimmed(field.text));
        sample.begin = offset + record->begin;
        result.push_back(std::move(sample));
    }
    return result;
}

/// The number of fields that most lines have, two at least, and how many lines have it.
struct Shape {
    std::size_t fields = 0;
    std::size_t lines = 0;
};

Shape shapeOf(const std::vector<SampleRecord>& lines)
{
    std::map<std::size_t, std::size_t> counts;
    for (const auto& line : lines)
        ++counts[line.cells.size()];
    Shape best;
    for (const auto& [fields, count] : counts)
        if (fields >= 2 && count >= best.lines)
            best = {fields, count};
    return best;
}

/// Lines that are alike in shape: the longest tail counts, for a preamble has any shape.
char separatorOf(std::string_view text)
{
    char best = ',';
    double bestShare = 0.0;
    for (const char separator : kSeparators) {
        auto lines = records(text, separator, 0, kMaxPreamble + kSampleRows);
        if (lines.size() > 2) // the tail alone: it is data
            lines.erase(lines.begin(),
                        lines.begin() + static_cast<std::ptrdiff_t>(lines.size() / 2));
        const Shape shape = shapeOf(lines);
        const double share =
            lines.empty() ? 0.0
                          : static_cast<double>(shape.lines) / static_cast<double>(lines.size());
        if (share > bestShare + 0.2) {
            best = separator;
            bestShare = share;
        }
    }
    return best;
}

bool looksLikeData(const std::vector<std::string>& cells)
{
    std::size_t filled = 0, numbers = 0;
    for (const auto& cell : cells) {
        filled += !cell.empty();
        numbers += !cell.empty() && isEither(cell);
    }
    return numbers > 0 && numbers * 2 >= filled;
}

bool looksLikeUnits(const std::vector<std::string>& cells)
{
    bool any = false;
    for (const auto& cell : cells) {
        if (cell.size() > 16 || (!cell.empty() && isEither(cell)))
            return false;
        any = any || !cell.empty();
    }
    return any;
}

/// FNV-1a, 64 bits (Fowler, Noll, Vo). Over plain names, so that blanks and capitals do not matter.
std::string keyOf(const std::vector<std::string>& header)
{
    std::uint64_t hash = 0xcbf29ce484222325;
    const auto take = [&hash](char c) {
        hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3;
    };
    for (const auto& name : header) {
        for (const char c : name)
            take(c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c == ' ' ? '_' : c);
        take('\x1f');
    }
    return fmt::format("{:016x}", hash);
}

void nameColumns(TraceLayout& layout, const std::vector<std::string>& cells)
{
    std::set<std::string> used;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        std::string name = cells[i].empty() ? fmt::format("column {}", i + 1) : cells[i];
        for (int n = 2; !used.insert(name).second; ++n)
            name = fmt::format("{} {}", cells[i].empty() ? "column" : cells[i], n);
        layout.nameless.push_back(cells[i].empty());
        layout.units.push_back(bracketUnit(name));
        layout.header.push_back(std::move(name));
    }
    layout.headerKey = keyOf(layout.header);
}

/// Place of the header among the lines; nothing where there is none.
std::optional<std::size_t> headerAmong(const std::vector<SampleRecord>& lines)
{
    const std::size_t last = std::min(lines.size(), kMaxPreamble);
    for (std::size_t i = 0; i < last; ++i)
        for (const auto& cell : lines[i].cells)
            if (lines[i].cells.size() >= 2 && timeName(cell, bracketUnit(cell)) != TimeName::none &&
                !looksLikeData(lines[i].cells))
                return i;
    for (std::size_t i = 0; i + 1 < last; ++i)
        if (lines[i].cells.size() >= 2 && !looksLikeData(lines[i].cells) &&
            (looksLikeData(lines[i + 1].cells) ||
             (i + 2 < lines.size() && looksLikeUnits(lines[i + 1].cells) &&
              looksLikeData(lines[i + 2].cells))))
            return i;
    return std::nullopt;
}

/// A decimal comma: cells like "12,5" and none like "12.5".
bool hasDecimalComma(const TraceLayout& layout)
{
    std::size_t commas = 0, points = 0;
    for (const auto& row : layout.rows)
        for (const auto& cell : row) {
            const bool asPoint = isNumber(cell, false), asComma = isNumber(cell, true);
            commas += asComma && !asPoint;
            points += asPoint && cell.find('.') != std::string::npos;
        }
    return commas > points;
}

/// The head without the last line where that may be cut.
std::string_view wholeLines(std::string_view head, bool whole, char lineEnd)
{
    head = head.substr(0, head.find('\0')); // zeros at the end: space never filled
    const std::size_t end = head.rfind(lineEnd);
    return whole || end == std::string_view::npos ? head : head.substr(0, end + 1);
}

/// What cannot be a recording in CSV, whatever its lines say.
std::optional<Error> refuseHead(std::string_view head, bool whole, std::string_view name,
                                char lineEnd)
{
    if (head.empty())
        return faultAt(name, 0, "is empty; expected a recording in CSV"_t);
    if (const auto kind = binaryKind(head))
        return faultAt(
            name, 0,
            core::message("is {}; expected a recording in CSV, plain text in UTF-8"_t, *kind));
    if (whole || head.find(lineEnd) != std::string_view::npos)
        return std::nullopt;
    const auto separators = static_cast<std::size_t>(std::count_if(
        head.begin(), head.end(), [](char c) { return c == ',' || c == ';' || c == '\t'; }));
    return faultAt(name, 1,
                   separators > kMaxTraceColumns
                       ? core::message("more than {} columns; expected {} at most"_t, separators,
                                       kMaxTraceColumns)
                       : core::message("a line of more than {} MB; expected a recording in CSV"_t,
                                       kTraceHeadSize >> 20));
}

/// "sep=;" as spreadsheets write it. @return  the separator, where the text begins so
std::optional<char> declaredSeparator(std::string_view text)
{
    if (text.size() < 6 || !text.starts_with("sep=") || (text[5] != '\r' && text[5] != '\n') ||
        std::find(kSeparators.begin(), kSeparators.end(), text[4]) == kSeparators.end())
        return std::nullopt;
    return text[4];
}

/// The line of units, where there is one, and the first rows.
/// @param data  place of the line after the header
void takeRows(TraceLayout& layout, std::vector<SampleRecord>& lines, std::size_t data)
{
    if (data + 1 < lines.size() && looksLikeUnits(lines[data].cells) &&
        looksLikeData(lines[data + 1].cells)) {
        const auto& units = lines[data].cells;
        for (std::size_t i = 0; i < std::min(layout.header.size(), units.size()); ++i)
            if (!units[i].empty())
                layout.units[i] = units[i];
        ++data;
    }
    if (data >= lines.size())
        return;
    layout.dataOffset = lines[data].begin;
    layout.dataLine = lines[data].line;
    for (; data < lines.size() && layout.rows.size() < kSampleRows; ++data) {
        layout.rows.push_back(std::move(lines[data].cells));
        layout.rowLines.push_back(lines[data].line);
    }
    layout.decimalComma = hasDecimalComma(layout);
}

} // namespace

core::Result<TraceLayout> layoutOf(std::string_view head, bool whole, std::string_view name)
{
    TraceLayout layout;
    if (head.find('\n') == std::string_view::npos && head.find('\r') != std::string_view::npos)
        layout.lineEnd = '\r';
    if (const auto refused = refuseHead(head, whole, name, layout.lineEnd))
        return *refused;
    std::size_t start = head.starts_with("\xef\xbb\xbf") ? 3 : 0;
    const auto declared = declaredSeparator(head.substr(start));
    if (declared)
        start = std::min(head.find(layout.lineEnd, start), head.size() - 1) + 1;
    const std::string_view kept = wholeLines(head, whole, layout.lineEnd);
    const std::string_view text = kept.substr(std::min(start, kept.size()));
    layout.separator = declared.value_or(separatorOf(text));
    auto lines = records(text, layout.separator, start, kMaxPreamble + kSampleRows);
    for (auto& line : lines)
        line.line += declared ? 1 : 0;

    const auto header = headerAmong(lines);
    if (!header)
        return faultAt(
            name, lines.empty() ? 0 : lines.front().line,
            "no header line with a column of time; expected names like 'time_s' (seconds) or "
            "'time' (date and time), and channels"_t);
    layout.headerLine = lines[*header].line;
    const std::size_t columns = lines[*header].cells.size();
    if (columns > kMaxTraceColumns)
        return faultAt(
            name, layout.headerLine,
            core::message("{} columns; expected {} at most"_t, columns, kMaxTraceColumns));
    nameColumns(layout, lines[*header].cells);
    takeRows(layout, lines, *header + 1);
    if (layout.rows.empty())
        return faultAt(name, layout.headerLine, "a header and no rows; expected a recording"_t);
    return layout;
}

} // namespace bothways::storage
