// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/study_database.h"
#include "storage/study/study_file.h"
#include "tests/storage/study/forged_study.h"
#include "tests/storage/study/random_studies.h"
#include "tests/storage/study/study_builders.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <fstream>
#include <sstream>

using namespace bothways;
namespace fs = std::filesystem;
using core::ErrorCode;
using storage::StudyFile;
using testing::HasSubstr;
using tests::aRun;
using tests::taken;

namespace {

std::string bytesOf(const fs::path& file)
{
    std::ostringstream bytes;
    bytes << std::ifstream(file, std::ios::binary).rdbuf();
    return bytes.str();
}

void write(const fs::path& file, std::string_view bytes)
{
    std::ofstream(file, std::ios::binary)
        .write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

/// What a person would see of a study.
struct WhatIsInIt {
    core::Study study;
    std::vector<std::string> history;
    friend bool operator==(const WhatIsInIt&, const WhatIsInIt&) = default;
};

core::Result<WhatIsInIt> contentOf(const StudyFile& file)
{
    WhatIsInIt content;
    auto study = file.study();
    auto history = file.history();
    if (!study)
        return study.error();
    if (!history)
        return history.error();
    content.study = std::move(study).take();
    for (const storage::HistoryEntry& entry : history.value())
        content.history.push_back(entry.at + entry.kind + entry.detail +
                                  (entry.undone ? " undone" : ""));
    return content;
}

struct RefusedFiles : testing::Test {
    tests::TemporaryFolder folder;
    fs::path path = folder / "day.bothways";

    /// A closed study of some runs with a past.
    void makeStudy(int runs = 12)
    {
        StudyFile file = taken(StudyFile::create(path));
        tests::RandomStudies random(3);
        taken(file.importRuns(random.study(runs), "morning.csv"));
        const core::RunId first = taken(file.study()).runs.at(0).id;
        taken(file.discard({first}, {"adjusted", "by hand"}));
        taken(file.undo());
    }
    void sql(const std::string& statements) const
    {
        SQLite::Database(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
            .exec(statements);
    }
    /// Both ways of opening refuse, with these words, and leave the file as it is.
    void expectRefused(const std::string& words) const
    {
        const std::string before = fs::is_regular_file(path) ? bytesOf(path) : "";
        for (const bool readOnly : {true, false}) {
            const auto file = StudyFile::open(path, readOnly);
            ASSERT_FALSE(file) << "opened, though expected: " << words;
            EXPECT_EQ(file.error().code, ErrorCode::studyFile);
            EXPECT_EQ(file.error().where.english(), path.string());
            EXPECT_THAT(file.error().message.english(), HasSubstr(words));
        }
        if (fs::is_regular_file(path)) {
            EXPECT_EQ(bytesOf(path), before) << "refused, but changed";
        }
        EXPECT_FALSE(fs::exists(path.string() + "-journal"));
    }
};

/// Runs `work` in a child without root's rights; true when it says so.
template <class Work>
bool inUnprivilegedChild(Work work)
{
    const pid_t child = fork();
    if (child == 0) {
        if (geteuid() == 0 && setuid(65534) != 0)
            _exit(2);
        _exit(work() ? 0 : 1);
    }
    int status = 0;
    waitpid(child, &status, 0);
    return WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

} // namespace

TEST_F(RefusedFiles, WhatIsNotThere)
{
    expectRefused("there is no such file; expected a study");
    EXPECT_FALSE(fs::exists(path)) << "opening makes nothing";
}

TEST_F(RefusedFiles, ADirectory)
{
    fs::create_directory(path);
    expectRefused("is a directory");
}

TEST_F(RefusedFiles, AnEmptyFile)
{
    write(path, "");
    expectRefused("is empty; expected a study");
}

TEST_F(RefusedFiles, PlainText)
{
    write(path, "configuration,direction,start,l_per_100km\n");
    expectRefused("is no study; expected a file that Bothways made");
}

TEST_F(RefusedFiles, ADatabaseOfAnotherProgram)
{
    sql("CREATE TABLE run (id INTEGER PRIMARY KEY); PRAGMA user_version = 1");
    expectRefused("is an SQLite database, but not a study");
}

TEST_F(RefusedFiles, AStudyOfANewerVersion)
{
    makeStudy();
    sql("PRAGMA user_version = 3");
    expectRefused("was made by a newer Bothways (format 3; this one knows formats up to 2)");
    sql("PRAGMA user_version = 2");
    EXPECT_TRUE(StudyFile::open(path)) << "never damaged";
}

TEST_F(RefusedFiles, AStudyWithoutAFormatNumber)
{
    makeStudy();
    sql("PRAGMA user_version = 0");
    expectRefused("is damaged: it has no format number");
}

TEST_F(RefusedFiles, AStudyThatSomethingElseWroteInto)
{
    makeStudy();
    sql("UPDATE run SET consumption = consumption * 0.9 WHERE run = "
        "(SELECT min(run) FROM run WHERE consumption IS NOT NULL)");
    expectRefused("its content is not what Bothways wrote last");
}

TEST_F(RefusedFiles, AHistoryWithALineTakenOut)
{
    makeStudy();
    sql("DELETE FROM history WHERE kind = 'discard'");
    expectRefused("its content is not what Bothways wrote last");
}

TEST_F(RefusedFiles, TheTablesThemselvesRefuseNonsense)
{
    makeStudy();
    for (const char* statement :
         {"UPDATE run SET consumption = -1", "UPDATE run SET status = 'maybe'",
          "UPDATE run SET start = 'soon'", "UPDATE run SET configuration = ' '",
          "UPDATE run SET run = 1", "UPDATE run SET status = 'discarded', reason = NULL",
          "UPDATE run SET consumption_unit = 'barrels' WHERE consumption IS NOT NULL",
          "UPDATE run SET distance_km = 'far'", "INSERT INTO seal VALUES (2, 'x')",
          "PRAGMA foreign_keys = ON; INSERT INTO mark VALUES (99, 0, 1.0, 'gust', '')"})
        EXPECT_THROW(sql(statement), SQLite::Exception) << statement;
    EXPECT_TRUE(StudyFile::open(path));
}

TEST_F(RefusedFiles, AFileCutShortAnywhere)
{
    makeStudy();
    const std::string whole = bytesOf(path);
    ASSERT_EQ(whole.size() % 4096, 0u);
    ASSERT_GT(whole.size() / 4096, 15u);
    for (std::size_t size = 1; size < whole.size(); size += size < 4096 ? 512 : 2048) {
        write(path, whole.substr(0, size));
        EXPECT_FALSE(StudyFile::open(path, true)) << size << " of " << whole.size() << " bytes";
        EXPECT_FALSE(StudyFile::open(path)) << size << " of " << whole.size() << " bytes";
    }
}

// Opens with the very same content (the byte meant nothing) or refuses: never crashes, never half.
TEST_F(RefusedFiles, AFlippedByteAnywhere)
{
    makeStudy(6);
    const std::string whole = bytesOf(path);
    const WhatIsInIt before = taken(contentOf(taken(StudyFile::open(path, true))));
    constexpr std::uint32_t kSeed = 11;
    tests::RandomStudies random(kSeed);
    int refused = 0;
    constexpr int kFlips = 300;
    for (int i = 0; i < kFlips; ++i) {
        const auto at =
            static_cast<std::size_t>(i < 100 ? i : random.below(static_cast<int>(whole.size())));
        std::string bytes = whole;
        bytes[at] = static_cast<char>(bytes[at] ^ (1 << random.below(8)));
        write(path, bytes);
        const auto file = StudyFile::open(path, random.oneIn(2));
        refused += file ? 0 : 1;
        if (!file)
            continue;
        const auto content = contentOf(file.value());
        ASSERT_TRUE(content) << "byte " << at << ": opened, then could not be read";
        ASSERT_EQ(content.value(), before) << "byte " << at << " of " << whole.size();
    }
    EXPECT_GT(refused, kFlips / 10) << "the damage was not seen at all?";
    EXPECT_LT(refused, kFlips) << "free space may change";
}

TEST_F(RefusedFiles, AReadOnlyFileIsReadButNotWritten)
{
    makeStudy();
    fs::permissions(folder.path(), fs::perms{0777});
    fs::permissions(path, fs::perms{0444});
    EXPECT_TRUE(inUnprivilegedChild([&] {
        const auto reader = StudyFile::open(path, true);
        const auto writer = StudyFile::open(path);
        return reader && reader.value().study() && !writer &&
               writer.error().message.english().starts_with("is read-only");
    }));
}

TEST_F(RefusedFiles, AReadOnlyFolderIsSaidBeforeAnythingIsTyped)
{
    makeStudy();
    fs::permissions(path, fs::perms{0666});
    fs::permissions(folder.path(), fs::perms{0555});
    EXPECT_TRUE(inUnprivilegedChild([&] {
        const auto reader = StudyFile::open(path, true);
        const auto writer = StudyFile::open(path);
        const auto made = StudyFile::create(folder / "new.bothways");
        return reader && reader.value().study() && !writer && !made &&
               writer.error().message.english().starts_with("lies in a folder that is read-only") &&
               !fs::exists(folder / "new.bothways");
    }));
}

TEST_F(RefusedFiles, AFileThatMayNotBeRead)
{
    makeStudy();
    fs::permissions(folder.path(), fs::perms{0755});
    fs::permissions(path, fs::perms{0});
    EXPECT_TRUE(inUnprivilegedChild([&] {
        const auto reader = StudyFile::open(path, true);
        return !reader && reader.error().message.english().starts_with("cannot be read");
    }));
}

TEST_F(RefusedFiles, AFullDiskChangesNothing)
{
    makeStudy();
    fs::permissions(folder.path(), fs::perms{0777});
    fs::permissions(path, fs::perms{0666});
    const WhatIsInIt before = taken(contentOf(taken(StudyFile::open(path, true))));
    EXPECT_TRUE(inUnprivilegedChild([&] {
        // No file may grow beyond what this one has: what the kernel says then is near enough to
        // "no space left on device".
        signal(SIGXFSZ, SIG_IGN);
        const rlimit limit{fs::file_size(path) + 8192, fs::file_size(path) + 8192};
        auto file = StudyFile::open(path);
        if (!file || setrlimit(RLIMIT_FSIZE, &limit) != 0)
            return false;
        const core::Run like = taken(file.value().study()).runs.at(0);
        core::Study sheet;
        for (int i = 0; i < 2000; ++i) {
            core::Run run = aRun().number(1000 + i).at_min(2000 + i);
            run.configuration = like.configuration;
            run.direction = like.direction;
            run.start.utc_offset_min = like.start.utc_offset_min;
            sheet.runs.push_back(run);
        }
        const auto refused = file.value().importRuns(sheet, "long.csv");
        const auto after = contentOf(file.value());
        return !refused && refused.error().code == ErrorCode::studyFile &&
               refused.error().message.english().find("nothing was changed") != std::string::npos &&
               after && after.value() == before;
    }));
    EXPECT_EQ(taken(contentOf(taken(StudyFile::open(path)))), before);
}

TEST_F(RefusedFiles, NoMorePagesIsAFullDisk)
{
    StudyFile file = taken(StudyFile::create(path));
    taken(file.addRun(aRun()));
    const WhatIsInIt before = taken(contentOf(file));
    file.database().database->exec("PRAGMA max_page_count = 1");
    core::Run large = aRun().number(2).at_min(7);
    large.notes = std::string(100'000, 'x');
    const auto refused = file.addRun(large);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().message.english(), "the disk is full; nothing was changed");
    EXPECT_EQ(taken(contentOf(file)), before);
}

TEST_F(RefusedFiles, CreatingNeverOverwrites)
{
    write(path, "precious");
    const auto made = StudyFile::create(path);
    ASSERT_FALSE(made);
    EXPECT_THAT(made.error().message.english(), HasSubstr("exists already"));
    EXPECT_EQ(bytesOf(path), "precious");
    EXPECT_THAT(StudyFile::create(folder / "none" / "day.bothways").error().message.english(),
                HasSubstr("has no folder to lie in"));
}

TEST_F(RefusedFiles, AClosedStudyIsOneFileAndLookingDoesNotChangeIt)
{
    makeStudy();
    const std::string before = bytesOf(path);
    {
        StudyFile file = taken(StudyFile::open(path));
        EXPECT_FALSE(file.addRun(aRun().consuming(-1)));
        EXPECT_TRUE(file.study());
    }
    EXPECT_EQ(bytesOf(path), before);
    EXPECT_EQ(std::distance(fs::directory_iterator(folder.path()), fs::directory_iterator()), 1);
}

TEST_F(RefusedFiles, IsToldFromARunSheetByItsBeginning)
{
    makeStudy();
    fs::rename(path, folder / "day.db");
    EXPECT_TRUE(StudyFile::isStudyFile(folder / "day.db"));
    write(folder / "day.csv", "run,configuration\n");
    EXPECT_FALSE(StudyFile::isStudyFile(folder / "day.csv"));
    EXPECT_FALSE(StudyFile::isStudyFile(folder / "none.csv"));
    EXPECT_FALSE(StudyFile::isStudyFile(folder.path()));
    write(folder / "broken.bothways", "?");
    EXPECT_TRUE(StudyFile::isStudyFile(folder / "broken.bothways"))
        << "so that open() says why not";
}

TEST_F(RefusedFiles, AnUnfinishedRecordingIsRemovedOnOpening)
{
    makeStudy();
    tests::forge(path,
                 "INSERT INTO trace_data (id, state) VALUES (1, 'unfinished'), (2, 'complete');"
                 "INSERT INTO chunk (data, place, first_row, rows, samples, bytes) "
                 "VALUES (1, 0, 0, 1, 1, x'00'), (2, 0, 0, 1, 1, x'00')");
    EXPECT_TRUE(StudyFile::open(path, true)) << "a reader leaves it";
    EXPECT_TRUE(StudyFile::open(path));
    SQLite::Database database(path.string());
    EXPECT_EQ(
        database.execAndGet("SELECT count(*) FROM trace_data WHERE state = 'unfinished'").getInt(),
        0);
    EXPECT_EQ(database.execAndGet("SELECT count(*) FROM chunk").getInt(), 1);
}
