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
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

namespace {

Screening sensorsScreened(const TraceBuilder& trace, const core::Run& run = aRun().device())
{
    core::Run other = run;
    other.number = 2;
    other.start.us += 600'000'000;
    return screen(studyOf({run, other}), Recordings().add(1, trace).add(2, aHealthyTrace(10.0, 2)));
}

std::vector<Finding> foundInSensors(const TraceBuilder& trace,
                                    const core::Run& run = aRun().device())
{
    return findingsOf(sensorsScreened(trace, run), Rule::sensorLost);
}

core::Run fuelledFromTrace()
{
    return aRun().device().with([](auto& run) { run.consumption->from_trace = true; });
}

} // namespace

TEST(SensorLost, SeesAGap)
{
    const auto events = foundInSensors(aHealthyTrace().cut("wind_ms", 100.0, 101.5));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_NEAR(*events[0].value, 1.5, 1e-9);
    EXPECT_EQ(events[0].unit, "s");
    EXPECT_NEAR(*events[0].from_s, 100.0, 1e-9);
    EXPECT_NEAR(*events[0].to_s, 101.5, 1e-9);
    EXPECT_EQ(detailOf(events[0]), "wind_ms:gap");
    EXPECT_EQ(events[0].grade, Grade::doubtful);
    EXPECT_THAT(foundInSensors(aHealthyTrace().cut("wind_ms", 100.0, 101.0)), IsEmpty())
        << "exactly 1 s";
}

// The words of a mark are words, whatever they look like: "plug: loose" is no channel "plug".
TEST(SensorLost, BesideAMarkByHandIsOneSensor)
{
    const auto events = foundInSensors(
        aHealthyTrace().cut("wind_ms", 100.0, 101.5).mark(102.0, "sensor_lost plug: loose"));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_THAT(events[0].lost, ElementsAre(LostSensor{"wind_ms", LostSensor::How::gap}));
    EXPECT_THAT(events[0].words, ElementsAre("plug: loose"));
}

TEST(SensorLost, AllowsASlowChannelThreeOfItsIntervals)
{
    const auto slow = [](double to_s) {
        return foundInSensors(
            TraceBuilder(1.0, -10.0, 202.0)
                .channel("road_speed_kmh", [](double t) { return 90.0 + noise(t, 1); })
                .cut("road_speed_kmh", 50.0, to_s));
    };
    EXPECT_THAT(slow(53.0), IsEmpty());
    EXPECT_THAT(slow(54.0), SizeIs(1));
}

TEST(SensorLost, SeesASensorThatCameLateOrLeftEarly)
{
    const auto late = foundInSensors(aHealthyTrace().cut("wind_ms", -11.0, 20.0));
    ASSERT_THAT(late, SizeIs(1));
    EXPECT_EQ(late[0].from_s, 0.0);
    EXPECT_NEAR(*late[0].value, 20.0, 1e-9);
    const auto left = foundInSensors(aHealthyTrace().cut("wind_ms", 150.0, 300.0));
    ASSERT_THAT(left, SizeIs(1));
    EXPECT_EQ(left[0].to_s, 200.0);
    EXPECT_THAT(foundInSensors(aHealthyTrace().cutAll(150.0, 300.0)), IsEmpty())
        << "that the whole recording ends early is another rule";
}

TEST(SensorLost, ALostRecorderIsOneEvent)
{
    const auto events = foundInSensors(aHealthyTrace().cutAll(80.0, 95.0));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_NEAR(*events[0].value, 15.0, 1e-9);
    EXPECT_THAT(detailOf(events[0]), ::testing::HasSubstr("wind_ms:gap"));
    EXPECT_THAT(detailOf(events[0]), ::testing::HasSubstr("road_speed_kmh:gap"));
}

TEST(SensorLost, SeesAFrozenValue)
{
    const auto frozen = [](double to_s) {
        return foundInSensors(aHealthyTrace().set("output_w", 100.0, to_s, 604.5));
    };
    ASSERT_THAT(frozen(105.0), SizeIs(1));
    EXPECT_NEAR(*frozen(105.0)[0].value, 5.0, 1e-9);
    EXPECT_EQ(frozen(105.0)[0].limit, 5.0);
    EXPECT_EQ(detailOf(frozen(105.0)[0]), "output_w:frozen");
    EXPECT_THAT(frozen(104.9), IsEmpty());
}

