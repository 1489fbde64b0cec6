// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/instruments/parsed_text.h"

#include "storage/instruments/byte_quality.h"
#include "storage/instruments/drift_meter.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

namespace bothways::tests {
namespace {

using storage::makeNumbersParser;
using storage::typedNumber;
using testing::ElementsAre;

std::string saidOf(std::string_view bytes, bool inTheMiddle = false)
{
    ParsedText parsed(makeNumbersParser, inTheMiddle);
    parsed.feed(bytes);
    return parsed.text();
}

TEST(NumberLines, AHeaderNamesTheColumnsUnderIt)
{
    ParsedText parsed(makeNumbersParser);
    parsed.feed("Rotor_RPM,Output [W],T\n2950,612.5,18\n2951,,19\n");
    EXPECT_EQ(parsed.text(), "rotor_rpm=2950 Output [W]=6125e-1 T=18\nrotor_rpm=2951 T=19\n");
    EXPECT_THAT(parsed.units(), ElementsAre("rpm", "W", ""));
}

TEST(NumberLines, WithoutAHeaderColumnsAreNumbered)
{
    EXPECT_EQ(saidOf("1,2.50\n3,4\n"), "1=1 2=250e-2\n1=3 2=4\n");
}

TEST(NumberLines, EverySeparatorIsRead)
{
    EXPECT_EQ(saidOf("a;b\n1,5;2\n"), "a=15e-1 b=2\n");
    EXPECT_EQ(saidOf("a\tb\n1,5\t2\n"), "a=15e-1 b=2\n");
    EXPECT_EQ(saidOf("a b\n1,5  2,25\n"), "a=15e-1 b=225e-2\n");
    EXPECT_EQ(saidOf("a, b\n1, 5\n"), "a=1 b=5\n");
    EXPECT_EQ(saidOf("a b\n1.5 2\n"), "a=15e-1 b=2\n");
    EXPECT_EQ(saidOf("a\n12\n12,5\n"), "a=12\na=125e-1\n")
        << "one name: the comma is a decimal one";
    EXPECT_EQ(saidOf("\"a\";\"b\"\n\"1\";\"2\"\n"), "a=1 b=2\n");
}

TEST(NumberLines, PairsAsBoardsPrintThem)
{
    EXPECT_EQ(saidOf("rpm=2950 w=612\n"), "rpm=2950 w=612\n");
    EXPECT_EQ(saidOf("rpm:2950,w:612.25\n"), "rpm=2950 w=61225e-2\n");
    EXPECT_EQ(saidOf("rpm: 2950, w: 612\n"), "rpm=2950 w=612\n");
    EXPECT_EQ(saidOf("rpm = 2950; temp = 21,5\n"), "rpm=2950 temp=215e-1\n");
    EXPECT_EQ(saidOf("w=-3\tv=nan\n"), "w=-3\n");
    ParsedText parsed(makeNumbersParser);
    parsed.feed("temp=23.5C volts=12.4 V\n");
    EXPECT_EQ(parsed.text(), "temp [C]=235e-1 volts [V]=124e-1\n");
    EXPECT_THAT(parsed.units(), ElementsAre("C", "V"));
}

TEST(NumberLines, WhatABoardSaysWhenItStartsIsNoHeader)
{
    EXPECT_EQ(saidOf("Starting up...\nrpm,w\nready\n1,2\n"), "rpm=1 w=2\n");
    EXPECT_EQ(saidOf("# rpm w\n1 2\n"), "rpm=1 w=2\n") << "a header behind '#'";
}

TEST(NumberLines, NamesOfAHeaderAreMadeWhole)
{
    ParsedText parsed(makeNumbersParser);
    parsed.feed("\xef\xbb\xbf"
                "shaft [1/min] w (W)\n1 2\n");
    EXPECT_EQ(parsed.text(), "shaft [1/min]=1 w (W)=2\n");
    EXPECT_THAT(parsed.units(), ElementsAre("1/min", "W"));
    EXPECT_EQ(saidOf("rpm w\n[1/min] [W]\n1 2\n"), "rpm=1 w=2\n") << "units under the names";
    EXPECT_EQ(saidOf("a,,a,a\n1,2,3,4\n"), "a=1 2=2 a_2=3 a_3=4\n");
}

TEST(NumberLines, AHeaderThatChangesIsFollowedAndSaid)
{
    ParsedText parsed(makeNumbersParser);
    parsed.feed("rpm,w\n1,2\nw,rpm\n3,4\n");
    EXPECT_EQ(parsed.text(), "rpm=1 w=2\nw=3 rpm=4\n");
    EXPECT_EQ(parsed.notice(), "its header changed to 'w, rpm'");
    ParsedText same(makeNumbersParser);
    same.feed("rpm,w\n1,2\nrpm,w\n3,4\n");
    EXPECT_EQ(same.notice(), "") << "the board was switched on again";
}

TEST(NumberLines, ALineWithAnotherNumberOfCellsIsGarbage)
{
    ParsedText parsed(makeNumbersParser);
    parsed.feed("rpm,w,t\n1,2,3\n4,5\n6,7,8\n");
    EXPECT_EQ(parsed.text(), "rpm=1 w=2 t=3\ngarbage\nrpm=6 w=7 t=8\n");
    EXPECT_EQ(parsed.notice(), "lines of 2 numbers under a header of 3 names");
    // Without a header three alike are no accident.
    EXPECT_EQ(saidOf("1,2\n1,2,3\n1,2\n1,2,3\n1,2,3\n1,2,3\n"),
              "1=1 2=2\ngarbage\n1=1 2=2\ngarbage\ngarbage\n1=1 2=2 3=3\n");
}

TEST(NumberLines, ACellThatWasANumberMakesItsLineGarbage)
{
    EXPECT_EQ(saidOf("rpm,w,state\n1,2,ok\n2?5,3,ok\n4,5,ok\n"), "rpm=1 w=2\ngarbage\nrpm=4 w=5\n");
}

TEST(NumberLines, TheFirstLineOfAConnectionIsNotTrustedButForItsNames)
{
    EXPECT_EQ(saidOf("50,612\n2950,613\n", true), "1=2950 2=613\n");
    EXPECT_EQ(saidOf("m=2950 w=612\nrpm=2951 w=613\n", true), "rpm=2951 w=613\n");
    EXPECT_EQ(saidOf("rpm,w\n2950,613\n", true), "rpm=2950 w=613\n");
    ParsedText again(makeNumbersParser);
    again.feed("rpm=1 w=2\nrpm=3 w=");
    again.connectAgain();
    again.feed("4\nrpm=5 w=6\n");
    EXPECT_EQ(again.text(), "rpm=1 w=2\nrpm=5 w=6\n") << "halves of two connections are no line";
}

TEST(NumberLines, LineEndsOfAllKinds)
{
    EXPECT_EQ(saidOf("a=1\r\na=2\ra=3\n\n\r\na=4\n"), "a=1\na=2\na=3\na=4\n");
    EXPECT_EQ(saidOf("a=1"), "") << "a line without its end is not whole";
    EXPECT_EQ(saidOf(std::string_view("\0\0a=1\n", 6)), "a=1\n") << "a port that opens";
    EXPECT_EQ(saidOf(std::string_view("a=1\0 b=2\n", 9)), "garbage\n");
    EXPECT_EQ(saidOf("\xff\xfe\x80=3\n"), "garbage\n");
    EXPECT_EQ(saidOf("t\xc2\xb0=3\n"), "t\xc2\xb0=3\n") << "a name with a degree sign is text";
}

TEST(NumberLines, ALineOfAMegabyteIsCountedAndForgotten)
{
    ParsedText parsed(makeNumbersParser);
    const std::string endless(1'000'000, '7');
    parsed.feed("a=1\n" + endless + "\na=2\n");
    EXPECT_EQ(parsed.text(), "a=1\na=2\n");
    EXPECT_EQ(parsed.splitter().lostBytes(), 1'000'000);
    EXPECT_EQ(parsed.splitter().longLines(), 1);
}

TEST(NumberLines, AColumnOfMarksGivesWords)
{
    EXPECT_EQ(saidOf("rpm,mark\n1,\n2,lorry passed\n"), "rpm=1\nrpm=2 mark: lorry passed\n");
    EXPECT_EQ(saidOf("rpm=1 mark=lorry\n"), "rpm=1 mark: lorry\n");
}

TEST(NumberLines, TheSourcesOwnClockIsKeptAsAChannelAndHandedOn)
{
    ParsedText parsed(makeNumbersParser);
    parsed.feed("millis,rpm\n1000,5\n");
    EXPECT_EQ(parsed.text(), "millis=1000 rpm=5\n");
    EXPECT_EQ(parsed.last().own, 1000.0);
    EXPECT_EQ(parsed.last().unit_s, 1e-3);
    parsed.feed("time_s,rpm\n12.5,5\n");
    EXPECT_EQ(parsed.last().own, 12.5);
    EXPECT_EQ(parsed.last().unit_s, 1.0);
    parsed.feed("micros,rpm\n7,5\n");
    EXPECT_EQ(parsed.last().unit_s, 1e-6);
    ParsedText unknown(makeNumbersParser);
    unknown.feed("t=12 w=1\n");
    EXPECT_EQ(unknown.last().own, 12.0);
    EXPECT_FALSE(unknown.last().unit_s.has_value()) << "seconds or milliseconds: by its pace";
}

TEST(NumberLines, WhateverCutsGiveTheSameLines)
{
    std::string bytes = "boot\nrpm,w,millis\n";
    std::mt19937 random(7);
    for (int i = 0; i < 400; ++i)
        switch (random() % 6) {
        case 0: bytes += fmt::format("rpm={} w={}\r\n", i, i * 2); break;
        case 1: bytes += static_cast<char>(random() % 256); break;
        case 2: bytes += "w,rpm,millis\n"; break;
        default: bytes += fmt::format("{},{:.2f},{}\n", 2900 + i, i / 7.0, i * 10);
        }
    const std::string whole = saidOf(bytes, true);
    ASSERT_GT(whole.size(), 4000u);
    for (int round = 0; round < 200; ++round) {
        ParsedText parsed(makeNumbersParser, true);
        for (std::size_t at = 0; at < bytes.size();) {
            const std::size_t size = 1 + random() % (round % 2 == 0 ? 3 : 200);
            parsed.feed(std::string_view(bytes).substr(at, size));
            at += size;
        }
        ASSERT_EQ(parsed.text(), whole) << "round " << round;
    }
}

TEST(TypedNumbers, KeepEveryDigitThatFits)
{
    EXPECT_EQ(typedNumber("12.50"), (storage::TypedNumber{1250, 2, 0.0}));
    EXPECT_EQ(typedNumber("-0.001"), (storage::TypedNumber{-1, 3, 0.0}));
    EXPECT_EQ(typedNumber("+7"), (storage::TypedNumber{7, 0, 0.0}));
    EXPECT_EQ(typedNumber("3,5", true), (storage::TypedNumber{35, 1, 0.0}));
    EXPECT_EQ(typedNumber("1.5e3")->value(), 1500.0);
    EXPECT_EQ(typedNumber("+2,5e-1", true)->value(), 0.25);
    EXPECT_EQ(typedNumber("0.12345678901234567890")->value(), 0.12345678901234567890);
    EXPECT_EQ(typedNumber("123456789012345678901")->value(), 123456789012345678901.0);
    for (const char* none : {"", "-", ".", "e5", "1e", "1e999", "0x10", "1 2", "nan", "inf", "--1"})
        EXPECT_FALSE(typedNumber(none).has_value()) << none;
}

TEST(DriftMeter, TellsByHowMuchAClockGoesAhead)
{
    storage::DriftMeter drift;
    for (int i = 0; i <= 100; ++i)
        drift.take(i * 101.0, 1e-3, i * 0.1); // a per cent fast
    ASSERT_TRUE(drift.drift_s().has_value());
    EXPECT_NEAR(*drift.drift_s(), 0.1, 1e-9);
    storage::DriftMeter unknown;
    for (int i = 0; i <= 100; ++i)
        unknown.take(i * 100.0, std::nullopt, i * 0.1); // milliseconds, by their pace
    EXPECT_NEAR(unknown.drift_s().value_or(99.0), 0.0, 1e-9);
    unknown.take(0.0, std::nullopt, 20.0); // switched on again
    unknown.take(2000.0, std::nullopt, 22.0);
    EXPECT_NEAR(unknown.drift_s().value_or(99.0), 0.0, 1e-9);
}

TEST(ByteQuality, AWrongSpeedLooksLikeNoText)
{
    storage::ByteQuality quality;
    for (int i = 0; i < 20; ++i)
        quality.take("rpm=2950 w=612\r\n");
    EXPECT_FALSE(quality.mostlyOdd());
    std::mt19937 random(3);
    std::string noise;
    for (int i = 0; i < 400; ++i)
        noise += static_cast<char>(random() % 256);
    quality.take(noise);
    EXPECT_TRUE(quality.mostlyOdd());
    for (int i = 0; i < 20; ++i)
        quality.take("rpm=2950 w=612\r\n");
    EXPECT_FALSE(quality.mostlyOdd()) << "it has been put right";
}

} // namespace
} // namespace bothways::tests
