// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/change_point.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>
#include <vector>

using namespace bothways::core;

namespace {

// Annual flow of the Nile at Aswan, 10^8 m^3, 1871-1970: R 4.2.2 datasets::Nile, which takes it
// from Durbin and Koopman 2001, Time Series Analysis by State Space Methods.
constexpr double kNile[] = {
    1120, 1160, 963, 1210, 1160, 1160, 813,  1230, 1370, 1140, 995,  935,  1110, 994,  1020,
    960,  1180, 799, 958,  1140, 1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774,  840,
    874,  694,  940, 833,  701,  916,  692,  1020, 1050, 969,  831,  726,  456,  824,  702,
    1120, 1100, 832, 764,  821,  768,  845,  864,  862,  698,  845,  744,  796,  1040, 759,
    781,  865,  845, 944,  984,  897,  822,  1010, 771,  676,  649,  846,  812,  742,  801,
    1040, 860,  874, 848,  890,  744,  749,  838,  1050, 918,  986,  797,  923,  975,  815,
    1020, 906,  901, 1170, 912,  746,  919,  718,  714,  740,
};

/// U_t straight from its definition.
long long bruteForceU(const std::vector<double>& x, std::size_t t)
{
    long long u = 0;
    for (std::size_t i = 0; i < t; ++i)
        for (std::size_t j = t; j < x.size(); ++j)
            u += (x[i] > x[j]) - (x[i] < x[j]);
    return u;
}

} // namespace

// Base R, from the formulas of Pettitt 1979: K = 1617 at t = 28 (last year before the change 1898),
// p = 3.59102217693629e-07. The year is also that of Cobb 1978.
TEST(ChangePoint, FindsTheDamAtAswan)
{
    const auto change = pettittChangePoint(kNile);
    ASSERT_TRUE(change);
    EXPECT_EQ(change->after, 28u);
    EXPECT_EQ(change->statistic, 1617.0) << "before 1899 the flow was larger";
    EXPECT_NEAR(change->p, 3.59102217693629e-07, 1e-20);
}

TEST(ChangePoint, EqualsItsDefinitionWithTies)
{
    std::mt19937 random(20260509);
    for (int repeat = 0; repeat < 50; ++repeat) {
        std::vector<double> x(2 + random() % 40);
        for (double& value : x)
            value = static_cast<double>(random() % 7);
        std::size_t best = 1;
        for (std::size_t t = 1; t < x.size(); ++t)
            if (std::abs(bruteForceU(x, t)) > std::abs(bruteForceU(x, best)))
                best = t;
        const auto change = pettittChangePoint(x);
        ASSERT_TRUE(change);
        EXPECT_EQ(change->after, best) << "repeat " << repeat;
        EXPECT_EQ(change->statistic, static_cast<double>(bruteForceU(x, best)));
    }
}

TEST(ChangePoint, SaysNothingOfAConstantSeries)
{
    const auto change = pettittChangePoint(std::vector<double>(50, 3.0));
    ASSERT_TRUE(change);
    EXPECT_EQ(change->p, 1.0);
    EXPECT_FALSE(pettittChangePoint(std::vector<double>(1, 3.0)));
    EXPECT_FALSE(pettittChangePoint({}));
}
