// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace SQLite {
class Database;
}

/// A checksum over what a study says, stored with every commit and compared when the file is
/// opened. SQLite notices a broken page; the seal notices a flipped bit in a number.
namespace bothways::storage {

/// SHA-256 over the definitions and rows of the undoable tables, in order of their keys, and over
/// the states and checksums of the history. Traces have a checksum with each chunk.
[[nodiscard]] std::string computeSeal(SQLite::Database& database);

/// Computes and stores it; within the transaction of the change.
void renewSeal(SQLite::Database& database);

/// True when the stored seal fits the content.
[[nodiscard]] bool sealFits(SQLite::Database& database);

/// The checksum of one line of the history.
[[nodiscard]] std::string checksumOfEntry(std::string_view at, std::string_view kind,
                                          std::string_view detail, std::string_view changeset);

} // namespace bothways::storage
