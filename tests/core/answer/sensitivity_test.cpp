// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answer/sensitivity.h"

#include "core/answer/analyse.h"
#include "core/effect/effect_model.h"
#include "tests/support/study_builder.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace bothways;
using tests::aDrivenRun;
using tests::StudyBuilder;

namespace {

struct Answer {
    core::PreparedStudy prepared;
    core::HeadlineFit fit;
};

Answer answerOf(const core::Study& study, const core::AnalysisOptions& options = {})
{
    Answer answer{core::prepareStudy(study, options), {}};
    const auto headline = core::headlineOf(answer.prepared, options);
    EXPECT_TRUE(std::holds_alternative<core::HeadlineFit>(headline));
    if (const auto* fit = std::get_if<core::HeadlineFit>(&headline))
        answer.fit = *fit;
    return answer;
}

core::LeaveOneOut leaveOneOut(const core::Study& study)
{
    const Answer answer = answerOf(study);
    return core::leaveOneOut(answer.prepared, answer.fit, {});
}

core::DiscardsRestored restored(const core::Study& study)
{
    const auto analysis = core::analyse(study, {});
    return analysis.discards_restored;
}

core::Study twoDays()
{
    core::Study study = tests::aDay("ABA", 3, 0.01);
    for (core::Run run : tests::aDay("BAB", 2, 0.01, 0.01, 5).runs) {
        run.start.us += std::int64_t{24} * 3600 * 1'000'000;
        run.number += 100;
        study.runs.push_back(run);
    }
    return study;
}

void discard(core::Study& study, std::size_t index)
{
    study.runs[index].discard = core::Discard{"other", "spoiled"};
}

} // namespace

TEST(LeaveOneOut, IsTheFitWithoutThePair)
{
    for (const core::Study& study :
         {tests::aDay("ABA", 4, 0.01), tests::aDay("AB", 4), twoDays()}) {
        const Answer answer = answerOf(study);
        const core::LeaveOneOut turns = core::leaveOneOut(answer.prepared, answer.fit, {});
        ASSERT_EQ(turns.turns.size(), answer.prepared.pairs.size());
        for (std::size_t i = 0; i < turns.turns.size(); ++i) {
            auto pairs = core::pairObservations(answer.prepared);
            pairs.erase(pairs.begin() + static_cast<std::ptrdiff_t>(i));
            const auto fit = core::leastSquares(
                core::effectColumns(pairs, answer.prepared.sloped()), core::responses(pairs));
            EXPECT_EQ(turns.turns[i].pair, static_cast<int>(i) + 1);
            ASSERT_TRUE(turns.turns[i].effect_log);
            EXPECT_NEAR(*turns.turns[i].effect_log, fit.coefficients[core::kEffectColumn], 1e-13);
        }
    }
}

TEST(LeaveOneOut, SmallestAndLargestAreOverTheTurns)
{
    const core::LeaveOneOut turns = leaveOneOut(tests::aDay("ABA", 4, 0.01));
    double least = 1.0, most = -1.0;
    for (const auto& turn : turns.turns) {
        least = std::min(least, *turn.effect_log);
        most = std::max(most, *turn.effect_log);
    }
    EXPECT_EQ(turns.min_effect_log, least);
    EXPECT_EQ(turns.max_effect_log, most);
}

TEST(LeaveOneOut, AFarOffPairChangesTheClass)
{
    core::Study study = tests::aDay("ABA", 4, 0.03, 0.002);
    EXPECT_FALSE(leaveOneOut(study).changes_class);
    for (const std::size_t run : {10U, 11U}) // one pair of B
        study.runs[run].consumption->value *= 0.75;
    EXPECT_EQ(answerOf(study).fit.cls, core::VerdictClass::undecided);
    const core::LeaveOneOut turns = leaveOneOut(study);
    EXPECT_TRUE(turns.changes_class);
    EXPECT_EQ(turns.turns[5].cls, core::VerdictClass::more);
}

TEST(LeaveOneOut, ATurnWithoutAVerdictIsCountedAndIsNoChange)
{
    const core::LeaveOneOut turns = leaveOneOut(tests::aDay("AB", 2));
    EXPECT_FALSE(turns.changes_class);
    EXPECT_EQ(turns.without_verdict, 4);
    EXPECT_FALSE(turns.min_effect_log);
    for (const auto& turn : turns.turns) {
        EXPECT_FALSE(turn.effect_log);
        EXPECT_EQ(turn.cls, core::VerdictClass::none);
    }
}

TEST(LeaveOneOut, ClosedStaysClosedWhenABlockLosesItsOnlyPair)
{
    core::Study study = tests::aDay("ABA", 4, 0.01);
    for (const std::size_t run : {18U, 19U, 20U, 21U, 22U, 23U})
        discard(study, run); // one pair left in the last block
    const Answer answer = answerOf(study);
    ASSERT_EQ(answer.prepared.pairs.size(), 9U);
    const auto turns = core::leaveOneOut(answer.prepared, answer.fit, {});
    auto pairs = core::pairObservations(answer.prepared);
    pairs.pop_back();
    const auto withSlope =
        core::leastSquares(core::effectColumns(pairs, {true}), core::responses(pairs));
    EXPECT_NEAR(*turns.turns[8].effect_log, withSlope.coefficients[core::kEffectColumn], 1e-12);
}

