// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "storage/spreadsheet/archive.h"
#include "storage/spreadsheet/table.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Workbooks of the two open standards: ISO/IEC 29500 (.xlsx) and ISO/IEC 26300 (.ods). Values
/// only: no formula is reckoned, nothing is fetched.
namespace bothways::storage {

/// By the first bytes.
[[nodiscard]] bool isArchive(std::string_view bytes);
/// What a file is that holds no sheet that we read: a picture, a PDF, an old or a protected
/// workbook; with what was expected. Nothing for what may be one.
[[nodiscard]] std::optional<core::Message> whyNoSpreadsheet(std::string_view bytes);

/// Most sheets of a workbook that are looked at.
inline constexpr std::size_t kMostSheets = 100;

/// All sheets of a workbook, in its order.
/// @param bytes  outlive the call alone
[[nodiscard]] core::Result<std::vector<Table>> readWorkbook(std::string_view bytes,
                                                            const std::string& name);

[[nodiscard]] core::Result<std::vector<Table>> readXlsx(Archive& archive);
[[nodiscard]] core::Result<std::vector<Table>> readOds(Archive& archive);

} // namespace bothways::storage
