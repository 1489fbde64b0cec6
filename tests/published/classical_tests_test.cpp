// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/companions/relabelling.h"
#include "core/effect/verdict.h"
#include "core/statistics/distributions.h"
#include "core/statistics/least_squares.h"

#include "published_data.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

using namespace bothways;

namespace {

struct TTest {
    double effect, se, t, df, p, low, high;
};

/// Effect of the last column.
TTest tTestOf(const core::Columns& columns, const std::vector<double>& y, double confidence = 0.95)
{
    const core::LeastSquaresFit fit = core::leastSquares(columns, y);
    const std::size_t last = columns.count() - 1;
    const double se = fit.s() * std::sqrt(fit.cov(last, last));
    core::AnalysisOptions options;
    options.confidence = confidence;
    const core::Interval interval = core::intervalOf(fit.coefficients[last], se, fit.df, options);
    return {interval.effect_log, se,         interval.effect_log / se,
            interval.df,         interval.p, interval.low_log,
            interval.high_log};
}

TTest oneSample(const std::vector<double>& differences, double confidence = 0.95)
{
    core::Columns columns(differences.size());
    std::ranges::fill(columns.add(), 1.0);
    return tTestOf(columns, differences, confidence);
}

/// The open design's model: a mean and what the second group differs by.
TTest twoSamples(const std::vector<double>& a, const std::vector<double>& b)
{
    std::vector<double> y = a;
    y.insert(y.end(), b.begin(), b.end());
    core::Columns columns(y.size());
    std::ranges::fill(columns.add(), 1.0);
    const auto x = columns.add();
    std::fill(x.begin() + static_cast<std::ptrdiff_t>(a.size()), x.end(), 1.0);
    return tTestOf(columns, y);
}

std::vector<double> sleepDifferences()
{
    const auto drug1 = published::readColumn("sleep.csv", "drug1");
    const auto drug2 = published::readColumn("sleep.csv", "drug2");
    std::vector<double> differences;
    for (std::size_t i = 0; i < drug1.size(); ++i)
        differences.push_back(drug1[i] - drug2[i]);
    return differences;
}

} // namespace

// Student, Biometrika 6 (1908) 1-25. R's help page prints t = -4.0621, df = 9, p = 0.002833,
// interval -2.4598858 to -0.7001142 (from memory); 15 digits by t.test() of R 4.2.2. Tolerance
// 1e-13 relative.
TEST(ClassicalTests, StudentsSleepDataPaired)
{
    const TTest test = oneSample(sleepDifferences());
    EXPECT_NEAR(test.effect, -1.58, 1e-14);
    EXPECT_NEAR(test.se, 0.388958723888395, 1e-14);
    EXPECT_NEAR(test.t, -4.06212768338204, 1e-12);
    EXPECT_EQ(test.df, 9.0);
    EXPECT_NEAR(test.p, 0.00283289019738427, 1e-15);
    EXPECT_NEAR(test.low, -2.45988576327698, 1e-12);
    EXPECT_NEAR(test.high, -0.700114236723018, 1e-12);
    const TTest wide = oneSample(sleepDifferences(), 0.99);
    EXPECT_NEAR(wide.low, -2.84405188510482, 1e-12);
    EXPECT_NEAR(wide.high, -0.315948114895175, 1e-12);
}

// t.test(extra ~ group, sleep, var.equal = TRUE) of R 4.2.2; and NIST AUTO83B (e-Handbook 1.3.5.3):
// t = -12.62059 on 326 degrees of freedom as printed there, 15 digits by R.
TEST(ClassicalTests, TwoSamplesWithOneSpread)
{
    const TTest sleep = twoSamples(published::readColumn("sleep.csv", "drug1"),
                                   published::readColumn("sleep.csv", "drug2"));
    EXPECT_NEAR(sleep.t, 1.86081346748685, 1e-12);
    EXPECT_EQ(sleep.df, 18.0);
    EXPECT_NEAR(sleep.p, 0.0791867142159382, 1e-14);
    EXPECT_NEAR(sleep.high, 3.3638740322876, 1e-12);

    const auto cars = published::readTable("auto83b.csv");
    const std::vector<double> mpg = published::asNumbers(cars.at("mpg"));
    std::vector<double> us, japan;
    for (std::size_t i = 0; i < mpg.size(); ++i)
        (cars.at("country")[i] == "US" ? us : japan).push_back(mpg[i]);
    ASSERT_EQ(us.size(), 249U);
    const TTest autos = twoSamples(us, japan);
    EXPECT_NEAR(-autos.t, -12.62059, 5e-6);
    EXPECT_NEAR(-autos.t, -12.6205912887244, 1e-11);
    EXPECT_EQ(autos.df, 326.0);
    EXPECT_NEAR(autos.p, 5.27293545660839e-30, 1e-10 * 5.3e-30);
    EXPECT_NEAR(autos.low, 8.72521573265776, 1e-11);
    EXPECT_NEAR(autos.high, 11.9476529572919, 1e-11);
}

