// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/clock.h"
#include "storage/sheet/ordinary_sheet.h"
#include "storage/spreadsheet/workbook.h"
#include "tests/support/read_sheet.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>
#include <filesystem>

// Thirty-odd spreadsheets from five countries' habits (make.py beside them makes them), each with
// what must come of it.

using namespace bothways;
using storage::DateOrder;
using storage::SheetOptions;
using testing::HasSubstr;

namespace {

const std::filesystem::path kSpreadsheets =
    std::filesystem::path(BOTHWAYS_SOURCE_DIR) / "tests/storage/spreadsheet/files";

core::Result<storage::RunSheet> readSpreadsheet(const std::string& file,
                                                const SheetOptions& options = {})
{
    return tests::readRunSheet(kSpreadsheets / file, options);
}

/// "A out 2026-05-09T05:40:00 8.41 l_per_100km (2)": the digits of the consumption last.
std::string inShort(const core::Run& run)
{
    std::string text =
        run.configuration + " " + run.direction + " " + core::formatDateTime(run.start) + " ";
    if (!run.consumption)
        return text + "-";
    return text + fmt::format("{} {} ({})", run.consumption->value,
                              core::unitName(run.consumption->unit), run.consumption->decimals);
}

std::vector<std::string> inEnglish(const std::vector<core::Message>& messages)
{
    std::vector<std::string> texts;
    for (const core::Message& message : messages)
        texts.push_back(message.english());
    return texts;
}

struct Ordinary {
    const char* file;
    std::string first, last; ///< inShort() of these runs
    std::vector<std::string> found = {};
    SheetOptions options = {};
    std::size_t runs = 8;
};

void PrintTo(const Ordinary& sheet, std::ostream* out)
{
    *out << sheet.file;
}

SheetOptions withDates(DateOrder order)
{
    SheetOptions options;
    options.dates = order;
    return options;
}

SheetOptions withColumn(const char* header, const char* column)
{
    SheetOptions options;
    options.columns = {{header, column}};
    return options;
}

SheetOptions ofSheet(const char* name)
{
    SheetOptions options;
    options.sheet = name;
    return options;
}

const std::string kFirst = "A out 2026-05-09T05:40:00 8.41 l_per_100km (2)";
const std::string kLast = "B return 2026-05-09T07:04:00 8.28 l_per_100km (2)";

const Ordinary kOrdinary[] = {
    {"us_dates_and_halves.csv",
     "A out 2026-05-13T05:40:00 28 mpg_us (1)",
     "B return 2026-05-13T07:04:00 28.7 mpg_us (1)",
     {"the month before the day in dates", "Temp (°F)=temperature_c"}},
    {"us_unclear_dates.csv",
     "A out 2026-05-09T05:40:00 28 mpg_us (1)",
     "B return 2026-05-09T07:04:00 28.7 mpg_us (1)",
     {"the month before the day in dates"},
     withDates(DateOrder::monthFirst)},
    {"us_unclear_dates.csv",
     "A out 2026-09-05T05:40:00 28 mpg_us (1)",
     "B return 2026-09-05T07:04:00 28.7 mpg_us (1)",
     {"the day before the month in dates"},
     withDates(DateOrder::dayFirst)},
    {"us_thousands.csv",
     "A out 2026-05-09T05:40:00 1.2005 fuel_l (4)",
     "B return 2026-05-09T07:04:00 1.2075 fuel_l (4)",
     {"signs between thousands: '1,008' is 1008"}},
    {"uk_day_first.csv",
     "A out 2026-05-25T05:40:00 33 mpg_imp (1)",
     "B return 2026-05-26T07:04:00 33.7 mpg_imp (1)",
     {"the day before the month in dates", "MPG (UK)=mpg_imp"}},
    {"de_semicolons.csv",
     "ohne hin 2026-05-09T05:40:00 8.41 l_per_100km (2)",
     "mit zurück 2026-05-09T07:04:00 8.28 l_per_100km (2)",
     {"line 5 as its header", "line 6 as units", "totals: 15", "remarks: 17",
      "Strecke=distance_km"}},
    {"de_windows_1252.csv",
     "ohne hin 2026-05-09T05:40:00 8.41 l_per_100km (2)",
     "mit zurück 2026-05-09T07:04:00 8.28 l_per_100km (2)",
     {"Windows-1252 (Latin-1) letters"}},
    {"de_utf16.tsv",
     "ohne hin 2026-05-09T05:40:00 8.41 l_per_100km (2)",
     "mit zurück 2026-05-09T07:04:00 8.28 l_per_100km (2)",
     {"UTF-16 letters"}},
    {"de_utf16_big_end.tsv",
     "ohne hin 2026-05-09T05:40:00 8.41 l_per_100km (2)",
     "mit zurück 2026-05-09T07:04:00 8.28 l_per_100km (2)",
     {"UTF-16 letters"}},
    {"de_months_in_words.csv", kFirst, kLast, {"Dauer (min:s)=duration_s"}},
    {"de_unknown_consumption.csv",
     kFirst,
     kLast,
     {"Verbrauch=l_per_100km"},
     withColumn("Verbrauch", "l_per_100km")},
    {"ch_apostrophes.csv", "A out 2026-05-09T05:40:00 0.5 fuel_l (3)",
     "B return 2026-05-09T07:04:00 0.57 fuel_l (3)"},
    {"fr_latin_1.csv",
     kFirst,
     "B return 2026-05-29T07:04:00 8.28 l_per_100km (2)",
     {"Windows-1252 (Latin-1) letters", "the day before the month", "totals: 10"}},
    {"es_bars.txt",
     kFirst,
     "B return 2026-05-13T06:07:00 8.3 l_per_100km (1)",
     {"the day before the month in dates", "totals: 12"},
     {},
     10},
    {"ours.csv", kFirst, kLast},
    {"shared_strings.xlsx", kFirst, kLast, {"its sheet 'Runs'"}},
    {"inline_strings_times.xlsx",
     kFirst,
     kLast,
     {"its sheet 'Mai'", "line 3 as its header", "line 4 as units", "totals: 13"}},
    {"dates_of_1904.xlsx", "A out 2026-05-09T05:40:00 12 km_per_l (0)",
     "B return 2026-05-09T07:04:00 12.7 km_per_l (1)"},
    {"iso_dates_and_formulas.xlsx", kFirst, kLast},
    {"no_places.xlsx", kFirst, kLast, {"Variant=configuration"}},
    {"second_sheet_and_hidden.xlsx", kFirst, kLast, {"its sheet 'May'"}},
    {"second_sheet_and_hidden.xlsx", kFirst, kLast, {"its sheet 'Old'"}, ofSheet("old")},
    {"two_sheets_with_runs.xlsx",
     kFirst,
     "A return 2026-05-09T06:01:00 8.19 l_per_100km (2)",
     {"its sheet 'June'"},
     ofSheet("June"),
     4},
    {"repeated_and_times.ods",
     "A out 2026-05-09T05:40:00 0.437 fuel_l (3)",
     "B return 2026-05-09T07:04:00 0.431 fuel_l (3)",
     {"line 4 as its header", "totals: 13"}},
    {"dates_with_times.ods", kFirst, kLast, {"its sheet 'Pruebas'"}},
    {"texts_and_one_date.ods",
     "A out 2026-05-09T05:40:00 0.43 fuel_l (3)",
     "B return 2026-05-09T07:04:00 0.437 fuel_l (3)",
     {"the date of the line above where there is none"}},
};

class OrdinarySheets : public testing::TestWithParam<Ordinary> {};

struct Refused {
    const char* file;
    std::string where, message;
    SheetOptions options = {};
};

void PrintTo(const Refused& sheet, std::ostream* out)
{
    *out << sheet.file;
}

const Refused kRefused[] = {
    {"us_unclear_dates.csv", ":2: column 'Start'", "may have the day first or the month first"},
    {"de_unknown_consumption.csv", ":1: column 'Verbrauch'", "has no unit that is known"},
    {"two_tables.csv", ":11", "a second table begins here"},
    {"two_beside.xlsx", "[Runs]:1: column 'Configuration'", "a second table begins at column F"},
    {"two_sheets_with_runs.xlsx", "", "has 2 sheets with runs: 'May', 'June'"},
    {"two_sheets_with_runs.xlsx", "", "has no sheet 'July'; expected one of 'May', 'June'",
     ofSheet("July")},
    {"de_unknown_consumption.csv", ":1", "has no column 'Verbrauhc'",
     withColumn("Verbrauhc", "l_per_100km")},
    {"pivot.xlsx", "[Pivot]:1", "is a pivot table"},
    {"pivot.ods", "[Pivot]:1", "is a pivot table"},
    {"merged.xlsx", "[Runs]:2: column 'A'", "the cells A2 to A5 are merged"},
    {"merged.ods", "[Runs]:2: column 'A'", "the cells A2 to A5 are merged"},
    {"formula_without_value.xlsx", "[Runs]:4: column 'Fuel consumption (L/100 km)'",
     "has a formula without its value"},
    {"serial_60.xlsx", "[Runs]:2: column 'Start'", "holds the error '1900-02-29'"},
    {"password.xlsx", ":1", "is protected by a password"},
    {"password.ods", "", "is protected by a password"},
    {"picture.csv", ":1", "is a picture"},
    {"hundred_thousand_lines.xlsx", "[Log]:11001", "is one line too many"},
    {"bomb.xlsx", "", "unpacks to more than 128 MB"},
};

class RefusedSheets : public testing::TestWithParam<Refused> {};

} // namespace