TEST(LeaveOneOut, APairThatCarriesItsDayAloneIsLeftOutToo)
{
    core::Study study = tests::aDay("ABA", 3, 0.01);
    StudyBuilder lonely;
    lonely.addPair("B", 24 * 60, 10.0, 10.1);
    for (core::Run run : lonely.build().runs) {
        run.number += 100;
        study.runs.push_back(run);
    }
    const Answer answer = answerOf(study);
    const auto turns = core::leaveOneOut(answer.prepared, answer.fit, {});
    ASSERT_EQ(turns.turns.size(), 10U);
    ASSERT_TRUE(turns.turns[9].effect_log); // its day went with it; nothing else moved
    EXPECT_NEAR(*turns.turns[9].effect_log, answer.fit.headline.effect_log, 1e-12);
}

TEST(DiscardsRestored, NoDiscardsAreAnEmptyList)
{
    const auto none = restored(tests::aDay("ABA", 2));
    EXPECT_FALSE(none.all);
    EXPECT_TRUE(none.each.empty());
}

TEST(DiscardsRestored, EachTurnIsTheAnalysisWithThatRunCounted)
{
    core::Study study = twoDays();
    for (const std::size_t run : {1U, 6U, 9U, 20U, 26U})
        discard(study, run);
    const auto result = restored(study);
    ASSERT_EQ(result.each.size(), 5U);
    std::size_t k = 0;
    int up = 0, down = 0;
    const double now = core::analyse(study, {}).headline->effect_log;
    for (const std::size_t run : {1U, 6U, 9U, 20U, 26U}) {
        core::Study counted = study;
        counted.runs[run].discard.reset();
        const auto expected = core::analyse(counted, {});
        EXPECT_EQ(result.each[k].run, study.runs[run].number);
        ASSERT_TRUE(result.each[k].effect_log);
        EXPECT_NEAR(*result.each[k].effect_log, expected.headline->effect_log, 1e-13);
        EXPECT_EQ(result.each[k].cls, expected.verdict.cls);
        up += expected.headline->effect_log > now + 1e-9 ? 1 : 0;
        down += expected.headline->effect_log < now - 1e-9 ? 1 : 0;
        ++k;
    }
    EXPECT_EQ(result.up, up);
    EXPECT_EQ(result.down, down);
    for (core::Run& run : study.runs)
        run.discard.reset();
    EXPECT_NEAR(*result.all->effect_log, core::analyse(study, {}).headline->effect_log, 1e-13);
}

TEST(DiscardsRestored, ARunWithoutConsumptionCannotBePutBack)
{
    core::Study study = tests::aDay("ABA", 3, 0.01);
    discard(study, 3);
    study.runs[3].consumption.reset();
    const auto alone = restored(study);
    EXPECT_FALSE(alone.all);
    ASSERT_EQ(alone.each.size(), 1U);
    EXPECT_FALSE(alone.each[0].possible);
    EXPECT_FALSE(alone.each[0].effect_log);
    EXPECT_EQ(alone.up + alone.down, 0);

    discard(study, 8);
    const auto both = restored(study);
    EXPECT_TRUE(both.each[1].possible);
    ASSERT_TRUE(both.all); // of those that can be
    EXPECT_NEAR(*both.all->effect_log, *both.each[1].effect_log, 1e-13);
}

TEST(DiscardsRestored, ARunThatFindsNoPartnerMovesNothing)
{
    core::Study study = tests::aDay("ABA", 3, 0.01);
    core::Run extra = aDrivenRun().a().out().at_min(240.0);
    extra.number = 99;
    extra.discard = core::Discard{"other", "one too many"};
    study.runs.push_back(extra);
    core::sortByStart(study);
    const auto result = restored(study);
    EXPECT_EQ(result.up, 0);
    EXPECT_EQ(result.down, 0);
}

TEST(DiscardsRestored, ARunPutBackCanCloseTheDesign)
{
    core::Study study = tests::aDay("ABA", 3, 0.01);
    for (std::size_t run = 12; run < 18; ++run)
        if (run != 13)
            discard(study, run); // one return run is left of the last block
    EXPECT_EQ(core::analyse(study, {}).design, core::Design::open);
    core::Study closed = study;
    closed.runs[12].discard.reset();
    const auto expected = core::analyse(closed, {});
    ASSERT_EQ(expected.design, core::Design::closed);
    EXPECT_NEAR(*restored(study).each[0].effect_log, expected.headline->effect_log, 1e-13);
}

TEST(DiscardsRestored, AreShownWithoutAHeadlineToo)
{
    core::Study study = tests::aDay("ABA", 2, 0.01);
    for (const std::size_t run : {4U, 6U})
        discard(study, run); // no pair of B is left
    const auto result = restored(study);
    EXPECT_EQ(core::analyse(study, {}).verdict.reason, core::NoVerdict::tooFewPairs);
    ASSERT_TRUE(result.all);
    EXPECT_TRUE(result.all->effect_log);
    EXPECT_EQ(result.up + result.down, 0); // there is nothing to move
}

TEST(DiscardsRestored, WithAControlVehicleARunWithoutItCannotBePutBack)
{
    core::Study study = tests::aDay("ABA", 3, 0.01);
    for (core::Run& run : study.runs)
        run.control = 6.0;
    discard(study, 3);
    discard(study, 8);
    study.runs[3].control.reset();
    const auto result = restored(study);
    EXPECT_FALSE(result.each[0].possible);
    EXPECT_TRUE(result.each[1].possible);
}
