// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/study/study.h"
#include "storage/bytes/csv.h"
#include "storage/bytes/file_bytes.h"
#include "storage/sheet/column_mapping.h"
#include "storage/sheet/date_forms.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Run sheets: any spreadsheet in, CSV out. run_sheet.md has the columns and the forms.
namespace bothways::storage {

using core::Result;

/// How a sheet was written: found out, and said.
struct SheetDialect {
    char separator = ',';
    bool decimalComma = false;
    friend bool operator==(const SheetDialect&, const SheetDialect&) = default;
};

struct SheetOptions {
    std::string date;  ///< YYYY-MM-DD for times of day; empty: the study's, else `today`
    std::string today; ///< handed in by the caller: the clock is an argument
    std::vector<ColumnMapping> columns = {}; ///< what a person said that columns are
    DateOrder dates = DateOrder::unknown;    ///< of "5/9/2026"
    bool lacking_columns = false;            ///< some of `columns` may not be in the sheet
    std::string sheet = {};                  ///< of a workbook; empty: the one that has runs
    bool ours_alone = false;                 ///< no other spreadsheet than our own form
};

/// A column that means nothing to us, and is kept.
struct OwnColumn {
    std::string name;    ///< as written
    std::string nearest; ///< a column with a meaning that is spelled nearly the same; empty: none
    friend bool operator==(const OwnColumn&, const OwnColumn&) = default;
};

struct RunSheet {
    core::Study study; ///< properties that the sheet cannot say are defaults
    SheetDialect dialect;
    bool dateAssumed = false;
    std::vector<OwnColumn> own_columns; ///< with a value in some run
    /// Runs of `existing` that the sheet has once more: same start, configuration, direction and
    /// consumption. Their numbers, ascending.
    std::vector<int> already_there;
    /// Of a sheet that is not in our own form: what was found, passed over and rewritten, each as
    /// it ends "The sheet was read with …".
    std::vector<core::Message> found;
    /// Columns of SheetOptions::columns that it has not, where it may lack some.
    std::vector<std::string> lacking;
};

/// By its first bytes: .xlsx, .ods, or another archive; what is in no text has no separators.
[[nodiscard]] bool isWorkbook(std::string_view bytes);
/// The bytes of a sheet, for parseRunSheet(): at most 64 MB.
[[nodiscard]] Result<std::string> readSheetBytes(const std::filesystem::path& file,
                                                 Streams streams = Streams::refused);
/// Reads a sheet; `name` stands for the file in messages. All of its faults are in the Error (first
/// in it, the rest in `others`), each with "FILE:LINE: column 'x'"; then nothing of it is imported.
/// A sheet in our own form is read to the last bit as it was written; any other as ordinary_sheet.h
/// has it.
/// @param existing  the study that the runs will join: names of configurations and directions,
/// numbers in use
[[nodiscard]] Result<RunSheet> parseRunSheet(std::string_view bytes, std::string_view name,
                                             const SheetOptions& options = {},
                                             const core::Study* existing = nullptr);

/// A sheet with every column that any run has; parseRunSheet() of the plain one gives the same
/// runs.
[[nodiscard]] std::string writeRunSheet(const core::Study& study,
                                        csv::Form form = csv::Form::plain);

/// Checks one run typed by hand as a line of a sheet would be checked.
[[nodiscard]] std::vector<core::Error> faultsOf(const core::Study& study, const core::Run& run);

} // namespace bothways::storage
