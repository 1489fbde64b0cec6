// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/run_sheet.h"
#include "tests/storage/study/study_builders.h"
#include "tests/support/read_sheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sys/wait.h>
#include <unistd.h>

#include <fstream>

using namespace bothways;
using storage::parseRunSheet;
using storage::SheetOptions;
using testing::HasSubstr;
using testing::StartsWith;

namespace {

const std::string kHeader = "configuration,direction,start,l_per_100km\n";
const std::string kGood = "A,out,05:40,8.4\nA,return,05:47,8.1\n";

struct BadSheet {
    const char* what;
    std::string text;
    std::string where;   ///< of the first fault, without the name
    std::string message; ///< part of it
    std::size_t faults = 1;
};

void PrintTo(const BadSheet& sheet, std::ostream* out)
{
    *out << sheet.what;
}

/// A good sheet with this header's one line made bad.
std::string withColumns(const std::string& columns, const std::string& cells)
{
    return "configuration,direction,start,l_per_100km," + columns + "\nA,out,05:40,8.4," + cells +
           "\n";
}

const BadSheet kBadSheets[] = {
    // The whole.
    {"nothing", "", "1", "is empty; expected a header line"},
    {"comments alone", "# only\n\n# this\n", "1", "is empty; expected a header line"},
    {"a byte order mark alone", "\xEF\xBB\xBF", "1", "is empty; expected a header line"},
    {"UTF-16, little end first",
     std::string("\xFF\xFE"
                 "c\0o\0",
                 6),
     "1", "is no header of a run sheet"},
    {"UTF-16, big end first", std::string("\xFE\xFF\0c\0o", 6), "1", "is no header of a run sheet"},
    {"zero bytes", std::string("config\0uration", 14), "1", "is no text"},
    // The header.
    {"no configuration", "direction,start,mpg_us\nout,05:40,30\n", "1: column 'configuration'",
     "is missing"},
    {"no direction", "# notes\nconfiguration,start,mpg_us\nA,05:40,30\n", "2: column 'direction'",
     "is missing"},
    {"no start", "configuration,direction,mpg_us\nA,out,30\n", "1: column 'start'", "is missing"},
    {"no consumption", "configuration,direction,start\nA,out,05:40\n", "1: column 'l_per_100km'",
     "is missing; expected exactly one of l_per_100km, mpg_us"},
    {"two consumptions", "configuration,direction,start,l_per_100km,mpg_us\nA,out,05:40,8.4,28\n",
     "1: column 'mpg_us'", "is a second consumption beside 'l_per_100km'; expected exactly one"},
    {"three consumptions", "configuration,direction,start,mpg_us,fuel_l,km_per_l,distance_km\n",
     "1: column 'fuel_l'", "is a second consumption beside 'mpg_us'", 2},
    {"litres without a distance", "configuration,direction,start,fuel_l\nA,out,05:40,0.4\n",
     "1: column 'fuel_l'", "needs a distance"},
    {"kilometres and miles",
     "configuration,direction,start,mpg_us,distance_km,distance_mi\nA,out,05:40,30,5,3\n",
     "1: column 'distance_mi'", "says the same as 'distance_km'"},
    {"both speeds", "configuration,direction,start,mpg_us,speed_mph,speed_kmh\n",
     "1: column 'speed_mph'", "says the same as 'speed_kmh'"},
    {"a column twice", "configuration,Direction,start,mpg_us,DIRECTION\nA,out,05:40,30,out\n",
     "1: column 'Direction'", "is there twice"},
    {"a column of one's own twice", "configuration,direction,start,mpg_us,x,X\n", "1: column 'x'",
     "is there twice"},
    {"a value without a name", "configuration,direction,start,mpg_us,\nA,out,05:40,30,wet\n",
     "1: column 5", "has no name but a value on line 2"},
    {"a header that never ends", "configuration,\"direction,start,mpg_us\nA,out,05:40,30\n", "1",
     "quote in the header that never closes"},
    {"a picture", "\x89PNG\r\n\x1A\n\xC0\xC1\xFF", "1", "is a picture"},
    // Consumption.
    {"zero", kHeader + "A,out,05:40,0\n", "2: column 'l_per_100km'", "'0' is not above 0"},
    {"negative", kHeader + "A,out,05:40,-8.4\n", "2: column 'l_per_100km'",
     "'-8.4' is not above 0"},
    {"infinite", kHeader + "A,out,05:40,inf\n", "2: column 'l_per_100km'",
     "'inf' is not a finite number; expected a number above 0"},
    {"beyond all numbers", kHeader + "A,out,05:40,1e999\n", "2: column 'l_per_100km'",
     "is not a finite number"},
    {"not a number", kHeader + "A,out,05:40,NaN\n", "2: column 'l_per_100km'",
     "'NaN' is not a finite number"},
    {"a word", kHeader + "A,out,05:40,much\n", "2: column 'l_per_100km'", "'much' is not a"},
    {"a number with its unit", kHeader + "A,out,05:40,8.4 L\n", "2: column 'l_per_100km'",
     "'8.4 L' is not a finite number"},
    {"in hexadecimal", kHeader + "A,out,05:40,0x10\n", "2: column 'l_per_100km'", "'0x10' is not"},
    {"empty", kHeader + "A,out,05:40,\n", "2: column 'l_per_100km'",
     "is empty; a counted run needs its consumption"},
    {"cut off", kHeader + "A,out,05:40\n", "2: column 'l_per_100km'", "is empty"},
    {"impossible", kHeader + "A,out,05:40,8.4e9\n", "2: column 'l_per_100km'", "is impossible"},
    {"impossible once converted", "configuration,direction,start,mpg_us\nA,out,05:40,1e-300\n",
     "2: column 'mpg_us'", "is impossible"},
    {"litres of a line without a distance",
     "configuration,direction,start,fuel_l,distance_km\nA,out,05:40,0.4,5\nA,return,05:47,0.4,\n",
     "3: column 'distance_km'", "is empty; fuel_l needs a distance"},
    {"gallons of a line without miles",
     "configuration,direction,start,fuel_gal_us,distance_mi\nA,out,05:40,0.1,\n",
     "2: column 'distance_mi'", "fuel_gal_us needs a distance"},
    {"neither consumption nor trace",
     "configuration,direction,start,trace\nA,out,05:40,r1.csv\nA,return,05:47,\n",
     "3: column 'trace'", "a counted run needs its consumption"},
    {"a point where others have a comma",
     "configuration;direction;start;l_per_100km\nA;out;05:40;8,4\nA;return;05:47;8,1\n"
     "A;out;05:54;8.3\n",
     "4: column 'l_per_100km'", "'8.3' has a decimal point; the other numbers of this sheet have"},
    {"what may be a thousand or a decimal comma",
     kHeader + "A,out,05:40,8.4\nA,return,05:47,\"1,008\"\n", "3: column 'l_per_100km'",
     "'1,008' has a decimal comma"},
    {"from an unknown source", withColumns("consumption_source", "guessed"),
     "2: column 'consumption_source'", "'guessed' is unknown; expected 'typed' or 'trace'"},
    {"given as another one", withColumns("consumption_given", "20 mpg_us"),
     "2: column 'consumption_given'", "'20 mpg_us' does not agree with the consumption"},
    {"a control beyond all engines", withColumns("control", "8.4e9"), "2: column 'control'",
     "is impossible"},
    {"a control that cannot be told beside a recording",
     "configuration,direction,start,fuel_l,distance_km,control,trace\n"
     "A,out,05:40,,,0.5,r1.csv\n",
     "2: column 'control'", "cannot be told in L/100 km; fuel_l needs a distance"},
    {"two columns of consumption in one unit",
     "configuration,direction,start,Verbrauch (l/100 km),Consumption (l/100 km)\n"
     "A,out,05:40,8.4,8.4\n",
     "1: column 'Consumption (l/100 km)'", "says the same as 'Verbrauch (l/100 km)'"},
    // Names.
    {"no name", kHeader + ",out,05:40,8.4\n", "2: column 'configuration'", "is empty"},
    {"a third configuration", kHeader + kGood + "B,out,06:00,8\nC,out,06:10,8\n",
     "5: column 'configuration'", "'C' is a third configuration; expected 'A' or 'B'"},
    {"a third direction", kHeader + kGood + "A,up,06:00,8\n", "4: column 'direction'",
     "'up' is a third direction; expected 'out' or 'return'"},
    // Times.
    {"no start in a line", kHeader + "A,out,,8.4\n", "2: column 'start'", "is empty; expected"},
    {"25 o'clock", kHeader + "A,out,25:00,8.4\n", "2: column 'start'", "'25:00' is no start"},
    {"30 February", kHeader + "A,out,2026-02-30T05:40,8.4\n", "2: column 'start'", "is no start"},
    {"a day that may be a month", kHeader + "A,out,5/9/2026 05:40,8.4\n", "2: column 'start'",
     "'5/9/2026 05:40' may have the day first or the month first"},
    {"a day that there is not", kHeader + "A,out,31.06.2026 05:40,8.4\n", "2: column 'start'",
     "expected a date and time like 2026-05-09T05:40:00 or a time of day like 05:40"},
    {"a day without a time", kHeader + "A,out,9 May 2026,8.4\n", "2: column 'start'",
     "'9 May 2026' has no time of day; expected one with its date"},
    {"a date that is none",
     "Configuration,Direction,Date,Time,Fuel consumption (L/100 km)\nA,out,soon,05:40,8.4\n",
     "2: column 'Date'", "'soon' is no date; expected a day like 2026-05-09"},
    {"two days in one line",
     "Configuration,Direction,Date,Time,Fuel consumption (L/100 km)\n"
     "A,out,2026-05-09,2026-05-10 05:40,8.4\n",
     "2: column 'Time'", "'2026-05-10 05:40' is on another day than 2026-05-09 in column 'Date'"},
    {"a length of two parts",
     "Configuration,Direction,Start,Duration,Fuel consumption (L/100 km)\n"
     "A,out,05:40,3:33,8.4\n",
     "2: column 'Duration'", "'3:33' may be minutes and seconds or hours and minutes"},
    {"a step back", kHeader + kGood + "A,out,05:46,8\n", "4: column 'start'",
     "'05:46' is earlier than the line before"},
    {"a step back of exactly twelve hours", kHeader + "A,out,17:40,8\nA,return,05:40,8\n",
     "3: column 'start'", "is earlier"},
    {"two forms", kHeader + kGood + "A,out,2026-05-09T06:00,8\n", "4: column 'start'",
     "is a date and time where the lines before have a time of day"},
    {"an offset on one line", kHeader + "A,out,2026-05-09T05:40,8\nA,return,2026-05-09T05:47Z,8\n",
     "3: column 'start'", "has an offset from UTC where the other runs have none"},
    {"an offset missing on one line",
     kHeader + "A,out,2026-05-09T05:40+02:00,8\nA,return,2026-05-09T05:47,8\n", "3: column 'start'",
     "has no offset from UTC where the other runs have one"},
    // Other cells.
    {"too many fields", kHeader + "A,out,05:40,8.4,wet\n", "2: column 5",
     "is beyond the header: 5 fields, expected at most 4"},
    {"a decimal comma between commas", kHeader + "A,out,05:40,8,4\n", "2: column 5",
     "a comma within a field needs quotes"},
    {"a quote that never closes", kHeader + "A,out,05:40,\"8.4\nA,return,05:47,8\n",
     "2: column 'l_per_100km'", "has a quote that never closes"},
    {"text after a quote", kHeader + "\"A\"x,out,05:40,8.4\n", "2: column 'configuration'",
     "has text after the closing quote"},
    {"a byte that is in no text", withColumns("notes", "caf\x81"), "2: column 'notes'",
     "is not UTF-8 text"},
    {"a run number of 0", withColumns("run", "0"), "2: column 'run'", "'0' is no run number"},
    {"half a run number", withColumns("run", "1.5"), "2: column 'run'", "is no run number"},
    {"a run number twice", "run," + kHeader + "7,A,out,05:40,8\n7,A,return,05:47,8\n",
     "3: column 'run'", "7 is given already on line 2"},
    {"a duration of 0", withColumns("duration_s", "0"), "2: column 'duration_s'",
     "'0' is impossible; expected a number above 0"},
    {"a negative distance", withColumns("distance_mi", "-3"), "2: column 'distance_mi'",
     "'-3' is impossible"},
    {"faster than sound", withColumns("speed_mph", "5000"), "2: column 'speed_mph'",
     "expected a number above 0 and at most 1240"},
    {"wind from nowhere", withColumns("wind_from_deg", "400"), "2: column 'wind_from_deg'",
     "expected a number from 0 to 360"},
    {"pressure in kilopascal", withColumns("pressure_hpa", "101.3"), "2: column 'pressure_hpa'",
     "expected a number from 300 to 1200"},
    {"an accessory switched on at no time", withColumns("Fan on s", "soon"), "2: column 'Fan on s'",
     "expected seconds from the run's start"},
    {"a control of 0", withColumns("control", "0"), "2: column 'control'", "is impossible"},
    {"marks without a word", withColumns("marks", "31.2"), "2: column 'marks'",
     "expected seconds and a word for each"},
    {"marks without seconds", withColumns("marks", "30 gust; lorry"), "2: column 'marks'",
     "is no list of marks"},
    // Discards.
    {"an unknown status", withColumns("status", "maybe"), "2: column 'status'",
     "'maybe' is unknown; expected 'counted' or 'discarded'"},
    {"a discard without a reason", withColumns("status,reason", "discarded,"), "2: column 'reason'",
     "is empty; a discarded run needs a rule's name or 'other'"},
    {"a discard without a column for it", withColumns("status", "discarded"), "2: column 'reason'",
     "is empty"},
    {"an unknown reason", withColumns("status,reason", "discarded,felt_wrong"),
     "2: column 'reason'", "'felt_wrong' is no reason"},
    {"other without evidence", withColumns("status,reason,evidence", "discarded,other, "),
     "2: column 'evidence'", "the reason 'other' needs words"},
    {"a reason for a counted run", withColumns("status,reason", "counted,overspeed"),
     "2: column 'reason'", "is given for a counted run"},
    {"evidence for a counted run", withColumns("status,evidence", "counted,a photo"),
     "2: column 'evidence'", "is given for a counted run"},
    // Pairs.
    {"a mark alone", "pair," + kHeader + "x,A,out,05:40,8\n,A,return,05:47,8\n", "2: column 'pair'",
     "'x' is on one run alone; expected on exactly two"},
    {"a mark on three",
     "pair," + kHeader + "x,A,out,05:40,8\nx,A,return,05:47,8\nx,A,out,05:54,8\n",
     "4: column 'pair'", "'x' is on 3 runs; expected on exactly two"},
    {"two out runs tied", "pair," + kHeader + "x,A,out,05:40,8\nx,A,out,05:47,8\n",
     "3: column 'pair'", "'x' ties two runs in one direction"},
    {"two blocks tied", "pair," + kHeader + "x,A,out,05:40,8\n,B,out,05:47,8\nx,A,return,05:54,8\n",
     "4: column 'pair'", "'x' ties runs of two blocks"},
    {"two days tied",
     "pair," + kHeader + "x,A,out,2026-05-09T05:40,8\nx,A,return,2026-05-09T11:40:00.1,8\n",
     "3: column 'pair'", "'x' ties runs of two blocks"},
    // Parts of the device.
    {"a part's output that is no number", withColumns("output_w@left", "much"),
     "2: column 'output_w@left'", "'much' is not a finite number; expected a number"},
    {"a part's speed below 0", withColumns("rotor_rpm_max@left", "-5"),
     "2: column 'rotor_rpm_max@left'", "'-5' is impossible; expected a number from 0 to 1000000"},
    {"a part's speed beyond all rotors", withColumns("Rotor rpm max@left", "2000000"),
     "2: column 'Rotor rpm max@left'", "is impossible"},
    // Several at once, in order of place.
    {"everything on one line", withColumns("status,duration_s,run", "perhaps,-1,x"),
     "2: column 'status'", "is unknown", 3},
    {"a header and lines", "configuration,start,mpg_us,mpg_imp\nA,x,0,30\nB,05:40,-1,3\n",
     "1: column 'mpg_imp'", "is a second consumption", 5},
};

class BadSheets : public testing::TestWithParam<BadSheet> {};

} // namespace

