// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/document/recomputer.h"

#include "storage/recordings/run_traces.h"

#include <QtConcurrent/QtConcurrentRun>

#include <utility>

namespace bothways::app {
namespace {

/// By the thread that the connection is handed to.
core::Result<std::shared_ptr<const ResultSet>>
answerWith(const storage::StudyFile* connection, Material material, const AnswerOptions& options)
{
    if (connection) {
        if (const core::Outcome whole = storage::checkRecordings(*connection, options.stop); !whole)
            return whole.error();
        material.traces = storage::tracesOf(*connection, options.stop);
    }
    return answer(std::move(material), options);
}

} // namespace

Recomputer::Recomputer(std::function<Question()> ask) : m_ask(std::move(ask))
{
    connect(&m_watcher, &QFutureWatcherBase::finished, this, &Recomputer::finished);
}

Recomputer::~Recomputer()
{
    disconnect(&m_watcher, nullptr, this, nullptr);
    stop();
    m_watcher.waitForFinished();
}

void Recomputer::begin()
{
    if (m_watcher.isRunning()) {
        m_again = true;
        m_stop.request_stop();
    } else {
        start();
    }
}

void Recomputer::stop()
{
    m_again = false;
    m_stop.request_stop();
}

void Recomputer::start()
{
    m_again = false;
    m_stop = std::stop_source();
    Question question = m_ask();
    m_runningRevision = question.revision;
    AnswerOptions options;
    options.analysis = question.options;
    options.recorded = true;
    options.stop = m_stop.get_token();
    options.progress = [this](double share) {
        QMetaObject::invokeMethod(
            this, [this, share] { emit progressed(share); }, Qt::QueuedConnection);
    };
    if (!std::exchange(m_busy, true))
        emit busyChanged(true);
    m_watcher.setFuture(QtConcurrent::run(
        [material = std::move(question.material), options = std::move(options),
         connection = std::move(question.connection), fault = std::move(question.fault)]() mutable {
            return std::make_shared<const Answered>(
                fault ? Answered(*fault)
                      : answerWith(connection.get(), std::move(material), options));
        }));
}

void Recomputer::finished()
{
    if (m_again) {
        start();
        return;
    }
    const auto answer = m_watcher.result();
    m_busy = false;
    if (*answer) {
        m_result = answer->value();
        m_resultRevision = m_runningRevision;
        emit answered(m_result);
    } else if (answer->error().code != core::ErrorCode::stopped) {
        emit failed(answer->error());
    }
    emit busyChanged(false);
}

} // namespace bothways::app
