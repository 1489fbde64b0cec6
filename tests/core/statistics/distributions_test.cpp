// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/distributions.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

using namespace bothways::core;

namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

/// A value given to 12 significant digits is right to half a unit of the last.
void expectTo12Digits(double actual, double expected)
{
    EXPECT_NEAR(actual, expected, 5e-12 * std::abs(expected));
}

} // namespace

// Computed with R 4.2.2, qt(p, df), 12 significant digits. The columns for df 1 and 2 are exact:
// tan(0.475 pi) and (2p - 1) sqrt(2/(4p(1 - p))).
TEST(Distributions, TQuantilesAgreeWithR)
{
    expectTo12Digits(tQuantile(0.975, 1), 12.7062047362);
    expectTo12Digits(tQuantile(0.995, 2), 9.92484320092);
    expectTo12Digits(tQuantile(0.975, 3), 3.18244630528);
    expectTo12Digits(tQuantile(0.95, 5), 2.01504837333);
    expectTo12Digits(tQuantile(0.975, 9), 2.2621571628);
    expectTo12Digits(tQuantile(0.9995, 14), 4.14045411274);
    expectTo12Digits(tQuantile(0.90, 30), 1.31041502539);
    expectTo12Digits(tQuantile(0.99, 200), 2.34513708226);
    expectTo12Digits(tQuantile(0.975, 2.5), 3.574654842);
    expectTo12Digits(tQuantile(0.995, 17.776473516178), 2.88265082332);
    EXPECT_NEAR(tQuantile(0.975, 1), std::tan(0.475 * M_PI), 1e-12 * 12.7);
}

// Computed with R 4.2.2, pt(t, df), 13 significant digits.
TEST(Distributions, TProbabilitiesAgreeWithR)
{
    EXPECT_NEAR(tCdf(1, 1), 0.75, 1e-15);
    EXPECT_NEAR(tCdf(2, 4.0621), 0.9424808644316, 1e-13);
    EXPECT_NEAR(tCdf(-3, 7), 0.009971063065996, 1e-14);
    EXPECT_NEAR(tCdf(0.5, 200), 0.6911876238418, 1e-13);
}

TEST(Distributions, TwoSidedPKeepsItsDigitsInTheFarTail)
{
    // df = 2: P(|T| > t) = 1 - t/sqrt(2 + t^2) = 2/(sqrt(2 + t^2) (sqrt(2 + t^2) + t)), exactly.
    const double t = 1e6, root = std::sqrt(2.0 + t * t);
    EXPECT_NEAR(tTwoSided(t, 2), 2.0 / (root * (root + t)), 1e-12 * 1e-12);
    EXPECT_EQ(tTwoSided(0.0, 5), 1.0);
    EXPECT_EQ(tTwoSided(-3.0, 5), tTwoSided(3.0, 5));
}

// Computed with mpmath 1.3.0 at 30 digits: integral over s of Phi(t s - ncp) times the density of
// s = sqrt(chi2/df); 14 digits. R's pt(t, df, ncp) agrees with every line to 1e-12.
TEST(Distributions, NonCentralTAgreesWith30DigitArithmetic)
{
    const struct {
        double t, df, ncp, p;
    } kValues[] = {
        {0, 1, 0.5, 0.30853753872599},
        {1, 1, 1, 0.42202003039263},
        {3, 2, 1, 0.83355942633713},
        {2, 3, 2, 0.4430757822176},
        {5, 4, 3, 0.80061754807259},
        {2.776445105198, 4, 1.5, 0.78737876661476},
        {2, 5, 0, 0.94903026058507},
        {8, 5, 5, 0.83565790207544},
        {2.262157162740, 9, 2, 0.56875399289293},
        {1.5, 9, 2, 0.30432331252026},
        {4, 9, 4.0621, 0.44485705699579},
        {10, 10, 10, 0.4478931309094},
        {2.144786687917, 14, 2.8, 0.259719039671},
        {1.761310135775, 14, 2.5, 0.23221284368444},
        {3, 20, 3, 0.48571967748146},
        {-1, 20, 1, 0.024777155056999},
        {2.0452296421, 29, 3, 0.17376994745432},
        {6, 30, 6, 0.48228409971422},
        {12, 30, 10, 0.8494793222051},
        {1.98, 120, 2.8, 0.20682364846049},
        {10, 200, 10, 0.49524420382637},
        {1.971896224, 200, 3.3, 0.092726825901188},
        {0, 200, 2, 0.022750131948179},
        {-2, 6, 0.7, 0.010497672519215},
    };
    for (const auto& v : kValues)
        EXPECT_NEAR(nonCentralTCdf(v.t, v.df, v.ncp), v.p, 2e-13)
            << "t " << v.t << ", df " << v.df << ", ncp " << v.ncp;
}

