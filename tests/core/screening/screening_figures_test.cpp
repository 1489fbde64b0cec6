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

// What a setting is chosen by: output and rotor speed at road speed.

namespace {

/// Output and rotor of a part, constant but for what is edited.
TraceBuilder steady(double watts, double rpm)
{
    return TraceBuilder()
        .channel("road_speed_kmh", [](double) { return 90.0; })
        .channel("output_w", [=](double) { return watts; })
        .channel("rotor_rpm", [=](double) { return rpm; });
}

core::Run withSetting(int number, const char* setting)
{
    return aRun(number).device().with([=](core::Run& run) { run.setting = setting; });
}

} // namespace

TEST(DeviceFigures, AreMeansAndHighestOfTheCountedRunsOfASetting)
{
    Recordings recordings;
    recordings.add(
        1, steady(600, 2800).set("output_w", 50.0, 59.95, 800).set("rotor_rpm", 70.0, 70.0, 3000));
    recordings.add(2, steady(500, 2700)).add(3, steady(300, 2000)).add(4, steady(900, 3500));
    core::Run discarded = withSetting(4, "18");
    discarded.discard = Discard{"overspeed", "x"};
    const Screening screening = screen(
        studyOf({withSetting(1, "18"), withSetting(2, "18.0"), withSetting(3, "20"), discarded},
                {{"road_speed.target_kmh", 90.0}}),
        recordings);
    ASSERT_THAT(screening.device, SizeIs(2));
    const SettingFigures& at18 = screening.device[0];
    EXPECT_EQ(at18.setting, "18");
    EXPECT_EQ(at18.part, "");
    EXPECT_EQ(at18.runs, 2);
    // Run 1: 10 s of 200 s at 800 W; the mean of both runs' means.
    EXPECT_NEAR(*at18.figures.mean_output_w, (610.0 + 500.0) / 2.0, 0.1);
    EXPECT_NEAR(*at18.figures.highest_output_w, 800.0, 1e-9);
    EXPECT_NEAR(*at18.figures.mean_rotor_rpm, 2750.1, 0.2);
    EXPECT_EQ(at18.figures.highest_rotor_rpm, 3000.0);
    EXPECT_NEAR(*screening.device[1].figures.mean_output_w, 300.0, 1e-9);
}

TEST(DeviceFigures, CountWhatWasGivenAtRoadSpeedAlone)
{
    Recordings recordings;
    recordings.add(1, steady(600, 2800)
                          .set("road_speed_kmh", 100.0, 300.0, 50.0)
                          .set("output_w", 100.0, 300.0, 100.0)
                          .set("rotor_rpm", 100.0, 300.0, 5000.0));
    const Screening held =
        screen(studyOf({aRun(1).device()}, {{"road_speed.target_kmh", 90.0}}), recordings);
    ASSERT_THAT(held.device, SizeIs(1));
    EXPECT_NEAR(*held.device[0].figures.mean_output_w, 600.0, 1e-6);
    EXPECT_EQ(held.device[0].figures.highest_rotor_rpm, 2800.0);
    const Screening all = screen(studyOf({aRun(1).device()}), recordings);
    EXPECT_NEAR(*all.device[0].figures.mean_output_w, 350.0, 2.0) << "without a target, all of it";
}

TEST(DeviceFigures, TellPartsApartAndReadTheSheetWhereNothingWasRecorded)
{
    Recordings recordings;
    recordings.add(1, TraceBuilder()
                          .channel("output_w@left", [](double) { return 200.0; })
                          .channel("output_w@right", [](double) { return 300.0; })
                          .channel("rotor_rpm@left", [](double) { return 2500.0; }));
    const core::Run noted = aRun(2).device().with([](core::Run& run) {
        run.setting = "20";
        run.rotor_rpm_max = 3050.0;
        run.extra = {{"output_w@left", "150"}};
    });
    const Screening screening = screen(studyOf({aRun(1).device(), noted}), recordings);
    std::vector<std::string> parts;
    for (const SettingFigures& its : screening.device)
        parts.push_back(its.setting + ":" + its.part);
    ASSERT_THAT(parts, ElementsAre(":", ":left", ":right", "20:", "20:left"));
    EXPECT_NEAR(*screening.device[0].figures.mean_output_w, 500.0, 1e-9) << "the sum";
    EXPECT_EQ(screening.device[1].figures.highest_rotor_rpm, 2500.0);
    EXPECT_FALSE(screening.device[2].figures.mean_rotor_rpm);
    EXPECT_EQ(screening.device[3].figures.highest_rotor_rpm, 3050.0);
    EXPECT_EQ(screening.device[4].figures.mean_output_w, 150.0);
    EXPECT_THAT(screen(studyOf({aRun(1)})).device, IsEmpty());
}
