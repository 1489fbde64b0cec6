// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"
#include "core/study/study.h"

#include <optional>
#include <vector>

/// Consumption of runs whose driver noted none, from their recordings. (Method, section 9.)
namespace bothways::core {

/// What a run's recording says it used, in L/100 km (kWh/100 km where the channel is energy),
/// marked as from the trace. Duration and distance are the run's own where it has them, else those
/// of the recording. Nothing where there is no fuel channel over the whole run, or no distance.
[[nodiscard]] std::optional<Consumption> consumptionFromTrace(const Run& run,
                                                              const RunTrace& trace);

/// Digits after the point that a person is shown: as given; two at most of a consumption from a
/// recording, which has all the digits of a quotient.
[[nodiscard]] int shownDecimals(const Consumption& consumption);

/// Which runs got their consumption from a recording, and which are left without.
struct ConsumptionTaken {
    std::vector<int> taken;   ///< numbers of runs
    std::vector<int> lacking; ///< counted, and no recording says what they used
};

/// Fills in the consumption of the counted runs that have none. What was typed stays.
[[nodiscard]] ConsumptionTaken takeConsumptionFromTraces(Study& study, const TraceProvider& traces);

} // namespace bothways::core
