// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/run_traces.h"
#include "storage/recordings/trace_import.h"
#include "tests/storage/recordings/trace_builders.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

#include <sys/stat.h>

namespace bothways::storage {
namespace {

using testing::AllOf;
using testing::EndsWith;
using testing::HasSubstr;
using tests::taken;
using tests::TraceBench;

struct Refusal {
    const char* name;
    std::string text;
    const char* where; ///< end of the place
    const char* words; ///< in the message
};

std::string columns(int count)
{
    std::string text = "time_s";
    for (int i = 0; i < count; ++i)
        text += fmt::format(",c{}", i);
    return text + "\n0,1,2\n1,1,2\n";
}

class TraceRefusal : public testing::TestWithParam<Refusal> {};

TEST_P(TraceRefusal, SaysWhereAndWhyAndLeavesTheStudyAlone)
{
    TraceBench bench;
    bench.write(GetParam().text);
    const std::string before = bench.content();
    const auto report = bench.tryImport();
    ASSERT_FALSE(report);
    EXPECT_EQ(report.error().code, core::ErrorCode::badInput);
    EXPECT_THAT(report.error().where.english(), EndsWith(GetParam().where));
    EXPECT_THAT(report.error().message.english(), HasSubstr(GetParam().words));
    EXPECT_THAT(report.error().message.english(), HasSubstr("expected"))
        << report.error().message.english();
    EXPECT_EQ(bench.content(), before);
    EXPECT_FALSE(readTraceFile(bench.m_file, tests::aRun()));
}

INSTANTIATE_TEST_SUITE_P(
    OfEveryKind, TraceRefusal,
    testing::Values(
        Refusal{"Empty", "", "drive.csv", "is empty"},
        Refusal{"Binary",
                std::string("\x7f"
                            "ELF\x02\x01\x01\0\0\0\0\0\0\0\0\0\x03\0\x3e\0",
                            20),
                "drive.csv", "is not text"},
        Refusal{"AllZeros", std::string(4000, '\0'), "drive.csv", "is not text"},
        Refusal{"Spreadsheet", std::string("PK\x03\x04\x14\0\x06\0", 8), "drive.csv",
                "a spreadsheet or an archive"},
        Refusal{"Utf16", std::string("\xff\xfet\0i\0m\0e\0", 10), "drive.csv", "UTF-16"},
        Refusal{"Prose", "Once upon a time there was a road.\nIt went both ways.\n", "drive.csv:1",
                "no header line with a column of time"},
        Refusal{"NoHeader", "0,1,2\n1,2,3\n2,3,4\n", "drive.csv:1", "no header line"},
        Refusal{"NoTime", "speed,rpm\n1,2\n3,4\n", "drive.csv:1",
                "no column of time among 'speed', 'rpm'"},
        Refusal{"TimeOfText", "# x\ntime,speed\nmonday,2\ntuesday,4\n", "drive.csv:3",
                "column 'time': 'monday' is no time"},
        Refusal{"TimeOfTextAfterABeginning", "time_s,v\n0,1\nx,1\ny,1\nz,1\n", "drive.csv:3",
                "more than half of all"},
        Refusal{"AmbiguousDates", "time,v\n05/09/2026 05:40:00,1\n05/09/2026 05:40:01,1\n",
                "drive.csv:2", "is no time"},
        Refusal{"DatesAlone", "date,v\n2026-05-09,1\n2026-05-10,2\n", "drive.csv:1",
                "none of the time"},
        Refusal{"HeaderAlone", "time_s,v\n", "drive.csv:1", "a header and no rows"},
        Refusal{"NoChannel", "time_s,mark\n0,a\n1,b\n", "drive.csv:1", "no channel beside"},
        Refusal{"OnlyText", "time_s,a\n0,x\n1,y\n2,z\n", "drive.csv", "no channel with a number"},
        Refusal{"TooManyColumns", columns(5000), "drive.csv:1", "5001 columns"},
        Refusal{"TenMillionColumns", columns(400'000), "drive.csv:1", "columns"},
        Refusal{"OneEndlessLine", "time_s " + std::string(3'000'000, 'x'), "drive.csv:1",
                "a line of more than"},
        Refusal{"NeverClosedQuote", "time_s,mark,v\n0,\"x,1\n1,y,2\n2,z,3\n", "drive.csv:2",
                "a quote that is never closed"},
        Refusal{"EndlessLineFurtherDown",
                "time_s,v\n0,1\n1,2\n" + std::string(6'000'000, '7') + "\n", "drive.csv:4",
                "a line of more than"},
        Refusal{"Xml", "<?xml version=\"1.0\"?><html><body/></html>", "drive.csv:1",
                "expected <gpx>"}),
    [](const testing::TestParamInfo<Refusal>& refusal) { return std::string(refusal.param.name); });

TEST(TraceRefusals, SayThatThereIsNoFileOrThatItIsAFolder)
{
    TraceBench bench;
    bench.m_file = bench.m_folder / "missing.csv";
    EXPECT_THAT(bench.tryImport().error().message.english(),
                AllOf(HasSubstr("no such file"), HasSubstr("expected a recording")));
    bench.m_file = bench.m_folder.path();
    EXPECT_THAT(bench.tryImport().error().message.english(), HasSubstr("is a directory"));
}

TEST(TraceRefusals, NameTheRunThatTheStudyLacks)
{
    TraceBench bench("time_s,v\n0,1\n1,2\n");
    TraceImportOptions options;
    options.run = 12;
    EXPECT_THAT(bench.tryImport(options).error().message.english(), HasSubstr("no run 12"));
}

TEST(TraceRefusals, SayWhenTheRecordersClockIsAnHourOff)
{
    std::string text = "time,v\n";
    for (int i = 0; i < 300; ++i)
        text += fmt::format("2026-05-09T06:{:02}:{:02},1\n", 38 + i / 60, i % 60);
    TraceBench bench(text);
    const std::string before = bench.content();
    TraceImportOptions options;
    options.run = 1;
    const auto report = bench.tryImport(options);
    ASSERT_FALSE(report);
    EXPECT_THAT(report.error().message.english(),
                AllOf(HasSubstr("run 1 starts at 2026-05-09T05:40:00"),
                      HasSubstr("from 2026-05-09T06:38:00 to 2026-05-09T06:42:59"),
                      HasSubstr("1:00 h fast")));
    EXPECT_EQ(bench.content(), before);
    options.clock.ahead_s = 3600;
    EXPECT_EQ(bench.import(options).offset_s, 120.0);
}

TEST(TraceRefusals, StopWhenAskedAndLeaveTheStudyAlone)
{
    std::string text = "time_s,v\n";
    for (int i = 0; i < 900'000; ++i)
        text += fmt::format("{},{}\n", i, i % 13);
    TraceBench bench(text);
    const std::string before = bench.content();
    std::stop_source source;
    TraceImportOptions options;
    options.stop = source.get_token();
    int calls = 0;
    options.progress = [&](double done, double) {
        EXPECT_GE(done, 0.0);
        EXPECT_LE(done, 1.0);
        ++calls;
        source.request_stop();
    };
    auto report = bench.tryImport(options);
    ASSERT_FALSE(report);
    EXPECT_EQ(report.error().code, core::ErrorCode::stopped);
    EXPECT_EQ(bench.content(), before);
    EXPECT_TRUE(taken(recordings(bench.m_study)).empty());
    std::stop_source early;
    early.request_stop();
    options.stop = early.get_token();
    EXPECT_EQ(bench.tryImport(options).error().code, core::ErrorCode::stopped);
}

TEST(TraceRefusals, OfWhatIsNoRegularFileComeAtOnce)
{
    const TraceBench bench;
    const auto pipe = bench.m_folder / "pipe.csv"; // that nobody writes to
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    for (const std::filesystem::path& file : {pipe, std::filesystem::path("/dev/null")}) {
        const auto refused = readTraceFile(file, tests::aRun());
        ASSERT_FALSE(refused);
        EXPECT_THAT(refused.error().message.english(),
                    HasSubstr("is a pipe, a socket or a device; expected a recording"));
    }
    core::Study study;
    study.runs.push_back(tests::aRun());
    study.runs.back().trace = "pipe.csv";
    EXPECT_FALSE(tracesOfSheet(bench.m_folder / "sheet.csv", study));
}

} // namespace
} // namespace bothways::storage
