// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_form.h"
#include "app/desktop/runs/run_list_model.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/app/desktop/support/everything_said.h"

#include <QAction>
#include <QDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QRegularExpression>
#include <QTest>

#include <set>

namespace bothways::app::tests {
namespace {

/// A study whose every consumption is a number that nothing else could be.
class WindowBlind : public WindowTest {
protected:
    WindowBlind()
    {
        const QString sheet =
            write("morning.csv", "run,configuration,direction,start,l_per_100km,control,marks\n"
                                 "1,A,out,2026-05-09T05:40,8.4137,7.7317,\n"
                                 "2,A,return,2026-05-09T05:47,8.2937,7.7319,\n"
                                 "3,A,out,2026-05-09T05:54,8.4437,7.7323,0 adjusted\n"
                                 "4,A,return,2026-05-09T06:01,8.3037,7.7329,\n"
                                 "5,B,out,2026-05-09T06:30,8.0537,7.7331,\n"
                                 "6,B,return,2026-05-09T06:37,7.9937,7.7333,\n"
                                 "7,B,out,2026-05-09T06:44,81.037,7.7341,\n"
                                 "8,B,return,2026-05-09T06:51,7.9637,7.7349,\n");
        EXPECT_TRUE(window->openFile(sheet));
        settle();
        // What the history and Undo say of a consumption.
        core::Run run = study().runs[0];
        run.consumption->value = 8.4237;
        EXPECT_TRUE(window->document()->updateRun(run));
        run.consumption->value = 8.4337;
        EXPECT_TRUE(window->document()->updateRun(run));
        EXPECT_TRUE(window->document()->undo());
        settle();
    }
    void expectNothingTold(const std::string& where) { expectNothingTold(where, *window); }
    static void expectNothingTold(const std::string& where, QWidget& part)
    {
        QCoreApplication::processEvents();
        // Ends in 37 with four digits before it: the runs' own; 7.73..: the control's.
        static const QRegularExpression number("8[.,]?\\d?[.,]?\\d?\\d37|7[.,]9\\d37|7[.,]73\\d\\d|"
                                               "\\d[.,]\\d+\\s*(L/100|l/100|mpg|km/L)");
        for (const QString& text : everythingSaid(part)) {
            if (text.contains("8.00 L/100")) // the ledger's, before anything is known
                continue;
            const auto match = number.match(text);
            EXPECT_FALSE(match.hasMatch()) << where << ": '" << match.captured().toStdString()
                                           << "' in '" << text.left(300).toStdString() << "'";
        }
    }
};

} // namespace

TEST_F(WindowBlind, NoPartOfTheWindowTellsAConsumption)
{
    ASSERT_TRUE(everythingSaid(*window).join(' ').contains("8.4237")) << "the walk finds nothing";
    // Pages that were seen before must not keep what they showed.
    for (const char* page :
         {"companions", "checks", "why", "plan", "ledger", "recordings", "history", "result"})
        ASSERT_TRUE(window->showPage(page));
    press(Qt::Key_B, Qt::ControlModifier);
    ASSERT_TRUE(window->document()->isBlind());
    settle();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    onEveryPage(*window, [](const QString& page, QWidget& part) {
        expectNothingTold(page.toStdString(), part);
    });
    window->page()->list().selectAll();
    window->page()->list().setFocus();
    preferences.setMoreFields(true);
    press(Qt::Key_Return);
    expectNothingTold("the form");
    window->page()->form().hide();
    trigger("undo");
    settle();
    expectNothingTold("after undo");
}

/// The demo has what else could tell: recordings with a rate of fuel, a plan, a long history.
TEST_F(WindowTest, NoPartOfTheDemoTellsAConsumptionWhileItIsHidden)
{
    window->openDemo();
    settle();
    std::set<QString> numbers;
    const UnitsShown units = preferences.units();
    for (const core::Run& run : study().runs)
        if (run.consumption)
            numbers.insert(units.number(run.consumption->value, 2));
    ASSERT_GT(numbers.size(), 10U);
    static const QRegularExpression number("(?<![\\d.,])\\d+[.,]\\d{2,}(?!\\d)");
    std::set<std::string> told;
    const auto look = [&](const QString& page, QWidget& part) {
        for (const QString& text : everythingSaid(part)) {
            auto found = number.globalMatch(text);
            while (found.hasNext())
                if (const QString one = found.next().captured(); numbers.contains(one))
                    told.insert(page.toStdString() + ": " + one.toStdString() + " in '" +
                                text.left(160).toStdString() + "'");
        }
    };
    look("before", *window);
    ASSERT_GT(told.size(), 20U) << "the walk finds nothing";
    told.clear();
    ASSERT_TRUE(window->document()->setBlind(true));
    settle();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    onEveryPage(*window, look);
    for (const char* name : {"rename", "keys"}) {
        trigger(name);
        look(name, *window);
        for (QDialog* dialog : window->findChildren<QDialog*>())
            dialog->reject();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    std::string all;
    for (const std::string& one : told)
        all += one + '\n';
    EXPECT_TRUE(told.empty()) << told.size() << " told:\n" << all;
}

TEST_F(WindowBlind, WhatWouldTellItIsNotToBeHadAndSaysWhy)
{
    press(Qt::Key_B, Qt::ControlModifier);
    for (const char* name : {"export", "report", "reportPdf", "printReport", "compare"}) {
        const QAction* action = window->action(name);
        EXPECT_FALSE(action->isEnabled()) << name;
        EXPECT_TRUE(action->toolTip().contains("hidden")) << name;
    }
    press(Qt::Key_B, Qt::ControlModifier);
    if (auto* box = window->findChild<QMessageBox*>("showBeforeSettled"))
        for (auto* button : box->buttons())
            if (box->buttonRole(button) == QMessageBox::AcceptRole)
                QTest::mouseClick(button, Qt::LeftButton);
    ASSERT_FALSE(window->document()->isBlind());
    for (const char* name : {"export", "report", "compare"}) {
        EXPECT_TRUE(window->action(name)->isEnabled()) << name;
        EXPECT_FALSE(window->action(name)->toolTip().contains("hidden")) << name;
    }
}

TEST_F(WindowBlind, ShowingTheResultBeforeTheFindingsAreAnsweredIsAskedAbout)
{
    ASSERT_FALSE(window->document()->result()->screening.findings.empty());
    press(Qt::Key_B, Qt::ControlModifier);
    press(Qt::Key_B, Qt::ControlModifier);
    auto* box = openDialog<QMessageBox>("showBeforeSettled");
    ASSERT_NE(box, nullptr);
    EXPECT_TRUE(window->document()->isBlind());
    EXPECT_TRUE(window->action("blind")->isChecked());
    QTest::keyClick(box, Qt::Key_Escape);
    EXPECT_TRUE(window->document()->isBlind());
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    click("reveal"); // the other way asks, too
    box = openDialog<QMessageBox>("showBeforeSettled");
    ASSERT_NE(box, nullptr);
    for (auto* button : box->buttons())
        if (box->buttonRole(button) == QMessageBox::AcceptRole)
            QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_FALSE(window->document()->isBlind());
    EXPECT_TRUE(find("resultPage")->isVisible());
}

TEST_F(WindowTest, ASecondWindowOffersTheStudyForReadingAndChangesNothing)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    const QString file = window->document()->path();
    const core::Study before = study();
    MainWindow second(preferences, clock());
    second.show();
    EXPECT_FALSE(second.openFile(file));
    auto* words = second.findChild<QWidget*>("messageText");
    const QString said = words->property("text").toString();
    EXPECT_TRUE(said.contains("another window")) << said.toStdString();
    EXPECT_FALSE(said.contains(QRegularExpression("\\d{3,}"))) << said.toStdString();
    auto* offer = second.findChild<QPushButton*>("messageAction");
    ASSERT_TRUE(offer->isVisible());
    QTest::mouseClick(offer, Qt::LeftButton);
    ASSERT_NE(second.document(), nullptr);
    EXPECT_TRUE(second.document()->isReadOnly());
    EXPECT_TRUE(second.windowTitle().contains("for reading")) << second.windowTitle().toStdString();
    DesktopTest::settle(*second.document());
    EXPECT_EQ(second.document()->study(), before);
    second.page()->list().selectAll();
    for (const char* name :
         {"newRun",         "editRun",    "discardRuns", "removeRuns",          "undo",
          "rename",         "properties", "blind",       "importRecording",     "tagTraffic",
          "roadside",       "pairRuns",   "unpairRuns",  "countRuns",           "cutRuns",
          "pasteRuns",      "plan",       "limits",      "switchConfiguration", "tagNotes",
          "startRecording", "redo",       "import"}) {
        EXPECT_FALSE(second.action(name)->isEnabled()) << name;
        EXPECT_TRUE(second.action(name)->toolTip().contains("for reading")) << name;
    }
    for (const char* name : {"export", "report", "copyStudy", "closeStudy"})
        EXPECT_TRUE(second.action(name)->isEnabled()) << name;
    for (const char* page : {"plan", "recordings"}) // makes them
        ASSERT_TRUE(second.showPage(page)) << page;
    for (const char* name :
         {"planTie", "acceptFinding", "overruleFinding", "allOfRule", "importRecordingButton"}) {
        const auto* button = second.findChild<QAbstractButton*>(name);
        ASSERT_NE(button, nullptr) << name;
        EXPECT_FALSE(button->isEnabled()) << name;
        EXPECT_TRUE(button->toolTip().contains("for reading")) << name;
    }
    second.page()->discardRuns();
    EXPECT_EQ(second.findChild<QDialog*>("discardDialog"), nullptr);
    auto& list = second.page()->list();
    for (int column = 0; column < list.model()->columnCount(); ++column)
        EXPECT_FALSE(list.model()->index(0, column).flags() & Qt::ItemIsEditable);
    list.setFocus();
    QTest::keyClick(&list, Qt::Key_Return);
    EXPECT_FALSE(second.page()->form().isVisible());
    second.close();
    EXPECT_EQ(study(), before);
}

} // namespace bothways::app::tests
