// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_form.h"
#include "app/desktop/runs/run_list_model.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

namespace bothways::app::tests {
namespace {

using AnswerColumn = RunListModel::Column;

/// A consumption that is far off, typed into the form.
class WindowAnswers : public WindowTest {
protected:
    WindowAnswers()
    {
        EXPECT_TRUE(window->openFile(aSheet()));
        settle();
        now = QDateTime(QDate(2026, 5, 9), QTime(6, 58));
        window->page()->list().setFocus();
    }
    void typeNew(const QString& consumption)
    {
        press(Qt::Key_N, Qt::ControlModifier);
        type(consumption);
        press(Qt::Key_Return);
    }
    [[nodiscard]] double last() const { return study().runs.back().consumption->value; }
    [[nodiscard]] QString notes() const { return find<QLabel>("runFormNotes")->text(); }
    [[nodiscard]] bool isAsked() const { return find<QPushButton>("keepTyped")->isVisible(); }
};

} // namespace

TEST_F(WindowAnswers, OneEnterOrManyDoNotSaveWhatIsFarOff)
{
    typeNew("82.2");
    EXPECT_TRUE(notes().contains("Did you mean 8.22?")) << notes().toStdString();
    EXPECT_TRUE(find<QPushButton>("takeLikely")->text().contains("Take 8.22"));
    EXPECT_TRUE(find<QPushButton>("takeLikely")->text().contains("Alt+T"));
    EXPECT_TRUE(find<QPushButton>("keepTyped")->text().contains("Keep 82.2"));
    for (int i = 0; i < 3; ++i)
        press(Qt::Key_Return);
    EXPECT_EQ(study().runs.size(), 8U);
    EXPECT_EQ(QApplication::focusWidget(), find<QLineEdit>("consumption"));
    press(Qt::Key_T, Qt::AltModifier);
    ASSERT_EQ(study().runs.size(), 9U) << "one press takes it";
    EXPECT_EQ(study().runs.back().consumption,
              (core::Consumption{8.22, core::ConsumptionUnit::lPer100km, 2}));
    EXPECT_FALSE(isAsked());
}

TEST_F(WindowAnswers, ANumberWithoutItsDecimalSignIsTakenWithOneClick)
{
    typeNew("715");
    EXPECT_EQ(study().runs.size(), 8U);
    click("takeLikely");
    ASSERT_EQ(study().runs.size(), 9U);
    EXPECT_EQ(last(), 7.15);
}

TEST_F(WindowAnswers, TheFirstRunOfAStudyIsAskedAboutWhereNoVehicleUsesThat)
{
    trigger("closeStudy");
    click("newStudy");
    type("715");
    press(Qt::Key_Return);
    EXPECT_TRUE(study().runs.empty());
    EXPECT_TRUE(notes().contains("Did you mean 7.15?")) << notes().toStdString();
    click("takeLikely");
    ASSERT_EQ(study().runs.size(), 1U);
    EXPECT_EQ(last(), 7.15);
}

TEST_F(WindowAnswers, WhatWasMeantAllTheSameIsKeptWithAKeyOfItsOwn)
{
    typeNew("82.2");
    press(Qt::Key_K, Qt::AltModifier);
    ASSERT_EQ(study().runs.size(), 9U);
    EXPECT_EQ(last(), 82.2);
    EXPECT_NE(cell(8, AnswerColumn::consumptionColumn, RunListModel::questionRole), "");
    passMinutes(7);
    type("8.31"); // 82.2 is no measure for it
    press(Qt::Key_Return);
    ASSERT_EQ(study().runs.size(), 10U);
    EXPECT_EQ(last(), 8.31);
}

TEST_F(WindowAnswers, AnotherNumberNeedsNoAnswerAndWithoutALikelyOneOnlyKeepIsOffered)
{
    typeNew("3.1"); // far off, and no other reading fits
    EXPECT_TRUE(isAsked());
    EXPECT_FALSE(find<QPushButton>("takeLikely")->isVisible());
    type("8.06"); // what stood there is selected
    EXPECT_FALSE(isAsked());
    press(Qt::Key_Return);
    ASSERT_EQ(study().runs.size(), 9U);
    EXPECT_EQ(last(), 8.06);
}

TEST_F(WindowAnswers, ARunInTheStudyIsChangedOnlyWithAnAnswerToo)
{
    choose(2);
    press(Qt::Key_Return);
    type("84.4");
    press(Qt::Key_Return);
    EXPECT_EQ(study().runs[2].consumption->value, 8.44);
    EXPECT_TRUE(isAsked());
    fill("temperature_c", "12.5"); // goes on; the consumption waits
    press(Qt::Key_Tab);
    EXPECT_EQ(study().runs[2].temperature_c, 12.5);
    EXPECT_EQ(study().runs[2].consumption->value, 8.44);
    EXPECT_TRUE(isAsked());
    EXPECT_EQ(find<QLineEdit>("consumption")->text(), "84.4");
    press(Qt::Key_K, Qt::AltModifier);
    EXPECT_EQ(study().runs[2].consumption->value, 84.4);
}

TEST_F(WindowAnswers, WhatWasNotConfirmedIsNotWrittenAndThatIsSaid)
{
    choose(2);
    press(Qt::Key_Return);
    type("84.4");
    press(Qt::Key_Return);
    press(Qt::Key_Escape);
    EXPECT_EQ(study().runs[2].consumption->value, 8.44);
    EXPECT_TRUE(message().contains("84.4")) << message().toStdString();
}

TEST_F(WindowAnswers, ACellOfTheListAsksInTheForm)
{
    RunListView& list = window->page()->list();
    list.selectionModel()->setCurrentIndex(list.model()->index(2, AnswerColumn::consumptionColumn),
                                           QItemSelectionModel::ClearAndSelect |
                                               QItemSelectionModel::Rows);
    press(Qt::Key_F2);
    auto* editor = list.findChild<QLineEdit*>("cellEditor");
    ASSERT_NE(editor, nullptr);
    editor->selectAll();
    QTest::keyClicks(editor, "82.2");
    QTest::keyClick(editor, Qt::Key_Return);
    ASSERT_TRUE(waitFor([&] { return isAsked(); }));
    EXPECT_EQ(study().runs[2].consumption->value, 8.44);
    press(Qt::Key_T, Qt::AltModifier);
    EXPECT_EQ(study().runs[2].consumption->value, 8.22);
}

TEST_F(WindowAnswers, WhileConsumptionIsHiddenTheQuestionSaysNothingOfOtherRuns)
{
    press(Qt::Key_B, Qt::ControlModifier);
    ASSERT_TRUE(window->document()->isBlind());
    typeNew("84.0");
    EXPECT_EQ(study().runs.size(), 8U);
    EXPECT_TRUE(notes().contains("Far from the other runs")) << notes().toStdString();
    EXPECT_FALSE(notes().contains("8.44") || notes().contains("8.2")) << notes().toStdString();
    EXPECT_FALSE(notes().contains('%'));
    press(Qt::Key_T, Qt::AltModifier);
    ASSERT_EQ(study().runs.size(), 9U);
    EXPECT_EQ(last(), 8.4);
    passMinutes(7);
    type("10.4"); // a quarter more: asking would say something of the effect
    press(Qt::Key_Return);
    EXPECT_EQ(study().runs.size(), 10U);
}

} // namespace bothways::app::tests
