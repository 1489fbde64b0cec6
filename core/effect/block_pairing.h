// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/prepared_study.h"

#include <span>
#include <vector>

/// From the coded runs of one block to its pairs, and from a pair to its value. (Method,
/// section 3.)
namespace bothways::core {

/// Places in the span that was given.
struct BlockPair {
    std::size_t out = 0, back = 0;
    bool fixed = false; ///< tied by hand
};

struct BlockPairing {
    std::vector<BlockPair> pairs;
    bool exact = true; ///< as Matching::exact
};

/// Pairs tied by hand first, whatever their gap, where both runs are there; the rest by
/// matchRuns().
/// @param runs      counted runs of one block, in order of start
/// @param tiedWith  PreparedStudy::tied_with
[[nodiscard]] BlockPairing pairBlock(std::span<const CodedRun> runs,
                                     const std::vector<std::size_t>& tiedWith, double max_gap_min);

struct PairValue {
    double time_h = 0.0;
    double l_per_100km =
        0.0;          ///< total fuel over total distance; equal weights unless both are known
    double log = 0.0; ///< its log, or with a control vehicle the log of the ratio
};
/// The control vehicle is used where both runs carry it.
[[nodiscard]] PairValue pairValue(const CodedRun& out, const CodedRun& back);

} // namespace bothways::core
