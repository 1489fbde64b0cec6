// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"

#include <optional>

/// What a study knows of the numbers that a plan and a ledger start from.
namespace bothways::core {

/// A number, and whence it is known.
struct KnownNumber {
    double value = 0.0;
    int runs = 0; ///< it is the median of so many runs; 0: it is set for the study
    friend bool operator==(const KnownNumber&, const KnownNumber&) = default;
};

struct KnownOfStudy {
    std::optional<KnownNumber> output_w;   ///< noted of runs; above 0
    std::optional<KnownNumber> speed_kmh;  ///< road_speed.target_kmh, else of the runs
    std::optional<KnownNumber> stretch_km; ///< stretch.km, else of the runs
};

/// Of counted runs alone. A run without a speed has that of its distance and duration.
[[nodiscard]] KnownOfStudy knownOf(const Study& study);

} // namespace bothways::core
