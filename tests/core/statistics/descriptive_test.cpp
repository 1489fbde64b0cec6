// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/descriptive.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

using namespace bothways::core;

TEST(Descriptive, VarianceHasTheDivisorNMinusOne)
{
    const std::vector<double> values{2.0, 4.0, 4.0, 4.0, 5.0, 5.0, 7.0, 9.0}; // sum of squares 32
    const Moments m = moments(values);
    EXPECT_EQ(m.n, 8U);
    EXPECT_DOUBLE_EQ(m.mean, 5.0);
    EXPECT_DOUBLE_EQ(m.variance, 32.0 / 7.0);
    EXPECT_DOUBLE_EQ(m.sd, std::sqrt(32.0 / 7.0));
}

// The pattern of NIST StRD "NumAcc4": 10000000.2, then 10000000.1 and .3 in turn; certified mean
// 10000000.2 and standard deviation 0.1. A mean of squares would leave no digit of it. The numbers
// themselves are only given to 2e-9, so eight digits of the deviation are all there are.
TEST(Descriptive, SpreadSurvivesALargeMean)
{
    std::vector<double> values{10000000.2};
    for (int k = 0; k < 500; ++k)
        values.insert(values.end(), {10000000.1, 10000000.3});
    EXPECT_NEAR(moments(values).mean, 10000000.2, 1e-8);
    EXPECT_NEAR(moments(values).sd, 0.1, 1e-9);
}

TEST(Descriptive, NothingAndOneAreNoSpread)
{
    EXPECT_EQ(moments({}).n, 0U);
    EXPECT_EQ(moments({}).sd, 0.0);
    const std::vector<double> one{3.5};
    EXPECT_EQ(moments(one).mean, 3.5);
    EXPECT_EQ(moments(one).variance, 0.0);
}

TEST(Descriptive, MedianIsTheMiddleOrTheMeanOfTheMiddleTwo)
{
    EXPECT_EQ(median(std::vector<double>{5.0, 1.0, 3.0}), 3.0);
    EXPECT_EQ(median(std::vector<double>{4.0, 1.0, 3.0, 10.0}), 3.5);
    EXPECT_EQ(median(std::vector<double>{2.0}), 2.0);
    EXPECT_TRUE(std::isnan(median({})));
}

TEST(Descriptive, MedianOfHugeNumbersDoesNotOverflow)
{
    EXPECT_EQ(median(std::vector<double>{1.5e308, 1.7e308}), 1.6e308);
}

TEST(Descriptive, MedianAbsoluteDeviationIsNotScaled)
{
    EXPECT_EQ(medianAbsoluteDeviation(std::vector<double>{1.0, 1.0, 2.0, 2.0, 4.0, 6.0, 9.0}), 1.0);
}
