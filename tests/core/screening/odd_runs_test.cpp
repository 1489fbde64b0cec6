// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/odd_runs.h"

#include "tests/support/study_builder.h"

#include <gtest/gtest.h>

using namespace bothways::core;

namespace {

Study dayOf(std::vector<Run> runs)
{
    Study study;
    study.runs = std::move(runs);
    sortByStart(study);
    int number = 0;
    for (Run& run : study.runs)
        run.number = ++number;
    return study;
}

Run drivenAt(double minutes, double seconds, double l_per_100km = 8.0)
{
    return bothways::tests::aDrivenRun().at_min(minutes).lasting_s(seconds).using_l(l_per_100km);
}

} // namespace

TEST(OddRuns, FindARunThatStartsWhileAnotherIsStillDriven)
{
    const auto odd = oddRuns(dayOf({drivenAt(0, 240), drivenAt(3, 240), drivenAt(10, 240)}));
    ASSERT_EQ(odd.size(), 1U);
    EXPECT_EQ(odd[0].what, OddRun::What::stillDriving);
    EXPECT_EQ(odd[0].run, 2);
    EXPECT_EQ(odd[0].other, 1);
}

TEST(OddRuns, SeeALongRunThroughAShortOneWithinIt)
{
    const auto odd = oddRuns(dayOf({drivenAt(0, 1200), drivenAt(3, 60), drivenAt(10, 240)}));
    ASSERT_EQ(odd.size(), 2U);
    EXPECT_EQ(odd[1].run, 3);
    EXPECT_EQ(odd[1].other, 1);
}

TEST(OddRuns, LetARunStartTheMomentTheOneBeforeEnds)
{
    EXPECT_TRUE(oddRuns(dayOf({drivenAt(0, 240), drivenAt(4, 240)})).empty());
    EXPECT_TRUE(oddRuns(dayOf({drivenAt(0, 240.9), drivenAt(4, 240)})).empty());
    EXPECT_FALSE(oddRuns(dayOf({drivenAt(0, 242), drivenAt(4, 240)})).empty());
}

TEST(OddRuns, AskNothingAboutRunsWithoutDurationOrDiscarded)
{
    const bothways::core::Run without = bothways::tests::aDrivenRun()
                                            .at_min(0)
                                            .lasting_s(std::nullopt)
                                            .over_km(std::nullopt)
                                            .using_l(8.0);
    EXPECT_TRUE(oddRuns(dayOf({without, drivenAt(0.1, 240)})).empty());
    bothways::core::Run twice = drivenAt(0, 240);
    twice.discard = Discard{"same_run_twice", ""};
    EXPECT_TRUE(oddRuns(dayOf({drivenAt(0, 240), twice})).empty());
}

TEST(OddRuns, LeaveARunThatWasTypedTwiceToItsRule)
{
    EXPECT_TRUE(oddRuns(dayOf({drivenAt(0, 240), drivenAt(0, 240)})).empty());
    EXPECT_FALSE(oddRuns(dayOf({drivenAt(0, 240), drivenAt(0, 240, 8.1)})).empty());
}

TEST(OddRuns, FindAConsumptionFarFromTheOthers)
{
    const auto odd =
        oddRuns(dayOf({drivenAt(0, 60, 8.0), drivenAt(5, 60, 791.0), drivenAt(9, 60, 8.2)}));
    ASSERT_EQ(odd.size(), 1U);
    EXPECT_EQ(odd[0].what, OddRun::What::consumption);
    EXPECT_EQ(odd[0].run, 2);
    EXPECT_DOUBLE_EQ(odd[0].usual_l_per_100km, 8.2);
    EXPECT_DOUBLE_EQ(odd[0].times, 791.0 / 8.2);
    const auto low =
        oddRuns(dayOf({drivenAt(0, 60, 8.0), drivenAt(5, 60, 0.8), drivenAt(9, 60, 8.2)}));
    ASSERT_EQ(low.size(), 1U);
    EXPECT_DOUBLE_EQ(low[0].times, 0.1);
}

TEST(OddRuns, TakeAFactorOfThreeAsItIs)
{
    EXPECT_TRUE(
        oddRuns(dayOf({drivenAt(0, 60, 8), drivenAt(5, 60, 24), drivenAt(9, 60, 8)})).empty());
    EXPECT_FALSE(
        oddRuns(dayOf({drivenAt(0, 60, 8), drivenAt(5, 60, 24.1), drivenAt(9, 60, 8)})).empty());
}

TEST(OddRuns, CompareTheSecondOfTwoRunsWithTheFirst)
{
    const auto odd = oddRuns(dayOf({drivenAt(0, 60, 8.0), drivenAt(5, 60, 80.0)}));
    ASSERT_EQ(odd.size(), 1U);
    EXPECT_EQ(odd[0].run, 2);
    EXPECT_DOUBLE_EQ(odd[0].times, 10.0);
    EXPECT_TRUE(oddRuns(dayOf({drivenAt(0, 60, 791.0)})).empty()) << "nothing to compare with";
}

TEST(OddRuns, StandDurationsThatNoClockHolds)
{
    bothways::core::Run endless = drivenAt(0, 240);
    endless.duration_s = 1e300;
    const auto odd = oddRuns(dayOf({endless, drivenAt(5, 240)}));
    ASSERT_EQ(odd.size(), 1U);
    EXPECT_EQ(odd[0].what, OddRun::What::stillDriving);
}
