// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/least_squares.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>
#include <random>

using namespace bothways::core;

namespace {

Columns columnsOf(const std::vector<std::vector<double>>& given)
{
    Columns columns(given.empty() ? 0 : given.front().size());
    for (const auto& column : given)
        std::copy(column.begin(), column.end(), columns.add().begin());
    return columns;
}

std::vector<double> normals(std::size_t n, std::uint64_t seed)
{
    std::mt19937_64 random(seed);
    std::normal_distribution<double> normal;
    std::vector<double> values(n);
    for (double& value : values)
        value = normal(random);
    return values;
}

} // namespace

// Four points by hand: x = 0, 1, 2, 3, y = 1, 3, 2, 6. Slope 7/5, intercept 9/10, residuals 0.1,
// 0.7, -1.7, 0.9; RSS 4.2.
TEST(LeastSquares, FitsALineByHand)
{
    const auto fit = leastSquares(columnsOf({{1, 1, 1, 1}, {0, 1, 2, 3}}),
                                  std::vector<double>{1, 3, 2, 6}, {.weightsOf = 1});
    EXPECT_NEAR(fit.coefficients[0], 0.9, 1e-14);
    EXPECT_NEAR(fit.coefficients[1], 1.4, 1e-14);
    EXPECT_NEAR(fit.rss, 4.2, 1e-13);
    EXPECT_EQ(fit.rank, 2);
    EXPECT_EQ(fit.df, 2);
    EXPECT_NEAR(fit.s(), std::sqrt(2.1), 1e-14);
    EXPECT_NEAR(fit.residuals[2], -1.7, 1e-13);
    EXPECT_NEAR(fit.fitted[3], 5.1, 1e-13);
    EXPECT_NEAR(fit.cov(1, 1), 1.0 / 5.0, 1e-15);
    EXPECT_NEAR(fit.cov(0, 0), 14.0 / 20.0, 1e-15);
    EXPECT_NEAR(fit.cov(0, 1), -6.0 / 20.0, 1e-15);
    EXPECT_NEAR(fit.leverage[0], 0.7, 1e-15);
    const std::vector<double> weights{-0.3, -0.1, 0.1, 0.3};
    for (std::size_t i = 0; i < 4; ++i)
        EXPECT_NEAR(fit.weights[i], weights[i], 1e-15);
}

TEST(LeastSquares, SaysWhichCoefficientsItCannotTell)
{
    // The fourth column is the sum of the second and the third.
    const std::vector<double> one(6, 1.0), a{1, 0, 0, 1, 0, 0}, b{0, 1, 0, 0, 1, 0};
    const std::vector<double> sum{1, 1, 0, 1, 1, 0}, free{1, 2, 3, 4, 5, 7};
    const std::vector<double> y{3, 1, 4, 1, 5, 9};
    const auto full = leastSquares(columnsOf({one, a, b, free}), y);
    const auto short_ = leastSquares(columnsOf({one, a, b, sum, free}), y);
    EXPECT_EQ(short_.rank, 4);
    EXPECT_EQ(short_.df, 2);
    EXPECT_EQ(short_.estimable, (std::vector<bool>{true, false, false, false, true}));
    EXPECT_NEAR(short_.coefficients[4], full.coefficients[3], 1e-13);
    EXPECT_NEAR(short_.cov(4, 4), full.cov(3, 3), 1e-13);
    EXPECT_NEAR(short_.rss, full.rss, 1e-12);
}

TEST(LeastSquares, TheScaleOfAColumnDoesNotMakeItDependent)
{
    const std::vector<double> one(5, 1.0), tiny{1e-12, -2e-12, 3e-12, 1e-12, 0.0};
    const auto fit =
        leastSquares(columnsOf({one, tiny}), std::vector<double>{1, 2, 3, 5, 8}, {.weightsOf = 1});
    EXPECT_EQ(fit.rank, 2);
    EXPECT_TRUE(fit.estimable[1]);
}

