// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/error_type.h"
#include "app/desktop/document/result_set.h"
#include "app/wording/language.h"
#include "core/base/result.h"
#include "core/study/walk_round.h"
#include "storage/live/live_recorder.h"
#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"
#include "storage/sheet/run_sheet.h"
#include "storage/study/renaming.h"
#include "storage/study/study_file.h"

#include <QObject>
#include <QString>
#include <QStringList>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace bothways::app {

/// What a finding was answered with.
enum class Answer { none, accepted, overruled };

/// What a reader may change while looking at the verdict.
struct TriedOptions {
    double margin_pct = 1.0;
    double confidence = 0.95;
    std::optional<double> claim_pct = {};
};

/// The open study: its file, what stands in it, and the newest answer about it.
///
/// Widgets ask it to change things and hear of the change like everybody else. An order that gives
/// true is on disk; one that gives false has changed nothing and has emitted failed(). The answer
/// follows each change, computed off the user-interface thread; until it is there the old one is
/// held, and isBusy() says that it is old.
class StudyDocument final : public QObject {
    Q_OBJECT

public:
    using Opened = core::Result<std::unique_ptr<StudyDocument>>;
    static Opened create(const QString& file, const core::StudyProperties& properties);
    static Opened open(const QString& file);
    /// To look at, while another program may be writing it. Every order fails.
    static Opened openForReading(const QString& file);
    ~StudyDocument() override;

    [[nodiscard]] const core::Study& study() const;
    [[nodiscard]] const core::Run* run(core::RunId id) const; ///< null where there is none
    [[nodiscard]] const core::Run* runByNumber(int number) const;
    [[nodiscard]] QString path() const;
    [[nodiscard]] bool isReadOnly() const;
    /// The study's name, else its file's.
    [[nodiscard]] QString name() const;
    /// True where consumption is energy: the first run with a consumption says so, else the fuel.
    [[nodiscard]] bool isElectric() const;

    /// What the answer is computed with: the study's own, or what tryOptions() asks for.
    [[nodiscard]] core::AnalysisOptions options() const;
    /// The newest answer; null before the first.
    [[nodiscard]] std::shared_ptr<const ResultSet> result() const;
    /// True where the answer is about the study as it is now, run for run.
    [[nodiscard]] bool isResultCurrent() const;
    /// True while a newer answer is on its way.
    [[nodiscard]] bool isBusy() const;
    /// Gives up the answer on its way; the old one stays, and stays old.
    void stopComputing();

    [[nodiscard]] const std::vector<storage::Overruled>& overruled() const;
    [[nodiscard]] Answer answerTo(const core::Finding& finding) const;
    /// Words with which a finding was overruled, or the evidence of the discard that accepted it.
    [[nodiscard]] QString answerWords(const core::Finding& finding) const;
    [[nodiscard]] std::vector<storage::HistoryEntry> history() const;
    /// What undo() would take back and redo() do again; nothing where there is nothing.
    [[nodiscard]] std::optional<storage::HistoryEntry> undoable() const;
    [[nodiscard]] std::optional<storage::HistoryEntry> redoable() const;

    /// Consumption is not shown until the discards are settled (on record in the history).
    [[nodiscard]] bool isBlind() const;
    bool setBlind(bool blind);
    /// Puts on record that someone looked at the verdict: with a plan once for each state of the
    /// study, without one once for each number of pairs.
    void recordLook();

