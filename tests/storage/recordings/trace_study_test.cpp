// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/clock.h"
#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/run_traces.h"
#include "storage/recordings/trace_import.h"
#include "storage/recordings/trace_store.h"
#include "tests/storage/recordings/trace_builders.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>
#include <gmock/gmock.h>

#include <atomic>
#include <cmath>
#include <random>
#include <thread>

namespace bothways::storage {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;
using tests::taken;
using tests::TraceBench;

/// Both runs and what lies between, once a second from 05:39: n counts seconds.
std::string wholeMorning()
{
    std::string text = "time,n,sparse,mark\n";
    for (int i = 0; i < 720; ++i)
        text += fmt::format("2026-05-09T05:{:02}:{:02},{},{},{}\n", 39 + i / 60, i % 60, i,
                            i % 5 == 0 ? std::to_string(i) : "", i == 100 ? "gust" : "");
    return text;
}

core::Run runNumber(const TraceBench& bench, int number)
{
    return taken(bench.m_study.study()).runs[static_cast<std::size_t>(number - 1)];
}

long long countOf(const TraceBench& bench, const std::string& table)
{
    SQLite::Statement row(*bench.m_study.database().database, "SELECT count(*) FROM " + table);
    row.executeStep();
    return row.getColumn(0).getInt64();
}

Cut partOf(core::RunId run, double offset_s)
{
    Cut part;
    part.existing = run;
    part.offset_s = offset_s;
    return part;
}

TEST(TraceStudy, GivesARunItsWindowOfALongRecording)
{
    TraceBench bench(wholeMorning());
    const auto id = bench.import().recording;
    ASSERT_TRUE(cutRecording(bench.m_study, id,
                             {partOf(bench.m_first, 60.0), partOf(bench.m_second, 480.0)}));
    const auto traces = tracesOf(bench.m_study);
    const auto first = traces(runNumber(bench, 1)), second = traces(runNumber(bench, 2));
    ASSERT_TRUE(first && second);
    const auto n1 = first->samples("n"), n2 = second->samples("n");
    EXPECT_EQ(n1->time_s.front(), -60.0);
    EXPECT_EQ(n1->time_s.back(), 420.0); // the next run's start
    EXPECT_EQ(n1->value[60], 60.0);
    EXPECT_EQ(n2->time_s.front(), 270.0 - 480.0); // the end of the run before
    EXPECT_EQ(n2->value.front(), 270.0);
    EXPECT_EQ(second->last_s(), 719.0 - 480.0);
    const auto sparse = second->samples("sparse");
    EXPECT_EQ(sparse->size(), 90U);
    EXPECT_EQ(sparse->value.front(), 270.0);
    EXPECT_EQ(sparse->time_s.front(), -210.0);
    ASSERT_THAT(first->marks(), SizeIs(1));
    EXPECT_EQ(first->marks()[0].at_s, 40.0);
    EXPECT_THAT(second->marks(), IsEmpty());
    EXPECT_FALSE(first->samples("no such channel"));
    EXPECT_EQ(first->samples("n")->time_s.data(), n1->time_s.data()); // times are kept
}

TEST(TraceStudy, GivesNoTraceToARunThatHasNone)
{
    TraceBench bench(wholeMorning());
    bench.import();
    EXPECT_FALSE(tracesOf(bench.m_study)(runNumber(bench, 1)));
    EXPECT_FALSE(cutRecording(bench.m_study, core::RecordingId{1}, {partOf(core::RunId{99}, 0)}));
    EXPECT_FALSE(cutRecording(bench.m_study, core::RecordingId{99}, {partOf(bench.m_first, 0)}));
    EXPECT_FALSE(
        cutRecording(bench.m_study, core::RecordingId{1}, {partOf(bench.m_first, std::nan(""))}));
    EXPECT_FALSE(tracesOf(bench.m_study)(runNumber(bench, 1)));
}

TEST(TraceStudy, ReadsAnyWindowAsBruteForceDoes)
{
    std::string text = "time_s,dense,holes\n";
    std::mt19937_64 random(5);
    std::vector<double> times, dense, holeTimes, holes;
    double at = 0;
    for (int i = 0; i < 300'000; ++i) {
        at = std::round((at + 0.01 + 0.01 * static_cast<double>(random() % 3)) * 100) / 100;
        const double value = static_cast<double>(random() % 1000) / 10;
        const bool hole = i > 100'000 && (i < 240'000 || random() % 2 == 0);
        text +=
            fmt::format("{:.2f},{:.1f},{}\n", at, value, hole ? "" : fmt::format("{:.1f}", value));
        times.push_back(at);
        dense.push_back(value);
        if (!hole) {
            holeTimes.push_back(at);
            holes.push_back(value);
        }
    }
    TraceBench bench(text);
    const auto id = bench.import().recording;
    const auto check = [&](const char* channel, const std::vector<double>& allTimes,
                           const std::vector<double>& all, double from, double to) {
        const core::Samples samples = taken(readChannel(bench.m_study, id, channel, from, to));
        std::vector<double> expectedTimes, expected;
        for (std::size_t i = 0; i < all.size(); ++i)
            if (allTimes[i] >= from && allTimes[i] <= to) {
                expectedTimes.push_back(allTimes[i]);
                expected.push_back(all[i]);
            }
        ASSERT_EQ(samples.value, expected) << channel << ' ' << from << ' ' << to;
        ASSERT_EQ(std::vector<double>(samples.time_s.begin(), samples.time_s.end()), expectedTimes);
    };
    const double inf = std::numeric_limits<double>::infinity();
    check("dense", times, dense, -inf, inf);
    check("holes", holeTimes, holes, -inf, inf);
    for (int turn = 0; turn < 20; ++turn) {
        const double from = static_cast<double>(random() % 6'000), length = turn % 4 == 0 ? 0 : 900;
        check("dense", times, dense, from, from + length);
        check("holes", holeTimes, holes, from, from + length);
    }
    check("dense", times, dense, 1e6, 2e6);
    check("dense", times, dense, 5, 4);
}

TEST(TraceStudy, TakesAnImportBackAndDoesItAgain)
{
    TraceBench bench(wholeMorning());
    TraceImportOptions options;
    options.run = 1;
    bench.import(options);
    const auto before = bench.channel("n").value;
    EXPECT_EQ(taken(bench.m_study.undo()).kind, "import_trace");
    EXPECT_THAT(taken(recordings(bench.m_study)), IsEmpty());
    EXPECT_FALSE(tracesOf(bench.m_study)(runNumber(bench, 1)));
    ASSERT_TRUE(bench.m_study.redo());
    EXPECT_EQ(bench.channel("n").value, before);
    EXPECT_TRUE(tracesOf(bench.m_study)(runNumber(bench, 1)));
}

TEST(TraceStudy, DropsARecordingAndTakesThatBack)
{
    TraceBench bench(wholeMorning());
    TraceImportOptions options;
    options.run = 2;
    const auto id = bench.import(options).recording;
    ASSERT_TRUE(dropRecording(bench.m_study, id));
    EXPECT_THAT(taken(recordings(bench.m_study)), IsEmpty());
    EXPECT_FALSE(dropRecording(bench.m_study, id));
    EXPECT_FALSE(openRecording(bench.m_study, id));
    EXPECT_THAT(taken(bench.m_study.study()).runs, SizeIs(2));
    ASSERT_TRUE(bench.m_study.undo());
    EXPECT_EQ(bench.channel("n").size(), 720U);
    EXPECT_THAT(taken(assignedTraces(bench.m_study)), SizeIs(1));
}

TEST(TraceStudy, CompactsTheFileAndKeepsRunsHistoryAndTheOtherRecordings)
{
    TraceBench bench;
    std::string noise = "time_s,v\n";
    std::mt19937_64 random(3);
    for (int i = 0; i < 60'000; ++i)
        noise += fmt::format("{},{}\n", i, random() % 1'000'000'000);
    bench.write(noise, "noise.csv");
    TraceImportOptions options;
    options.run = 1;
    const auto dropped = bench.import(options).recording;
    bench.write(wholeMorning());
    options.run = 2;
    bench.import(options);
    const core::Study study = taken(bench.m_study.study());
    ASSERT_TRUE(dropRecording(bench.m_study, dropped));
    EXPECT_GT(taken(compact(bench.m_study)), 150'000);
    EXPECT_EQ(taken(bench.m_study.study()), study);
    EXPECT_EQ(bench.channel("n").size(), 720U);
    // What was compacted away does not come back, and nothing stumbles over it.
    ASSERT_TRUE(bench.m_study.undo());
    EXPECT_THAT(taken(recordings(bench.m_study)), SizeIs(1));
    EXPECT_FALSE(tracesOf(bench.m_study)(study.runs[0]));
    EXPECT_THAT(taken(assignedTraces(bench.m_study)), SizeIs(1));
    while (bench.m_study.nextUndo())
        ASSERT_TRUE(bench.m_study.undo());
    while (bench.m_study.nextRedo())
        ASSERT_TRUE(bench.m_study.redo());
    EXPECT_EQ(taken(bench.m_study.study()), study);
    const auto path = bench.m_study.path();
    bench.m_study = taken(StudyFile::open(path, true));
    EXPECT_EQ(taken(bench.m_study.study()), study);
}

/// Leaves a study as a crash in the middle of an import would.
void beginImport(TraceBench& bench)
{
    SQLite::Database& database = *bench.m_study.database().database;
    database.exec("INSERT INTO trace_data (state) VALUES ('unfinished')");
    database.exec("INSERT INTO chunk (data, place, first_row, rows, samples, bytes) VALUES "
                  "(last_insert_rowid(), 0, 0, 1, 1, zeroblob(100000))");
}

TEST(TraceStudy, RemovesWhatAnImportLeftThatNeverFinishedWhenItIsOpened)
{
    TraceBench bench;
    beginImport(bench);
    EXPECT_EQ(countOf(bench, "chunk"), 1);
    const auto path = bench.m_study.path();
    {
        const StudyFile second = taken(bench.m_study.another()); // for another thread: leaves it
        EXPECT_EQ(countOf(bench, "chunk"), 1);
    }
    {
        const StudyFile closing = std::move(bench.m_study);
    }
    bench.m_study = taken(StudyFile::open(path));
    EXPECT_EQ(countOf(bench, "chunk"), 0);
    EXPECT_EQ(countOf(bench, "trace_data"), 0);
}

TEST(TraceStudy, LeavesEditsOfAnotherConnectionRoomWhileItImports)
{
    std::string text = "time_s,v,w,x,y\n"; // numbers that cannot be packed, for several batches
    std::mt19937_64 random(3);
    std::uniform_real_distribution<double> number(0.0, 1.0);
    constexpr int kRows = 400'000;
    for (int i = 0; i < kRows; ++i)
        text += fmt::format("{},{},{},{},{}\n", i, number(random), number(random), number(random),
                            number(random));
    TraceBench bench(text);
    StudyFile editor = taken(bench.m_study.another());
    std::atomic<bool> underWay = false, over = false;
    std::atomic<int> edits = 0, meanwhile = 0;
    std::jthread person([&] {
        while (!underWay)
            std::this_thread::yield();
        while (!over) {
            const auto run = editor.addRun(tests::aRun().at_min(40 + 10 * edits));
            ASSERT_TRUE(run) << core::describe(run.error());
            ++edits;
            meanwhile += over ? 0 : 1;
        }
    });
    TraceImportOptions options;
    options.progress = [&](double done, double) {
        underWay = true;
        over = done >= 1.0;
    };
    bench.import(options);
    over = true;
    person.join();
    EXPECT_EQ(bench.channel("v").size(), std::size_t{kRows});
    EXPECT_GT(meanwhile, 0) << "before the import was at its end";
    EXPECT_THAT(taken(bench.m_study.study()).runs, SizeIs(2 + edits.load()));
}

TEST(TraceStudy, SaysWhichChunkIsDamaged)
{
    TraceBench bench(wholeMorning());
    const auto id = bench.import().recording;
    bench.m_study.database().database->exec("UPDATE chunk SET bytes = CAST(substr(bytes, 1, "
                                            "length(bytes) - 1) || x'00' AS BLOB) WHERE place = 1");
    const auto samples = readChannel(bench.m_study, id, "n");
    ASSERT_FALSE(samples);
    EXPECT_EQ(samples.error().code, core::ErrorCode::studyFile);
    EXPECT_THAT(samples.error().message.english(), HasSubstr("damaged"));
    EXPECT_THAT(samples.error().message.english(), HasSubstr("channel n"));
    EXPECT_TRUE(readChannel(bench.m_study, id, "sparse"));
}

TEST(TraceStudy, RefusesToImportIntoAStudyOpenForReading)
{
    TraceBench bench(wholeMorning());
    bench.import();
    StudyFile reader = taken(StudyFile::open(bench.m_study.path(), true));
    EXPECT_EQ(importTrace(reader, bench.m_file).error().code, core::ErrorCode::studyFile);
    EXPECT_THAT(taken(recordings(reader)), SizeIs(1));
    EXPECT_EQ(taken(readChannel(reader, core::RecordingId{1}, "n")).size(), 720U);
}

TEST(TraceStudy, ReadsAFileInMemoryAsTheStudyGivesItBack)
{
    TraceBench bench(wholeMorning());
    TraceImportOptions options;
    options.run = 1;
    bench.import(options);
    const core::Run run = runNumber(bench, 1);
    const auto stored = tracesOf(bench.m_study)(run);
    const auto read = taken(readTraceFile(bench.m_file, run));
    ASSERT_EQ(read->channels().size(), stored->channels().size());
    for (std::size_t i = 0; i < read->channels().size(); ++i) {
        const auto& name = read->channels()[i].name;
        EXPECT_EQ(stored->channels()[i].name, name);
        EXPECT_EQ(stored->channels()[i].maximum, read->channels()[i].maximum);
        const auto a = read->samples(name), b = stored->samples(name);
        EXPECT_EQ(a->value, b->value);
        EXPECT_TRUE(
            std::equal(a->time_s.begin(), a->time_s.end(), b->time_s.begin(), b->time_s.end()));
    }
    ASSERT_THAT(read->marks(), SizeIs(1));
    EXPECT_EQ(read->marks()[0].at_s, stored->marks()[0].at_s);
    EXPECT_EQ(read->last_s(), stored->last_s());
}

TEST(TraceStudy, ReadsTheTracesThatASheetNames)
{
    TraceBench bench;
    bench.write("time_s,v\n0,1\n1,2\n", "r1.csv");
    bench.write(wholeMorning(), "both.csv");
    core::Study study = taken(bench.m_study.study());
    study.runs[0].trace = "r1.csv";
    study.runs[1].trace = "both.csv";
    const auto traces = taken(tracesOfSheet(bench.m_folder / "sheet.csv", study));
    EXPECT_THAT(traces(study.runs[0])->samples("v")->value, ElementsAre(1, 2));
    EXPECT_EQ(traces(study.runs[1])->samples("n")->time_s.front(), -480.0);
    study.runs[0].trace.clear();
    EXPECT_FALSE(taken(tracesOfSheet(bench.m_folder / "sheet.csv", study))(study.runs[0]));
    study.runs[0].trace = "missing.csv";
    const auto refused = tracesOfSheet(bench.m_folder / "sheet.csv", study);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().where.english(), testing::EndsWith("missing.csv"));
}

TEST(TraceStudy, ComesInWithTheClockOfItsRecorderSetRight)
{
    TraceBench bench(wholeMorning());
    TraceImportOptions options;
    bench.import(options);
    options.clock.ahead_s = 120.0; // two minutes fast
    bench.import(options);
    const auto known = taken(recordings(bench.m_study));
    ASSERT_THAT(known, SizeIs(2));
    EXPECT_EQ(known[0].first->us - known[1].first->us, 120'000'000);
    options.run = 1;
    TraceImportOptions right;
    right.run = 1;
    const double as = *taken(importTrace(bench.m_study, bench.m_file, right)).offset_s;
    EXPECT_EQ(*taken(importTrace(bench.m_study, bench.m_file, options)).offset_s - as, 120.0);
}

TEST(TraceStudy, WithoutAClockIsToldWhenItBegan)
{
    TraceBench bench("time_s,v\n0,1\n1,2\n");
    TraceImportOptions options;
    options.start = "2026-05-09 05:40";
    const auto report = taken(importTrace(bench.m_study, bench.m_file, options));
    EXPECT_EQ(core::formatDateTime(*report.first), "2026-05-09T05:40:00");
    options.clock.ahead_s = -60.0;
    options.start = "05:40:30";
    const auto later = taken(importTrace(bench.m_study, bench.m_file, options));
    EXPECT_EQ(core::formatDateTime(*later.first),
              core::formatDate(taken(bench.m_study.study()).runs.front().start) + "T05:41:30");
    options.start.clear();
    EXPECT_FALSE(importTrace(bench.m_study, bench.m_file, options)) << "no clock to set right";
    options = {};
    options.start = "half past five";
    const auto refused = importTrace(bench.m_study, bench.m_file, options);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().message.english(), HasSubstr("'half past five' is no time"));
    bench.write(wholeMorning(), "both.csv");
    options.start = "05:40";
    const auto own = importTrace(bench.m_study, bench.m_folder / "both.csv", options);
    ASSERT_FALSE(own);
    EXPECT_THAT(own.error().message.english(), HasSubstr("a clock of its own"));
    core::Study twoDays = taken(bench.m_study.study());
    twoDays.properties.date.clear();
    twoDays.runs.back().start.us += std::int64_t{86'400} * 1'000'000;
    EXPECT_FALSE(recordingStart("05:40", twoDays));
    EXPECT_TRUE(recordingStart("2026-05-09 05:40", twoDays));
}

} // namespace
} // namespace bothways::storage
