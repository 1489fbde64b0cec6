// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/sequence_study.h"

#include "core/base/decimal_text.h"
#include "core/statistics/distributions.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

namespace bothways::core {
namespace {

using Vector = std::vector<double>;

double dot(const Vector& a, const Vector& b)
{
    double sum = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i)
        sum += a[i] * b[i];
    return sum;
}

/// Standard normal deviates, two at a time (Box, Muller 1958).
class Normal {
public:
    explicit Normal(std::uint64_t seed) : m_random(seed) {}
    double operator()()
    {
        if (m_have) {
            m_have = false;
            return m_spare;
        }
        const double radius = std::sqrt(-2.0 * std::log(1.0 - uniform()));
        const double angle = 2.0 * std::numbers::pi * uniform();
        m_spare = radius * std::sin(angle);
        m_have = true;
        return radius * std::cos(angle);
    }

private:
    double uniform() { return static_cast<double>(m_random() >> 11) * 0x1.0p-53; }
    std::mt19937_64 m_random;
    bool m_have = false;
    double m_spare = 0.0;
};

/// Least squares of one design, set up once: an orthonormal basis whose last vector is the
/// device's.
class Design {
public:
    explicit Design(const std::vector<PlannedPair>& pairs)
    {
        const std::size_t n = pairs.size();
        Vector device(n);
        m_time.resize(n);
        for (std::size_t i = 0; i < n; ++i) {
            m_block.push_back(static_cast<std::size_t>(pairs[i].block));
            device[i] = pairs[i].device ? 1.0 : 0.0;
            m_time[i] = pairs[i].time_h;
        }
        double mean = 0.0;
        for (const double t : m_time)
            mean += t / static_cast<double>(n);
        for (double& t : m_time)
            t -= mean;
        add(Vector(n, 1.0));
        if (blocks() >= 3) // closed
            add(m_time);
        add(std::move(device));
    }
    std::size_t pairs() const { return m_time.size(); }
    std::size_t blocks() const { return m_block.back() + 1; }
    std::size_t blockOf(std::size_t pair) const { return m_block[pair]; }
    double time_h(std::size_t pair) const { return m_time[pair]; } ///< from the mean
    double df() const { return static_cast<double>(m_time.size() - m_basis.size()); }

    /// |t| of the device's coefficient in the regression of `m`.
    double absT(Vector m) const
    {
        double last = 0.0;
        for (const Vector& basis : m_basis) {
            last = dot(basis, m);
            for (std::size_t i = 0; i < m.size(); ++i)
                m[i] -= last * basis[i];
        }
        return std::abs(last) / std::sqrt(dot(m, m) / df());
    }

private:
    /// Makes a column orthogonal to those before (twice, for accuracy) and of length one.
    void add(Vector column)
    {
        for (int round = 0; round < 2; ++round)
            for (const Vector& basis : m_basis) {
                const double part = dot(basis, column);
                for (std::size_t i = 0; i < column.size(); ++i)
                    column[i] -= part * basis[i];
            }
        const double length = std::sqrt(dot(column, column));
        for (double& value : column)
            value /= length;
        m_basis.push_back(std::move(column));
    }
    std::vector<std::size_t> m_block;
    Vector m_time;
    std::vector<Vector> m_basis;
};

double pct(double value)
{
    return value / 100.0; // per cent to log, as the plan takes its noise
}

Vector day(const Design& design, double s, Disturbance disturbance,
           const DisturbanceStrength& strength, Normal& normal)
{
    Vector m(design.pairs());
    const double rho = disturbance == Disturbance::correlatedNoise ? strength.rho : 0.0;
    double before = normal();
    for (std::size_t i = 0; i < m.size(); ++i) {
        if (i > 0)
            before = rho * before + std::sqrt(1.0 - rho * rho) * normal();
        const double t = design.time_h(i);
        m[i] = s * before;
        if (disturbance == Disturbance::straightDrift)
            m[i] += pct(strength.straight_pct_per_h) * t;
        if (disturbance == Disturbance::curvedDrift)
            m[i] += pct(strength.curved_pct_per_h2) * t * t;
    }
    if (disturbance == Disturbance::blockChanges) {
        Vector level(design.blocks());
        for (double& value : level)
            value = pct(strength.block_change_pct) * normal();
        for (std::size_t i = 0; i < m.size(); ++i)
            m[i] += level[design.blockOf(i)];
    }
    return m;
}

} // namespace

Result<SequenceWeakness> simulateWeakness(const PlanOptions& options,
                                          const DisturbanceStrength& strength, int repeats,
                                          std::uint64_t seed, std::stop_token stop)
{
    const Result<Plan> plan = makePlan(options);
    if (!plan)
        return plan.error();
    if (options.sequence.find('/') != std::string::npos)
        return Error{ErrorCode::wrongUse, "a sequence over several days cannot be simulated"_t, {}};
    const Design design(plannedPairs(options.sequence, options.pairs_per_block, options.pair_min,
                                     options.switch_min));
    const double critical = tQuantile(0.5 + options.confidence / 2.0, design.df());
    SequenceWeakness weakness;
    weakness.standard_error =
        std::sqrt(options.confidence * (1.0 - options.confidence) / std::max(repeats, 1));
    for (std::size_t d = 0; d < kDisturbances.size(); ++d) {
        Normal normal(seed); // the same noise for every disturbance and sequence
        int held = 0;
        for (int i = 0; i < repeats; ++i) {
            if (stop.stop_requested())
                return Error{ErrorCode::stopped, "stopped"_t, {}};
            held +=
                design.absT(day(design, options.s, kDisturbances[d], strength, normal)) <= critical;
        }
        weakness.coverage[d] = static_cast<double>(held) / std::max(repeats, 1);
    }
    return weakness;
}

Result<std::vector<Plan>> sequencesFor(double hours, const PlanOptions& options)
{
    if (!(hours > 0.0) || !std::isfinite(hours))
        return Error{ErrorCode::wrongUse, "the hours on the road should be more than 0"_t, {}};
    std::vector<Plan> plans;
    for (const char* sequence : {"AB", "ABA", "ABBA", "ABAB", "ABABA", "ABBAABBA", "ABABABA"}) {
        PlanOptions tried = options;
        tried.sequence = sequence;
        for (tried.pairs_per_block = 1; tried.pairs_per_block <= 1000; ++tried.pairs_per_block) {
            const PlannedDesign design = plannedDesign(sequence, tried.pairs_per_block,
                                                       options.pair_min, options.switch_min);
            if (!(design.road_hours <= hours * (1.0 + 1e-12)))
                break;
        }
        if (--tried.pairs_per_block < 1)
            continue;
        if (Result<Plan> plan = makePlan(tried))
            plans.push_back(std::move(plan).take());
    }
    if (plans.empty()) {
        PlanOptions shortest = options;
        shortest.sequence = "ABA";
        shortest.pairs_per_block = 2;
        const Result<Plan> plan = makePlan(shortest);
        if (!plan)
            return plan.error();
        return Error{ErrorCode::wrongUse,
                     message("{} hours are too few: ABA with 2 pairs a block takes {}"_t,
                             decimalText(fmt::format("{:.3g}", hours)),
                             decimalText(fmt::format("{:.3g}", plan.value().road_hours))),
                     {}};
    }
    std::stable_sort(plans.begin(), plans.end(), [](const Plan& a, const Plan& b) {
        return a.detectable_log < b.detectable_log;
    });
    return plans;
}

} // namespace bothways::core
