// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/verdict.h"

#include "core/study/units.h"

#include <gmock/gmock.h>

#include <cmath>
#include <sstream>
#include <string>
#include <vector>

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

TEST(Verdict, ACompanionThatMerelySeesLessDoesNotDisagree)
{
    Companions companions;
    companions.bracket = interval(-0.01, 0.03, 5, VerdictClass::undecided);
    companions.curved = interval(-0.02, 0.04, 5, VerdictClass::undecided);
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.01), VerdictClass::more, companions), IsEmpty());
}

TEST(Verdict, IsFragileWhereACompanionSaysAnotherDirection)
{
    Companions companions;
    companions.runs = interval(0.001, 0.02, 14, VerdictClass::more);
    companions.curved = interval(0.002, 0.04, 5, VerdictClass::more);
    // Who cannot tell need not be told that another way can.
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.06), VerdictClass::undecided, companions),
                IsEmpty());
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.06), VerdictClass::equivalent, companions),
                ElementsAre(Companion::runs, Companion::curved));
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.01), VerdictClass::more, companions), IsEmpty());
}

TEST(Verdict, IsFragileWhereAnIntervalLeavesTheEffectOutWhateverIsSaid)
{
    Companions companions;
    companions.bracket = interval(0.02, 0.03, 5, VerdictClass::more);
    companions.curved = interval(-0.03, 0.005, 4, VerdictClass::undecided);
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.01), VerdictClass::more, companions),
                ElementsAre(Companion::bracket, Companion::curved));
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.2), VerdictClass::undecided, companions),
                ElementsAre(Companion::bracket, Companion::curved));
}

