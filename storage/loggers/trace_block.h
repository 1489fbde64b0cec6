// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/chunks/chunk_codec.h"
#include "storage/loggers/trace_clock.h"
#include "storage/loggers/trace_layout.h"
#include "storage/loggers/trace_plan.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// A block of whole lines of a recording, read into columns of integers without a detour over
/// doubles.
namespace bothways::storage {

/// What a block held. Reused from block to block, so that its memory is asked for once.
struct TraceBlock {
    std::uint32_t rows = 0;
    std::int64_t lines = 0;             ///< of text, comments and blank ones too
    ScaledColumn time;                  ///< s; gaps: rows whose time cannot be read
    std::vector<ScaledColumn> channels; ///< in order of the plan's columns of numbers
    std::vector<std::int64_t> bad;      ///< by channel: cells that are neither number nor nothing
    std::vector<std::pair<std::uint32_t, std::string>> marks; ///< by row
    std::int64_t short_rows = 0, long_rows = 0;               ///< too few, too many cells
    std::optional<int> utc_offset_min;                        ///< of the first time that has one
    std::int64_t bad_time_line = 0; ///< of the first such, counted within the block from 1; 0: none
    std::string bad_time;           ///< its text
};

/// Reads blocks by a plan. One for each thread.
class TraceBlockReader {
public:
    /// @param clockBase_us  is time 0 of a recording with a clock
    TraceBlockReader(const TraceLayout& layout, const TracePlan& plan, std::int64_t clockBase_us);

    /// @param text  whole lines; a further byte, a line end, must follow where `text` ends (and be
    /// readable), so that no loop needs to look for the end
    /// @param quotes  whether any quote is in it
    void read(std::string_view text, bool quotes, TraceBlock& block);

private:
    struct Column {
        CellUse use = CellUse::leftOut;
        bool isNumber = false;       ///< a channel, or the time in seconds
        int decimals = -1;           ///< none yet
        std::int64_t* out = nullptr; ///< the integers of its ScaledColumn
        ScaledColumn* column = nullptr;
        std::int64_t* bad = nullptr;
    };

    void prepare(TraceBlock& block);
    void grow(TraceBlock& block);
    void pointAt(TraceBlock& block);
    const char* readRow(const char* at, TraceBlock& block);
    std::size_t readCells(const char*& at, TraceBlock& block, bool& ended);
    const char* readPlainNumbers(const char* at, std::size_t& i, std::uint32_t row, bool& ended);
    const char* readOtherNumber(const char* at, Column& column, std::uint32_t row);
    const char* readClock(const char* at, bool date);
    const char* endRow(const char* at, bool ended, TraceBlock& block);
    void takeClock(Column& time, TraceBlock& block);
    void leaveOut(std::uint32_t row, std::size_t fromColumn);
    void takeBackRow(TraceBlock& block);
    const char* readMark(const char* at, TraceBlock& block);
    void takeNumberText(std::string_view text, Column& column, std::uint32_t row);
    void store(Column& column, std::uint32_t row, std::int64_t integer, int decimals)
    {
        if (decimals == column.decimals) [[likely]]
            column.out[row] = integer;
        else
            storeOtherDecimals(column, row, integer, decimals);
    }
    void storeOtherDecimals(Column& column, std::uint32_t row, std::int64_t integer, int decimals);
    const char* cellText(const char* at, std::string_view& text);
    const char* skipLine(const char* at) const;
    void finishTime(TraceBlock& block);

    const TracePlan& m_plan;
    std::int64_t m_clockBase_us;
    char m_separator;
    char m_decimalPoint;
    char m_lineEnd;
    bool m_quotes = false;
    std::array<bool, 256> m_endsCell{};
    const char* m_end = nullptr; ///< of the block being read
    std::uint32_t m_capacity = 0;
    std::vector<Column> m_columns;
    ClockParser m_clock, m_dateClock;
    std::optional<ClockTime> m_rowClock;
    std::optional<std::int64_t> m_rowDate_us;
    std::string m_quoted; ///< a quoted cell with its doubled quotes undone
    std::string m_number; ///< a number with a point for its comma
};

/// Takes rows out of a block. @param keep  one a row
void keepRows(TraceBlock& block, const std::vector<bool>& keep);

} // namespace bothways::storage
