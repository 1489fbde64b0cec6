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
    Rig rig;
};

/// Not for use from two threads at once; `study` must outlive it and not be used meanwhile (open
/// another() connection for that).
class LiveRecorder {
public:
    [[nodiscard]] static Result<LiveRecorder> begin(StudyFile& study, const LiveBeginning& what);
    LiveRecorder(LiveRecorder&&) noexcept;
    LiveRecorder& operator=(LiveRecorder&&) = delete;
    /// Without stop(): what was committed stays and is recovered when the study is opened next.
    ~LiveRecorder();

    /// What readings mean: RigReader::channels(), which only grows.
    void setChannels(const std::vector<ReadChannel>& channels);
    /// In any order within two seconds; what is later than that counts as lost.
    void put(std::span<const Reading> readings);
    void mark(double at_s, std::string words);
    /// Which part is a run's: when it has been written to the study.
    [[nodiscard]] Outcome assign(core::RunId run, double offset_s);
    /// On disk when it returns; at least once a second. After an Error nothing is lost: the next
    /// commit takes it along.
    [[nodiscard]] Outcome commit(const std::vector<LiveCounts>& counts);
    /// Packs, and makes it a recording of the study as a change that can be undone.
    [[nodiscard]] Result<core::RecordingId> stop(const std::vector<LiveCounts>& counts);

    [[nodiscard]] std::int64_t samples() const; ///< put so far
    [[nodiscard]] std::int64_t late() const;    ///< left out, see put()
    [[nodiscard]] std::int64_t bytes() const;   ///< in the study file

private:
    struct Private;
    explicit LiveRecorder(std::unique_ptr<Private> p);
    std::unique_ptr<Private> d;
};

/// How a recording of the study was made live; nothing where it came as a file.
struct LiveRecord {
    Rig rig;
    std::vector<LiveCounts> counts;
    bool recovered = false; ///< it was not stopped: what was committed is here
};
[[nodiscard]] Result<std::optional<LiveRecord>> liveRecord(const StudyFile& study,
                                                           core::RecordingId recording);
/// Recordings that were recovered when this study was opened.
[[nodiscard]] std::vector<core::RecordingId> recoveredAtOpening(const StudyFile& study);

} // namespace bothways::storage
