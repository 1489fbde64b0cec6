// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/recording/cutting.h"
#include "core/recording/trace.h"
#include "core/study/study.h"
#include "storage/study/study_file.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The recordings that a study holds, and which part of them is a run's.
namespace bothways::storage {

struct RecordingInfo {
    core::RecordingId id{};
    std::string name;                   ///< of the file it came from
    std::optional<core::Instant> first; ///< of its time 0, where it has a clock
    double from_s = 0.0, to_s = 0.0;    ///< times of its first and last row
    double length_s = 0.0;
    std::vector<core::ChannelInfo> channels;
    std::int64_t rows = 0;
    std::int64_t samples = 0; ///< of all channels
    std::int64_t bytes = 0;   ///< in the study file
    [[nodiscard]] core::RecordingSpan span() const { return {first, from_s, to_s}; }
};
[[nodiscard]] Result<std::vector<RecordingInfo>> recordings(const StudyFile& study);
/// Takes a recording, and what runs have of it, out of the study. May be undone until compact().
[[nodiscard]] Outcome dropRecording(StudyFile& study, core::RecordingId recording);
/// Frees the space of recordings that were dropped or whose import was undone: neither can be taken
/// back after that. Runs stay. @return  the bytes that the file became smaller by
[[nodiscard]] Result<std::int64_t> compact(StudyFile& study);

/// A whole channel of a recording; times in the recording's own.
[[nodiscard]] Result<core::Samples> readChannel(const StudyFile& study, core::RecordingId recording,
                                                std::string_view channel);
/// The channel between two times, both included.
[[nodiscard]] Result<core::Samples> readChannel(const StudyFile& study, core::RecordingId recording,
                                                std::string_view channel, double from_s,
                                                double to_s);
[[nodiscard]] Result<std::vector<core::RunTrace::TextMark>> readMarks(const StudyFile& study,
                                                                      core::RecordingId recording);
/// The whole recording as a RunTrace whose time 0 is its own, to be cut. The study must outlive it.
[[nodiscard]] Result<std::unique_ptr<core::RunTrace>> openRecording(const StudyFile& study,
                                                                    core::RecordingId recording);

/// A part of it, both ends included, whose time 0 is `zero_s` of the recording's time.
[[nodiscard]] Result<std::unique_ptr<core::RunTrace>> openPart(const StudyFile& study,
                                                               core::RecordingId recording,
                                                               double zero_s, double from_s,
                                                               double to_s);

/// Which part of which recording a run is.
struct RunTraceInfo {
    core::RunId run{};
    core::RecordingId recording{};
    double offset_s = 0.0; ///< the run's start in the recording's time
};
[[nodiscard]] Result<std::vector<RunTraceInfo>> assignedTraces(const StudyFile& study);

} // namespace bothways::storage
