// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/run_sheet.h"

#include "core/study/clock.h"
#include "core/study/parts.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using core::ConsumptionUnit;
using storage::parseRunSheet;
using storage::RunSheet;
using storage::SheetOptions;

namespace {

const SheetOptions kToday{.date = {}, .today = "2026-05-09"};

RunSheet read(std::string_view text, const SheetOptions& options = kToday)
{
    auto sheet = parseRunSheet(text, "morning.csv", options);
    EXPECT_TRUE(sheet) << (sheet ? "" : core::describe(sheet.error()));
    return sheet ? std::move(sheet).take() : RunSheet{};
}

} // namespace

TEST(RunSheet, ReadsEveryColumnOfTheContract)
{
    const RunSheet sheet = read(
        "run,configuration,setting,direction,start,duration_s,distance_km,speed_kmh,l_per_100km,"
        "status,reason,evidence,pair,control,marks,accessory_w,accessories,output_w,rotor_rpm_max,"
        "battery_v_start,battery_v_end,wind_ms,wind_from_deg,temperature_c,pressure_hpa,"
        "humidity_pct,trace,notes,heated_windscreen_on_s,Driver\n"
        "7,B,18,out,2026-05-09T06:43:34.25+02:00,210,5.2,89.1,11.90,discarded,overspeed,"
        "rotor 3410 rpm,,11.2,31.2 passing_traffic lorry; 80 gust,120,\"radio, lights\",600,3410,"
        "12.6,12.5,1.5,225,8.4,1013.2,81,r7.csv,\"said \"\"go\"\"\",-41,Ada\n");
    ASSERT_EQ(sheet.study.runs.size(), 1u);
    const core::Run& run = sheet.study.runs[0];
    EXPECT_EQ(run.number, 7);
    EXPECT_EQ(run.configuration, "B");
    EXPECT_EQ(run.setting, "18");
    EXPECT_EQ(run.direction, "out");
    EXPECT_EQ(core::formatDateTime(run.start), "2026-05-09T06:43:34.25+02:00");
    EXPECT_EQ(run.duration_s, 210.0);
    EXPECT_EQ(run.distance_km, 5.2);
    EXPECT_EQ(run.speed_kmh, 89.1);
    EXPECT_EQ(run.consumption, (core::Consumption{11.9, ConsumptionUnit::lPer100km, 2, false}));
    EXPECT_EQ(run.discard, (core::Discard{"overspeed", "rotor 3410 rpm"}));
    EXPECT_EQ(run.control, 11.2);
    EXPECT_THAT(run.marks, testing::ElementsAre(core::Mark{31.2, "passing_traffic", "lorry"},
                                                core::Mark{80, "gust", ""}));
    EXPECT_EQ(run.accessory_w, 120.0);
    EXPECT_EQ(run.accessories, "radio, lights");
    EXPECT_EQ(run.output_w, 600.0);
    EXPECT_EQ(run.rotor_rpm_max, 3410.0);
    EXPECT_EQ(run.battery_v_start, 12.6);
    EXPECT_EQ(run.battery_v_end, 12.5);
    EXPECT_EQ(run.wind_ms, 1.5);
    EXPECT_EQ(run.wind_from_deg, 225.0);
    EXPECT_EQ(run.temperature_c, 8.4);
    EXPECT_EQ(run.pressure_hpa, 1013.2);
    EXPECT_EQ(run.humidity_pct, 81.0);
    EXPECT_EQ(run.trace, "r7.csv");
    EXPECT_EQ(run.notes, "said \"go\"");
    EXPECT_THAT(run.accessory_on_s, testing::ElementsAre(testing::Pair("heated_windscreen", -41)));
    EXPECT_THAT(run.extra, testing::ElementsAre(testing::Pair("Driver", "Ada")));
}

TEST(RunSheet, AHeaderAloneIsAStudyWithoutRuns)
{
    EXPECT_TRUE(read("configuration,direction,start,mpg_us\n").study.runs.empty());
}

TEST(RunSheet, FindsOutSemicolonsTabsAndDecimalCommas)
{
    const RunSheet semicolon = read("configuration;direction;start;l_per_100km;notes\r\n"
                                    "A;out;05:40;11,88;wind, a little\r\n");
    EXPECT_EQ(semicolon.dialect, (storage::SheetDialect{';', true}));
    EXPECT_EQ(semicolon.study.runs.at(0).consumption->value, 11.88);
    EXPECT_EQ(semicolon.study.runs.at(0).notes, "wind, a little");

    const RunSheet tab = read("configuration\tdirection\tstart\tkm_per_l\nA\tout\t05:40\t9.1\n");
    EXPECT_EQ(tab.dialect, (storage::SheetDialect{'\t', false}));

    const RunSheet quoted = read("configuration,direction,start,l_per_100km\n"
                                 "A,out,05:40,\"11,88\"\n");
    EXPECT_EQ(quoted.dialect, (storage::SheetDialect{',', true}));
    EXPECT_EQ(quoted.study.runs.at(0).consumption->decimals, 2);
}

