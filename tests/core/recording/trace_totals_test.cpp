// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/trace_totals.h"
#include "tests/core/recording/trace_builders.h"
#include "tests/core/screening/screening_builders.h"

#include <gtest/gtest.h>

using namespace bothways::core;
using namespace bothways::core::tests;

namespace {

MemoryTrace only(const std::string& name, std::vector<double> times, std::vector<double> values)
{
    MemoryTrace trace;
    trace.add(name, "", Samples{SampleTimes(std::move(times)), std::move(values)});
    return trace;
}

} // namespace

TEST(FuelFromTrace, IntegratesARateByTrapezoids)
{
    // From 6 to 10 L/h over an hour: 8 L, though only four samples were taken.
    const auto fuel = fuelFromTrace(
        only("fuel_rate_l_per_h", {0.0, 900.0, 2700.0, 3600.0}, {6.0, 7.0, 9.0, 10.0}), 3600.0);
    ASSERT_TRUE(fuel);
    EXPECT_NEAR(fuel->fuel_l, 8.0, 1e-12);
    EXPECT_EQ(fuel->channel, "fuel_rate_l_per_h");
}

TEST(FuelFromTrace, InterpolatesToTheRunsEnds)
{
    // A straight rise of 1 L/h a second, sampled at odd moments around a run of 10 s.
    const auto rate = fuelFromTrace(
        only("fuel_rate_l_per_h", {-0.7, 0.6, 4.0, 9.5, 10.4}, {0.3, 1.6, 5.0, 10.5, 11.4}), 10.0);
    ASSERT_TRUE(rate);
    EXPECT_NEAR(rate->fuel_l, (1.0 + 11.0) / 2.0 * 10.0 / 3600.0, 1e-14);
    const auto used = fuelFromTrace(
        only("fuel_used_l", {-0.7, 0.6, 9.5, 10.4}, {100.0 - 0.07, 100.06, 100.95, 101.04}), 10.0);
    ASSERT_TRUE(used);
    EXPECT_NEAR(used->fuel_l, 1.0, 1e-12);
}

TEST(FuelFromTrace, CarriesOnAtItsPaceOverTheLastFractionOfASecond)
{
    const auto used = fuelFromTrace(only("fuel_used_l", {0.5, 5.0, 9.5}, {1.05, 1.5, 1.95}), 10.0);
    ASSERT_TRUE(used);
    EXPECT_NEAR(used->fuel_l, 1.0, 1e-12);
    const auto rate =
        fuelFromTrace(only("fuel_rate_l_per_h", {0.5, 5.0, 9.5}, {7.2, 7.2, 7.2}), 10.0);
    ASSERT_TRUE(rate);
    EXPECT_NEAR(rate->fuel_l, 0.02, 1e-12);
}

TEST(FuelFromTrace, SaysNothingOfARunThatWasNotRecordedWhole)
{
    auto trace = aHealthyTrace().cutAll(150.0, 300.0).build();
    EXPECT_FALSE(fuelFromTrace(trace, 200.0));
    EXPECT_TRUE(fuelFromTrace(trace, 150.0));
    EXPECT_FALSE(
        fuelFromTrace(aHealthyTrace().cut("fuel_rate_l_per_h", -20.0, 5.0).build(), 200.0));
    EXPECT_FALSE(fuelFromTrace(MemoryTrace(), 200.0));
    EXPECT_FALSE(fuelFromTrace(trace, 0.0));
}

TEST(FuelFromTrace, PrefersTheCounterUnlessItRunsBackwards)
{
    auto trace = aHealthyTrace().channel("fuel_used_l", [](double t) { return 5.0 + 0.002 * t; });
    EXPECT_EQ(fuelFromTrace(trace.build(), 200.0)->channel, "fuel_used_l");
    EXPECT_NEAR(fuelFromTrace(trace.build(), 200.0)->fuel_l, 0.4, 1e-9);
    trace.channel("fuel_used_l", [](double t) { return t < 100.0 ? 5.0 : 0.1; });
    EXPECT_EQ(fuelFromTrace(trace.build(), 200.0)->channel, "fuel_rate_l_per_h");
}

TEST(FuelFromTrace, TakesEnergyOfAnElectricDrive)
{
    const auto energy = fuelFromTrace(
        TraceBuilder().channel("energy_used_kwh", [](double t) { return 3.0 + 0.005 * t; }).build(),
        200.0);
    ASSERT_TRUE(energy);
    EXPECT_NEAR(energy->fuel_l, 1.0, 1e-9);
    const auto power = fuelFromTrace(
        TraceBuilder().channel("power_kw", [](double) { return 18.0; }).build(), 200.0);
    EXPECT_NEAR(power->fuel_l, 1.0, 1e-9);
}

TEST(DistanceFromTrace, TakesTheCounterThenTheSpeedThenPositions)
{
    auto trace = aHealthyTrace();
    EXPECT_NEAR(*distanceFromTrace_km(trace.build(), 200.0), 5.0, 2e-5);
    trace.without("distance_m").channel("road_speed_kmh", [](double t) { return 80.0 + 0.1 * t; });
    EXPECT_NEAR(*distanceFromTrace_km(trace.build(), 200.0), 90.0 / 3600.0 * 200.0, 1e-9);
    EXPECT_FALSE(distanceFromTrace_km(MemoryTrace(), 200.0));
}

// GeodSolve 2.1.2 -i -p 6 (WGS84): 51.5 -0.1 to 51.6 -0.1 is 11125.878726 m; 60 10 to 60 10.01 is
// 558.000015 m; 0 0 to 0 1 is 111319.490793 m.
TEST(DistanceFromTrace, IsThatOfTheGeodesicAlongSmallSteps)
{
    const auto along = [](double lat1, double lon1, double lat2, double lon2) {
        const auto line = [](double from, double to) {
            return [=](double t) { return from + (to - from) * t / 200.0; };
        };
        const auto trace = TraceBuilder(10.0, 0.0, 200.0)
                               .channel("lat_deg", line(lat1, lat2))
                               .channel("lon_deg", line(lon1, lon2))
                               .build();
        return 1000.0 * distanceFromTrace_km(trace, 200.0).value();
    };
    EXPECT_NEAR(along(51.5, -0.1, 51.6, -0.1), 11125.878726, 1e-3);
    EXPECT_NEAR(along(60.0, 10.0, 60.0, 10.01), 558.000015, 1e-3);
    EXPECT_NEAR(along(0.0, 0.0, 0.0, 1.0), 111319.490793, 1e-3);
    EXPECT_NEAR(along(0.0, 179.5, 0.0, 180.5), 111319.490793, 1e-3);
}

TEST(DistanceFromTrace, CrossesTheDateLine)
{
    const auto trace = TraceBuilder(10.0, 0.0, 200.0)
                           .channel("lat_deg", [](double) { return 0.0; })
                           .channel("lon_deg",
                                    [](double t) {
                                        const double lon = 179.5 + t / 200.0;
                                        return lon > 180.0 ? lon - 360.0 : lon;
                                    })
                           .build();
    EXPECT_NEAR(*distanceFromTrace_km(trace, 200.0), 111.319490793, 1e-6);
}
