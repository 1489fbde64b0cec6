// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/effect/prepared_study.h"

#include <optional>
#include <vector>

/// Each day for itself. (Method, sections 5 and 7, `days`.)
namespace bothways::core {

/// The headline's model with an effect of its own for each day. Every day's terms touch that day
/// alone, so it is a fit a day with one common noise.
struct ByDayFit {
    struct Day {
        int day = 0; ///< from 1, as driven
        int pairs = 0;
        double effect_log = 0.0, v = 0.0; ///< se = s sqrt(v)
    };
    std::vector<Day> days; ///< those whose own effect can be told
    double rss = 0.0;
    int rank = 0, df = 0;
    [[nodiscard]] double s() const;
};
[[nodiscard]] ByDayFit byDayFitOf(const PreparedStudy& prepared);

/// @return  empty where fewer than two days can tell their own effect, or without noise
[[nodiscard]] std::vector<DayEffect> dayEffectsOf(const ByDayFit& byDay,
                                                  const AnalysisOptions& options);

/// F test of one effect for all days against one a day:
///   ((RSS0 - RSS1)/(r1 - r0))/(RSS1/(n - r1)), r the ranks; needs r1 > r0 and n - r1 >= 2.
[[nodiscard]] DaysCheck daysCheckOf(const ByDayFit& byDay, const Headline& headline);

} // namespace bothways::core
