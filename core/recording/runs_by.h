// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/cutting.h"

#include <optional>

namespace bothways::core {

/// What begins and ends the runs of a recording while it is made.
struct RunsBy {
    enum class Way {
        hand,     ///< whoever presses Start and End
        marks,    ///< marks that an instrument sends: cutByMarks()
        position, ///< the gates at the ends of the stretch: cutByPosition()
        speed     ///< the study's target speed, held: cutBySpeed()
    };
    Way way = Way::hand;
    std::optional<Geofence> gates; ///< for Way::position
    friend bool operator==(const RunsBy&, const RunsBy&) = default;
};

} // namespace bothways::core
