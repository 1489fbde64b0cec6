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

Screening roadScreened(const TraceBuilder& trace, Limits limits = allLimitsSet())
{
    return screen(studyOf({aRun()}, std::move(limits)), Recordings().add(1, trace));
}

std::vector<Finding> foundOnRoad(Rule rule, const TraceBuilder& trace)
{
    return findingsOf(roadScreened(trace), rule);
}

TraceBuilder atSpeed(double from_s, double to_s, double kmh)
{
    return aHealthyTrace().set("road_speed_kmh", from_s, to_s, kmh);
}

} // namespace

TEST(RoadSpeed, SeesASpellOffTheTarget)
{
    const auto events = foundOnRoad(Rule::roadSpeed, atSpeed(100.0, 104.0, 84.0));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_NEAR(*events[0].value, -100.0 * 6.0 / 90.0, 1e-9);
    EXPECT_EQ(events[0].limit, 5.0);
    EXPECT_NEAR(*events[0].from_s, 100.0, 1e-9);
    EXPECT_NEAR(*events[0].to_s, 104.0, 1e-9);
    EXPECT_EQ(events[0].grade, Grade::doubtful);
}

TEST(RoadSpeed, LeavesFivePerCentAndTwoSeconds)
{
    EXPECT_THAT(foundOnRoad(Rule::roadSpeed, atSpeed(100.0, 110.0, 94.5)), IsEmpty());
    EXPECT_THAT(foundOnRoad(Rule::roadSpeed, atSpeed(100.0, 110.0, 85.5)), IsEmpty());
    EXPECT_THAT(foundOnRoad(Rule::roadSpeed, atSpeed(100.0, 102.9, 80.0)), IsEmpty());
}

TEST(RoadSpeed, SeesAMeanThatIsOff)
{
    const auto slower = [](double kmh) {
        return foundOnRoad(Rule::roadSpeed,
                           aHealthyTrace().edit("road_speed_kmh", -10.0, 300.0,
                                                [=](double, double v) { return v - kmh; }));
    };
    EXPECT_THAT(slower(1.7), IsEmpty());
    ASSERT_THAT(slower(2.0), SizeIs(1));
    EXPECT_NEAR(*slower(2.0)[0].value, -2.22, 0.05);
    EXPECT_EQ(slower(2.0)[0].limit, 2.0);
    EXPECT_EQ(slower(2.0)[0].from_s, 0.0);
    EXPECT_EQ(slower(2.0)[0].to_s, 200.0);
    EXPECT_THAT(slower(9.0), SizeIs(1)) << "the whole run is one event";
}

TEST(RoadSpeed, NeedsATarget)
{
    const Screening aimless = roadScreened(aHealthyTrace(), {});
    for (const Rule rule : {Rule::roadSpeed, Rule::interrupted, Rule::notCruising}) {
        EXPECT_EQ(whyNot(aimless, rule)->why, WhyNotChecked::noLimit) << ruleName(rule);
        EXPECT_EQ(whyNot(aimless, rule)->what, "road_speed.target_kmh");
    }
    const Screening blind = roadScreened(aHealthyTrace().without("road_speed_kmh"));
    EXPECT_EQ(whyNot(blind, Rule::interrupted)->what, "road_speed_kmh");
}

TEST(Interrupted, SeesTheStopAtTheRoadworks)
{
    const auto events = foundOnRoad(Rule::interrupted, atSpeed(60.0, 75.0, 0.0));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_EQ(events[0].value, 0.0);
    EXPECT_DOUBLE_EQ(*events[0].limit, 27.0);
    EXPECT_EQ(events[0].unit, "km/h");
    EXPECT_EQ(events[0].grade, Grade::spoils);
}

TEST(Interrupted, LeavesThirtyPerCentAndASecond)
{
    EXPECT_THAT(foundOnRoad(Rule::interrupted, atSpeed(60.0, 75.0, 27.0)), IsEmpty());
    EXPECT_THAT(foundOnRoad(Rule::interrupted, atSpeed(60.0, 61.9, 10.0)), IsEmpty());
    EXPECT_THAT(foundOnRoad(Rule::interrupted, atSpeed(60.0, 62.0, 26.9)), SizeIs(1));
    EXPECT_THAT(foundOnRoad(Rule::interrupted, atSpeed(-10.0, -1.0, 0.0)), IsEmpty())
        << "standing before the run is the approach";
}

TEST(NotCruising, SeesCountingBegunTooEarly)
{
    // Still accelerating: 80 km/h at 0 s, at 90 from 10 s on.
    const auto events = foundOnRoad(
        Rule::notCruising, aHealthyTrace().edit("road_speed_kmh", -10.0, 10.0,
                                                [](double t, double) { return 80.0 + t; }));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_NEAR(*events[0].value, -100.0 / 9.0, 1e-6);
    EXPECT_EQ(events[0].limit, 3.0);
    EXPECT_EQ(events[0].from_s, 0.0);
    EXPECT_NEAR(*events[0].to_s, 7.3, 1e-9) << "the first sample within 3 % is 87.3 km/h";
    EXPECT_EQ(events[0].grade, Grade::spoils);
}

