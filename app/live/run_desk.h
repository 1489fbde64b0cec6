// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/live/live_session.h"
#include "app/live/next_run.h"
#include "app/live/weather.h"
#include "core/base/result.h"
#include "core/study/study.h"
#include "storage/study/study_file.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>

/// Starts, ends and discards runs while they are recorded: what a companion orders, without a
/// window. Each order is done, or refused with a sentence and nothing changed.
namespace bothways::app {

class RunDesk {
public:
    /// @param study  another connection than the session's; both must outlive the desk
    RunDesk(storage::StudyFile& study, LiveSession& session, UsualDirections usual);

    /// What a run is begun with; empty: as it comes next.
    struct Beginning {
        std::string configuration, direction, setting;
        std::optional<double> at_s; ///< in the recording's time; nothing: now
        bool isMarked = false;      ///< the recording has a mark of it
    };
    /// When a run ended.
    struct Ending {
        std::optional<double> at_s; ///< in the recording's time; nothing: now
        bool isMarked = false;      ///< the recording has a mark of it
    };
    [[nodiscard]] core::Result<UpNext> next() const;
    [[nodiscard]] core::Result<core::Run> start(const Beginning& beginning);
    /// The run under way begins a block that nobody walked round for: a note, nothing that spoils.
    [[nodiscard]] bool isWithoutWalkRound() const { return m_withoutWalkRound; }
    /// The run under way begins a block, and nothing of its weather was noted.
    [[nodiscard]] bool isWithoutWeather() const { return m_withoutWeather; }
    /// What is asked once a block: for the run under way, or else the next.
    void noteWeather(const Weather& noted);
    /// The next run begins a block, and nothing of its weather was noted.
    [[nodiscard]] bool isWeatherDue(const UpNext& next) const;
    [[nodiscard]] bool isUnderWay() const { return m_run.has_value(); }
    [[nodiscard]] double start_s() const { return m_start_s; } ///< of it, in the recording's time
    [[nodiscard]] const core::Run* underWay() const { return m_run ? &*m_run : nullptr; }

    /// @param word  a rule's name or anything else
    [[nodiscard]] core::Outcome mark(const std::string& word, const std::string& words);
    /// A timed accessory of the study was switched on now, before a run or during it.
    [[nodiscard]] core::Outcome switchOn(const std::string& accessory);
    /// Writes the run with its part of the recording. Without a consumption it is taken from the
    /// recording, where that has one.
    [[nodiscard]] core::Result<core::Run> end(const std::optional<core::Consumption>& consumption,
                                              const Ending& ending);
    [[nodiscard]] core::Result<core::Run> end(const std::optional<core::Consumption>& consumption)
    {
        return end(consumption, Ending());
    }
    /// Where what is recorded says that a run begins (Rig::runs): what it is begun with. A word of
    /// its mark that is a configuration of the study is its configuration.
    [[nodiscard]] core::Result<Beginning> beginningOf(const core::FoundBound& found) const;
    /// The run that was written last had no consumption noted: this is what the display shows.
    [[nodiscard]] core::Result<core::Run> note(const core::Consumption& consumption);
    /// The run under way is written as discarded, else the last one that was written.
    /// @return  it
    [[nodiscard]] core::Result<core::Run> discard(const core::Discard& why);
    /// The run under way is not written.
    [[nodiscard]] core::Outcome forget();
    /// Why the run that was written last should be discarded, by what screening says of it now;
    /// nothing where nothing spoils it, or the session has not said yet.
    [[nodiscard]] std::optional<core::Discard> spoiledBy() const;
    /// Unit of a number that is typed without one.
    [[nodiscard]] core::Result<core::ConsumptionUnit> unit() const;

private:
    [[nodiscard]] core::Instant at(double time_s) const;
    [[nodiscard]] core::Result<core::Run> write(core::Run run, const Ending& ending);
    [[nodiscard]] static std::string settingOf(const UpNext& next, const core::Study& study,
                                               const std::string& configuration);
    void tellSession();

    storage::StudyFile& m_study;
    LiveSession& m_session;
    UsualDirections m_usual;
    std::optional<core::Run> m_run; ///< under way
    bool m_withoutWalkRound = false;
    bool m_withoutWeather = false;
    Weather m_weather;      ///< that was noted, and stands in no counted run yet
    double m_start_s = 0.0; ///< of it, in the recording's time
    std::optional<core::Run> m_written;
    std::map<std::string, double> m_on_s; ///< accessory -> when it was switched on
};

} // namespace bothways::app
