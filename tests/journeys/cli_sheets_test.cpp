// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/journeys/cli_journey.h"

#include <gmock/gmock.h>

#include <filesystem>
#include <fstream>
#include <iterator>

#include <fmt/format.h>

// Spreadsheets of people's own, at the command line.

namespace bothways::tests {
namespace {

using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::StartsWith;

std::string spreadsheet(const std::string& name)
{
    return std::string(BOTHWAYS_SOURCE_DIR "/tests/storage/spreadsheet/files/") + name;
}

std::string wholeFile(const std::string& path)
{
    std::ifstream stream(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

TEST(Spreadsheets, OfEveryKindAreAnalysedReportedListedAndImported)
{
    for (const char* file : {"shared_strings.xlsx", "dates_with_times.ods", "de_semicolons.csv",
                             "de_utf16.tsv", "es_bars.txt"}) {
        const TempFolder folder;
        const std::string study = folder / "day.bothways";
        const Ran runs = bothwaysProgram({"runs", spreadsheet(file)});
        EXPECT_EQ(runs.code, 0) << file << runs.err;
        EXPECT_THAT(runs.out, HasSubstr("8.41 L/100 km")) << file;
        EXPECT_EQ(bothwaysProgram({"analyse", spreadsheet(file)}).code, 0) << file;
        EXPECT_EQ(
            bothwaysProgram({"report", spreadsheet(file), "--output", folder / "a.html"}).code, 0)
            << file;
        ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
        const Ran imported = bothwaysProgram({"import", study, spreadsheet(file)});
        EXPECT_EQ(imported.code, 0) << file << imported.err;
        EXPECT_THAT(imported.out, HasSubstr("The sheet was read with ")) << file;
        const std::string exported = folder / "out.csv";
        ASSERT_EQ(bothwaysProgram({"export", study, "--output", exported}).code, 0);
        EXPECT_EQ(jsonOf({"analyse", exported, "--json"})["headline"],
                  jsonOf({"analyse", study, "--json"})["headline"])
            << file;
    }
}

TEST(Spreadsheets, ThatHaveAColumnOfUnknownNameAreToldOnceWhatItIs)
{
    const TempFolder folder;
    const std::string study = folder / "day.bothways";
    const std::string sheet = spreadsheet("de_unknown_consumption.csv");
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    const Ran unknown = bothwaysProgram({"import", study, sheet});
    EXPECT_EQ(unknown.code, 3);
    EXPECT_THAT(unknown.err, HasSubstr("column 'Verbrauch': has no unit that is known"));
    const Ran told = bothwaysProgram({"import", study, sheet, "--column", "Verbrauch=l_per_100km"});
    EXPECT_EQ(told.code, 0) << told.err;
    // Another day, with the same header and nothing said.
    std::string text = wholeFile(sheet);
    for (std::size_t at = text.find("09.05."); at != text.npos; at = text.find("09.05."))
        text.replace(at, 6, "16.05.");
    const Ran again = bothwaysProgram({"import", study, folder.write("next.csv", text)});
    EXPECT_EQ(again.code, 0) << again.err;
    EXPECT_EQ(again.err, "");
    EXPECT_EQ(bothwaysProgram({"analyse", sheet}).code, 3);
    EXPECT_EQ(bothwaysProgram({"analyse", sheet, "--column", "Verbrauch=l_per_100km"}).code, 0);
}

TEST(Spreadsheets, AreToldOnceWhatStandsFirstInTheirDates)
{
    const TempFolder folder;
    const std::string study = folder / "day.bothways";
    const std::string sheet = spreadsheet("us_unclear_dates.csv");
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    EXPECT_EQ(bothwaysProgram({"import", study, sheet}).code, 3);
    EXPECT_EQ(bothwaysProgram({"import", study, sheet, "--dates", "month-first"}).code, 0);
    ASSERT_EQ(bothwaysProgram({"undo", study}).code, 0);
    EXPECT_EQ(bothwaysProgram({"import", study, sheet}).code, 0);
    EXPECT_THAT(bothwaysProgram({"runs", study}).out, HasSubstr("2026-05-09 05:40:00"));
    EXPECT_EQ(bothwaysProgram({"import", study, sheet, "--dates", "middle-first"}).code, 2);
}

TEST(Spreadsheets, OfAWorkbookAreChosenByName)
{
    const std::string book = spreadsheet("two_sheets_with_runs.xlsx");
    const Ran unclear = bothwaysProgram({"runs", book});
    EXPECT_EQ(unclear.code, 3);
    EXPECT_THAT(unclear.err, HasSubstr("has 2 sheets with runs: 'May', 'June'"));
    EXPECT_EQ(bothwaysProgram({"runs", book, "--sheet", "June"}).code, 0);
    EXPECT_EQ(bothwaysProgram({"runs", book, "--sheet", "July"}).code, 2);
    EXPECT_EQ(bothwaysProgram({"runs", spreadsheet("ours.csv"), "--sheet", "June"}).code, 2);
}

TEST(Spreadsheets, ThatAreRefusedLeaveAStudyAsItWas)
{
    const TempFolder folder;
    const std::string study = folder / "day.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    const std::string before = bothwaysProgram({"export", study, "--json"}).out;
    for (const char* file :
         {"bomb.xlsx", "hundred_thousand_lines.xlsx", "merged.ods", "merged.xlsx", "password.ods",
          "password.xlsx", "picture.csv", "pivot.ods", "pivot.xlsx", "two_beside.xlsx",
          "two_tables.csv", "formula_without_value.xlsx", "serial_60.xlsx"}) {
        const Ran ran = bothwaysProgram({"import", study, spreadsheet(file)});
        EXPECT_EQ(ran.code, 3) << file;
        EXPECT_EQ(ran.out, "") << file;
        EXPECT_THAT(ran.err, HasSubstr(file));
        EXPECT_THAT(ran.err, HasSubstr("; expected ")) << file;
    }
    EXPECT_EQ(bothwaysProgram({"export", study, "--json"}).out, before);
}

TEST(Spreadsheets, OfTwoHundredRunsInNationalFormsShowTheirVerdict)
{
    const TempFolder folder;
    std::string text = "Tag;Uhrzeit;Zustand;Richtung;Verbrauch (l/100 km);Wetter\n";
    for (int i = 0; i < 200; ++i)
        text += fmt::format("{:02}.05.2026;{:02}:{:02};{};{};8,{:02};trocken\n", 1 + i / 40,
                            5 + i % 40 * 6 / 60, i % 40 * 6 % 60, i % 40 < 20 ? "ohne" : "mit",
                            i % 2 == 0 ? "hin" : "zurück", 30 + i * 7 % 20);
    const std::string sheet = folder.write("days.csv", text);
    const Ran ran = bothwaysProgram({"analyse", sheet});
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("200 runs: 200 counted"));
}

TEST(SheetTwice, IsSaidWithTheRunsThatTheStudyHad)
{
    const TempFolder folder;
    const std::string study = folder / "day.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    const std::string sheet = spreadsheet("shared_strings.xlsx");
    EXPECT_EQ(bothwaysProgram({"import", study, sheet}).err, "");
    const Ran again = bothwaysProgram({"import", study, sheet});
    EXPECT_EQ(again.code, 0);
    EXPECT_THAT(again.err, HasSubstr("8 runs of the sheet were in the study already"));
    EXPECT_THAT(again.err, HasSubstr("runs 1–8;"));
}

TEST(FileTwice, IsRefusedWhereItWouldBePooledWithItself)
{
    const TempFolder folder;
    const std::string sheet = spreadsheet("shared_strings.xlsx");
    const std::string copy = folder / "copy.xlsx";
    std::filesystem::copy_file(sheet, copy);
    const Ran twice = bothwaysProgram({"analyse", sheet, sheet});
    EXPECT_EQ(twice.code, 2);
    EXPECT_EQ(twice.out, "");
    EXPECT_THAT(twice.err, HasSubstr("is given twice"));
    const Ran copied = bothwaysProgram({"analyse", sheet, copy});
    EXPECT_EQ(copied.code, 0);
    EXPECT_THAT(copied.err, HasSubstr("copy.xlsx holds the same as"));
    EXPECT_THAT(bothwaysProgram({"report", sheet, sheet, "--output", folder / "a.html"}).err,
                HasSubstr("is given twice"));
    EXPECT_EQ(bothwaysProgram({"analyse", sheet, spreadsheet("dates_of_1904.xlsx")}).code, 0);
}

TEST(FileTwice, IsFoundByItsContentAndByItsRunsWhateverTheirUnit)
{
    const TempFolder folder;
    const std::string study = folder / "day.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    ASSERT_EQ(bothwaysProgram({"import", study, spreadsheet("shared_strings.xlsx")}).code, 0);
    const std::string copy = folder / "renamed.bothways";
    std::filesystem::copy_file(study, copy);
    EXPECT_THAT(bothwaysProgram({"analyse", study, copy}).err,
                HasSubstr("renamed.bothways holds the same as"));

    std::string litres = "configuration;direction;start;l_per_100km\n";
    std::string miles = "configuration;direction;start;mpg_us\n";
    for (int i = 0; i < 8; ++i) {
        const double l_per_100km = 8.0 + 0.1 * i;
        const std::string head =
            fmt::format("{};{};2026-05-09T05:{:02}:00;", i / 2 % 2 == 0 ? "A" : "B",
                        i % 2 == 0 ? "out" : "return", 7 * i);
        litres += fmt::format("{}{}\n", head, l_per_100km);
        miles += fmt::format("{}{:.12f}\n", head, 235.214583333333 / l_per_100km);
    }
    const Ran other = bothwaysProgram(
        {"analyse", folder.write("litres.csv", litres), folder.write("miles.csv", miles)});
    EXPECT_EQ(other.code, 0) << other.err;
    EXPECT_THAT(other.err, HasSubstr("8 of its 8 runs are runs of litres.csv, too"));
}

TEST(SeveralSheets, ThatAllLackAColumnThatIsNamedAreRefused)
{
    const TempFolder folder;
    const std::string other = folder.write("other.csv", "configuration,direction,start,Liter\n"
                                                        "A,out,2026-06-09T05:40:00,8.1\n"
                                                        "A,return,2026-06-09T05:47:00,8.0\n");
    const std::string first = spreadsheet("shared_strings.xlsx");
    const Ran fits = bothwaysProgram({"analyse", first, other, "--column", "Liter=l_per_100km"});
    EXPECT_EQ(fits.code, 0) << fits.err;
    const Ran typed = bothwaysProgram({"analyse", first, first + ".x", "--column", "Litre=x"});
    EXPECT_NE(typed.code, 0);
    const Ran none = bothwaysProgram(
        {"analyse", first, spreadsheet("dates_with_times.ods"), "--column", "Litre=l_per_100km"});
    EXPECT_EQ(none.code, 2);
    EXPECT_THAT(none.err, HasSubstr("none of the files has a column 'Litre'"));
}

TEST(SheetsWithRecordings, ThatWereMovedAreReadWithTheFolderOfTheRecordings)
{
    const TempFolder folder;
    const std::string sheet =
        folder.write("day.csv", "configuration,direction,start,duration_s,l_per_100km,trace\n"
                                "A,out,2026-05-09T05:40:00,3,8.1,old/one.csv\n"
                                "A,return,2026-05-09T05:47:00,3,8.0,old/two.csv\n");
    std::filesystem::create_directory(folder.path() / "card");
    const std::string card = folder / "card";
    folder.write("card/one.csv", "time_s,v\n0,1\n1,2\n2,3\n3,4\n");
    const Ran missing = bothwaysProgram({"screen", sheet, "--traces", card});
    EXPECT_EQ(missing.code, 3);
    EXPECT_THAT(missing.err,
                HasSubstr("two.csv: there is no such file, and none of this name in "));
    folder.write("card/two.csv", "time_s,v\n0,1\n1,2\n2,3\n3,4\n");
    const Ran both = bothwaysProgram({"screen", sheet});
    EXPECT_THAT(both.err, testing::AllOf(HasSubstr("one.csv"), HasSubstr("two.csv")));
    for (const char* verb : {"screen", "analyse", "runs"})
        EXPECT_EQ(bothwaysProgram({verb, sheet, "--traces", card}).code, 0) << verb;
    const std::string study = folder / "day.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    ASSERT_EQ(bothwaysProgram({"import", study, sheet, "--traces", card}).code, 0);
    EXPECT_EQ(bothwaysProgram({"screen", study, "--traces", card}).code, 2);
    // What it exports comes in again from another folder.
    std::filesystem::create_directory(folder.path() / "elsewhere");
    const std::string exported = folder / "elsewhere/out.csv";
    ASSERT_EQ(bothwaysProgram({"export", study, "--output", exported}).code, 0);
    const std::string again = folder / "again.bothways";
    ASSERT_EQ(bothwaysProgram({"new", again}).code, 0);
    EXPECT_EQ(bothwaysProgram({"import", again, exported}).code, 3);
    EXPECT_EQ(bothwaysProgram({"import", again, exported, "--traces", card}).code, 0);
    ASSERT_EQ(bothwaysProgram({"undo", again}).code, 0);
    EXPECT_EQ(bothwaysProgram({"undo", again}).code, 2) << "runs and recordings are one step";
}

TEST(SheetsWithRecordings, ARecordingTakenForASheetIsSaidToBeOne)
{
    const TempFolder folder;
    const std::string study = folder / "day.bothways";
    ASSERT_EQ(bothwaysProgram({"new", study}).code, 0);
    std::string rows;
    for (int s = 0; s < 60; ++s)
        rows += fmt::format("{},{},0.{:02}\n", s, 80 + s % 5, s);
    for (const char* header : {"time_s,road_speed_kmh,fuel_used_l\n", "Time (s),Speed,Flow\n"}) {
        const Ran ran =
            bothwaysProgram({"import", study, folder.write("logger.csv", header + rows)});
        EXPECT_EQ(ran.code, 3);
        EXPECT_THAT(ran.err,
                    HasSubstr("a logger's recording by its look; expected it behind --trace"));
    }
}

TEST(UnknownColumns, AreSaidByAnalyseAsByImport)
{
    const TempFolder folder;
    const std::string sheet = folder.write(
        "day.csv", "configuration,direction,start,l_per_100km,Driver,notse\n"
                   "A,out,2026-05-09T05:40,8.4,Max,wet\nA,return,2026-05-09T05:47,8.2,Max,wet\n");
    const Ran ran = bothwaysProgram({"analyse", sheet});
    EXPECT_EQ(ran.code, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("columns kept without a meaning: Driver, notse"));
    EXPECT_THAT(ran.out, HasSubstr("did you mean 'notes' by 'notse'?"));
}

TEST(Columns, AreShownByAnyNameThatASheetMayHaveForThem)
{
    EXPECT_THAT(bothwaysProgram({"columns", "control"}).out, StartsWith("control [that of"));
    EXPECT_THAT(bothwaysProgram({"columns", "Bemerkungen"}).out, StartsWith("notes\n"));
    EXPECT_THAT(bothwaysProgram({"columns", "windscreen_on_s", "output_w@left"}).out,
                AllOf(HasSubstr("NAME_on_s [s]\n"), HasSubstr("\noutput_w [W]\n")));
    EXPECT_THAT(bothwaysProgram({"columns", "MPG"}).out,
                AllOf(HasSubstr("mpg_us [mpg (US)]"), HasSubstr("mpg_imp [mpg (imperial)]")));
    const Ran slip = bothwaysProgram({"columns", "contrl"});
    EXPECT_EQ(slip.code, 2);
    EXPECT_THAT(slip.err, HasSubstr("there is no column 'contrl'; did you mean 'control'?"));
    EXPECT_EQ(bothwaysProgram({"columns", "control", "--markdown"}).code, 2);
}

TEST(Columns, AreTheSameInTheProgramTheHandbookAndTheReadme)
{
    const std::string english = bothwaysProgram({"columns", "--markdown", "--language", "en"}).out;
    const std::string german = bothwaysProgram({"columns", "--markdown", "--language", "de"}).out;
    const std::string source = BOTHWAYS_SOURCE_DIR "/";
    EXPECT_THAT(wholeFile(source + "resources/help/spreadsheets.md"), HasSubstr(english));
    EXPECT_THAT(wholeFile(source + "resources/help/de/spreadsheets.md"), HasSubstr(german));
    EXPECT_THAT(wholeFile(source + "README.md"),
                HasSubstr(english.substr(0, english.find("\n\n"))));
    const std::string text = bothwaysProgram({"columns"}).out;
    EXPECT_THAT(text, HasSubstr("control [that of the consumption]"));
    EXPECT_THAT(text, HasSubstr("verbrauch (L/100 km)"));
}

} // namespace
} // namespace bothways::tests
