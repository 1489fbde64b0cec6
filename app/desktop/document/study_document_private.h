// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/recomputer.h"
#include "app/desktop/document/study_document.h"
#include "storage/recordings/recordings.h"

#include <QTimer>

#include <cstdint>
#include <memory>

/// What a StudyDocument holds, for its own files.
namespace bothways::app {

struct StudyDocument::Private {
    explicit Private(storage::StudyFile f) : file(std::move(f)) {}

    storage::StudyFile file;
    core::Study study;
    std::vector<storage::Overruled> overruled;
    std::vector<storage::HistoryEntry> history;
    std::vector<storage::RecordingInfo> recordings;
    std::vector<storage::RunTraceInfo> assigned;
    std::vector<storage::RecoveredRecording> recovered;
    bool blind = false;
    bool readOnly = false;
    bool looked = false;

    std::optional<TriedOptions> tried;
    QTimer settle;

    std::optional<core::Error> why; ///< the last order that failed did

    std::uint64_t revision = 0; ///< goes up when the study is read anew
    std::unique_ptr<Recomputer> recomputer;

    /// What an answer is asked for with.
    [[nodiscard]] Recomputer::Question question(const core::AnalysisOptions& options) const;
};

} // namespace bothways::app
