// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/planning/plan.h"

#include <string>
#include <vector>

/// What a plan says before it is driven.
namespace bothways::app::wording {

/// "ABA with 4 pairs a block: 12 pairs, 3.7 h on the road, 120 km." `distance` with its unit.
[[nodiscard]] std::string planSentence(const Language& in, const core::Plan& plan,
                                       const std::string& distance);
/// What the day shows if its noise, known from few pairs, is at its upper limit; empty where the
/// noise was given.
[[nodiscard]] std::string uncertainNoise(const Language& in, const core::Plan& plan);
/// The half-widths beside the headline's, each with what it allows for: a bent drift, looks on the
/// way. "-" where the sequence cannot give it.
struct PlanWidths {
    std::string straight, curved, any_look;
};
[[nodiscard]] PlanWidths planWidths(const Language& in, const core::Plan& plan);
/// Heads of their columns, in that order.
[[nodiscard]] std::vector<std::string> planWidthHeads(const Language& in);
[[nodiscard]] std::string planWidthsExplained(const Language& in);
/// What a sequence of this kind does not see; empty where it sees what we know of.
[[nodiscard]] std::string planCaution(const Language& in, const std::string& sequence);

/// Heads of the columns of core::SequenceWeakness, in its order, and what they mean.
[[nodiscard]] std::vector<std::string> weaknessHeads(const Language& in);
[[nodiscard]] std::string weaknessExplained(const Language& in);

} // namespace bothways::app::wording
