// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace SQLite {
class Database;
}

namespace bothways::storage {

/// True when the seal of a study of version 1 fits: one SHA-256 over the definitions and rows of
/// the undoable tables, and over ids, states and checksums of the history. Only read, never written
/// again.
[[nodiscard]] bool firstSealFits(SQLite::Database& database);

} // namespace bothways::storage
