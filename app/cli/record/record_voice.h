// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "app/live/live_session.h"

#include <chrono>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace bothways::cli {

/// What `bothways record` says: lines on standard output, alarms with a bell on standard error, and
/// on a terminal a line that is written over.
class RecordVoice {
public:
    explicit RecordVoice(Surroundings& io) : m_io(io) {}

    void tell(const std::string& line);             ///< on standard output
    void alarm(const std::string& line, bool bell); ///< on standard error
    void refuse(const core::Error& error);

    /// What is new since the last call: instruments, trouble, alarms. One that is not heard is said
    /// three times.
    void announce(const app::LiveSnapshot& now);
    void heard();                           ///< the alarms that stand
    void forgetAlarms() { m_said.clear(); } ///< those of the next run are new
    /// A line over the last one, where a terminal shows it.
    void showStatus(const app::LiveSnapshot& now);
    void typed() { m_status = 0; } ///< by somebody, behind that line

private:
    using Clock = std::chrono::steady_clock;
    struct Said {
        int times = 0;
        Clock::time_point last;
        bool heard = false;
    };

    void sayAlarms(const app::LiveSnapshot& now);
    void sayInstruments(const app::LiveSnapshot& now);
    void sayTrouble(const app::LiveSnapshot& now);
    void clearStatus();

    Surroundings& m_io;
    std::map<std::string, Said> m_said;     ///< by the alarm's key
    std::set<std::string> m_lacks;          ///< that were said: once is enough
    std::vector<std::string> m_instruments; ///< what was said of each last
    std::string m_trouble;
    bool m_diskSaid = false;
    std::size_t m_status = 0; ///< width of the line that stands
};

} // namespace bothways::cli
