// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/study_file.h"
#include "tests/storage/study/forged_study.h"
#include "tests/storage/study/study_builders.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using storage::StudyFile;
using testing::HasSubstr;
using tests::aRun;
using tests::taken;

namespace {

/// Values that the seal covers and the tables permit, or somebody made them permit.
struct DamagedRows : testing::Test {
    tests::TemporaryFolder folder;
    std::filesystem::path path = folder / "day.bothways";
    void SetUp() override
    {
        std::filesystem::remove(path);
        StudyFile file = taken(StudyFile::create(path));
        core::Run full = aRun().full();
        taken(file.addRun(full));
        taken(file.addRun(aRun().device().at_min(7)));
        taken(file.overrule({9, "overspeed", "counted wrongly"}));
    }
    /// Of opening, or of reading the history.
    [[nodiscard]] core::Error errorOf() const
    {
        const auto file = StudyFile::open(path);
        if (!file)
            return file.error();
        const auto history = file.value().history();
        return history ? core::Error{} : history.error();
    }
};

} // namespace

TEST_F(DamagedRows, AreRefusedWithTableRunAndColumn)
{
    const std::pair<const char*, const char*> rows[] = {
        {"UPDATE run SET consumption_decimals = 2147483647 WHERE run = 9",
         "consumption_decimals of run 9 in table run"},
        {"UPDATE run SET consumption_decimals = 9223372036854775807 WHERE run = 9",
         "consumption_decimals of run 9"},
        {"UPDATE run SET consumption = 9e999 WHERE run = 9", "consumption of run 9"},
        {"UPDATE run SET duration_s = 9e999 WHERE run = 9", "duration_s of run 9"},
        {"UPDATE run SET wind_from_deg = -9e999 WHERE run = 9", "wind_from_deg of run 9"},
        {"UPDATE run SET temperature_c = 1e300 WHERE run = 9", "temperature_c of run 9"},
        {"UPDATE run SET start = '2026-99-99T99:99:99' WHERE run = 9", "start of run 9"},
        {"UPDATE run SET start = '2026-05-09T05:40:00 and a tail' WHERE run = 9", "start of run 9"},
        {"UPDATE run SET start = '2026-05-09T05:40:00+02:00' WHERE run = 9", "start of run"},
        {"UPDATE run SET configuration = 'C', notes = 'x' WHERE run = 9; UPDATE run SET "
         "configuration = 'D' WHERE run <> 9; INSERT INTO run (run, configuration, direction, "
         "start, status, reason, evidence) VALUES (77, 'E', 'out', '2026-05-10T05:40:00', "
         "'discarded', 'adjusted', '')",
         "configuration of run 77"},
        {"UPDATE run SET reason = 'whim' WHERE run = 9", "reason of run 9"},
        {"UPDATE run SET notes = printf('%.*c', 3000000, 'x') WHERE run = 9", "notes of run 9"},
        {"UPDATE run SET notes = CAST(x'ff41' AS TEXT) WHERE run = 9", "notes of run 9"},
        {"UPDATE run SET notes = 'a' || char(0) || 'b' WHERE run = 9", "notes of run 9"},
        {"UPDATE mark SET at_s = 9e999", "at_s of run 9 in table mark"},
        {"UPDATE mark SET word = 'two words'", "word of run 9 in table mark"},
        {"UPDATE accessory_on SET on_s = -9e999", "on_s of run 9 in table accessory_on"},
        {"UPDATE extra SET value = CAST(x'c328' AS TEXT)", "value of run 9 in table extra"},
        {"UPDATE overruled SET rule = 'none'", "rule of line 1 in table overruled"},
        {"INSERT INTO property VALUES ('confidence', '7')", "the property 'confidence'"},
        {"INSERT INTO property VALUES ('colour', 'red')", "the property 'colour'"},
        {"UPDATE history SET at = '' WHERE id = 1", "line 1 of the history"},
        {"UPDATE history SET kind = printf('%.*c', 5000, 'k') WHERE id = 2",
         "line 2 of the history"}};
    for (const auto& [statement, named] : rows) {
        SetUp();
        tests::forge(path, statement);
        const core::Error error = errorOf();
        EXPECT_EQ(error.code, core::ErrorCode::studyFile) << statement;
        EXPECT_THAT(error.message.english(), HasSubstr(named)) << statement;
        EXPECT_THAT(error.message.english(), HasSubstr("restore it from a copy")) << statement;
    }
}

