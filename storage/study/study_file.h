// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/screening/finding.h"
#include "core/study/study.h"

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// The study file: one SQLite database, whole after every commit. Its schema: study_file.md here.
namespace bothways::storage {

using core::Outcome;
using core::Result;

/// One line of the history. Nothing is ever taken out of it.
struct HistoryEntry {
    std::int64_t id = 0;
    std::string at; ///< ISO 8601, UTC
    std::string
        kind; ///< "add_run", "edit_run", "discard", "count", "pair", "set", "import", "look", ...
    std::string detail; ///< as it is kept; historyDetail() of history_message.h says it
    bool undone = false;
};

/// Told while a study waits for another program that has its lock, every other second. False: give
/// up now.
using WaitingSaid = std::function<bool(const core::Message&)>;

/// What a finding was answered with.
struct Overruled {
    int run = 0;
    std::string rule;
    std::string words;
};

/// The findings, without those that were overruled by hand: what *discarding by screening* obeys.
[[nodiscard]] core::Screening withoutOverruled(core::Screening screening,
                                               const std::vector<Overruled>& overruled);

/// An open study. Every changing call is one transaction (data, history line, undo information, or
/// none of it) that is on disk when it returns. Not for use from two threads at once.
class StudyFile {
public:
    /// Makes an empty study. An Error when the file exists. Open for writing then.
    static Result<StudyFile> create(const std::filesystem::path& file,
                                    const core::StudyProperties& properties = {});
    /// Opens a study. Refuses, unharmed: what is no study, a newer version, a damaged file, one
    /// that another program is writing (with the holder's name where it can be known). Any number
    /// of programs may have it open for reading, and read it between the writer's commits.
    static Result<StudyFile> open(const std::filesystem::path& file, bool readOnly = false);
    /// How all studies of the program wait for others: for ten seconds at most, and without words,
    /// until this is called. An action that waited in vain is an Error that says for whom.
    static void setWaiting(WaitingSaid said,
                           std::chrono::milliseconds atMost = std::chrono::seconds(10));
    /// True when the file begins like a study, so that a caller can tell it from a run sheet.
    static bool isStudyFile(const std::filesystem::path& file);

    StudyFile(StudyFile&&) noexcept;
    StudyFile& operator=(StudyFile&&) noexcept;
    ~StudyFile();

    /// A second connection to the same study under the same hold, for another thread. Its changes
    /// and ours wait for each other.
    [[nodiscard]] Result<StudyFile> another() const;

    [[nodiscard]] const std::filesystem::path& path() const;
    /// Where the times of the history come from: ISO 8601 in UTC. For tests.
    void setClock(std::function<std::string()> now);
    [[nodiscard]] Result<core::Study> study() const;

    /// Faults are those of faultsOf() in run_sheet.h; a run without a number gets the next one.
    [[nodiscard]] Result<core::RunId> addRun(const core::Run& run);
    [[nodiscard]] Outcome updateRun(const core::Run& run); ///< by its id
    /// Several runs in one change, all or none.
    [[nodiscard]] Outcome updateRuns(const std::vector<core::Run>& runs);
    /// Takes runs out, with what was overruled on them; their partners stay, untied.
    [[nodiscard]] Outcome removeRuns(const std::vector<core::RunId>& runs);
    [[nodiscard]] Outcome discard(const std::vector<core::RunId>& runs, const core::Discard& why);
    /// Each run with a reason of its own; one change.
    [[nodiscard]] Outcome
    discardEach(const std::vector<std::pair<core::RunId, core::Discard>>& runs);
    [[nodiscard]] Outcome count(const std::vector<core::RunId>& runs);
    [[nodiscard]] Outcome pair(core::RunId one, core::RunId other);
    [[nodiscard]] Outcome unpair(core::RunId run);
    /// Several in one change; both runs of a tie may be among them.
    [[nodiscard]] Outcome unpair(const std::vector<core::RunId>& runs);
    /// @param words  for the history; empty: the properties that are others now
    [[nodiscard]] Outcome setProperties(const core::StudyProperties& properties,
                                        std::string_view words);
    /// Adds the runs of a sheet, all or none. Runs must fit the study (see parseRunSheet's
    /// `existing`).
    [[nodiscard]] Outcome importRuns(const core::Study& sheet, std::string_view sourceName);
    [[nodiscard]] Outcome overrule(const Overruled& overruled);
    /// Several findings in one change.
    [[nodiscard]] Outcome overrule(const std::vector<Overruled>& overruled);
    /// Findings that were overruled stand again, in one change; `words` are not looked at. An Error
    /// where one was not overruled.
    [[nodiscard]] Outcome letStand(const std::vector<Overruled>& overruled);
    [[nodiscard]] Result<std::vector<Overruled>> overruled() const;

    /// Takes back the newest change that stands. An Error (wrongUse) when there is none.
    [[nodiscard]] Result<HistoryEntry> undo();
    [[nodiscard]] Result<HistoryEntry> redo();
    /// The change that undo() would take back, or redo() do again.
    [[nodiscard]] std::optional<HistoryEntry> nextUndo() const;
    [[nodiscard]] std::optional<HistoryEntry> nextRedo() const;
    [[nodiscard]] Result<std::vector<HistoryEntry>> history() const;
    /// Puts a line into the history that changes nothing (a look at the verdict, blind mode on).
    /// @param detail  words, or HistoryDetail::written()
    [[nodiscard]] Outcome note(std::string_view kind, std::string_view detail);

    /// For the other rooms of storage/ alone: storage/study/study_database.h.
    struct Private;
    [[nodiscard]] Private& database() const { return *d; }

private:
    explicit StudyFile(std::unique_ptr<Private> p);
    std::unique_ptr<Private> d;
};

} // namespace bothways::storage
