// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/loggers/trace_report.h"
#include "storage/recordings/cut.h"
#include "storage/study/study_file.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

/// Recordings of data loggers, into the study file.
namespace bothways::storage {

struct TraceImportOptions {
    std::optional<int> run; ///< number of the run that the recording belongs to; none: not yet cut
    /// Empty: the one kept for this header; without one, known names map by themselves and others
    /// keep theirs. What is given here is kept.
    std::vector<ChannelMapping> mapping;
    CutsOf cuts; ///< the recording is cut in the same change, or does not come in; may be empty
    /// How the recorder's clock relates to the study's times; a recording comes in with its clock
    /// set right.
    core::ClockOptions clock;
    std::string date; ///< YYYY-MM-DD for times of day; empty: the study's
    /// Of a recording without a clock: when its time 0 was, as recordingStart() takes it.
    std::string start;
    std::function<void(double done, double bytesPerSecond)> progress; ///< on the caller's thread
    std::stop_token stop;
};

/// Imports CSV, GPX 1.1 or NMEA 0183 (told apart by content). Commits in batches under a mark
/// 'unfinished', and the recording, its run and the mapping in one at the end; an Error (also of a
/// stop) leaves the study as it was.
[[nodiscard]] Result<TraceReport> importTrace(StudyFile& study, const std::filesystem::path& file,
                                              const TraceImportOptions& options = {});

/// When a recording without a clock began, as people say it: date and time, or a time of day of the
/// study's date or of the only day that it has runs of.
[[nodiscard]] Result<core::Instant> recordingStart(const std::string& words,
                                                   const core::Study& study);

/// Whether a file is a logger's by its first lines: it names a time, with a clock or without, and
/// beside it stand numbers.
[[nodiscard]] bool looksLikeRecording(const std::filesystem::path& file);

/// @param study  for the mapping kept for this header; may be null
[[nodiscard]] Result<TracePreview> previewTrace(const std::filesystem::path& file,
                                                const StudyFile* study = nullptr);

} // namespace bothways::storage
