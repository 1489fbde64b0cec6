// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/manual/markdown.h"

#include <string>
#include <string_view>

/// A manual page in the macros of man(7), which every reader of such pages knows.
namespace bothways::app::manual {

struct ManHead {
    std::string name; ///< "bothways-study"
    int section = 1;
    std::string date; ///< YYYY-MM-DD
    std::string version;
    std::string book; ///< what all its pages belong to
};

class ManPage {
public:
    explicit ManPage(const ManHead& head);

    /// What whatis(1) shows: the name, a dash that it knows, and what it is.
    void name(std::string_view name, std::string_view what);
    void section(std::string_view title);
    void subsection(std::string_view title);
    void paragraph(const Spans& words);
    /// A term, and what is said of it below, indented.
    void entry(const Spans& term, const Spans& words);
    /// Lines as they are typed.
    void example(std::string_view lines);
    /// All of a page of the handbook but its title: its headings become sections (or, below
    /// another's, subsections).
    enum class Headings { sections, subsections };
    void handbook(const Blocks& blocks, Headings headings);

    [[nodiscard]] const std::string& text() const { return m_text; }

private:
    void items(const Block& block);
    void table(const Block& block);
    void macro(std::string_view name, std::string_view argument);
    void words(const Spans& spans);

    std::string m_text;
};

} // namespace bothways::app::manual
