// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/study_document.h"
#include "storage/recordings/recordings.h"

#include <QFutureWatcher>
#include <QTimer>

#include <stop_token>

/// What a StudyDocument holds, for its own files.
namespace bothways::app {

using Computed = std::shared_ptr<const ResultSet>;

struct StudyDocument::Private {
    explicit Private(storage::StudyFile f) : file(std::move(f)) {}

    storage::StudyFile file;
    core::Study study;
    std::vector<storage::Overruled> overruled;
    std::vector<storage::HistoryEntry> history;
    std::vector<storage::RecordingInfo> recordings;
    std::vector<storage::RunTraceInfo> assigned;
    bool blind = false;
    bool looked = false;

    std::optional<std::pair<double, double>> tried; ///< margin, confidence
    QTimer settle;

    Computed result;
    std::uint64_t revision = 0; ///< goes up when the study is read anew
    std::uint64_t resultRevision = 0, runningRevision = 0;
    QFutureWatcher<Computed> watcher;
    std::stop_source stop;
    bool busy = false;
    bool again = false;
};

} // namespace bothways::app
