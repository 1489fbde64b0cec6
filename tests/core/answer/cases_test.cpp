// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answer/analyse.h"
#include "core/effect/answer.h"
#include "core/study/units.h"
#include "tests/support/plain_sheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

// Invented run sheets, each of which once got a wrong answer (tests/published/data/cases; what they
// saw is in SOURCES.md there).

using namespace bothways;

namespace {

core::Study sheet(const std::string& name)
{
    return tests::PlainSheet::read(BOTHWAYS_SOURCE_DIR "/tests/published/data/cases/" + name +
                                   ".csv");
}

} // namespace

TEST(Cases, AnOpenDayBesideClosedOnesBringsItsDriftAlongNoMore)
{
    const core::Analysis answer = core::analyse(sheet("closed_and_open_day"), {});
    ASSERT_TRUE(answer.headline);
    EXPECT_EQ(answer.design, core::Design::closed);
    EXPECT_NE(answer.verdict.cls, core::VerdictClass::more); // was: more, p = 0.0007
    // By normal equations over the three days' intercepts and slopes, elsewhere (Python).
    EXPECT_EQ(answer.headline->df, 17.0);
    EXPECT_NEAR(answer.headline->effect_log, -0.004040304332625236, 1e-12);
    EXPECT_NEAR(answer.headline->t, -2.6510665581701978, 1e-8);
}

TEST(Cases, ADayThatCouldHaveShownTheMarginIsWorthDrivingOnceMore)
{
    const core::Analysis answer = core::analyse(sheet("could_have_shown"), {});
    EXPECT_EQ(answer.verdict.cls, core::VerdictClass::undecided);
    EXPECT_EQ(answer.verdict.more_pairs_per_block, 0);
    EXPECT_LE(core::pctFromLog(answer.detectable->log), 1.0);
}

TEST(Cases, ADiscardedRunOfTheEveningBeforeTakesNothingFromTheDay)
{
    core::Study study = sheet("evening_before");
    const core::Analysis with = core::analyse(study, {});
    std::erase_if(study.runs, [](const core::Run& run) { return !run.counted(); });
    const core::Analysis without = core::analyse(study, {});
    ASSERT_TRUE(with.headline && with.headline->drift_log_per_h);
    EXPECT_NEAR(core::pctFromLog(*with.headline->drift_log_per_h), -0.247, 0.0005);
    EXPECT_NEAR(*with.headline->drift_log_per_h, *without.headline->drift_log_per_h, 1e-12);
    EXPECT_NEAR(with.headline->effect_log, without.headline->effect_log, 1e-12);
    EXPECT_NEAR(with.companions.runs->low_log, without.companions.runs->low_log, 1e-12);
    EXPECT_EQ(with.days, 2); // both were driven
}

TEST(Cases, ACalmWindThatBlowsFromElsewhereEachDayIsNotTurning)
{
    const core::Analysis answer = core::analyse(sheet("wind_by_day"), {});
    EXPECT_EQ(answer.checks.direction.state, core::CheckState::holds); // was: fails, p = 1e-15
    EXPECT_NE(answer.checks.ways.state, core::CheckState::notComputed);
}

TEST(Cases, DaysThatDisagreeAreToldApart)
{
    const core::Analysis answer = core::analyse(sheet("effect_by_day"), {});
    EXPECT_EQ(answer.checks.days.state, core::CheckState::fails);
    EXPECT_EQ(answer.companions.days.size(), 3U);
    EXPECT_THAT(answer.verdict.qualifiers, testing::Contains(core::Qualifier::assumptions));
}

TEST(Cases, TotalsAloneDoNotFulfilAPlan)
{
    core::Study study = sheet("plan_evaded");
    study.properties.plan = core::PlannedStudy{"ABA", 4, 1.0, 0.95};
    EXPECT_THAT(core::analyse(study, {}).verdict.qualifiers,
                testing::Contains(core::Qualifier::interim));
}

TEST(Cases, AnOpenStudyAloneKeepsItsModelWithoutSlopes)
{
    const core::Analysis answer = core::analyse(sheet("open_alone"), {});
    ASSERT_TRUE(answer.headline);
    EXPECT_EQ(answer.design, core::Design::open);
    EXPECT_EQ(answer.headline->df, static_cast<double>(answer.pairs.size()) - 2.0);
}
