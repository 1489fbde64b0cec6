// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/study_database.h"
#include "storage/study/study_file.h"
#include "tests/storage/study/forged_study.h"
#include "tests/storage/study/other_program.h"
#include "tests/storage/study/study_builders.h"
#include "tests/support/plain_disk.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <cstdlib>
#include <fstream>
#include <thread>

using namespace bothways;
using std::chrono::milliseconds;
using storage::StudyFile;
using testing::ElementsAre;
using testing::HasSubstr;
using tests::aRun;
using tests::OtherProgram;
using tests::taken;

namespace {

struct Held : testing::Test {
    tests::TemporaryFolder folder;
    std::filesystem::path path = folder / "day.bothways";
    void SetUp() override { taken(taken(StudyFile::create(path)).addRun(aRun())); }
    void TearDown() override { StudyFile::setWaiting({}); }
    [[nodiscard]] std::size_t filesInFolder() const
    {
        return static_cast<std::size_t>(
            std::distance(std::filesystem::directory_iterator(folder.path()),
                          std::filesystem::directory_iterator()));
    }
    void expectNewOnAFullDiskLeavesNothing() const
    {
        const auto made = folder / "new.bothways";
        for (const rlim_t size : {0, 1, 4096, 50'000}) {
            const pid_t child = ::fork();
            if (child == 0) {
                std::signal(SIGXFSZ, SIG_IGN);
                const rlimit limit{size, size};
                ::setrlimit(RLIMIT_FSIZE, &limit);
                const auto refused = StudyFile::create(made);
                _exit(!refused && refused.error().message.english() ==
                                      "cannot be made: the disk is full"
                          ? 0
                          : 1);
            }
            int status = 0;
            ::waitpid(child, &status, 0);
            EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << size;
            EXPECT_EQ(filesInFolder(), 1u) << "an empty journal, or half a study";
        }
    }
    /// Another program that reads the study for a while; with SQLite's own lock alone.
    void readFor(milliseconds time, const std::function<void()>& ready) const
    {
        SQLite::Database reader(path.string());
        reader.exec("BEGIN");
        reader.execAndGet("SELECT count(*) FROM run");
        ready();
        std::this_thread::sleep_for(time);
        reader.exec("COMMIT");
    }
};

} // namespace

TEST_F(Held, TheHoldIsSeenFromAnotherSessionOfTheSameUser)
{
    OtherProgram other([&](const auto& ready) {
        ::setenv("XDG_RUNTIME_DIR", (folder / "elsewhere").c_str(), 1);
        ::setenv("TMPDIR", folder.path().c_str(), 1);
        static const StudyFile held = taken(StudyFile::open(path));
        ready();
    });
    const auto refused = StudyFile::open(path);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().message.english(), HasSubstr("is being written by "));
    EXPECT_THAT(refused.error().message.english(),
                HasSubstr("(process " + std::to_string(other.id()) + ", since "));
}

TEST_F(Held, ASecondOpeningInTheSameProgramIsRefusedToo)
{
    const StudyFile one = taken(StudyFile::open(path));
    EXPECT_FALSE(StudyFile::open(path));
    EXPECT_TRUE(StudyFile::open(path, true));
}

TEST_F(Held, WhatAnImportInAnotherSessionHasNotFinishedIsLeftAlone)
{
    OtherProgram other([&](const auto& ready) {
        ::setenv("XDG_RUNTIME_DIR", (folder / "elsewhere").c_str(), 1);
        static const StudyFile held = taken(StudyFile::open(path));
        tests::runSql(path, "INSERT INTO trace_data (state) VALUES ('unfinished')");
        ready();
    });
    EXPECT_FALSE(StudyFile::open(path));
    EXPECT_TRUE(StudyFile::open(path, true));
    EXPECT_EQ(tests::askSql(path, "SELECT count(*) FROM trace_data"), "1");
    other.kill();
    EXPECT_TRUE(StudyFile::open(path));
    EXPECT_EQ(tests::askSql(path, "SELECT count(*) FROM trace_data"), "0") << "its owner is gone";
}

TEST_F(Held, AReaderIsWaitedForWithWords)
{
    std::vector<std::string> said;
    StudyFile::setWaiting([&](const core::Message& message) {
        said.push_back(message.english());
        return true;
    });
    StudyFile file = taken(StudyFile::open(path));
    OtherProgram other([&](const auto& ready) { readFor(milliseconds(1500), ready); });
    EXPECT_TRUE(file.addRun(aRun().at_min(7)));
    EXPECT_THAT(said,
                ElementsAre(testing::MatchesRegex(
                    "waiting for storage_tests .process .*, since .*, which reads the study")));
    EXPECT_EQ(taken(file.study()).runs.size(), 2u);
}