TEST(LeastSquares, RoundingOfClockTimesIsNoSpread)
{
    const std::vector<double> one(4, 1.0), x{0, 0, 1, 1};
    const std::vector<double> time{0.5, 0.5 + 1e-11, -0.5, -0.5 - 1e-11};
    EXPECT_EQ(leastSquares(columnsOf({one, x, time}), std::vector<double>{1, 2, 3, 4}).rank, 2);
}

TEST(LeastSquares, WeightsMakeTheCoefficientOutOfTheResponses)
{
    const auto columns = columnsOf({std::vector<double>(12, 1.0), normals(12, 1), normals(12, 2)});
    const auto y = normals(12, 3);
    for (int j = 0; j < 3; ++j) {
        const auto fit = leastSquares(columns, y, {.weightsOf = j});
        const double sum = std::inner_product(y.begin(), y.end(), fit.weights.begin(), 0.0);
        EXPECT_NEAR(sum, fit.coefficients[static_cast<std::size_t>(j)], 1e-13);
        const double squares =
            std::inner_product(fit.weights.begin(), fit.weights.end(), fit.weights.begin(), 0.0);
        EXPECT_NEAR(squares, fit.cov(static_cast<std::size_t>(j), static_cast<std::size_t>(j)),
                    1e-13);
    }
}

TEST(LeastSquares, ResidualsAreOrthogonalToTheColumnsAndLeveragesSumToTheRank)
{
    const auto columns =
        columnsOf({std::vector<double>(30, 1.0), normals(30, 4), normals(30, 5), normals(30, 6)});
    const auto fit = leastSquares(columns, normals(30, 7));
    for (std::size_t j = 0; j < columns.count(); ++j) {
        const auto column = columns.piece(j).values;
        EXPECT_NEAR(std::inner_product(column.begin(), column.end(), fit.residuals.begin(), 0.0),
                    0.0, 1e-12);
    }
    EXPECT_NEAR(std::accumulate(fit.leverage.begin(), fit.leverage.end(), 0.0), 4.0, 1e-12);
}

/// Days of an intercept and a slope each, beside columns that cross them; as pieces, which are
/// decomposed day by day, or written out in full, which are decomposed as they stand.
Columns manyDays(std::size_t days, std::size_t each, bool inFull, bool oneDependsOnOthers,
                 bool oneDayIsShort)
{
    const std::size_t n = days * each;
    Columns columns(n);
    const auto across = [&](const std::vector<double>& values) {
        std::ranges::copy(values, columns.add().begin());
    };
    std::vector<double> device(n);
    for (std::size_t i = 0; i < n; ++i)
        device[i] = i % each < each / 2 ? 0.0 : 1.0;
    across(device);
    for (std::size_t day = 0; day < days; ++day) {
        const bool isShort = oneDayIsShort && day == 3;
        const auto fill = [&](const auto& value) {
            const auto column = inFull ? columns.add() : columns.add(day * each, each);
            for (std::size_t i = 0; i < each; ++i)
                column[(inFull ? day * each : 0) + i] = value(i);
        };
        fill([&](std::size_t) { return 1.0; });
        fill([&](std::size_t i) {
            return isShort ? 0.0 : 0.2 * static_cast<double>(i) + 0.01 * static_cast<double>(day);
        });
    }
    across(normals(n, 11));
    if (oneDependsOnOthers) { // on the effect and on two days' own columns
        std::vector<double> sum(device);
        for (std::size_t i = 0; i < each; ++i) {
            sum[i] += 2.0;
            sum[each + i] += 0.2 * static_cast<double>(i) + 0.01;
        }
        across(sum);
    }
    return columns;
}

