// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/planning/plan.h"

#include <array>
#include <cstdint>
#include <stop_token>
#include <string>
#include <vector>

/// Which sequence of blocks for the time there is, and what each is weak against: measured by
/// simulation of the headline's model, not asserted.
namespace bothways::core {

/// What a day does to the runs besides the device.
enum class Disturbance { none, straightDrift, curvedDrift, blockChanges, correlatedNoise };
inline constexpr std::array kDisturbances = {Disturbance::none, Disturbance::straightDrift,
                                             Disturbance::curvedDrift, Disturbance::blockChanges,
                                             Disturbance::correlatedNoise};

/// How strong each disturbance is taken.
struct DisturbanceStrength {
    double straight_pct_per_h = 1.0;
    double curved_pct_per_h2 = 1.0; ///< of (t - mean)^2, as in method, section 12
    double block_change_pct = 0.5;  ///< standard deviation of a level of its own for each block
    double rho = 0.6;               ///< between successive pairs, marginal noise unchanged
};

/// Share of nominal intervals that hold the truth, by Disturbance; 0 to 1.
struct SequenceWeakness {
    std::array<double, kDisturbances.size()> coverage{};
    double standard_error = 0.0; ///< of a coverage that is as promised
};

/// Simulates `repeats` days of a plan without an effect under each disturbance. The same seed gives
/// the same answer everywhere (own normal deviates from std::mt19937_64, whose output is
/// standardised).
///
/// @return  an Error (wrongUse) for a plan that makePlan() refuses, or `stopped`
/// Checked against method, section 12, by tests/core/planning/sequence_study_test.cpp.
[[nodiscard]] Result<SequenceWeakness>
simulateWeakness(const PlanOptions& options, const DisturbanceStrength& strength = {},
                 int repeats = 4000, std::uint64_t seed = 20260314, std::stop_token stop = {});

/// For each customary sequence the most pairs a block that fit into `hours` of road time, in order
/// of the effect they detect; sequences that do not fit are left out.
///
/// @return  an Error (wrongUse) when `hours` is not positive or none fits
[[nodiscard]] Result<std::vector<Plan>> sequencesFor(double hours, const PlanOptions& options);

} // namespace bothways::core