TEST(NotCruising, LeavesWhatWasOverFiveSecondsBefore)
{
    EXPECT_THAT(foundOnRoad(Rule::notCruising, atSpeed(-10.0, -5.1, 60.0)), IsEmpty());
    EXPECT_THAT(foundOnRoad(Rule::notCruising, atSpeed(-10.0, -4.1, 60.0)), IsEmpty());
    EXPECT_THAT(foundOnRoad(Rule::notCruising, atSpeed(-10.0, -4.0, 60.0)), SizeIs(1));
    EXPECT_THAT(foundOnRoad(Rule::notCruising, atSpeed(-10.0, 0.0, 87.3)), IsEmpty());
}

TEST(NotCruising, LooksAtTheStartWhereThereIsNoApproach)
{
    const auto withoutApproach = [](double kmh, double to_s) {
        return findingsOf(
            roadScreened(TraceBuilder(10.0, 0.0, 200.0)
                             .channel("road_speed_kmh",
                                      [=](double t) { return t <= to_s + 1e-9 ? kmh : 90.0; })),
            Rule::notCruising);
    };
    ASSERT_THAT(withoutApproach(80.0, 3.0), SizeIs(1));
    EXPECT_NEAR(*withoutApproach(80.0, 3.0)[0].value, -100.0 / 9.0, 1e-6);
    EXPECT_NEAR(*withoutApproach(80.0, 3.0)[0].to_s, 3.1, 1e-9);
    EXPECT_THAT(withoutApproach(80.0, 0.9), IsEmpty());
    const auto later = findingsOf(
        roadScreened(TraceBuilder(10.0, 0.0, 200.0)
                         .channel("road_speed_kmh",
                                  [](double t) { return t > 1.05 && t < 3.05 ? 80.0 : 90.0; })),
        Rule::notCruising);
    ASSERT_THAT(later, SizeIs(1)) << "off within the start, though not at 0 s";
    EXPECT_EQ(later[0].from_s, 0.0);
    EXPECT_NEAR(*later[0].to_s, 3.1, 1e-9) << "the span holds what was off";
    EXPECT_NEAR(*later[0].value, 0.0, 1e-9);
    EXPECT_THAT(withoutApproach(88.0, 3.0), IsEmpty());
    EXPECT_THAT(foundOnRoad(Rule::notCruising, atSpeed(0.1, 4.0, 80.0)), IsEmpty())
        << "with an approach the start is judged by road_speed";
}

TEST(StretchFromTrace, TakesDistanceThenSpeedThenPositions)
{
    auto longer = aHealthyTrace().channel("distance_m", [](double t) { return 25.6 * t; });
    ASSERT_THAT(foundOnRoad(Rule::stretch, longer), SizeIs(1));
    EXPECT_NEAR(*foundOnRoad(Rule::stretch, longer)[0].value, 2.4, 1e-9);
    EXPECT_THAT(foundOnRoad(Rule::stretch, aHealthyTrace().without("distance_m")), IsEmpty());
    auto faster = aHealthyTrace().without("distance_m").channel("road_speed_kmh", [](double) {
        return 92.0;
    });
    EXPECT_THAT(foundOnRoad(Rule::stretch, faster), SizeIs(1));
    // 200 s due north at 51.5 degrees: 111 250 m a degree, in 0.045 degrees 5.006 km.
    const auto north = [](double degrees) {
        return TraceBuilder()
            .channel("lat_deg", [=](double t) { return 51.5 + degrees * t / 200.0; })
            .channel("lon_deg", [](double) { return -0.1; });
    };
    EXPECT_THAT(foundOnRoad(Rule::stretch, north(0.045)), IsEmpty());
    EXPECT_THAT(foundOnRoad(Rule::stretch, north(0.046)), SizeIs(1));
    EXPECT_EQ(whyNot(roadScreened(TraceBuilder().channel("wind_ms", [](double) { return 1.0; })),
                     Rule::stretch)
                  ->what,
              "distance_m");
}

TEST(StretchFromTrace, TheSheetsDistanceComesFirst)
{
    const Study study =
        studyOf({aRun().with([](auto& run) { run.distance_km = 5.0; })}, allLimitsSet());
    const auto longer = aHealthyTrace().channel("distance_m", [](double t) { return 28.0 * t; });
    EXPECT_THAT(findingsOf(screen(study, Recordings().add(1, longer)), Rule::stretch), IsEmpty());
}
