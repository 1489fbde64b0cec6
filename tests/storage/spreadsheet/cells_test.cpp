// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/spreadsheet/cell_values.h"
#include "storage/spreadsheet/text_decoding.h"
#include "storage/spreadsheet/workbook.h"

#include <gtest/gtest.h>

using namespace bothways;
using storage::Cell;
using storage::CellKind;
using storage::NumberShape;

namespace {

std::string cellText(const Cell& cell)
{
    return cell.text + (cell.kind == CellKind::error ? " (error)" : "");
}

} // namespace

// ISO/IEC 29500-1, 18.17.4.1: in the 1900 system 1 is 1900-01-01, 60 is 1900-02-29, which never
// was, 61 is 1900-03-01; in the 1904 system 0 is 1904-01-01.
TEST(SerialDates, AreThoseOfTheStandard)
{
    const auto date = [](const char* text, bool from1904 = false) {
        return cellText(storage::cellOfNumber(text, NumberShape::date, from1904));
    };
    EXPECT_EQ(date("1"), "1900-01-01");
    EXPECT_EQ(date("59"), "1900-02-28");
    EXPECT_EQ(date("60"), "1900-02-29 (error)");
    EXPECT_EQ(date("61"), "1900-03-01");
    EXPECT_EQ(date("25569"), "1970-01-01");
    EXPECT_EQ(date("46151"), "2026-05-09");
    EXPECT_EQ(date("44689", true), "2026-05-09"); // 1462 days less
    EXPECT_EQ(date("2958465"), "9999-12-31");
    EXPECT_EQ(date("2958466"), "2958466"); // beyond the last day: a number
    EXPECT_EQ(date("-1"), "-1");
}

TEST(SerialDates, HaveTheirTimesToTheMillisecond)
{
    const auto cell = [](const char* text, NumberShape shape) {
        return storage::cellOfNumber(text, shape, false).text;
    };
    EXPECT_EQ(cell("46151.236111111109", NumberShape::dateTime), "2026-05-09T05:40:00");
    EXPECT_EQ(cell("46151.999999999", NumberShape::dateTime), "2026-05-10T00:00:00");
    EXPECT_EQ(cell("0.23611111111111113", NumberShape::time), "05:40:00");
    EXPECT_EQ(cell("0.50000578703703699", NumberShape::time), "12:00:00.5");
    EXPECT_EQ(cell("1.25", NumberShape::elapsed), "30:00:00");
    EXPECT_EQ(cell("8.1199999999999992", NumberShape::number), "8.12");
    EXPECT_EQ(cell("1E-2", NumberShape::number), "0.01");
}

TEST(NumberFormats, SayWhatANumberIs)
{
    const std::pair<const char*, NumberShape> kCodes[] = {
        {"General", NumberShape::number},
        {"0.00", NumberShape::number},
        {"#,##0.00\\ \"days\"", NumberShape::number},
        {"[Red]0.0", NumberShape::number},
        {"0.0 %", NumberShape::percentage},
        {"dd.mm.yyyy", NumberShape::date},
        {"mmm", NumberShape::date},
        {"[$-407]d. mmmm yyyy;@", NumberShape::date},
        {"hh:mm", NumberShape::time},
        {"mm:ss.0", NumberShape::time},
        {"h AM/PM", NumberShape::time},
        {"[h]:mm:ss", NumberShape::elapsed},
        {"[mm]:ss", NumberShape::elapsed},
        {"m/d/yy h:mm", NumberShape::dateTime},
    };
    for (const auto& [code, shape] : kCodes)
        EXPECT_EQ(storage::shapeOfCode(code), shape) << code;
    EXPECT_EQ(storage::shapeOfBuiltIn(14), NumberShape::date);
    EXPECT_EQ(storage::shapeOfBuiltIn(22), NumberShape::dateTime);
    EXPECT_EQ(storage::shapeOfBuiltIn(46), NumberShape::elapsed);
    EXPECT_EQ(storage::shapeOfBuiltIn(10), NumberShape::percentage);
    EXPECT_EQ(storage::shapeOfBuiltIn(4), NumberShape::number);
}

TEST(OpenDocumentValues, AreDatesAndTimes)
{
    EXPECT_EQ(storage::cellOfDate("2026-05-09").kind, CellKind::date);
    EXPECT_EQ(storage::cellOfDate("2026-05-09T05:40:00.500000000").text, "2026-05-09T05:40:00.5");
    EXPECT_EQ(storage::cellOfDate("2026-02-30").kind, CellKind::text);
    EXPECT_EQ(storage::cellOfDuration("PT05H40M00S").text, "05:40:00");
    EXPECT_EQ(storage::cellOfDuration("PT00H03M33.250S").text, "00:03:33.25");
    EXPECT_EQ(storage::cellOfDuration("P1DT2H").text, "26:00:00");
    for (const char* none : {"", "P", "PT", "5H", "PT5X", "PT-5H", "PTH"})
        EXPECT_EQ(storage::cellOfDuration(none).kind, CellKind::text) << none;
}

TEST(Decoding, TellsEncodingsApart)
{
    using storage::Encoding;
    const auto decoded = [](std::string_view bytes) { return storage::decodeText(bytes); };
    EXPECT_EQ(decoded("caf\xC3\xA9")->encoding, Encoding::utf8);
    EXPECT_EQ(decoded("\xEF\xBB\xBFrun")->text, "run");
    EXPECT_EQ(decoded("caf\xE9 \x80")->text, "café €");
    EXPECT_EQ(decoded("caf\xE9")->encoding, Encoding::windows1252);
    EXPECT_EQ(decoded(std::string_view("\xFF\xFEr\0\xE9\0", 6))->text, "ré");
    EXPECT_EQ(decoded(std::string_view("\xFE\xFF\0r\0\xE9", 6))->text, "ré");
    EXPECT_EQ(decoded(std::string_view("\xFF\xFE\x3D\xD8\x00\xDE", 6))->text, "\xF0\x9F\x98\x80");
    EXPECT_EQ(decoded(std::string_view("s\0t\0a\0r\0t\0", 10))->text, "start");
    EXPECT_FALSE(decoded("caf\x81"));                               // no letter stands there
    EXPECT_FALSE(decoded(std::string_view("\xFF\xFEr", 3)));        // half a letter
    EXPECT_FALSE(decoded(std::string_view("\xFF\xFE\x00\xDE", 4))); // half a pair
    EXPECT_FALSE(decoded(std::string_view("a\0b", 3)));
    EXPECT_EQ(storage::namedSeparator("sep=;\r\na"), ';');
    EXPECT_EQ(storage::namedSeparator("SEP=\t\n"), '\t');
    EXPECT_EQ(storage::namedSeparator("sep=;x"), std::nullopt);
}

TEST(Columns, HaveLetters)
{
    EXPECT_EQ(storage::columnLetters(0), "A");
    EXPECT_EQ(storage::columnLetters(25), "Z");
    EXPECT_EQ(storage::columnLetters(26), "AA");
    EXPECT_EQ(storage::columnLetters(701), "ZZ");
    EXPECT_EQ(storage::columnLetters(702), "AAA");
}
