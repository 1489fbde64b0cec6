// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/effect_model.h"
#include "core/effect/verdict.h"
#include "core/statistics/least_squares.h"

#include <cmath>
#include <cstdint>
#include <random>
#include <string>
#include <vector>

namespace bothways::tests {

/// Pairs without an effect of two days A/B/A with 2 pairs a block and one A/B with 8, with 1 %
/// noise under a drift of 1 %/h: the study is closed, its last day open. For simulations.
class OpenDayBesideClosedOnes {
public:
    explicit OpenDayBesideClosedOnes(std::uint64_t seed)
        : m_random(seed),
          m_columns(core::effectColumns(driven(), true)),
          m_times(core::centredTimes(driven()))
    {
    }
    /// Of the effect, from readings that are drawn anew.
    core::Interval draw()
    {
        std::vector<double> y;
        for (const double hours : m_times)
            y.push_back(0.01 * hours + m_normal(m_random));
        const core::LeastSquaresFit fit = core::leastSquares(m_columns, y);
        return core::intervalOf(fit.coefficients[0], fit.s() * std::sqrt(fit.cov(0, 0)), fit.df,
                                {});
    }

private:
    static std::vector<core::Observation> driven()
    {
        std::vector<core::Observation> pairs;
        const auto drive = [&](const std::string& sequence, int each, int day) {
            double hours = 24.0 * day;
            for (const char letter : sequence)
                for (int k = 0; k < each; ++k, hours += 0.25)
                    pairs.push_back({hours, day, letter == 'B', 0.0});
        };
        drive("ABA", 2, 0);
        drive("ABA", 2, 1);
        drive("AB", 8, 2);
        return pairs;
    }

    std::mt19937_64 m_random;
    std::normal_distribution<double> m_normal{0.0, 0.01};
    core::Columns m_columns;
    std::vector<double> m_times;
};

} // namespace bothways::tests
