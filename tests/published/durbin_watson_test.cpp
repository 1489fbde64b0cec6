// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/durbin_watson.h"

#include "published_data.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

using namespace bothways;
using core::durbinWatson;
using core::durbinWatsonTails;

namespace {

/// Intercept, then the given columns.
std::vector<double> designOf(std::size_t n, const std::vector<std::vector<double>>& columns)
{
    std::vector<double> design(n, 1.0);
    for (const auto& column : columns)
        design.insert(design.end(), column.begin(), column.end());
    return design;
}

std::vector<double> counted(std::size_t n)
{
    std::vector<double> numbers(n);
    for (std::size_t i = 0; i < n; ++i)
        numbers[i] = static_cast<double>(i + 1);
    return numbers;
}

/// Residuals of a straight line.
std::vector<double> residuals(const std::vector<double>& x, const std::vector<double>& y)
{
    const double n = static_cast<double>(x.size());
    double meanX = 0.0, meanY = 0.0, sxx = 0.0, sxy = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        meanX += x[i] / n;
        meanY += y[i] / n;
    }
    for (std::size_t i = 0; i < x.size(); ++i) {
        sxx += (x[i] - meanX) * (x[i] - meanX);
        sxy += (x[i] - meanX) * (y[i] - meanY);
    }
    std::vector<double> result;
    for (std::size_t i = 0; i < x.size(); ++i)
        result.push_back(y[i] - meanY - sxy / sxx * (x[i] - meanX));
    return result;
}

/// The j-th eigenvector of the matrix in Durbin and Watson's statistic, j = 1 .. n - 1 in order of
/// eigenvalue 2 (1 - cos(pi j/n)).
std::vector<double> eigenvector(std::size_t n, std::size_t j)
{
    std::vector<double> vector(n);
    for (std::size_t i = 0; i < n; ++i)
        vector[i] = std::cos(std::numbers::pi * static_cast<double>(j) *
                             (static_cast<double>(i) + 0.5) / static_cast<double>(n));
    return vector;
}

struct KnownLine {
    const char* file;
    const char* x; ///< null: numbers 1 .. n
    const char* y;
    double d, below;
};

// d from R's lm(); P(D <= d) by two other programs: dwtest() of R's lmtest 0.9-40 (algorithm of
// Farebrother 1980, 100 iterations) and an Imhof integral over eigenvalues by R's integrate();
// where both have the digits they agree to 1e-12.
constexpr KnownLine kLinesByR[] = {
    {"cars.csv", "speed", "dist", 1.6762253234351, 0.0952170898021167},
    {"lh.csv", nullptr, "lh", 0.935233438905906, 1.39079032198119e-05},
    {"nile.csv", nullptr, "flow", 1.24722812998881, 2.85032382960626e-05},
    {"women.csv", "height", "weight", 0.31538037486219, 1.08865715553463e-07},
    {"mtcars_mpg.csv", "wt", "mpg", 1.25172673461744, 0.0102001453587733},
};

} // namespace

TEST(DurbinWatson, AgreesWithTwoOtherProgramsOnNamedData)
{
    for (const KnownLine& known : kLinesByR) {
        const auto y = published::readColumn(known.file, known.y);
        const auto x = known.x ? published::readColumn(known.file, known.x) : counted(y.size());
        const auto result = durbinWatson(residuals(x, y), designOf(y.size(), {x}));
        ASSERT_TRUE(result) << known.file;
        EXPECT_NEAR(result->d, known.d, 1e-12) << known.file;
        EXPECT_NEAR(result->p, 2.0 * known.below, 1e-12) << known.file;
        const auto tails = durbinWatsonTails(known.d, designOf(y.size(), {x}), y.size());
        EXPECT_NEAR(tails.below, known.below, 1e-12) << known.file;
        EXPECT_NEAR(tails.above, 1.0 - known.below, 1e-12) << known.file;
    }
}

TEST(DurbinWatson, KeepsTheDigitsOfAVerySmallProbability)
{
    // Lake Huron about its trend: dwtest() of lmtest 0.9-40 says 1.01937621376e-22.
    const auto level = published::readColumn("lakehuron.csv", "level_ft");
    const auto design = designOf(level.size(), {counted(level.size())});
    const auto tails = durbinWatsonTails(0.439493229265354, design, level.size());
    EXPECT_NEAR(tails.below, 1.01937621376e-22, 1e-9 * 1.02e-22);
}