TEST(SensorLost, LeavesWhatMayStandStill)
{
    EXPECT_THAT(foundInSensors(aHealthyTrace().set("output_w", 100.0, 120.0, 0.0)), IsEmpty())
        << "a true zero";
    EXPECT_THAT(foundInSensors(aHealthyTrace().channel(
                    "setting_set", [](double t) { return 18.0 + std::floor(t / 8.0); })),
                IsEmpty())
        << "a set point";
    EXPECT_THAT(foundInSensors(aHealthyTrace().channel(
                    "gear", [](double t) { return 4.0 + std::fmod(std::floor(t / 20.0), 3.0); })),
                IsEmpty())
        << "fewer than 20 values in the run";
    EXPECT_THAT(foundInSensors(aHealthyTrace()
                                   .set("output_w", 100.0, 120.0, 604.5)
                                   .set("road_speed_kmh", 100.0, 120.0, 90.0)),
                IsEmpty())
        << "road speed does not move either";
    EXPECT_THAT(foundInSensors(aHealthyTrace().channel(
                    "fuel_used_l", [](double t) { return 0.01 * std::floor(t / 5.5) + 1.0; })),
                IsEmpty())
        << "a counter whose steps are coarse";
}

TEST(SensorLost, LeavesTheDistanceOfAVehicleThatStands)
{
    // Rolls to a halt and off again: for a moment either side the counter stands and speed moves.
    const auto halt = [](double kmh) {
        return foundInSensors(aHealthyTrace()
                                  .edit("road_speed_kmh", 80.0, 120.0,
                                        [=](double t, double) {
                                            return t > 82.0 && t < 118.0 ? kmh
                                                                         : kmh + 4.0 + noise(t, 1);
                                        })
                                  .set("distance_m", 80.0, 120.0, 2300.0));
    };
    EXPECT_THAT(halt(0.0), IsEmpty());
    EXPECT_THAT(foundInSensors(aHealthyTrace().set("distance_m", 80.0, 120.0, 2300.0)), SizeIs(1));
}

TEST(SensorLost, SeesAFreezeOfFiveSecondsBesideASpeedOfOneSampleASecond)
{
    // No sample of the speed falls on either end of the freeze: those within are 4 s apart.
    const auto beside = [](const TraceBuilder& trace, double step_kmh) {
        MemoryTrace all = trace.build();
        const MemoryTrace slow =
            TraceBuilder(1.0)
                .channel("road_speed_kmh",
                         [=](double t) {
                             return 90.0 + step_kmh * std::round(0.6 * noise(t, 2) / step_kmh);
                         })
                .build();
        all.add("road_speed_kmh", "km/h", *slow.samples("road_speed_kmh"));
        const Study study = studyOf({aRun().device()});
        return findingsOf(
            screen(study, [&](const core::Run&) { return std::make_unique<MemoryTrace>(all); }),
            Rule::sensorLost);
    };
    const auto frozen = [](double to_s) {
        return aHealthyTrace().without("road_speed_kmh").set("output_w", 100.4, to_s, 604.5);
    };
    EXPECT_THAT(beside(frozen(105.4), 0.1), SizeIs(1));
    EXPECT_THAT(beside(frozen(105.3), 0.1), IsEmpty());
}

TEST(SensorLost, SeesAFreezeBesideASpeedInWholeNumbersThatIsHeldWell)
{
    // 90 and 91 km/h by turns, 7 s each: that is how this speed moves.
    const auto speed = [](double t) { return 90.0 + std::fmod(std::floor(t / 7.0), 2.0); };
    EXPECT_THAT(
        foundInSensors(
            aHealthyTrace().channel("road_speed_kmh", speed).set("output_w", 100.0, 130.0, 604.5)),
        SizeIs(1));
    EXPECT_THAT(
        foundInSensors(aHealthyTrace()
                           .channel("road_speed_kmh",
                                    [=](double t) { return t < 95 || t > 130 ? speed(t) : 0.0; })
                           .set("distance_m", 94.0, 131.0, 2300.0)),
        IsEmpty())
        << "a halt is none of it";
}

TEST(SensorLost, SeesASensorThatLeftOneSampleInTheRun)
{
    const auto events = foundInSensors(aHealthyTrace().cut("wind_ms", 0.0, 300.0));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_EQ(events[0].from_s, 0.0);
    EXPECT_EQ(events[0].to_s, 200.0);
    EXPECT_EQ(detailOf(events[0]), "wind_ms:gap");
}

