// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/clock.h"
#include "storage/sheet/run_sheet.h"
#include "tests/storage/study/random_studies.h"
#include "tests/storage/study/study_builders.h"

#include <gtest/gtest.h>

using namespace bothways;
using storage::parseRunSheet;
using storage::writeRunSheet;
using tests::aRun;
using tests::taken;

namespace {

core::Study withRuns(std::vector<core::Run> runs)
{
    core::Study study;
    study.runs = std::move(runs);
    return study;
}

core::Study back(const std::string& text)
{
    return taken(parseRunSheet(text, "exported.csv")).study;
}

} // namespace

TEST(RunSheetRoundTrip, EveryStudyComesBackAsItWas)
{
    constexpr std::uint32_t kSeed = 7;
    tests::RandomStudies random(kSeed);
    for (int i = 0; i < 400; ++i) {
        const core::Study study = random.study(random.below(25));
        const std::string text = writeRunSheet(study);
        const auto sheet = parseRunSheet(text, "exported.csv");
        ASSERT_TRUE(sheet) << "seed " << kSeed << ", study " << i << "\n"
                           << core::describe(sheet.error()) << "\n"
                           << text;
        ASSERT_EQ(sheet.value().study.runs, study.runs)
            << "seed " << kSeed << ", study " << i << "\n"
            << text;
        ASSERT_EQ(writeRunSheet(sheet.value().study), text) << "the same bytes again";
    }
}

TEST(RunSheetRoundTrip, ARunWithEverythingComesBackAsItWas)
{
    const core::Study study = withRuns({aRun().full()});
    EXPECT_EQ(back(writeRunSheet(study)).runs, study.runs) << writeRunSheet(study);
}

TEST(RunSheetRoundTrip, AStudyWithoutRunsIsAHeaderAlone)
{
    EXPECT_EQ(writeRunSheet({}), "run,configuration,direction,start,l_per_100km,status\n");
    EXPECT_TRUE(back(writeRunSheet({})).runs.empty());
}

TEST(RunSheetRoundTrip, RunsNotedInSeveralUnitsKeepThem)
{
    core::Run other = aRun().number(2).returning().at_min(7);
    other.consumption = core::Consumption{12.5, core::ConsumptionUnit::kmPerL, 1, false};
    const core::Study study = withRuns({aRun().number(1), other});
    const std::string text = writeRunSheet(study);
    EXPECT_EQ(text, "run,configuration,direction,start,l_per_100km,consumption_given,status\n"
                    "1,A,out,2026-05-09T05:40:00,8.41,,counted\n"
                    "2,A,return,2026-05-09T05:47:00,8,12.5 km_per_l,counted\n");
    EXPECT_EQ(back(text).runs, study.runs);
}

TEST(RunSheetRoundTrip, NumbersKeepEveryBit)
{
    for (const double value : {0.1 + 0.2, 1.0 / 3.0, 5e-324, 1e-300, 12345678.901234567, 1e5}) {
        core::Run run = aRun().number(1);
        run.accessory_w = value;
        const core::Study study = withRuns({run});
        EXPECT_EQ(back(writeRunSheet(study)).runs.at(0).accessory_w, value);
    }
}

TEST(RunSheetRoundTrip, DigitsAsOnTheDisplayStay)
{
    core::Run run = aRun().number(1).consuming(8.4);
    run.consumption->decimals = 3;
    const core::Study study = withRuns({run});
    EXPECT_NE(writeRunSheet(study).find(",8.400,"), std::string::npos);
    EXPECT_EQ(back(writeRunSheet(study)).runs.at(0).consumption->decimals, 3);
}

TEST(RunSheetRoundTrip, ColumnsOfOnesOwnKeepTheirOrderWhereRunsHaveOnlySome)
{
    core::Run first = aRun().number(1);
    first.extra = {{"b", "1"}};
    core::Run second = aRun().number(2).at_min(7);
    second.extra = {{"a", "2"}, {"b", "3"}};
    core::Run third = aRun().number(3).at_min(14);
    third.extra = {{"b", "4"}, {"c", "5"}};
    const core::Study study = withRuns({first, second, third});
    EXPECT_NE(writeRunSheet(study).find(",a,b,c\n"), std::string::npos);
    EXPECT_EQ(back(writeRunSheet(study)).runs, study.runs);
}
