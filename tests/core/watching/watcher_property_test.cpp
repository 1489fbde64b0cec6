// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/watching/watcher.h"
#include "tests/core/recording/trace_builders.h"
#include "tests/core/screening/screening_builders.h"
#include "tests/core/watching/driven_live.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using namespace bothways::core;
using namespace bothways::core::tests;

// What is said while driving is what screen() says when the run is over. Not part of it, each for
// its reason:
// - what kWaitForTheEnd lists;
// - load_lost, drive_slip and a device at rest are held against what is usual in earlier runs; the
//   run itself joins them half a minute on, with what it has shown so far. So a fault in the first
//   half minute of the very first run is heard late, or not before the end;
// - a channel that has had no sample in the run yet is said to be silent; that it is lost is a
//   finding when it comes back, or at the end;
// - a frozen channel is one where the vehicle's speed moves, which may come later;
// - a source that changes its pace within the run changes what counts as a gap of it.

namespace {

struct Fault {
    const char* name;
    std::function<void(TraceBuilder&)> make;
    std::function<void(core::Run&)> note = {};
    double later_s = 0.0; ///< than its rule's time: when there is more to be known
};

// Long: a list of faults.
const std::vector<Fault>& faults()
{
    static const std::vector<Fault> all = {
        {"nothing wrong", [](TraceBuilder&) {}},
        {"accessory off for good",
         [](auto& t) {
             t.edit("accessory_w", 96.0, 300.0, [](double, double w) { return w - 140; });
         }},
        {"accessory off for a while, twice",
         [](auto& t) {
             t.edit("accessory_w", 40.0, 49.0, [](double, double w) { return w - 140; });
             t.edit("accessory_w", 90.0, 97.0, [](double, double w) { return w + 200; });
         }},
        {"overspeed", [](auto& t) { t.set("rotor_rpm", 50.0, 50.8, 3300.0); }},
        {"two overspeeds under a second apart",
         [](auto& t) {
             t.set("rotor_rpm", 50.0, 51.0, 3300.0);
             t.set("rotor_rpm", 51.7, 53.0, 3350.0);
         }},
        {"overspeed for most of the run", [](auto& t) { t.set("rotor_rpm", 20.0, 170.0, 3300.0); }},
        {"load lost", [](auto& t) { t.set("output_w", 60.0, 70.0, 0.0); }},
        {"load lost from the start", [](auto& t) { t.set("output_w", -10.0, 70.0, 0.0); }},
        {"slip",
         [](auto& t) {
             t.edit("generator_rpm", 120.0, 125.0, [](double, double rpm) { return 1.06 * rpm; });
         }},
        {"output drop",
         [](auto& t) {
             t.edit("output_w", 100.0, 300.0, [](double, double w) { return 0.6 * w; });
         }},
        {"setting apart", [](auto& t) { t.set("setting", 30.0, 40.0, 21.0); }},
        {"setting apart in the last second", [](auto& t) { t.set("setting", 198.5, 203.0, 21.0); }},
        {"setting moved",
         [](auto& t) {
             t.set("setting_set", 150.0, 300.0, 20.0).set("setting", 150.0, 300.0, 20.0);
         }},
        {"setting moved within the start", [](auto& t) { t.set("setting_set", 3.5, 300.0, 20.0); }},
        {"vibration", [](auto& t) { t.set("vibration_ms2", 150.0, 155.0, 12.0); }},
        {"too slow for a while", [](auto& t) { t.set("road_speed_kmh", 80.0, 84.0, 80.0); }},
        {"too slow throughout", [](auto& t) { t.set("road_speed_kmh", 10.0, 300.0, 84.0); }},
        {"stopped", [](auto& t) { t.set("road_speed_kmh", 80.0, 95.0, 5.0); }},
        {"not cruising",
         [](auto& t) {
             t.edit("road_speed_kmh", -10.0, 10.0, [](double s, double) { return 80.0 + s; });
         }},
        {"a gap", [](auto& t) { t.cut("fuel_rate_l_per_h", 33.0, 44.0); }},
        {"two gaps at once",
         [](auto& t) { t.cut("wind_ms", 33.0, 44.0).cut("output_w", 35.0, 60.0); }},
        {"a gap at the start", [](auto& t) { t.cut("wind_ms", -20.0, 7.0); }, {}, 6.0},
        {"a sensor that dies", [](auto& t) { t.cut("vibration_ms2", 101.3, 300.0); }},
        {"frozen", [](auto& t) { t.set("output_w", 61.0, 90.0, 601.5); }},
        {"frozen for long, by a held speed",
         [](auto& t) {
             t.set("output_w", 41.0, 120.0, 601.5).set("road_speed_kmh", 38.0, 80.0, 90.0);
         },
         {},
         39.2},
        {"frozen while the speed moves for four seconds",
         [](auto& t) {
             t.set("output_w", 41.0, 80.0, 601.5);
             t.set("road_speed_kmh", 38.0, 50.0, 90.0).set("road_speed_kmh", 54.0, 90.0, 90.1);
         }},
        {"a rotor at rest that gives power", [](auto& t) { t.set("rotor_rpm", 70.0, 80.0, 0.0); }},
        {"wind", [](auto& t) { t.set("wind_ms", 20.0, 22.0, 11.0); }},
        {"the recording ends early", [](auto& t) { t.cutAll(180.0, 300.0); }},
        {"marks", [](TraceBuilder&) {},
         [](core::Run& run) {
             run.marks = {{60.0, "adjusted", "belt"}, {61.0, "overspeed", ""}, {70.0, "lorry", ""}};
         }},
        {"a timer", [](TraceBuilder&) {},
         [](core::Run& run) {
             run.accessory_on_s = {{"windscreen", -520.0}};
         }},
    };
    return all;
}

/// But for the rounding of times that went through the recording's.
bool alike(const std::vector<Finding>& a, const std::vector<Finding>& b)
{
    const auto near = [](const std::optional<double>& x, const std::optional<double>& y) {
        return x.has_value() == y.has_value() && (!x || std::abs(*x - *y) < 1e-6);
    };
    return std::equal(
        a.begin(), a.end(), b.begin(), b.end(), [&](const Finding& x, const Finding& y) {
            return x.rule == y.rule && x.part == y.part && detailOf(x) == detailOf(y) &&
                   x.grade == y.grade && near(x.from_s, y.from_s) && near(x.to_s, y.to_s) &&
                   near(x.value, y.value) && near(x.output_w, y.output_w);
        });
}

Study threeRuns(const Fault& fault, double longest_s)
{
    Study study = studyOf({aRun(1).device(), aRun(2).device(), aRun(3).device()}, allLimitsSet());
    if (fault.note)
        fault.note(study.runs[2]);
    study.properties.limits["overspeed.seconds"] = longest_s;
    study.properties.timed_accessories = {{"windscreen", 450.0, 10.0}};
    return study;
}

std::string differencesOf(const Fault& fault, double hz, unsigned seed, double overspeed_s = 0.5)
{
    const Study study = threeRuns(fault, overspeed_s);
    TraceBuilder third = aHealthyTrace(hz, seed + 3);
    fault.make(third);
    Recordings recordings;
    recordings.add(1, aHealthyTrace(10.0, seed + 1)).add(2, aHealthyTrace(10.0, seed + 2));
    recordings.add(3, third);
    const DrivenLive driven = driveAgain(study, 2, recordings, seed);
    const Screening whole = screen(study, recordings);
    std::string wrong =
        differences(driven, whole, study.runs[2], study.properties.limits, 1.2 + fault.later_s);
    std::vector<Finding> its;
    for (const Finding& finding : whole.findings)
        if (finding.run == 3)
            its.push_back(finding);
    if (!alike(its, driven.at_the_end.findings))
        wrong += "the end does not say what screen() says\n";
    return wrong;
}

} // namespace

TEST(Watcher, SaysOfEachFaultWhatScreeningSaysWithinASecondOfKnowing)
{
    for (const Fault& fault : faults())
        for (unsigned seed = 0; seed < 3; ++seed)
            EXPECT_EQ(differencesOf(fault, 10.0, 7 * seed), "") << fault.name << ", seed " << seed;
}

TEST(Watcher, SaysTheSameOfAFasterRecordingOfWhichItKeepsAPart)
{
    for (const Fault& fault : faults())
        EXPECT_EQ(differencesOf(fault, 100.0, 5), "") << fault.name;
}

TEST(Watcher, SaysTheSameWhereALimitAsksForALongTime)
{
    for (const Fault& fault : faults())
        EXPECT_EQ(differencesOf(fault, 10.0, 3, 30.0), "") << fault.name;
}
