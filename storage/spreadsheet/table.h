// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/bytes/csv.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

/// What a spreadsheet says, whatever file it was in: lines of cells, values only.
namespace bothways::storage {

enum class CellKind {
    empty,
    text,
    number,     ///< `text` in C form: the shortest that is the same double
    percentage, ///< a number that is shown a hundred times as large
    date,       ///< "2026-05-09"
    time,       ///< "05:40:00", of a day or a length; hours may be more than 24
    dateTime,   ///< "2026-05-09T05:40:00"
    boolean,    ///< "true", "false"
    error,      ///< "#DIV/0!"
    noValue     ///< a formula whose value was not saved
};

struct Cell {
    CellKind kind = CellKind::empty;
    std::string text;
    [[nodiscard]] bool empty() const { return kind != CellKind::noValue && text.empty(); }
};

struct Row {
    int line = 0; ///< from 1, as the spreadsheet numbers it; of a text, where the record starts
    std::vector<Cell> cells;
    csv::RecordFault fault = csv::RecordFault::none; ///< of a text
    std::size_t faultField = 0;
    bool hidden = false; ///< nobody sees it in a workbook
    [[nodiscard]] bool empty() const
    {
        for (const Cell& cell : cells)
            if (!cell.empty())
                return false;
        return fault == csv::RecordFault::none;
    }
};

/// Cells that are shown as one. Lines from 1, columns from 0, both ends within.
struct Merged {
    int firstLine = 0, lastLine = 0;
    std::size_t firstColumn = 0, lastColumn = 0;
};

/// Columns that nobody sees in a workbook, from 0, both ends within.
struct HiddenColumns {
    std::size_t first = 0, last = 0;
};

struct Table {
    std::string sheet; ///< its name; empty: a text, which has none
    bool hidden = false;
    bool pivot = false;    ///< a pivot table lies on it
    std::vector<Row> rows; ///< those that hold anything
    std::vector<Merged> merged;
    std::vector<HiddenColumns> hiddenColumns;
    int stoppedAt = 0; ///< the line that was one too many; 0: all were read
};

/// More than a study holds, with room for titles, totals and notes.
inline constexpr std::size_t kMostRows = 11'000;

/// Most stretches of hidden columns that are remembered.
inline constexpr std::size_t kMostHidden = 1000;

/// "A", "B", ..., "Z", "AA": the letters of a column, from 0.
[[nodiscard]] std::string columnLetters(std::size_t column);

/// A text as a table: comment lines are lines like others.
[[nodiscard]] Table tableOfText(std::string_view text, char separator, std::size_t mostRows);

} // namespace bothways::storage
