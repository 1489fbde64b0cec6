// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <ostream>

#include <unistd.h>

// Bad input: one clear sentence on standard error, the exit code of the contract, nothing on
// standard output, nothing changed.

namespace bothways::tests {
namespace {

using ::testing::HasSubstr;

constexpr const char* kHeader = "run,configuration,direction,start,l_per_100km\n";
constexpr const char* kGood = "1,A,out,2026-05-09T05:40:00,8.41\n";

struct BadSheet {
    const char* name;
    std::string text;
    const char* said; ///< part of the message
};

/// For the test's name in a list of tests.
std::ostream& operator<<(std::ostream& stream, const BadSheet& sheet)
{
    return stream << sheet.name;
}

class BadSheets : public ::testing::TestWithParam<BadSheet> {};

TEST_P(BadSheets, AreRefusedWithFileAndLine)
{
    const TempFolder folder;
    const std::string sheet = folder.write("bad.csv", GetParam().text);
    const Ran ran = bothwaysProgram({"analyse", sheet});
    EXPECT_EQ(ran.code, 3) << ran.err;
    EXPECT_EQ(ran.out, "");
    EXPECT_THAT(ran.err, HasSubstr("bad.csv:"));
    EXPECT_THAT(ran.err, HasSubstr(GetParam().said));
}

TEST_P(BadSheets, LeaveAStudyAsItWas)
{
    const TempFolder folder;
    const std::string study = folder / "day.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    const std::string before = bothwaysProgram({"export", study, "--json"}).out;
    EXPECT_EQ(bothwaysProgram({"import", study, folder.write("bad.csv", GetParam().text)}).code, 3);
    EXPECT_EQ(bothwaysProgram({"export", study, "--json"}).out, before);
}

std::string rows(const std::string& lines)
{
    return std::string(kHeader) + lines;
}

INSTANTIATE_TEST_SUITE_P(
    Sheets, BadSheets,
    ::testing::Values(
        BadSheet{"NegativeConsumption", rows("1,A,out,2026-05-09T05:40:00,-8.4\n"), "l_per_100km"},
        BadSheet{"NoConsumption", rows("1,A,out,2026-05-09T05:40:00,\n"), "l_per_100km"},
        BadSheet{"NotANumber", rows("1,A,out,2026-05-09T05:40:00,nan\n"), "l_per_100km"},
        BadSheet{"TimeGoingBackwards",
                 "configuration,direction,start,l_per_100km\nA,out,05:40,8.4\nA,return,05:20,8.4\n",
                 ":3: column 'start'"},
        BadSheet{"MissingColumn", "configuration,start,l_per_100km\nA,05:40,8.4\n", "direction"},
        BadSheet{"TwoFuelColumns",
                 "configuration,direction,start,l_per_100km,mpg_us\nA,out,05:40,8.4,28\n",
                 "mpg_us"},
        BadSheet{"ThirdConfiguration",
                 rows(std::string(kGood) + "2,B,return,2026-05-09T05:50:00,8.4\n"
                                           "3,C,out,2026-05-09T06:00:00,8.4\n"),
                 ":4: column 'configuration'"},
        BadSheet{"ThirdDirection",
                 rows(std::string(kGood) + "2,A,return,2026-05-09T05:50:00,8.4\n"
                                           "3,A,sideways,2026-05-09T06:00:00,8.4\n"),
                 ":4: column 'direction'"},
        BadSheet{"DiscardWithoutAReason",
                 "configuration,direction,start,l_per_100km,status\nA,out,05:40,8.4,discarded\n",
                 "reason"},
        BadSheet{"OtherWithoutEvidence",
                 "configuration,direction,start,l_per_100km,status,reason\n"
                 "A,out,05:40,8.4,discarded,other\n",
                 "evidence"},
        BadSheet{"UnknownStatus",
                 "configuration,direction,start,l_per_100km,status\nA,out,05:40,8.4,maybe\n",
                 "status"},
        BadSheet{"TooManyFields", rows("1,A,out,2026-05-09T05:40:00,8.4,9.9\n"), ":2"},
        BadSheet{"OneNumberTwice",
                 rows(std::string(kGood) + "1,A,return,2026-05-09T05:50:00,8.4\n"),
                 ":3: column 'run'"},
        BadSheet{"FuelWithoutADistance", "configuration,direction,start,fuel_l\nA,out,05:40,0.4\n",
                 "distance"},
        BadSheet{"EmptyFile", "", "bad.csv"}),
    [](const auto& tested) { return std::string(tested.param.name); });

TEST(BadSheetWithManyFaults, ListsThemAll)
{
    const TempFolder folder;
    const std::string sheet = folder.write(
        "bad.csv", rows("1,A,out,2026-05-09T05:40:00,-8.4\n2,A,return,yesterday,8.4\n"));
    const Ran ran = bothwaysProgram({"analyse", sheet});
    EXPECT_THAT(ran.err, HasSubstr("bad.csv:2: column 'l_per_100km'"));
    EXPECT_THAT(ran.err, HasSubstr("bad.csv:3: column 'start'"));
}

struct WrongCall {
    const char* name;
    std::vector<std::string> arguments; ///< STUDY, SHEET and FOLDER stand for paths
    int code;
    const char* said;
};

std::ostream& operator<<(std::ostream& stream, const WrongCall& call)
{
    return stream << call.name;
}

class WrongCalls : public ::testing::TestWithParam<WrongCall> {
protected:
    void SetUp() override
    {
        m_study = m_folder / "day.bothways";
        ASSERT_EQ(bothwaysProgram({"new", m_study}).code, 0);
        ASSERT_EQ(bothwaysProgram({"import", m_study, exampleFile("morning.csv")}).code, 0);
    }
    std::vector<std::string> arguments() const
    {
        std::vector<std::string> filled = GetParam().arguments;
        for (std::string& argument : filled) {
            if (argument == "STUDY")
                argument = m_study;
            else if (argument == "SHEET")
                argument = exampleFile("morning.csv");
            else if (argument == "FOLDER")
                argument = m_folder.path().string();
            else if (argument == "GARBAGE")
                argument = m_folder.write("garbage.bothways", "SQLite format 3, or so it says");
        }
        return filled;
    }
    TempFolder m_folder;
    std::string m_study;
};

TEST_P(WrongCalls, GetOneSentenceAndTheExitCode)
{
    const Ran ran = bothwaysProgram(arguments());
    EXPECT_EQ(ran.code, GetParam().code) << ran.err;
    EXPECT_EQ(ran.out, "");
    EXPECT_THAT(ran.err, HasSubstr(GetParam().said));
}

INSTANTIATE_TEST_SUITE_P(
    Calls, WrongCalls,
    ::testing::Values(
        WrongCall{"NoVerb", {}, 2, "no verb was given"},
        WrongCall{"UnknownVerb", {"analyze", "SHEET"}, 2, "there is no verb 'analyze'"},
        WrongCall{"UnknownOption", {"analyse", "SHEET", "--fast"}, 2, "'--fast' was not expected"},
        WrongCall{"NoFile", {"analyse"}, 2, "FILE"},
        WrongCall{"MarginOfWords", {"analyse", "SHEET", "--margin", "much"}, 2, "margin"},
        WrongCall{"MarginOfNothing", {"analyse", "SHEET", "--margin", "0"}, 2, "margin"},
        WrongCall{
            "ConfidenceOfACoin", {"analyse", "SHEET", "--confidence", "0.5"}, 2, "confidence"},
        WrongCall{"SeedBelowZero", {"analyse", "SHEET", "--fix-seed", "-1"}, 2, "--fix-seed"},
        WrongCall{
            "UnknownLimit", {"screen", "SHEET", "--limit", "overspeed.mph=3"}, 2, "overspeed.mph"},
        WrongCall{"UnknownUnit", {"analyse", "SHEET", "--unit", "furlongs"}, 2, "furlongs"},
        WrongCall{"UnknownBaseline",
                  {"analyse", "SHEET", "--baseline", "C"},
                  2,
                  "has no baseline 'C'; expected"},
        WrongCall{
            "BaselineOfNoRun", {"analyse", "STUDY", "--baseline", "C"}, 2, "expected 'A' or 'B'"},
        WrongCall{"BaselineSetToNoRun", {"set", "STUDY", "baseline=C"}, 2, "expected 'A' or 'B'"},
        WrongCall{"NoSuchSheet", {"analyse", "no_such.csv"}, 3, "no_such.csv"},
        WrongCall{"NoSuchStudy", {"analyse", "no_such.bothways"}, 4, "no_such.bothways"},
        WrongCall{"FolderForASheet", {"analyse", "FOLDER"}, 3, "directory"},
        WrongCall{"GarbageForAStudy", {"analyse", "GARBAGE"}, 4, "garbage.bothways"},
        WrongCall{"SheetForAStudy",
                  {"discard", "SHEET", "9", "--reason", "overspeed"},
                  4,
                  "is not a study"},
        WrongCall{"ApplyOnASheet", {"screen", "SHEET", "--apply"}, 4, "is not a study"},
        WrongCall{"NewOverAnOldOne", {"new", "STUDY"}, 4, "day.bothways"},
        WrongCall{"NoSuchRun",
                  {"discard", "STUDY", "99", "--reason", "overspeed"},
                  2,
                  "there is no run 99"},
        WrongCall{"NoSuchReason", {"discard", "STUDY", "9", "--reason", "bad_luck"}, 2, "bad_luck"},
        WrongCall{
            "OtherWithoutWords", {"discard", "STUDY", "9", "--reason", "other"}, 2, "--evidence"},
        WrongCall{"PairOfTwoBlocks", {"pair", "STUDY", "1", "8"}, 3, "two blocks"},
        WrongCall{"UnknownProperty", {"set", "STUDY", "colour=red"}, 2, "colour"},
        WrongCall{"AddWithABadColumn",
                  {"add", "STUDY", "start=2026-05-09T09:00", "l_per_100km=-3"},
                  3,
                  "column 'l_per_100km'"},
        WrongCall{"AddWithoutAColumnName", {"add", "STUDY", "8.4"}, 2, "is not NAME=VALUE"},
        WrongCall{"AddWithoutAStart", {"add", "STUDY", "l_per_100km=8"}, 2, "expected start="},
        WrongCall{"ImportOnNoDay",
                  {"import", "STUDY", "SHEET", "--date", "2026-13-01"},
                  2,
                  "'2026-13-01' is no date; expected YYYY-MM-DD"},
        WrongCall{"PairInOneDirection", {"pair", "STUDY", "1", "3"}, 3, "runs 1 and 3 were both"},
        WrongCall{"RenameOfNothing",
                  {"rename", "STUDY", "configuration", "C", "D"},
                  2,
                  "has no configuration 'C'"},
        WrongCall{"ExportOntoAFolder", {"export", "STUDY", "--to", "FOLDER"}, 4, "directory"},
        WrongCall{"ExportOntoAStudy", {"export", "SHEET", "--to", "STUDY"}, 4, "it is a study"},
        WrongCall{"ExportOntoAFullDisk", {"export", "SHEET", "--to", "/dev/full"}, 4, "/dev/full"},
        WrongCall{"PlanWithOneLetter", {"plan", "--sequence", "AAA"}, 2, "sequence"},
        WrongCall{"PlanWithoutNoise", {"plan", "--noise", "0"}, 2, "--noise"},
        WrongCall{"PlanWithPairsBelowNothing", {"plan", "--pairs", "-3"}, 2, "--pairs"},
        WrongCall{"PlanWithoutHours", {"plan", "--hours", "0"}, 2, "--hours"},
        WrongCall{"PlanWithTooFewHours", {"plan", "--hours", "0.1"}, 2, "hours"},
        WrongCall{"PlanOfPairsInNoTime", {"plan", "--pair-min", "0"}, 2, "--pair-min"},
        WrongCall{
            "PlanFromNoiseTwice", {"plan", "--noise", "1", "--noise-from", "SHEET"}, 2, "--noise"},
        WrongCall{"PlanFromNoSuchStudy", {"plan", "--noise-from", "no_such.csv"}, 3, "no_such.csv"},
        WrongCall{"PlanFromGarbage", {"plan", "--noise-from", "GARBAGE"}, 4, "garbage.bothways"},
        WrongCall{"PlanCardOntoAFullDisk", {"plan", "--card", "/dev/full"}, 4, "/dev/full"},
        WrongCall{"PlanCardIntoNowhere",
                  {"plan", "--card", "/no/such/folder/card.html"},
                  4,
                  "/no/such/folder"},
        WrongCall{"LedgerOfNothing", {"ledger", "--generator", "0"}, 2, "generator"},
        WrongCall{"LedgerOfWords", {"ledger", "--marginal", "much"}, 2, "--marginal"},
        WrongCall{"LedgerFallingRange", {"ledger", "--drive", "0.9,0.8,0.7"}, 2, "--drive"},
        WrongCall{"LedgerStandingStill", {"ledger", "--speed-kmh", "0"}, 2, "--speed-kmh"},
        WrongCall{"LedgerBeyondOne", {"ledger", "--alternator", "1.5"}, 2, "alternator"}),
    [](const auto& tested) { return std::string(tested.param.name); });

TEST(BadPlace, ToMakeAStudyIsSaid)
{
    const Ran ran = bothwaysProgram({"new", "/no/such/folder/day.bothways"});
    EXPECT_EQ(ran.code, 4);
    EXPECT_THAT(ran.err, HasSubstr("/no/such/folder/day.bothways"));
}

TEST(ReadOnlyStudy, IsReadButNotChanged)
{
    if (geteuid() == 0)
        GTEST_SKIP() << "root may write everywhere";
    const TempFolder folder;
    const std::string study = folder / "day.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    std::filesystem::permissions(study, std::filesystem::perms::owner_read);
    EXPECT_EQ(bothwaysProgram({"runs", study}).code, 0);
    EXPECT_EQ(bothwaysProgram({"set", study, "margin=2"}).code, 4);
}

TEST(CliFaults, OfOneCauseAreOneLine)
{
    const TempFolder folder;
    std::string sheet = "configuration,direction,start,l_per_100km\n";
    for (int i = 0; i < 12; ++i)
        sheet += std::string(i == 0  ? "wihtout"
                             : i < 6 ? "without"
                                     : "with") +
                 "," + (i % 2 == 0 ? "out" : "back") + ",2026-05-09T" + (i < 10 ? "0" : "") +
                 std::to_string(i) + ":00,8.1\n";
    const Ran typo = bothwaysProgram({"analyse", folder.write("typo.csv", sheet)});
    EXPECT_EQ(typo.code, 3);
    EXPECT_THAT(typo.err, HasSubstr("typo.csv:2: column 'configuration': 'wihtout' is a third"));
    EXPECT_EQ(std::count(typo.err.begin(), typo.err.end(), '\n'), 1);
    std::string bad = "configuration,direction,start,l_per_100km\n";
    for (int i = 0; i < 9; ++i)
        bad += std::string("A,out,2026-05-09T0") + std::to_string(i) + ":00," +
               (i == 4 ? "8.1" : "much") + "\n";
    const Ran many = bothwaysProgram({"analyse", folder.write("bad.csv", bad)});
    EXPECT_THAT(many.err, HasSubstr("bad.csv:2–5, 7–10: column 'l_per_100km': 'much' is not"));
    EXPECT_EQ(std::count(many.err.begin(), many.err.end(), '\n'), 1);
    // A date in no known form differs in each line, and is one fault all the same.
    std::string dates = "configuration,direction,start,l_per_100km\n";
    for (int i = 0; i < 9; ++i)
        dates += "A,out,13/6/20x6 0" + std::to_string(i) + ":00,8.1\n";
    const Ran flood = bothwaysProgram({"analyse", folder.write("dates.csv", dates)});
    EXPECT_THAT(flood.err, HasSubstr("dates.csv:2–10: column 'start': '13/6/20x6 00:00' is no "));
    EXPECT_THAT(flood.err, HasSubstr("(and 8 more like it)"));
    EXPECT_EQ(std::count(flood.err.begin(), flood.err.end(), '\n'), 1);
    // A few are a line each: what is wrong in a cell is mended in that cell.
    dates.resize(dates.size() - 4 * std::string("A,out,13/6/20x6 00:00,8.1\n").size());
    const Ran few = bothwaysProgram({"analyse", folder.write("few.csv", dates)});
    EXPECT_EQ(std::count(few.err.begin(), few.err.end(), '\n'), 5);
}

TEST(CliFaults, OfManyRecordingsThatAreNotThereAreOneLineWithAWayOn)
{
    const TempFolder folder;
    std::string sheet = "configuration,direction,start,l_per_100km,trace\n";
    for (int i = 0; i < 9; ++i)
        sheet += "A,out,2026-05-09T0" + std::to_string(i) + ":00,8.1,logs/run_" +
                 std::to_string(i) + ".csv\n";
    const Ran gone = bothwaysProgram({"analyse", folder.write("day.csv", sheet)});
    EXPECT_EQ(gone.code, 3);
    EXPECT_THAT(gone.err, HasSubstr("run_0.csv: there is no such file"));
    EXPECT_THAT(gone.err, HasSubstr("--traces FOLDER"));
    EXPECT_THAT(gone.err, HasSubstr("(and 8 more like it)"));
    EXPECT_EQ(std::count(gone.err.begin(), gone.err.end(), '\n'), 1);
}

} // namespace
} // namespace bothways::tests
