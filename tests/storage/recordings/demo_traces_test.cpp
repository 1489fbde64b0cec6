// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/trace.h"
#include "core/recording/trace_totals.h"
#include "core/screening/finding.h"
#include "core/screening/screening.h"
#include "core/study/rule.h"
#include "sample_data/make_demo/generator_traces.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/run_traces.h"
#include "storage/sheet/run_sheet.h"
#include "tests/storage/recordings/demo_day.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

using namespace bothways;
using core::Rule;
using ::testing::Pair;
using ::testing::SizeIs;
using ::testing::UnorderedElementsAre;
using tests::generatorDay;

namespace {

const std::filesystem::path kSamples = std::filesystem::path(BOTHWAYS_SOURCE_DIR) / "sample_data";

std::string bytesOf(const std::filesystem::path& file)
{
    std::ifstream stream(file, std::ios::binary);
    std::ostringstream text;
    text << stream.rdbuf();
    return text.str();
}

/// The recordings that the sheet names, read from their files.
core::TraceProvider recordings(const core::Study& study)
{
    auto traces = storage::tracesOfSheet(kSamples / "levee_generator.csv", study);
    EXPECT_TRUE(traces) << traces.error().message.english() << ' '
                        << traces.error().where.english();
    return std::move(traces).take();
}

core::Screening screenedDay()
{
    const core::Study study = generatorDay();
    return core::screen(study, recordings(study));
}

} // namespace

TEST(DemoTraces, AreMadeAgainByteForByte)
{
    const auto files = demo::generatorTraces(demo::generatorDay());
    EXPECT_THAT(files, SizeIs(10));
    std::size_t bytes = 0;
    for (const demo::TraceFile& file : files) {
        EXPECT_TRUE(file.text == bytesOf(kSamples / file.name)) << file.name;
        bytes += file.text.size();
    }
    EXPECT_LT(bytes, 1'500'000u);
}

TEST(DemoTraces, HaveTheirFaultsFoundAndNoOthers)
{
    std::vector<std::pair<int, Rule>> found;
    for (const core::Finding& finding : screenedDay().findings)
        found.emplace_back(finding.run, finding.rule);
    EXPECT_THAT(found,
                UnorderedElementsAre(Pair(1, Rule::notCruising),  // the meter was reset too early
                                     Pair(7, Rule::sameRunTwice), // typed twice
                                     Pair(15, Rule::accessoryTimer),  // the windscreen's timer
                                     Pair(15, Rule::accessoryChange), // and what it took away
                                     Pair(18, Rule::settingMismatch), // blades still turning
                                     Pair(20, Rule::overspeed),       // beside the road train
                                     Pair(20, Rule::passingTraffic),  //
                                     Pair(23, Rule::roadSpeed),       // the tractor ahead
                                     Pair(28, Rule::interrupted),     // the roadworks
                                     Pair(28, Rule::roadSpeed)));
}

TEST(DemoTraces, FindingsSayWhatReallyHappened)
{
    const demo::DayRun* truth[40] = {};
    const auto day = demo::generatorDay();
    for (const demo::DayRun& run : day)
        truth[run.number] = &run;
    for (const core::Finding& finding : screenedDay().findings) {
        const demo::DayRun& run = *truth[finding.run];
        if (finding.rule == Rule::overspeed) {
            EXPECT_EQ(finding.value, run.rotor_rpm_max);
            EXPECT_NEAR(*finding.from_s, *run.overspeed_at_s, 0.25);
            EXPECT_GT(*finding.output_w, run.output_w);
        } else if (finding.rule == Rule::accessoryChange) {
            EXPECT_NEAR(*finding.from_s, *run.windscreen_off_s, 0.5);
            EXPECT_NEAR(*finding.value, -demo::kWindscreen_w, 10.0);
        } else if (finding.rule == Rule::interrupted) {
            EXPECT_LT(*finding.from_s, *run.stopped_at_s);
            EXPECT_GT(*finding.to_s, *run.stopped_at_s + *run.standing_s);
            EXPECT_EQ(finding.value, 0.0);
        }
    }
}

TEST(DemoTraces, AgreeWithTheDashboard)
{
    const core::Study study = generatorDay();
    const core::TraceProvider traces = recordings(study);
    for (const core::Run& run : study.runs) {
        const auto trace = traces(run);
        EXPECT_EQ(trace == nullptr, run.trace.empty());
        if (!trace || !run.consumption)
            continue;
        const auto fuel = core::fuelFromTrace(*trace, *run.duration_s);
        ASSERT_TRUE(fuel) << run.trace;
        const double l_per_100km = 100.0 * fuel->fuel_l / *run.distance_km;
        EXPECT_NEAR(l_per_100km, *core::lPer100km(run), 0.02 * l_per_100km) << run.trace;
    }
}
