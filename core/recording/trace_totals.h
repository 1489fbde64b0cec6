// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"

#include <optional>
#include <string>

namespace bothways::core {

/// Fuel of a run from its trace, in L (kWh where the channel is energy): the first of fuel_used_l,
/// fuel_rate_l_per_h, energy_used_kwh, power_kw that gives a positive amount. Counters are last
/// minus first (one that falls within the run by more than a step of its resolution gives nothing),
/// rates are integrated by the trapezoid rule, both interpolated to the run's ends. A trace that
/// lacks either end by more than a lost sensor (max(1 s, 3 median intervals)) gives nothing; a
/// smaller lack is filled at the mean rate (counters) or the last rate.
struct FuelFromTrace {
    double fuel_l = 0.0;
    std::string channel;
};
[[nodiscard]] std::optional<FuelFromTrace> fuelFromTrace(const RunTrace& trace, double duration_s);

/// Distance of a run from its trace, km: distance_m last minus first; else the integral of speed;
/// else along positions (WGS84). Nothing where no such channel covers the run, as above.
[[nodiscard]] std::optional<double> distanceFromTrace_km(const RunTrace& trace, double duration_s);

} // namespace bothways::core
