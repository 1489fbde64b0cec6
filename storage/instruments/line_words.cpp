// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/line_words.h"

#include "core/base/number_text.h"
#include "core/base/utf8.h"
#include "storage/bytes/csv.h"

#include <algorithm>
#include <set>

namespace bothways::storage {
namespace {

constexpr char kBlank = ' ';

bool isBlankChar(char c)
{
    return c == ' ' || c == '\t';
}
bool beginsName(char c)
{
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_' || (c & 0x80) != 0;
}

/// Bytes that no text has. (Bytes over 127 are in units and names: "°", "Öl".)
bool hasNoTextBytes(std::string_view line)
{
    return std::any_of(line.begin(), line.end(), [](char c) {
        return (static_cast<unsigned char>(c) < 0x20 && c != '\t') || c == 0x7f;
    });
}

/// Every comma stands between digits: "12,5 13,75".
bool commasAreDecimal(std::string_view line)
{
    for (std::size_t i = 0; i < line.size(); ++i)
        if (line[i] == ',' && (i == 0 || i + 1 == line.size() || !core::isDigit(line[i - 1]) ||
                               !core::isDigit(line[i + 1])))
            return false;
    return true;
}

struct Separation {
    char separator;
    bool decimalComma;
};

Separation separationOf(std::string_view line)
{
    const bool comma = line.find(',') != std::string_view::npos;
    const bool point = line.find('.') != std::string_view::npos;
    for (const char separator : {';', '\t'})
        if (line.find(separator) != std::string_view::npos)
            return {separator, comma && !point};
    if (!comma)
        return {kBlank, false};
    if (!point && line.find(kBlank) != std::string_view::npos && commasAreDecimal(line))
        return {kBlank, true};
    return {',', false};
}

/// Takes the next cell off the front.
std::string_view takeCell(std::string_view& line, char separator, bool& more)
{
    const std::size_t end = separator == kBlank ? line.find_first_of(" \t") : line.find(separator);
    std::string_view cell = line.substr(0, end);
    more = end != std::string_view::npos;
    line.remove_prefix(more ? end + 1 : line.size());
    if (separator == kBlank)
        line.remove_prefix(std::min(line.find_first_not_of(" \t"), line.size()));
    cell = csv::trimmed(cell);
    if (cell.size() >= 2 && cell.front() == '"' && cell.back() == '"')
        cell = cell.substr(1, cell.size() - 2);
    return cell;
}

std::string_view withoutHash(std::string_view line)
{
    while (!line.empty() && (line.front() == '#' || isBlankChar(line.front())))
        line.remove_prefix(1);
    return line;
}

} // namespace

LineWords::Is LineWords::read(std::string_view line)
{
    m_pairs.clear();
    m_cells.clear();
    if (line.starts_with("\xef\xbb\xbf"))
        line.remove_prefix(3);
    if (csv::isBlankText(line))
        return Is::nothing;
    // At a wrong speed there is hardly a byte that is text.
    if (hasNoTextBytes(line) || !core::isUtf8(line))
        return Is::garbage;
    if (line.front() == '#') {
        readHeader(withoutHash(line));
        return m_header.empty() ? Is::nothing : Is::words;
    }
    if (readPairs(line))
        return Is::pairs;
    const Separation separation = separationOf(line);
    readCells(line, separation.separator, separation.decimalComma);
    if (anyNumber())
        return Is::cells;
    readHeader(line);
    return m_header.empty() ? Is::nothing : Is::words;
}

bool LineWords::readAs(std::string_view line, std::size_t cells)
{
    for (const Separation way : {Separation{kBlank, true}, {';', true}, {',', false}}) {
        readCells(line, way.separator, way.decimalComma);
        if (m_cells.size() == cells && anyNumber())
            return true;
    }
    return false;
}

bool LineWords::anyNumber() const
{
    return std::any_of(m_cells.begin(), m_cells.end(),
                       [](const Cell& cell) { return cell.number.has_value(); });
}

void LineWords::readCells(std::string_view line, char separator, bool decimalComma)
{
    m_cells.clear();
    for (bool more = true; more;) {
        Cell cell;
        cell.text = takeCell(line, separator, more);
        cell.number = typedNumber(cell.text, decimalComma);
        m_cells.push_back(cell);
    }
}

/// Pairs alone, with units behind the values or without; a word that belongs to nothing makes it
/// another kind of line.
bool LineWords::readPairs(std::string_view line)
{
    const bool decimalComma =
        line.find(';') != std::string_view::npos || line.find(", ") == std::string_view::npos;
    std::size_t at = 0;
    const auto skip = [&](std::string_view chars) {
        at = std::min(line.find_first_not_of(chars, at), line.size());
    };
    while (skip(" \t,;"), at < line.size()) {
        if (!beginsName(line[at]))
            return false;
        const std::size_t nameEnd = std::min(line.find_first_of(" \t,;=:", at), line.size());
        Pair pair;
        pair.name = line.substr(at, nameEnd - at);
        at = nameEnd;
        skip(" \t");
        if (at == line.size() || (line[at] != '=' && line[at] != ':')) {
            // A word that is no name: the unit of the value before it.
            if (m_pairs.empty() || !m_pairs.back().unit.empty() || !m_pairs.back().number)
                return false;
            m_pairs.back().unit = pair.name;
            continue;
        }
        ++at;
        skip(" \t");
        std::size_t valueEnd = std::min(line.find_first_of(" \t;", at), line.size());
        // A comma ends the value, unless it is a decimal one: "2,5 w=…", never "2,w=…".
        for (std::size_t i = at; i < valueEnd; ++i)
            if (line[i] == ',' && !(decimalComma && i > at && core::isDigit(line[i - 1]) &&
                                    i + 1 < valueEnd && core::isDigit(line[i + 1]))) {
                valueEnd = i;
                break;
            }
        pair.text = line.substr(at, valueEnd - at);
        at = valueEnd;
        const std::size_t digits =
            std::min(pair.text.find_first_not_of("+-0123456789.,"), pair.text.size());
        const bool comma = pair.text.substr(0, digits).find(',') != std::string_view::npos;
        pair.number = typedNumber(pair.text, comma);
        if (!pair.number && digits > 0) { // "23.5C"
            pair.number = typedNumber(pair.text.substr(0, digits), comma);
            if (pair.number)
                pair.unit = pair.text.substr(digits);
        }
        if (!pair.number && !saysNoValue(pair.text) && pair.name != "mark")
            return false;
        m_pairs.push_back(pair);
    }
    return !m_pairs.empty();
}

void LineWords::readHeader(std::string_view line)
{
    m_header.clear();
    if (line.starts_with('[') || line.starts_with('(')) // units under the names
        return;
    char separator = kBlank;
    for (const char candidate : {';', '\t', ','})
        if (separator == kBlank && line.find(candidate) != std::string_view::npos)
            separator = candidate;
    std::set<std::string, std::less<>> seen;
    for (bool more = !line.empty(); more;) {
        std::string name(takeCell(line, separator, more));
        // "rpm [1/min]" of a header with blanks between its names
        if (separator == kBlank && !m_header.empty() && !name.empty() &&
            (name.front() == '[' || name.front() == '(')) {
            m_header.back() += ' ' + name;
            continue;
        }
        if (name.empty())
            name = std::to_string(m_header.size() + 1);
        const std::string first = name;
        for (int i = 2; !seen.insert(name).second; ++i)
            name = first + '_' + std::to_string(i);
        m_header.push_back(std::move(name));
    }
}

std::string LineWords::joined(const std::vector<std::string>& names)
{
    std::string text;
    for (const std::string& name : names)
        text += (text.empty() ? "" : ", ") + name;
    return text;
}

} // namespace bothways::storage
