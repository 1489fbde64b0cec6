// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/binomial.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace bothways::core;

TEST(ClopperPearson, AgreesWithBinomTestOfR)
{
    // binom.test() of R 4.2.2, 14 digits. The second is the example of its help page (682 of 925,
    // Mendel's peas after Conover 1971), printed there as 0.7076683 0.7654066 (from memory).
    const ShareInterval seven = clopperPearson(7, 20, 0.95);
    EXPECT_NEAR(seven.low, 0.15390920478454, 1e-13);
    EXPECT_NEAR(seven.high, 0.59218853453283, 1e-13);
    const ShareInterval peas = clopperPearson(682, 925, 0.95);
    EXPECT_NEAR(peas.low, 0.70766826407904, 1e-13);
    EXPECT_NEAR(peas.high, 0.76540655824153, 1e-13);
    const ShareInterval one = clopperPearson(1, 5, 0.95);
    EXPECT_NEAR(one.low, 0.0050507633794681, 1e-15);
    EXPECT_NEAR(one.high, 0.71641793611809, 1e-13);
    const ShareInterval narrower = clopperPearson(7, 20, 0.90);
    EXPECT_NEAR(narrower.low, 0.17731091757445, 1e-13);
    EXPECT_NEAR(narrower.high, 0.55803451131549, 1e-13);
}

TEST(ClopperPearson, NoneAndAllAreClosedForms)
{
    for (const int trials : {1, 3, 10, 500}) {
        const double end = std::pow(0.025, 1.0 / trials);
        const ShareInterval none = clopperPearson(0, trials, 0.95);
        EXPECT_EQ(none.low, 0.0);
        EXPECT_NEAR(none.high, 1.0 - end, 1e-13) << trials;
        const ShareInterval all = clopperPearson(trials, trials, 0.95);
        EXPECT_EQ(all.high, 1.0);
        EXPECT_NEAR(all.low, end, 1e-13) << trials;
    }
}
