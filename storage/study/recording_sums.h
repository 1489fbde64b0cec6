// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/study/query.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace SQLite {
class Database;
}

/// What holds the chunks of a recording together. Each has the SHA-256 of its bytes in table
/// chunk_sum; a line of trace_data has the number of its chunks and a sum over all of them: place,
/// first row, rows, samples, bounds, SHA-256 of the bytes, in order. The lines of complete data are
/// under the seal. So a chunk that was taken out, put in, exchanged or changed is found, and its
/// bounds and numbers can be believed without reading the bytes.
///
/// SQLite's problems are thrown.
namespace bothways::storage {

/// What table chunk_sum holds for a chunk.
[[nodiscard]] std::string sumOfChunk(std::string_view bytes);

/// Says of data whose chunks are all there that it is complete, with their number and sum. Within
/// a transaction of the caller's.
void completeRecording(SQLite::Database& database, std::int64_t data);

/// True when the chunks of complete data are those that were there when it was completed: none is
/// missing, added or exchanged, and rows, samples and bounds are as they were. Reads no bytes: who
/// reads a chunk's bytes compares sumOfChunk() with ChunkSums. A study of version 1, which has no
/// sums, passes.
[[nodiscard]] bool recordingFits(SQLite::Database& database, std::int64_t data);

/// The sums kept for the chunks of some data, asked one after the other.
class ChunkSums {
public:
    ChunkSums(SQLite::Database& database, std::int64_t data);
    /// False in a study of version 1, which a reader leaves as it is.
    [[nodiscard]] bool areKept() const { return m_row.has_value(); }
    /// Empty where there is none.
    [[nodiscard]] std::string of(std::int64_t place, std::int64_t firstRow);

private:
    std::optional<Query> m_row;
};

/// For a study of version 1 that becomes one of version 2: a chunk at a time.
void sumOldRecordings(SQLite::Database& database);

} // namespace bothways::storage
