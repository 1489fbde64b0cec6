// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/study_database.h"
#include "tests/storage/study/forged_study.h"
#include "tests/storage/study/study_builders.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using storage::StudyFile;
using testing::AllOf;
using testing::HasSubstr;
using tests::aRun;
using tests::taken;

namespace {

/// A study into whose tables somebody put something. The seal fits.
struct ForeignSchema : testing::Test {
    tests::TemporaryFolder folder;
    std::filesystem::path path = folder / "day.bothways";
    void SetUp() override
    {
        StudyFile file = taken(StudyFile::create(path));
        taken(file.addRun(aRun()));
        taken(file.addRun(aRun().device().at_min(7)));
    }
    /// By both ways. That it takes no time is measured in opening_bound_test.cpp.
    void expectRefused(const std::string& words, const std::string& named) const
    {
        for (const bool readOnly : {true, false}) {
            const auto file = StudyFile::open(path, readOnly);
            ASSERT_FALSE(file) << "opened, though expected: " << words;
            EXPECT_EQ(file.error().code, core::ErrorCode::studyFile);
            EXPECT_THAT(file.error().message.english(), AllOf(HasSubstr(words), HasSubstr(named)));
        }
    }
};

} // namespace

TEST_F(ForeignSchema, ATriggerThatFalsifiesRunsIsNamed)
{
    tests::forge(path, "CREATE TRIGGER t AFTER INSERT ON history BEGIN UPDATE run SET consumption "
                       "= consumption * 0.97 WHERE configuration = 'B'; END");
    expectRefused("holds a trigger that Bothways did not make", "t");
}

TEST_F(ForeignSchema, ATriggerOnATableInCapitalsIsNamed)
{
    tests::forge(path, "CREATE TRIGGER quiet AFTER INSERT ON HISTORY BEGIN DELETE FROM history "
                       "WHERE id < 2; END");
    expectRefused("holds a trigger", "quiet");
}

TEST_F(ForeignSchema, ATriggerWhoseTableWasEditedIsNamed)
{
    tests::forge(path, "CREATE TRIGGER away AFTER INSERT ON run BEGIN SELECT 1; END;"
                       "PRAGMA writable_schema = ON;"
                       "UPDATE sqlite_schema SET tbl_name = 'nothing' WHERE name = 'away';"
                       "PRAGMA writable_schema = OFF");
    expectRefused("", "away");
}

TEST_F(ForeignSchema, WhateverElseIsMoreThanOurs)
{
    const std::pair<const char*, const char*> objects[] = {
        {"CREATE TABLE more (x)", "'more'"},
        {"CREATE TABLE \"RUN2\" (x)", "'RUN2'"},
        {"CREATE INDEX fast ON run (start)", "'fast'"},
        {"CREATE INDEX odd ON run (abs(consumption)) WHERE run > 1", "'odd'"},
        {"CREATE VIEW v AS SELECT 1", "'v'"},
        {"ANALYZE", "sqlite_stat"},
        {"CREATE VIRTUAL TABLE f USING fts5(x)", "f"},
        {"CREATE VIRTUAL TABLE r USING rtree(id, a, b)", "r"},
        {"CREATE TABLE kept AS SELECT 1 AS x", "'kept'"},
        {"CREATE TABLE g (a INTEGER, b INTEGER AS (a + 1) STORED)", "'g'"}};
    for (const auto& [sql, named] : objects) {
        std::filesystem::remove(path);
        SetUp();
        tests::forge(path, sql);
        expectRefused("", named);
    }
}

TEST_F(ForeignSchema, WhateverIsOtherThanOurs)
{
    const std::pair<const char*, const char*> changes[] = {
        {"ALTER TABLE run ADD COLUMN more TEXT", "'run'"},
        {"ALTER TABLE run ADD COLUMN more REAL AS (consumption * 2)", "'run'"},
        {"ALTER TABLE mapping RENAME COLUMN header TO head", "'mapping'"},
        {"DROP VIEW run_list", "'run_list'"},
        {"DROP INDEX history_state", "'history_state'"},
        {"DROP VIEW run_list; CREATE VIEW run_list AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL "
         "SELECT i + 1 FROM n) SELECT i FROM n",
         "'run_list'"},
        {"PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, "
         "'CHECK (consumption > 0)', '                       ') WHERE name = 'run'",
         "'run'"},
        {"PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = replace(sql, "
         "'REAL CHECK', 'real CHECK') WHERE name = 'run'",
         "'run'"},
        {"PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = sql || ' ' WHERE name = "
         "'seal'",
         "'seal'"}};
    for (const auto& [sql, named] : changes) {
        std::filesystem::remove(path);
        SetUp();
        tests::forge(path, sql);
        expectRefused("", named);
    }
}

// 3 GB and a minute before the refusal, where SQLite looks at the tables first.
TEST_F(ForeignSchema, ThousandsOfTablesAreRefusedBeforeTheyAreRead)
{
    std::string sql = "BEGIN;";
    for (int i = 0; i < 5000; ++i)
        sql += fmt::format("CREATE TABLE t{} (a, b, c, d, e, f, g, h);", i);
    tests::runSql(path, sql + "COMMIT");
    expectRefused("more or larger tables than a study has", "");
}

TEST_F(ForeignSchema, AStatementThatIsTooLongIsNotParsed)
{
    std::string columns = "a";
    for (int i = 0; i < 1500; ++i)
        columns += fmt::format(", column_with_a_long_name_{}", i);
    tests::runSql(path, "CREATE TABLE wide (" + columns + ")");
    expectRefused("more or larger tables than a study has", "");
}

TEST_F(ForeignSchema, WhatIsPutInWhileTheStudyIsOpenEndsTheNextChange)
{
    StudyFile file = taken(StudyFile::open(path));
    taken(file.addRun(aRun().at_min(14)));
    tests::runSql(path, "CREATE TRIGGER late AFTER INSERT ON history BEGIN UPDATE run SET "
                        "consumption = consumption * 0.97; END");
    const auto refused = file.addRun(aRun().at_min(21));
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().message.english(), HasSubstr("'late'"));
    EXPECT_FALSE(file.study());
    tests::runSql(path, "DROP TRIGGER late");
    EXPECT_TRUE(file.addRun(aRun().at_min(21))) << "all is ours again";
    EXPECT_EQ(taken(file.study()).runs.size(), 4u);
}

TEST_F(ForeignSchema, TheConnectionObeysNothingOfTheFileForItsWholeLife)
{
    StudyFile file = taken(StudyFile::open(path));
    SQLite::Database& database = *file.database().database;
    EXPECT_THROW(database.exec("SELECT * FROM run_list"), SQLite::Exception);
    EXPECT_THROW(database.exec("PRAGMA writable_schema = ON; "
                               "UPDATE sqlite_schema SET sql = sql WHERE name = 'run'"),
                 SQLite::Exception);
    EXPECT_THROW(database.exec("ATTACH ':memory:' AS other"), SQLite::Exception);
    EXPECT_THROW(database.exec("SELECT \"no such column\""), SQLite::Exception);
}
