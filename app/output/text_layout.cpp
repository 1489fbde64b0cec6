// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/text_layout.h"

#include "app/output/analysis_text.h"
#include "app/wording/visible_text.h"

#include <algorithm>

namespace bothways::app {
namespace {

constexpr std::size_t kWidestColumn = 60; // a longer cell pushes its own line alone

} // namespace

std::string Paint::wrap(std::string_view code, std::string_view text) const
{
    if (!m_colour)
        return std::string(text);
    std::string painted = "\033[";
    painted.append(code).append("m").append(text).append("\033[0m");
    return painted;
}

std::size_t columnsOf(std::string_view text)
{
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    }));
}

void TextTable::add(std::vector<std::string> row)
{
    for (std::string& cell : row)
        cell = visibleText(cell);
    m_rows.push_back(std::move(row));
}

std::string TextTable::text(std::size_t indent) const
{
    std::vector<std::size_t> widths;
    for (const auto& row : m_rows) {
        widths.resize(std::max(widths.size(), row.size()), 0);
        for (std::size_t i = 0; i < row.size(); ++i)
            widths[i] = std::max(widths[i], std::min(columnsOf(row[i]), kWidestColumn));
    }
    std::string text;
    for (const auto& row : m_rows) {
        std::string line(indent, ' ');
        for (std::size_t i = 0; i < row.size(); ++i) {
            line += row[i];
            if (i + 1 < row.size())
                line.append(std::max(widths[i], columnsOf(row[i])) - columnsOf(row[i]) + 2, ' ');
        }
        line.erase(line.find_last_not_of(' ') + 1);
        text += line + "\n";
    }
    return text;
}

std::string padded(std::string text, std::size_t width)
{
    const std::size_t columns = columnsOf(text);
    text.append(width > columns ? width - columns : 0, ' ');
    return text;
}

std::string heading(std::string_view title, const Paint& paint)
{
    std::string text = "\n";
    text.append(paint.bold(title)).append("\n");
    return text;
}

std::string wrapped(std::string_view text, std::size_t indent, std::size_t width)
{
    const std::size_t lead = std::min(text.find_first_not_of(' '), text.size());
    std::string out(text.substr(0, lead));
    text.remove_prefix(lead);
    std::size_t column = lead;
    bool first = true; // on its line
    while (!text.empty()) {
        std::size_t end = std::min(text.find(' '), text.size());
        while (text.substr(end).starts_with(" %")) // a number keeps its sign
            end = std::min(text.find(' ', end + 1), text.size());
        const std::string_view word = text.substr(0, end);
        if (!first && column + 1 + columnsOf(word) > width) {
            out.append("\n").append(indent, ' ');
            column = indent;
        } else if (!first) {
            out += ' ';
            ++column;
        }
        first = false;
        out.append(word);
        column += columnsOf(word);
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return out;
}

} // namespace bothways::app
