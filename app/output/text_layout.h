// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

/// Headings, tables and broken lines for a terminal. Private to app/output.
namespace bothways::app {

/// ANSI colours, or nothing.
class Paint {
public:
    explicit Paint(bool colour) : m_colour(colour) {}
    [[nodiscard]] std::string bold(std::string_view text) const { return wrap("1", text); }
    [[nodiscard]] std::string dim(std::string_view text) const { return wrap("2", text); }
    [[nodiscard]] std::string alarm(std::string_view text) const { return wrap("33", text); }

private:
    [[nodiscard]] std::string wrap(std::string_view code, std::string_view text) const;
    bool m_colour;
};

/// Rows of cells; columns as wide as their widest cell, two blanks between.
class TextTable {
public:
    explicit TextTable(std::vector<std::string> head) { add(std::move(head)); }
    /// Names and words of people among the cells are shown through visibleText().
    void add(std::vector<std::string> row);
    [[nodiscard]] std::size_t rows() const { return m_rows.size() - 1; }
    [[nodiscard]] std::string text(std::size_t indent = 2) const;

private:
    std::vector<std::vector<std::string>> m_rows;
};

/// Code points, which is how many columns our texts take.
[[nodiscard]] std::size_t columnsOf(std::string_view text);

/// `text` and blanks up to `width` columns; nothing is cut.
[[nodiscard]] std::string padded(std::string text, std::size_t width);

/// "Checks": on a line of its own after an empty one.
[[nodiscard]] std::string heading(std::string_view title, const Paint& paint);

} // namespace bothways::app
