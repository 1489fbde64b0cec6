// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pairing/pairing_ties.h"

#include <algorithm>
#include <optional>

// Minimum-cost flow in short. Nodes are the outs, the returns and one node `rest`, from which every
// matched out is fed and into which every matched return drains. A residual arc is a change that
// could be made to the matching: out -> return to form a pair, return -> out to part one,
// rest -> out (return -> rest) for a run that stays alone, out -> rest (rest -> return) for a
// matched one. The matching has least cost, so no cycle of residual arcs has negative cost, and
// potentials exist (Bellman & Ford) under which no arc does. Every other matching of least cost is
// reached by turning cycles of arcs that cost exactly nothing under them. So: each out, in driving
// order, takes the first return to which a cycle of such arcs leads, and is then left alone.
namespace bothways::core {
namespace {

using Points = std::span<const PairingPoint>;

constexpr std::size_t kNobody = static_cast<std::size_t>(-1);
constexpr std::size_t kMostArcs = 20'000'000;

class Ties {
public:
    Ties(Points outs, Points returns, std::int64_t maxGap_ms,
         const std::vector<std::pair<std::size_t, std::size_t>>& pairs)
        : m_outs(outs),
          m_returns(returns),
          m_mateOfOut(outs.size(), kNobody),
          m_mateOfReturn(returns.size(), kNobody),
          m_reach(returnsInReach(outs, returns, maxGap_ms))
    {
        for (const auto& [i, j] : pairs)
            marry(i, j);
        for (const auto& [near, far] : m_reach)
            m_arcs += far - near;
    }

    [[nodiscard]] std::size_t arcs() const { return m_arcs; }

    std::vector<std::pair<std::size_t, std::size_t>> solve()
    {
        findPotentials();
        findTightArcs();
        settleInDrivingOrder();
        std::vector<std::pair<std::size_t, std::size_t>> pairs;
        for (std::size_t i = 0; i < m_outs.size(); ++i)
            if (m_mateOfOut[i] != kNobody)
                pairs.emplace_back(i, m_mateOfOut[i]);
        return pairs;
    }

private:
    // Nodes: outs, then returns, then `rest`.
    [[nodiscard]] std::size_t outNode(std::size_t i) const { return i; }
    [[nodiscard]] std::size_t returnNode(std::size_t j) const { return m_outs.size() + j; }
    [[nodiscard]] std::size_t rest() const { return m_outs.size() + m_returns.size(); }

    void marry(std::size_t i, std::size_t j)
    {
        m_mateOfOut[i] = j;
        m_mateOfReturn[j] = i;
    }

    bool relax(std::size_t from, std::size_t to, const PairingCost& cost)
    {
        const PairingCost through = m_potential[from] + cost;
        if (through >= m_potential[to])
            return false;
        m_potential[to] = through;
        return true;
    }

    bool relaxOut(std::size_t i)
    {
        bool changed = m_mateOfOut[i] == kNobody ? relax(rest(), outNode(i), {})
                                                 : relax(outNode(i), rest(), {});
        for (std::size_t j = m_reach[i].first; j < m_reach[i].second; ++j) {
            const PairingCost cost = pairingCost(m_outs[i], m_returns[j]);
            changed |= m_mateOfOut[i] == j ? relax(returnNode(j), outNode(i), PairingCost{} - cost)
                                           : relax(outNode(i), returnNode(j), cost);
        }
        return changed;
    }

    bool relaxReturns()
    {
        bool changed = false;
        for (std::size_t j = 0; j < m_returns.size(); ++j)
            changed |= m_mateOfReturn[j] == kNobody ? relax(returnNode(j), rest(), {})
                                                    : relax(rest(), returnNode(j), {});
        return changed;
    }

    /// Shortest distances from everywhere at once; sweeps to and fro, as pairs are local in time.
    void findPotentials()
    {
        m_potential.assign(rest() + 1, {});
        for (bool changed = true; changed;) {
            changed = relaxReturns();
            for (std::size_t i = 0; i < m_outs.size(); ++i)
                changed |= relaxOut(i);
            changed |= relaxReturns();
            for (std::size_t i = m_outs.size(); i-- > 0;)
                changed |= relaxOut(i);
        }
    }

    void findTightArcs()
    {
        m_tightOfOut.resize(m_outs.size());
        m_tightOfReturn.resize(m_returns.size());
        for (std::size_t i = 0; i < m_outs.size(); ++i)
            for (std::size_t j = m_reach[i].first; j < m_reach[i].second; ++j) {
                const PairingCost cost = pairingCost(m_outs[i], m_returns[j]);
                if (m_potential[outNode(i)] + cost != m_potential[returnNode(j)])
                    continue;
                m_tightOfOut[i].push_back(j);
                m_tightOfReturn[j].push_back(i);
            }
        for (auto& returns : m_tightOfOut)
            std::sort(returns.begin(), returns.end(), [&](std::size_t a, std::size_t b) {
                return m_returns[a].position < m_returns[b].position;
            });
    }

    [[nodiscard]] bool tightWithRest(std::size_t node) const
    {
        return m_potential[node] == m_potential[rest()];
    }

