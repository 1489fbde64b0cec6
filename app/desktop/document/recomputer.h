// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/answer.h"
#include "app/desktop/document/error_type.h"
#include "app/desktop/document/result_set.h"
#include "storage/study/study_file.h"

#include <QFutureWatcher>
#include <QObject>

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <stop_token>

namespace bothways::app {

/// Keeps the answer about a study up to date, off the user-interface thread. One is computed at a
/// time; where a newer is wanted, the one on its way is given up.
class Recomputer final : public QObject {
    Q_OBJECT

public:
    struct Question {
        Material material; ///< without its traces
        core::AnalysisOptions options;
        /// For the recordings, used by the thread alone; null where the study has none.
        std::shared_ptr<storage::StudyFile> connection;
        std::optional<core::Error> fault; ///< why the recordings cannot be read: no answer then
        std::uint64_t revision = 0;       ///< of the study that is asked about
    };

    /// @param ask  called when an answer is begun
    explicit Recomputer(std::function<Question()> ask);
    /// Gives up and waits.
    ~Recomputer() override;

    void begin();
    /// Gives up the answer on its way; the old one stays.
    void stop();
    [[nodiscard]] bool isBusy() const { return m_busy; }
    /// The newest answer; null before the first.
    [[nodiscard]] const std::shared_ptr<const ResultSet>& result() const { return m_result; }
    /// Of the study that result() is about.
    [[nodiscard]] std::uint64_t revision() const { return m_resultRevision; }

signals:
    void busyChanged(bool busy);
    void progressed(double share);
    void answered(std::shared_ptr<const bothways::app::ResultSet> result);
    /// There is no answer: a recording cannot be read. The old one stays.
    void failed(const bothways::core::Error& error);

private:
    void start();
    void finished();

    std::function<Question()> m_ask;
    using Answered = core::Result<std::shared_ptr<const ResultSet>>;
    /// Behind a pointer, as QFuture wants a type that can be without a value.
    QFutureWatcher<std::shared_ptr<const Answered>> m_watcher;
    std::stop_source m_stop;
    std::shared_ptr<const ResultSet> m_result;
    std::uint64_t m_resultRevision = 0, m_runningRevision = 0;
    bool m_busy = false;
    bool m_again = false;
};

} // namespace bothways::app
