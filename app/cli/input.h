// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "app/cli/options.h"
#include "core/effect/answer.h"
#include "core/recording/trace.h"
#include "core/screening/finding.h"
#include "core/study/study.h"
#include "storage/study/study_file.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

/// FILE of the command line: a study or a run sheet, told apart by content.
namespace bothways::cli {

struct Input {
    std::filesystem::path path;
    core::Study study;                        ///< with the overrides of the command line
    std::unique_ptr<storage::StudyFile> file; ///< null for a run sheet
    core::TraceProvider traces;
    std::vector<core::Note> notes; ///< what was found out about a sheet
    std::vector<storage::Overruled> overruled;
    std::string sha256; ///< of a sheet's bytes; of what a study says
    [[nodiscard]] bool isSheet() const { return file == nullptr; }
    /// The study's name, else the file's without its ending.
    [[nodiscard]] std::string name() const;
};

/// For the verbs that read.
[[nodiscard]] Result<Input> readInput(const std::filesystem::path& path, const Overrides& overrides,
                                      const Surroundings& io);

/// For the verbs that change something: a study, opened for writing. A run sheet is refused with
/// the way to make a study of it.
[[nodiscard]] Result<storage::StudyFile> openForChange(const std::filesystem::path& path);

/// The run with that number, or an Error (wrongUse) that names it.
[[nodiscard]] Result<core::RunId> runByNumber(const core::Study& study, int number,
                                              const std::filesystem::path& path);
[[nodiscard]] Result<std::vector<core::RunId>> runsByNumber(const core::Study& study,
                                                            const std::vector<int>& numbers,
                                                            const std::filesystem::path& path);
/// Opens the study for writing, finds the runs with these numbers, and has the job done on them.
[[nodiscard]] Outcome
changeRuns(const std::filesystem::path& path, const std::vector<int>& numbers,
           const std::function<Outcome(storage::StudyFile&, const std::vector<core::RunId>&)>& job);

/// Screens with a progress line on a terminal.
[[nodiscard]] core::Screening screenWithProgress(const Input& input, const Surroundings& io);

/// Of a study with a plan, every look at the verdict is on record (method, section 8).
void recordLook(const Input& input, const core::Analysis& analysis, Surroundings& io);

/// Writes results to a file, whole or not at all; never over a study.
[[nodiscard]] Outcome writeWholeFile(const std::filesystem::path& path, const std::string& text);

} // namespace bothways::cli
