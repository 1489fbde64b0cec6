// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/study/recording_sums.h"
#include "storage/study/study_database.h"

#include <cstdint>
#include <memory>
#include <set>
#include <span>
#include <stop_token>

/// Whether a recording in a study is what came in. What is not is thrown (DamagedRecording) and
/// names the recording, its runs and the channel: a part that is missing must never look like one
/// that was not recorded.
namespace bothways::storage {

/// A recording holds at most so many rows, and beyond them so many a byte of its chunks: so a file
/// cannot ask for more memory than its size is good for. TraceWriter sees to it that each recording
/// stays below (kRowsAByte); the rows for nothing are for those that came in before it did.
inline constexpr std::int64_t kRowsForNothing = std::int64_t{1} << 22;
inline constexpr std::int64_t kRowsAByte = 32;

/// The sentence about damage. @param place  of the channel; 0: its times
[[nodiscard]] DamagedRecording damagedRecording(SQLite::Database& database, std::int64_t recording,
                                                std::int64_t place, const core::Message& what);

/// Recordings whose lines were found in order, so that each is asked once.
using CheckedRecordings = std::set<std::int64_t>;

/// The lines of its chunks fit one another, the recording, its channels and the sums. Reads no
/// bytes.
void checkChunkLines(SQLite::Database& database, std::int64_t recording);

/// The bytes of a chunk are those of its sum. Nothing where the study keeps none.
/// @param sums  of the recording
void checkChunkBytes(SQLite::Database& database, std::int64_t recording, std::int64_t place,
                     std::int64_t firstRow, std::span<const std::byte> bytes, ChunkSums& sums);

/// Throws where it was asked to stop.
void goOnReading(const std::stop_token& stop);

} // namespace bothways::storage
