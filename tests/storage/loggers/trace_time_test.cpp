// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/clock.h"
#include "storage/loggers/trace_clock.h"
#include "storage/loggers/trace_report.h"
#include "storage/recordings/run_traces.h"
#include "storage/recordings/trace_import.h"
#include "tests/storage/recordings/trace_builders.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

namespace bothways::storage {
namespace {

using testing::ElementsAre;
using tests::taken;
using tests::TraceBench;

/// A recording with the channel "n" that counts the rows of the file.
std::string recording(const std::vector<std::string>& times, const char* column = "time_s")
{
    std::string text = fmt::format("{},n\n", column);
    int row = 0;
    for (const auto& time : times)
        text += fmt::format("{},{}\n", time, row++);
    return text;
}

TEST(TraceTime, LeavesRepeatedTimesOut)
{
    TraceBench bench(recording({"0", "1", "1", "1.0", "2"}));
    const TraceReport report = bench.import();
    EXPECT_EQ(report.repeated_times, 2);
    EXPECT_EQ(report.rows, 3);
    EXPECT_THAT(bench.channel("n").value, ElementsAre(0, 1, 4));
}

TEST(TraceTime, LeavesARowOutThatCameLate)
{
    TraceBench bench(recording({"0", "1", "2", "1.5", "3", "4", "-7", "5"}));
    const TraceReport report = bench.import();
    EXPECT_EQ(report.backward_times, 2);
    EXPECT_EQ(report.clock_changes, 0);
    EXPECT_THAT(bench.channel("n").value, ElementsAre(0, 1, 2, 4, 5, 7));
}

TEST(TraceTime, LetsRowsFollowOnWhereTheRecorderBeganAgain)
{
    std::vector<std::string> times;
    for (int i = 0; i < 20; ++i)
        times.push_back(fmt::format("{}", 100 + 0.5 * i));
    for (int i = 0; i < 5; ++i)
        times.push_back(fmt::format("{}", 0.5 * i));
    TraceBench bench(recording(times));
    const TraceReport report = bench.import();
    EXPECT_EQ(report.clock_changes, 1);
    EXPECT_EQ(report.rows, 25);
    EXPECT_EQ(bench.times("n")[20], 110.0);
    EXPECT_EQ(bench.times("n")[24], 112.0);
    EXPECT_DOUBLE_EQ(report.interval_s, 0.5);
}

TEST(TraceTime, LetsRowsFollowOnWhereALocalClockIsSetForSummerOrBack)
{
    const auto clock = [](int hour, int i, const char* offset) {
        return fmt::format("2026-03-29T{:02}:{:02}:{:02}{}", hour, i / 60, i % 60, offset);
    };
    for (const int change : {1, -1}) {
        std::vector<std::string> times;
        for (int i = 3570; i < 3600; ++i)
            times.push_back(clock(2, i, ""));
        for (int i = 0; i < 15; ++i)
            times.push_back(clock(3 + change, i, ""));
        TraceBench bench(recording(times, "time"));
        const TraceReport report = bench.import();
        EXPECT_EQ(report.clock_changes, 1) << change;
        EXPECT_EQ(report.length_s, 44.0) << change;
        EXPECT_EQ(core::formatDateTime(report.first.value()), "2026-03-29T02:59:30");
    }
    std::vector<std::string> utc; // no clock with an offset is set: an hour's gap
    for (int i = 0; i < 30; ++i)
        utc.push_back(clock(2, i, "Z"));
    utc.push_back(clock(3, 30, "Z"));
    TraceBench bench(recording(utc, "time"));
    const TraceReport report = bench.import();
    EXPECT_EQ(report.clock_changes, 0);
    EXPECT_EQ(report.gaps, 1);
    EXPECT_EQ(report.longest_gap_s, 3601.0);
}

TEST(TraceTime, TakesTheClockThatTheLongerPartWasRecordedBy)
{
    std::vector<std::string> times;
    for (int i = 0; i < 12; ++i) // not yet set
        times.push_back(fmt::format("2000-01-01T00:00:{:02}Z", i));
    for (int i = 0; i < 40; ++i)
        times.push_back(fmt::format("2026-05-09T05:40:{:02}Z", i));
    TraceBench bench(recording(times, "time"));
    const TraceReport report = bench.import();
    EXPECT_EQ(report.clock_changes, 1);
    EXPECT_EQ(report.length_s, 51.0);
    EXPECT_EQ(core::formatDateTime(report.first.value()), "2026-05-09T05:39:48Z");
}

TEST(TraceTime, NoticesChangesOfRateAndGaps)
{
    std::vector<std::string> times;
    double at = 0.0;
    const auto record = [&](int rows, double interval) {
        for (int i = 0; i < rows; ++i)
            times.push_back(fmt::format("{:.2f}", at += interval));
    };
    record(50, 0.1);
    record(50, 0.5);
    at += 30;
    record(50, 0.1);
    TraceBench bench(recording(times));
    const TraceReport report = bench.import();
    EXPECT_EQ(report.rate_changes, 2);
    EXPECT_EQ(report.gaps, 1);
    EXPECT_NEAR(report.longest_gap_s, 30.1, 1e-9);
    EXPECT_EQ(report.rows, 150);
    EXPECT_NEAR(report.interval_s, 0.1, 1e-9);
}

TEST(TraceTime, KeepsAnUnevenClockAsItIs)
{
    TraceBench bench(recording({"0", "0.13", "0.19", "0.34", "0.341", "0.9"}));
    bench.import();
    EXPECT_THAT(bench.times("n"), ElementsAre(0, 0.13, 0.19, 0.34, 0.341, 0.9));
}

TEST(TraceTime, CountsRowsWithoutATime)
{
    TraceBench bench(recording({"0", "", "2", "?", "4", "5"}));
    const TraceReport report = bench.import();
    EXPECT_EQ(report.bad_times, 2);
    EXPECT_THAT(bench.times("n"), ElementsAre(0, 2, 4, 5));
}

TEST(TraceTime, TakesTimesFromTheRunsStartWithTheApproachBeforeIt)
{
    TraceBench bench(recording({"-2", "-1", "0", "1"}));
    TraceImportOptions options;
    options.run = 1;
    EXPECT_EQ(bench.import(options).offset_s, 0.0);
    const auto trace = tracesOf(bench.m_study)(taken(bench.m_study.study()).runs[0]);
    ASSERT_TRUE(trace);
    EXPECT_EQ(trace->samples("n")->time_s.front(), -2.0);
}

TEST(TraceTime, DatesARecordingInSecondsByTheClockBesideThem)
{
    TraceBench bench("time_s,clock time,timestamp,n\n5,x,2026-05-09T05:40:07,1\n6,x,,2\n");
    const TraceReport report = bench.import();
    EXPECT_EQ(core::formatDateTime(report.first.value()), "2026-05-09T05:40:02");
}

TEST(TraceTime, DatesTimesOfDayByTheStudy)
{
    TraceBench bench(recording({"05:39:58", "05:39:59", "05:40:00"}, "time"));
    EXPECT_FALSE(bench.import().first);
    TraceImportOptions options;
    options.date = "2026-05-09";
    options.run = 1;
    const TraceReport report = bench.import(options);
    EXPECT_EQ(core::formatDateTime(report.first.value()), "2026-05-09T05:39:58");
    EXPECT_EQ(report.offset_s, 2.0);
}

TEST(TraceClock, ReadsWhatLoggersWrite)
{
    ClockParser parser;
    const auto us = [&](std::string_view cell, ClockForm form) {
        const auto time = parser.parse(cell, form);
        return time ? std::optional(time->us) : std::nullopt;
    };
    constexpr std::int64_t kMorning = 1'778'305'200'000'000; // 2026-05-09T05:40:00
    EXPECT_EQ(us("2026-05-09T05:40:00", ClockForm::dateTime), kMorning);
    EXPECT_EQ(us("2026/05/09 5:40", ClockForm::dateTime), kMorning);
    EXPECT_EQ(us("09.05.2026 05:40:00", ClockForm::dateTime), kMorning);
    EXPECT_EQ(us("20260509T05:40:00.000001Z", ClockForm::dateTime), kMorning + 1);
    EXPECT_EQ(us("2026-05-09T07:40:00.1234567+02:00", ClockForm::dateTime), kMorning + 123456);
    EXPECT_EQ(us("1778305200", ClockForm::epoch), kMorning);
    EXPECT_EQ(us("1778305200.25", ClockForm::epoch), kMorning + 250'000);
    EXPECT_EQ(us("1778305200123", ClockForm::epoch), kMorning + 123'000);
    EXPECT_EQ(us("1778305200123456", ClockForm::epoch), kMorning + 123'456);
    EXPECT_EQ(us("1778305200123456789", ClockForm::epoch), kMorning + 123'456);
    EXPECT_EQ(us("23:59:60", ClockForm::timeOfDay), 86'400'000'000);
    for (const char* none :
         {"", "2026-05-09", "05:40", "2026-13-09T05:40", "2026-05-32T05:40", "2026-05-09T24:40",
          "2026-05-09T05:60", "2026-05-09T05:40:61", "2026-05-09T05:40:00+25:00",
          "2026-05-09T05:40:00.", "2026-05-09T05:40:00Zx", "05/09/2026 05:40", "T", "T05:40"})
        EXPECT_FALSE(us(none, ClockForm::dateTime)) << none;
    for (const char* none : {"9999999999999999999", "9999999999", "177830520", "1778305200.x"})
        EXPECT_FALSE(us(none, ClockForm::epoch)) << none;
    EXPECT_FALSE(clockFormOf("89.91"));
    EXPECT_FALSE(clockFormOf("monday"));
}

} // namespace
} // namespace bothways::storage
