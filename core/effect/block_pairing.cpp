// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/block_pairing.h"

#include "core/pairing/pairing.h"

#include <algorithm>
#include <cmath>

namespace bothways::core {
namespace {

constexpr double kUsPerMs = 1e3;
constexpr double kMsPerMin = 60e3;
constexpr double kWidest_ms = 1e15; ///< so that any gap asked for fits in 64 bits

/// Place of each run's partner by hand in the span, or the span's size.
std::vector<std::size_t> partners(std::span<const CodedRun> runs,
                                  const std::vector<std::size_t>& tiedWith)
{
    std::vector<std::size_t> partner(runs.size(), runs.size());
    for (std::size_t k = 0; k < runs.size(); ++k) {
        const std::size_t wanted = tiedWith.empty() ? kNotTied : tiedWith[runs[k].index];
        if (wanted == kNotTied)
            continue;
        for (std::size_t l = 0; l < runs.size(); ++l)
            if (runs[l].index == wanted)
                partner[k] = l;
    }
    return partner;
}

} // namespace

BlockPairing pairBlock(std::span<const CodedRun> runs, const std::vector<std::size_t>& tiedWith,
                       double max_gap_min)
{
    BlockPairing result;
    const std::vector<std::size_t> partner = partners(runs, tiedWith);
    std::vector<PairingPoint> outs, returns;
    for (std::size_t k = 0; k < runs.size(); ++k) {
        if (partner[k] < runs.size()) {
            if (runs[k].out)
                result.pairs.push_back({k, partner[k], true});
            continue;
        }
        const std::int64_t mid_ms = std::llround(static_cast<double>(runs[k].mid_us) / kUsPerMs);
        (runs[k].out ? outs : returns).push_back({mid_ms, k});
    }
    const double widest_ms = std::clamp(max_gap_min * kMsPerMin, 0.0, kWidest_ms);
    const Matching matching =
        matchRuns(std::move(outs), std::move(returns), std::llround(widest_ms));
    result.exact = matching.exact;
    for (const MatchedPair& pair : matching.pairs)
        result.pairs.push_back({pair.out, pair.back, false});
    return result;
}

PairValue pairValue(const CodedRun& out, const CodedRun& back)
{
    const bool weighed = out.distance_km && back.distance_km;
    const double d1 = weighed ? *out.distance_km : 1.0;
    const double d2 = weighed ? *back.distance_km : 1.0;
    const auto together = [&](double c1, double c2) { return (c1 * d1 + c2 * d2) / (d1 + d2); };
    PairValue value;
    value.time_h = static_cast<double>(out.mid_us + back.mid_us) / 2.0 / kUsPerHour;
    value.l_per_100km = together(out.l_per_100km, back.l_per_100km);
    value.log = std::log(value.l_per_100km);
    if (out.control_l_per_100km && back.control_l_per_100km)
        value.log -= std::log(together(*out.control_l_per_100km, *back.control_l_per_100km));
    return value;
}

} // namespace bothways::core
