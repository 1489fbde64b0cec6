// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/recordings.h"
#include "storage/study/recording_sums.h"
#include "storage/study/study_database.h"
#include "tests/storage/study/forged_study.h"
#include "tests/storage/study/study_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

using namespace bothways;
using storage::StudyFile;
using testing::HasSubstr;
using tests::taken;

namespace {

/// A study that the program of version 1 wrote: six runs, a recording, a discard taken back.
struct Version1 : testing::Test {
    tests::TemporaryFolder folder;
    std::filesystem::path path = folder / "old.bothways";
    void SetUp() override
    {
        std::filesystem::copy_file(
            BOTHWAYS_SOURCE_DIR "/tests/storage/corpus/study/version_1.bothways", path);
    }
    [[nodiscard]] std::string bytes() const
    {
        std::ostringstream text;
        text << std::ifstream(path, std::ios::binary).rdbuf();
        return text.str();
    }
};

} // namespace

TEST_F(Version1, IsReadAsItIs)
{
    const std::string before = bytes();
    {
        const StudyFile file = taken(StudyFile::open(path, true));
        EXPECT_EQ(taken(file.study()).runs.size(), 6u);
        EXPECT_EQ(taken(file.history()).size(), 5u);
        const auto recordings = taken(storage::recordings(file));
        ASSERT_EQ(recordings.size(), 1u);
        EXPECT_EQ(recordings.front().rows, 220);
        EXPECT_EQ(taken(readChannel(file, recordings.front().id, "road_speed_kmh")).size(), 220u);
        EXPECT_TRUE(storage::recordingFits(*file.database().database, 1)) << "it has no sums";
    }
    EXPECT_EQ(bytes(), before);
}

TEST_F(Version1, BecomesVersion2WhenItIsOpenedForWriting)
{
    const core::Study before = taken(taken(StudyFile::open(path, true)).study());
    {
        StudyFile file = taken(StudyFile::open(path));
        EXPECT_EQ(taken(file.study()), before);
        EXPECT_TRUE(storage::recordingFits(*file.database().database, 1));
        EXPECT_NE(storage::ChunkSums(*file.database().database, 1).of(0, 0), "");
        EXPECT_TRUE(file.nextRedo()) << "what version 1 took back is done again";
        taken(file.redo());
        EXPECT_TRUE(taken(file.study()).runs.at(3).discard);
        taken(file.undo());
        taken(file.undo()); // the recording, kept by version 1
        EXPECT_TRUE(taken(storage::recordings(file)).empty());
    }
    EXPECT_EQ(tests::askSql(path, "PRAGMA user_version"), "2");
    EXPECT_EQ(taken(taken(StudyFile::open(path)).study()), before) << "opens ever after";
}

TEST_F(Version1, AChunkThatIsExchangedAfterwardsIsFound)
{
    taken(StudyFile::open(path));
    for (const char* damage :
         {"UPDATE chunk SET maximum = maximum + 1 WHERE place = 1",
          "UPDATE chunk_sum SET sha256 = 'x' WHERE place = 1", "DELETE FROM chunk WHERE place = 1",
          "DELETE FROM chunk_sum", "INSERT INTO chunk VALUES (1, 7, 0, 1, 1, 0, 0, x'00')"}) {
        std::filesystem::copy_file(path, folder / "copy.bothways",
                                   std::filesystem::copy_options::overwrite_existing);
        EXPECT_TRUE(storage::recordingFits(
            *taken(StudyFile::open(folder / "copy.bothways")).database().database, 1));
        tests::runSql(folder / "copy.bothways", damage);
        const StudyFile file = taken(StudyFile::open(folder / "copy.bothways", true));
        EXPECT_FALSE(storage::recordingFits(*file.database().database, 1)) << damage;
    }
}

TEST_F(Version1, WithAForgedSumOfARecordingIsRefused)
{
    taken(StudyFile::open(path));
    tests::runSql(path, "UPDATE trace_data SET sha256 = 'x'");
    EXPECT_THAT(core::describe(StudyFile::open(path).error()),
                HasSubstr("its content is not what Bothways wrote last"));
}

TEST_F(Version1, ThatSomethingElseWroteIntoIsRefusedAsItIs)
{
    tests::runSql(path, "UPDATE run SET consumption = 8.0 WHERE run = 3");
    const std::string before = bytes();
    for (const bool readOnly : {true, false})
        EXPECT_THAT(core::describe(StudyFile::open(path, readOnly).error()),
                    HasSubstr("its content is not what Bothways wrote last"));
    EXPECT_EQ(bytes(), before);
}
