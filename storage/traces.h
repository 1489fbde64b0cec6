// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/result.h"
#include "core/screening.h"
#include "core/study.h"
#include "core/trace.h"
#include "storage/study_file.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

/// Recordings of data loggers: into the study file, and out of it again. (Method 9; DEVELOPERS.md,
/// "Traces".)
namespace bothways::storage {

/// Where a logger's column goes. Kept by the logger's header, and offered again.
struct ChannelMapping {
    std::string column;  ///< as in the header
    std::string channel; ///< our name, or the column's own; empty: left out
    double factor = 1.0; ///< value = cell * factor + offset (units)
    double offset = 0.0;
};

struct TraceImportOptions {
    std::optional<int> run; ///< number of the run that the recording belongs to; none: not yet cut
    std::vector<ChannelMapping>
        mapping; ///< empty: known names map by themselves, others keep theirs
    std::function<void(double done, double bytesPerSecond)> progress;
    std::stop_token stop;
};

/// What was met in a recording, and counted.
struct TraceReport {
    core::RecordingId recording{};
    std::int64_t rows = 0, missing_cells = 0, repeated_times = 0, backward_times = 0,
                 clock_changes = 0;
    bool half_last_line = false;
    std::vector<std::string> channels;
    std::optional<core::Instant> first; ///< where the recording has a clock
    double length_s = 0.0;
};

/// Imports CSV, GPX 1.1 or NMEA 0183 (told apart by content). An Error leaves the study as it was.
[[nodiscard]] Result<TraceReport> importTrace(StudyFile& study, const std::filesystem::path& file,
                                              const TraceImportOptions& options = {});

struct RecordingInfo {
    core::RecordingId id{};
    std::string name;                   ///< of the file it came from
    std::optional<core::Instant> first; ///< of its time 0, where it has a clock
    double length_s = 0.0;
    std::vector<core::ChannelInfo> channels;
    std::int64_t samples = 0;
};
[[nodiscard]] Result<std::vector<RecordingInfo>> recordings(const StudyFile& study);
[[nodiscard]] Outcome dropRecording(StudyFile& study, core::RecordingId recording);

/// A whole channel of a recording; times from the recording's start.
[[nodiscard]] Result<core::Samples> readChannel(const StudyFile& study, core::RecordingId recording,
                                                std::string_view channel);

/// Says which part of a recording a run is: `offset_s` is the run's start in the recording's time.
[[nodiscard]] Outcome assignTrace(StudyFile& study, core::RunId run, core::RecordingId recording,
                                  double offset_s);

/// The traces of a study's runs, for screen(). The study must outlive it.
[[nodiscard]] core::TraceProvider tracesOf(const StudyFile& study);
/// The traces that a run sheet names in its column 'trace', relative to the sheet's folder; an
/// Error names the first file that cannot be read.
[[nodiscard]] Result<core::TraceProvider> tracesOfSheet(const std::filesystem::path& sheet,
                                                        const core::Study& study);
/// One recording file whole in memory, for small files.
[[nodiscard]] Result<std::unique_ptr<core::RunTrace>>
readTraceFile(const std::filesystem::path& file, const core::Run& run);

} // namespace bothways::storage
