// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"
#include "core/study/study.h"
#include "storage/study/study_file.h"

#include <filesystem>
#include <memory>

/// What the runs of a study or of a sheet have been recorded.
namespace bothways::storage {

/// The traces of a study's runs, for screen(). The study must outlive it. A run's window ends
/// where the next run of the same recording starts, and begins where the one before ends.
[[nodiscard]] core::TraceProvider tracesOf(const StudyFile& study);
/// The traces that a run sheet names in its column 'trace', relative to the sheet's folder; an
/// Error names the first file that cannot be read.
[[nodiscard]] Result<core::TraceProvider> tracesOfSheet(const std::filesystem::path& sheet,
                                                        const core::Study& study);
/// One recording file whole in memory, for small files. Its time 0 becomes the run's start: by
/// the clock where the recording has one (see core::matchClocks), else as it stands.
[[nodiscard]] Result<std::unique_ptr<core::RunTrace>>
readTraceFile(const std::filesystem::path& file, const core::Run& run);

} // namespace bothways::storage