TEST(Verdict, CorrelatedMakesNothingFragileButAsksForIndependence)
{
    Companions companions;
    companions.correlated.emplace();
    companions.correlated->df = 9;
    companions.correlated->cls = VerdictClass::undecided;
    companions.correlated->low_log = 0.5; // far from the headline
    companions.correlated->high_log = 0.6;
    EXPECT_THAT(disagreeing(headlineOf(0.01, 0.01), VerdictClass::more, companions), IsEmpty());
    EXPECT_TRUE(needsIndependence(VerdictClass::more, companions));
    EXPECT_TRUE(needsIndependence(VerdictClass::equivalent, companions));
    EXPECT_FALSE(needsIndependence(VerdictClass::undecided, companions));
    companions.correlated->cls = VerdictClass::more;
    EXPECT_FALSE(needsIndependence(VerdictClass::more, companions));
    companions.correlated->cls = VerdictClass::undecided;
    companions.correlated->df = 1;
    EXPECT_FALSE(needsIndependence(VerdictClass::more, companions));
    EXPECT_FALSE(needsIndependence(VerdictClass::more, {}));
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

TEST(Verdict, LabelsDisagreeOnlyWhereTheyCouldAgreeAndClearly)
{
    Companions companions;
    const auto disagrees = [&](double labels, long long deals, double p, VerdictClass cls) {
        companions.labels = LabelsTest{labels, deals, true};
        return !disagreeing(headlineOf(0.01, p), cls, companions).empty();
    };
    EXPECT_TRUE(disagrees(0.2, 40, 0.01, VerdictClass::more)); // 2/40 reaches 0.05
    EXPECT_FALSE(disagrees(0.2, 39, 0.01, VerdictClass::more));
    EXPECT_FALSE(disagrees(0.01, 84, 0.01, VerdictClass::more));
    EXPECT_FALSE(disagrees(0.09, 84, 0.01, VerdictClass::more)); // other side, not clearly
    EXPECT_FALSE(disagrees(0.1, 70, 0.01, VerdictClass::more));  // 2 alpha to the last digit
    EXPECT_TRUE(disagrees(0.02, 84, 0.06, VerdictClass::equivalent));
    EXPECT_FALSE(disagrees(0.03, 84, 0.06, VerdictClass::equivalent));
    EXPECT_FALSE(disagrees(0.01, 84, 0.06, VerdictClass::undecided));
}

namespace {

/// "A7 B4 A1", days parted by '/'.
std::vector<DesignBlock> drivenBlocks(const std::string& text)
{
    std::vector<DesignBlock> blocks;
    std::istringstream words(text);
    int day = 0;
    for (std::string word; words >> word;) {
        if (word == "/") {
            ++day;
            continue;
        }
        DesignBlock block;
        block.device = word[0] == 'B';
        block.day = day;
        block.pairs.resize(static_cast<std::size_t>(std::stoi(word.substr(1))));
        blocks.push_back(block);
    }
    return blocks;
}

bool fulfilled(const char* sequence, int pairs, const std::string& driven)
{
    PlannedStudy plan;
    plan.sequence = sequence;
    plan.pairs_per_block = pairs;
    return fulfils(plan, drivenBlocks(driven));
}

} // namespace

TEST(Verdict, APlanIsFulfilledByItsBlocksInTheirOrderEachWithItsPairs)
{
    EXPECT_TRUE(fulfilled("ABA", 4, "A4 B4 A4"));
    EXPECT_TRUE(fulfilled("ABA", 4, "A5 B4 A6 B1 A1"));
    EXPECT_FALSE(fulfilled("ABA", 4, "A7 B4 A1")); // the totals alone are there
    EXPECT_FALSE(fulfilled("ABA", 4, "A4 B4"));
    EXPECT_FALSE(fulfilled("ABA", 4, "B4 A4 B4 A4 B4 A4")); // not in this order
    EXPECT_FALSE(fulfilled("ABA", 4, ""));
    // Equal neighbours on one day are one block, with the pairs of both.
    EXPECT_TRUE(fulfilled("ABBA", 4, "A4 B8 A4"));
    EXPECT_FALSE(fulfilled("ABBA", 4, "A4 B7 A4"));
    EXPECT_FALSE(fulfilled("ABBA", 4, "A4 B4 A4"));
}

TEST(Verdict, ANewDayMayGoOnWithAPlanWhereItWasLeft)
{
    EXPECT_TRUE(fulfilled("ABA", 4, "A4 B4 / A4"));
    EXPECT_TRUE(fulfilled("ABBA", 4, "A4 B4 / B4 A4"));
    EXPECT_TRUE(fulfilled("ABBA", 4, "A4 B8 / A4"));
    EXPECT_TRUE(fulfilled("ABAABA", 3, "A3 B3 A3 / A3 B3 A3"));
    EXPECT_FALSE(fulfilled("ABA", 4, "A2 / A2 B4 A4")); // a new day begins a new block
    EXPECT_FALSE(fulfilled("ABA", 4, "A4 B2 / B2 A4"));
}

TEST(Verdict, AClaimIsBorneOutRefutedOrOpen)
{
    Headline headline;
    headline.effect_log = -0.03;
    headline.se_log = 0.004;
    headline.df = 9;
    headline.low_log = -0.039;
    headline.high_log = -0.021;
    const auto state = [&](double pct) { return answerToClaim(pct, headline).state; };
    EXPECT_EQ(state(-5.0), ClaimState::refuted);
    EXPECT_EQ(state(-3.0), ClaimState::open);
    EXPECT_EQ(state(-2.0), ClaimState::borneOut);
    EXPECT_EQ(state(1.0), ClaimState::refuted); // someone says that it costs
    EXPECT_NEAR(answerToClaim(100.0 * std::expm1(-0.03), headline).p, 1.0, 1e-12);
    headline.effect_log = 0.03;
    headline.low_log = 0.021;
    headline.high_log = 0.039;
    EXPECT_EQ(state(5.0), ClaimState::refuted);
    EXPECT_EQ(state(3.0), ClaimState::open);
    EXPECT_EQ(state(2.0), ClaimState::borneOut);
    EXPECT_EQ(state(-1.0), ClaimState::refuted);
}

TEST(Verdict, OnlyTheBaselinesCheckNeverFailsTheAssumptions)
{
    Checks checks;
    EXPECT_FALSE(anyFails(checks));
    checks.baseline.state = CheckState::fails;
    checks.order.state = CheckState::note;
    EXPECT_FALSE(anyFails(checks));
    for (CheckState* state : {&checks.air.state, &checks.resolution.state, &checks.ways.state,
                              &checks.settling.state, &checks.days.state}) {
        *state = CheckState::fails;
        EXPECT_TRUE(anyFails(checks));
        *state = CheckState::holds;
    }
}
