// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/study_file.h"
#include "tests/storage/study/kill_rounds.h"
#include "tests/storage/study/other_program.h"
#include "tests/storage/study/study_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using storage::StudyFile;
using tests::aRun;
using tests::OtherProgram;
using tests::taken;

// The long form, 10,000 rounds on a real disk, is the target storage_kill_stress.
TEST(Killed, AStudyHoldsTheLastCommitThatWasAcknowledged)
{
    const tests::TemporaryFolder folder;
    const tests::KillReport report = tests::killRounds(200, 20260509, folder.path(), 25'000);
    EXPECT_EQ(report.failure, "");
    EXPECT_EQ(report.rounds, 200);
    EXPECT_GE(report.commits, 100);
}

TEST(Holder, IsNamedAndItsDeathLocksNobodyOut)
{
    const tests::TemporaryFolder folder;
    const auto path = folder / "day.bothways";
    taken(taken(StudyFile::create(path)).addRun(aRun()));
    OtherProgram other([&](const auto& ready) {
        static const StudyFile held = taken(StudyFile::open(path));
        ready();
    });
    const auto refused = StudyFile::open(path);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, core::ErrorCode::studyFile);
    EXPECT_THAT(refused.error().message.english(),
                testing::HasSubstr("is being written by storage_tests (process " +
                                   std::to_string(other.id()) + ", since "));
    EXPECT_TRUE(StudyFile::open(path, true)) << "reading goes on";
    other.kill();
    EXPECT_TRUE(StudyFile::open(path)) << "a dead holder holds nothing";
}

TEST(Holder, ReadersBetweenItsCommitsSeeWholeStudies)
{
    const tests::TemporaryFolder folder;
    const auto path = folder / "day.bothways";
    {
        const auto made = taken(StudyFile::create(path));
    }
    OtherProgram other([&](const auto& ready) {
        StudyFile file = taken(StudyFile::open(path));
        ready();
        for (int i = 0; i < 1000; ++i) {
            core::Study sheet;
            for (int k = 0; k < 3; ++k)
                sheet.runs.push_back(aRun().at_min(21 * i + 7 * k));
            taken(file.importRuns(sheet, "three.csv"));
        }
    });
    std::size_t seen = 0;
    int different = 0;
    for (int i = 0; i < 100; ++i) {
        const auto reader = StudyFile::open(path, true);
        ASSERT_TRUE(reader) << core::describe(reader.error());
        const auto study = reader.value().study();
        ASSERT_TRUE(study) << core::describe(study.error());
        ASSERT_EQ(study.value().runs.size() % 3, 0u) << "an import by halves";
        ASSERT_GE(study.value().runs.size(), seen);
        different += study.value().runs.size() > seen ? 1 : 0;
        seen = study.value().runs.size();
    }
    EXPECT_GT(different, 3) << "the other program wrote nothing meanwhile?";
}
