// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/history_message.h"
#include "storage/study/study_database.h"
#include "storage/study/study_file.h"

#include "tests/storage/study/study_builders.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sqlite3.h>

using namespace bothways;
using core::RunId;
using storage::StudyFile;
using tests::aRun;
using tests::taken;
using tests::TemporaryFolder;

namespace {

struct AStudy : testing::Test {
    TemporaryFolder folder;
    StudyFile file = taken(StudyFile::create(folder / "day.bothways"));

    RunId add(const core::Run& run) { return taken(file.addRun(run)); }
    core::Study study() const { return taken(file.study()); }
    void reopen()
    {
        const auto path = file.path();
        {
            const StudyFile closed = std::move(file);
        }
        file = taken(StudyFile::open(path));
    }
};

} // namespace

TEST_F(AStudy, KeepsEveryFieldOfARunOverReopening)
{
    const RunId id = add(aRun().full());
    core::Run expected = aRun().full();
    expected.id = id;
    reopen();
    EXPECT_THAT(study().runs, testing::ElementsAre(expected));
}

TEST_F(AStudy, GivesRunsWithoutANumberTheNextOne)
{
    add(aRun().number(4).at_min(0));
    add(aRun().returning().at_min(7));
    EXPECT_EQ(study().runs.back().number, 5);
}

TEST_F(AStudy, OverrulesAndLetsStandWhatThereIs)
{
    add(aRun().number(1));
    ASSERT_TRUE(file.overrule({1, "overspeed", "wrong counter"}));
    ASSERT_TRUE(file.letStand({{1, "overspeed", ""}}));
    EXPECT_EQ(file.letStand({{1, "overspeed", ""}}).error().message.english(),
              "the finding overspeed of run 1 was not overruled");
    EXPECT_EQ(file.overrule({1, "whim", "words"}).error().message.english(), "'whim' is no rule");
    EXPECT_EQ(taken(file.history()).size(), 4u) << "made, added, overruled, let stand";
}

TEST_F(AStudy, RefusesARunThatASheetCouldNotHold)
{
    const auto refused = file.addRun(aRun().consuming(-8.0));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().where.english(), "column 'l_per_100km'");
    EXPECT_TRUE(study().runs.empty());
    EXPECT_FALSE(file.nextUndo());
}

TEST_F(AStudy, DiscardsWithAReasonAndCountsAgain)
{
    const RunId id = add(aRun());
    EXPECT_FALSE(file.discard({id}, {"", ""}));
    EXPECT_FALSE(file.discard({id}, {"other", " "}));
    ASSERT_TRUE(file.discard({id}, {"overspeed", "rotor 3410 rpm"}));
    EXPECT_EQ(study().runs[0].discard, (core::Discard{"overspeed", "rotor 3410 rpm"}));
    ASSERT_TRUE(file.count({id}));
    EXPECT_TRUE(study().runs[0].counted());
    const auto history = taken(file.history());
    EXPECT_EQ(historyDetail(history.at(2)).english(), "run 1: over-speed, rotor 3410 rpm");
    EXPECT_EQ(history.at(3).kind, "count");
}

TEST_F(AStudy, CannotCountARunWithoutConsumption)
{
    core::Run run = aRun();
    run.consumption.reset();
    run.discard = core::Discard{"sensor_lost", ""};
    const RunId id = add(run);
    const auto refused = file.count({id});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().message.english(), "run 1 has no consumption and cannot be counted");
}

TEST_F(AStudy, TiesTwoRunsAndUntiesThem)
{
    const RunId out = add(aRun().at_min(0));
    const RunId back = add(aRun().returning().at_min(7));
    const RunId device = add(aRun().device().at_min(14));
    EXPECT_FALSE(file.pair(out, out));
    EXPECT_FALSE(file.pair(back, device)) << "of two blocks";
    ASSERT_TRUE(file.pair(out, back));
    EXPECT_EQ(study().runs[0].pair_mark, study().runs[1].pair_mark);
    EXPECT_FALSE(file.pair(out, back)) << "tied already";
    ASSERT_TRUE(file.unpair(back));
    EXPECT_EQ(study().runs[0].pair_mark, "");
}

