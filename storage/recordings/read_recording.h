// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/recordings/trace_import.h"
#include "storage/recordings/trace_store.h"

#include <filesystem>
#include <optional>
#include <string>

/// For the files of storage/ alone.
namespace bothways::storage {

/// A recording whose rows lie in the study file, unfinished: unless it is finished and kept, they
/// are taken out again, by itself or, after a sudden end, when the study is opened next.
struct ReadRecording {
    TraceWriter writer;
    FinishedRecording recording;
    TraceReport report;

    /// @param run        that it belongs to; may be null, and need not be in the study yet
    /// @param known      the study, for times of day
    [[nodiscard]] static Result<ReadRecording> read(StudyFile& study,
                                                    const std::filesystem::path& file,
                                                    const core::Run* run, const core::Study& known,
                                                    const TraceImportOptions& options);
    /// Makes it a recording of the study; as a part of the caller's transaction, after which
    /// writer.keep() is called.
    /// @param run  its identity, where it was not in the study when the recording was read
    [[nodiscard]] Outcome finish(const std::optional<core::RunId>& run = {});
};

} // namespace bothways::storage
