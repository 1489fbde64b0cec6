// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/finding.h"
#include "core/study.h"
#include "core/trace.h"

#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <string_view>

/// The screening rules over a study: run sheet columns, marks and traces alike. (Method,
/// section 9.)
namespace bothways::core {

/// A limit that can be set for a study: "overspeed.rpm".
struct LimitInfo {
    std::string_view name;
    Rule rule;
    std::string_view unit;
    std::optional<double> byDefault; ///< none: the rule is not checked until it is set
    double smallest, largest;        ///< permitted values
};
[[nodiscard]] std::span<const LimitInfo> allLimits();
[[nodiscard]] const LimitInfo* findLimit(std::string_view name);
/// The study's value, else the default, else nothing.
[[nodiscard]] std::optional<double> limitOf(const Limits& limits, std::string_view name);

/// Gives the recording of a run; null where it has none. Called once a run and pass, in order.
using TraceProvider = std::function<std::unique_ptr<RunTrace>(const Run&)>;

/// @param traces    may be empty: then only what needs no trace is checked
/// @param progress  called with the share done, 0 to 1; may be empty
/// @param stop      when asked to stop, what was found so far is returned
[[nodiscard]] Screening screen(const Study& study, const TraceProvider& traces = {},
                               const std::function<void(double)>& progress = {},
                               std::stop_token stop = {});

/// Fuel of a run from its trace, in L (kWh where the channel is energy): fuel_used_l last minus
/// first, else fuel_rate_l_per_h by the trapezoid rule, both interpolated to the run's ends.
struct FuelFromTrace {
    double fuel_l = 0.0;
    std::string channel;
};
[[nodiscard]] std::optional<FuelFromTrace> fuelFromTrace(const RunTrace& trace, double duration_s);

/// Distance of a run from its trace, km: distance_m last minus first; else the integral of speed;
/// else along positions. Nothing where there is no such channel.
[[nodiscard]] std::optional<double> distanceFromTrace_km(const RunTrace& trace, double duration_s);

/// Discards every counted run that a *spoils* finding names: its first such finding is the reason.
/// @return  the numbers of the runs discarded, in order
std::vector<int> applyScreening(Study& study, const Screening& screening);

} // namespace bothways::core