TEST(RunSheet, TimesOfDayGoOnAfterMidnight)
{
    const RunSheet sheet = read("configuration,direction,start,l_per_100km\n"
                                "A,out,23:50,8\nA,return,00:05,8\nB,out,5:10,8\n");
    EXPECT_TRUE(sheet.dateAssumed);
    EXPECT_EQ(core::formatDateTime(sheet.study.runs.at(0).start), "2026-05-09T23:50:00");
    EXPECT_EQ(core::formatDateTime(sheet.study.runs.at(1).start), "2026-05-10T00:05:00");
    EXPECT_EQ(core::formatDateTime(sheet.study.runs.at(2).start), "2026-05-10T05:10:00");
}

TEST(RunSheet, ListsEveryBadLine)
{
    const auto sheet = parseRunSheet("# a comment\nconfiguration,direction,start,l_per_100km\n"
                                     "A,out,05:40,-8\nA,return,05:47,8.1\nC,\"up\nhill\",x,nan\n",
                                     "morning.csv", kToday);
    ASSERT_FALSE(sheet);
    EXPECT_EQ(
        core::describe(sheet.error()),
        "morning.csv:3: column 'l_per_100km': '-8' is not above 0; expected a number above 0\n"
        "morning.csv:5: column 'direction': 'up\\nhill' is a third direction; expected 'out' "
        "or 'return'\n"
        "morning.csv:5: column 'start': 'x' is no start; expected a date and time like "
        "2026-05-09T05:40:00 or a time of day like 05:40\n"
        "morning.csv:5: column 'l_per_100km': 'nan' is not a finite number; expected a number "
        "above 0");
}

TEST(RunSheet, WhatIsWrittenReadsBackTheSame)
{
    const RunSheet sheet = read("run,configuration,setting,direction,start,mpg_us,notes,odd\n"
                                "4,off,,north,2026-05-09T05:40:00,31.90,\" # blank, \",1\n"
                                "3,on,a;b,south,2026-05-09T05:47:00,30,\"two\nlines\",\n");
    const std::string text = storage::writeRunSheet(sheet.study);
    EXPECT_EQ(read(text).study, sheet.study) << text;
}

TEST(RunSheet, ColumnNamesAreCaseBlindAndBlanksAreUnderscores)
{
    const RunSheet sheet = read("\xEF\xBB\xBF" // a byte order mark
                                "Configuration, Direction ,START,L per 100km,Distance mi\n"
                                "A,out,05:40,8.4,3.1\n");
    EXPECT_EQ(sheet.study.runs.at(0).consumption->value, 8.4);
    EXPECT_EQ(sheet.study.runs.at(0).distance_km, 3.1 * core::kKmPerMile);
}

TEST(RunSheet, NamesAreShownAsFirstWritten)
{
    const RunSheet sheet = read("configuration,direction,start,l_per_100km\n"
                                "Roof box,East,05:40,8\nROOF BOX,west,05:47,8\n"
                                "none, east ,05:54,8\nNone,WEST,06:01,8\n");
    EXPECT_THAT(core::configurations(sheet.study), testing::ElementsAre("Roof box", "none"));
    EXPECT_EQ(sheet.study.runs.at(1).configuration, "Roof box");
    EXPECT_EQ(sheet.study.runs.at(2).direction, "East");
    EXPECT_EQ(sheet.study.runs.at(3).direction, "west");
}

TEST(RunSheet, TakesEveryUnitOfConsumption)
{
    for (const ConsumptionUnit unit : core::kConsumptionUnits) {
        const RunSheet sheet = read("configuration,direction,start,distance_km," +
                                    std::string(core::unitName(unit)) + "\nA,out,05:40,5,1.250\n");
        EXPECT_EQ(sheet.study.runs.at(0).consumption, (core::Consumption{1.25, unit, 3, false}))
            << core::unitName(unit);
    }
}

TEST(RunSheet, WithDateTimesTheOrderIsThatOfTheStarts)
{
    const RunSheet sheet = read("configuration,direction,start,l_per_100km\n"
                                "B,out,2026-05-09T07:00:00Z,8\n"
                                "A,return,2026-05-09T05:47+02:00,8\n"
                                "A,out,2026-05-09 05:40:00.5+02:00,8\n");
    EXPECT_FALSE(sheet.dateAssumed);
    EXPECT_EQ(sheet.study.runs.at(0).direction, "out");
    EXPECT_EQ(sheet.study.runs.at(0).number, 1) << "numbers go by start, not by line";
    EXPECT_EQ(sheet.study.runs.at(2).configuration, "B");
}

