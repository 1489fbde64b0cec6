// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/library_versions.h"

#include <sqlite3.h>
#include <zstd.h>

namespace bothways::storage {

std::string libraryVersions()
{
    return std::string("SQLite ") + sqlite3_libversion() + ", zstd " + ZSTD_versionString();
}

} // namespace bothways::storage