TEST_F(AStudy, ARunBetweenTwoThatAreTiedIsRefused)
{
    const RunId out = add(aRun().at_min(0));
    ASSERT_TRUE(file.pair(out, add(aRun().returning().at_min(14))));
    EXPECT_FALSE(file.addRun(aRun().device().at_min(7)));
}

TEST_F(AStudy, UndoAndRedoGoBackAndForthOverReopening)
{
    const core::Study empty = study();
    const RunId id = add(aRun());
    const core::Study one = study();
    ASSERT_TRUE(file.discard({id}, {"adjusted", ""}));
    const core::Study discarded = study();
    reopen();
    EXPECT_EQ(taken(file.undo()).kind, "discard");
    EXPECT_EQ(study(), one);
    reopen();
    ASSERT_TRUE(file.undo());
    EXPECT_EQ(study(), empty);
    EXPECT_FALSE(file.undo()) << "nothing left";
    reopen();
    ASSERT_TRUE(file.redo());
    EXPECT_EQ(study(), one);
    ASSERT_TRUE(file.redo());
    EXPECT_EQ(study(), discarded);
    EXPECT_FALSE(file.nextRedo());
}

TEST_F(AStudy, ANewChangeAfterUndoDropsWhatCouldBeRedone)
{
    add(aRun().at_min(0));
    add(aRun().at_min(7).returning());
    ASSERT_TRUE(file.undo());
    EXPECT_TRUE(file.nextRedo());
    add(aRun().at_min(9).returning());
    EXPECT_FALSE(file.nextRedo());
    ASSERT_TRUE(file.undo());
    ASSERT_TRUE(file.undo());
    EXPECT_TRUE(study().runs.empty());
}

TEST_F(AStudy, KeepsPropertiesAndCanTakeThemBack)
{
    core::StudyProperties properties;
    properties.name = "Roof box";
    properties.margin_pct = 0.5;
    properties.limits["overspeed.rpm"] = 3200;
    properties.timed_accessories = {{"heated_windscreen", 300, 10}};
    ASSERT_TRUE(file.setProperties(properties, ""));
    reopen();
    EXPECT_EQ(study().properties, properties);
    ASSERT_TRUE(file.undo());
    EXPECT_EQ(study().properties, core::StudyProperties{});
}

TEST_F(AStudy, ImportsAllRunsOrNone)
{
    core::Study sheet;
    sheet.runs = {aRun().at_min(0), aRun().at_min(7).returning()};
    ASSERT_TRUE(file.importRuns(sheet, "morning.csv"));
    EXPECT_EQ(study().runs.size(), 2u);
    sheet.runs = {aRun().at_min(14).device(), aRun().number(1).at_min(21)};
    EXPECT_FALSE(file.importRuns(sheet, "again.csv")) << "run 1 is there already";
    EXPECT_EQ(study().runs.size(), 2u);
}

TEST_F(AStudy, OverrulesAFindingWithWords)
{
    add(aRun());
    EXPECT_FALSE(file.overrule({1, "overspeed", ""}));
    EXPECT_FALSE(file.overrule({2, "overspeed", "no such run"}));
    ASSERT_TRUE(file.overrule({1, "overspeed", "the counter is wrong"}));
    EXPECT_EQ(taken(file.overruled()).at(0).words, "the counter is wrong");
    ASSERT_TRUE(file.undo());
    EXPECT_TRUE(taken(file.overruled()).empty());
}

TEST_F(AStudy, AnActionThatChangesNothingLeavesNoLine)
{
    const RunId id = add(aRun());
    const std::size_t lines = taken(file.history()).size();
    ASSERT_TRUE(file.count({id}));
    ASSERT_TRUE(file.updateRun(study().runs[0]));
    EXPECT_EQ(taken(file.history()).size(), lines);
}

TEST_F(AStudy, ASecondWriterIsRefusedWithTheNameOfTheHolder)
{
    const auto second = StudyFile::open(file.path());
    ASSERT_FALSE(second);
    EXPECT_THAT(second.error().message.english(),
                testing::HasSubstr("is being written by storage_tests"));
    add(aRun());
    StudyFile reader = taken(StudyFile::open(file.path(), true));
    add(aRun().at_min(7));
    EXPECT_EQ(taken(reader.study()).runs.size(), 2u) << "a reader sees each commit";
    EXPECT_FALSE(reader.addRun(aRun()));
}