TEST_P(BadSheets, AreRefusedWithThePlaceAndWhatWasExpected)
{
    const BadSheet& sheet = GetParam();
    SheetOptions options;
    options.date = "2026-05-09";
    const auto read = parseRunSheet(sheet.text, "bad.csv", options);
    ASSERT_FALSE(read) << sheet.text;
    EXPECT_EQ(read.error().code, core::ErrorCode::badInput);
    EXPECT_EQ(read.error().where.english(), "bad.csv:" + sheet.where)
        << core::describe(read.error());
    EXPECT_THAT(read.error().message.english(), HasSubstr(sheet.message));
    EXPECT_EQ(1 + read.error().others.size(), sheet.faults) << core::describe(read.error());
}

INSTANTIATE_TEST_SUITE_P(OfEveryKind, BadSheets, testing::ValuesIn(kBadSheets));

TEST(BadSheet, TheLineIsTheOneWhereTheRecordStarts)
{
    const auto read = parseRunSheet("# one\n\nconfiguration,direction,start,l_per_100km,notes\n"
                                    "A,out,05:40,8,\"two\nlines\"\n# three\nA,out,05:47,x,\"\n\"\n",
                                    "bad.csv", {.date = "2026-05-09", .today = {}});
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().where.english(), "bad.csv:7: column 'l_per_100km'");
}