    /// With the numbers of its walk-round.
    std::optional<core::RunId> addRun(const core::Run& run);
    bool updateRun(const core::Run& run);
    bool updateRuns(const std::vector<core::Run>& runs);
    bool removeRuns(const std::vector<core::RunId>& runs);
    bool discardRuns(const std::vector<core::RunId>& runs, const core::Discard& why);
    bool countRuns(const std::vector<core::RunId>& runs);
    bool pairRuns(core::RunId one, core::RunId other);
    bool unpairRun(core::RunId run);
    bool setProperties(const core::StudyProperties& properties);
    /// Configurations and directions, in all runs at once.
    bool rename(const std::vector<storage::Renaming>& renamings);
    bool importRuns(const core::Study& sheet, const QString& sourceName);
    /// Discards the runs of these findings, each with its finding as the reason.
    bool acceptFindings(const std::vector<core::Finding>& findings);
    bool overruleFindings(const std::vector<core::Finding>& findings, const QString& words);
    bool undo();
    bool redo();
    /// Gives an order, or several, and why the last that failed did: for who says it, too.
    [[nodiscard]] core::Outcome outcomeOf(const std::function<bool()>& order);

    // study_document_walk.cpp
    [[nodiscard]] std::vector<core::WalkLine> walkLines() const;
    [[nodiscard]] std::vector<core::WalkRound> walkRounds() const;
    /// What of a round that is not noted yet is too far from the ones before, in sentences.
    [[nodiscard]] QStringList walkDifferences(const Language& in,
                                              const core::WalkRound& round) const;
    bool noteWalkRound(const core::WalkRound& round);
    /// With the numbers of the walk-round that was made for it.
    [[nodiscard]] core::Run withWalkRound(core::Run run) const;

    // study_document_recordings.cpp
    /// What the study holds of recordings, and which run has which part of them.
    [[nodiscard]] const std::vector<storage::RecordingInfo>& recordings() const;
    [[nodiscard]] const std::vector<storage::RunTraceInfo>& assignedTraces() const;
    /// Those that had not been stopped, and were made whole when the study was opened.
    [[nodiscard]] const std::vector<storage::RecoveredRecording>& recovered() const;
    /// How a recording was made live; nothing where it came as a file, or cannot be read.
    [[nodiscard]] std::optional<storage::LiveRecord> liveRecord(core::RecordingId recording) const;
    /// A line about each that was made live.
    [[nodiscard]] std::vector<std::string> liveRecordings(const Language& in) const;
    /// A connection of its own for another thread; null, after failed(), where there is none.
    [[nodiscard]] std::shared_ptr<storage::StudyFile> anotherConnection();
    /// Takes in what another connection (an import) has written, or failed to.
    bool takeForeignChange(const core::Outcome& outcome);
    /// What was said of the columns of a sheet with this header before (storage/recordings/
    /// sheet_import.h), and keeping it for the next one.
    [[nodiscard]] storage::SheetOptions keptColumns(const std::string& sheet, const QString& file,
                                                    storage::SheetOptions options) const;
    [[nodiscard]] core::Outcome keepColumns(const std::string& sheet, const QString& file,
                                            const storage::SheetOptions& options);
    /// New runs and runs that are there already get their parts of a recording, in one step.
    bool cutRecording(core::RecordingId recording, const std::vector<storage::Cut>& cuts);
    bool dropRecording(core::RecordingId recording);

    /// Shows the answer for another margin, confidence and claim at once; they go into the study
    /// when they have stood still for a moment.
    void tryOptions(const TriedOptions& options);
    /// Whether someone has looked at a verdict of this study before.
    [[nodiscard]] bool wasLookedAt() const;
    /// Writes what tryOptions() has pending.
    void settleOptions();

signals:
    void studyChanged(); ///< runs, properties, overruled findings or history
    void analysisChanged(std::shared_ptr<const bothways::app::ResultSet> result);
    void busyChanged(bool busy);
    void progressed(double share); ///< of the answer on its way, 0 to 1
    void blindChanged(bool blind);
    void failed(const bothways::core::Error& error);

private:
    explicit StudyDocument(storage::StudyFile file);
    core::Outcome reload();
    bool finish(const core::Outcome& outcome);
    /// Settles what tryOptions() has pending, does the job, and takes in what came of it.
    bool change(const std::function<core::Outcome()>& job);
    void recompute();

    struct Private;
    std::unique_ptr<Private> d;
};

} // namespace bothways::app
