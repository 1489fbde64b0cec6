// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "storage/sheet/column_names.h"
#include "storage/sheet/header_finder.h"
#include "storage/sheet/run_sheet.h"
#include "storage/spreadsheet/table.h"

#include <optional>
#include <string>
#include <vector>

/// Where on a table the runs stand: titles above the header, the header, a line of units below it,
/// blank columns, totals and remarks.
namespace bothways::storage {

struct LaidColumn {
    std::size_t at = 0;  ///< in a line's cells
    std::string written; ///< in the header
    ColumnMeaning meaning;
    bool mapped = false; ///< a person said what it is
    [[nodiscard]] bool own() const { return !meaning.known(); }
    /// Its name is ours as it stands.
    [[nodiscard]] bool canonical() const;
};

struct SheetLayout {
    std::size_t header = 0; ///< index of the line
    std::optional<std::size_t> units;
    std::vector<LaidColumn> columns;  ///< those with a name
    std::vector<std::string> leftOut; ///< names that a person said to leave out
    std::vector<std::size_t> runs;    ///< indices of the lines with a run each
    std::vector<std::size_t> totals, remarks;
    bool hasTitles = false;
    std::vector<core::Error> faults;
    [[nodiscard]] const LaidColumn* find(std::string_view column) const;
};

/// @param name  of file and sheet, for faults
[[nodiscard]] SheetLayout layOut(const Table& table, std::size_t header,
                                 const SheetOptions& options, const std::string& name);

/// A cell of a line; an empty one where the line has none.
[[nodiscard]] const Cell& cellAt(const Row& row, std::size_t at);

} // namespace bothways::storage
