// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/cutting.h"
#include "core/recording/trace.h"
#include "core/study/study.h"
#include "storage/study/study_file.h"

#include <filesystem>
#include <map>
#include <memory>
#include <stop_token>

/// What the runs of a study or of a sheet have been recorded.
namespace bothways::storage {

/// An Error (studyFile) where a recording of the study is not what came in: a byte, a chunk, or
/// what is said of a chunk. It names the recording, its runs and the channel. Reads every byte.
[[nodiscard]] Outcome checkRecordings(const StudyFile& study, const std::stop_token& stop = {});
/// The traces of a study's runs, for screen(). The study must outlive it. A run's window ends
/// where the next run of the same recording starts, and begins where the one before ends. Throws
/// UnreadableRecording as every RunTrace does, also where it was asked to stop.
[[nodiscard]] core::TraceProvider tracesOf(const StudyFile& study, std::stop_token stop = {});
/// Where the recordings of a run sheet are, and how their clocks go.
struct SheetTraces {
    /// Those that are not where the sheet has them, relative to its own folder, are looked for
    /// here, by the way that the sheet has and by their names alone; empty: nowhere else.
    std::filesystem::path folder = {};
    double shift_s = 0.0; ///< is added to the times of their clocks
};
using TraceFiles = std::map<int, std::filesystem::path>; ///< by the run's number
/// The files that a run sheet names in its column 'trace'. An Error names every one that is not
/// there.
[[nodiscard]] Result<TraceFiles> traceFiles(const core::Study& runs,
                                            const std::filesystem::path& sheet,
                                            const SheetTraces& where = {});
/// The traces that a run sheet names in its column 'trace'; an Error names every file that is not
/// there, or the first that cannot be read.
[[nodiscard]] Result<core::TraceProvider> tracesOfSheet(const std::filesystem::path& sheet,
                                                        const core::Study& study,
                                                        const std::stop_token& stop = {},
                                                        const SheetTraces& where = {});
/// One recording file whole in memory, for small files. Its time 0 becomes the run's start: by
/// the clock where the recording has one (see core::matchClocks), else as it stands.
[[nodiscard]] Result<std::unique_ptr<core::RunTrace>>
readTraceFile(const std::filesystem::path& file, const core::Run& run,
              const std::stop_token& stop = {}, const core::ClockOptions& clock = {});

} // namespace bothways::storage
