// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QSocketNotifier;

namespace bothways::app {

/// Hears SIGTERM, SIGINT and SIGHUP, so that the program ends in order. A second signal ends it at
/// once. One a process.
class Termination final : public QObject {
    Q_OBJECT

public:
    explicit Termination(QObject* parent = nullptr);
    ~Termination() override;

signals:
    /// From the event loop, where everything is permitted.
    void asked();

private:
    QSocketNotifier* m_notifier = nullptr; ///< null where the system refuses a pipe
};

} // namespace bothways::app
