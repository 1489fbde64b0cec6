// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "app/cli/record/record_order.h"
#include "app/live/run_desk.h"

#include <chrono>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace bothways::cli {

/// Does a companion's orders and says what happens, on a terminal or in lines.
class RecordDesk {
public:
    RecordDesk(storage::StudyFile& study, app::LiveSession& session, Surroundings& io);

    void order(std::string_view line);
    /// What is new since the last call: alarms, instruments, what is said of the run that ended.
    void announce();
    /// A line over the last one, where a terminal shows it.
    void showStatus();
    [[nodiscard]] bool isStopping() const { return m_stopping; }
    [[nodiscard]] bool isUnderWay() const { return m_desk.isUnderWay(); }
    [[nodiscard]] int written() const { return m_written; }

private:
    using Clock = std::chrono::steady_clock;
    struct Said {
        int times = 0;
        Clock::time_point last;
        bool heard = false;
    };

    void obey(const RecordOrder& order);
    void start(const std::vector<std::string>& words);
    void end(const std::vector<std::string>& words);
    void mark(const std::vector<std::string>& words);
    void weather(const std::vector<std::string>& words);
    void discard(const std::vector<std::string>& words);
    void sayNext();
    void sayRun(const core::Run& run, core::Text<3> what);
    void sayAlarms(const app::LiveSnapshot& now);
    void sayInstruments(const app::LiveSnapshot& now);
    void sayEnded(const app::LiveSnapshot& now);
    void sayTrouble(const app::LiveSnapshot& now);
    void tell(const std::string& line);             ///< on standard output
    void alarm(const std::string& line, bool bell); ///< on standard error
    void refuse(const core::Error& error);
    void clearStatus();
    [[nodiscard]] Result<std::optional<core::Consumption>>
    consumptionFrom(const std::vector<std::string>& words) const;

    Surroundings& m_io;
    app::LiveSession& m_session;
    storage::StudyFile& m_study;
    app::RunDesk m_desk;
    std::map<std::string, Said> m_said;     ///< by the alarm's key
    std::set<std::string> m_lacks;          ///< that were said: once is enough
    std::vector<std::string> m_instruments; ///< what was said of each last
    std::string m_trouble;
    bool m_waitsForEnd = false; ///< a run was written, and screening has not said yet
    bool m_stopping = false;
    bool m_diskSaid = false;
    std::size_t m_status = 0; ///< width of the line that stands
    int m_written = 0;
};

} // namespace bothways::cli
