// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/csv.h"

#include "core/base/utf8.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

using namespace bothways::storage;
using testing::ElementsAre;

namespace {

std::vector<csv::Record> recordsOf(std::string_view text, char separator = ',')
{
    std::vector<csv::Record> records;
    csv::Reader reader(text, separator);
    while (auto record = reader.next())
        records.push_back(std::move(*record));
    return records;
}

std::vector<std::string> fieldsOf(const csv::Record& record)
{
    std::vector<std::string> texts;
    for (const csv::Field& field : record.fields)
        texts.push_back(field.text);
    return texts;
}

std::vector<std::string> fieldsOf(std::string_view text, char separator = ',')
{
    const auto records = recordsOf(text, separator);
    EXPECT_EQ(records.size(), 1u) << text;
    return records.empty() ? std::vector<std::string>() : fieldsOf(records[0]);
}

} // namespace

TEST(Csv, SplitsAtTheSeparatorAndAtNoOther)
{
    EXPECT_THAT(fieldsOf("a,b;c,d\n"), ElementsAre("a", "b;c", "d"));
    EXPECT_THAT(fieldsOf("a,b;c,d\n", ';'), ElementsAre("a,b", "c,d"));
    EXPECT_THAT(fieldsOf("a\t\tb", '\t'), ElementsAre("a", "", "b"));
    EXPECT_THAT(fieldsOf("a,"), ElementsAre("a", ""));
}

TEST(Csv, QuotesHoldSeparatorsQuotesAndLineBreaks)
{
    EXPECT_THAT(fieldsOf("\"a,b\",\"say \"\"go\"\"\",\"two\r\nlines\"\r\n"),
                ElementsAre("a,b", "say \"go\"", "two\r\nlines"));
    EXPECT_THAT(fieldsOf("\"\",\"\"\"\""), ElementsAre("", "\""));
}

TEST(Csv, AQuoteWithinAnUnquotedFieldIsAnOrdinaryCharacter)
{
    EXPECT_THAT(fieldsOf("5\" pipe,b"), ElementsAre("5\" pipe", "b"));
}

TEST(Csv, BlanksAroundAFieldAreDroppedThoseWithinQuotesStay)
{
    EXPECT_THAT(fieldsOf(" a , \" b \" ,\tc\n"), ElementsAre("a", " b ", "c"));
}

TEST(Csv, AnyLineEndWill)
{
    for (const std::string_view text : {"a\nb\n", "a\r\nb\r\n", "a\rb\r", "a\nb"}) {
        const auto records = recordsOf(text);
        ASSERT_EQ(records.size(), 2u) << text;
        EXPECT_EQ(records[1].line, 2);
    }
}

TEST(Csv, SkipsCommentsAndBlankLinesAndCountsThem)
{
    const auto records = recordsOf("# one\n\n  \na\n#, two \"\nb,\"\n\n#no comment\n\"\nc\n");
    ASSERT_EQ(records.size(), 3u);
    EXPECT_EQ(records[0].line, 4);
    EXPECT_EQ(records[1].line, 6);
    EXPECT_THAT(fieldsOf(records[1]), ElementsAre("b", "\n\n#no comment\n"));
    EXPECT_EQ(records[2].line, 10);
}

TEST(Csv, SaysWhatIsWrongWithQuotes)
{
    const auto never = recordsOf("a\nb,\"c\nd\n");
    EXPECT_EQ(never.at(1).fault, csv::RecordFault::quoteNeverCloses);
    EXPECT_EQ(never.at(1).line, 2);
    EXPECT_EQ(never.at(1).faultField, 1u);

    const auto after = recordsOf("a,\"b\"c,d\ne\n");
    EXPECT_EQ(after.at(0).fault, csv::RecordFault::textAfterQuote);
    EXPECT_EQ(after.at(0).faultField, 1u);
    EXPECT_EQ(after.at(1).fault, csv::RecordFault::none);
}

TEST(Csv, KnowsWellFormedUtf8)
{
    for (const std::string_view good : {"", "plain", "W\xC3\xBChlke", "\xE2\x82\xAC",
                                        "\xF0\x9F\x9A\x9A", "\xED\x9F\xBF", "\xF4\x8F\xBF\xBF"})
        EXPECT_TRUE(bothways::core::isUtf8(good)) << good;
    // RFC 3629: overlong forms, surrogates, beyond U+10FFFF, pieces.
    for (const std::string_view bad :
         {"\xC0\x80", "\xC1\xBF", "\xE0\x80\x80", "\xF0\x8F\xBF\xBF", "\xED\xA0\x80",
          "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\x80", "\xC3", "\xE2\x82", "caf\xE9"})
        EXPECT_FALSE(bothways::core::isUtf8(bad)) << bad;
}

// A round trip over texts made of everything that means something in CSV.
TEST(Csv, WhatIsWrittenReadsBackTheSame)
{
    constexpr std::uint32_t kSeed = 20260509;
    SCOPED_TRACE(kSeed);
    std::mt19937 random(kSeed);
    const std::vector<std::string> pieces = {"a", "\"", ",", ";", "\t", "\n", "\r", " ", "#", "é"};
    for (int i = 0; i < 3000; ++i) {
        std::vector<std::string> texts(1 + random() % 4);
        for (std::string& text : texts)
            for (auto n = random() % 5; n > 0; --n)
                text += pieces[random() % pieces.size()];
        texts.push_back("end"); // a line of nothing at all is no record
        std::string line;
        for (std::size_t field = 0; field < texts.size(); ++field) {
            line += field == 0 ? "" : ",";
            csv::appendField(line, texts[field], field == 0);
        }
        ASSERT_EQ(fieldsOf(line + "\n"), texts) << line;
    }
}
