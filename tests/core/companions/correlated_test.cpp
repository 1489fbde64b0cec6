// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/companions/correlated.h"

#include "core/effect/verdict.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

using namespace bothways::core;

namespace {

// The pairs of the worked example "morning": log consumption, hours, three in each block of A/B/A.
const std::vector<double> kLog = {2.43273577745909, 2.42303124606991, 2.43449016387398,
                                  2.4322966995157,  2.43886271128659, 2.43449016387398,
                                  2.42745407503992, 2.4270126713691,  2.41814343362832};
const std::vector<double> kHours = {0.0848611111111111, 0.320347222222222, 0.555625,
                                    1.14326388888889,   1.50125,           1.84965277777778,
                                    2.44333333333333,   2.67361111111111,  2.91208333333333};

/// Intercept and slope for each day, then the effect.
Columns columnsOf(const std::vector<int>& device, const std::vector<std::size_t>& begins)
{
    Columns x(kHours.size());
    for (std::size_t d = 0; d < begins.size(); ++d) {
        const std::size_t first = begins[d];
        const std::size_t end = d + 1 < begins.size() ? begins[d + 1] : kHours.size();
        double mean = 0.0;
        for (std::size_t i = first; i < end; ++i)
            mean += kHours[i] / static_cast<double>(end - first);
        const auto intercept = x.add();
        for (std::size_t i = first; i < end; ++i)
            intercept[i] = 1.0;
        const auto slope = x.add();
        for (std::size_t i = first; i < end; ++i)
            slope[i] = kHours[i] - mean;
    }
    const auto effect = x.add();
    for (std::size_t i = 0; i < device.size(); ++i)
        effect[i] = device[i];
    return x;
}

const std::vector<int> kMorning = {0, 0, 0, 1, 1, 1, 0, 0, 0};
const std::vector<std::size_t> kOneDay = {0};

struct Known {
    double effect, low, high, rho, p;
};

void expectKnown(const std::optional<CorrelatedInterval>& actual, const Known& known)
{
    ASSERT_TRUE(actual);
    EXPECT_NEAR(actual->effect_log, known.effect, 1e-11);
    EXPECT_NEAR(actual->low_log, known.low, 1e-11);
    EXPECT_NEAR(actual->high_log, known.high, 1e-11);
    EXPECT_NEAR(*actual->rho, known.rho, 1e-9);
    EXPECT_NEAR(actual->p, known.p, 1e-9);
}

} // namespace

// Independent calculation in R 4.2.2: generalised least squares by explicit inverses of the
// correlation matrix, the average over rho by integrate() to 1e-12, quantiles by uniroot().
TEST(Correlated, AgreesWithTheIntegralCalculatedElsewhere)
{
    const Columns x = columnsOf(kMorning, kOneDay);
    expectKnown(
        correlatedInterval({x, kLog, kOneDay}, {}),
        {0.005345812803654, -0.00774582778112, 0.0168827749032, 0.415231046012, 0.342853873402});
}

TEST(Correlated, ForgetsOverNight)
{
    const std::vector<std::size_t> begins = {0, 5};
    const Columns x = columnsOf({0, 0, 1, 1, 0, 0, 1, 1, 0}, begins);
    expectKnown(
        correlatedInterval({x, kLog, begins}, {}),
        {0.002608177266316, -0.00815405168682, 0.0135548863212, 0.445340281514, 0.542328359017});
}

TEST(Correlated, ThePriorIsAnArgument)
{
    const Columns x = columnsOf(kMorning, kOneDay);
    expectKnown(
        correlatedInterval({x, kLog, kOneDay}, {}, {.atZero = 0.0}),
        {0.004756938360826, -0.00844976313208, 0.016914363639, 0.50494563596, 0.403175756128});
}

TEST(Correlated, IsLeastSquaresWhenNoCorrelationIsBelieved)
{
    const Columns x = columnsOf(kMorning, kOneDay);
    const LeastSquaresFit fit = leastSquares(x, kLog);
    const Interval expected =
        intervalOf(fit.coefficients[2], fit.s() * std::sqrt(fit.cov(2, 2)), fit.df, {});
    const auto actual = correlatedInterval({x, kLog, kOneDay}, {}, {.atZero = 1.0});
    ASSERT_TRUE(actual);
    EXPECT_NEAR(actual->effect_log, expected.effect_log, 1e-14);
    EXPECT_NEAR(actual->low_log, expected.low_log, 1e-13);
    EXPECT_NEAR(actual->high_log, expected.high_log, 1e-13);
    EXPECT_NEAR(actual->p, expected.p, 1e-12);
    EXPECT_EQ(actual->cls, expected.cls);
    EXPECT_EQ(*actual->rho, 0.0);
}

TEST(Correlated, TheLengthOfTheSeriesDoesNotChangeTheDistributionUsed)
{
    // 200 degrees of freedom are the last of the finite series, 201 the first of the other form: a
    // pair more must not make a step.
    const auto halfWidth = [](std::size_t n) {
        Columns x(n);
        std::vector<double> y(n);
        const auto one = x.add();
        for (std::size_t i = 0; i < n; ++i) {
            one[i] = 1.0;
            y[i] = std::sin(12.9898 * static_cast<double>(i + 1) * static_cast<double>(i + 1));
        }
        const auto effect = x.add();
        for (std::size_t i = 0; i < n; ++i)
            effect[i] = i / 20 % 2 == 0 ? 0.0 : 1.0;
        const auto interval = correlatedInterval({x, y, kOneDay}, {}, {.atZero = 1.0});
        const LeastSquaresFit fit = leastSquares(x, y);
        const Interval plain =
            intervalOf(fit.coefficients[1], fit.s() * std::sqrt(fit.cov(1, 1)), fit.df, {});
        return (interval->high_log - interval->low_log) / (plain.high_log - plain.low_log);
    };
    EXPECT_NEAR(halfWidth(202), 1.0, 1e-11);
    EXPECT_NEAR(halfWidth(203), 1.0, 1e-11);
}

TEST(Correlated, SaysNothingWhereNothingIsLeft)
{
    Columns x(3);
    for (int j = 0; j < 3; ++j) {
        const auto column = x.add();
        for (std::size_t i = 0; i < 3; ++i)
            column[i] = std::pow(static_cast<double>(i), j);
    }
    const std::vector<double> y = {1.0, 2.0, 5.0};
    EXPECT_FALSE(correlatedInterval({x, y, kOneDay}, {})); // df = 0
    const Columns twice = [] {
        Columns columns(9);
        for (int j = 0; j < 2; ++j)
            for (double& value : columns.add())
                value = 1.0;
        return columns;
    }();
    EXPECT_FALSE(correlatedInterval({twice, kLog, kOneDay}, {}));
    EXPECT_FALSE(correlatedInterval(
        {columnsOf(kMorning, kOneDay), std::vector<double>(9, 0.0), kOneDay}, {}));
}
