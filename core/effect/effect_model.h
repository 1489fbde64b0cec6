// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/prepared_study.h"
#include "core/statistics/least_squares.h"

#include <span>
#include <vector>

/// The linear model that the headline, `runs`, `curve` and the others share. (Method, section 4.)
namespace bothways::core {

/// A pair, a run or a block mean, as the model sees it.
struct Observation {
    double t_h = 0.0;
    int day = 0;
    bool device = false;
    double y = 0.0;
};

[[nodiscard]] std::vector<Observation> pairObservations(const PreparedStudy& prepared);
/// A run each of PreparedStudy::runsOfDaysWithPairs().
[[nodiscard]] std::vector<Observation> runObservations(const PreparedStudy& prepared);

/// The design's columns for these observations:
///   column 0: x;
///   then for each day that has observations an intercept and, in a closed design, a slope in time
///   from that day's mean observation time.
/// A closed study takes the drift out of every day, of an open day too, which then adds little: two
/// days A/B/A with 2 pairs and one A/B with 8, under a drift of 1 %/h, covered 0.10 to 0.30 of a
/// nominal 0.95 while the open day had no slope.
/// Callers may add columns after these (direction, curve).
/// @param sloped  PreparedStudy::sloped(): open or closed is decided once, by the pairs
[[nodiscard]] Columns effectColumns(std::span<const Observation> observations, bool sloped);
/// The same without column 0: the days' own terms.
[[nodiscard]] Columns dayColumns(std::span<const Observation> observations, bool sloped);
[[nodiscard]] std::vector<double> responses(std::span<const Observation> observations);

inline constexpr std::size_t kEffectColumn = 0;

/// Hours from the mean time of the observation's day: the model's centred time.
[[nodiscard]] std::vector<double> centredTimes(std::span<const Observation> observations);

} // namespace bothways::core
