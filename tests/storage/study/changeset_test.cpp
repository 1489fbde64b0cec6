// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/changeset_check.h"

#include "storage/study/study_database.h"
#include "tests/storage/study/forged_study.h"
#include "tests/storage/study/random_studies.h"
#include "tests/storage/study/study_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using storage::StudyFile;
using testing::HasSubstr;
using tests::aRun;
using tests::taken;

namespace {

/// A study whose newest change somebody exchanged. All checksums fit.
struct Changesets : testing::Test {
    tests::TemporaryFolder folder;
    std::filesystem::path path = folder / "day.bothways";
    std::string honest;
    void SetUp() override
    {
        std::filesystem::remove(path);
        StudyFile file = taken(StudyFile::create(path));
        tests::RandomStudies random(8);
        taken(file.importRuns(random.study(12), "morning.csv"));
        const core::RunId first = taken(file.study()).runs.at(0).id;
        taken(file.discard({first}, {"adjusted", "by hand"}));
        honest = tests::askSql(path, "SELECT changeset FROM history ORDER BY id DESC LIMIT 1");
    }
    /// As SQLite's session extension writes it, of what the statements change.
    std::string changesetOf(const std::string& statements) const
    {
        std::filesystem::copy_file(path, folder / "other.bothways",
                                   std::filesystem::copy_options::overwrite_existing);
        SQLite::Database database((folder / "other.bothways").string(), SQLite::OPEN_READWRITE);
        database.exec("PRAGMA ignore_check_constraints = ON");
        const std::string_view tables[] = {"run",  "mark",    "property",  "history",
                                           "seal", "mapping", "trace_data"};
        storage::Session session(database.getHandle(), tables);
        database.exec(statements);
        return session.changeset();
    }
};

} // namespace

TEST_F(Changesets, OfBothwaysArePossible)
{
    const StudyFile file = taken(StudyFile::open(path));
    EXPECT_TRUE(storage::isPossibleChangeset(*file.database().database, honest));
    EXPECT_FALSE(storage::isPossibleChangeset(*file.database().database, ""));
    EXPECT_FALSE(storage::isPossibleChangeset(*file.database().database, honest + "\x17"));
    // One change of one table: whole at its end, and a table's head is no change at all.
    const std::size_t head = honest.find("run", 0) + 4;
    for (std::size_t i = 1; i < honest.size(); ++i)
        EXPECT_EQ(storage::isPossibleChangeset(*file.database().database, honest.substr(0, i)),
                  i == head)
            << i;
}

TEST_F(Changesets, OfTablesThatNobodyUndoesAreRefused)
{
    for (const char* statements :
         {"DELETE FROM history WHERE id = 1", "UPDATE history SET detail = 'forged' WHERE id = 1",
          "UPDATE seal SET sha256 = 'x'", "INSERT INTO trace_data (state) VALUES ('unfinished')"}) {
        SetUp();
        tests::forgeChangeset(path, changesetOf(statements));
        StudyFile file = taken(StudyFile::open(path));
        const auto undone = file.undo();
        ASSERT_FALSE(undone) << statements;
        EXPECT_THAT(undone.error().message.english(), HasSubstr("line 3 of the history"));
        EXPECT_EQ(undone.error().code, core::ErrorCode::studyFile);
    }
}

TEST_F(Changesets, ThatLeadToAnImpossibleRunAreRefused)
{
    // Undo takes back what the changeset says was done: the row as it is becomes the "before".
    for (const char* was :
         {"start = '2026-99-99T99:99:99'", "consumption_decimals = 2147483647",
          "consumption = 9e999", "duration_s = 9e999", "notes = CAST(x'ff' AS TEXT)",
          "start = '2026-05-09T05:40:00+02:00'", "reason = 'whim', status = 'discarded'"}) {
        SetUp();
        const std::string id = tests::askSql(path, "SELECT min(id) FROM run WHERE status = "
                                                   "'counted' AND consumption IS NOT NULL");
        const std::string before = tests::askSql(path, "SELECT group_concat(start) FROM run");
        // Made the other way round: from the impossible row to the present one, and inverted.
        const std::string there = changesetOf("UPDATE run SET evidence = coalesce(evidence, ''), " +
                                              std::string(was) + " WHERE id = " + id);
        tests::forgeChangeset(path, storage::inverted(there));
        {
            StudyFile file = taken(StudyFile::open(path));
            const auto undone = file.undo();
            EXPECT_FALSE(undone) << was;
            EXPECT_TRUE(file.study()) << was;
            EXPECT_TRUE(file.note("look", "nothing was changed"));
        }
        EXPECT_TRUE(StudyFile::open(path)) << was;
        EXPECT_EQ(tests::askSql(path, "SELECT group_concat(start) FROM run"), before);
    }
}

// Hung, or ended by a signal, some of them.
TEST_F(Changesets, DamagedAnywhereAreTakenBackWholeOrRefused)
{
    constexpr std::uint32_t kSeed = 20260509;
    tests::RandomStudies random(kSeed);
    const std::string import =
        tests::askSql(path, "SELECT changeset FROM history WHERE kind = 'import'");
    int refused = 0;
    constexpr int kRounds = 120;
    for (int round = 0; round < kRounds; ++round) {
        std::filesystem::copy_file(path, folder / "other.bothways",
                                   std::filesystem::copy_options::overwrite_existing);
        std::string bytes = random.oneIn(2) ? honest : import;
        for (int i = 0; i <= random.below(3); ++i) {
            const auto at = static_cast<std::size_t>(
                random.oneIn(2) ? random.below(40) : random.below(static_cast<int>(bytes.size())));
            bytes[at] = static_cast<char>(random.below(256));
        }
        tests::forgeChangeset(folder / "other.bothways", bytes);
        StudyFile file = taken(StudyFile::open(folder / "other.bothways"));
        refused += file.undo() ? 0 : 1;
        ASSERT_TRUE(file.study()) << "round " << round;
        file = taken(StudyFile::open(folder / "day.bothways", true)); // closes the other
        ASSERT_TRUE(StudyFile::open(folder / "other.bothways")) << "round " << round;
    }
    EXPECT_GT(refused, kRounds / 2);
}
