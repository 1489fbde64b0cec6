// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"
#include "core/base/result.h"
#include "storage/bytes/decimal.h"
#include "storage/instruments/rig.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

/// Reads the instruments of a rig, all at once, in a thread of its own.
namespace bothways::storage {

/// One value as it came: `integer / 10^decimals`, before factor and offset. Nothing is rounded:
/// what has more digits than fit is given as the nearest double in `odd`.
struct Reading {
    std::uint32_t channel = 0; ///< place in RigReader::channels()
    double time_s = 0.0;       ///< of arrival, since the reader began (its clock(), see there)
    std::int64_t integer = 0;
    std::int16_t decimals = 0; ///< 0 to 22; -1: `odd` counts
    double odd = 0.0;
    [[nodiscard]] double value() const ///< before factor and offset
    {
        return decimals < 0 ? odd
                            : static_cast<double>(integer) /
                                  kPowersOfTen[static_cast<std::size_t>(decimals)];
    }
};

/// Words that came with a time of their own: a column "mark" of lines or of a replayed recording.
struct ReadMark {
    std::uint32_t instrument = 0; ///< place in the rig
    double time_s = 0.0;
    std::string words;
};

/// A channel that is read. The list only grows: what an instrument without a list of channels
/// prints gets a place when it is first seen.
struct ReadChannel {
    std::uint32_t instrument = 0; ///< place in the rig
    RigChannel channel;
    bool derived = false; ///< computed from others by common practice (fuel from air mass)
};

/// What has become of an instrument so far. Counts only grow.
struct InstrumentState {
    enum class Is {
        opening, ///< not yet open, or to be opened again
        reading,
        silent, ///< open, and nothing has come for longer than it should
        failed, ///< cannot be opened: `trouble` says why; it is tried again every second
        ended   ///< a replay or a file that will not grow any more
    };
    Is is = Is::opening;
    core::Message trouble; ///< the last one; empty: none
    std::int64_t bytes = 0, lines = 0, readings = 0;
    std::int64_t garbage_lines = 0; ///< that could not be read
    std::int64_t lost_bytes = 0;    ///< of lines too long, or that came faster than they were read
    std::int64_t reconnects = 0, silences = 0;
    std::optional<double> last_s;        ///< when something was last read
    std::optional<double> clock_drift_s; ///< its own clock against ours since it began
};

/// How patient a reader is; tests are in a hurry.
struct RigPace {
    double try_again_s = 1.0; ///< after what could not be opened, or was lost
    double silence_s = 2.0;   ///< the shortest that counts as one
};

class RigReader {
public:
    /// Begins to read. What cannot be opened is tried again and said in states(); an Error only
    /// where the rig itself makes no sense (no instrument, an address that is none).
    [[nodiscard]] static core::Result<RigReader> start(const Rig& rig, const RigPace& pace = {});
    RigReader(RigReader&&) noexcept;
    RigReader& operator=(RigReader&&) noexcept;
    ~RigReader(); ///< stops; within a second

    /// Seconds since it began, on the monotonic clock, which goes on while the computer sleeps
    /// (CLOCK_BOOTTIME). In a rig of replays alone: the time of the recordings, at their speed.
    [[nodiscard]] double clock_s() const;
    /// Appends what came since the last call, ascending in time for each instrument; a line's
    /// readings have one time. Times are whole microseconds; those of one channel ascend strictly.
    /// Lines that came in one piece are spread over the time since the piece before, 50 ms at most.
    void take(std::vector<Reading>& readings);
    /// Marks since the last call.
    void takeMarks(std::vector<ReadMark>& marks);
    /// Only appended to.
    [[nodiscard]] std::vector<ReadChannel> channels() const;
    /// In order of the rig's instruments.
    [[nodiscard]] std::vector<InstrumentState> states() const;
    /// All instruments have ended (replays).
    [[nodiscard]] bool ended() const;
    void stop();

private:
    struct Private;
    explicit RigReader(std::unique_ptr<Private> p);
    std::unique_ptr<Private> d;
};

} // namespace bothways::storage