TEST_P(OrdinarySheets, ComeInAsTheyAreMeant)
{
    const Ordinary& expected = GetParam();
    const auto sheet = readSpreadsheet(expected.file, expected.options);
    ASSERT_TRUE(sheet) << core::describe(sheet.error());
    const auto& runs = sheet.value().study.runs;
    ASSERT_EQ(runs.size(), expected.runs);
    EXPECT_EQ(inShort(runs.front()), expected.first);
    EXPECT_EQ(inShort(runs.back()), expected.last);
    std::string found;
    for (const core::Message& message : sheet.value().found)
        found += message.english() + "\n";
    for (const std::string& words : expected.found)
        EXPECT_THAT(found, HasSubstr(words));
    EXPECT_FALSE(sheet.value().dateAssumed);
}

INSTANTIATE_TEST_SUITE_P(OfManyHabits, OrdinarySheets, testing::ValuesIn(kOrdinary));

TEST_P(RefusedSheets, SayWhereAndWhatWasExpected)
{
    const Refused& expected = GetParam();
    const auto sheet = readSpreadsheet(expected.file, expected.options);
    ASSERT_FALSE(sheet);
    EXPECT_EQ(sheet.error().where.english(),
              (kSpreadsheets / expected.file).string() + expected.where)
        << core::describe(sheet.error());
    EXPECT_THAT(sheet.error().message.english(), HasSubstr(expected.message));
}