TEST(BadSheet, ABadLineInTheMiddleDoesNotHideTheOthers)
{
    std::string text = kHeader;
    for (int i = 0; i < 40; ++i)
        text += i % 10 == 3 ? "A,out,05:40,x\n" : "A,out,05:40,8\n";
    const auto read = parseRunSheet(text, "bad.csv", {.date = "2026-05-09", .today = {}});
    ASSERT_FALSE(read);
    EXPECT_EQ(1 + read.error().others.size(), 4u);
    EXPECT_EQ(read.error().others.back().where.english(), "bad.csv:35: column 'l_per_100km'");
}

TEST(BadSheet, WhatAStudyCannotTakeIsSaidForTheSheet)
{
    core::Study study;
    study.runs = {tests::aRun().number(1), tests::aRun().number(2).device().returning().at_min(7)};
    const auto with = [&](const std::string& line) {
        return parseRunSheet("run," + kHeader + line, "more.csv", {}, &study);
    };
    EXPECT_TRUE(with("3,b,OUT,2026-05-09T07:00,8\n"));
    EXPECT_THAT(with("3,C,out,2026-05-09T07:00,8\n").error().message.english(),
                HasSubstr("'C' is a third"));
    EXPECT_THAT(with("2,B,out,2026-05-09T07:00,8\n").error().message.english(),
                HasSubstr("2 is given already in the study"));
    EXPECT_THAT(with("3,B,out,2026-05-09T07:00Z,8\n").error().message.english(),
                HasSubstr("has an offset"));
}

