// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/findings/findings_model.h"
#include "app/desktop/runs/run_list_model.h"
#include "app/desktop/runs/run_tags.h"
#include "app/desktop/window/history_panel.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/storage/study/study_builders.h"

#include <QAbstractItemModelTester>
#include <QFont>
#include <QSignalSpy>
#include <gmock/gmock.h>

#include <random>

namespace bothways::app::tests {

using bothways::tests::aRun;
using testing::ElementsAre;
using Tester = QAbstractItemModelTester;

class ModelTest : public DesktopTest {
protected:
    ModelTest()
    {
        auto made = StudyDocument::create(path("study.bothways"), {});
        document = std::move(made).take();
    }
    core::RunId add(const core::Run& run) const { return document->addRun(run).value(); }
    /// Two blocks of two pairs.
    void addMorning() const
    {
        for (int i = 0; i < 8; ++i) {
            auto run = aRun().at_min(i * 7).consuming(8.4 + 0.01 * i);
            if (i >= 4)
                run.device();
            if (i % 2 == 1)
                run.returning();
            add(run);
        }
        settle(*document);
    }

    std::unique_ptr<StudyDocument> document;
};

TEST_F(ModelTest, TheRunListKeepsItsPromisesThroughRandomWork)
{
    RunListModel model(*document, preferences);
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    std::mt19937 random(11);
    const auto some = [&] {
        const auto& runs = document->study().runs;
        return runs[random() % runs.size()].id;
    };
    for (int step = 0; step < 120; ++step) {
        auto run = aRun().at_min(static_cast<int>(random() % 300));
        if (random() % 2 == 0)
            run.device();
        if (random() % 2 == 0)
            run.returning();
        switch (document->study().runs.empty() ? 0 : random() % 7) {
        case 0:
        case 1: document->addRun(run); break;
        case 2: document->removeRuns({some()}); break;
        case 3: document->discardRuns({some()}, {"adjusted", ""}); break;
        case 4: document->countRuns({some()}); break;
        case 5: document->undoable() ? document->undo() : document->redo(); break;
        case 6:
            if (document->redoable())
                document->redo();
            break;
        default: break;
        }
        if (step % 10 == 0)
            settle(*document);
        ASSERT_EQ(model.rowCount(), static_cast<int>(document->study().runs.size()));
        for (int row = 0; row < model.rowCount(); ++row)
            ASSERT_EQ(model.runAt(row), document->study().runs[static_cast<std::size_t>(row)]);
    }
}

TEST_F(ModelTest, ARunInTheMiddleIsInsertedAndNothingElseMoves)
{
    add(aRun().at_min(0));
    add(aRun().returning().at_min(14));
    settle(*document);
    RunListModel model(*document, preferences);
    QSignalSpy inserted(&model, &QAbstractItemModel::rowsInserted);
    QSignalSpy reset(&model, &QAbstractItemModel::modelReset);
    add(aRun().returning().at_min(7));
    ASSERT_EQ(inserted.count(), 1);
    EXPECT_EQ(inserted[0][1].toInt(), 1);
    EXPECT_EQ(inserted[0][2].toInt(), 1);
    EXPECT_EQ(reset.count(), 0);
}

TEST_F(ModelTest, ADiscardedRunIsStruckThroughAndSaysWhy)
{
    addMorning();
    RunListModel model(*document, preferences);
    ASSERT_TRUE(document->discardRuns({model.runAt(2).id}, {"overspeed", "rotor 3410 rpm"}));
    settle(*document);
    const auto at = [&](int column) { return model.index(2, column); };
    EXPECT_TRUE(at(RunListModel::consumptionColumn).data(Qt::FontRole).value<QFont>().strikeOut());
    EXPECT_FALSE(at(RunListModel::remarksColumn).data(Qt::FontRole).value<QFont>().strikeOut());
    EXPECT_EQ(at(RunListModel::remarksColumn).data().toString(), "over-speed: rotor 3410 rpm");
    EXPECT_EQ(at(RunListModel::stateColumn).data().toString(), "discarded");
    EXPECT_EQ(model.index(3, RunListModel::stateColumn).data().toString(), "no partner");
    EXPECT_EQ(model.rowCount(), 8);
}

TEST_F(ModelTest, AHeadingOfTheRunListStandsWhereItsColumnDoes)
{
    addMorning();
    const RunListModel model(*document, preferences);
    for (int column = 0; column < model.columnCount(); ++column)
        EXPECT_EQ(model.headerData(column, Qt::Horizontal, Qt::TextAlignmentRole).toInt(),
                  model.index(0, column).data(Qt::TextAlignmentRole).toInt())
            << model.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString().toStdString();
}

TEST_F(ModelTest, PairsShowTheirNumberAndTheirBracket)
{
    addMorning();
    const RunListModel model(*document, preferences);
    EXPECT_EQ(model.index(0, RunListModel::pairColumn).data().toString(), "1");
    EXPECT_EQ(model.index(7, RunListModel::pairColumn).data().toString(), "4");
    const auto pieces = model.index(6, 0).data(RunListModel::bracketsRole).value<BracketPieces>();
    ASSERT_EQ(pieces.size(), 1U);
    EXPECT_EQ(pieces[0].part, BracketPiece::Part::top);
}

TEST_F(ModelTest, AnEditInPlaceGoesIntoTheStudyAndABadOneIsRefusedWithASentence)
{
    addMorning();
    RunListModel model(*document, preferences);
    QSignalSpy refused(&model, &RunListModel::refused);
    const auto consumption = model.index(1, RunListModel::consumptionColumn);
    EXPECT_TRUE(model.setData(consumption, "8,17", Qt::EditRole));
    EXPECT_DOUBLE_EQ(document->study().runs[1].consumption->value, 8.17);
    EXPECT_FALSE(model.setData(consumption, "none", Qt::EditRole));
    EXPECT_FALSE(model.setData(model.index(1, RunListModel::numberColumn), "1", Qt::EditRole))
        << "number 1 is taken";
    EXPECT_FALSE(model.setData(model.index(1, RunListModel::directionColumn), "up", Qt::EditRole))
        << "a third direction";
    ASSERT_EQ(refused.count(), 3);
    EXPECT_TRUE(refused[0][0].toString().startsWith("Run 2 was left as it is."));
    EXPECT_DOUBLE_EQ(document->study().runs[1].consumption->value, 8.17);
}

TEST_F(ModelTest, AnEditThatChangesNothingKeepsEveryDigit)
{
    core::Run run = aRun();
    run.temperature_c = 7.123456789;
    add(run);
    RunListModel model(*document, preferences);
    const std::size_t lines = document->history().size();
    for (int column = 0; column < model.columnCount(); ++column)
        EXPECT_FALSE(model.setData(model.index(0, column),
                                   model.index(0, column).data(Qt::EditRole), Qt::EditRole));
    EXPECT_EQ(document->study().runs[0].temperature_c, 7.123456789);
    EXPECT_EQ(document->history().size(), lines);
}

TEST_F(ModelTest, AnOddConsumptionIsAskedAboutInItsCell)
{
    addMorning();
    RunListModel model(*document, preferences);
    const auto cell = model.index(3, RunListModel::consumptionColumn);
    EXPECT_EQ(cell.data(RunListModel::questionRole).toString(), "");
    bool asked = false;
    QObject::connect(&model, &RunListModel::unconfirmed, &model, [&] { asked = true; });
    EXPECT_FALSE(model.setData(cell, "84.3", Qt::EditRole));
    EXPECT_TRUE(asked);
    core::Run confirmed = document->study().runs[3];
    confirmed.consumption->value = 84.3;
    ASSERT_TRUE(document->updateRun(confirmed));
    EXPECT_TRUE(cell.data(RunListModel::questionRole).toString().contains("8.43"));
    EXPECT_TRUE(cell.data(Qt::ToolTipRole).toString().contains("8.43"));
}

TEST_F(ModelTest, WhileConsumptionIsHiddenNoCellGivesItAway)
{
    addMorning();
    RunListModel model(*document, preferences);
    ASSERT_TRUE(document->setBlind(true));
    const auto cell = model.index(3, RunListModel::consumptionColumn);
    for (const int role : {int(Qt::DisplayRole), int(Qt::ToolTipRole), int(Qt::AccessibleTextRole),
                           int(RunListModel::questionRole)})
        EXPECT_FALSE(cell.data(role).toString().contains("8.4")) << role;
    EXPECT_FALSE(cell.flags() & Qt::ItemIsEditable);
    ASSERT_TRUE(document->setBlind(false));
    EXPECT_EQ(cell.data().toString(), "8.43");
}

TEST_F(ModelTest, CellsFollowTheUnits)
{
    addMorning();
    const RunListModel model(*document, preferences);
    preferences.setConsumptionUnit(core::ConsumptionUnit::mpgUs);
    EXPECT_EQ(model.index(0, RunListModel::consumptionColumn).data().toString(), "28.00");
    EXPECT_TRUE(model.headerData(RunListModel::consumptionColumn, Qt::Horizontal, Qt::DisplayRole)
                    .toString()
                    .contains("mpg"));
}

TEST_F(ModelTest, FindingsKeepTheirPromisesAndTheirAnswers)
{
    FindingsModel model(*document, preferences);
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    addMorning();
    EXPECT_EQ(model.rowCount(), 0);
    core::Run run = document->study().runs[2];
    setMark(run, kAdjustedMark, true);
    setMark(run, kTrafficMark, true);
    ASSERT_TRUE(document->updateRun(run));
    settle(*document);
    ASSERT_EQ(model.rowCount(), 2);
    EXPECT_EQ(model.openCount(), 2);
    EXPECT_EQ(model.rowOfRun(3), 0);
    EXPECT_EQ(model.rowOfRun(1), -1);

    ASSERT_TRUE(document->overruleFindings({model.findingAt(0)}, "it was a cyclist"));
    EXPECT_EQ(model.openCount(), 1);
    EXPECT_EQ(model.index(0, FindingsModel::answerColumn).data().toString(),
              "overruled: it was a cyclist");
    EXPECT_EQ(model.nextOpen(-1), 1);
    ASSERT_TRUE(document->acceptFindings({model.findingAt(1)}));
    EXPECT_EQ(model.openCount(), 0);
    EXPECT_EQ(document->study().runs[2].discard->reason, core::ruleName(model.findingAt(1).rule));
    settle(*document);
    EXPECT_EQ(model.nextOpen(0), -1);
}

TEST_F(ModelTest, TheAnswerNamesSpoiledRunsUntilTheirFindingsAreAnswered)
{
    addMorning();
    EXPECT_TRUE(document->result()->spoiled.empty());
    for (const std::size_t i : {1U, 2U}) {
        core::Run run = document->study().runs[i];
        setMark(run, kAdjustedMark, true);
        ASSERT_TRUE(document->updateRun(run));
    }
    settle(*document);
    EXPECT_THAT(document->result()->spoiled, ElementsAre(2, 3));
    const auto findings = document->result()->screening.findings;
    ASSERT_EQ(findings.size(), 2U);
    ASSERT_TRUE(document->overruleFindings({findings[0]}, "the seat was adjusted"));
    settle(*document);
    EXPECT_THAT(document->result()->spoiled, ElementsAre(3));
    ASSERT_TRUE(document->acceptFindings({findings[1]}));
    settle(*document);
    EXPECT_TRUE(document->result()->spoiled.empty());
}

TEST_F(ModelTest, TheHistoryGrowsAtTheTopAndStrikesWhatIsUndone)
{
    HistoryModel model(*document, Language::english());
    const Tester tester(&model, Tester::FailureReportingMode::Fatal);
    add(aRun().at_min(0));
    const int before = model.rowCount();
    ASSERT_TRUE(document->undo());
    EXPECT_GT(model.rowCount(), before);
    bool struck = false;
    for (int row = 0; row < model.rowCount(); ++row)
        struck =
            struck ||
            model.index(row, HistoryModel::detailColumn).data().toString().endsWith("(undone)");
    EXPECT_TRUE(struck);
}

} // namespace bothways::app::tests
