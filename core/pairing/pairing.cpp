// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pairing/pairing.h"

#include "core/pairing/pairing_ties.h"

#include <algorithm>
#include <cstdlib>
#include <span>
#include <tuple>

// Why a dynamic programme over the order of time is exact. Take two pairs that cross: o1 <= o2 with
// r1 <= r2, matched o1-r2 and o2-r1. Uncrossed, o1-r1 and o2-r2, neither gap is wider than the
// wider of the two before; the sum of |gap| does not grow, since |.| is convex; and the sum of
// gap^2 falls strictly when o1 < o2 and r1 < r2. So objectives (1) to (3) are reached without
// crossings, and where two outs (or two returns) share a millisecond either order of them costs the
// same. Where driving order agrees with the order of mid-times, uncrossing also makes the list of
// (4) smaller, so that the walk below, which gives each out in turn the first return that an
// optimum allows, ends at the smallest list. Where it does not agree, pairing_ties.cpp searches the
// optima.
namespace bothways::core {
namespace {

using Points = std::span<const PairingPoint>;

/// More cells than this (one byte each) are refused.
constexpr std::size_t kMostCells = 300'000'000;

bool earlier(const PairingPoint& a, const PairingPoint& b)
{
    return std::tie(a.mid_ms, a.position) < std::tie(b.mid_ms, b.position);
}

bool inDrivingOrder(Points points)
{
    return std::is_sorted(points.begin(), points.end(),
                          [](const auto& a, const auto& b) { return a.position < b.position; });
}

/// The most pairs: each out in turn takes the first return that is left and near enough.
std::vector<MatchedPair> mostPairs(Points outs, Points returns, std::int64_t maxGap_ms)
{
    std::vector<MatchedPair> pairs;
    std::size_t j = 0;
    for (const PairingPoint& out : outs) {
        while (j < returns.size() && returns[j].mid_ms < out.mid_ms - maxGap_ms)
            ++j;
        if (j < returns.size() && returns[j].mid_ms <= out.mid_ms + maxGap_ms)
            pairs.push_back({out.position, returns[j++].position});
    }
    return pairs;
}

/// The dynamic programme. Cell (i, j): outs from i and returns from j on are still to be matched.
/// A row keeps only the j that can matter: returns within reach of out i, and no more runs passed
/// over on either side than must stay alone.
class Programme {
public:
    Programme(Points outs, Points returns, std::int64_t maxGap_ms, std::size_t pairs)
        : m_outs(outs), m_returns(returns)
    {
        const std::size_t loneOuts = outs.size() - pairs;
        const std::size_t loneReturns = returns.size() - pairs;
        const auto reach = returnsInReach(outs, returns, maxGap_ms);
        m_rows.reserve(outs.size());
        for (std::size_t i = 0; i < outs.size(); ++i) {
            const auto& [near, far] = reach[i];
            Row row;
            row.first = std::max(near, i - std::min(i, loneOuts));
            row.last = std::max(row.first, std::min(far, i + loneReturns));
            row.end = std::min(far, i + loneReturns + 1);
            row.cell = m_cells;
            m_cells += row.last - row.first + 1;
            m_rows.push_back(row);
        }
    }

    [[nodiscard]] std::size_t cells() const { return m_cells; }

    /// Indexes (out, return) of the optimum that a walk in the order of time prefers.
    [[nodiscard]] std::vector<std::pair<std::size_t, std::size_t>> solve()
    {
        fill();
        std::vector<std::pair<std::size_t, std::size_t>> pairs;
        std::size_t j = 0;
        for (std::size_t i = 0; i < m_outs.size(); ++i) {
            j = std::max(j, m_rows[i].first);
            if (j > m_rows[i].last || !(choice(i, j) & kCanMatch))
                continue;
            while (!(choice(i, j) & kMatch))
                ++j;
            pairs.emplace_back(i, j++);
        }
        return pairs;
    }

private:
    struct Row {
        std::size_t first = 0, last = 0; ///< cells kept, both included
        std::size_t end = 0;             ///< first return that out i cannot take
        std::size_t cell = 0;            ///< where the row's choices begin
    };
    static constexpr unsigned char kMatch = 1;    ///< matching out i with return j is optimal
    static constexpr unsigned char kCanMatch = 2; ///< some optimum from here matches out i

