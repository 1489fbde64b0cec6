// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/chunks/chunk_codec.h"

#include <SQLiteCpp/Statement.h>

#include <cstddef>
#include <cstdint>

namespace SQLite {
class Database;
}

/// For the files of storage/ alone.
namespace bothways::storage {

/// Puts chunks and their sums into a study. SQLite's problems are thrown.
class ChunkRows {
public:
    /// @param data  of trace_data
    ChunkRows(SQLite::Database& database, std::int64_t data);
    /// @param place  of the channel; 0: the times, which are made to weigh what a recording's rows
    ///               must (recording_check.h)
    /// @return  the bytes that it takes
    std::size_t insert(std::int64_t place, std::int64_t firstRow, const EncodedChunk& chunk);

private:
    std::int64_t m_data;
    SQLite::Statement m_row, m_sum;
};

} // namespace bothways::storage