// Computed with R 4.2.2, integrate() over the density of sqrt(chi2/df), rel.tol 1e-13. (R's own
// pt(50, 4, 40) is 0.017 off: its algorithm is not for such non-centralities.)
TEST(Distributions, NonCentralTStaysRightFarOut)
{
    EXPECT_NEAR(nonCentralTCdf(100, 2, 127), 0.19935313592981, 1e-12);
    EXPECT_NEAR(nonCentralTCdf(50, 4, 40), 0.63379982874972, 1e-12);
    EXPECT_NEAR(nonCentralTCdf(40, 30, 34.9), 0.81730894894327, 1e-12);
    EXPECT_NEAR(nonCentralTCdf(-50, 4, -40), 1.0 - 0.63379982874972, 1e-12);
}

TEST(Distributions, NonCentralTIsContinuousWhereTheMethodChanges)
{
    for (const double df : {2.0, 5.0, 30.0, 200.0})
        for (const double t : {25.0, 34.0, 40.0, 60.0})
            EXPECT_NEAR(nonCentralTCdf(t, df, 35.0), nonCentralTCdf(t, df, 35.0 + 1e-9), 1e-9)
                << "t " << t << ", df " << df;
}

// Computed with R 4.2.2: qnorm, pnorm, qchisq, pf; 12 digits.
TEST(Distributions, NormalChiSquareAndFAgreeWithR)
{
    expectTo12Digits(normalQuantile(0.975), 1.95996398454);
    expectTo12Digits(normalCdf(1), 0.841344746069);
    expectTo12Digits(chiSquareQuantile(0.025, 9), 2.70038949998);
    expectTo12Digits(chiSquareQuantile(0.975, 9), 19.0227677986);
    expectTo12Digits(fUpper(2.5, 4, 20), 1.0 - 0.924853370365);
    EXPECT_NEAR(chiSquareUpper(chiSquareQuantile(0.3, 7), 7), 0.7, 1e-14);
}

TEST(Distributions, ExtremeArgumentsGiveLimits)
{
    EXPECT_EQ(tCdf(kInfinity, 3), 1.0);
    EXPECT_EQ(tCdf(-kInfinity, 3), 0.0);
    EXPECT_EQ(tQuantile(1.0, 3), kInfinity);
    EXPECT_EQ(tQuantile(0.0, 3), -kInfinity);
    EXPECT_EQ(tTwoSided(kInfinity, 3), 0.0);
    EXPECT_NEAR(tCdf(1.0, 1e300), normalCdf(1.0), 1e-15);
    EXPECT_EQ(fUpper(kInfinity, 1, 1), 0.0);
    EXPECT_EQ(fUpper(-1, 1, 1), 1.0);
    EXPECT_EQ(chiSquareUpper(kInfinity, 1), 0.0);
    EXPECT_EQ(nonCentralTCdf(1.0, 3, kInfinity), 0.0);
    EXPECT_EQ(nonCentralTCdf(1.0, 3, 1e300), 0.0);
    EXPECT_EQ(nonCentralTCdf(1.0, 3, -1e300), 1.0);
    EXPECT_EQ(nonCentralTCdf(-5.0, 3, 50.0), normalCdf(-50.0));
}

TEST(Distributions, ArgumentsOutOfRangeGiveNaNAndNeverThrow)
{
    EXPECT_TRUE(std::isnan(tCdf(1.0, 0.0)));
    EXPECT_TRUE(std::isnan(tCdf(kNaN, 3.0)));
    EXPECT_TRUE(std::isnan(tQuantile(1.5, 3.0)));
    EXPECT_TRUE(std::isnan(tQuantile(kNaN, 3.0)));
    EXPECT_TRUE(std::isnan(normalQuantile(-0.1)));
    EXPECT_TRUE(std::isnan(nonCentralTCdf(1.0, -1.0, 0.0)));
    EXPECT_TRUE(std::isnan(nonCentralTCdf(1.0, 3.0, kNaN)));
    EXPECT_TRUE(std::isnan(fUpper(1.0, 0.0, 3.0)));
    EXPECT_TRUE(std::isnan(chiSquareQuantile(0.5, -2.0)));
}
