// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/companions/bracket.h"

#include "core/statistics/distributions.h"
#include "core/study/units.h"
#include "tests/core/companions/timed_pairs.h"

#include <cmath>

using namespace bothways;
using namespace bothways::core;
using bothways::tests::aDay;
using bothways::tests::aDrivenRun;
using bothways::tests::companionsIn;
using bothways::tests::kDay_min;
using bothways::tests::pairsAt;
using bothways::tests::StudyBuilder;

TEST(Bracket, TakesTheLineBetweenTheNeighboursAtTheBlocksOwnTime)
{
    // A at 0 and 10 min, B at 40 and 60, A at 90 and 100 min. Block means at 5, 50, 95: half way.
    // Moved to 42 and 48 the B block sits 4/9 along.
    for (const auto& [first, second] : {std::pair{40.0, 60.0}, std::pair{42.0, 48.0}}) {
        const Study study = pairsAt({{"A", 0, 8.00},
                                     {"A", 10, 8.10},
                                     {"B", first, 7.90},
                                     {"B", second, 7.95},
                                     {"A", 90, 8.30},
                                     {"A", 100, 8.20}});
        const auto bracket = companionsIn(study).bracket;
        ASSERT_TRUE(bracket);
        const double share = ((first + second) / 2.0 - 5.0) / 90.0;
        const double before = (std::log(8.00) + std::log(8.10)) / 2.0;
        const double after = (std::log(8.30) + std::log(8.20)) / 2.0;
        const double device = (std::log(7.90) + std::log(7.95)) / 2.0;
        EXPECT_NEAR(bracket->effect_log, device - (1.0 - share) * before - share * after, 1e-14);
        // Three blocks of two pairs: deviations d about each mean, one slope; df = 3 - 1.
        const double d[3] = {std::log(8.10 / 8.00) / 2, std::log(7.95 / 7.90) / 2,
                             std::log(8.20 / 8.30) / 2};
        const double t[3] = {5.0, (second - first) / 2.0, 5.0};
        double tt = 0.0, td = 0.0, dd = 0.0;
        for (int b = 0; b < 3; ++b) {
            tt += 2 * t[b] * t[b];
            td += 2 * t[b] * d[b];
            dd += 2 * d[b] * d[b];
        }
        const double s2 = (dd - td * td / tt) / 2.0;
        const double weights = (1.0 + share * share + (1.0 - share) * (1.0 - share)) / 2.0;
        EXPECT_EQ(bracket->df, 2.0);
        EXPECT_NEAR(bracket->high_log - bracket->effect_log,
                    tQuantile(0.975, 2.0) * std::sqrt(s2 * weights), 1e-12);
    }
}

TEST(Bracket, AveragesOverTheBlocksThatLieBetweenTwo)
{
    // B at the ends has no neighbour on one side and does not count.
    const Study study = pairsAt({{"B", 0, 9.0},
                                 {"B", 10, 9.1},
                                 {"A", 40, 8.0},
                                 {"A", 50, 8.1},
                                 {"B", 80, 8.4},
                                 {"B", 90, 8.5},
                                 {"A", 120, 8.2},
                                 {"A", 130, 8.1},
                                 {"B", 160, 8.3},
                                 {"B", 170, 8.4},
                                 {"A", 200, 8.0},
                                 {"A", 210, 8.1}});
    const auto mean = [](double a, double b) { return (std::log(a) + std::log(b)) / 2.0; };
    const auto bracket = companionsIn(study).bracket;
    ASSERT_TRUE(bracket);
    const double first = mean(8.4, 8.5) - 0.5 * (mean(8.0, 8.1) + mean(8.2, 8.1));
    const double second = mean(8.3, 8.4) - 0.5 * (mean(8.2, 8.1) + mean(8.0, 8.1));
    EXPECT_NEAR(bracket->effect_log, 0.5 * (first + second), 1e-14);
    EXPECT_EQ(bracket->df, 5.0);
}

TEST(Bracket, NeighboursOfOneConfigurationAreOneBlock)
{
    // A, B (spoiled), A, B, A: what is left is one A block of four pairs, B, A.
    StudyBuilder builder;
    builder.addPair("A", 0, 8.00, 8.00).addPair("A", 10, 8.10, 8.10);
    builder.add(aDrivenRun().b().out().at_min(30).using_l(9).discarded());
    builder.add(aDrivenRun().b().back().at_min(37).using_l(9).discarded());
    builder.addPair("A", 60, 8.05, 8.05).addPair("A", 70, 8.12, 8.12);
    builder.addPair("B", 100, 7.9, 7.9).addPair("B", 110, 7.8, 7.8);
    builder.addPair("A", 140, 8.00, 8.00).addPair("A", 150, 8.02, 8.02);
    const Analysis analysis = analyse(builder.build(), {});
    EXPECT_EQ(analysis.blocks.size(), 5U);
    ASSERT_TRUE(analysis.companions.bracket);
    EXPECT_EQ(analysis.companions.bracket->df, 4.0); // (4 - 1) + (2 - 1) + (2 - 1) - 1
    const double before = (std::log(8.00) + std::log(8.10) + std::log(8.05) + std::log(8.12)) / 4.0;
    const double after = (std::log(8.00) + std::log(8.02)) / 2.0;
    const double share = (105.0 - 35.0) / (145.0 - 35.0);
    EXPECT_NEAR(analysis.companions.bracket->effect_log,
                (std::log(7.9) + std::log(7.8)) / 2.0 - (1 - share) * before - share * after,
                1e-13);
    EXPECT_FALSE(analysis.companions.blocks); // three blocks: nothing left for noise
}

TEST(Bracket, StaysWithinTheDay)
{
    // Day one A/B, day two B/A: every B block lacks a neighbour of its day.
    const Study study = pairsAt({{"A", 0, 8.0},
                                 {"A", 10, 8.1},
                                 {"B", 40, 7.9},
                                 {"B", 50, 7.8},
                                 {"B", kDay_min, 7.7},
                                 {"B", kDay_min + 10, 7.9},
                                 {"A", kDay_min + 40, 8.2},
                                 {"A", kDay_min + 50, 8.1}});
    const Analysis analysis = analyse(study, {});
    EXPECT_EQ(analysis.days, 2);
    EXPECT_EQ(analysis.design, Design::open);
    EXPECT_FALSE(analysis.companions.bracket);
    EXPECT_FALSE(analysis.checks.baseline.effect_log);
    ASSERT_TRUE(analysis.companions.blocks); // four means, two days, one effect
    EXPECT_EQ(analysis.companions.blocks->df, 1.0);
    EXPECT_NEAR(
        analysis.companions.blocks->effect_log,
        (std::log(7.9 / 8.0) + std::log(7.8 / 8.1) + std::log(7.7 / 8.2) + std::log(7.9 / 8.1)) /
            4.0,
        1e-13);
}

TEST(Bracket, IsMissingInAnOpenDesignAndWithOnePairABlock)
{
    EXPECT_FALSE(companionsIn(aDay("AB", 4)).bracket);
    const Companions single = companionsIn(aDay("ABABABA", 1));
    EXPECT_FALSE(single.bracket);
    EXPECT_TRUE(single.blocks); // blocks are then the pairs themselves
}
