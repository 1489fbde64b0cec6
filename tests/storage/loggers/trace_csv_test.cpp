// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/channel_mapping.h"
#include "storage/loggers/trace_report.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/trace_import.h"
#include "tests/storage/recordings/trace_builders.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <bit>
#include <cmath>
#include <random>

namespace bothways::storage {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using tests::taken;
using tests::TraceBench;

TEST(TraceCsv, ReadsAPlainRecording)
{
    TraceBench bench("time_s,road_speed_kmh,oil bar\n"
                     "0.0,89.91,3.5\n"
                     "0.1,90,3.25\n"
                     "0.2,-1.5,3\n");
    const TraceReport report = bench.import();
    EXPECT_EQ(report.format, "csv");
    EXPECT_EQ(report.rows, 3);
    EXPECT_EQ(report.missing_cells + report.bad_cells + report.bad_times, 0);
    EXPECT_THAT(report.channels, ElementsAre("road_speed_kmh", "oil bar"));
    EXPECT_THAT(bench.channel("road_speed_kmh").value, ElementsAre(89.91, 90, -1.5));
    EXPECT_THAT(bench.channel("oil bar").value, ElementsAre(3.5, 3.25, 3));
    EXPECT_THAT(bench.times("oil bar"), ElementsAre(0, 0.1, 0.2));
    const auto info = taken(recordings(bench.m_study)).front();
    EXPECT_EQ(info.name, "drive.csv");
    EXPECT_EQ(info.channels[0].unit, "km/h");
    EXPECT_EQ(info.channels[0].minimum, -1.5);
    EXPECT_EQ(info.channels[0].maximum, 90);
    EXPECT_EQ(info.samples, 6);
    EXPECT_FALSE(info.first);
    EXPECT_DOUBLE_EQ(info.length_s, 0.2);
}

/// The same recording as many loggers and spreadsheets would write it.
struct Dialect {
    const char* name;
    const char* text;
};

class TraceDialect : public testing::TestWithParam<Dialect> {};

TEST_P(TraceDialect, ReadsTheSame)
{
    TraceBench bench(GetParam().text);
    const TraceReport report = bench.import();
    EXPECT_EQ(report.rows, 3);
    EXPECT_THAT(bench.times("road_speed_kmh"), ElementsAre(0, 0.5, 1.0));
    EXPECT_THAT(bench.channel("road_speed_kmh").value, ElementsAre(90.25, 91.5, 89));
    EXPECT_THAT(bench.channel("battery_v").value, ElementsAre(13.5, 13.75, 14));
}

INSTANTIATE_TEST_SUITE_P(
    OfEveryKind, TraceDialect,
    testing::Values(
        Dialect{"Comma",
                "time_s,road_speed_kmh,battery_v\n0,90.25,13.5\n0.5,91.5,13.75\n1,89,14\n"},
        Dialect{"Semicolon",
                "time_s;road_speed_kmh;battery_v\n0;90.25;13.5\n0.5;91.5;13.75\n1;89;14\n"},
        Dialect{"DecimalComma",
                "time_s;road_speed_kmh;battery_v\n0;90,25;13,5\n0,5;91,5;13,75\n1;89;14\n"},
        Dialect{"Tab", "time_s\troad_speed_kmh\tbattery_v\n0\t90.25\t13.5\n0.5\t91.5\t13.75\n"
                       "1\t89\t14\n"},
        Dialect{"TabDecimalComma", "time_s\troad_speed_kmh\tbattery_v\n0\t90,25\t13,5\n0,5\t91,5\t"
                                   "13,75\n1\t89\t14\n"},
        Dialect{"Bar", "time_s|road_speed_kmh|battery_v\n0|90.25|13.5\n0.5|91.5|13.75\n1|89|14\n"},
        Dialect{"ByteOrderMark", "\xef\xbb\xbftime_s,road_speed_kmh,battery_v\n0,90.25,13.5\n"
                                 "0.5,91.5,13.75\n1,89,14\n"},
        Dialect{"WindowsLines", "time_s,road_speed_kmh,battery_v\r\n0,90.25,13.5\r\n0.5,91.5,13.75"
                                "\r\n1,89,14\r\n"},
        Dialect{"OldMacLines",
                "time_s,road_speed_kmh,battery_v\r0,90.25,13.5\r0.5,91.5,13.75\r1,89,14\r"},
        Dialect{"Quotes", "\"time_s\",\"road_speed_kmh\",\"battery_v\"\n\"0\",\"90.25\",\"13.5\"\n"
                          "\"0.5\",91.5,\"13.75\"\n1,89,14\n"},
        Dialect{
            "QuotedDecimalCommas",
            "time_s,road_speed_kmh,battery_v\n\"0\",\"90,25\",\"13,5\"\n\"0,5\",\"91,5\",\"13,75"
            "\"\n1,89,14\n"},
        Dialect{"Comments", "# made by a logger\ntime_s,road_speed_kmh,battery_v\n0,90.25,13.5\n"
                            "# a comment; with, separators \"\n0.5,91.5,13.75\n1,89,14\n"},
        Dialect{"BlankLines",
                "\n\ntime_s,road_speed_kmh,battery_v\n0,90.25,13.5\n\n0.5,91.5,13.75\n"
                "   \n1,89,14\n\n"},
        Dialect{"BlanksAround",
                " time_s , road_speed_kmh , battery_v\n 0 , 90.25, 13.5\n 0.5,  91.5"
                " ,13.75 \n1 ,89 , 14\n"},
        Dialect{"Preamble", "Logger 12;serial 4711\nStarted;2026-05-09\n\ntime_s;road_speed_kmh;"
                            "battery_v\n0;90.25;13.5\n0.5;91.5;13.75\n1;89;14\n"},
        Dialect{"LineOfUnits", "time_s,road_speed_kmh,battery_v\ns,km/h,V\n0,90.25,13.5\n"
                               "0.5,91.5,13.75\n1,89,14\n"},
        Dialect{"SpreadsheetsSeparatorLine",
                "sep=;\ntime_s;road_speed_kmh;battery_v\n0;90.25;13.5\n0.5;91.5;13.75\n1;89;14\n"},
        Dialect{"TrailingSeparator", "time_s,road_speed_kmh,battery_v,\n0,90.25,13.5,\n0.5,91.5,"
                                     "13.75,\n1,89,14,\n"},
        Dialect{"NoLastLineEnd",
                "time_s,road_speed_kmh,battery_v\n0,90.25,13.50\n0.5,91.5,13.75\n1,89,14.00"},
        Dialect{"Plus", "time_s,road_speed_kmh,battery_v\n+0,+90.25,+13.5\n0.5,+91.5,13.75\n1,89,14"
                        "\n"},
        Dialect{"Exponents", "time_s,road_speed_kmh,battery_v\n0,9.025e1,135E-1\n5e-1,0.0915e+3,"
                             "13.75\n1e0,89,14\n"},
        Dialect{"CapitalsAndBlanksInNames",
                "Time_s,Road Speed KMH,BATTERY_V [V]\n0,90.25,13.5\n0.5,91.5,13.75\n1,89,14\n"},
        Dialect{"Milliseconds",
                "time_ms,road_speed_kmh,battery_v\n0,90.25,13.5\n500,91.5,13.75\n1000,89,14\n"},
        Dialect{"MillisecondsByUnit",
                "Time [ms],road_speed_kmh,battery_v\n0,90.25,13.5\n500,91.5,13.75\n1000,89,14\n"},
        Dialect{"MillisecondsByALineOfUnits", "time;road_speed_kmh;battery_v\nms;km/h;V\n0;90.25;"
                                              "13.5\n500;91.5;13.75\n1000;89;14\n"},
        Dialect{"Microseconds", "time_us,road_speed_kmh,battery_v\n0,90.25,13.5\n500000,91.5,13.75"
                                "\n1000000,89,14\n"},
        Dialect{"TimeInTheMiddle",
                "road_speed_kmh,time_s,battery_v\n90.25,0,13.5\n91.5,0.5,13.75\n89,1,14\n"},
        Dialect{"IsoTimes", "time,road_speed_kmh,battery_v\n2026-05-09T05:40:00,90.25,13.5\n"
                            "2026-05-09T05:40:00.500,91.5,13.75\n2026-05-09T05:40:01,89,14\n"},
        Dialect{"IsoTimesWithABlank",
                "time;road_speed_kmh;battery_v\n2026-05-09 05:40:00,000;90,25;13,5\n2026-05-09 "
                "05:40:00,500;91,5;13,75\n2026-05-09 05:40:01,000;89,0;14,0\n"},
        Dialect{"IsoTimesWithOffset",
                "time,road_speed_kmh,battery_v\n2026-05-09T05:40:00+02:00,90.25,13.5\n2026-05-09"
                "T03:40:00.5Z,91.5,13.75\n2026-05-09T05:40:01+0200,89,14\n"},
        Dialect{"SplitDateAndTime",
                "date,time,road_speed_kmh,battery_v\n2026-05-09,05:40:00,90.25,13.5\n2026-05-09,"
                "5:40:00.5,91.5,13.75\n2026-05-09,05:40:01,89,14\n"},
        Dialect{"SplitDateAcrossMidnight",
                "Date;Time;road_speed_kmh;battery_v\n08.05.2026;23:59:59.5;90,25;13,5\n09.05.2026;"
                "00:00:00.0;91,5;13,75\n09.05.2026;00:00:00.5;89,0;14\n"},
        Dialect{"TimeOfDayAcrossMidnight",
                "time,road_speed_kmh,battery_v\n23:59:59.5,90.25,13.5\n00:00:00,91.5,13.75\n00:00:"
                "00.5,89,14\n"},
        Dialect{"EpochSeconds", "timestamp,road_speed_kmh,battery_v\n1778305200.0,90.25,13.5\n"
                                "1778305200.5,91.5,13.75\n1778305201.0,89,14\n"},
        Dialect{"EpochMilliseconds",
                "timestamp,road_speed_kmh,battery_v\n1778305200000,90.25,13.5\n"
                "1778305200500,91.5,13.75\n1778305201000,89,14\n"}),
    [](const testing::TestParamInfo<Dialect>& dialect) { return std::string(dialect.param.name); });

TEST(TraceCsv, GivesBackTheDoublesOfTheTextBitForBit)
{
    std::mt19937_64 random(20260314);
    std::string text = "time_s,a,b,c,d\n";
    std::vector<std::vector<double>> expected(4);
    const auto add = [&](std::size_t column, double value, std::string cell) {
        expected[column].push_back(value);
        text += ',' + cell;
    };
    for (int row = 0; row < 5000; ++row) {
        text += fmt::format("{}", row);
        const double decimal =
            static_cast<double>(static_cast<int>(random() % 2'000'001) - 1'000'000) / 1000.0;
        add(0, decimal, fmt::format("{:.3f}", decimal));
        const auto mixed = static_cast<int>(random() % 5);
        const double number = static_cast<double>(random() % 100'000) / std::pow(10, mixed);
        add(1, number, fmt::format("{:.{}f}", number, mixed));
        const double any = std::bit_cast<double>(random() & 0xbfffffffffffffff); // below 2
        add(2, any, fmt::format("{}", any));
        const double seldom = row % 100 == 7 ? -0.0 : row % 500 == 3 ? 1e300 : decimal;
        add(3, seldom, fmt::format("{}", seldom));
        text += '\n';
    }
    TraceBench bench(text);
    bench.import();
    for (std::size_t column = 0; column < 4; ++column) {
        const auto values = bench.channel(std::string(1, static_cast<char>('a' + column))).value;
        ASSERT_EQ(values.size(), expected[column].size());
        for (std::size_t row = 0; row < values.size(); ++row)
            ASSERT_EQ(std::bit_cast<std::uint64_t>(values[row]),
                      std::bit_cast<std::uint64_t>(expected[column][row]))
                << column << " row " << row;
    }
}

TEST(TraceCsv, ReadsManyBlocksAsOneWhateverThreadIsFaster)
{
    std::string text = "time_s,x,mark\n";
    constexpr int kRows = 400'000;
    for (int row = 0; row < kRows; ++row)
        text += fmt::format("{}.{:02},{},{}\n", row / 100, row % 100, row * 7 % 1000,
                            row % 100'000 == 99'999 ? "gust" : "");
    TraceBench bench(text);
    const TraceReport report = bench.import();
    EXPECT_EQ(report.rows, kRows);
    EXPECT_EQ(report.marks, 4);
    const core::Samples samples = bench.channel("x");
    ASSERT_EQ(samples.size(), static_cast<std::size_t>(kRows));
    for (std::size_t row = 0; row < samples.size(); ++row) {
        ASSERT_EQ(samples.value[row], static_cast<double>(row * 7 % 1000));
        ASSERT_EQ(samples.time_s[row], static_cast<double>(row) / 100.0);
    }
    const auto marks = taken(readMarks(bench.m_study, taken(recordings(bench.m_study)).front().id));
    ASSERT_EQ(marks.size(), 4U);
    EXPECT_EQ(marks[1].at_s, 1999.99);
    EXPECT_EQ(marks[1].words, "gust");
}

TEST(TraceCsv, CountsMissingAndBadCells)
{
    TraceBench bench("time_s,a,b\n0,1,\n1,,2\n2,NaN,n/a\n3,oops,4\n4,5\n5,6,7,8\n6,inf,-\n");
    const TraceReport report = bench.import();
    EXPECT_EQ(report.rows, 7);
    EXPECT_EQ(report.bad_cells, 1);     // oops
    EXPECT_EQ(report.missing_cells, 7); // b0 a1 a2 b2 b4 a6 b6
    EXPECT_EQ(report.short_rows, 1);
    EXPECT_EQ(report.long_rows, 1);
    EXPECT_THAT(bench.channel("a").value, ElementsAre(1, 5, 6));
    EXPECT_THAT(bench.times("a"), ElementsAre(0, 4, 5));
    EXPECT_THAT(bench.times("b"), ElementsAre(1, 3, 5));
}

TEST(TraceCsv, LeavesColumnsOfTextOutAndSaysSo)
{
    TraceBench bench("time_s,state,speed\n0,ok,1\n1,ok,2\n2,warm,3\n");
    const TraceReport report = bench.import();
    EXPECT_THAT(report.left_out, ElementsAre("state"));
    EXPECT_THAT(report.channels, ElementsAre("speed"));
    EXPECT_EQ(report.bad_cells, 0);
}

TEST(TraceCsv, KeepsAChannelWithoutASampleForItsSensorWasLost)
{
    TraceBench bench("time_s,rotor_rpm,speed\n0,,1\n1,,2\n");
    EXPECT_THAT(bench.import().channels, ElementsAre("rotor_rpm", "speed"));
    EXPECT_EQ(bench.channel("rotor_rpm").size(), 0U);
}

TEST(TraceCsv, TakesOneMarkFromACellThatSaysTheSameRowAfterRow)
{
    TraceBench bench("time_s,v,mark\n0,1,\n1,1,start run 3\n2,1,start run 3\n3,1,0\n"
                     "4,1,\"gust, strong\"\n5,1,lorry\n6,1,\n7,1,lorry\n");
    bench.import();
    std::vector<std::string> words;
    for (const auto& mark :
         taken(readMarks(bench.m_study, taken(recordings(bench.m_study)).front().id)))
        words.push_back(fmt::format("{} {}", mark.at_s, mark.words));
    EXPECT_THAT(words, ElementsAre("1 start run 3", "4 gust, strong", "5 lorry", "7 lorry"));
}

TEST(TraceCsv, ReadsLineBreaksWithinQuotes)
{
    TraceBench bench("time_s,mark,v\n0,\"one\ntwo\",1\n1,,2\n2,\"say \"\"go\"\"\",3\n");
    EXPECT_EQ(bench.import().rows, 3);
    EXPECT_THAT(bench.channel("v").value, ElementsAre(1, 2, 3));
    const auto marks = taken(readMarks(bench.m_study, taken(recordings(bench.m_study)).front().id));
    EXPECT_EQ(marks[0].words, "one\ntwo");
    EXPECT_EQ(marks[1].words, "say \"go\"");
}

TEST(TraceCsv, LeavesAHalfWrittenLastLineOut)
{
    for (const char* tail :
         {"2,9", "2,9.", "2", "2,9.2,", "2,9.25,3.", "2,9.25,3.5", "2,\"9", "2,9.25,3.5\0\0\0"}) {
        TraceBench bench(std::string("time_s,a,b\n0,9.25,3.51\n1,9.50,3.52\n") + tail);
        const TraceReport report = bench.import();
        EXPECT_EQ(report.rows, 2) << tail;
        EXPECT_TRUE(report.half_last_line) << tail;
    }
    TraceBench whole("time_s,a,b\n0,9.25,3.51\n1,9.50,3.52\n2,9.75,3.53");
    const TraceReport report = whole.import();
    EXPECT_EQ(report.rows, 3);
    EXPECT_FALSE(report.half_last_line);
}

TEST(TraceCsv, StopsWhereALoggerHadSetSpaceAsideAndNeverFilledIt)
{
    std::string text = "time_s,a\n0,1\n1,2\n2,3";
    text += std::string(6'000'000, '\0');
    TraceBench bench(text);
    const TraceReport report = bench.import();
    EXPECT_EQ(report.rows, 2);
    EXPECT_TRUE(report.half_last_line);
    TraceBench ended("time_s,a\n0,1\n1,2\n" + std::string(5000, '\0'));
    EXPECT_FALSE(ended.import().half_last_line);
}

TEST(TraceCsv, ConvertsUnitsByAMappingAndKeepsItForTheLoggersNextFile)
{
    const char* text = "t,Speed [mph],T,Lap,Junk\n0,60,32,1,5\n1,61,212,1,6\n";
    TraceBench bench(text);
    TraceImportOptions options;
    options.mapping = {taken(parseMapping("t=time_s")),
                       taken(parseMapping("Speed [mph]=road_speed_kmh*1.609344")),
                       taken(parseMapping("T=cabin_c*0.5555555555555556-17.77777777777778")),
                       taken(parseMapping("Junk="))};
    const TraceReport report = bench.import(options);
    EXPECT_FALSE(report.mapping_kept);
    EXPECT_THAT(report.channels, ElementsAre("road_speed_kmh", "cabin_c", "Lap"));
    EXPECT_THAT(bench.channel("road_speed_kmh").value, ElementsAre(60 * 1.609344, 61 * 1.609344));
    EXPECT_NEAR(bench.channel("cabin_c").value[1], 100.0, 1e-9);
    const auto info = taken(recordings(bench.m_study)).front().channels[0];
    EXPECT_EQ(info.unit, "km/h");
    EXPECT_DOUBLE_EQ(info.maximum, 61 * 1.609344);

    bench.write("T,speed  [MPH],t,Lap,Junk\n1,60,0,1,5\n2,61,1,1,6\n", "other_header.csv");
    EXPECT_FALSE(bench.import().mapping_kept);
    bench.write(text, "next.csv");
    EXPECT_THAT(taken(previewTrace(bench.m_file, &bench.m_study)).mapping[1],
                (ChannelMapping{"Speed [mph]", "road_speed_kmh", 1.609344, 0}));
    const TraceReport next = bench.import();
    EXPECT_TRUE(next.mapping_kept);
    EXPECT_EQ(next.channels, report.channels);
}

TEST(TraceCsv, ShowsWhatAFileHoldsBeforeItIsImported)
{
    TraceBench bench("Zeit;Tempo [km/h];Rotor Rpm\n0;90,5;1200\n1;91;1210\n");
    const TracePreview preview = taken(previewTrace(bench.m_file));
    EXPECT_EQ(preview.separator, ';');
    EXPECT_TRUE(preview.decimalComma);
    EXPECT_THAT(preview.columns, ElementsAre("Zeit", "Tempo [km/h]", "Rotor Rpm"));
    EXPECT_EQ(preview.units[1], "km/h");
    EXPECT_EQ(preview.mapping[2].channel, "rotor_rpm");
    EXPECT_THAT(preview.rows[1], ElementsAre("1", "91", "1210"));
    ASSERT_TRUE(preview.fault); // until somebody says which column is the time
    EXPECT_THAT(preview.fault->message.english(),
                testing::HasSubstr("no column of time among 'Zeit'"));
    TraceImportOptions options;
    options.mapping = {{"Zeit", "time_s"}, {"Tempo [km/h]", "road_speed_kmh"}};
    EXPECT_EQ(bench.import(options).rows, 2);
    EXPECT_THAT(bench.channel("road_speed_kmh").value, ElementsAre(90.5, 91));
}

TEST(TraceCsv, ReadsTimesInAnyUnitByAMapping)
{
    TraceBench bench("minutes,v\n0,1\n0.5,2\n1,3\n");
    TraceImportOptions options;
    options.mapping = {{"minutes", "time_s", 60.0, 0.0}};
    bench.import(options);
    EXPECT_THAT(bench.times("v"), ElementsAre(0, 30, 60));
}

TEST(TraceCsv, KeepsColumnsOfOneNameApart)
{
    TraceBench bench("time_s,v,v,,v\n0,1,2,3,4\n1,1,2,3,4\n");
    EXPECT_THAT(bench.import().channels, ElementsAre("v", "v 2", "column 4", "v 3"));
}

TEST(Mapping, IsTextAndBack)
{
    for (const char* text : {"a=b", "a=b*2", "a b [x]=c d*0.5-17.5", "a=b*-1+3", "Lap="})
        EXPECT_EQ(formatMapping(taken(parseMapping(text))), text);
    for (const char* text : {"", "a", "=b", "a=b*", "a=b*x", "a=b*0", "a=*2", "a=b*2+", "a=b*2 3",
                             "a=b*2+nan", "a=b*inf"})
        EXPECT_FALSE(parseMapping(text)) << text;
}

} // namespace
} // namespace bothways::storage
