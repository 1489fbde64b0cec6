// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "storage/sheet/column_names.h"
#include "storage/sheet/prepared_sheet.h"
#include "storage/sheet/run_sheet.h"

#include <string>
#include <string_view>
#include <vector>

/// Spreadsheets as people keep them: workbooks, texts of any encoding and separator, with titles,
/// units, totals, and names in four languages.
namespace bothways::storage {

/// The table that holds the runs, made records of ours. An Error says why there is none: what the
/// file is, which sheets could be meant, where a second table begins, which cells are merged.
[[nodiscard]] core::Result<PreparedSheet>
prepareSheet(std::string_view bytes, const std::string& name, const SheetOptions& options);

/// Whether a text that is no sheet in our own form is one nevertheless: by its letters, or by a
/// header that is found in it.
[[nodiscard]] bool isOrdinaryText(std::string_view bytes, const SheetOptions& options);

/// What becomes of a column.
struct PreviewColumn {
    std::size_t at = 0; ///< in a line of SheetPreview::rows
    std::string header; ///< as written
    std::string column; ///< ours; empty: kept as it is, without a meaning
    std::string unit;   ///< as written beside the name, where it is converted; else empty
    /// Where the name is known and its unit is not: the columns that it could be.
    std::vector<std::string> candidates;
};

/// A spreadsheet before it comes in, for a person who says what is what.
struct SheetPreview {
    std::vector<std::string> sheets;            ///< of a workbook; empty for a text
    std::string sheet;                          ///< that is shown; empty: a text, or none was found
    bool several_sheets = false;                ///< more than one has runs: `sheet` is to be chosen
    bool header_found = false;                  ///< else `rows` begin at the first line
    int header_line = 0;                        ///< in the spreadsheet, from 1
    std::vector<PreviewColumn> columns;         ///< of the header
    std::vector<std::vector<std::string>> rows; ///< the header, and lines below it, as text
    std::vector<int> lines;                     ///< of each of `rows`, in the spreadsheet
    std::vector<core::Message> found;           ///< see RunSheet::found
    /// Columns that a sheet needs and this one lacks: "configuration", "direction", "start", and
    /// "l_per_100km" for a consumption in any unit.
    std::vector<std::string> missing;
    bool dates_unclear = false; ///< `options.dates` is to be chosen
    std::string unclear_date;   ///< an example of it, as written
};
/// @param mostRows  of `rows`
/// An Error only where nothing can be shown: a picture, a password, a damaged file.
[[nodiscard]] core::Result<SheetPreview> previewSheet(std::string_view bytes,
                                                      const std::string& name,
                                                      const SheetOptions& options = {},
                                                      std::size_t mostRows = 12);

/// Whether it says which column was taken for which of ours, by their names: who shows that in a
/// table need not say it.
[[nodiscard]] bool namesColumns(const core::Message& found);

/// What a study keeps what was said of columns by: the names of the header, whatever the file and
/// the lines. Empty where no header is found.
[[nodiscard]] std::string sheetHeaderKey(std::string_view bytes, const std::string& name,
                                         const SheetOptions& options);
/// The keys of all lines that could be a header, when nobody has said yet what its names mean.
[[nodiscard]] std::vector<std::string>
possibleHeaderKeys(std::string_view bytes, const std::string& name, const SheetOptions& options);

} // namespace bothways::storage
