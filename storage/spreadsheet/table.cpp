// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/spreadsheet/table.h"

#include <algorithm>
#include <utility>

namespace bothways::storage {
namespace {

constexpr std::size_t kMostCells = 501;      // of a line: one more than a sheet may have
constexpr std::size_t kMostBlankRows = 2000; // of separators alone; more are lines like others

} // namespace

std::string columnLetters(std::size_t column)
{
    std::string letters;
    for (std::size_t rest = column + 1; rest > 0; rest = (rest - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (rest - 1) % 26));
    return letters;
}

Table tableOfText(std::string_view text, char separator, std::size_t mostRows)
{
    Table table;
    csv::Reader reader(text, separator, kMostCells, csv::Comments::kept);
    std::size_t blank = 0;
    while (auto record = reader.next()) {
        Row row;
        row.line = record->line;
        row.fault = record->fault;
        row.faultField = record->faultField;
        for (csv::Field& field : record->fields) {
            const CellKind kind = field.text.empty() ? CellKind::empty : CellKind::text;
            row.cells.push_back({kind, std::move(field.text)});
        }
        if (row.empty() && blank++ < kMostBlankRows)
            continue;
        if (table.rows.size() == mostRows) {
            table.stoppedAt = row.line;
            break;
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace bothways::storage