INSTANTIATE_TEST_SUITE_P(OfManyKinds, RefusedSheets, testing::ValuesIn(kRefused));

TEST(Spreadsheets, OtherColumnsComeInConvertedAndWithTheirDigits)
{
    const auto us = readSpreadsheet("us_dates_and_halves.csv");
    ASSERT_TRUE(us);
    EXPECT_NEAR(us.value().study.runs[0].temperature_c.value(), (55 - 32) * 5 / 9.0, 1e-12);
    EXPECT_NEAR(us.value().study.runs[0].distance_km.value(), 3.2 * 1.609344, 1e-12);
    const auto thousands = readSpreadsheet("us_thousands.csv");
    ASSERT_TRUE(thousands);
    EXPECT_EQ(thousands.value().study.runs[0].duration_s, 1008.0);
    EXPECT_EQ(thousands.value().study.runs[1].duration_s, 998.0);
    const auto german = readSpreadsheet("de_months_in_words.csv");
    ASSERT_TRUE(german);
    EXPECT_EQ(german.value().study.runs[3].duration_s, 213.0); // 3:33
    const auto swiss = readSpreadsheet("ch_apostrophes.csv");
    ASSERT_TRUE(swiss);
    EXPECT_EQ(swiss.value().study.runs[1].distance_km, 5.201); // 5'201 m
    const auto french = readSpreadsheet("fr_latin_1.csv");
    ASSERT_TRUE(french);
    EXPECT_EQ(french.value().study.runs[2].duration_s, 1012.0); // 1 012
    EXPECT_EQ(french.value().study.runs[0].notes, "été");
    const auto inlineTexts = readSpreadsheet("inline_strings_times.xlsx");
    ASSERT_TRUE(inlineTexts);
    EXPECT_EQ(inlineTexts.value().study.runs[0].humidity_pct, 65.0);
    EXPECT_EQ(inlineTexts.value().study.runs[3].duration_s, 213.0);
    EXPECT_EQ(inlineTexts.value().study.runs[7].number, 8);
    const auto open = readSpreadsheet("repeated_and_times.ods");
    ASSERT_TRUE(open);
    EXPECT_EQ(open.value().study.runs[1].humidity_pct, 66.0);
    EXPECT_EQ(open.value().study.runs[1].notes, "wet  road");
}