TEST(LeastSquares, DaysDecomposedApartGiveWhatTheWholeGives)
{
    for (const bool dependent : {false, true})
        for (const bool isShort : {false, true}) {
            const auto parts = manyDays(20, 6, false, dependent, isShort);
            const auto whole = manyDays(20, 6, true, dependent, isShort);
            const auto y = normals(120, 12);
            const auto a = leastSquares(parts, y, {.weightsOf = 0});
            const auto b = leastSquares(whole, y, {.weightsOf = 0});
            EXPECT_EQ(a.rank, 42 - (isShort ? 1 : 0));
            EXPECT_EQ(a.rank, b.rank);
            EXPECT_EQ(a.df, b.df);
            EXPECT_EQ(a.estimable, b.estimable);
            EXPECT_EQ(a.estimable[0], !dependent);
            EXPECT_NEAR(a.rss, b.rss, 1e-12 * b.rss);
            for (std::size_t i = 0; i < y.size(); ++i) {
                EXPECT_NEAR(a.residuals[i], b.residuals[i], 1e-13);
                EXPECT_NEAR(a.leverage[i], b.leverage[i], 1e-13);
            }
            for (std::size_t j = 0; j < parts.count(); ++j) {
                if (!a.estimable[j])
                    continue;
                EXPECT_NEAR(a.coefficients[j], b.coefficients[j], 1e-12) << j;
                for (std::size_t k = 0; k < parts.count(); ++k)
                    if (a.estimable[k]) {
                        EXPECT_NEAR(a.cov(j, k), b.cov(j, k), 1e-12) << j << " " << k;
                    }
            }
            for (std::size_t i = 0; !dependent && i < y.size(); ++i)
                EXPECT_NEAR(a.weights[i], b.weights[i], 1e-13);
        }
}

// An effect that only the days tell apart is none that the runs can show.
TEST(LeastSquares, AnEffectThatIsADaysOwnIsNotEstimableInParts)
{
    Columns columns(120);
    const auto device = columns.add();
    for (std::size_t i = 0; i < 120; ++i)
        device[i] = i / 6 % 2 == 0 ? 0.0 : 1.0;
    for (std::size_t day = 0; day < 30; ++day)
        std::ranges::fill(columns.add(day * 4, 4), 1.0);
    EXPECT_TRUE(leastSquares(columns, normals(120, 3)).estimable[0]);
    Columns whole(120);
    const auto other = whole.add();
    for (std::size_t i = 0; i < 120; ++i)
        other[i] = i / 4 % 2 == 0 ? 0.0 : 1.0;
    for (std::size_t day = 0; day < 30; ++day)
        std::ranges::fill(whole.add(day * 4, 4), 1.0);
    const auto fit = leastSquares(whole, normals(120, 3));
    EXPECT_FALSE(fit.estimable[0]);
    EXPECT_EQ(fit.rank, 30);
}

TEST(LeastSquares, ALargeMeanCostsNoDigitsOfTheResiduals)
{
    const auto columns = columnsOf({std::vector<double>(20, 1.0), normals(20, 8)});
    auto y = normals(20, 9);
    for (double& value : y)
        value = std::round(value * 1048576.0) / 1048576.0; // so that the shift is exact
    const double rss = leastSquares(columns, y).rss;
    for (double& value : y)
        value += 4294967296.0;
    EXPECT_NEAR(leastSquares(columns, y).rss, rss, 1e-5 * rss); // y itself is only known to 5e-7
}

TEST(LeastSquares, EmptyAndTooShortProblemsHaveAnAnswer)
{
    EXPECT_EQ(leastSquares(columnsOf({}), {}).rank, 0);
    const auto onlyRows = leastSquares(Columns(3), std::vector<double>{1, 2, 2});
    EXPECT_EQ(onlyRows.df, 3);
    EXPECT_EQ(onlyRows.rss, 9.0);
    const auto wide = leastSquares(columnsOf({{1}, {2}, {3}}), std::vector<double>{5});
    EXPECT_EQ(wide.rank, 1);
    EXPECT_EQ(wide.df, 0);
    EXPECT_EQ(wide.s(), 0.0);
    EXPECT_EQ(wide.estimable, (std::vector<bool>{false, false, false}));
    const auto zero = leastSquares(columnsOf({{0, 0}, {1, 1}}), std::vector<double>{2, 4});
    EXPECT_EQ(zero.rank, 1);
    EXPECT_FALSE(zero.estimable[0]);
    EXPECT_NEAR(zero.coefficients[1], 3.0, 1e-15);
}
