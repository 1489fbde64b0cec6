// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

/// Matching out runs with return runs inside a block. (Method, section 3.)
namespace bothways::core {

/// One run to be matched.
struct PairingPoint {
    std::int64_t mid_ms = 0;  ///< mid-time in whole milliseconds, any origin
    std::size_t position = 0; ///< place in driving order; no two alike
    friend bool operator==(const PairingPoint&, const PairingPoint&) = default;
};

/// Positions of the two runs of a pair.
struct MatchedPair {
    std::size_t out = 0, back = 0;
    friend bool operator==(const MatchedPair&, const MatchedPair&) = default;
    friend auto operator<=>(const MatchedPair&, const MatchedPair&) = default;
};

/// The one-to-one matching of `outs` with `returns`, no pair further apart than `maxGap_ms`, with
///   (1) the most pairs, then
///   (2) the smallest sum of |gap|, then
///   (3) the smallest sum of gap^2, then
///   (4) the lexicographically smallest sorted list of (out position, return position).
/// Everything is compared in integers.
///
/// Exact, in time proportional to runs x (1 + runs that must stay alone), however long the block.
/// Only a block with more than some twenty thousand runs inside one another's reach, of which tens
/// of thousands must stay alone, is beyond it; then the pairs are as many as can be but not the
/// closest, and `exact` says so.
/// Checked: against all matchings of random small blocks, tests/core/pairing/pairing_test.cpp.
struct Matching {
    std::vector<MatchedPair> pairs; ///< sorted
    bool exact = true;
};
[[nodiscard]] Matching matchRuns(std::vector<PairingPoint> outs, std::vector<PairingPoint> returns,
                                 std::int64_t maxGap_ms);

} // namespace bothways::core