TEST(Spreadsheets, OfOursComeInToTheLastBitWhateverTheirOwnColumnsAreCalled)
{
    const auto ours = readSpreadsheet("ours.csv");
    ASSERT_TRUE(ours);
    EXPECT_FALSE(ours.value().study.runs[0].temperature_c);
    ASSERT_EQ(ours.value().study.runs[0].extra.size(), 1u);
    EXPECT_EQ(ours.value().study.runs[0].extra[0].first, "Temperature (°F)");
    EXPECT_TRUE(ours.value().found.empty());
    const std::string written = storage::writeRunSheet(ours.value().study);
    const auto again = storage::parseRunSheet(written, "again.csv");
    ASSERT_TRUE(again);
    EXPECT_EQ(again.value().study.runs, ours.value().study.runs);
}

TEST(Spreadsheets, AllThatComeInGoOutAndComeInAgainTheSame)
{
    for (const Ordinary& sheet : kOrdinary) {
        const auto first = readSpreadsheet(sheet.file, sheet.options);
        ASSERT_TRUE(first) << sheet.file;
        const auto again =
            storage::parseRunSheet(storage::writeRunSheet(first.value().study), "again.csv");
        ASSERT_TRUE(again) << sheet.file;
        EXPECT_EQ(again.value().study.runs, first.value().study.runs) << sheet.file;
    }
}

TEST(Spreadsheets, ThatAreCutAnywhereAreRefusedWithWords)
{
    for (const char* file : {"shared_strings.xlsx", "repeated_and_times.ods"}) {
        const auto whole = storage::readSheetBytes(kSpreadsheets / file);
        ASSERT_TRUE(whole);
        for (std::size_t size = 4; size < whole.value().size(); size += 37) {
            const auto read = storage::parseRunSheet(whole.value().substr(0, size), "cut");
            ASSERT_FALSE(read) << file << " " << size;
            EXPECT_FALSE(read.error().message.empty());
        }
    }
}

TEST(Spreadsheets, HaveTheDayOfTheirTitleWhereItIsTheOnlyOneAndNobodySaysAnother)
{
    const auto titled = readSpreadsheet("de_day_in_title.csv");
    ASSERT_TRUE(titled) << core::describe(titled.error());
    EXPECT_EQ(inShort(titled.value().study.runs.front()), kFirst);
    EXPECT_FALSE(titled.value().dateAssumed);
    EXPECT_THAT(inEnglish(titled.value().found),
                testing::Contains("2026-05-09 of line 1 as its date"));
    SheetOptions options;
    options.date = "2026-07-01";
    const auto said = readSpreadsheet("de_day_in_title.csv", options);
    ASSERT_TRUE(said);
    EXPECT_EQ(core::formatDate(said.value().study.runs.front().start), "2026-07-01");
    core::Study known;
    known.properties.date = "2026-08-01";
    const auto into = tests::readRunSheet(kSpreadsheets / "de_day_in_title.csv", {}, &known);
    ASSERT_TRUE(into);
    EXPECT_EQ(core::formatDate(into.value().study.runs.front().start), "2026-05-09");
    options.date.clear();
    options.today = "2026-09-01";
    const auto two = readSpreadsheet("two_days_in_title.csv", options);
    ASSERT_TRUE(two) << core::describe(two.error());
    EXPECT_TRUE(two.value().dateAssumed);
    EXPECT_EQ(core::formatDate(two.value().study.runs.front().start), "2026-09-01");
}

