// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/units_shown.h"
#include "app/live/live_session.h"

#include <QCoreApplication>
#include <QString>

namespace bothways::app {

/// What is said of a recording that is being made.
class LiveWords {
    Q_DECLARE_TR_FUNCTIONS(LiveWords)

public:
    /// "Over-speed: 3,410 rpm (left). Slow down. …": as the command line says it.
    [[nodiscard]] static QString alarm(const core::Alarm& alarm, const UnitsShown& units);
    /// With how grave it is in front: "Spoiled: Over-speed: …".
    [[nodiscard]] static QString graveAlarm(const core::Alarm& alarm, const UnitsShown& units);
    /// "● board: reading", "▲ gps: silent for 12 s", "■ meter: …".
    [[nodiscard]] static QString instrument(const std::string& name,
                                            const storage::InstrumentState& state, double now_s,
                                            const UnitsShown& units);
    /// All of them in a line.
    [[nodiscard]] static QString instruments(const LiveSnapshot& snapshot, const UnitsShown& units);
    /// One that reads nothing, or trouble with the disk: the line is to be seen.
    [[nodiscard]] static bool isTrouble(const LiveSnapshot& snapshot);
    /// "3.1 km to go", without a stretch "1.9 km driven"; empty where nothing says so.
    [[nodiscard]] static QString distance(const LiveSnapshot& snapshot, const core::Study& study,
                                          const UnitsShown& units);
    /// "recording 12:03, 1.2 MB".
    [[nodiscard]] static QString progress(const LiveSnapshot& snapshot, const UnitsShown& units);
};

} // namespace bothways::app
