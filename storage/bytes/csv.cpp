// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/csv.h"

#include <algorithm>

namespace bothways::storage::csv {
namespace {

constexpr bool isBlank(char c)
{
    return c == ' ' || c == '\t';
}

constexpr bool isLineBreak(char c)
{
    return c == '\n' || c == '\r';
}

/// Line ends in `text`: "\n", "\r\n" and a lone "\r" are one each.
int countLineEnds(std::string_view text)
{
    int count = 0;
    for (std::size_t i = 0; i < text.size(); ++i)
        if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.size() || text[i + 1] != '\n')))
            ++count;
    return count;
}

} // namespace

bool isBlankText(std::string_view text)
{
    return trimmedLines(text).empty();
}

bool Reader::atLineEnd() const
{
    return m_at == m_text.size() || isLineBreak(m_text[m_at]);
}

bool Reader::atFieldEnd() const
{
    return atLineEnd() || m_text[m_at] == m_separator;
}

bool Reader::takeLineEnd()
{
    if (m_at == m_text.size())
        return false;
    if (m_text[m_at] == '\r' && m_at + 1 < m_text.size() && m_text[m_at + 1] == '\n')
        ++m_at;
    ++m_at;
    ++m_line;
    return true;
}

bool Reader::skipCommentOrBlankLine()
{
    if (m_at == m_text.size())
        return false;
    const std::size_t end = std::min(m_text.find_first_of("\r\n", m_at), m_text.size());
    const std::string_view line = m_text.substr(m_at, end - m_at);
    const bool isComment = m_comments == Comments::skipped && line.starts_with('#');
    if (!isComment && !std::all_of(line.begin(), line.end(), [](char c) { return c == ' '; }))
        return false;
    m_at = end;
    takeLineEnd();
    return true;
}

void Reader::takeQuoted(Record& record, Field& field)
{
    field.quoted = true;
    ++m_at;
    while (true) {
        const std::size_t quote = m_text.find('"', m_at);
        if (quote == std::string_view::npos) {
            m_line += countLineEnds(m_text.substr(m_at));
            m_at = m_text.size();
            record.fault = RecordFault::quoteNeverCloses;
            record.faultField = record.fields.size();
            return;
        }
        field.text += m_text.substr(m_at, quote - m_at);
        m_line += countLineEnds(m_text.substr(m_at, quote - m_at));
        m_at = quote + 1;
        if (m_at == m_text.size() || m_text[m_at] != '"')
            break;
        field.text += '"';
        ++m_at;
    }
    const std::size_t after = m_at;
    while (!atFieldEnd())
        ++m_at;
    if (!trimmed(m_text.substr(after, m_at - after)).empty() && record.fault == RecordFault::none) {
        record.fault = RecordFault::textAfterQuote;
        record.faultField = record.fields.size();
    }
}

void Reader::takeField(Record& record)
{
    Field field;
    const std::size_t start = m_at;
    while (!atFieldEnd() && isBlank(m_text[m_at]))
        ++m_at;
    if (!atFieldEnd() && m_text[m_at] == '"') {
        takeQuoted(record, field);
    } else {
        while (!atFieldEnd())
            ++m_at;
        field.text = trimmed(m_text.substr(start, m_at - start));
    }
    record.fields.push_back(std::move(field));
}

std::optional<Record> Reader::next()
{
    while (skipCommentOrBlankLine()) {
    }
    if (m_at == m_text.size())
        return std::nullopt;
    Record record;
    record.line = m_line;
    record.begin = m_at;
    takeField(record);
    while (!atLineEnd()) {
        if (record.fields.size() == m_mostFields) {
            record.fault = RecordFault::tooManyFields;
            record.faultField = m_mostFields;
            m_at = std::min(m_text.find_first_of("\r\n", m_at), m_text.size());
            break;
        }
        ++m_at; // the separator
        takeField(record);
    }
    takeLineEnd();
    return record;
}

std::string guarded(std::string_view text)
{
    const std::string_view shown = trimmed(text);
    bool formula = text.starts_with('\t') || text.starts_with('\r') || text.starts_with('\n');
    for (const std::string_view sign : {"=", "+", "-", "@", "\xEF\xBC\x9D", "\xEF\xBC\x8B",
                                        "\xEF\xBC\x8D", "\xEF\xBC\xA0"}) // U+FF1D and the like
        formula = formula || shown.starts_with(sign);
    return (formula ? "'" : "") + std::string(text);
}

void appendField(std::string& out, std::string_view text, bool firstOfLine)
{
    const bool blankEnds = !text.empty() && (isBlank(text.front()) || isBlank(text.back()));
    const bool comment = firstOfLine && text.starts_with('#');
    if (!blankEnds && !comment && text.find_first_of(",;\t\"\r\n") == std::string_view::npos) {
        out += text;
        return;
    }
    out += '"';
    for (const char c : text) {
        if (c == '"')
            out += '"';
        out += c;
    }
    out += '"';
}

} // namespace bothways::storage::csv
