// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/result.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What a day of driving could show, before it is driven. (Method, section 8, "Plan".)
namespace bothways::core {

struct PlanOptions {
    std::string sequence = "ABA"; ///< letters A and B; equal neighbours are one block
    int pairs_per_block = 4;
    double pair_min = 15.0;
    double switch_min = 20.0;
    double stretch_km = 5.0;
    double s = 0.01;            ///< residual standard deviation of a pair, log
    std::optional<double> s_df; ///< degrees of freedom behind s, where it was measured
    double confidence = 0.95;
    double power = 0.80;
};

struct Plan {
    PlanOptions options;
    std::string sequence;
    int pairs_per_block = 0;
    int pairs = 0;
    double df = 0.0;
    double sqrt_v = 0.0;
    double half_width_log = 0.0;
    double detectable_log = 0.0;
    double road_hours = 0.0;
    double distance_km = 0.0;
    std::optional<double> s_upper80; ///< s sqrt(df/chi2(0.2, df))
    std::optional<double> half_width_upper80_log, detectable_upper80_log;
};

/// @return  an Error (wrongUse) for a sequence without both letters, too few pairs, or numbers out
/// of range
[[nodiscard]] Result<Plan> makePlan(const PlanOptions& options);
/// The fewest pairs a block whose detectable effect is at most `want_log` (> 0); at most 1,000.
[[nodiscard]] Result<Plan> planFor(double want_log, PlanOptions options);

/// Smallest |delta| with the asked power at level alpha = 1 - confidence, both tails counted.
///
/// Non-central t with ncp = delta/(s sqrt_v); solved to 1e-10 relative.
/// Checked against R's power.t.test(strict=TRUE): tests/published/power_test.cpp.
[[nodiscard]] double detectableEffect_log(double s, double sqrt_v, double df,
                                          double confidence = 0.95, double power = 0.80);
/// Power to see `effect_log`.
[[nodiscard]] double powerToSee(double effect_log, double s, double sqrt_v, double df,
                                double confidence);

/// More pairs a block that the sequence of blocks just driven would need to detect the margin;
/// empty where 1,000 would not do. Method, section 6, "undecided".
[[nodiscard]] std::optional<int> pairsPerBlockToDetect(std::string_view sequence, double s,
                                                       double margin_log, double confidence);

} // namespace bothways::core