TEST(DurbinWatson, LiesWithinTheTablesOfBounds)
{
    // Durbin and Watson, Biometrika 38 (1951) 159-178, 5 per cent points (from memory): the lower
    // bound belongs to the regressors that take the largest eigenvalues away, the upper one to
    // those that take the smallest. The tables have two decimals, so P at table -+ 0.01 must
    // enclose 0.05.
    struct Bounds {
        std::size_t n, regressors;
        double lower, upper;
    };
    constexpr Bounds kTable[] = {{15, 1, 1.08, 1.36},  {15, 2, 0.95, 1.54}, {15, 5, 0.56, 2.21},
                                 {20, 1, 1.20, 1.41},  {20, 3, 1.00, 1.68}, {30, 2, 1.28, 1.57},
                                 {30, 5, 1.07, 1.83},  {50, 1, 1.50, 1.59}, {50, 4, 1.38, 1.72},
                                 {100, 1, 1.65, 1.69}, {100, 5, 1.57, 1.78}};
    for (const Bounds& row : kTable) {
        std::vector<std::vector<double>> smooth, rough;
        for (std::size_t j = 1; j <= row.regressors; ++j) {
            smooth.push_back(eigenvector(row.n, j));
            rough.push_back(eigenvector(row.n, row.n - j));
        }
        const auto p = [&](double d, const std::vector<std::vector<double>>& columns) {
            return durbinWatsonTails(d, designOf(row.n, columns), row.n).below;
        };
        EXPECT_LT(p(row.lower - 0.01, rough), 0.05) << row.n << ", " << row.regressors;
        EXPECT_GT(p(row.lower + 0.01, rough), 0.05) << row.n << ", " << row.regressors;
        EXPECT_LT(p(row.upper - 0.01, smooth), 0.05) << row.n << ", " << row.regressors;
        EXPECT_GT(p(row.upper + 0.01, smooth), 0.05) << row.n << ", " << row.regressors;
    }
}

TEST(DurbinWatson, TurnsOverWhenEverySecondResidualChangesSign)
{
    // A about the intercept alone has the eigenvalues 2 - 2 cos(pi j/n), j = 1 .. n - 1, which lie
    // symmetrically about 2: P(D <= d) = P(D >= 4 - d), and P(D <= 2) = 1/2.
    for (const std::size_t n : {3u, 4u, 9u, 40u}) {
        const auto design = designOf(n, {});
        EXPECT_NEAR(durbinWatsonTails(2.0, design, n).below, 0.5, 1e-10) << n;
        for (const double d : {0.7, 1.1, 1.9})
            EXPECT_NEAR(durbinWatsonTails(d, design, n).below,
                        durbinWatsonTails(4.0 - d, design, n).above, 1e-11)
                << n << ", " << d;
    }
}

TEST(DurbinWatson, IsExactForThreeResidualsAboutTheirMean)
{
    // n = 3: eigenvalues 1 and 3, D = 2 + cos(2 phi) for a uniform angle, so
    // P(D <= d) = 1 - acos(d - 2)/pi.
    const auto design = designOf(3, {});
    for (const double d : {1.01, 1.3, 2.0, 2.5, 2.99})
        EXPECT_NEAR(durbinWatsonTails(d, design, 3).below,
                    1.0 - std::acos(d - 2.0) / std::numbers::pi, 1e-11)
            << d;
    EXPECT_NEAR(durbinWatsonTails(0.9, design, 3).below, 0.0, 1e-15);
    EXPECT_NEAR(durbinWatsonTails(3.1, design, 3).above, 0.0, 1e-15);
}

TEST(DurbinWatson, AColumnSaidTwiceChangesNothing)
{
    const auto once = designOf(12, {counted(12)});
    const auto twice = designOf(12, {counted(12), counted(12)});
    EXPECT_NEAR(durbinWatsonTails(1.4, once, 12).below, durbinWatsonTails(1.4, twice, 12).below,
                1e-13);
}

TEST(DurbinWatson, ManyColumnsGiveTheSameByEigenvalues)
{
    // Several days with an intercept each. Of 40 rows two days go by elimination, eight by
    // eigenvalues.
    const auto days = [](std::size_t n, std::size_t count) {
        std::vector<std::vector<double>> columns;
        for (std::size_t day = 1; day < count; ++day) {
            std::vector<double> column(n, 0.0);
            for (std::size_t i = day * n / count; i < n; ++i)
                column[i] = 1.0;
            columns.push_back(column);
        }
        return columns;
    };
    // Eigenvalues and integrate() in R 4.2.2, as above.
    EXPECT_NEAR(durbinWatsonTails(1.4, designOf(40, days(40, 2)), 40).below, 0.0168252533197066,
                1e-11);
    EXPECT_NEAR(durbinWatsonTails(1.4, designOf(40, days(40, 8)), 40).below, 0.000530024837546272,
                1e-11);
    EXPECT_NEAR(durbinWatsonTails(3.2, designOf(40, days(40, 8)), 40).above, 0.000622881535750963,
                1e-11);
}

TEST(DurbinWatson, HasNothingToSayOfResidualsThatAreAllZero)
{
    EXPECT_FALSE(durbinWatson(std::vector<double>(8, 0.0), designOf(8, {counted(8)})));
    EXPECT_FALSE(durbinWatson(std::vector{1.0, -1.0}, designOf(2, {})));
    EXPECT_FALSE(durbinWatson(std::vector{0.1, -0.2, 0.1}, designOf(3, {counted(3)})));
}
