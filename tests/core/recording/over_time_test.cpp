// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/over_time.h"

#include "core/recording/counter_fall.h"
#include "core/recording/trace.h"
#include "core/recording/trace_totals.h"
#include "core/screening/screening.h"
#include "core/statistics/robust.h"
#include "tests/core/screening/screening_builders.h"

#include <gmock/gmock.h>

namespace bothways::core {
namespace {

using rules::Channel;
using rules::RunChannels;
using testing::IsEmpty;
using testing::SizeIs;
using tests::aRun;
using tests::studyOf;

MemoryTrace traceOf(const std::string& channel, std::vector<double> times,
                    std::vector<double> values)
{
    MemoryTrace trace;
    trace.add(channel, "", {SampleTimes(std::move(times)), std::move(values)});
    return trace;
}

/// 90 km/h for 150 s, a sample a second, then 100 km/h for 10 s at ten a second.
MemoryTrace fasterWhileFast()
{
    std::vector<double> times, values;
    for (int i = 0; i <= 150; ++i) {
        times.push_back(i);
        values.push_back(90.0);
    }
    for (int i = 1; i <= 100; ++i) {
        times.push_back(150.0 + i / 10.0);
        values.push_back(100.0);
    }
    return traceOf("road_speed_kmh", std::move(times), std::move(values));
}

TEST(OverTime, AMeanWeighsSamplesByTheTimeThatTheyStandFor)
{
    const MemoryTrace trace = fasterWhileFast();
    RunChannels channels(&trace, 160.0);
    const Channel& speed = *channels.find("road_speed_kmh");
    // 149.5 s and half a step at 90, the rest at 100: the trapezoid rule by hand.
    EXPECT_NEAR(rules::meanOverTime(speed), (150.0 * 90.0 + 0.1 * 95.0 + 9.9 * 100.0) / 160.0,
                1e-9);
    EXPECT_EQ(rules::medianOverTime(speed), 90.0);
    EXPECT_FALSE(rules::isEven(speed));
}

TEST(OverTime, AGapLongerThanALostSensorIsLeftOut)
{
    // 50 s at 90, nothing for 100 s, 50 s at 80: neither the gap's line nor its length counts.
    std::vector<double> times, values;
    for (int i = 0; i <= 50; ++i) {
        times.push_back(i);
        values.push_back(90.0);
    }
    for (int i = 150; i <= 200; ++i) {
        times.push_back(i);
        values.push_back(80.0);
    }
    const MemoryTrace trace = traceOf("road_speed_kmh", std::move(times), std::move(values));
    RunChannels channels(&trace, 200.0);
    EXPECT_NEAR(rules::meanOverTime(*channels.find("road_speed_kmh")), 85.0, 1e-9);
}

TEST(OverTime, AtAnEvenPaceAMedianIsTheSamplesOwn)
{
    const MemoryTrace trace = traceOf("wind_ms", {0, 1, 2, 3}, {4.0, 1.0, 2.0, 9.0});
    RunChannels channels(&trace, 3.0);
    EXPECT_EQ(rules::medianOverTime(*channels.find("wind_ms")), 3.0);
}

TEST(OverTime, OneSampleIsItsOwnMeanAndMedian)
{
    const MemoryTrace trace = traceOf("wind_ms", {5.0}, {7.0});
    RunChannels channels(&trace, 10.0);
    EXPECT_EQ(rules::meanOverTime(*channels.find("wind_ms")), 7.0);
    EXPECT_EQ(rules::medianOverTime(*channels.find("wind_ms")), 7.0);
}

TEST(OverTime, RoadSpeedIsNoFindingBecauseTheLoggerWasFasterForAWhile)
{
    const Study study = studyOf({aRun().with([](core::Run& run) { run.duration_s = 160.0; })},
                                {{"road_speed.target_kmh", 90.0}, {"road_speed.pct", 50.0}});
    const Screening found = screen(
        study, [](const core::Run&) { return std::make_unique<MemoryTrace>(fasterWhileFast()); });
    EXPECT_THAT(tests::findingsOf(found, Rule::roadSpeed), IsEmpty());
}

TEST(ClockJumps, ByYearsCostNothing)
{
    // Every third sample a century later: no array may be as long as the time.
    std::vector<double> times, values;
    for (int i = 0; i < 300; ++i) {
        times.push_back(0.5 * i + 3.0e9 * (i / 100));
        values.push_back(90.0 + i % 3);
    }
    times.push_back(1e17);
    times.push_back(4e17);
    values.insert(values.end(), {90.0, 90.0});
    const MemoryTrace trace = traceOf("road_speed_kmh", std::move(times), std::move(values));
    RunChannels channels(&trace, std::nullopt);
    const Channel& speed = *channels.find("road_speed_kmh");
    EXPECT_LE(channels.momentsOf(speed).size(), 2 * speed.size() + 2);
    const Study study = studyOf({aRun().with([](core::Run& run) { run.duration_s.reset(); })},
                                {{"road_speed.target_kmh", 90.0}});
    const Screening found =
        screen(study, [&](const core::Run&) { return std::make_unique<MemoryTrace>(trace); });
    EXPECT_THAT(tests::findingsOf(found, Rule::sensorLost), testing::Not(IsEmpty()));
}

TEST(Counters, HaveTheStepOfWhichAllTheirChangesAreMultiples)
{
    EXPECT_NEAR(resolutionOf(std::vector<double>{10.5, 11.0, 12.5}), 0.5, 1e-12);
    EXPECT_NEAR(resolutionOf(std::vector<double>{0.0, 0.00175, 0.00349}), 1e-5, 1e-12);
    EXPECT_EQ(resolutionOf(std::vector<double>{3.0, 3.0}), 0.0);
}

TEST(Counters, MayGoBackOneStepButNotMore)
{
    EXPECT_FALSE(fallOf(std::vector<double>{1.0, 1.5, 1.0, 2.0})) << "one step of 0.5";
    const auto two = fallOf(std::vector<double>{1.0, 1.5, 2.0, 1.0, 2.5});
    ASSERT_TRUE(two);
    EXPECT_EQ(two->highest, 2U);
    EXPECT_EQ(two->lowest, 3U);
    EXPECT_NEAR(two->fall, 1.0, 1e-12);
    // Back in single steps is back, too.
    EXPECT_TRUE(fallOf(std::vector<double>{1.0, 1.5, 2.0, 1.5, 1.0, 2.5}));
    // Of a counter as fine as this, the smallest fall that can be told is two steps.
    EXPECT_TRUE(fallOf(std::vector<double>{0.0, 0.00175, 0.00351, 0.00349, 0.00524}));
    EXPECT_FALSE(fallOf(std::vector<double>{0.0, 0.00175, 0.00351, 0.00350, 0.00524}));
}

/// 0.175 L in each half of the run, reset in between.
MemoryTrace resetInside(const std::string& channel)
{
    std::vector<double> times, values;
    for (int i = 0; i <= 200; ++i) {
        times.push_back(i);
        values.push_back(0.00175 * (i < 100 ? i : i - 100));
    }
    return traceOf(channel, std::move(times), std::move(values));
}

TEST(Counters, ThatWereResetInsideTheRunGiveNoConsumptionAndSpoilIt)
{
    for (const auto& [channel, unit] :
         {std::pair{"fuel_used_l", "L"}, std::pair{"energy_used_kwh", "kWh"}}) {
        const MemoryTrace trace = resetInside(channel);
        EXPECT_FALSE(fuelFromTrace(trace, 200.0));
        const Screening found = screen(studyOf({aRun()}), [&](const core::Run&) {
            return std::make_unique<MemoryTrace>(trace);
        });
        const auto lost = tests::findingsOf(found, Rule::sensorLost);
        ASSERT_THAT(lost, SizeIs(1));
        EXPECT_EQ(lost[0].grade, Grade::spoils);
        EXPECT_NEAR(*lost[0].value, 0.17325, 1e-9);
        EXPECT_EQ(lost[0].unit, unit);
        EXPECT_EQ(lost[0].from_s, 99.0);
        EXPECT_EQ(lost[0].to_s, 100.0);
        EXPECT_EQ(lost[0].lost.front().how, LostSensor::How::fell);
    }
}

TEST(Counters, ThatWereResetBeforeTheRunDoNotMatter)
{
    const MemoryTrace trace = resetInside("fuel_used_l");
    MemoryTrace shifted;
    const auto samples = trace.samples("fuel_used_l");
    std::vector<double> times(samples->time_s.begin(), samples->time_s.end());
    for (double& time : times)
        time -= 100.0; // reset at 0 s
    shifted.add("fuel_used_l", "L", {SampleTimes(std::move(times)), samples->value});
    const auto fuel = fuelFromTrace(shifted, 100.0);
    ASSERT_TRUE(fuel);
    EXPECT_NEAR(fuel->fuel_l, 0.175, 1e-9);
}

} // namespace
} // namespace bothways::core
