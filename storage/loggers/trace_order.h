// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/loggers/trace_block.h"

#include <cstdint>
#include <vector>

/// Makes the times of a recording ascend. Blocks must be handed in in order of the file.
///
/// A row whose time repeats the last one's is left out; so is one that falls back, where the rows
/// after it go on from the last. Where they fall back too, by more than a second, the clock was
/// changed: they are taken to follow on at the usual interval. A clock that jumps ahead by an hour
/// (summer time; only clocks without an offset from UTC) or by more than a day (a clock that was
/// not yet set) was changed too. A time of day that falls back by more than half a day passed
/// midnight.
namespace bothways::storage {

struct OrderCounts {
    std::int64_t bad_times = 0; ///< rows without a time that can be read: left out
    std::int64_t repeated_times = 0, backward_times = 0, clock_changes = 0, rate_changes = 0;
    std::int64_t gaps = 0; ///< stretches without a row, of a second and ten intervals at least
    double longest_gap_s = 0.0;
    std::int64_t rows = 0;   ///< kept
    double interval_s = 0.0; ///< usual time between rows; 0: too few rows to tell
    double first_s = 0.0, last_s = 0.0;
};

enum class ClockKind { none, local, utc, timeOfDay };

class TraceOrder {
public:
    explicit TraceOrder(ClockKind clock) : m_clock(clock) {}
    /// Takes rows out of the block and shifts times, so that all times ascend strictly.
    /// @param time_s  the block's times, as timesOf() gives them; afterwards those of the rows kept
    void put(TraceBlock& block, std::vector<double>& time_s);
    [[nodiscard]] const OrderCounts& counts() const { return m_counts; }
    /// What was added to the times of the longest part of the recording between two changes of its
    /// clock: so time 0 of that part's clock.
    [[nodiscard]] std::int64_t mainShift_us() const;

private:
    struct Part {
        std::int64_t shift_us = 0;
        std::int64_t midnights_us = 0; ///< the part of the shift that is whole days passed
        std::int64_t rows = 0;
    };
    enum class Step { ahead, repeated, behind };

    bool isUneventful(const std::vector<double>& time_s) const;
    void inspect(const std::vector<double>& time_s);
    bool takeRow(const std::vector<double>& time_s, std::size_t row);
    bool takeBehind(const std::vector<double>& time_s, std::size_t row);
    void noteInterval(double interval_s);
    void changeClock(double time_s);
    void keep(double shifted_s);
    [[nodiscard]] double shift_s() const
    {
        return static_cast<double>(m_parts.back().shift_us) / 1e6;
    }
    void applyShifts(TraceBlock& block, std::vector<double>& time_s) const;

    ClockKind m_clock;
    OrderCounts m_counts;
    std::vector<Part> m_parts{1};
    bool m_started = false;
    double m_candidate_s = 0.0; ///< an interval that may become the usual one
    int m_agreeing = 0;         ///< intervals in turn that are like it

    std::vector<bool> m_keep; ///< of the block at hand
    bool m_dropped = false;
    std::vector<std::pair<std::size_t, std::int64_t>> m_shifts; ///< from which row, us
};

/// The times of a block in s; NaN where a row has none.
void timesOf(const TraceBlock& block, std::vector<double>& time_s);

} // namespace bothways::storage