TEST_F(Held, AReaderThatStaysIsNoWriterAndNothingIsChanged)
{
    StudyFile::setWaiting({}, milliseconds(300));
    StudyFile file = taken(StudyFile::open(path));
    {
        OtherProgram other([&](const auto& ready) { readFor(std::chrono::seconds(60), ready); });
        const auto refused = file.addRun(aRun().at_min(7));
        ASSERT_FALSE(refused);
        EXPECT_THAT(
            refused.error().message.english(),
            HasSubstr("is being read by storage_tests (process " + std::to_string(other.id())));
        EXPECT_THAT(refused.error().message.english(), HasSubstr("nothing was changed"));
        EXPECT_EQ(taken(file.study()).runs.size(), 1u);
    }
    EXPECT_TRUE(file.addRun(aRun().at_min(7)));
    EXPECT_EQ(taken(file.study()).runs.size(), 2u);
}

TEST_F(Held, AWriterOfAnotherKindIsNamedAsOne)
{
    StudyFile::setWaiting({}, milliseconds(300));
    StudyFile file = taken(StudyFile::open(path));
    OtherProgram other([&](const auto& ready) {
        SQLite::Database writer(path.string(), SQLite::OPEN_READWRITE);
        writer.exec("BEGIN IMMEDIATE");
        ready();
        std::this_thread::sleep_for(std::chrono::seconds(60));
    });
    const auto refused = file.addRun(aRun().at_min(7));
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().message.english(), HasSubstr("is being written by storage_tests"));
}

TEST_F(Held, WaitingEndsWhenItIsAskedTo)
{
    StudyFile::setWaiting([](const core::Message&) { return false; });
    StudyFile file = taken(StudyFile::open(path));
    OtherProgram other([&](const auto& ready) { readFor(std::chrono::seconds(60), ready); });
    EXPECT_FALSE(file.addRun(aRun().at_min(7))) << "waited until the other was done";
}

TEST_F(Held, APipeOrAnotherSpecialFileIsRefusedAtOnce)
{
    ASSERT_EQ(::mkfifo((folder / "pipe.bothways").c_str(), 0600), 0);
    for (const bool readOnly : {true, false}) {
        EXPECT_THAT(core::describe(StudyFile::open(folder / "pipe.bothways", readOnly).error()),
                    HasSubstr("is a pipe or a device; expected a study"));
        EXPECT_THAT(core::describe(StudyFile::open("/dev/null", readOnly).error()),
                    HasSubstr("is a pipe or a device; expected a study"));
    }
}

// Closing any descriptor of a file drops the process's SQLite locks on it.
TEST_F(Held, LookingAtAnOpenStudyDropsNoLock)
{
    StudyFile::setWaiting({}, milliseconds(200));
    StudyFile file = taken(StudyFile::open(path));
    sqlite3* database = file.database().database->getHandle();
    ASSERT_EQ(sqlite3_exec(database, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
    EXPECT_TRUE(StudyFile::isStudyFile(path));
    EXPECT_TRUE(StudyFile::open(path, true));
    EXPECT_FALSE(StudyFile::open(path));
    const pid_t child = ::fork();
    if (child == 0) {
        SQLite::Database other(path.string(), SQLite::OPEN_READWRITE);
        try {
            other.exec("BEGIN IMMEDIATE");
        } catch (const SQLite::Exception&) {
            _exit(0);
        }
        _exit(1);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << "the lock was lost";
    sqlite3_exec(database, "ROLLBACK", nullptr, nullptr, nullptr);
}

TEST_F(Held, OfManyNewAtOnceOneWinsAndNobodyRemovesIt)
{
    for (int round = 0; round < 10; ++round) {
        std::filesystem::remove(path);
        constexpr int kPrograms = 6;
        std::vector<pid_t> programs;
        for (int i = 0; i < kPrograms; ++i) {
            const pid_t child = ::fork();
            if (child == 0)
                _exit(StudyFile::create(path) ? 0 : 1);
            programs.push_back(child);
        }
        int won = 0;
        for (const pid_t program : programs) {
            int status = 0;
            ::waitpid(program, &status, 0);
            won += WIFEXITED(status) && WEXITSTATUS(status) == 0 ? 1 : 0;
        }
        // The one that made it may find that another opened it first; it is there all the same.
        EXPECT_LE(won, 1);
        EXPECT_TRUE(StudyFile::open(path)) << "round " << round;
        EXPECT_EQ(filesInFolder(), 1u);
    }
}

TEST_F(Held, NewOnAFullDiskLeavesNothing)
{
    expectNewOnAFullDiskLeavesNothing();
}

TEST_F(Held, NewOnAPlainDiskMakesAStudyAndReplacesNone)
{
    const tests::PlainDisk disk;
    const auto made = folder / "new.bothways";
    taken(taken(StudyFile::create(made)).addRun(aRun()));
    const auto refused = StudyFile::create(made);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().message.english(), "exists already; expected a name that is free");
    EXPECT_EQ(taken(taken(StudyFile::open(made)).study()).runs.size(), 1u);
    std::filesystem::remove(made);
    expectNewOnAFullDiskLeavesNothing();
}
