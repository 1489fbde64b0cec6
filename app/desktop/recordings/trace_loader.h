// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document/error_type.h"
#include "core/recording/trace.h"
#include "core/study/study.h"
#include "storage/study/study_file.h"

#include <QObject>
#include <QThreadPool>
#include <QTimer>

#include <map>
#include <memory>
#include <string>
#include <vector>

namespace bothways::app {

/// True for a channel that says, or lets one work out, what was used: it is kept from sight while
/// consumption is hidden. Ours by name; a logger's own by the words in it.
[[nodiscard]] bool tellsConsumption(const std::string& channel);

/// Reads the recordings of runs by a thread of its own, a channel when it is first asked for.
///
/// trace() gives a RunTrace at once whose samples() are null until they have been read; loaded()
/// says that some have come. Nothing here waits.
class TraceLoader final : public QObject {
    Q_OBJECT

public:
    explicit TraceLoader(QObject* parent = nullptr);
    /// Waits for the channel that is being read, no more.
    ~TraceLoader() override;

    /// Begins anew: finds out what these runs have recorded, then emits opened().
    void open(std::shared_ptr<storage::StudyFile> connection, std::vector<core::Run> runs);
    /// Null where the run has no recording, or it is not open yet.
    [[nodiscard]] std::shared_ptr<const core::RunTrace> trace(core::RunId run) const;
    /// Keeps channels that tell the consumption from sight.
    void setBlind(bool blind);
    [[nodiscard]] bool isLoading() const { return m_pending > 0 || m_news.isActive(); }

signals:
    void opened();
    void loaded();
    void failed(const bothways::core::Error& error); ///< a recording cannot be read

private:
    class LazyTrace;
    struct Source;
    void want(core::RunId run, const std::string& channel);
    void say(const std::shared_ptr<Source>& source, const core::Error& error);

    QThreadPool m_thread;
    QTimer m_news; ///< several channels that come together are one piece of news
    std::shared_ptr<Source> m_source;
    std::map<core::RunId, std::shared_ptr<LazyTrace>> m_traces;
    int m_pending = 0;
    bool m_blind = false;
};

} // namespace bothways::app
