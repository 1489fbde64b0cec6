// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/sheet/column_names.h"
#include "storage/sheet/run_sheet.h"
#include "storage/spreadsheet/table.h"

#include <compare>
#include <cstddef>
#include <optional>
#include <string_view>

/// Which line of a table has the names of the columns.
namespace bothways::storage {

/// configuration, direction, start.
[[nodiscard]] bool isNeededColumn(std::string_view column);

/// What a person said of a column, else what its name says.
/// @param mapped  set where a person did
[[nodiscard]] ColumnMeaning givenMeaning(std::string_view header, std::string_view unit,
                                         const SheetOptions& options, bool& mapped);

/// How many names of a line mean something, and how many of these are configuration, direction and
/// start, without which a sheet is none.
struct HeaderScore {
    std::size_t known = 0, needed = 0;
    [[nodiscard]] bool enough() const { return needed > 0 && known >= 2; }
    friend auto operator<=>(const HeaderScore&, const HeaderScore&) = default;
};
[[nodiscard]] HeaderScore scoreOf(const Row& row, const SheetOptions& options);
/// The line that is most like a header; nothing where none is.
[[nodiscard]] std::optional<std::size_t> findHeader(const Table& table,
                                                    const SheetOptions& options);
} // namespace bothways::storage
