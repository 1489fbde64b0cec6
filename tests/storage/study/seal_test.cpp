// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/seal.h"

#include "storage/recordings/recordings.h"
#include "storage/study/renaming.h"
#include "storage/study/study_database.h"
#include "storage/study/study_rows.h"
#include "tests/storage/study/forged_study.h"
#include "tests/storage/study/random_edits.h"
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

struct Sealed : testing::Test {
    tests::TemporaryFolder folder;
    std::filesystem::path path = folder / "day.bothways";
    void SetUp() override
    {
        StudyFile file = taken(StudyFile::create(path));
        tests::RandomStudies random(3);
        taken(file.importRuns(random.study(40), "morning.csv"));
        const core::RunId first = taken(file.study()).runs.at(0).id;
        taken(file.discard({first}, {"adjusted", "by hand"}));
        taken(file.undo());
        taken(file.note("look", "at it"));
    }
};

} // namespace

// Each is a change that the tables permit.
TEST_F(Sealed, NoRowIsChangedTakenOutPutInOrExchangedUnseen)
{
    for (const char* statement : {
             "UPDATE run SET consumption = consumption * 1.01 WHERE consumption IS NOT NULL",
             "UPDATE run SET run = run + 1000",
             "UPDATE run SET run = CASE id WHEN 1 THEN 999999998 ELSE 999999999 END "
             "WHERE id IN (1, 2)",
             "DELETE FROM run WHERE id = (SELECT max(id) FROM run)",
             "INSERT INTO property (name, value) VALUES ('margin', '2')",
             "INSERT INTO overruled SELECT id, 'overspeed', 'no' FROM run LIMIT 1",
             "INSERT INTO mapping VALUES ('a,b', 0, 'a', 'road_speed_kmh', 2, 0)",
             "INSERT INTO trace_data (id, state) VALUES (900, 'complete')",
             "DELETE FROM history WHERE kind = 'look'",
             "DELETE FROM history WHERE id = 1",
             "UPDATE history SET detail = 'another' WHERE kind = 'look'",
             "UPDATE history SET at = '2020-01-01T00:00:00Z' WHERE id = 1",
             "UPDATE history SET state = 'gone' WHERE state = 'undone'",
             "UPDATE history SET changeset = x'00' WHERE state = 'undone'",
             "UPDATE history SET id = id + 10",
             "INSERT INTO history (at, kind, detail, state, checksum) SELECT at, kind, detail, "
             "state, checksum FROM history WHERE kind = 'look'",
             "UPDATE sqlite_sequence SET seq = seq + 1 WHERE name = 'history'",
             "UPDATE sqlite_sequence SET seq = 9223372036854775807 WHERE name = 'run'",
             "DELETE FROM sqlite_sequence",
             "DELETE FROM seal",
             "UPDATE seal SET sha256 = upper(sha256)",
         }) {
        std::filesystem::remove(path);
        SetUp();
        tests::runSql(path, statement);
        for (const bool readOnly : {true, false})
            EXPECT_FALSE(StudyFile::open(path, readOnly)) << statement;
    }
}

// What is kept in memory over many changes is what everything read anew gives.
TEST_F(Sealed, IsTheSameKeptUpOrMadeAnew)
{
    tests::RandomEdits edits(5);
    StudyFile file = taken(StudyFile::open(path));
    for (int i = 0; i < 150; ++i) {
        edits.apply(file);
        SQLite::Database& database = *file.database().database;
        ASSERT_EQ(storage::storedSeal(database), storage::Seal(database).top()) << "edit " << i;
        ASSERT_EQ(taken(file.study()), storage::readStudy(database)) << "edit " << i;
    }
    taken(storage::compact(file));
    taken(file.note("look", "again"));
    EXPECT_TRUE(StudyFile::open(path, true));
}

TEST_F(Sealed, WhatAnotherProgramWritesBetweenTwoChangesIsFound)
{
    StudyFile file = taken(StudyFile::open(path));
    taken(file.note("look", "once"));
    tests::runSql(path, "UPDATE run SET notes = 'forged' WHERE id = 1");
    const auto refused = file.addRun(aRun().number(5000).at_min(100'000));
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().message.english(),
                HasSubstr("its content is not what Bothways wrote last"));
    EXPECT_FALSE(file.note("look", "twice"));
    EXPECT_FALSE(file.study());
    EXPECT_FALSE(file.history());
    EXPECT_EQ(tests::askSql(path, "SELECT count(*) FROM history WHERE kind = 'look'"), "2")
        << "nothing was sealed over it";
}

TEST_F(Sealed, TwoConnectionsOfOneProgramSeeEachOthersChanges)
{
    StudyFile one = taken(StudyFile::open(path));
    StudyFile other = taken(one.another());
    const auto runs = taken(one.study()).runs.size();
    taken(one.removeRuns({taken(one.study()).runs.front().id}));
    EXPECT_EQ(taken(other.study()).runs.size(), runs - 1);
    taken(other.note("look", "from the other"));
    taken(one.undo());
    EXPECT_EQ(taken(other.study()), taken(one.study()));
    EXPECT_EQ(taken(one.study()).runs.size(), runs);
}
