// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/prepared_study.h"
#include "tests/support/study_builder.h"

#include <cmath>
#include <cstdint>
#include <functional>
#include <random>
#include <string>
#include <vector>

/// A day of driving whose readings can be drawn anew without forming pairs again: for simulations.
namespace bothways::tests {

struct Noise {
    double sd = 0.01;    ///< marginal, of a pair, log
    double rho = 0.0;    ///< first-order autoregression in pair order
    double t_df = 0.0;   ///< above 2: Student's t scaled to `sd`; 0: normal
    bool shared = false; ///< the two runs of a pair have one noise; else one each
    std::function<double(double hours)> drift = {}; ///< log, of hours from the middle of the day
};

class SimulatedDay {
public:
    /// @param sequence  "ABA"; `pairs` in each block, `pair_min` apart, no time for switches
    SimulatedDay(const std::string& sequence, int pairs, std::uint64_t seed, double pair_min = 15.0)
        : m_random(seed)
    {
        StudyBuilder builder;
        double minute = 10.0;
        for (const char letter : sequence)
            for (int k = 0; k < pairs; ++k, minute += pair_min)
                builder.addPair(std::string(1, letter), minute, 10.0, 10.0);
        m_study = builder.build();
        m_prepared = core::prepareStudy(m_study, {});
    }

    [[nodiscard]] const core::Study& study() const { return m_study; }
    [[nodiscard]] const core::PreparedStudy& prepared() const { return m_prepared; }

    /// New readings around 10 L/100 km with no difference between A and B. Each run has a noise of
    /// its own, so that `runs` sees independent runs where rho is 0; the pair's is their mean.
    void draw(const Noise& noise)
    {
        const std::size_t n = m_prepared.pairs.size();
        const double middle =
            0.5 * (m_prepared.pairs.front().time_h + m_prepared.pairs.back().time_h);
        std::vector<double> states(2, 0.0); // out and return, each a series of its own
        for (std::size_t k = 0; k < n; ++k) {
            core::Pair& pair = m_prepared.pairs[k];
            const double drift = noise.drift ? noise.drift(pair.time_h - middle) : 0.0;
            double total = 0.0;
            double innovation = noise.shared ? noise.sd * value(noise) : 0.0;
            for (std::size_t way = 0; way < 2; ++way) {
                if (!noise.shared)
                    innovation = std::sqrt(2.0) * noise.sd * value(noise);
                double& state = states[way];
                state = k == 0 ? innovation
                               : noise.rho * state +
                                     std::sqrt(1.0 - noise.rho * noise.rho) * innovation;
                core::CodedRun& run = m_prepared.runs[m_prepared.pairRuns[2 * k + way]];
                run.y = std::log(10.0) + drift + state;
                run.l_per_100km = std::exp(run.y);
                total += state;
            }
            pair.log = std::log(10.0) + drift + 0.5 * total;
            pair.l_per_100km = std::exp(pair.log);
        }
        averageBlocks();
    }

    /// The readings of the longer day's first pairs.
    void copyReadings(const SimulatedDay& longer)
    {
        for (std::size_t k = 0; k < m_prepared.pairs.size(); ++k) {
            m_prepared.pairs[k].log = longer.m_prepared.pairs[k].log;
            m_prepared.pairs[k].l_per_100km = longer.m_prepared.pairs[k].l_per_100km;
        }
        averageBlocks();
    }

private:
    void averageBlocks()
    {
        for (core::DesignBlock& block : m_prepared.design_blocks) {
            block.m = 0.0;
            for (const std::size_t k : block.pairs)
                block.m += m_prepared.pairs[k].log / static_cast<double>(block.pairs.size());
        }
    }

    double value(const Noise& noise)
    {
        if (noise.t_df <= 2.0)
            return m_normal(m_random);
        std::student_t_distribution<double> t(noise.t_df);
        return t(m_random) / std::sqrt(noise.t_df / (noise.t_df - 2.0));
    }

    std::mt19937_64 m_random;
    std::normal_distribution<double> m_normal;
    core::Study m_study;
    core::PreparedStudy m_prepared;
};

} // namespace bothways::tests
