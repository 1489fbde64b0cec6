// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/sheet_import.h"

#include "storage/recordings/recording_room.h"
#include "storage/recordings/run_traces.h"
#include "storage/sheet/run_sheet.h"
#include "storage/study/history_message.h"
#include "storage/study/study_database.h"
#include "tests/storage/recordings/trace_builders.h"
#include "tests/support/read_sheet.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <sqlite3.h>

#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <fstream>

namespace bothways::storage {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;
using tests::taken;

/// A sheet of three runs, each with a recording of `rows` rows, beside an empty study.
class SheetBench {
public:
    explicit SheetBench(int rows = 700)
    {
        std::string text = "run,configuration,direction,start,duration_s,l_per_100km,trace\n";
        for (int run = 1; run <= 3; ++run) {
            const std::string name = fmt::format("run{}.csv", run);
            text += fmt::format("{},A,{},2026-05-09T05:{}:00,210,8.{},{}\n", run,
                                run % 2 == 1 ? "out" : "return", 30 + 7 * run, run, name);
            write(name, recording(rows, run));
        }
        write("sheet.csv", text);
        sheet =
            taken(tests::readRunSheet(m_folder / "sheet.csv", {"2026-05-09", "2026-05-09"})).study;
        taken(StudyFile::create(study()));
    }
    static std::string recording(int rows, int seed)
    {
        std::string text = "time_s,n\n";
        for (int i = 0; i < rows; ++i)
            text += fmt::format("{},{}\n", i, (i * 7919 + seed * 104'729) % 100'003);
        return text;
    }
    void write(const std::string& name, const std::string& text) const
    {
        std::ofstream(m_folder / name, std::ios::binary) << text;
    }
    [[nodiscard]] std::filesystem::path study() const { return m_folder / "day.bothways"; }
    [[nodiscard]] std::filesystem::path file() const { return m_folder / "sheet.csv"; }

    core::Study sheet;

private:
    tests::TemporaryFolder m_folder;
};

long long rowsIn(const StudyFile& study, const std::string& table)
{
    SQLite::Statement row(*study.database().database, "SELECT count(*) FROM " + table);
    row.executeStep();
    return row.getColumn(0).getInt64();
}

/// Nothing of the sheet is in; the next try works.
void expectNothingAndThenAll(const SheetBench& bench)
{
    StudyFile study = taken(StudyFile::open(bench.study()));
    EXPECT_THAT(taken(study.study()).runs, IsEmpty());
    EXPECT_THAT(taken(recordings(study)), IsEmpty());
    EXPECT_THAT(taken(study.history()), SizeIs(1)) << "the line that says it was made";
    EXPECT_EQ(rowsIn(study, "trace_data"), 0);
    EXPECT_EQ(rowsIn(study, "chunk"), 0);
    EXPECT_EQ(taken(importSheet(study, bench.sheet, bench.file())).size(), 3U);
    EXPECT_THAT(taken(study.study()).runs, SizeIs(3));
    EXPECT_THAT(taken(assignedTraces(study)), SizeIs(3));
    EXPECT_TRUE(checkRecordings(study));
}

TEST(SheetImport, BringsRunsAndRecordingsInAsOneStepOfUndo)
{
    const SheetBench bench;
    StudyFile study = taken(StudyFile::open(bench.study()));
    EXPECT_EQ(taken(importSheet(study, bench.sheet, bench.file())).size(), 3U);
    const HistoryEntry line = taken(study.history()).back();
    EXPECT_EQ(line.kind, "import");
    EXPECT_EQ(historyDetail(line).english(), "sheet.csv: 3 runs, 3 recordings");
    for (int round = 0; round < 2; ++round) {
        ASSERT_TRUE(study.undo());
        EXPECT_THAT(taken(study.study()).runs, IsEmpty());
        EXPECT_THAT(taken(recordings(study)), IsEmpty());
        EXPECT_FALSE(study.nextUndo());
        EXPECT_GT(taken(freeableBytes(study)), 0) << "what undo took is kept for redo";
        ASSERT_TRUE(study.redo());
        EXPECT_FALSE(study.nextRedo());
        EXPECT_EQ(taken(freeableBytes(study)), 0);
        EXPECT_THAT(taken(study.study()).runs, SizeIs(3));
        EXPECT_THAT(taken(assignedTraces(study)), SizeIs(3));
    }
    EXPECT_TRUE(checkRecordings(study));
}

TEST(SheetImport, FindsRecordingsThatWereMovedAndNamesEveryOneThatIsNotThere)
{
    const SheetBench bench;
    const std::filesystem::path elsewhere = bench.file().parent_path() / "card";
    std::filesystem::create_directory(elsewhere);
    for (const char* name : {"run1.csv", "run3.csv"})
        std::filesystem::rename(bench.file().parent_path() / name, elsewhere / name);
    StudyFile study = taken(StudyFile::open(bench.study()));
    const auto refused = importSheet(study, bench.sheet, bench.file());
    ASSERT_FALSE(refused);
    EXPECT_THAT(core::describe(refused.error()), HasSubstr("run1.csv: there is no such file; "));
    EXPECT_THAT(core::describe(refused.error()), HasSubstr("run3.csv: there is no such file; "));
    EXPECT_THAT(core::describe(refused.error()), testing::Not(HasSubstr("run2.csv")));
    const auto files = taken(traceFiles(bench.sheet, bench.file(), {elsewhere}));
    EXPECT_EQ(files.at(1), elsewhere / "run1.csv");
    EXPECT_EQ(files.at(2), bench.file().parent_path() / "run2.csv");
    EXPECT_EQ(taken(importSheet(study, bench.sheet, bench.file(), {{}, {}, {elsewhere}})).size(),
              3U);
    EXPECT_THAT(taken(assignedTraces(study)), SizeIs(3));
    // A way that the sheet has from its old folder: the name alone is enough.
    core::Study old = bench.sheet;
    old.runs[0].trace = "/nowhere/logs/run1.csv";
    EXPECT_EQ(taken(traceFiles(old, bench.file(), {elsewhere})).at(1), elsewhere / "run1.csv");
    EXPECT_TRUE(taken(tracesOfSheet(bench.file(), old, {}, {elsewhere}))(old.runs[0]));
}

TEST(SheetImport, APartOfARecordingHasTheZeroThatIsAskedFor)
{
    const SheetBench bench;
    StudyFile study = taken(StudyFile::open(bench.study()));
    taken(importSheet(study, bench.sheet, bench.file()));
    const auto part = taken(openPart(study, taken(recordings(study)).at(0).id, 100.0, 90.0, 120.0));
    const auto samples = part->samples("n");
    ASSERT_TRUE(samples);
    EXPECT_EQ(samples->size(), 31U);
    EXPECT_EQ(samples->time_s[0], -10.0);
    EXPECT_EQ(samples->value[0], static_cast<double>((90 * 7919 + 104'729) % 100'003));
}

TEST(SheetImport, TellsASheetFromARecordingThatWasTakenForOne)
{
    const SheetBench bench;
    const auto at = [&](const char* name) { return bench.file().parent_path() / name; };
    const auto isRecording = [&](const char* name) {
        const auto bytes = readSheetBytes(at(name));
        return isRecordingInstead(at(name), bytes ? bytes.value() : std::string());
    };
    bench.write("walk.gpx", "<gpx><trk><trkseg><trkpt lat=\"1\" lon=\"2\"><time>"
                            "2026-05-09T05:40:00Z</time></trkpt></trkseg></trk></gpx>");
    bench.write("columns.csv", "configuration,direction,time_s,n\n1,2,3,4\n");
    bench.write("words.csv", "time_s,weather\n0,dry\n1,wet\n");
    EXPECT_TRUE(isRecording("run1.csv"));
    EXPECT_TRUE(isRecording("walk.gpx"));
    EXPECT_FALSE(isRecording("sheet.csv"));
    EXPECT_FALSE(isRecording("columns.csv")) << "its columns are those of runs";
    EXPECT_FALSE(isRecording("words.csv")) << "nothing in it was measured";
    EXPECT_FALSE(isRecording("none.csv"));
    EXPECT_TRUE(namesRecordings(bench.sheet));
    core::Study without = bench.sheet;
    for (core::Run& run : without.runs)
        run.trace.clear();
    EXPECT_FALSE(namesRecordings(without));
}

TEST(SheetImport, KeepsWhatWasSaidOfColumnsAndDatesForTheNextSheetOfThatHeader)
{
    const SheetBench bench;
    StudyFile study = taken(StudyFile::open(bench.study()));
    const std::string text = "Variante,Richtung,Start,Verbrauch\nA,hin,5/9/2026 05:40,8.4\n";
    SheetOptions said;
    said.columns = {{"Verbrauch", "l_per_100km"}};
    said.dates = DateOrder::monthFirst;
    ASSERT_TRUE(keepColumns(study, text, "may.csv", said));
    const SheetOptions kept = withKeptColumns(study, text + "B,hin,5/9/2026 06:40,8\n", "x", {});
    ASSERT_THAT(kept.columns, SizeIs(1));
    EXPECT_EQ(kept.columns[0].column, "Verbrauch");
    EXPECT_EQ(kept.columns[0].ours, "l_per_100km");
    EXPECT_EQ(kept.dates, DateOrder::monthFirst);
    said.columns[0].ours = "km_per_l";
    said.dates = DateOrder::dayFirst;
    const SheetOptions now = withKeptColumns(study, text, "x", said);
    ASSERT_THAT(now.columns, SizeIs(1));
    EXPECT_EQ(now.columns[0].ours, "km_per_l") << "what is said now comes first";
    EXPECT_EQ(now.dates, DateOrder::dayFirst);
    EXPECT_THAT(withKeptColumns(study, "a,b\n1,2\n", "x", {}).columns, IsEmpty());
    ASSERT_TRUE(keepColumns(study, "no header", "y", said)) << "nothing to keep it by";
}

TEST(SheetImport, WithAFaultInItsLastRecordingLeavesTheStudyAsItWas)
{
    const SheetBench bench;
    bench.write("run3.csv", "time_s,n\n0,x\n1,y\n");
    {
        StudyFile study = taken(StudyFile::open(bench.study()));
        const auto refused = importSheet(study, bench.sheet, bench.file());
        ASSERT_FALSE(refused);
        EXPECT_THAT(core::describe(refused.error()), HasSubstr("run3.csv"));
        EXPECT_EQ(rowsIn(study, "chunk"), 0);
        EXPECT_EQ(rowsIn(study, "history"), 1);
    }
    bench.write("run3.csv", SheetBench::recording(700, 3));
    expectNothingAndThenAll(bench);
}

TEST(SheetImport, StoppedInItsSecondRecordingLeavesTheStudyAsItWas)
{
    const SheetBench bench(200'000);
    {
        StudyFile study = taken(StudyFile::open(bench.study()));
        std::stop_source stop;
        const auto stopped = importSheet(study, bench.sheet, bench.file(),
                                         {[&](const std::string& name, double, double) {
                                              if (name == "run2.csv")
                                                  stop.request_stop();
                                          },
                                          stop.get_token()});
        ASSERT_FALSE(stopped);
        EXPECT_EQ(stopped.error().code, core::ErrorCode::stopped);
    }
    expectNothingAndThenAll(bench);
}

TEST(SheetImport, KilledAtAnyMomentIsAllInOrNotAtAll)
{
    int none = 0, all = 0;
    for (int wait_ms = 2; wait_ms < 400; wait_ms += 30) {
        const SheetBench bench(20'000);
        const pid_t child = ::fork();
        if (child == 0) {
            StudyFile study = taken(StudyFile::open(bench.study()));
            static_cast<void>(importSheet(study, bench.sheet, bench.file()));
            while (true)
                ::pause();
        }
        ::usleep(static_cast<useconds_t>(1000 * wait_ms));
        ::kill(child, SIGKILL);
        ::waitpid(child, nullptr, 0);
        StudyFile study = taken(StudyFile::open(bench.study()));
        const std::size_t runs = taken(study.study()).runs.size();
        ASSERT_TRUE(runs == 0 || runs == 3) << runs << " runs after " << wait_ms << " ms";
        ASSERT_THAT(taken(recordings(study)), SizeIs(runs)) << wait_ms << " ms";
        ASSERT_EQ(rowsIn(study, "trace_data"), static_cast<long long>(runs));
        none += runs == 0;
        all += runs == 3;
        if (runs == 0) {
            ASSERT_EQ(taken(importSheet(study, bench.sheet, bench.file())).size(), 3U);
        }
        if (all == 2)
            break;
    }
    EXPECT_GT(none, 0);
}

} // namespace
} // namespace bothways::storage