TEST(BadSheet, NumbersThatTheStudyHasAreSaidOnceForTheColumnBesideTheirLines)
{
    core::Study study;
    study.runs = {tests::aRun().number(1), tests::aRun().number(2).device().returning().at_min(7)};
    const auto read = parseRunSheet("run," + kHeader + "1,A,out,2026-05-09T07:00,8\n" +
                                        "2,A,return,2026-05-09T07:10,8\n",
                                    "more.csv", {}, &study);
    ASSERT_FALSE(read);
    EXPECT_EQ(core::describe(read.error()),
              "more.csv:1: column 'run': has 2 numbers that the study has already; without this "
              "column the runs are numbered on from its last\n"
              "more.csv:2: column 'run': 1 is given already in the study; expected another number\n"
              "more.csv:3: column 'run': 2 is given already in the study; expected another number");
    EXPECT_TRUE(parseRunSheet(kHeader + "A,out,2026-05-09T07:00,8\n", "more.csv", {}, &study));
}

TEST(BadSheet, WhatIsNoSheetAtAllGetsOneSentence)
{
    const auto said = [](const std::string& text) {
        const auto read = parseRunSheet(text, "x.csv");
        return read ? std::string("taken") : core::describe(read.error());
    };
    EXPECT_EQ(said("{\n  \"runs\": [\n 1, 2, 3\n]}\n"),
              "x.csv:1: looks like JSON; expected a run sheet in CSV form");
    EXPECT_EQ(said("<?xml version=\"1.0\"?>\n<gpx>\n</gpx>\n"),
              "x.csv:1: looks like XML or HTML; expected a run sheet in CSV form");
    EXPECT_EQ(said("time_s,output_w\n0,1\n1,2\n2,3\n"),
              "x.csv:1: is no header of a run sheet; expected names of columns like configuration, "
              "direction, start, l_per_100km");
}

