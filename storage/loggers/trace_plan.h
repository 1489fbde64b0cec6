// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/study/study.h"
#include "storage/loggers/channel_mapping.h"
#include "storage/loggers/trace_clock.h"
#include "storage/loggers/trace_layout.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What each column of a recording in CSV will be.
namespace bothways::storage {

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

} // namespace bothways::storage
