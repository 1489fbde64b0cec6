// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/alarm_sounds.h"

#include <QApplication>
#include <QAudioDevice>
#include <QMediaDevices>
#include <QSoundEffect>
#include <QUrl>

#include <algorithm>

/// Outside of every namespace, as Qt's macro wants it.
static void initSounds()
{
    Q_INIT_RESOURCE(bothways_sounds);
}

namespace bothways::app {

AlarmSounds::AlarmSounds(QObject* parent) : QObject(parent)
{
    initSounds();
}

bool AlarmSounds::hasDevice()
{
    return !QMediaDevices::defaultAudioOutput().isNull();
}

QString AlarmSounds::file(core::AlarmLevel level)
{
    switch (level) {
    case core::AlarmLevel::note: return ":/sounds/note.wav";
    case core::AlarmLevel::warning: return ":/sounds/warning.wav";
    case core::AlarmLevel::spoiled: return ":/sounds/spoiled.wav";
    }
    return {};
}

/// What plays is made when it is first needed: most who open the program never record.
void AlarmSounds::play(core::AlarmLevel level, int volume_pct)
{
    if (volume_pct <= 0)
        return;
    if (!hasDevice()) {
        QApplication::beep();
        return;
    }
    QSoundEffect*& effect = m_effects[static_cast<int>(level)];
    if (!effect) {
        effect = new QSoundEffect(this);
        effect->setSource(QUrl("qrc" + file(level)));
    }
    effect->setVolume(static_cast<float>(std::min(volume_pct, 100)) / 100.0F);
    effect->play();
}

} // namespace bothways::app
