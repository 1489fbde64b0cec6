// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/chunks/chunk_codec.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/run_traces.h"
#include "storage/recordings/trace_import.h"
#include "storage/study/recording_sums.h"
#include "storage/study/study_file.h"
#include "tests/storage/study/forged_study.h"
#include "tests/storage/study/study_builders.h"

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <malloc.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <fstream>
#include <functional>

using namespace bothways;
namespace fs = std::filesystem;
using storage::StudyFile;
using tests::aRun;
using tests::taken;

namespace {

constexpr long kMostMemory_kb = 256L << 10;
constexpr double kLongest_s = 5.0;

/// What another process needed for opening a file, beyond what it had before.
struct Needed {
    bool ended = false; ///< by itself
    bool opened = false;
    long memory_kb = 0;
    double processor_s = 0.0;
};

/// "VmHWM": the most memory the process ever had at once, "VmRSS": now.
long statusOf(const std::string& word)
{
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with(word + ":"))
            return std::stol(line.substr(word.size() + 1));
    return 0;
}

/// Everything that is looked at when an answer is wanted of a study.
bool readWhole(const fs::path& file, bool readOnly)
{
    const auto study = StudyFile::open(file, readOnly);
    return study && study.value().study() && study.value().history() && study.value().overruled() &&
           storage::recordings(study.value()) && storage::assignedTraces(study.value()) &&
           storage::checkRecordings(study.value());
}

Needed neededToOpen(const fs::path& file, bool readOnly)
{
    std::array<int, 2> ends{};
    if (::pipe(ends.data()) != 0)
        throw std::runtime_error("no pipe");
    const pid_t child = ::fork();
    if (child == 0) {
        // Nobody waits for long; the kernel ends what does not end.
        const rlimit cpu{30, 30};
        ::setrlimit(RLIMIT_CPU, &cpu);
        ::malloc_trim(0); // what earlier tests gave back would be taken again without growing
        std::ofstream("/proc/self/clear_refs") << 5; // the peak begins here
        const long before = statusOf("VmRSS");
        const bool opened = readWhole(file, readOnly);
        const std::array<long, 2> told = {opened ? 1L : 0L, statusOf("VmHWM") - before};
        static_cast<void>(!::write(ends[1], told.data(), sizeof told));
        _exit(0);
    }
    ::close(ends[1]);
    std::array<long, 2> told{};
    Needed needed;
    needed.ended = ::read(ends[0], told.data(), sizeof told) == sizeof told;
    ::close(ends[0]);
    int state = 0;
    rusage usage{};
    ::wait4(child, &state, 0, &usage);
    needed.opened = told[0] == 1;
    needed.memory_kb = told[1];
    needed.processor_s = static_cast<double>(usage.ru_utime.tv_sec + usage.ru_stime.tv_sec) +
                         static_cast<double>(usage.ru_utime.tv_usec + usage.ru_stime.tv_usec) / 1e6;
    return needed;
}

struct OpeningBound : testing::Test {
    tests::TemporaryFolder folder;
    fs::path path = folder / "day.bothways";

    void makeStudy(int runs = 2) const
    {
        StudyFile file = taken(StudyFile::create(path));
        core::Study sheet;
        for (int i = 0; i < runs; ++i)
            sheet.runs.push_back(aRun().at_min(7 * i));
        taken(file.importRuns(sheet, "day.csv"));
    }
    /// By both ways.
    void expectBounded(const std::string& what, bool mayOpen = false) const
    {
        for (const bool readOnly : {true, false}) {
            const Needed needed = neededToOpen(path, readOnly);
            EXPECT_TRUE(needed.ended) << what;
            EXPECT_TRUE(mayOpen || !needed.opened) << what;
            EXPECT_LE(needed.memory_kb, kMostMemory_kb) << what;
            EXPECT_LE(needed.processor_s, kLongest_s) << what;
        }
    }
};

} // namespace