    unsigned char& choice(std::size_t i, std::size_t j)
    {
        return m_choices[m_rows[i].cell + (j - m_rows[i].first)];
    }

    void fill()
    {
        m_choices.assign(m_cells, 0);
        std::vector<PairingCost> here, below; // row i, row i + 1
        for (std::size_t i = m_outs.size(); i-- > 0;) {
            const Row& row = m_rows[i];
            here.resize(row.last - row.first + 1);
            const auto next = [&](std::size_t j) {
                if (i + 1 == m_outs.size())
                    return PairingCost{};
                const Row& after = m_rows[i + 1];
                return below[std::clamp(j, after.first, after.last) - after.first];
            };
            for (std::size_t j = row.last + 1; j-- > row.first;) {
                PairingCost best = next(j);
                unsigned char bits = 0;
                if (j < row.last) {
                    const PairingCost& passed = here[j + 1 - row.first];
                    if (passed <= best) {
                        bits = choice(i, j + 1) & kCanMatch;
                        best = passed;
                    }
                }
                if (j < row.end) {
                    const PairingCost matched = next(j + 1) + pairingCost(m_outs[i], m_returns[j]);
                    if (matched <= best) {
                        bits = static_cast<unsigned char>(
                            matched < best ? kMatch | kCanMatch : bits | kMatch | kCanMatch);
                        best = matched;
                    }
                }
                here[j - row.first] = best;
                choice(i, j) = bits;
            }
            std::swap(here, below);
        }
    }

    Points m_outs, m_returns;
    std::vector<Row> m_rows;
    std::size_t m_cells = 0;
    std::vector<unsigned char> m_choices;
};

/// One stretch of the block's time line that no allowed pair leaves.
void matchStretch(Points outs, Points returns, std::int64_t maxGap_ms, Matching& matching)
{
    const std::vector<MatchedPair> most = mostPairs(outs, returns, maxGap_ms);
    if (most.empty())
        return;
    Programme programme(outs, returns, maxGap_ms, most.size());
    if (programme.cells() > kMostCells) {
        matching.pairs.insert(matching.pairs.end(), most.begin(), most.end());
        matching.exact = false;
        return;
    }
    auto pairs = programme.solve();
    if (!inDrivingOrder(outs) || !inDrivingOrder(returns))
        matching.exact = breakTies(outs, returns, maxGap_ms, pairs) && matching.exact;
    for (const auto& [i, j] : pairs)
        matching.pairs.push_back({outs[i].position, returns[j].position});
}

} // namespace

Matching matchRuns(std::vector<PairingPoint> outs, std::vector<PairingPoint> returns,
                   std::int64_t maxGap_ms)
{
    std::sort(outs.begin(), outs.end(), earlier);
    std::sort(returns.begin(), returns.end(), earlier);
    Matching matching;
    std::size_t i = 0, j = 0;
    while (i < outs.size() && j < returns.size()) {
        const std::size_t firstOut = i, firstReturn = j;
        std::int64_t latest = std::min(outs[i].mid_ms, returns[j].mid_ms);
        const auto takeNear = [&](const std::vector<PairingPoint>& points, std::size_t& k) {
            const bool near = k < points.size() && points[k].mid_ms - latest <= maxGap_ms;
            if (near)
                latest = std::max(latest, points[k++].mid_ms);
            return near;
        };
        while (takeNear(outs, i) || takeNear(returns, j)) {
        }
        matchStretch(std::span(outs).subspan(firstOut, i - firstOut),
                     std::span(returns).subspan(firstReturn, j - firstReturn), maxGap_ms, matching);
    }
    std::sort(matching.pairs.begin(), matching.pairs.end());
    return matching;
}

} // namespace bothways::core
