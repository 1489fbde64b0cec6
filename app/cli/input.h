// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/input.h"
#include "app/cli/context.h"
#include "app/cli/options.h"
#include "core/screening/finding.h"
#include "core/study/study.h"
#include "storage/study/study_file.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <string>
#include <vector>

/// FILE of the command line, read and changed.
namespace bothways::cli {

using app::Input;

/// For the verbs that read.
[[nodiscard]] Result<Input> readInput(const std::filesystem::path& path, const Overrides& overrides,
                                      const Surroundings& io);

/// For the verbs that change something: a study, opened for writing. A run sheet is refused with
/// the way to make a study of it.
[[nodiscard]] Result<storage::StudyFile> openForChange(const std::filesystem::path& path);

/// The run with that number, or an Error (wrongUse) that names it.
[[nodiscard]] Result<core::RunId> runByNumber(const core::Study& study, int number,
                                              const std::filesystem::path& path);

/// Runs as they were named: "7", "7-9", "7-9,12".
using RunWords = std::vector<std::string>;
/// RUNS of the command line: one word or more.
void addRuns(const Language& in, CLI::App& verb, RunWords& words);
/// The runs that the words name, each once, in the order of the words. Of a range both ends must be
/// there; numbers between that no run has are passed over.
[[nodiscard]] Result<std::vector<const core::Run*>>
namedRuns(const core::Study& study, const RunWords& words, const std::filesystem::path& path);

/// Opens the study for writing, finds the runs that are named, and has the job done on them.
[[nodiscard]] Outcome
changeRuns(const std::filesystem::path& path, const RunWords& words,
           const std::function<Outcome(storage::StudyFile&, const core::Study&,
                                       const std::vector<const core::Run*>&)>& job);
[[nodiscard]] std::vector<core::RunId> idsOf(const std::vector<const core::Run*>& runs);
[[nodiscard]] std::vector<int> numbersOf(const std::vector<const core::Run*>& runs);

/// --file PATH[@SECONDS]
void addEvidenceFile(const Language& in, CLI::App& verb, std::string& file);
/// The words with the file's name, size and sum behind them; the words alone where none was given.
[[nodiscard]] Result<std::string> wordsWithFile(const std::string& words, const std::string& file,
                                                const std::filesystem::path& study);

/// Screens with a progress line on a terminal. Errors are those of answer().
[[nodiscard]] Result<core::Screening> screenWithProgress(const Input& input,
                                                         const Surroundings& io);
/// The answer, with the same progress line.
[[nodiscard]] Result<std::shared_ptr<const app::ResultSet>>
answerWithProgress(const Input& input, const Surroundings& io, app::AnswerOptions options);
/// With the options that the input's own properties ask for.
[[nodiscard]] Result<std::shared_ptr<const app::ResultSet>>
answerWithProgress(const Input& input, const Surroundings& io);

/// Of a study with a plan, every look at the verdict is on record (method, section 8).
void recordLook(const Input& input, const core::Analysis& analysis, Surroundings& io);

} // namespace bothways::cli
