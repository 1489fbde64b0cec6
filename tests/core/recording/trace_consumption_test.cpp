// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/trace_consumption.h"

#include "tests/core/recording/trace_builders.h"
#include "tests/core/screening/screening_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways::core;
using namespace bothways::core::tests;
using ::testing::ElementsAre;

namespace {

/// 7.2 L/h at 25 m/s: 8 L/100 km, exactly.
TraceBuilder steady()
{
    return TraceBuilder()
        .channel("fuel_rate_l_per_h", [](double) { return 7.2; })
        .channel("distance_m", [](double t) { return 25.0 * t; });
}

Run withoutConsumption(int number, std::optional<double> distance_km = std::nullopt)
{
    return aRun(number).with([&](Run& run) {
        run.consumption.reset();
        run.distance_km = distance_km;
        run.trace = "r.csv";
    });
}

} // namespace

TEST(TraceConsumption, IsFuelOverDistanceOfTheRecording)
{
    const auto taken = consumptionFromTrace(withoutConsumption(1), steady().build());
    ASSERT_TRUE(taken);
    EXPECT_NEAR(taken->value, 8.0, 8.0 * 1e-12);
    EXPECT_EQ(taken->unit, ConsumptionUnit::lPer100km);
    EXPECT_TRUE(taken->from_trace);
}

TEST(TraceConsumption, TakesTheRunsOwnDistanceFirst)
{
    const auto taken = consumptionFromTrace(withoutConsumption(1, 4.0), steady().build());
    ASSERT_TRUE(taken);
    EXPECT_NEAR(taken->value, 10.0, 10.0 * 1e-12) << "0.4 L over 4 km";
}

TEST(TraceConsumption, OfAnElectricVehicleIsInKilowattHours)
{
    const auto taken = consumptionFromTrace(
        withoutConsumption(1, 5.0),
        TraceBuilder().channel("power_kw", [](double) { return 18.0; }).build());
    ASSERT_TRUE(taken);
    EXPECT_EQ(taken->unit, ConsumptionUnit::kwhPer100km);
    EXPECT_NEAR(taken->value, 20.0, 20.0 * 1e-12) << "18 kW for 200 s over 5 km";
}

TEST(TraceConsumption, IsNotMadeUpWhereTheRecordingDoesNotSay)
{
    EXPECT_FALSE(
        consumptionFromTrace(withoutConsumption(1), steady().without("fuel_rate_l_per_h").build()));
    EXPECT_FALSE(
        consumptionFromTrace(withoutConsumption(1), steady().without("distance_m").build()));
    EXPECT_FALSE(consumptionFromTrace(withoutConsumption(1),
                                      steady().set("fuel_rate_l_per_h", -10, 300, 0.0).build()))
        << "no fuel at all is a dead sensor, not a consumption";
    EXPECT_FALSE(consumptionFromTrace(withoutConsumption(1), MemoryTrace()));
}

TEST(TraceConsumption, FillsWhatIsEmptyAndSaysWhatStaysSo)
{
    Study study =
        studyOf({aRun(1), withoutConsumption(2), withoutConsumption(3), withoutConsumption(4)});
    study.runs[3].discard = Discard{"sensor_lost", ""};
    const Recordings recordings = Recordings().add(1, steady()).add(2, steady()).add(4, steady());
    const ConsumptionTaken result = takeConsumptionFromTraces(study, recordings);
    EXPECT_THAT(result.taken, ElementsAre(2));
    EXPECT_THAT(result.lacking, ElementsAre(3));
    EXPECT_FALSE(study.runs[0].consumption->from_trace) << "what was typed stays";
    EXPECT_TRUE(study.runs[1].consumption->from_trace);
    EXPECT_FALSE(study.runs[3].consumption) << "discarded runs stay as they were";
    EXPECT_THAT(takeConsumptionFromTraces(study, {}).lacking, ElementsAre(3));
}