TEST(RunSheet, RunsWithoutANumberGetTheNextOneThatIsFree)
{
    const RunSheet sheet = read("run,configuration,direction,start,l_per_100km\n"
                                "4,A,out,05:40,8\n,A,return,05:47,8\n5,A,out,05:54,8\n"
                                ",A,return,06:01,8\n");
    std::vector<int> numbers;
    for (const core::Run& run : sheet.study.runs)
        numbers.push_back(run.number);
    EXPECT_THAT(numbers, testing::ElementsAre(4, 6, 5, 7));
}

TEST(RunSheet, AsksForADateOnlyWhereTimesOfDayNeedIt)
{
    const std::string text = "configuration,direction,start,l_per_100km\nA,out,05:40,8\n";
    const auto startWith = [&](const SheetOptions& options, const core::Study* existing = nullptr) {
        const auto sheet = parseRunSheet(text, "x.csv", options, existing);
        return sheet ? core::formatDateTime(sheet.value().study.runs.at(0).start)
                     : core::describe(sheet.error());
    };
    core::Study study;
    study.properties.date = "2026-03-14";
    EXPECT_EQ(startWith({.date = "2026-01-02", .today = "2026-05-09"}, &study),
              "2026-01-02T05:40:00");
    EXPECT_EQ(startWith(kToday, &study), "2026-03-14T05:40:00");
    EXPECT_EQ(startWith(kToday), "2026-05-09T05:40:00");
    EXPECT_EQ(startWith({}), "x.csv:1: column 'start': has times of day; expected a date "
                             "(YYYY-MM-DD) with them");
}

TEST(RunSheet, ALineWithATraceMayLeaveItsConsumptionEmpty)
{
    const RunSheet sheet = read("configuration,direction,start,l_per_100km,trace\n"
                                "A,out,05:40,,r1.csv\nA,return,05:47,8.1,\n");
    EXPECT_FALSE(sheet.study.runs.at(0).consumption);
    EXPECT_TRUE(sheet.study.runs.at(0).counted());
    EXPECT_EQ(sheet.study.runs.at(0).trace, "r1.csv");
    EXPECT_EQ(read("configuration,direction,start,trace\nA,out,05:40,r1.csv\n").study.runs.size(),
              1u)
        << "no column of consumption at all";
}

TEST(RunSheet, ADiscardedRunMayHaveNoConsumption)
{
    const RunSheet sheet =
        read("configuration,direction,start,l_per_100km,status,reason,evidence\n"
             "A,out,05:40,,Discarded,Sensor lost,\nA,out,05:47,8,DISCARDED,other,a bee\n");
    EXPECT_EQ(sheet.study.runs.at(0).discard, (core::Discard{"sensor_lost", ""}));
    EXPECT_EQ(sheet.study.runs.at(1).discard, (core::Discard{"other", "a bee"}));
}

TEST(RunSheet, HumidityMayHaveItsSign)
{
    const auto read = parseRunSheet("configuration,direction,start,l_per_100km,Humidity\n"
                                    "A,out,2026-05-09T05:40,8.4,65 %\n"
                                    "A,return,2026-05-09T05:47,8.1,66.5\xC2\xA0%\n",
                                    "x.csv");
    ASSERT_TRUE(read) << core::describe(read.error());
    EXPECT_EQ(read.value().study.runs[0].humidity_pct, 65.0);
    EXPECT_EQ(read.value().study.runs[1].humidity_pct, 66.5);
}

TEST(RunSheet, SettingsStayTextButNumbersGetAPoint)
{
    const RunSheet sheet = read("configuration;direction;start;l_per_100km;setting;notes\n"
                                "B;out;05:40;8,4;20,0;1,5 wet\nB;return;05:47;8,1;steil, fest;\n");
    EXPECT_EQ(sheet.study.runs.at(0).setting, "20.0");
    EXPECT_EQ(sheet.study.runs.at(0).notes, "1,5 wet");
    EXPECT_EQ(sheet.study.runs.at(1).setting, "steil, fest");
    EXPECT_TRUE(core::sameSetting(sheet.study.runs.at(0).setting, "20"));
}

TEST(RunSheet, MarksMayHoldSemicolonsAndLines)
{
    const RunSheet sheet = read("configuration,direction,start,l_per_100km,marks\n"
                                "A,out,05:40,8,\" ; 3 gust strong\\; from left ;; -2.5 x\n y;\"\n");
    EXPECT_THAT(sheet.study.runs.at(0).marks,
                testing::ElementsAre(core::Mark{3, "gust", "strong; from left"},
                                     core::Mark{-2.5, "x", "y"}));
}

