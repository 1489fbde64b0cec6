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
using ::testing::SizeIs;

namespace {

std::vector<Finding> changes(const TraceBuilder& trace, Limits limits = {})
{
    return findingsOf(screen(studyOf({aRun()}, std::move(limits)), Recordings().add(1, trace)),
                      Rule::accessoryChange);
}

TraceBuilder withLoad(double from_s, double to_s, double more_w)
{
    return aHealthyTrace().edit("accessory_w", from_s, to_s,
                                [=](double, double watts) { return watts + more_w; });
}

} // namespace

TEST(AccessoryChangeInTrace, SeesTheWindscreenGoOff)
{
    const auto found = changes(withLoad(96.0, 300.0, -140.0));
    ASSERT_THAT(found, SizeIs(1));
    // The level is a median over 5 s: it follows when half its window has changed.
    EXPECT_NEAR(*found[0].from_s, 96.0, 0.2);
    EXPECT_EQ(found[0].to_s, 200.0);
    EXPECT_NEAR(*found[0].value, -140.0, 6.0);
    EXPECT_LT(*found[0].value, 0.0);
    EXPECT_EQ(found[0].limit, 50.0);
    EXPECT_EQ(found[0].unit, "W");
    EXPECT_EQ(found[0].grade, Grade::spoils);
}

TEST(AccessoryChangeInTrace, LeavesASmallerStep)
{
    EXPECT_THAT(changes(withLoad(96.0, 300.0, 40.0)), IsEmpty());
}

TEST(AccessoryChangeInTrace, LeavesAnIndicatorThatBlinksForFourSeconds)
{
    EXPECT_THAT(changes(withLoad(96.0, 100.0, 140.0)), IsEmpty());
    EXPECT_THAT(changes(withLoad(96.0, 101.4, 140.0)), SizeIs(1));
}

TEST(AccessoryChangeInTrace, SeesACreep)
{
    const auto found = changes(aHealthyTrace().edit(
        "accessory_w", 0.0, 300.0, [](double t, double watts) { return watts + 0.5 * t; }));
    ASSERT_THAT(found, SizeIs(1));
    // 50 W above its median at the start, which is that of 2.5 s.
    EXPECT_NEAR(*found[0].from_s, 102.5, 6.0);
    EXPECT_NEAR(*found[0].value, 97.5, 5.0);
}

TEST(AccessoryChangeInTrace, ComparesWithWhatWasDeclared)
{
    EXPECT_THAT(changes(aHealthyTrace(), {{"accessory_change.declared_w", 140.0}}), IsEmpty());
    const auto found = changes(aHealthyTrace(), {{"accessory_change.declared_w", 120.0}});
    ASSERT_THAT(found, SizeIs(1)) << "a load that is wrong for the whole run";
    EXPECT_EQ(found[0].from_s, 0.0);
    EXPECT_EQ(found[0].to_s, 200.0);
    EXPECT_NEAR(*found[0].value, 60.0, 4.0);
}

TEST(AccessoryChangeInTrace, IgnoresTheApproachAndWhatFollows)
{
    EXPECT_THAT(changes(withLoad(-10.0, -0.1, 200.0)), IsEmpty());
    EXPECT_THAT(changes(withLoad(200.1, 300.0, 200.0)), IsEmpty());
}

TEST(AccessoryChangeInTrace, TwoDropsFarApartAreTwoEvents)
{
    EXPECT_THAT(changes(withLoad(40.0, 60.0, -140.0)
                            .edit("accessory_w", 100.0, 120.0,
                                  [](double, double watts) { return watts - 90.0; })),
                SizeIs(2));
}

TEST(AccessoryChangeInTrace, IsNotCheckedWhereTooSlowOrMissing)
{
    const auto slow = TraceBuilder(0.1, -10.0, 200.0).channel("accessory_w", [](double t) {
        return t < 100.0 ? 180.0 : 0.0;
    });
    const Screening tooSlow = screen(studyOf({aRun()}), Recordings().add(1, slow));
    EXPECT_EQ(whyNot(tooSlow, Rule::accessoryChange)->why, WhyNotChecked::recordedTooSlowly);
    const Screening missing =
        screen(studyOf({aRun()}), Recordings().add(1, aHealthyTrace().without("accessory_w")));
    EXPECT_EQ(whyNot(missing, Rule::accessoryChange)->why, WhyNotChecked::noChannel);
    EXPECT_EQ(whyNot(missing, Rule::accessoryChange)->what, "accessory_w");
}