TEST(SensorLost, SeesADeviceThatGivesPowerWithoutTurning)
{
    const auto stopped = [](double to_s, double watts) {
        return foundInSensors(aHealthyTrace()
                                  .set("rotor_rpm", 100.0, to_s, 0.0)
                                  .edit("output_w", 100.0, to_s, [=](double t, double) {
                                      return watts + 0.01 * noise(t, 1);
                                  }));
    };
    ASSERT_THAT(stopped(102.0, 500.0), SizeIs(1));
    EXPECT_EQ(detailOf(stopped(102.0, 500.0)[0]), "rotor_rpm:zero");
    EXPECT_NEAR(*stopped(102.0, 500.0)[0].value, 2.0, 1e-9);
    EXPECT_THAT(stopped(101.9, 500.0), IsEmpty());
    EXPECT_THAT(stopped(110.0, 25.0), IsEmpty()) << "5 % of 600 W is 30 W";
}

TEST(SensorLost, SpoilsTheRunWhoseConsumptionCameFromIt)
{
    const auto lost = aHealthyTrace().cut("fuel_rate_l_per_h", 100.0, 110.0);
    EXPECT_EQ(foundInSensors(lost)[0].grade, Grade::doubtful) << "consumption was typed";
    EXPECT_EQ(foundInSensors(lost, fuelledFromTrace())[0].grade, Grade::spoils);
    auto counter = aHealthyTrace()
                       .channel("fuel_used_l", [](double t) { return 2.0 + 0.002 * t; })
                       .cut("fuel_rate_l_per_h", 100.0, 110.0);
    EXPECT_EQ(foundInSensors(counter, fuelledFromTrace())[0].grade, Grade::doubtful)
        << "the counter gave it, not the rate";
    EXPECT_EQ(
        foundInSensors(aHealthyTrace().cut("wind_ms", 100.0, 110.0), fuelledFromTrace())[0].grade,
        Grade::doubtful);
}

TEST(SensorLost, SeesAChannelThatIsEmptyForTheWholeRun)
{
    const auto events = foundInSensors(aHealthyTrace().cut("wind_ms", -20.0, 300.0));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_EQ(events[0].from_s, 0.0);
    EXPECT_EQ(events[0].to_s, 200.0);
    EXPECT_THAT(foundInSensors(aHealthyTrace()
                                   .channel("spare", [](double) { return 1.0; })
                                   .cut("spare", -20.0, 300.0)),
                IsEmpty())
        << "no run has it";
}

TEST(SensorLost, NotANumberIsNoSample)
{
    const double nan = std::nan("");
    const auto events = foundInSensors(aHealthyTrace().set("wind_ms", 100.1, 109.9, nan));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_NEAR(*events[0].value, 10.0, 1e-9);
    for (const std::string& name : aHealthyTrace().names())
        for (const Finding& finding :
             sensorsScreened(aHealthyTrace().set(name, 10, 190, nan)).findings)
            EXPECT_TRUE(!finding.value || std::isfinite(*finding.value)) << name;
}

TEST(SensorLost, SaysWhereItCannotLookForFrozenValues)
{
    EXPECT_EQ(
        whyNot(sensorsScreened(aHealthyTrace().without("road_speed_kmh")), Rule::sensorLost)->what,
        "road_speed_kmh");
}

TEST(TraceEndsEarly, NotesAFullMemoryCard)
{
    const auto ending = [](double to_s) {
        return findingsOf(sensorsScreened(aHealthyTrace().cutAll(to_s, 300.0)),
                          Rule::traceEndsEarly);
    };
    EXPECT_THAT(ending(198.0), IsEmpty());
    ASSERT_THAT(ending(197.9), SizeIs(1));
    EXPECT_NEAR(*ending(197.9)[0].value, 2.1, 1e-9);
    EXPECT_NEAR(*ending(197.9)[0].from_s, 197.9, 1e-9);
    EXPECT_EQ(ending(197.9)[0].to_s, 200.0);
    EXPECT_EQ(ending(197.9)[0].grade, Grade::note);
    core::Run endless = aRun();
    endless.duration_s.reset();
    EXPECT_EQ(whyNot(sensorsScreened(aHealthyTrace(), endless), Rule::traceEndsEarly)->what,
              "duration_s");
}
