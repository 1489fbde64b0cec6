// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/outlier.h"

#include "core/statistics/descriptive.h"
#include "core/statistics/least_squares.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <vector>

// About a mean alone the largest studentised residual and Grubbs' G = max|x - mean|/s are one
// statistic: G's critical value (n-1)/sqrt(n) sqrt(t^2/(n-2+t^2)), t at 1 - alpha/(2n) with n - 2
// degrees of freedom, is where the Bonferroni p is alpha.

using namespace bothways::core;

namespace {

std::optional<LargestResidual> largestAboutMean(const std::vector<double>& values)
{
    Columns columns(values.size());
    std::ranges::fill(columns.add(), 1.0);
    const LeastSquaresFit fit = leastSquares(columns, values);
    return largestResidual(fit.residuals, fit.leverage, fit.df, 1e-12);
}

double grubbs(const std::vector<double>& values)
{
    const Moments m = moments(values);
    double largest = 0.0;
    for (const double value : values)
        largest = std::max(largest, std::abs(value - m.mean));
    return largest / m.sd;
}

/// n values, the last of which makes G what is asked for.
std::vector<double> sampleWith(std::size_t n, double g)
{
    std::vector<double> values(n);
    for (std::size_t i = 0; i + 1 < n; ++i)
        values[i] = std::sin(1.0 + 2.0 * static_cast<double>(i));
    double low = *std::max_element(values.begin(), values.end() - 1), high = 1e6;
    for (int round = 0; round < 200; ++round) {
        values.back() = 0.5 * (low + high);
        (grubbs(values) < g ? low : high) = values.back();
    }
    return values;
}

struct Critical {
    std::size_t n;
    double twoSided5, twoSided1;
};

// F. E. Grubbs, G. Beck, Technometrics 14 (1972) 847-854; nine to ten digits from the t form by R
// 4.2.2. Tolerance 1e-7: p moves by at most some 20 a unit of G here, and G has 1e-9.
constexpr Critical kCritical[] = {
    {4, 1.48125, 1.49625},          {5, 1.715037312, 1.763678479},  {6, 1.887145118, 1.972816718},
    {7, 2.019968508, 2.139105989},  {8, 2.126645087, 2.274365127},  {9, 2.215004223, 2.386809875},
    {10, 2.289954084, 2.48208325},  {12, 2.411559518, 2.635733044}, {15, 2.548307772, 2.806105291},
    {20, 2.708245646, 3.000804157}, {30, 2.90847306, 3.236078301},  {50, 3.128247334, 3.4824618},
    {100, 3.384082901, 3.754004372}};

} // namespace

TEST(Outlier, CriticalValuesOfGrubbsAreWherePIsAlpha)
{
    for (const Critical& row : kCritical) {
        const auto five = largestAboutMean(sampleWith(row.n, row.twoSided5));
        const auto one = largestAboutMean(sampleWith(row.n, row.twoSided1));
        ASSERT_TRUE(five && one) << row.n;
        EXPECT_EQ(five->place, row.n - 1);
        EXPECT_NEAR(five->p, 0.05, 1e-7) << row.n;
        EXPECT_NEAR(one->p, 0.01, 1e-7) << row.n;
    }
}

TEST(Outlier, AgreesWithATableOfTwoDecimals)
{
    // One-sided 0.025 of a table after Grubbs and Beck, read in a lecture sheet; two-sided 0.05.
    // The table has two decimals: p must pass 0.05 within a hundredth either way.
    constexpr std::pair<std::size_t, double> kPrinted[] = {
        {4, 1.48}, {5, 1.71},  {6, 1.89},  {7, 2.02},  {8, 2.13},
        {9, 2.21}, {10, 2.29}, {12, 2.41}, {15, 2.55}, {20, 2.71}};
    for (const auto& [n, g] : kPrinted) {
        const double limit = static_cast<double>(n - 1) / std::sqrt(static_cast<double>(n));
        EXPECT_GT(largestAboutMean(sampleWith(n, g - 0.01))->p, 0.05) << n;
        EXPECT_LT(largestAboutMean(sampleWith(n, std::min(g + 0.01, limit - 1e-6)))->p, 0.05) << n;
    }
}

TEST(Outlier, MassSpectrometerReadingsOfTietjenAndMoore)
{
    // Technometrics 14 (1972) 583-597; e-Handbook 1.3.5.17.1 prints G = 2.4687 (read).
    const std::vector<double> readings = {199.31, 199.53, 200.19, 200.82,
                                          201.92, 201.95, 202.18, 245.57};
    EXPECT_NEAR(grubbs(readings), 2.46876461121, 1e-11);
    const auto largest = largestAboutMean(readings);
    ASSERT_TRUE(largest);
    EXPECT_EQ(largest->place, 7U);
    EXPECT_LT(largest->p, 1e-6);
    EXPECT_GT(largest->studentised, 0.0);
}

TEST(Outlier, IsTheTOfATermForThatObservationAlone)
{
    const std::vector<double> x = {0, 1, 2, 3, 4, 5, 6, 7},
                              y = {1.1, 1.9, 3.2, 3.8, 7.5, 6.1, 6.8, 8.2};
    Columns line(8);
    std::ranges::fill(line.add(), 1.0);
    std::ranges::copy(x, line.add().begin());
    const LeastSquaresFit fit = leastSquares(line, y);
    const auto largest = largestResidual(fit.residuals, fit.leverage, fit.df, 1e-12);
    ASSERT_TRUE(largest);
    EXPECT_EQ(largest->place, 4U);
    Columns withTerm = line;
    withTerm.add()[4] = 1.0;
    const LeastSquaresFit with = leastSquares(withTerm, y);
    EXPECT_NEAR(largest->studentised, with.coefficients[2] / (with.s() * std::sqrt(with.cov(2, 2))),
                1e-12);
}

TEST(Outlier, OfEqualOnesTheFirstIsNamed)
{
    const auto largest = largestAboutMean({1.0, -1.0, 0.1, -0.1, 0.05, -0.05});
    ASSERT_TRUE(largest);
    EXPECT_EQ(largest->place, 0U);
    EXPECT_GT(largest->studentised, 0.0);
}

TEST(Outlier, WhereTheOthersAreAlikeTheDisplaysRoundingIsTheirSpread)
{
    std::vector<double> values(8, 2.0);
    values[3] = 2.01;
    Columns columns(8);
    std::ranges::fill(columns.add(), 1.0);
    const LeastSquaresFit fit = leastSquares(columns, values);
    const auto step = largestResidual(fit.residuals, fit.leverage, fit.df, 0.01 / std::sqrt(12.0));
    ASSERT_TRUE(step);
    EXPECT_EQ(step->place, 3U);
    EXPECT_GT(step->p, 0.05); // one step of the display is no outlier
    const auto gross = largestResidual(fit.residuals, fit.leverage, fit.df, 1e-6);
    ASSERT_TRUE(gross);
    EXPECT_LT(gross->p, 1e-6);
    EXPECT_TRUE(std::isfinite(gross->studentised));
}

TEST(Outlier, HasNothingToSayWithoutResidualsOrDegreesOfFreedom)
{
    EXPECT_FALSE(largestAboutMean(std::vector<double>(6, 0.0)));
    EXPECT_FALSE(largestAboutMean({1.0, 2.0}));
}
