// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/watching/run_finder.h"
#include "core/watching/watcher.h"
#include "storage/instruments/rig_reader.h"
#include "storage/live/live_recorder.h"
#include "storage/study/study_file.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

/// Instruments, recorder and watcher as one: what `bothways record` and the window's watch page
/// both drive. Works in a thread of its own; every call but finishRuns() and stop() returns at
/// once.
namespace bothways::app {

/// One channel as it is now.
struct LiveChannel {
    std::string name, unit; ///< ours
    std::uint32_t instrument = 0;
    bool derived = false;
    std::optional<double> value;  ///< the latest, in our unit
    std::optional<double> last_s; ///< its time
    double rate_hz = 0.0;         ///< over the last five seconds
    /// The last minute: least and most of each fifth of a second (300 at most), oldest first; the
    /// last one may still grow. NaN: nothing came.
    std::vector<float> low, high;
    double strip_to_s = 0.0; ///< end of the newest
};

/// All that a page shows, of one moment.
struct LiveSnapshot {
    double now_s = 0.0; ///< in the recording's time
    std::vector<LiveChannel> channels;
    std::vector<storage::InstrumentState> instruments;
    std::vector<std::string> instrument_names;
    std::vector<core::Alarm> alarms;      ///< gravest first, before and during a run
    std::optional<double> run_s;          ///< since the start of the run under way
    std::optional<double> distance_km;    ///< driven in it, from road speed or position
    std::optional<core::Screening> ended; ///< what is said of the run that ended last
    std::int64_t samples = 0, bytes = 0;
    std::optional<double> disk_full_min; ///< at this pace, when under an hour
    std::optional<core::Error> trouble;  ///< of the recorder: the disk, the study
    bool finished = false;               ///< stopped, or all replays have ended
};

/// Runs are to begin by speed, and the study has no target.
[[nodiscard]] bool lacksTarget(const core::RunsBy& runs, const core::Study& study);

class LiveSession {
public:
    /// @param connection  of its own (StudyFile::another())
    /// @param first       of time 0, by the study's clock
    /// @param name        of the recording
    /// @return  an Error (badInput) too where runs are to begin by speed (Rig::runs) and the study
    ///          has no target
    [[nodiscard]] static core::Result<std::unique_ptr<LiveSession>>
    start(storage::StudyFile connection, const storage::Rig& rig, const core::Instant& first,
          const std::string& name);
    ~LiveSession(); ///< stops

    [[nodiscard]] LiveSnapshot snapshot() const;
    [[nodiscard]] double clock_s() const;
    [[nodiscard]] core::Instant first() const; ///< of time 0

    /// What will be driven next, so that its timers are foreseen before it begins.
    void next(const core::RunUnderWay& run);
    /// Alarms are about this run from now on.
    void begin(const core::RunUnderWay& run);
    void mark(double at_s, const std::string& word, const std::string& words);
    void end(double at_s);
    void forget(); ///< the run under way does not count
    /// Where runs begin and end by what is recorded (Rig::runs), since the last call. Who takes
    /// them does what they say, with begin(), end() and forget(); the session does nothing.
    [[nodiscard]] std::vector<core::FoundBound> takeFound();
    /// Nothing will be driven any more: takeFound() has then the end of the run under way, too.
    /// Waits for it, a moment.
    void finishRuns();
    /// The study has changed: limits, runs.
    void setStudy(core::Study study);
    /// The recording in the study, from the first sample on: runs are given their part with
    /// storage::cutRecording() on any connection, at offset_s in the recording's time.
    [[nodiscard]] std::optional<core::RecordingId> recording() const;
    [[nodiscard]] const std::string& name() const;

    /// Packs what was recorded; waits for it. An Error leaves what was committed in the study.
    [[nodiscard]] core::Outcome stop();

private:
    struct Private;
    explicit LiveSession(std::unique_ptr<Private> p);
    std::unique_ptr<Private> d;
};

} // namespace bothways::app
