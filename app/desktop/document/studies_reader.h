// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/result_set.h"
#include "app/answer/same_runs.h"
#include "core/base/result.h"

#include <QDate>
#include <QFutureWatcher>
#include <QObject>
#include <QString>
#include <QStringList>

#include <memory>
#include <optional>
#include <stop_token>
#include <vector>

namespace bothways::app {

/// A study or a run sheet that was read beside the open one.
struct ReadStudy {
    QString file, name;
    std::shared_ptr<const ResultSet> result; ///< null where it cannot be read
    std::optional<core::Error> error;        ///< why
    GivenStudy given = {};                   ///< by which one sees whether it counts twice
};

/// Reads studies and run sheets with their recordings, and answers each, off the user-interface
/// thread. Files are only read.
class StudiesReader final : public QObject {
    Q_OBJECT

public:
    explicit StudiesReader(QObject* parent = nullptr);
    /// Gives up and waits.
    ~StudiesReader() override;

    /// One lot after the other: what is asked for while one is read is read after it.
    void read(const QStringList& files, const QDate& today);
    [[nodiscard]] bool isBusy() const { return m_busy; }

signals:
    /// In the order asked for, those that cannot be read among them.
    void done(const std::vector<bothways::app::ReadStudy>& studies);

private:
    void start();
    void finished();

    QFutureWatcher<std::vector<ReadStudy>> m_watcher;
    std::stop_source m_stop;
    QStringList m_waiting;
    QDate m_today;
    bool m_busy = false; ///< until what was read has been said
};

} // namespace bothways::app
