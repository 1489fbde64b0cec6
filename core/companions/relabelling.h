// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/statistics/least_squares.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

/// Randomisation test: the labels dealt again over the pairs. (Method, section 5, `labels`.)
namespace bothways::core {

inline constexpr long long kMostDeals = 20'000;

/// Share of deals, counts kept, whose |t| of the linear model is at least that of the deal driven
/// (times 1 - 1e-9, so that rounding parts no ties).
///
/// All C(n, n_B) deals where there are at most kMostDeals, the observed one included: p =
/// hits/deals. Else kMostDeals random ones: p = (1 + hits)/(1 + deals). The generator
/// (xoshiro256**) and the draw (Lemire's) are our own, so that a seed gives the same answer
/// everywhere. A deal whose labels depend on `nuisance` has no t and is no hit.
///
/// |t| grows with r^2 = (x'm*)^2/(x'x* m*'m*), where m* and x* are what is left beside the nuisance
/// columns; with Q their orthonormal basis x'x* = n_B - |Q'x|^2, so that a deal costs a sum over
/// its n_B pairs (or over the others, where those are fewer): 20,000 deals on 24 pairs in about 2
/// ms.
///
/// @param y         a pair each
/// @param device    a pair each; both labels occur
/// @param nuisance  the model without the effect; a constant lies in its span
/// @return  nothing when the observed t is not defined, or for more than 20,000 pairs or 150,000
///          pairs by columns (seconds)
[[nodiscard]] std::optional<LabelsTest> dealLabelsAgain(std::span<const double> y,
                                                        const std::vector<bool>& device,
                                                        const Columns& nuisance,
                                                        std::uint64_t seed);

/// The smallest p that dealing all labels can give. Where both configurations have equally many
/// pairs, every deal has the |t| of its opposite, so that the deal driven never stands alone.
/// @pre  analysis.companions.labels is there
[[nodiscard]] double smallestLabelsP(const Analysis& analysis);

/// The next set of places among 0 .. n - 1 in lexicographic order, from {0, 1, ...} on.
/// @param places  ascending
/// @return  false after the last one; `places` is then as it was
bool nextChoice(std::vector<std::uint32_t>& places, std::size_t n);

} // namespace bothways::core
