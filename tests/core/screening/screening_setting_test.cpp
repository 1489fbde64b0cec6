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

Screening settingScreened(const TraceBuilder& trace)
{
    return screen(studyOf({aRun().device()}), Recordings().add(1, trace));
}

std::vector<Finding> foundInSetting(Rule rule, const TraceBuilder& trace)
{
    return findingsOf(settingScreened(trace), rule);
}

} // namespace

TEST(SettingMismatch, SeesTheBladesAwayFromTheSetPoint)
{
    const auto events =
        foundInSetting(Rule::settingMismatch, aHealthyTrace().set("setting", 70.0, 74.0, 16.4));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_NEAR(*events[0].value, -1.6, 1e-9);
    EXPECT_EQ(events[0].limit, 1.0);
    EXPECT_EQ(events[0].unit, "°");
    EXPECT_NEAR(*events[0].from_s, 70.0, 1e-9);
    EXPECT_NEAR(*events[0].to_s, 74.0, 1e-9);
    EXPECT_EQ(events[0].grade, Grade::doubtful);
}

TEST(SettingMismatch, LeavesTheToleranceItselfAndAShortSwing)
{
    EXPECT_THAT(
        foundInSetting(Rule::settingMismatch, aHealthyTrace().set("setting", 70.0, 90.0, 19.0)),
        IsEmpty());
    EXPECT_THAT(
        foundInSetting(Rule::settingMismatch, aHealthyTrace().set("setting", 70.0, 71.9, 16.0)),
        IsEmpty());
}

TEST(SettingMismatch, LooksAtTheLastSecondToo)
{
    const auto events =
        foundInSetting(Rule::settingMismatch, aHealthyTrace().set("setting", 199.4, 300.0, 16.0));
    ASSERT_THAT(events, SizeIs(1)) << "0.6 s, but most of the last second";
    EXPECT_EQ(events[0].to_s, 200.0);
    EXPECT_NEAR(*events[0].value, -2.0, 1e-9);
    EXPECT_THAT(
        foundInSetting(Rule::settingMismatch, aHealthyTrace().set("setting", 199.7, 300.0, 16.0)),
        IsEmpty());
}

TEST(SettingMismatch, ASetPointHoldsUntilTheNext)
{
    auto trace = aHealthyTrace().without("setting_set");
    MemoryTrace sparse = trace.build();
    sparse.add("setting_set", "°", Samples{{0.0}, {20.0}});
    const Screening screening = screen(
        studyOf({aRun()}), [&](const core::Run&) { return std::make_unique<MemoryTrace>(sparse); });
    const auto events = findingsOf(screening, Rule::settingMismatch);
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_EQ(events[0].from_s, 0.0);
    EXPECT_EQ(events[0].to_s, 200.0);
}

TEST(SettingMismatch, NeedsBothChannels)
{
    EXPECT_EQ(
        whyNot(settingScreened(aHealthyTrace().without("setting")), Rule::settingMismatch)->what,
        "setting");
    EXPECT_EQ(whyNot(settingScreened(aHealthyTrace().without("setting_set")), Rule::settingMismatch)
                  ->what,
              "setting_set");
}

TEST(SettingChanged, SeesTheSetPointMoved)
{
    const auto events = foundInSetting(Rule::settingChanged,
                                       aHealthyTrace().set("setting_set", 150.0, 300.0, 20.0));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_EQ(events[0].value, 2.0);
    EXPECT_NEAR(*events[0].from_s, 150.0, 1e-9);
    EXPECT_EQ(events[0].to_s, 200.0);
    EXPECT_EQ(events[0].grade, Grade::spoils);
}

TEST(SettingChanged, FiresAtTheToleranceAndNotBelow)
{
    EXPECT_THAT(foundInSetting(Rule::settingChanged,
                               aHealthyTrace().set("setting_set", 150.0, 300.0, 19.0)),
                SizeIs(1));
    EXPECT_THAT(foundInSetting(Rule::settingChanged,
                               aHealthyTrace().set("setting_set", 150.0, 300.0, 18.9)),
                IsEmpty());
    EXPECT_THAT(foundInSetting(Rule::settingChanged,
                               aHealthyTrace().set("setting_set", 150.0, 150.9, 25.0)),
                IsEmpty());
}

TEST(SettingChanged, ComparesWithTheStartNotWithTheApproach)
{
    EXPECT_THAT(
        foundInSetting(Rule::settingChanged, aHealthyTrace().set("setting_set", -10.0, -0.1, 25.0)),
        IsEmpty());
}

TEST(SettingChanged, IsNotCheckedWhereRecordedTooSlowly)
{
    const auto slow = TraceBuilder(0.5, -10.0, 200.0).channel("setting_set", [](double t) {
        return t < 100.0 ? 18.0 : 25.0;
    });
    EXPECT_EQ(whyNot(settingScreened(slow), Rule::settingChanged)->why,
              WhyNotChecked::recordedTooSlowly);
}