// Two one-sided tests (D. J. Schuirmann, J. Pharmacokinetics and Biopharmaceutics 15 (1987)
// 657-680): equivalence within -L to L is shown at 5 % exactly when the 90 % interval lies inside.
// p by t.test(d, mu = -+L, alternative = ...) of R 4.2.2 on the sleep differences.
TEST(ClassicalTests, TwoOneSidedTests)
{
    struct Row {
        double limit, p;
        bool equivalent;
    };
    constexpr Row kRows[] = {{2.0, 0.154157235669097, false},
                             {2.5, 0.0211168602465007, true},
                             {3.0, 0.00265557029265867, true}};
    const TTest test = oneSample(sleepDifferences());
    const double half = core::equivalenceHalfWidth(test.se, test.df, 0.95);
    EXPECT_NEAR(test.effect - half, -2.29300526702928, 1e-12);
    EXPECT_NEAR(test.effect + half, -0.866994732970716, 1e-12);
    for (const Row& row : kRows) {
        const double above = 1.0 - core::tCdf((test.effect + row.limit) / test.se, test.df);
        const double below = core::tCdf((test.effect - row.limit) / test.se, test.df);
        EXPECT_NEAR(std::max(above, below), row.p, 1e-13) << row.limit;
        const bool inside = test.effect - half > -row.limit && test.effect + half < row.limit;
        EXPECT_EQ(inside, row.equivalent) << row.limit;
        EXPECT_EQ(inside, std::max(above, below) < 0.05) << row.limit;
    }
}

// Darwin's maize, crossed against self-fertilised, in eighths of an inch. R. A. Fisher, The Design
// of Experiments (1935), section 21: of the 32,768 ways to give the differences signs, 863 have a
// sum of 314 or more (from memory; the enumeration below confirms it). Every choice of pairs to
// turn over is visited by the enumeration that `labels` uses.
TEST(ClassicalTests, DarwinsMaizeByExactRelabelling)
{
    std::vector<int> difference;
    for (const double value : published::readColumn("maize.csv", "diff_eighths"))
        difference.push_back(static_cast<int>(std::abs(value)));
    ASSERT_EQ(difference.size(), 15U);
    const int all = std::accumulate(difference.begin(), difference.end(), 0);
    long deals = 0, atLeast = 0, asExtreme = 0;
    for (std::size_t turned = 0; turned <= difference.size(); ++turned) {
        std::vector<std::uint32_t> places(turned);
        std::iota(places.begin(), places.end(), 0U);
        do {
            int sum = all;
            for (const std::uint32_t i : places)
                sum -= 2 * difference[i];
            ++deals;
            atLeast += sum >= 314 ? 1 : 0;
            asExtreme += std::abs(sum) >= 314 ? 1 : 0;
        } while (core::nextChoice(places, difference.size()));
    }
    EXPECT_EQ(deals, 32768);
    EXPECT_EQ(atLeast, 863);
    EXPECT_EQ(asExtreme, 1726);
}

TEST(ClassicalTests, DarwinsMaizeByStudentsT)
{
    // Fisher prints t = 2.148 (from memory); 15 digits by t.test() of R 4.2.2.
    const TTest test = oneSample(published::readColumn("maize.csv", "diff_eighths"));
    EXPECT_NEAR(test.effect, 20.9333333333333, 1e-12);
    EXPECT_NEAR(test.t, 2.14798746133112, 1e-13);
    EXPECT_NEAR(test.p, 0.0497029440218009, 1e-14);
    EXPECT_NEAR(test.low / 8.0, 0.00389916479912178, 1e-13);
    EXPECT_NEAR(test.high / 8.0, 5.22943416853421, 1e-12);
}

// Without a trend in the model |t| orders the deals as the difference of means does. Of the C(12,
// 6) = 924 deals of twelve of Student's values (the first six patients) 244 have a difference at
// least as large: full enumeration by combn() in R 4.2.2.
TEST(ClassicalTests, LabelsWithoutATrendAreAPermutationTest)
{
    const auto drug1 = published::readColumn("sleep.csv", "drug1");
    const auto drug2 = published::readColumn("sleep.csv", "drug2");
    std::vector<double> y(drug1.begin(), drug1.begin() + 6);
    y.insert(y.end(), drug2.begin(), drug2.begin() + 6);
    std::vector<bool> second(12, false);
    std::fill(second.begin() + 6, second.end(), true);
    core::Columns nuisance(12);
    std::ranges::fill(nuisance.add(), 1.0);
    const auto test = core::dealLabelsAgain(y, second, nuisance, 1);
    ASSERT_TRUE(test);
    EXPECT_TRUE(test->exact);
    EXPECT_EQ(test->deals, 924);
    EXPECT_NEAR(test->p * 924.0, 244.0, 1e-9);
}

// R's data set ToothGrowth (C. I. Bliss 1952): var.test(len ~ supp) gives F = 0.6386, num df = 29,
// denom df = 29, p-value = 0.2331. Rows 1 to 30 are ascorbic acid, the others orange juice.
TEST(ClassicalTests, TheTwoSidedRatioOfVariancesIsRs)
{
    const std::vector<double> len = published::readColumn("toothgrowth_len.csv", "len");
    ASSERT_EQ(len.size(), 60U);
    double sum[2] = {}, square[2] = {};
    for (std::size_t i = 0; i < 60; ++i)
        sum[i / 30] += len[i] / 30.0;
    for (std::size_t i = 0; i < 60; ++i)
        square[i / 30] += (len[i] - sum[i / 30]) * (len[i] - sum[i / 30]) / 29.0;
    const double f = square[1] / square[0];
    EXPECT_NEAR(f, 0.6386, 5e-5);
    EXPECT_NEAR(core::fTwoSided(f, 29.0, 29.0), 0.2331, 5e-5);
    EXPECT_NEAR(core::fTwoSided(1.0 / f, 29.0, 29.0), core::fTwoSided(f, 29.0, 29.0), 1e-14);
}
