// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "app/cli/record/record_order.h"
#include "app/cli/record/record_voice.h"
#include "app/live/run_desk.h"

#include <deque>
#include <optional>
#include <string>
#include <vector>

namespace bothways::cli {

/// Does a companion's orders and says what happens, on a terminal or in lines.
class RecordDesk {
public:
    /// @param configuration  of the runs that the recording begins (Rig::runs); empty: what comes
    ///                       next
    RecordDesk(storage::StudyFile& study, app::LiveSession& session, std::string configuration,
               Surroundings& io);

    void order(std::string_view line);
    /// Begins and ends runs where what is recorded says so; then what is new since the last call:
    /// alarms, instruments, what is said of the run that ended.
    void announce();
    /// Nothing comes any more: ends the run under way where what is recorded says so, and waits a
    /// moment for what screening says of it.
    void finishRuns();
    void showStatus() { m_voice.showStatus(m_session.snapshot()); }
    [[nodiscard]] bool isStopping() const { return m_stopping; }
    [[nodiscard]] bool isUnderWay() const { return m_desk.isUnderWay(); }
    [[nodiscard]] int written() const { return m_written; }

private:
    void obey(const RecordOrder& order);
    void start(const std::vector<std::string>& words);
    void begin(const app::RunDesk::Beginning& beginning);
    void followFound();
    void follow(const core::FoundBound& found);
    void beginFound(const core::FoundBound& found);
    void dropFound();
    void end(const std::vector<std::string>& words);
    void written(const core::Run& run);
    void sayEnd(const core::Run& run);
    void mark(const std::vector<std::string>& words);
    void weather(const std::vector<std::string>& words);
    void discard(const std::vector<std::string>& words);
    void sayNext();
    void sayRun(const core::Run& run, core::Text<3> what);
    void sayEnded(const app::LiveSnapshot& now);
    [[nodiscard]] Result<std::optional<core::Consumption>>
    consumptionFrom(const std::vector<std::string>& words) const;

    Surroundings& m_io;
    RecordVoice m_voice;
    app::LiveSession& m_session;
    storage::StudyFile& m_study;
    app::RunDesk m_desk;
    std::string m_configuration;          ///< of runs that the recording begins
    bool m_waitsForEnd = false;           ///< a run was written, and screening has not said yet
    std::deque<core::FoundBound> m_found; ///< not followed yet
    int m_waits = 0;                      ///< looks that the foremost has waited
    bool m_isFound = false;               ///< what is recorded began the run under way
    bool m_awaitsNumber = false; ///< the run written last ended by itself; none was typed for it
    bool m_stopping = false;
    int m_written = 0;
};

} // namespace bothways::cli
