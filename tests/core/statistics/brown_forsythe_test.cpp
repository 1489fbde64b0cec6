// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/brown_forsythe.h"

#include <gtest/gtest.h>

#include <vector>

using namespace bothways::core;

TEST(BrownForsythe, AgreesWithAnAnalysisOfVarianceOfTheDeviations)
{
    // anova(lm(abs(x - median of its group) ~ group)) of R 4.2.2. Insect counts under sprays A and
    // C (R's InsectSprays, after Beall 1942), and Student's sleep data.
    const std::vector<double> sprayA = {10, 7, 20, 14, 14, 12, 10, 23, 17, 20, 14, 13};
    const std::vector<double> sprayC = {0, 1, 7, 2, 3, 1, 2, 1, 3, 0, 1, 4};
    const auto sprays = brownForsythe(sprayA, sprayC);
    ASSERT_TRUE(sprays);
    EXPECT_NEAR(sprays->f, 4.62340282447881, 1e-13);
    EXPECT_NEAR(sprays->p, 0.0427893001420191, 1e-14);

    const std::vector<double> drug1 = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
    const std::vector<double> drug2 = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};
    const auto sleep = brownForsythe(drug1, drug2);
    ASSERT_TRUE(sleep);
    EXPECT_NEAR(sleep->f, 0.248204960835509, 1e-14);
    EXPECT_NEAR(sleep->p, 0.624374285414887, 1e-13);
    const auto turned = brownForsythe(drug2, drug1);
    EXPECT_NEAR(turned->f, sleep->f, 1e-15);
}

TEST(BrownForsythe, NeedsThreeOfEachAndSomeSpread)
{
    const std::vector<double> two = {1, 2}, three = {1, 2, 4}, flat = {5, 5, 5};
    EXPECT_FALSE(brownForsythe(two, three));
    EXPECT_FALSE(brownForsythe(three, two));
    EXPECT_FALSE(brownForsythe(flat, flat));
    EXPECT_TRUE(brownForsythe(flat, three));
}