    void settleInDrivingOrder()
    {
        std::vector<std::size_t> order(m_outs.size());
        for (std::size_t i = 0; i < order.size(); ++i)
            order[i] = i;
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return m_outs[a].position < m_outs[b].position;
        });
        m_settled.assign(rest() + 1, false);
        for (const std::size_t i : order) {
            if (const auto better = betterReturn(i))
                turnCycle(i, *better);
            m_settled[outNode(i)] = true;
            if (m_mateOfOut[i] != kNobody)
                m_settled[returnNode(m_mateOfOut[i])] = true;
        }
    }

    /// The first return in driving order that out i can have instead of what it has, at no cost.
    std::optional<std::size_t> betterReturn(std::size_t i)
    {
        bool searched = false;
        for (const std::size_t j : m_tightOfOut[i]) {
            if (m_settled[returnNode(j)])
                continue;
            if (m_mateOfOut[i] == j)
                return std::nullopt;
            if (!searched)
                searchBackFrom(i);
            searched = true;
            if (m_towards[returnNode(j)] != kNobody)
                return j;
        }
        return std::nullopt;
    }

    /// Which nodes lead to out i along free residual arcs; m_towards has the next node on the way.
    void searchBackFrom(std::size_t i)
    {
        m_towards.assign(rest() + 1, kNobody);
        std::vector<std::size_t> found{outNode(i)};
        const auto reach = [&](std::size_t from, std::size_t to) {
            if (m_settled[from] || m_towards[from] != kNobody || from == outNode(i))
                return;
            m_towards[from] = to;
            found.push_back(from);
        };
        for (std::size_t k = 0; k < found.size(); ++k) {
            const std::size_t node = found[k];
            if (node == rest())
                arcsIntoRest(reach);
            else if (node < m_outs.size())
                arcsIntoOut(node, reach);
            else
                arcsIntoReturn(node - m_outs.size(), reach);
        }
    }

    template <class Reach>
    void arcsIntoOut(std::size_t i, const Reach& reach)
    {
        const std::size_t mate = m_mateOfOut[i];
        if (mate == kNobody) {
            if (tightWithRest(outNode(i)))
                reach(rest(), outNode(i));
        } else if (std::find(m_tightOfReturn[mate].begin(), m_tightOfReturn[mate].end(), i) !=
                   m_tightOfReturn[mate].end()) {
            reach(returnNode(mate), outNode(i));
        }
    }

    template <class Reach>
    void arcsIntoReturn(std::size_t j, const Reach& reach)
    {
        for (const std::size_t i : m_tightOfReturn[j])
            if (m_mateOfOut[i] != j)
                reach(outNode(i), returnNode(j));
        if (m_mateOfReturn[j] != kNobody && tightWithRest(returnNode(j)))
            reach(rest(), returnNode(j));
    }

    template <class Reach>
    void arcsIntoRest(const Reach& reach)
    {
        for (std::size_t i = 0; i < m_outs.size(); ++i)
            if (m_mateOfOut[i] != kNobody && tightWithRest(outNode(i)))
                reach(outNode(i), rest());
        for (std::size_t j = 0; j < m_returns.size(); ++j)
            if (m_mateOfReturn[j] == kNobody && tightWithRest(returnNode(j)))
                reach(returnNode(j), rest());
    }

    /// out i -> return j -> ... -> out i: what was parted is parted, what was formed is formed.
    void turnCycle(std::size_t i, std::size_t j)
    {
        std::vector<std::pair<std::size_t, std::size_t>> formed{{i, j}};
        for (std::size_t node = returnNode(j); node != outNode(i); node = m_towards[node]) {
            const std::size_t next = m_towards[node];
            if (node < m_outs.size() && next != rest())
                formed.emplace_back(node, next - m_outs.size());
            const bool parts = node >= m_outs.size() && node != rest() && next < m_outs.size();
            if (parts)
                m_mateOfReturn[node - m_outs.size()] = m_mateOfOut[next] = kNobody;
        }
        for (const auto& [out, back] : formed)
            marry(out, back);
    }

    Points m_outs, m_returns;
    std::vector<std::size_t> m_mateOfOut, m_mateOfReturn;
    const std::vector<std::pair<std::size_t, std::size_t>> m_reach;
    std::size_t m_arcs = 0;
    std::vector<PairingCost> m_potential;
    std::vector<std::vector<std::size_t>> m_tightOfOut, m_tightOfReturn;
    std::vector<bool> m_settled;
    std::vector<std::size_t> m_towards;
};

} // namespace

std::vector<std::pair<std::size_t, std::size_t>> returnsInReach(Points outs, Points returns,
                                                                std::int64_t maxGap_ms)
{
    std::vector<std::pair<std::size_t, std::size_t>> reach;
    reach.reserve(outs.size());
    std::size_t near = 0, far = 0;
    for (const PairingPoint& out : outs) {
        while (near < returns.size() && returns[near].mid_ms < out.mid_ms - maxGap_ms)
            ++near;
        far = std::max(far, near);
        while (far < returns.size() && returns[far].mid_ms <= out.mid_ms + maxGap_ms)
            ++far;
        reach.emplace_back(near, far);
    }
    return reach;
}

bool breakTies(std::span<const PairingPoint> outs, std::span<const PairingPoint> returns,
               std::int64_t maxGap_ms, std::vector<std::pair<std::size_t, std::size_t>>& pairs)
{
    Ties ties(outs, returns, maxGap_ms, pairs);
    if (ties.arcs() > kMostArcs)
        return false;
    pairs = ties.solve();
    return true;
}

} // namespace bothways::core