TEST(RunSheet, PairsAreTiedByAMarkOnTwoLines)
{
    const std::string text = "pair,configuration,direction,start,l_per_100km\n"
                             "x,A,out,05:40,8\n,A,out,05:47,8\nx,A,return,05:54,8\n";
    const RunSheet sheet = read(text);
    EXPECT_EQ(sheet.study.runs.at(0).pair_mark, "x");
    EXPECT_EQ(sheet.study.runs.at(2).pair_mark, "x");

    const auto second =
        parseRunSheet(text, "again.csv", {.date = "2026-05-10", .today = {}}, &sheet.study);
    ASSERT_TRUE(second) << core::describe(second.error());
    EXPECT_EQ(second.value().study.runs.at(0).pair_mark, "x-2") << "another pair, another mark";
    EXPECT_EQ(second.value().study.runs.at(0).number, 4);
}

TEST(RunSheet, AColumnWithoutAMeaningIsNamedWithTheOneThatItIsNearlySpelledLike)
{
    const RunSheet sheet =
        read("configuration,direction,start,l_per_100km,Tyres,temprature c,sped_kmh,winds,x\n"
             "A,out,05:40,8,winter,12,80,3,\n");
    const std::vector<storage::OwnColumn> expected = {
        {"Tyres", ""}, {"temprature c", "temperature_c"}, {"sped_kmh", "speed_kmh"}, {"winds", ""}};
    EXPECT_EQ(sheet.own_columns, expected) << "'x' is empty, so it is not kept";
}

TEST(RunSheet, ARunTypedByHandIsJudgedLikeALine)
{
    core::Study study = read("configuration,direction,start,l_per_100km\n"
                             "A,out,2026-05-09T05:40,8\nB,return,2026-05-09T05:47,8\n")
                            .study;
    core::Run run = study.runs.at(1);
    run.number = 3;
    EXPECT_TRUE(storage::faultsOf(study, run).empty());
    run.configuration = "C";
    run.consumption.reset();
    run.start.utc_offset_min = 0;
    const auto faults = storage::faultsOf(study, run);
    ASSERT_EQ(faults.size(), 3u);
    EXPECT_EQ(faults[0].where.english(), "column 'l_per_100km'");
    EXPECT_EQ(faults[1].message.english(), "'C' is a third configuration; expected 'A' or 'B'");
    EXPECT_EQ(faults[2].where.english(), "column 'start'");

    study.runs.at(1).id = run.id = core::RunId{2};
    run = study.runs.at(1);
    run.configuration = "C";
    EXPECT_TRUE(storage::faultsOf(study, run).empty()) << "an edit replaces its own name";

    run = study.runs.at(1);
    run.consumption->unit = core::ConsumptionUnit::kwhPer100km;
    run.notes = std::string(1'000'001, 'x');
    const auto others = storage::faultsOf(study, run);
    ASSERT_EQ(others.size(), 2u);
    EXPECT_EQ(others[0].message.english(), "is too long; expected at most 1000000 characters");
    EXPECT_EQ(others[1].message.english(),
              "fuel and kWh cannot be compared; expected one of them in a study");
}

TEST(RunSheet, KeepsWhatWasNotedOfEachPartAsItWasWritten)
{
    const std::string text = "configuration;direction;start;l_per_100km;output_w@left;"
                             "rotor_rpm_max@left;rotor_rpm_max@right\n"
                             "B;out;05:40;8,4;305,0;3050;3120,5\nB;return;05:47;8,1;;;\n";
    const auto sheet = storage::parseRunSheet(text, "day.csv", {.date = "2026-05-09", .today = ""});
    ASSERT_TRUE(sheet) << sheet.error().message.english();
    const core::Run& run = sheet.value().study.runs[0];
    const std::vector<std::pair<std::string, std::string>> noted = {
        {"output_w@left", "305,0"},
        {"rotor_rpm_max@left", "3050"},
        {"rotor_rpm_max@right", "3120,5"}};
    EXPECT_EQ(run.extra, noted);
    const auto parts = core::notedParts(run, "rotor_rpm_max");
    ASSERT_EQ(parts.size(), 2u);
    EXPECT_EQ(parts[1].part, "right");
    EXPECT_EQ(parts[1].value, 3120.5);
    const auto again =
        storage::parseRunSheet(storage::writeRunSheet(sheet.value().study), "again.csv");
    ASSERT_TRUE(again) << again.error().message.english();
    EXPECT_EQ(again.value().study.runs[0].extra, noted);
}
