// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/chunks/chunk_codec.h"
#include "storage/loggers/trace_layout.h"
#include "storage/loggers/trace_order.h"
#include "storage/loggers/trace_plan.h"
#include "storage/loggers/trace_source.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

/// From the lines of a recording to chunks: two threads read and encode blocks, each takes its turn
/// to set the times in order, and the caller's thread gets the chunks to store.
namespace bothways::storage {

/// Words in a recording, at a time of its own.
struct RecordedMark {
    double at_s = 0.0;
    std::string words;
};

/// Rows of a recording, encoded. Groups may arrive out of turn; `first_row` says where they belong.
struct RowGroup {
    std::int64_t first_row = 0;
    EncodedChunk time;
    std::vector<EncodedChunk> channels; ///< as many as the recording has
    std::vector<RecordedMark> marks;
};

/// Stores a group. An Error ends the reading.
using PutGroup = std::function<core::Outcome(RowGroup&&)>;
/// @param done  share of the file, 0 to 1
using Progress = std::function<void(double done, double bytesPerSecond)>;

/// What reading a whole recording came to.
struct ReadTotals {
    OrderCounts order;
    std::int64_t main_shift_us = 0;      ///< see TraceOrder
    std::vector<std::int64_t> samples;   ///< by channel
    std::vector<std::int64_t> bad_cells; ///< by channel
    std::int64_t short_rows = 0, long_rows = 0, lines = 0;
    std::int64_t bad_checksums = 0, bad_positions = 0, no_fix = 0, marks = 0;
    bool half_last_line = false;
    std::optional<int> utc_offset_min;
    std::int64_t bad_time_line = 0; ///< line in the file of the first row without a time; 0: none
    core::Message bad_time;
};

/// Time 0 of a recording: the clock at its first row.
struct ClockBase {
    ClockKind kind = ClockKind::none;
    std::int64_t us = 0;
    std::optional<int> utc_offset_min;
};
[[nodiscard]] ClockBase clockBaseOf(const TraceLayout& layout, const TracePlan& plan);

/// Adds blocks up, in order of the file.
class BlockTotals {
public:
    /// @param firstLine  of the first block
    BlockTotals(const ClockBase& base, std::size_t channels, std::int64_t firstLine);
    /// Sets the block's times in order and counts what is in it.
    void put(TraceBlock& block, std::vector<double>& time_s);
    [[nodiscard]] const ReadTotals& totals() const { return m_totals; }
    [[nodiscard]] ReadTotals take();

private:
    void dropRepeatedMarks(TraceBlock& block);

    TraceOrder m_order;
    std::int64_t m_firstLine;
    ReadTotals m_totals;
    std::string m_lastMark;
    std::int64_t m_lastMarkRow = -2;
};

/// Reads all of a CSV recording. `source` must be at its first data row.
/// @param name  of the file, for messages
[[nodiscard]] core::Result<ReadTotals> readCsvTrace(TraceSource& source, const TraceLayout& layout,
                                                    const TracePlan& plan, std::string_view name,
                                                    const PutGroup& put, const Progress& progress,
                                                    std::stop_token stop);

/// The same on the caller's thread alone, handing over what was read without encoding it.
[[nodiscard]] core::Result<ReadTotals> readCsvBlocks(
    TraceSource& source, const TraceLayout& layout, const TracePlan& plan, std::string_view name,
    const std::function<core::Outcome(const TraceBlock&, const std::vector<double>&)>& put);

/// Bytes of a block in which some 65,536 rows fit.
[[nodiscard]] std::size_t blockSizeFor(const TraceLayout& layout);

/// Encodes the rows of a block.
[[nodiscard]] RowGroup encodeGroup(ChunkEncoder& encoder, const TraceBlock& block,
                                   const std::vector<double>& time_s, std::int64_t firstRow);

} // namespace bothways::storage
