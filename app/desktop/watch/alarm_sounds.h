// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/watching/watcher.h"

#include <QObject>

class QSoundEffect;

namespace bothways::app {

/// The three sounds, aloud. They differ by rhythm and pitch; resources/sounds makes them.
class AlarmSounds final : public QObject {
    Q_OBJECT

public:
    explicit AlarmSounds(QObject* parent = nullptr);
    /// Whether the computer has something to play them on. Without, it beeps.
    [[nodiscard]] static bool hasDevice();
    /// @param volume_pct  0: silent
    void play(core::AlarmLevel level, int volume_pct);
    [[nodiscard]] static QString file(core::AlarmLevel level);

private:
    QSoundEffect* m_effects[3] = {nullptr, nullptr, nullptr};
};

} // namespace bothways::app