TEST(Spreadsheets, WithHiddenLinesAndColumnsSayThem)
{
    const auto xlsx = readSpreadsheet("hidden.xlsx");
    ASSERT_TRUE(xlsx) << core::describe(xlsx.error());
    EXPECT_EQ(xlsx.value().study.runs.size(), 8U);
    EXPECT_THAT(inEnglish(xlsx.value().found),
                testing::IsSupersetOf({"hidden lines as well: 3",
                                       "hidden columns as well: Fuel consumption (L/100 km)"}));
    const auto ods = readSpreadsheet("hidden.ods");
    ASSERT_TRUE(ods) << core::describe(ods.error());
    EXPECT_EQ(ods.value().study.runs.size(), 8U);
    EXPECT_THAT(
        inEnglish(ods.value().found),
        testing::IsSupersetOf({"hidden lines as well: 3, 6", "hidden columns as well: L/100km"}));
    const auto open = readSpreadsheet("shared_strings.xlsx");
    for (const core::Message& found : open.value().found)
        EXPECT_THAT(found.english(), testing::Not(HasSubstr("hidden")));
}

TEST(Preview, ShowsWhatBecomesOfEachColumnAndWhatIsMissing)
{
    const auto bytes = storage::readSheetBytes(kSpreadsheets / "de_unknown_consumption.csv");
    ASSERT_TRUE(bytes);
    const auto preview = storage::previewSheet(bytes.value(), "x.csv");
    ASSERT_TRUE(preview);
    EXPECT_TRUE(preview.value().header_found);
    ASSERT_EQ(preview.value().columns.size(), 5u);
    EXPECT_EQ(preview.value().columns[1].column, "start");
    EXPECT_EQ(preview.value().columns[4].column, "");
    EXPECT_THAT(preview.value().columns[4].candidates, testing::Contains("l_per_100km"));
    EXPECT_THAT(preview.value().missing, testing::ElementsAre("l_per_100km"));
    EXPECT_EQ(preview.value().rows[1][4], "8,41");
    EXPECT_FALSE(preview.value().dates_unclear);
    const auto mapped =
        storage::previewSheet(bytes.value(), "x.csv", withColumn("Verbrauch", "l_per_100km"));
    EXPECT_TRUE(mapped.value().missing.empty());
}

TEST(Preview, AsksForTheSheetAndForTheOrderOfDates)
{
    const auto two = storage::readSheetBytes(kSpreadsheets / "two_sheets_with_runs.xlsx");
    const auto preview = storage::previewSheet(two.value(), "x.xlsx");
    ASSERT_TRUE(preview);
    EXPECT_TRUE(preview.value().several_sheets);
    EXPECT_THAT(preview.value().sheets, testing::ElementsAre("May", "June"));
    const auto dates = storage::readSheetBytes(kSpreadsheets / "us_unclear_dates.csv");
    const auto unclear = storage::previewSheet(dates.value(), "x.csv");
    ASSERT_TRUE(unclear);
    EXPECT_TRUE(unclear.value().dates_unclear);
    EXPECT_EQ(unclear.value().unclear_date, "5/9/2026 5:40 AM");
    EXPECT_FALSE(storage::previewSheet(dates.value(), "x.csv", withDates(DateOrder::dayFirst))
                     .value()
                     .dates_unclear);
    EXPECT_FALSE(storage::previewSheet("\x89PNG\r\n", "x.png"));
}
