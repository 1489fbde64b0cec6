// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/screening.h"
#include "tests/core/recording/trace_builders.h"
#include "tests/core/screening/screening_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using namespace bothways::core;
using namespace bothways::core::tests;
using ::testing::IsEmpty;

TEST(Screening, FindsNothingInHealthyRuns)
{
    std::vector<core::Run> runs;
    Recordings recordings;
    for (int number = 1; number <= 6; ++number) {
        runs.push_back(aRun(number).device());
        recordings.add(number, aHealthyTrace(10.0, static_cast<unsigned>(number)));
    }
    const Screening screening = screen(studyOf(runs, allLimitsSet()), recordings);
    EXPECT_THAT(screening.findings, IsEmpty());
    for (const NotChecked& skipped : screening.not_checked)
        EXPECT_THAT(skipped.rule,
                    ::testing::AnyOf(Rule::accessoryTimer, Rule::batteryBalance, Rule::warmingUp));
    EXPECT_FALSE(screening.pattern);
}

TEST(Screening, SaysHowFarItIsAndStopsWhenAsked)
{
    const Study study = studyOf({aRun(1), aRun(2)});
    Recordings recordings;
    recordings.add(1, aHealthyTrace()).add(2, aHealthyTrace().set("rotor_rpm", 50.0, 60.0, 0.0));
    std::vector<double> shares;
    (void)screen(study, recordings, [&](double share) { shares.push_back(share); });
    EXPECT_THAT(shares, ::testing::ElementsAre(0.25, 0.5, 0.75, 1.0));
    std::stop_source stop;
    const Screening stopped = screen(
        study, recordings,
        [&](double share) {
            if (share >= 0.75)
                stop.request_stop();
        },
        stop.get_token());
    EXPECT_FALSE(whyNot(stopped, Rule::batteryBalance, 2)) << "run 2 was not reached";
    EXPECT_TRUE(whyNot(stopped, Rule::batteryBalance, 1));
}
