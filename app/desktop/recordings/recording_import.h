// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "storage/loggers/trace_report.h"
#include "storage/recordings/trace_import.h"

#include <QFutureWatcher>
#include <QObject>
#include <QString>

#include <memory>
#include <stop_token>

namespace bothways::app {

/// Looks at a recording's file, and imports it, by a thread of its own and a connection of its own.
/// Ends, stopped, when it is destroyed.
class RecordingImport final : public QObject {
    Q_OBJECT

public:
    using Preview = core::Result<storage::TracePreview>;
    using Report = core::Result<storage::TraceReport>;

    /// @param connection  used by the thread alone from now on
    RecordingImport(std::shared_ptr<storage::StudyFile> connection, QString file,
                    QObject* parent = nullptr);
    ~RecordingImport() override;

    void look();
    /// `progress` and `stop` are this object's to fill in.
    void start(storage::TraceImportOptions options);
    void stop();
    [[nodiscard]] bool isRunning() const { return m_importing; }

signals:
    void looked(const bothways::app::RecordingImport::Preview& preview);
    void progressed(double share, double bytesPerSecond);
    void finished(const bothways::app::RecordingImport::Report& report);

private:
    std::shared_ptr<storage::StudyFile> m_connection;
    QString m_file;
    std::stop_source m_stop;
    bool m_importing = false;
    QFutureWatcher<std::shared_ptr<Preview>> m_looking;
    QFutureWatcher<std::shared_ptr<Report>> m_working;
};

} // namespace bothways::app
