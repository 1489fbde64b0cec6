// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace bothways::storage {

/// "SQLite 3.40.1, zstd 1.5.4": what is loaded now, for reports.
[[nodiscard]] std::string libraryVersions();

} // namespace bothways::storage
