// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/verdict.h"

#include "core/study/units.h"

#include <gmock/gmock.h>

#include <cmath>

using namespace bothways::core;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

namespace {

constexpr double kMargin_pct = 1.0;

VerdictClass classBy(double low, double high, double lowInner, double highInner)
{
    return classOf(low, high, lowInner, highInner, kMargin_pct);
}

Interval interval(double low, double high, double df, VerdictClass cls)
{
    Interval result;
    result.effect_log = (low + high) / 2.0;
    result.low_log = low;
    result.high_log = high;
    result.df = df;
    result.cls = cls;
    return result;
}

Headline headlineOf(double effect, double p)
{
    Headline headline;
    headline.effect_log = effect;
    headline.p = p;
    headline.confidence = 0.95;
    return headline;
}

} // namespace

TEST(Verdict, ClassesFollowTheIntervals)
{
    EXPECT_EQ(classBy(-0.05, -0.01, -0.045, -0.015), VerdictClass::less);
    EXPECT_EQ(classBy(0.01, 0.05, 0.015, 0.045), VerdictClass::more);
    EXPECT_EQ(classBy(-0.009, 0.009, -0.008, 0.008), VerdictClass::equivalent);
    EXPECT_EQ(classBy(-0.02, 0.02, -0.015, 0.015), VerdictClass::undecided);
}

TEST(Verdict, EquivalenceLooksAtTheInnerIntervalOnly)
{
    EXPECT_EQ(classBy(-0.02, 0.02, -0.0099, 0.0099), VerdictClass::equivalent);
    EXPECT_EQ(classBy(-0.009, 0.02, -0.008, 0.0101), VerdictClass::undecided);
}

TEST(Verdict, AnIntervalThatTouchesZeroHasNotLeftIt)
{
    EXPECT_EQ(classBy(-0.05, 0.0, -0.045, -0.002), VerdictClass::undecided);
    EXPECT_EQ(classBy(0.0, 0.05, 0.002, 0.045), VerdictClass::undecided);
}

TEST(Verdict, MarginsAreRatiosNotSymmetricInLogs)
{
    EXPECT_TRUE(insideMargins(logFromPct(-49.9), logFromPct(49.9), 50.0));
    EXPECT_FALSE(insideMargins(logFromPct(-50.1), 0.0, 50.0));
    EXPECT_FALSE(insideMargins(0.0, logFromPct(50.1), 50.0));
    EXPECT_TRUE(insideMargins(-0.6, 0.0, 50.0)); // ln 0.5 = -0.69
    EXPECT_FALSE(insideMargins(0.0, 0.6, 50.0)); // ln 1.5 = 0.41
}

// Student's sleep data, differences of the two drugs: mean -1.58, se 0.388958723888395, df 9. R
// 4.2.2, t.test: p 0.00283289019738427, 95 % -2.45988576327698 to -0.700114236723018, 90 %
// -2.29300526702928 to -0.866994732970716. Two one-sided tests against 2.5 and 2: the 90 % interval
// lies inside (-2.5, 2.5) and not inside (-2, 2) (Schuirmann 1987; p 0.0211 and 0.154).
TEST(Verdict, IntervalsAndEquivalenceAgreeWithR)
{
    AnalysisOptions options;
    const Interval paired = intervalOf(-1.58, 0.388958723888395, 9, options);
    EXPECT_NEAR(paired.low_log, -2.45988576327698, 1e-12);
    EXPECT_NEAR(paired.high_log, -0.700114236723018, 1e-12);
    EXPECT_NEAR(paired.p, 0.00283289019738427, 1e-14);
    EXPECT_EQ(paired.cls, VerdictClass::less);
    const double half = equivalenceHalfWidth(0.388958723888395, 9, 0.95);
    EXPECT_NEAR(-1.58 - half, -2.29300526702928, 1e-12);
    EXPECT_NEAR(-1.58 + half, -0.866994732970716, 1e-12);
}

TEST(Verdict, AnIntervalWithoutSpreadIsAPoint)
{
    const AnalysisOptions options;
    EXPECT_EQ(intervalOf(0.0, 0.0, 3, options).cls, VerdictClass::equivalent);
    EXPECT_EQ(intervalOf(0.0, 0.0, 3, options).p, 1.0);
    EXPECT_EQ(intervalOf(0.02, 0.0, 3, options).cls, VerdictClass::more);
    EXPECT_EQ(intervalOf(0.02, 0.0, 3, options).p, 0.0);
}

TEST(Verdict, IsFragileWhereACompanionLandsInAnotherClass)
{
    Companions companions;
    companions.bracket = interval(-0.01, 0.03, 5, VerdictClass::undecided);
    companions.runs = interval(0.001, 0.02, 14, VerdictClass::more);
    companions.correlated.emplace();
    companions.correlated->df = 9;
    companions.correlated->cls = VerdictClass::undecided;
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.06), VerdictClass::undecided, companions),
                ElementsAre(Companion::runs));
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.01), VerdictClass::more, companions),
                ElementsAre(Companion::bracket, Companion::correlated));
}

TEST(Verdict, ACompanionWithOneDegreeOfFreedomHasNoSay)
{
    Companions companions;
    companions.bracket = interval(-0.5, 0.5, 1, VerdictClass::undecided);
    companions.blocks = interval(0.5, 0.6, 1, VerdictClass::more);
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.01), VerdictClass::more, companions), IsEmpty());
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.01), VerdictClass::more, {}), IsEmpty());
}

TEST(Verdict, BlocksDisagreeOnlyWhereTheirIntervalLeavesTheEffectOut)
{
    Companions companions;
    companions.blocks = interval(-0.05, 0.07, 2, VerdictClass::undecided); // merely sees less
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.01), VerdictClass::more, companions), IsEmpty());
    companions.blocks = interval(0.011, 0.07, 2, VerdictClass::more);
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.01), VerdictClass::more, companions),
                ElementsAre(Companion::blocks));
}

TEST(Verdict, LabelsDisagreeOnlyWhereTheyCouldAgree)
{
    Companions companions;
    companions.labels = LabelsTest{0.2, 40, true}; // 2/40 reaches 0.05
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.01), VerdictClass::more, companions),
                ElementsAre(Companion::labels));
    companions.labels = LabelsTest{0.2, 39, true};
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.01), VerdictClass::more, companions), IsEmpty());
    companions.labels = LabelsTest{0.01, 84, true};
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.01), VerdictClass::more, companions), IsEmpty());
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.06), VerdictClass::undecided, companions),
                ElementsAre(Companion::labels));
}

TEST(Verdict, APlanIsFulfilledByItsBlocksAndItsPairs)
{
    PlannedStudy plan;
    plan.sequence = "ABBA"; // three blocks, the middle one of twice the pairs
    plan.pairs_per_block = 4;
    EXPECT_TRUE(fulfils(plan, 3, 8, 8));
    EXPECT_TRUE(fulfils(plan, 5, 9, 12));
    EXPECT_FALSE(fulfils(plan, 2, 8, 8)); // the last block is missing
    EXPECT_FALSE(fulfils(plan, 3, 7, 9)); // a baseline pair is missing
    EXPECT_FALSE(fulfils(plan, 3, 8, 7));
}

TEST(Verdict, InformingChecksNeverFailTheAssumptions)
{
    Checks checks;
    EXPECT_FALSE(anyFails(checks));
    checks.baseline.state = CheckState::fails;
    checks.resolution.state = CheckState::fails;
    checks.order.state = CheckState::note;
    EXPECT_FALSE(anyFails(checks));
    checks.air.state = CheckState::fails;
    EXPECT_TRUE(anyFails(checks));
}
