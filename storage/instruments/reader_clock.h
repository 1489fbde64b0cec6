// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <mutex>
#include <optional>
#include <vector>

/// What time it is for the instruments of a rig.
namespace bothways::storage {

/// Seconds on the monotonic clock that goes on while the computer sleeps.
[[nodiscard]] double bootTime_s();

class ReaderClock {
public:
    ReaderClock() : m_begin_s(bootTime_s()) {}
    /// Since the reader began.
    [[nodiscard]] double elapsed_s() const { return bootTime_s() - m_begin_s; }

private:
    double m_begin_s;
};

/// Replays begin together: each says when its recording began and waits for the others. The time
/// of a rig of replays alone is what all of them have handed over.
class ReplayStart {
public:
    ReplayStart(std::size_t replays, double speed) : m_waiting(replays), m_speed(speed)
    {
        m_reached_s.resize(replays, 0.0);
        m_ended.resize(replays, false);
        m_first_s.resize(replays);
    }
    /// @param first_s  of the recording by a clock, s since 1970; nothing: it has none
    void ready(std::size_t replay, std::optional<double> first_s);
    /// All are ready, or have failed.
    [[nodiscard]] bool begun() const;
    /// Of the recording's first row in the common time; only once it has begun.
    [[nodiscard]] double offset_s(std::size_t replay) const;
    /// Where in the common time the replays should be by now.
    [[nodiscard]] double due_s() const;
    [[nodiscard]] double speed() const { return m_speed; }
    /// All rows up to there are handed over.
    void reached(std::size_t replay, double at_s, bool ended);
    [[nodiscard]] double time_s() const;

private:
    mutable std::mutex m_mutex;
    std::size_t m_waiting;
    double m_speed;
    double m_begin_s = 0.0;
    std::vector<std::optional<double>> m_first_s;
    std::vector<double> m_reached_s;
    std::vector<bool> m_ended;
};

} // namespace bothways::storage
