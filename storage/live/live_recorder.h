// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"
#include "storage/instruments/rig_reader.h"
#include "storage/study/study_file.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// A recording that is made while it is driven: in the study from the first second, and kept up to
/// the last commit whatever happens. (chunk.md, "Live".)
namespace bothways::storage {

/// What was counted of an instrument, for the record.
struct LiveCounts {
    std::string instrument;
    std::int64_t lines = 0, garbage_lines = 0, lost_bytes = 0, reconnects = 0, silences = 0;
    std::optional<double> clock_drift_s;
    friend bool operator==(const LiveCounts&, const LiveCounts&) = default;
};

struct LiveBeginning {
    std::string name;    ///< of the recording: "2026-05-09 05:40"
    core::Instant first; ///< of its time 0
    std::string rig;     ///< rigText(): what was read with which factor is part of the record
};

/// Every commit leaves a study that is whole: the recording is one like any other that grows. So
/// whoever reads meanwhile, or opens after a sudden end, finds it. It is not undone (the actions of
/// people are), but may be dropped; runs are given their part with cutRecording(), from any
/// connection. Not for use from two threads at once; `study` must outlive it and not be used
/// meanwhile (open another() connection for that).
class LiveRecorder {
public:
    [[nodiscard]] static Result<LiveRecorder> begin(StudyFile& study, const LiveBeginning& what);
    LiveRecorder(LiveRecorder&&) noexcept;
    LiveRecorder& operator=(LiveRecorder&&) = delete;
    /// Without stop(): what was committed stays and is said when the study is opened next.
    ~LiveRecorder();

    /// What readings mean: RigReader::channels(), which only grows. Two that are called alike get a
    /// number behind their names.
    void setChannels(const std::vector<ReadChannel>& channels);
    /// Waits in memory for commit(). Ascending in time for each instrument.
    void put(std::span<const Reading> readings);
    void mark(double at_s, std::string words);
    /// What was put with a time before `until_s` is on disk when it returns; call it twice a
    /// second, with what all instruments have surely delivered. What is put later with an earlier
    /// time is left out and counted. After an Error nothing is lost: the next commit takes it
    /// along.
    [[nodiscard]] Outcome commit(double until_s);
    /// Commits the rest, packs small chunks into one, and closes the record.
    [[nodiscard]] Outcome stop(const std::vector<LiveCounts>& counts);

    /// In the study from the first commit with a reading on; nothing before.
    [[nodiscard]] std::optional<core::RecordingId> recording() const;
    [[nodiscard]] std::int64_t samples() const; ///< put so far
    [[nodiscard]] std::int64_t waiting() const; ///< of them in memory alone
    [[nodiscard]] std::int64_t late() const;    ///< left out, see commit()
    [[nodiscard]] std::int64_t bytes() const;   ///< of chunks in the study file

private:
    struct Private;
    explicit LiveRecorder(std::unique_ptr<Private> p);
    std::unique_ptr<Private> d;
};

/// How a recording of the study was made live.
struct LiveRecord {
    std::string rig;                ///< rigText()
    std::vector<LiveCounts> counts; ///< none where it was not stopped
    bool ended = false;             ///< false: it goes on, or the program ended before it did
};
/// Nothing where the recording came as a file.
[[nodiscard]] Result<std::optional<LiveRecord>> liveRecord(const StudyFile& study,
                                                           core::RecordingId recording);

struct RecoveredRecording {
    core::RecordingId recording{};
    std::string name;
    double length_s = 0.0;
};
/// For the one who has opened a study for writing, before anything is recorded: recordings that
/// nobody stopped, up to their last commit. A line of the history says so, once.
[[nodiscard]] Result<std::vector<RecoveredRecording>> sayRecovered(StudyFile& study);

} // namespace bothways::storage
