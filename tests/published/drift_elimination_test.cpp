// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/least_squares.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

// Comparing two things while the instrument drifts is what mass and length laboratories do; their
// designs are A/B/A studies with one reading a block.

using namespace bothways::core;

namespace {

/// Readings in equal steps: intercept, device, time from the middle.
LeastSquaresFit weigh(const std::string& sequence, const std::vector<double>& readings)
{
    Columns columns(readings.size());
    std::ranges::fill(columns.add(), 1.0);
    std::ranges::transform(sequence, columns.add().begin(),
                           [](char letter) { return letter == 'B' ? 1.0 : 0.0; });
    const auto time = columns.add();
    for (std::size_t i = 0; i < readings.size(); ++i)
        time[i] = static_cast<double>(i) - 0.5 * static_cast<double>(readings.size() - 1);
    return leastSquares(columns, readings, {.weightsOf = 1});
}

} // namespace

// Double substitution (NIST SOP 4, in NISTIR 6969; formula from memory): d = (O2 - O1 + O3 - O4)/2,
// and the drift a step is (-3 O1 - O2 + O3 + 3 O4)/10. Variance of d: sigma^2.
TEST(DriftElimination, DoubleSubstitutionIsTheLeastSquaresAnswer)
{
    const LeastSquaresFit first = weigh("ABBA", {10.00, 12.05, 12.15, 10.30});
    EXPECT_NEAR(first.coefficients[1], 1.95, 1e-14);
    EXPECT_NEAR(first.coefficients[2], 0.10, 1e-14);
    const LeastSquaresFit second = weigh("ABBA", {100.00, 100.52, 100.63, 100.33});
    EXPECT_NEAR(second.coefficients[1], 0.41, 1e-13);
    EXPECT_NEAR(second.coefficients[2], 0.11, 1e-13);
    const std::array<double, 4> weights = {-0.5, 0.5, 0.5, -0.5};
    for (std::size_t i = 0; i < weights.size(); ++i)
        EXPECT_NEAR(first.weights[i], weights[i], 1e-15);
    EXPECT_NEAR(first.cov(1, 1), 1.0, 1e-14);
}

// A-B-A: d = O2 - (O1 + O3)/2, variance 3/2 sigma^2.
TEST(DriftElimination, OneReadingBetweenTwo)
{
    const LeastSquaresFit fit = weigh("ABA", {7.10, 6.80, 7.30});
    EXPECT_NEAR(fit.coefficients[1], -0.40, 1e-14);
    EXPECT_NEAR(fit.cov(1, 1), 1.5, 1e-14);
    EXPECT_EQ(fit.df, 0);
}

TEST(DriftElimination, AStraightDriftChangesNothing)
{
    for (const std::string sequence : {"ABBA", "ABABA", "BAAB", "ABAB"}) {
        std::vector<double> still, drifting;
        for (std::size_t i = 0; i < sequence.size(); ++i) {
            still.push_back(5.0 + (sequence[i] == 'B' ? 0.3 : 0.0) +
                            0.01 * std::sin(1.7 * static_cast<double>(i)));
            drifting.push_back(still.back() + 0.7 * static_cast<double>(i));
        }
        EXPECT_NEAR(weigh(sequence, still).coefficients[1],
                    weigh(sequence, drifting).coefficients[1], 1e-13)
            << sequence;
    }
}

// Cameron-Hailes design for four gage blocks: eight differences with a straight drift, the sum of
// blocks 1 and 2 known. NIST/SEMATECH e-Handbook of Statistical Methods, 2.3.4.2.12 (read):
// solution multipliers with divisor 168, factors of the repeatability 0.3227, 0.3227, 0.5204,
// 0.5204, and 0.6455 for the difference of 1 and 2; 4 degrees of freedom.
TEST(DriftElimination, CameronAndHailesDesignForFourGageBlocks)
{
    constexpr int kDesign[8][4] = {{1, -1, 0, 0}, {-1, 0, 0, 1}, {0, 0, 1, -1}, {0, 1, -1, 0},
                                   {0, 1, 0, -1}, {-1, 0, 0, 1}, {1, 0, -1, 0}, {0, -1, 1, 0}};
    constexpr int kMultipliers[3][8] = {{35, -14, -7, -14, -21, -14, 21, 14},
                                        {-7, 14, 35, -42, -7, 14, -49, 42},
                                        {7, 42, -35, -14, -49, 42, -7, 14}};
    constexpr int kDrift[8] = {-7, -5, -3, -1, 1, 3, 5, 7};
    constexpr double kFactors[3] = {0.3227, 0.5204, 0.5204};
    // With the restraint at zero block 2 is minus block 1: columns for block 1, 3, 4 and the drift.
    Columns columns(8);
    for (const int block : {0, 2, 3}) {
        const auto column = columns.add();
        for (std::size_t row = 0; row < 8; ++row)
            column[row] = kDesign[row][block] - (block == 0 ? kDesign[row][1] : 0);
    }
    std::ranges::copy(kDrift, columns.add().begin());
    const std::vector<double> differences = {0.1, -0.3, 0.2, 0.05, -0.1, -0.25, 0.15, 0.02};
    for (int block = 0; block < 3; ++block) {
        const LeastSquaresFit fit = leastSquares(columns, differences, {.weightsOf = block});
        for (std::size_t row = 0; row < 8; ++row)
            EXPECT_NEAR(fit.weights[row] * 168.0, kMultipliers[block][row], 1e-11)
                << block << ", " << row;
        const auto j = static_cast<std::size_t>(block);
        EXPECT_NEAR(std::sqrt(fit.cov(j, j)), kFactors[block], 5e-5);
    }
    const LeastSquaresFit drift = leastSquares(columns, differences, {.weightsOf = 3});
    for (std::size_t row = 0; row < 8; ++row)
        EXPECT_NEAR(drift.weights[row] * 168.0, kDrift[row], 1e-11);
    EXPECT_EQ(drift.df, 4);
    EXPECT_NEAR(2.0 * std::sqrt(drift.cov(0, 0)), 0.6455, 5e-5); // block 1 less block 2
}
