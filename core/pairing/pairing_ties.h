// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/pairing/pairing.h"

#include <compare>
#include <span>
#include <utility>
#include <vector>

/// Inside of pairing: its cost, and the choice among matchings that cost the same.
namespace bothways::core {

__extension__ using Wide = __int128; ///< sums of squared milliseconds outgrow 64 bits

/// What a matching costs, compared in this order; the costs of pairs add up.
struct PairingCost {
    std::int64_t fewer = 0; ///< minus the number of pairs
    Wide gap_ms = 0;        ///< sum of |gap|
    Wide squared_ms2 = 0;   ///< sum of gap^2
    friend auto operator<=>(const PairingCost&, const PairingCost&) = default;
    friend PairingCost operator+(const PairingCost& a, const PairingCost& b)
    {
        return {a.fewer + b.fewer, a.gap_ms + b.gap_ms, a.squared_ms2 + b.squared_ms2};
    }
    friend PairingCost operator-(const PairingCost& a, const PairingCost& b)
    {
        return {a.fewer - b.fewer, a.gap_ms - b.gap_ms, a.squared_ms2 - b.squared_ms2};
    }
};

[[nodiscard]] inline PairingCost pairingCost(const PairingPoint& out, const PairingPoint& back)
{
    const Wide gap =
        out.mid_ms < back.mid_ms ? Wide{back.mid_ms} - out.mid_ms : Wide{out.mid_ms} - back.mid_ms;
    return {-1, gap, gap * gap};
}

/// For each out the returns that are near enough to it: from `first` on, before `second`.
[[nodiscard]] std::vector<std::pair<std::size_t, std::size_t>>
returnsInReach(std::span<const PairingPoint> outs, std::span<const PairingPoint> returns,
               std::int64_t maxGap_ms);

/// Turns a matching of least cost into the one of least cost whose sorted list of positions is
/// smallest. Works for any order of positions.
///
/// @param outs, returns  sorted by mid-time
/// @param pairs          indexes into `outs` and `returns`; a matching of least cost
/// @return  false when there are too many allowed pairs to search; `pairs` is then left as it was
[[nodiscard]] bool breakTies(std::span<const PairingPoint> outs,
                             std::span<const PairingPoint> returns, std::int64_t maxGap_ms,
                             std::vector<std::pair<std::size_t, std::size_t>>& pairs);

} // namespace bothways::core
