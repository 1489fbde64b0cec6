// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/study.h"
#include "storage/bytes/csv.h"
#include "storage/sheet/run_columns.h"
#include "storage/sheet/run_rules.h"
#include "storage/sheet/run_sheet.h"

#include <gmock/gmock.h>

#include <string>

using namespace bothways;
using storage::kMostColumns;
using storage::kMostNameBytes;
using storage::kMostOwnColumns;
using storage::parseRunSheet;
using testing::EndsWith;
using testing::HasSubstr;

// Sheets wider than anyone types: bounds, and work that grows no faster than the sheet.

namespace {

const storage::SheetOptions kDay{.date = "2026-05-09", .today = {}};
constexpr std::size_t kGiven = 4; // columns of wideSheet() that mean something

/// A sheet of so many columns, of which four mean something, and one run with a value in each.
std::string wideSheet(std::size_t columns, const std::string& prefix = "own")
{
    std::string header = "configuration,direction,start,l_per_100km";
    std::string line = "A,out,05:40,8.4";
    for (std::size_t i = kGiven; i < columns; ++i) {
        header += ',' + prefix + std::to_string(i);
        line += ',' + std::to_string(i);
    }
    return header + '\n' + line + '\n';
}

std::string faultOf(const std::string& text, const core::Study* existing = nullptr)
{
    const auto sheet = parseRunSheet(text, "wide.csv", kDay, existing);
    return sheet ? "" : core::describe(sheet.error());
}

TEST(WideSheet, HasFiveHundredColumnsAndNoMore)
{
    EXPECT_EQ(faultOf(wideSheet(kMostColumns)), "");
    EXPECT_EQ(faultOf(wideSheet(kMostColumns + 1)),
              "wide.csv:1: column 501: is one column too many; expected at most 500");
}

TEST(WideSheet, OfCommasAloneIsRefusedWithoutHoldingThem)
{
    // 64 million fields took a minute and 7 GB.
    EXPECT_THAT(faultOf(std::string(std::size_t{64} << 20, ',')), HasSubstr("one column too many"));
    EXPECT_THAT(faultOf(wideSheet(kGiven) + "B,out,05:50,8.4" +
                        std::string(std::size_t{32} << 20, ',') + "\n"),
                HasSubstr("wide.csv:3: column 5: is beyond the header: more than 500 fields"));
}

TEST(WideSheet, HasNoNameThatFillsAPage)
{
    const std::string longest(kMostNameBytes, 'x');
    EXPECT_EQ(
        faultOf("configuration,direction,start,l_per_100km," + longest + "\nA,out,05:40,8.4,1\n"),
        "");
    EXPECT_EQ(
        faultOf("configuration,direction,start,l_per_100km,x" + longest + "\nA,out,05:40,8.4,1\n"),
        "wide.csv:1: column 5: has a name of 201 bytes; expected at most 200");
    EXPECT_THAT(
        faultOf("configuration,direction,start,l_per_100km\nx" + longest + ",out,05:40,8.4\n"),
        HasSubstr("wide.csv:2: column 'configuration': has a name of 201 bytes"));
    EXPECT_EQ(faultOf("configuration," + std::string(16'000'000, 'y') + "\n"),
              "wide.csv:1: column 2: has a name of 16000000 bytes; expected at most 200");
}

TEST(WideSheet, ListsNoMoreFaultsThanAnyoneReads)
{
    std::string text = "configuration,direction,start,l_per_100km\n";
    for (int i = 0; i < 5000; ++i)
        text += "A,out,never,-1\n";
    const auto sheet = parseRunSheet(text, "wide.csv", kDay);
    ASSERT_FALSE(sheet);
    EXPECT_LE(sheet.error().others.size(), 1005U);
    EXPECT_THAT(core::describe(sheet.error()), HasSubstr("is as far as was read: there are 10"));
}

TEST(WideStudy, HasNoMoreColumnsOfItsOwnThanItsSheetCanHave)
{
    core::Study study;
    auto first = parseRunSheet(wideSheet(kGiven + kMostOwnColumns - 1), "a.csv", kDay, &study);
    ASSERT_TRUE(first) << core::describe(first.error());
    study.runs = first.value().study.runs;
    const std::string more = "configuration,direction,start,l_per_100km,one,two\n"
                             "A,return,05:50,8.4,1,2\n";
    EXPECT_THAT(
        faultOf(more, &study),
        HasSubstr("column 'two': is one column of one's own too many; expected at most 460"));
    EXPECT_EQ(
        faultOf("configuration,direction,start,l_per_100km,one\nA,return,05:50,8.4,1\n", &study),
        "");
    core::Run run = parseRunSheet(more, "b.csv", kDay).value().study.runs.front();
    run.number = 0;
    EXPECT_FALSE(storage::admitted(study, {run}, [](std::size_t, const std::string&) {
        return core::Place();
    })) << "the same without a sheet";
}

TEST(WideStudy, IsWrittenWholeByWorkThatGrowsWithItsCells)
{
    core::Study study;
    for (int run = 0; run < 100; ++run) { // as older versions took them: 10,000 columns in all
        core::Run one;
        one.number = run + 1;
        for (int i = 0; i < 100; ++i)
            one.extra.emplace_back("c" + std::to_string(run * 100 + i), "1");
        study.runs.push_back(std::move(one));
    }
    const std::string text = storage::writeRunSheet(study); // a million cells: once hours
    EXPECT_THAT(text.substr(0, 200), HasSubstr(",c0,c1,c2,"));
    EXPECT_THAT(text.substr(0, text.find('\n')), EndsWith(",c9998,c9999"));
    EXPECT_EQ(std::count(text.begin(), text.end(), '\n'), 101);
}

TEST(SpreadsheetForm, GuardsTextsThatWouldBeFormulasAndNothingElse)
{
    using storage::csv::guarded;
    for (const char* text : {"=1+1", "+cmd", "-x", "@sum", "\tx", "\rx", "  =1",
                             "\xEF\xBC\x9D"
                             "1"})
        EXPECT_EQ(guarded(text), "'" + std::string(text));
    for (const char* text : {"", "A", "1=1", "a-b", "'=1", "5"})
        EXPECT_EQ(guarded(text), text);
}

TEST(SpreadsheetForm, LeavesNumbersAndThePlainFormAsTheyAre)
{
    const std::string text = "configuration,direction,start,l_per_100km,accessory_w,notes,=own\n"
                             "=A,out,05:40,8.4,-5,@note,-7\n";
    const core::Study study = parseRunSheet(text, "a.csv", kDay).value().study;
    const std::string plain = storage::writeRunSheet(study);
    EXPECT_THAT(plain, HasSubstr("\n1,=A,out,"));
    EXPECT_EQ(storage::writeRunSheet(parseRunSheet(plain, "b.csv", kDay).value().study), plain);
    const std::string safe = storage::writeRunSheet(study, storage::csv::Form::forSpreadsheet);
    EXPECT_THAT(safe, HasSubstr(",notes,'=own\n"));
    EXPECT_THAT(safe, HasSubstr("\n1,'=A,out,"));
    EXPECT_THAT(safe, HasSubstr(",-5,'@note,-7\n"));
}

} // namespace
