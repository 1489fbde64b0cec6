// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"
#include "storage/loggers/trace_report.h"
#include "storage/recordings/run_traces.h"
#include "storage/sheet/run_sheet.h"
#include "storage/study/study_file.h"

#include <filesystem>
#include <functional>
#include <stop_token>
#include <string>
#include <vector>

/// A run sheet with the recordings that its column 'trace' names, into a study.
namespace bothways::storage {

struct SheetImportOptions {
    /// A recording's name, the share of it that is done, and how fast it goes.
    std::function<void(const std::string& name, double done, double bytesPerSecond)> progress;
    std::stop_token stop;    ///< asked within a recording and between two
    SheetTraces traces = {}; ///< where its recordings are, and how their clocks go
};

struct ImportedRecording {
    std::string name; ///< of its file
    TraceReport report;
};

[[nodiscard]] bool namesRecordings(const core::Study& runs);

/// Whether a file that was taken for a run sheet is a recording of a logger: it looks like one, and
/// no column of it is known to be a configuration or a direction.
/// @param bytes  of the file; empty where it could not be read as a sheet
[[nodiscard]] bool isRecordingInstead(const std::filesystem::path& file, std::string_view bytes,
                                      const SheetOptions& options = {});

/// All of it, or an Error and a study as it was, whatever happens meanwhile: recordings are read
/// first and lie in the file unfinished, then runs and recordings become parts of the study in one
/// commit. What a sudden end leaves of them is removed when the study is opened next. They are
/// one step of undo.
/// @param runs   what was read from the sheet
/// @param sheet  its file: recordings are named relative to its folder
[[nodiscard]] Result<std::vector<ImportedRecording>>
importSheet(StudyFile& study, const core::Study& runs, const std::filesystem::path& sheet,
            const SheetImportOptions& options = {});

/// What a person said of the columns of a sheet with this header, and of its dates, when one came
/// into the study; kept by the header as the columns of recordings are. What `options` say
/// themselves comes before it.
/// @param name  of the file
[[nodiscard]] SheetOptions withKeptColumns(const StudyFile& study, std::string_view bytes,
                                           const std::string& name, SheetOptions options);
/// Keeps what `options` say for the next sheet with this header; nothing where they say nothing.
[[nodiscard]] Outcome keepColumns(StudyFile& study, std::string_view bytes, const std::string& name,
                                  const SheetOptions& options);

} // namespace bothways::storage
