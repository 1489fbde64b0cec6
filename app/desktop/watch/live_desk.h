// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/watch/alarm_bell.h"
#include "app/desktop/watch/live_source.h"

#include <QDateTime>
#include <QElapsedTimer>
#include <QFutureWatcher>
#include <QObject>
#include <QTimer>

#include <memory>

namespace bothways::app {

class AlarmSounds;
class Preferences;
class StudyDocument;

/// The recording of the window: begins it, looks at it five times a second, rings, and stops it off
/// the user-interface thread.
class LiveDesk final : public QObject {
    Q_OBJECT

public:
    static constexpr int kLook_ms = 200;

    LiveDesk(Preferences& preferences, LiveStarter starter, QObject* parent = nullptr);
    ~LiveDesk() override;

    /// @param now  of time 0, in the study's clock
    [[nodiscard]] core::Outcome start(StudyDocument& document, const storage::Rig& rig,
                                      const QDateTime& now);
    /// Packs; recordingStopped() says when it is done. Nothing happens while none is made.
    void stop();
    /// The same, and waits: the program ends.
    void stopAndWait();

    [[nodiscard]] bool isRecording() const { return m_source && !m_stopping; }
    [[nodiscard]] bool isStopping() const { return m_stopping; }
    /// Null while none is made.
    [[nodiscard]] LiveSource* source() const { return m_stopping ? nullptr : m_source.get(); }
    [[nodiscard]] const LiveSnapshot& snapshot() const { return m_snapshot; } ///< of the last look
    [[nodiscard]] const storage::Rig& rig() const { return m_rig; }
    /// By the recording's own clock, which a wrong or changed one of the computer does not move.
    [[nodiscard]] QDateTime now() const;
    /// Alarms of the run under way, and what was found in the run that ended last.
    [[nodiscard]] AlarmBell& bell() { return m_bell; }
    void look();
    void acknowledge();
    /// What was found in a run that ended has been answered: it was written or discarded.
    void settleEnded(int run);
    /// In place of a LiveSession; for tests.
    void setStarter(LiveStarter starter) { m_starter = std::move(starter); }
    /// In place of the loudspeaker; for tests.
    void setRing(AlarmBell::Ring ring) { m_ring = std::move(ring); }

signals:
    void recordingStarted();
    void looked();
    void recordingStopping(); ///< source() is no more; what was recorded is being packed
    void recordingStopped(const bothways::core::Outcome& outcome);

private:
    void ring(core::AlarmLevel level);
    void finish();

    Preferences& m_preferences;
    LiveStarter m_starter;
    AlarmBell::Ring m_ring;
    AlarmBell m_bell;
    AlarmSounds* m_sounds = nullptr;
    std::shared_ptr<LiveSource> m_source;
    storage::Rig m_rig;
    QDateTime m_first;
    LiveSnapshot m_snapshot;
    QTimer m_looking;
    QElapsedTimer m_clock;
    QFutureWatcher<std::shared_ptr<core::Outcome>> m_stopped;
    QMetaObject::Connection m_following; ///< of the study
    int m_settled = 0;                   ///< number of the run of settleEnded()
    bool m_stopping = false, m_running = false;
};

} // namespace bothways::app