// The view is for people with another program; its factors must be ours.
TEST_F(AStudy, ShowsEveryRunInLitresToWhoeverOpensTheFile)
{
    for (const core::ConsumptionUnit unit : core::kConsumptionUnits) {
        core::Run run = aRun().at_min(static_cast<int>(unit));
        run.distance_km = 5.2;
        run.consumption = core::Consumption{7.3, unit, 1, false};
        if (unit != core::ConsumptionUnit::kwhPer100km)
            add(run);
    }
    SQLite::Database shell(file.path().string());
    SQLite::Statement rows(shell, "SELECT l_per_100km FROM run_list");
    for (const core::Run& run : study().runs) {
        ASSERT_TRUE(rows.executeStep());
        EXPECT_DOUBLE_EQ(rows.getColumn(0).getDouble(), core::lPer100km(run).value());
    }
}

TEST_F(AStudy, ChangesSeveralRunsInOneStepOrNone)
{
    const RunId first = add(aRun().at_min(0));
    const RunId second = add(aRun().returning().at_min(7));
    std::vector<core::Run> runs = study().runs;
    runs[0].notes = "gusty";
    runs[1].notes = "calm";
    ASSERT_TRUE(file.updateRuns(runs));
    EXPECT_EQ(study().runs[1].notes, "calm");
    ASSERT_TRUE(file.undo());
    EXPECT_EQ(study().runs[0].notes, "");
    EXPECT_EQ(study().runs[1].notes, "");

    runs[1].consumption->value = -1.0;
    EXPECT_FALSE(file.updateRuns(runs));
    EXPECT_EQ(study().runs[0].notes, "") << "the first was kept although the second was refused";
    EXPECT_EQ(study().runs[0].id, first);
    EXPECT_EQ(study().runs[1].id, second);
}

TEST_F(AStudy, DiscardsEachRunWithItsOwnReasonInOneStep)
{
    const RunId first = add(aRun().at_min(0));
    const RunId second = add(aRun().returning().at_min(7));
    ASSERT_TRUE(file.discardEach({{first, {"overspeed", "3410 rpm"}}, {second, {"adjusted", ""}}}));
    EXPECT_EQ(study().runs[0].discard->evidence, "3410 rpm");
    EXPECT_EQ(study().runs[1].discard->reason, "adjusted");
    ASSERT_TRUE(file.undo());
    EXPECT_TRUE(study().runs[0].counted());
    EXPECT_TRUE(study().runs[1].counted());
}

TEST_F(AStudy, SaysWhatUndoAndRedoWouldDo)
{
    EXPECT_FALSE(file.nextUndo());
    add(aRun().at_min(0));
    add(aRun().returning().at_min(7));
    ASSERT_TRUE(file.undo());
    ASSERT_TRUE(file.undo());
    add(aRun().at_min(14)); // what was undone is gone now
    ASSERT_TRUE(file.note("look", "undecided"));
    EXPECT_EQ(file.nextUndo()->kind, "add_run");
    EXPECT_FALSE(file.nextRedo());
    ASSERT_TRUE(file.undo());
    EXPECT_FALSE(file.nextUndo());
    EXPECT_EQ(file.nextRedo()->kind, "add_run");
}

TEST(Faults, OfSqliteAreSaidInWordsOfStudies)
{
    const auto said = [](int code) {
        return storage::explain(SQLite::Exception("its words", code), "day.bothways")
            .message.english();
    };
    EXPECT_EQ(said(SQLITE_FULL), "the disk is full; nothing was changed");
    EXPECT_EQ(said(SQLITE_LOCKED), "is being written by another program; nothing was changed");
    EXPECT_EQ(said(SQLITE_TOOBIG), "the change is too large for a study; nothing was changed");
    EXPECT_EQ(said(SQLITE_NOMEM), "the memory is full; nothing was changed");
    EXPECT_EQ(said(SQLITE_READONLY), "is read-only; nothing was changed");
    EXPECT_EQ(said(SQLITE_NOTADB), "is damaged (its words); restore it from a copy");
    EXPECT_EQ(said(SQLITE_IOERR), "cannot be read or written (its words); nothing was changed");
    EXPECT_EQ(said(SQLITE_CONSTRAINT),
              "does not take this change (its words); nothing was changed");
    EXPECT_EQ(said(SQLITE_ERROR), "its words; nothing was changed");
}
