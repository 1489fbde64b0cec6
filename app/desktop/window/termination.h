// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QSocketNotifier;

namespace bothways::app {

/// Hears that the program has to end, from nobody who would answer a question: SIGTERM, SIGINT and
/// SIGHUP (a second signal ends it at once), or the session manager. One a process.
class Termination final : public QObject {
    Q_OBJECT

public:
    explicit Termination(QObject* parent = nullptr);
    ~Termination() override;

    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    /// From the event loop, where everything is permitted.
    void asked();
    /// The session may end, or somebody may still call that off: whatever is not kept is kept now.
    void mayFollow();

private:
    QSocketNotifier* m_notifier = nullptr; ///< null where the system refuses a pipe
};

} // namespace bothways::app