TEST(BadSheet, MoreThanTenThousandRunsAreRefused)
{
    std::string text = "configuration,direction,start,l_per_100km\n";
    for (int i = 0; i < 10'000; ++i)
        text += "A,out,05:40,8\n";
    const SheetOptions options{.date = "2026-05-09", .today = {}};
    EXPECT_TRUE(parseRunSheet(text, "long.csv", options));
    const auto read = parseRunSheet(text + "A,out,05:40,8\n", "long.csv", options);
    ASSERT_FALSE(read);
    EXPECT_EQ(core::describe(read.error()), "long.csv:10002: is one run too many; expected at most "
                                            "10000 in a study");
}

TEST(BadSheet, FilesThatAreNoSheetsAreRefused)
{
    const tests::TemporaryFolder folder;
    EXPECT_THAT(tests::readRunSheet(folder.path()).error().message.english(),
                StartsWith("is a directory"));
    EXPECT_THAT(tests::readRunSheet(folder / "none.csv").error().message.english(),
                StartsWith("there is no such file"));
    std::ofstream(folder / "large.csv") << std::string((64U << 20U) + 1, 'a');
    const auto large = tests::readRunSheet(folder / "large.csv");
    EXPECT_EQ(core::describe(large.error()),
              (folder / "large.csv").string() + ": is larger than 64 MB; expected a run sheet");
}

// Permissions mean nothing to root, so the reading is done by a child without its rights.
TEST(BadSheet, AFileThatMayNotBeReadIsRefused)
{
    const tests::TemporaryFolder folder;
    std::filesystem::permissions(folder.path(), std::filesystem::perms{0755});
    std::ofstream(folder / "mine.csv") << kHeader;
    std::filesystem::permissions(folder / "mine.csv", std::filesystem::perms{0});
    const pid_t child = fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
        if (geteuid() == 0 && setuid(65534) != 0)
            _exit(2);
        const auto read = tests::readRunSheet(folder / "mine.csv");
        _exit(!read && read.error().message.english().starts_with("cannot be read: Permission")
                  ? 0
                  : 1);
    }
    int status = 0;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status));
    EXPECT_EQ(WEXITSTATUS(status), 0);
}