TEST_F(OpeningBound, IsMeasuredWithAProcessThatReallyTakesMemory)
{
    makeStudy();
    const Needed little = neededToOpen(path, true);
    EXPECT_TRUE(little.ended);
    EXPECT_TRUE(little.opened);
    EXPECT_GT(little.memory_kb, 0);
    EXPECT_LT(little.memory_kb, 32L << 10);
    {
        StudyFile file = taken(StudyFile::open(path));
        core::Run run = taken(file.study()).runs.at(0);
        for (int i = 0; i < 40; ++i) {
            run.notes = std::string(900'000, static_cast<char>('a' + i % 26));
            run.number = 100 + i;
            taken(file.addRun(run));
        }
    }
    EXPECT_GT(neededToOpen(path, true).memory_kb, little.memory_kb + (30L << 10))
        << "36 MB of notes";
}

TEST_F(OpeningBound, HoldsForEverythingInTheCorpus)
{
    for (const auto& entry :
         fs::directory_iterator(fs::path(BOTHWAYS_SOURCE_DIR) / "tests/storage/corpus/study")) {
        fs::remove(path);
        fs::copy_file(entry.path(), path);
        fs::permissions(path, fs::perms::owner_all);
        expectBounded(entry.path().filename().string(), true);
    }
}

TEST_F(OpeningBound, HoldsForSchemasThatWouldTakeForEver)
{
    std::string tables = "BEGIN;";
    for (int i = 0; i < 4'000; ++i)
        tables += fmt::format("CREATE TABLE t{} (a, b, c, d, e, f, g, h);", i);
    const std::pair<const char*, std::string> schemas[] = {
        {"20,000 tables", tables + "COMMIT"},
        {"a statement of 100 MB", "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = "
                                  "sql || printf('%*c', 100000000, ' ') WHERE name = 'run_list'"},
        {"a view without an end",
         "DROP VIEW run_list; CREATE VIEW run_list AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL "
         "SELECT i + 1 FROM n) SELECT i FROM n"},
        {"a trigger that fires itself",
         "PRAGMA recursive_triggers = ON; CREATE TRIGGER t AFTER UPDATE ON run BEGIN UPDATE run "
         "SET notes = notes || notes; END"}};
    for (const auto& [name, sql] : schemas) {
        fs::remove(path);
        makeStudy();
        tests::runSql(path, sql);
        expectBounded(name);
    }
}

TEST_F(OpeningBound, HoldsForAHeaderThatAsksForAllMemory)
{
    makeStudy();
    tests::forge(path, "CREATE TABLE big (x); WITH n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n "
                       "WHERE i < 300) INSERT INTO big SELECT zeroblob(1000000) FROM n; "
                       "DROP TABLE big; PRAGMA default_cache_size = 2000000");
    ASSERT_GT(fs::file_size(path), 290'000'000U);
    expectBounded("300 MB of free pages", true);
}

TEST_F(OpeningBound, HoldsForRowsWithoutNumber)
{
    const auto many = [](const std::string& insert, int rows) {
        return fmt::format("WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i "
                           "< {}) {}",
                           rows, insert);
    };
    const std::pair<const char*, std::string> contents[] = {
        {"marks", many("INSERT INTO mark SELECT 1, i, 1.0, 'x', '' FROM n", 100'000)},
        {"own columns", many("INSERT INTO extra SELECT 1, i, 'x' || i, 'y' FROM n", 100'000)},
        {"switches", many("INSERT INTO accessory_on SELECT 1, 'x' || i, 1.0 FROM n", 100'000)},
        {"history", many("INSERT INTO history (at, kind, detail, state, checksum) SELECT "
                         "'2026-05-09T06:00:00Z', 'note', 'look', 'note', '' FROM n",
                         50'000)},
        {"recordings", many("INSERT INTO recording SELECT 1000 + i, 'r', 'csv', NULL, NULL, 0.0, "
                            "1.0, 4000000 FROM n",
                            50'000)},
        {"properties", many("INSERT INTO property SELECT 'limits.x' || i, '1' FROM n", 100'000)}};
    for (const auto& [name, sql] : contents) {
        fs::remove(path);
        makeStudy();
        tests::forge(path, sql);
        expectBounded(name, true);
    }
}

TEST_F(OpeningBound, HoldsForAChunkThatIsRepeated)
{
    makeStudy();
    {
        std::ofstream stream(folder / "drive.csv");
        stream << "time_s,n\n";
        for (int i = 0; i < 65'536; ++i)
            stream << i << ",1\n";
    }
    {
        StudyFile file = taken(StudyFile::open(path));
        taken(storage::importTrace(file, folder / "drive.csv"));
    }
    const auto repeat = [&](const std::string& firstRow) {
        return "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 2000) "
               "INSERT INTO chunk SELECT data, place, " +
               firstRow +
               " + i * 65536, rows, samples, minimum, maximum, bytes FROM chunk, n;"
               "WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 2000) "
               "INSERT INTO chunk_sum SELECT data, place, " +
               firstRow +
               " + i * 65536, sha256 FROM chunk_sum, n;"
               "UPDATE recording SET rows = 65536 * 2001; UPDATE channel SET samples = 65536 * "
               "2001;";
    };
    tests::forge(path, repeat("first_row"));
    expectBounded("sums that do not fit");
    {
        SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
        storage::completeRecording(database, database.execAndGet("SELECT id FROM recording"));
    }
    tests::forge(path, "SELECT 1");
    expectBounded("sums that fit: 131 million rows");
}
