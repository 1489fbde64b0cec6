// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/recordings/recording_import.h"

#include "app/desktop/document/paths.h"

#include <QElapsedTimer>
#include <QtConcurrent/QtConcurrentRun>

namespace bothways::app {
namespace {

constexpr int kNews_ms = 50; // between two reports of progress: eyes need no more

} // namespace

RecordingImport::RecordingImport(std::shared_ptr<storage::StudyFile> connection, QString file,
                                 QObject* parent)
    : QObject(parent), m_connection(std::move(connection)), m_file(std::move(file))
{
    connect(&m_looking, &QFutureWatcherBase::finished, this,
            [this] { emit looked(*m_looking.result()); });
    connect(&m_working, &QFutureWatcherBase::finished, this, [this] {
        m_importing = false;
        emit finished(*m_working.result());
    });
}

RecordingImport::~RecordingImport()
{
    stop();
    m_looking.disconnect(this);
    m_working.disconnect(this);
    m_looking.waitForFinished();
    m_working.waitForFinished();
}

void RecordingImport::look()
{
    m_looking.setFuture(QtConcurrent::run([connection = m_connection, file = toPath(m_file)] {
        return std::make_shared<Preview>(storage::previewTrace(file, connection.get()));
    }));
}

void RecordingImport::start(storage::TraceImportOptions options)
{
    m_importing = true;
    m_stop = std::stop_source();
    options.stop = m_stop.get_token();
    options.progress = [this, last = std::make_shared<QElapsedTimer>()](double share, double rate) {
        if (last->isValid() && last->elapsed() < kNews_ms)
            return;
        last->start();
        QMetaObject::invokeMethod(
            this, [this, share, rate] { emit progressed(share, rate); }, Qt::QueuedConnection);
    };
    m_working.setFuture(QtConcurrent::run(
        [connection = m_connection, file = toPath(m_file), options = std::move(options)] {
            return std::make_shared<Report>(storage::importTrace(*connection, file, options));
        }));
}

void RecordingImport::stop()
{
    m_stop.request_stop();
}

} // namespace bothways::app
