// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/output/report_html.h"
#include "app/output/report_picture.h"

#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// The report as what it says, part by part, before it is a web page or paper: both are made from
/// this, so they cannot differ.
///
/// Every text here is "rich": &, <, > and quotes are entities, and the tags b, i, s, sub and sup
/// may stand in it, properly nested; nothing else.
namespace bothways::app::report {

struct Heading {
    int level; ///< 2 or 3; the title is 1
    std::string text;
};
enum class Tone { plain, verdict, quiet, formula };
struct Paragraph {
    std::string text;
    Tone tone = Tone::plain;
};
struct Bullets {
    std::vector<std::string> items;
};
struct Figure {
    Picture picture;
    std::string caption;
};
/// `tight` is kept on one line, `words` takes the room that is left.
enum class Column { tight, number, words };
struct TableColumn {
    std::string head;
    Column kind = Column::tight;
};
enum class RowTone { plain, strong, quiet, alarmed };
struct Row {
    std::vector<std::string> cells; ///< one a column
    RowTone tone = RowTone::plain;
};
struct Table {
    std::string name; ///< what it is, for a screen reader
    std::vector<TableColumn> columns;
    std::vector<Row> rows;
};
using Part = std::variant<Heading, Paragraph, Bullets, Figure, Table>;

struct Report {
    std::string title;
    std::string checksum; ///< SHA-256 of what was analysed, plain
    std::vector<Part> parts;
};

[[nodiscard]] Report makeReport(const ReportInput& input);
[[nodiscard]] Report makeReportOfSeveral(const SeveralInput& input);

/// The method in a page, with formulas.
[[nodiscard]] std::vector<Part> methodParts(const Language& in);

} // namespace bothways::app::report
