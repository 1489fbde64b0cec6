// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/result.h"
#include "core/study.h"
#include "storage/trace_clock.h"
#include "storage/traces.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// How a recording in CSV is laid out, found from its first bytes; and what each column will be.
namespace bothways::storage {

/// More columns than any logger has: a file with more was not written by one.
inline constexpr std::size_t kMaxTraceColumns = 4096;

struct TraceLayout {
    char separator = ',';
    bool decimalComma = false;
    char lineEnd = '\n';        ///< '\r' in files of old
    std::size_t dataOffset = 0; ///< byte where the first data row begins
    std::int64_t headerLine = 1;
    std::int64_t dataLine = 2;       ///< line of that byte
    std::vector<std::string> header; ///< trimmed, no two alike, none empty
    std::vector<bool> nameless;      ///< a column each: its header cell is empty
    std::vector<std::string> units;  ///< a column each: from brackets, a line of units, or empty
    std::vector<std::vector<std::string>> rows; ///< the first data rows, trimmed
    std::vector<std::int64_t> rowLines;
    /// Stands for the header in the table of mappings: 16 hexadecimal digits.
    std::string headerKey;
};

/// @param head  the first bytes of the file, up to kTraceHeadSize; @param whole  they are all of it
[[nodiscard]] core::Result<TraceLayout> layoutOf(std::string_view head, bool whole,
                                                 std::string_view name);
inline constexpr std::size_t kTraceHeadSize = std::size_t{1} << 20;

/// What the cells of a column are.
enum class CellUse {
    leftOut,
    number,    ///< a channel
    seconds,   ///< the time, as a number
    clock,     ///< the time, by a clock
    clockDate, ///< the date that belongs to a `clock` of times of day
    mark       ///< words
};

struct ColumnPlan {
    CellUse use = CellUse::leftOut;
    std::string channel;
    std::string unit;
    double factor = 1.0, offset = 0.0;
};

struct TracePlan {
    std::vector<ColumnPlan> columns;           ///< as many as the header has
    std::size_t time = 0;                      ///< place of the column with the time
    std::optional<std::size_t> date;           ///< place of the column with the date
    ClockForm clockForm = ClockForm::dateTime; ///< where the time is a clock's
    int timeDecimals = 0;              ///< 0, 3, 6: cells are seconds, milliseconds, microseconds
    double timeFactor = 1.0;           ///< where they are something else (minutes)
    std::optional<core::Instant> zero; ///< time 0 by a clock that stands beside seconds
    [[nodiscard]] bool hasClock() const { return columns[time].use == CellUse::clock; }
};

/// @param mapping  by column; columns without one go by their names
[[nodiscard]] core::Result<TracePlan> planColumns(const TraceLayout& layout,
                                                  const std::vector<ChannelMapping>& mapping,
                                                  std::string_view name);

/// The mapping of a column; a name in the same case goes first. Null where there is none.
[[nodiscard]] const ChannelMapping* mappingOf(const std::vector<ChannelMapping>& mapping,
                                              std::string_view header);

/// Lower case, blanks as '_', what stands in brackets left out: "Road speed [km/h]" is road_speed.
[[nodiscard]] std::string plainName(std::string_view header);
/// "km/h" of "Road speed [km/h]"; empty where there is none.
[[nodiscard]] std::string bracketUnit(std::string_view header);
/// Unit of a channel of ours by its name: "km/h" of road_speed_kmh; empty where it is not ours.
[[nodiscard]] std::string_view channelUnit(std::string_view channel);

} // namespace bothways::storage
