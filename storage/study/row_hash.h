// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/bytes/sha256.h"
#include "storage/study/query.h"

#include <cstdint>
#include <string_view>

/// Values under a SHA-256. Type and length go before each value, so that no two contents give the
/// same bytes.
namespace bothways::storage {

/// One byte of type, the length as eight bytes (low byte first), the bytes.
void addValue(Sha256& hash, char type, std::string_view value);
/// Eight bytes, low byte first, on every machine; without type and length.
void addWord(Sha256& hash, std::uint64_t word);
/// Column by column: `i` integer, `f` real, `n` null, `t` text or blob.
void addRow(Sha256& hash, const Query& row);

} // namespace bothways::storage