TEST_F(DamagedRows, ThatTheirTableForbidsAreFoundAsBrokenPages)
{
    for (const char* statement :
         {"UPDATE run SET consumption = -1 WHERE run = 9", "UPDATE run SET status = 'maybe'",
          "UPDATE run SET consumption_decimals = -1 WHERE run = 9",
          "UPDATE run SET run = -3 WHERE run = 9", "UPDATE run SET consumption_unit = 'barrels'",
          "UPDATE history SET state = 'maybe'", "UPDATE channel SET place = -1"}) {
        SetUp();
        tests::forge(path, statement);
        const bool changes = std::string(statement).find("channel") == std::string::npos;
        EXPECT_EQ(static_cast<bool>(StudyFile::open(path, true)), !changes) << statement;
    }
}

// Where a file is only read SQLite does not look at what its tables forbid.
TEST_F(DamagedRows, ThatTheirTableForbidsAreNamedWhereTheFileIsOnlyRead)
{
    const std::pair<const char*, const char*> rows[] = {
        {"UPDATE run SET consumption = -1 WHERE run = 9", "consumption of run 9 in table run"},
        {"UPDATE run SET consumption_source = 'guess' WHERE run = 9",
         "consumption_source of run 9"},
        {"UPDATE run SET consumption_unit = 'barrels' WHERE run = 9", "consumption_unit of run 9"},
        {"UPDATE run SET consumption_unit = 'fuel_l', distance_km = NULL WHERE run = 9",
         "consumption of run 9"},
        {"UPDATE run SET consumption = NULL, trace = '', status = 'counted' WHERE run = 9",
         "consumption of run 9"},
        {"UPDATE run SET direction = ' ' WHERE run = 9", "direction of run 9"},
        {"UPDATE run SET status = 'maybe' WHERE run = 9", "status of run 9"},
        {"UPDATE run SET status = 'discarded', reason = 'other', evidence = ' ' WHERE run = 9",
         "evidence of run 9"},
        {"UPDATE mark SET words = CAST(x'c328' AS TEXT)", "words of run 9 in table mark"},
        {"UPDATE accessory_on SET accessory = '' WHERE rowid = (SELECT min(rowid) FROM "
         "accessory_on)",
         "accessory of run 9 in table accessory_on"},
        {"UPDATE extra SET name = '' WHERE rowid = (SELECT min(rowid) FROM extra)",
         "name of run 9 in table extra"}};
    for (const auto& [statement, named] : rows) {
        SetUp();
        tests::forge(path, statement);
        const auto file = StudyFile::open(path, true);
        ASSERT_FALSE(file) << statement;
        EXPECT_THAT(file.error().message.english(), HasSubstr(named)) << statement;
    }
}

TEST_F(DamagedRows, AConfidenceThatEarlierVersionsTookIsTheHighest)
{
    tests::forge(path, "INSERT INTO property VALUES ('confidence', '0.9999999999999999')");
    EXPECT_EQ(taken(taken(StudyFile::open(path)).study()).properties.confidence, 0.9999);
}

TEST_F(DamagedRows, MoreRunsThanAStudyCanHave)
{
    std::string rows;
    for (int i = 0; i < 10'000; ++i)
        rows += fmt::format("{}({}, 'A', 'out', '2027-01-01T00:00:00', 'discarded', 'adjusted', "
                            "'')",
                            i == 0 ? "" : ",", 1000 + i);
    tests::forge(path, "INSERT INTO run (run, configuration, direction, start, status, reason, "
                       "evidence) VALUES " +
                           rows);
    EXPECT_THAT(core::describe(StudyFile::open(path).error()),
                HasSubstr("holds more runs than a study can have (10000)"));
}

TEST_F(DamagedRows, ALineOfARunThatIsNotThere)
{
    tests::forge(path, "PRAGMA foreign_keys = OFF; INSERT INTO mark VALUES (55, 0, 1.0, 'x', '')");
    EXPECT_FALSE(StudyFile::open(path));
}

TEST(RunNumbers, GoOnAtTheLowestFreeOneAfterTheHighest)
{
    const tests::TemporaryFolder folder;
    StudyFile file = taken(StudyFile::create(folder / "day.bothways"));
    taken(file.addRun(aRun().number(999'999'999)));
    taken(file.addRun(aRun().at_min(7)));
    taken(file.addRun(aRun().number(2).at_min(14)));
    taken(file.addRun(aRun().at_min(21)));
    std::vector<int> numbers;
    for (const core::Run& run : taken(file.study()).runs)
        numbers.push_back(run.number);
    EXPECT_EQ(numbers, (std::vector<int>{999'999'999, 1, 2, 3}));
}
