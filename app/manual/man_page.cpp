// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/manual/man_page.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

namespace bothways::app::manual {
namespace {

constexpr std::size_t kLineBytes = 78; // readers of the source are promised 80

/// Letters that troff would take for something else. In what is typed, a hyphen is a minus.
std::string troff(std::string_view text, bool typed)
{
    std::string out;
    for (const char c : text) {
        if (c == '\\')
            out += "\\e";
        else if (c == '-' && typed)
            out += "\\-";
        else if (c == '\'' && typed)
            out += "\\(aq";
        else if (c == '`' && typed)
            out += "\\(ga";
        else if (c == '^' && typed)
            out += "\\(ha";
        else if (c == '~' && typed)
            out += "\\(ti";
        else
            out += c;
    }
    return out;
}

/// A point or an apostrophe at the beginning of a line would make it a request.
std::string guarded(const std::string& line)
{
    return !line.empty() && (line.front() == '.' || line.front() == '\'') ? "\\&" + line : line;
}

std::string argument(std::string_view text)
{
    std::string out;
    for (const char c : troff(text, false))
        out += c == '"' ? std::string("\\(dq") : std::string(1, c);
    return '"' + out + '"';
}

std::string capitals(std::string text)
{
    std::ranges::transform(text, text.begin(),
                           [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return text;
}

const char* fontOf(const Span& span)
{
    return span.strong || span.code ? "\\fB" : span.emphasised ? "\\fI" : "";
}

/// Columns in the source of a page: letters beyond ASCII are written as "\\[u00FC]" by some readers
/// before they count.
std::size_t width(std::string_view text)
{
    constexpr std::size_t kEscape = 8;
    std::size_t columns = 0;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte < 0x80U)
            ++columns;
        else if ((byte & 0xC0U) == 0xC0U) // the first of a letter
            columns += kEscape;
    }
    return columns;
}

/// Fills lines with words. A blank within a change of font stays one word's.
std::string filled(const std::string& text)
{
    std::string out;
    std::string line;
    const auto flush = [&] {
        if (!line.empty())
            out += guarded(line) + "\n";
        line.clear();
    };
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = std::min(text.find(' ', begin), text.size());
        const std::string_view word = std::string_view(text).substr(begin, end - begin);
        begin = end + 1;
        if (word.empty())
            continue;
        if (!line.empty() && width(line) + 1 + width(word) > kLineBytes)
            flush();
        line += (line.empty() ? "" : " ") + std::string(word);
    }
    flush();
    return out;
}

std::string troff(const Spans& spans)
{
    std::string text;
    for (const Span& span : spans) {
        if (!span.picture.empty())
            continue; // a page of letters
        const std::string font = fontOf(span);
        text += font + troff(span.text, span.code) + (font.empty() ? "" : "\\fR");
    }
    return text;
}

} // namespace

ManPage::ManPage(const ManHead& head)
{
    m_text = fmt::format(".\\\" Made from the sources of the help and the handbook.\n"
                         ".TH {} {} {} {} {}\n"
                         ".nh\n.ad l\n",
                         capitals(head.name), head.section, head.date,
                         argument("Bothways " + head.version), argument(head.book));
}

void ManPage::macro(std::string_view name, std::string_view text)
{
    m_text += fmt::format(".{} {}\n", name, argument(text));
}

void ManPage::words(const Spans& spans)
{
    m_text += filled(troff(spans));
}

void ManPage::name(std::string_view name, std::string_view what)
{
    m_text += filled(troff(name, true) + " \\- " + troff(what, false));
}

void ManPage::section(std::string_view title)
{
    macro("SH", title);
}

void ManPage::subsection(std::string_view title)
{
    macro("SS", title);
}

void ManPage::paragraph(const Spans& spans)
{
    const std::string text = filled(troff(spans));
    if (text.empty())
        return;
    // The first below a heading is one already.
    const std::size_t last = m_text.rfind('\n', m_text.size() - 2);
    const std::string_view line = std::string_view(m_text).substr(last + 1);
    if (!line.starts_with(".SH") && !line.starts_with(".SS"))
        m_text += ".PP\n";
    m_text += text;
}

void ManPage::entry(const Spans& term, const Spans& spans)
{
    m_text += ".TP\n" + guarded(troff(term)) + "\n";
    words(spans.empty() ? Spans{{"\u2014"}} : spans);
}

void ManPage::example(std::string_view lines)
{
    m_text += ".PP\n.in +4n\n.nf\n";
    while (!lines.empty()) {
        const std::size_t end = std::min(lines.find('\n'), lines.size());
        const std::string line = guarded(troff(lines.substr(0, end), true));
        m_text += line.empty() ? ".sp\n" : line + "\n";
        lines.remove_prefix(std::min(end + 1, lines.size()));
    }
    m_text += ".fi\n.in\n";
}

void ManPage::items(const Block& block)
{
    int number = 0;
    for (const Spans& item : block.items) {
        if (block.kind == BlockKind::numbers)
            m_text += fmt::format(".IP {}. 4\n", ++number);
        else
            m_text += ".IP \\(bu 2\n";
        words(item);
    }
}

/// A line a row: the first cell, and below it the others with the words of the head. Columns of
/// long texts do not fit beside each other into a terminal.
void ManPage::table(const Block& block)
{
    if (block.rows.empty())
        return;
    const auto& head = block.rows.front();
    for (std::size_t i = 1; i < block.rows.size(); ++i) {
        const auto& row = block.rows[i];
        Spans rest;
        for (std::size_t column = 1; column < row.size(); ++column) {
            if (row[column].empty())
                continue;
            if (!rest.empty())
                rest.push_back({"; "});
            if (row.size() > 2 && column < head.size() && !head[column].empty())
                rest.push_back({plainText(head[column]) + ": "});
            rest.insert(rest.end(), row[column].begin(), row[column].end());
        }
        if (!row.empty())
            entry(row.front().empty() ? Spans{{"\u2014"}} : row.front(), rest);
    }
}

void ManPage::handbook(const Blocks& blocks, Headings headings)
{
    for (const Block& block : blocks) {
        switch (block.kind) {
        case BlockKind::heading:
            if (block.level > 1)
                headings == Headings::sections&& block.level == 2
                    ? section(plainText(block.words))
                    : subsection(plainText(block.words));
            break;
        case BlockKind::paragraph: paragraph(block.words); break;
        case BlockKind::bullets:
        case BlockKind::numbers: items(block); break;
        case BlockKind::table: table(block); break;
        }
    }
}

} // namespace bothways::app::manual
