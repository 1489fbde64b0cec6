// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/planning/planned_design.h"

#include <optional>
#include <span>
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
    /// Without the straight-line assumption, and of the interval that allows any number of looks;
    /// empty where this sequence cannot give it.
    std::optional<double> curved_half_width_log, any_look_half_width_log;
    /// With the noise's own degrees of freedom beside the day's; empty where it was not measured.
    std::optional<double> borrowed_half_width_log;
    double detectable_log = 0.0;
    double road_hours = 0.0;
    double distance_km = 0.0;
    std::optional<double> s_upper80; ///< s sqrt(df/chi2(0.2, df))
    std::optional<double> half_width_upper80_log, detectable_upper80_log;
};

/// Noise of a pair, as a study found it or a person thinks it is.
struct Noise {
    double s = 0.0;  ///< residual standard deviation of a pair, log
    double df = 0.0; ///< degrees of freedom behind it
};
/// One noise from several studies: the mean of s^2, weighted by df. Empty studies give zeros.
[[nodiscard]] Noise pooledNoise(std::span<const Noise> studies);
/// Method, section 8: s = noise/100.
[[nodiscard]] constexpr double noiseFromPct(double noise_pct)
{
    return noise_pct / 100.0;
}

/// @return  an Error (wrongUse) for a sequence without both letters, too few pairs, or numbers out
/// of range; it says which and what is permitted
[[nodiscard]] Result<Plan> makePlan(const PlanOptions& options);
/// The fewest pairs a block whose detectable effect is at most `want_log` (> 0); at most 1,000.
[[nodiscard]] Result<Plan> planFor(double want_log, PlanOptions options);

inline constexpr int kMostPairsPerBlock = 1000;

/// Smallest |delta| with the asked power at level alpha = 1 - confidence, both tails counted.
///
/// Non-central t with ncp = delta/(s sqrt_v); solved to 1e-12 of ncp. 0 where alpha alone has the
/// power. Infinite without degrees of freedom or spread.
/// Checked against R's power.t.test(strict=TRUE): tests/core/planning/plan_test.cpp.
[[nodiscard]] double detectableEffect_log(double s, double sqrt_v, double df,
                                          double confidence = 0.95, double power = 0.80);
/// Power to see `effect_log`, in [0, 1].
[[nodiscard]] double powerToSee(double effect_log, double s, double sqrt_v, double df,
                                double confidence);

/// Pairs a block, `from` or more, with which the sequence of blocks just driven would detect the
/// margin with power 0.80 (the plan of section 8 with its default times); empty where 1,000 would
/// not do.
[[nodiscard]] std::optional<int> pairsPerBlockToDetect(std::string_view sequence, double s,
                                                       double margin_log, double confidence,
                                                       int from = 1);

} // namespace bothways::core
