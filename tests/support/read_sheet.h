// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/sheet/run_sheet.h"

#include <filesystem>

namespace bothways::tests {

/// A sheet from its file, as the programs read it.
inline core::Result<storage::RunSheet> readRunSheet(const std::filesystem::path& file,
                                                    const storage::SheetOptions& options = {},
                                                    const core::Study* existing = nullptr)
{
    const auto bytes = storage::readSheetBytes(file);
    if (!bytes)
        return bytes.error();
    return storage::parseRunSheet(bytes.value(), file.string(), options, existing);
}

} // namespace bothways::tests
