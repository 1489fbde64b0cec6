// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/sequence_study.h"

#include <gtest/gtest.h>

using namespace bothways::core;

namespace {

PlanOptions fourPairs(const char* sequence)
{
    PlanOptions options;
    options.sequence = sequence;
    options.pairs_per_block = 4;
    options.switch_min = 0.0;
    return options;
}

double coverage(const char* sequence, Disturbance disturbance)
{
    return simulateWeakness(fourPairs(sequence), {}, 10000)
        .value()
        .coverage[static_cast<std::size_t>(disturbance)];
}

} // namespace

// Coverages of method, section 12: another program's simulation of the same definitions, 40,000
// repeats or more, 1 % noise, 15 minutes a pair, no time for switches, 4 pairs a block. Tolerance:
// five standard errors of 10,000 repeats at the coverage in question (0.011 at 0.95, 0.021 at 0.77,
// 0.015 at 0.10): a sound program fails one of these ten about once in 200,000 seeds.
TEST(SequenceStudy, AgreesWithThePublishedSimulationOfTheMethod)
{
    EXPECT_NEAR(coverage("ABA", Disturbance::none), 0.950, 0.011);
    EXPECT_NEAR(coverage("ABABA", Disturbance::none), 0.949, 0.011);
    EXPECT_NEAR(coverage("ABA", Disturbance::correlatedNoise), 0.796, 0.021);
    EXPECT_NEAR(coverage("ABA", Disturbance::curvedDrift), 0.771, 0.021);
    EXPECT_NEAR(coverage("ABBA", Disturbance::curvedDrift), 0.102, 0.016);
    EXPECT_NEAR(coverage("ABABA", Disturbance::curvedDrift), 0.726, 0.023);
    EXPECT_NEAR(coverage("AB", Disturbance::straightDrift), 0.800, 0.020);
}

TEST(SequenceStudy, AStraightDriftDoesNothingToAClosedDesign)
{
    for (const char* sequence : {"ABA", "ABBA", "ABABA"})
        EXPECT_NEAR(coverage(sequence, Disturbance::straightDrift),
                    coverage(sequence, Disturbance::none), 0.0011)
            << sequence; // the same noise: only rounding may move a count
}

TEST(SequenceStudy, ChangesAtEachSwitchSpoilTheHeadlinesCoverage)
{
    EXPECT_LT(coverage("ABA", Disturbance::blockChanges), 0.9);
}

TEST(SequenceStudy, TheSameSeedGivesTheSameAnswer)
{
    const auto options = fourPairs("ABA");
    EXPECT_EQ(simulateWeakness(options, {}, 500, 1).value().coverage,
              simulateWeakness(options, {}, 500, 1).value().coverage);
    EXPECT_NE(simulateWeakness(options, {}, 500, 1).value().coverage,
              simulateWeakness(options, {}, 500, 2).value().coverage);
}

TEST(SequenceStudy, OffersWhatFitsIntoTheHoursBestFirst)
{
    const auto plans = sequencesFor(4.0, PlanOptions{}).value();
    ASSERT_GE(plans.size(), 4u);
    for (std::size_t i = 0; i < plans.size(); ++i) {
        EXPECT_LE(plans[i].road_hours, 4.0 + 1e-9) << plans[i].sequence;
        if (i > 0) {
            EXPECT_GE(plans[i].detectable_log, plans[i - 1].detectable_log);
        }
        PlanOptions more = plans[i].options;
        ++more.pairs_per_block;
        EXPECT_GT(makePlan(more).value().road_hours, 4.0) << plans[i].sequence;
    }
}

TEST(SequenceStudy, RefusesHoursThatAreTooFew)
{
    EXPECT_FALSE(sequencesFor(0.0, PlanOptions{}));
    EXPECT_FALSE(sequencesFor(-1.0, PlanOptions{}));
    EXPECT_FALSE(sequencesFor(0.4, PlanOptions{}));
}

TEST(SequenceStudy, StopsWhenAsked)
{
    std::stop_source source;
    source.request_stop();
    EXPECT_EQ(simulateWeakness(fourPairs("ABA"), {}, 1000, 1, source.get_token()).error().code,
              ErrorCode::stopped);
}
