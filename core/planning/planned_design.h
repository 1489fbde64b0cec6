// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>
#include <vector>

/// The design that a plan would give, before it is driven. (Method, section 8, "Plan".)
namespace bothways::core {

/// What the plan's arithmetic knows of a sequence with `pairs_per_block` pairs a letter.
struct PlannedDesign {
    int pairs = 0;
    int df = 0;          ///< may be below 1
    double sqrt_v = 0.0; ///< infinite where the effect cannot be told from the drift
    double road_hours = 0.0;
};
/// Section 8: the pair time is the middle of its slot, slots follow one another, a switch between
/// unequal neighbours. Several days, parted by '/', have one effect and an intercept each; with two
/// switches on any of them the design is closed, as a study would be, and each has a slope, too:
/// "ABA/BAB".
///
/// In closed form from the letters' mean times and spreads, so that the inverse plan is quick.
/// @param sequence  A and B (any case) and '/'
[[nodiscard]] PlannedDesign plannedDesign(std::string_view sequence, int pairs_per_block,
                                          double pair_min, double switch_min);
/// The same with a slope a day, whatever the switches.
[[nodiscard]] PlannedDesign slopedDesign(std::string_view sequence, int pairs_per_block,
                                         double pair_min, double switch_min);
/// The same with one more column, the squared time from the day's mean: nothing where the design is
/// open, or the column depends on the others.
[[nodiscard]] std::optional<PlannedDesign>
curvedDesign(std::string_view sequence, int pairs_per_block, double pair_min, double switch_min);

/// One pair of a planned day: where it stands and when its slot's middle is.
struct PlannedPair {
    int block = 0; ///< from 0; equal neighbours in the sequence are one block
    bool device = false;
    double begin_h = 0.0; ///< of its slot, h since the first slot began
    double time_h = 0.0;  ///< its middle
};
/// The pairs of a plan of one day, in order of time.
[[nodiscard]] std::vector<PlannedPair> plannedPairs(std::string_view sequence, int pairs_per_block,
                                                    double pair_min, double switch_min);

/// Whether a letter of a sequence stands for the baseline, or the device.
[[nodiscard]] constexpr bool isA(char letter)
{
    return letter == 'A' || letter == 'a';
}
[[nodiscard]] constexpr bool isB(char letter)
{
    return letter == 'B' || letter == 'b';
}

} // namespace bothways::core
