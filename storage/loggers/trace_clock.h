// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

/// Cells of a recording that tell the time by a clock. Millions of them come in a row, nearly
/// alike: the parser remembers the date that it read last. (core/study/clock.h reads the ones that
/// people type.)
namespace bothways::storage {

/// What a column of clock times holds.
enum class ClockForm {
    dateTime,  ///< ISO 8601 date and time, with an offset or without
    date,      ///< "2026-05-09", "2026/05/09", "20260509" or "09.05.2026"
    timeOfDay, ///< "5:40", "05:40:30.25"
    epoch      ///< seconds, milliseconds, microseconds or nanoseconds since 1970, told by size
};

struct ClockTime {
    std::int64_t us =
        0; ///< since 1970-01-01 (UTC, or the local clock's); of a time of day: since midnight
    std::optional<int> utc_offset_min; ///< where the cell has one
};

class ClockParser {
public:
    /// Nothing where the cell is no such time.
    [[nodiscard]] std::optional<ClockTime> parse(std::string_view cell, ClockForm form);

private:
    [[nodiscard]] std::optional<std::int64_t> date_us(std::string_view text);
    [[nodiscard]] std::optional<ClockTime> dateTime(std::string_view cell);

    std::string m_lastDate;
    std::int64_t m_lastDate_us = 0;
};

/// The form that a cell has, the most telling first; nothing where it has none.
[[nodiscard]] std::optional<ClockForm> clockFormOf(std::string_view cell);

} // namespace bothways::storage
