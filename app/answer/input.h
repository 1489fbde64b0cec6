// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/answer.h"
#include "core/base/result.h"
#include "storage/bytes/file_bytes.h"
#include "storage/recordings/run_traces.h"
#include "storage/sheet/run_sheet.h"
#include "storage/study/study_file.h"

#include <filesystem>
#include <memory>
#include <stop_token>
#include <string>
#include <utility>
#include <vector>

/// From a file that a person names to what an answer is made from.
namespace bothways::app {

/// A study or a run sheet, told apart by content.
struct Input : Material {
    std::filesystem::path path;
    std::unique_ptr<storage::StudyFile> file;    ///< null for a run sheet
    std::vector<storage::OwnColumn> own_columns; ///< of a sheet, without a meaning
    storage::TraceFiles trace_files;             ///< of a sheet
    std::vector<std::string> lacking_columns; ///< that it was said to have; see RunSheet::lacking
    [[nodiscard]] bool isSheet() const { return file == nullptr; }
    /// The study's name, else the file's without its ending.
    [[nodiscard]] std::string name() const;
    /// The file's name without its folder; "standard input" for that.
    [[nodiscard]] std::string fileName() const;
    /// The file itself, and the recordings that a sheet names.
    [[nodiscard]] std::vector<std::filesystem::path> filesRead() const;
};

struct InputOptions {
    /// For this once in place of the study's own: name and value, as setProperty() takes them.
    std::vector<std::pair<std::string, std::string>> properties;
    std::string today; ///< YYYY-MM-DD, for sheets with times of day
    /// Whether a sheet may come through a pipe, or as "-" from standard input.
    storage::Streams streams = storage::Streams::refused;
    std::stop_token stop = {}; ///< asked between recordings and inside them
    /// How a spreadsheet is to be read; its date and today are those of this.
    storage::SheetOptions sheet = {};
    storage::SheetTraces traces = {}; ///< of a sheet: where its recordings are
};

/// Whether a path is meant as a study: by its content, else by its ending.
[[nodiscard]] bool meansAStudy(const std::filesystem::path& path);

/// Reads it whole: the runs, the recordings that a sheet names in its column 'trace' or that the
/// study holds, overruled findings. Errors are those of the readers; a baseline among the options
/// that no run has is wrong use. Every recording of a study is checked whole, whoever asks and for
/// what: a study with a damaged one is not answered from what is left.
[[nodiscard]] core::Result<Input> readInput(const std::filesystem::path& path,
                                            const InputOptions& options);

/// The answer to what was read, with the options that its properties ask for.
[[nodiscard]] core::Result<std::shared_ptr<const ResultSet>> answerTo(const Input& input,
                                                                      std::stop_token stop = {});

} // namespace bothways::app
