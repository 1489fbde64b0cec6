// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/access_keys.h"
#include "app/desktop/plots/plot_view.h"
#include "app/desktop/runs/run_form.h"
#include "app/desktop/runs/run_list_model.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QDoubleSpinBox>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QTableView>
#include <QTest>
#include <QToolBar>
#include <QWheelEvent>
#include <QtTest/qtestspontaneevent.h>

#include <set>

namespace bothways::app::tests {

using EditColumn = RunListModel::Column;

namespace {

void turnWheel(QWidget& over, int notches, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
{
    const QPoint at = over.rect().center();
    QWheelEvent wheel(at, over.mapToGlobal(at), {}, {0, 120 * notches}, Qt::NoButton, modifiers,
                      Qt::NoScrollPhase, false);
    // Only then does Qt pass it on to parents; sendEvent() would take that back.
    QSpontaneKeyEvent::setSpontaneous(&wheel);
    qApp->notify(&over, &wheel);
}

void expectUniqueKeys(const QMenu& menu)
{
    std::set<QChar> keys;
    for (const QAction* action : menu.actions()) {
        if (action->menu())
            expectUniqueKeys(*action->menu());
        const QString text = QString(action->text()).remove("&&");
        const qsizetype at = text.indexOf(u'&');
        if (at >= 0) {
            EXPECT_TRUE(keys.insert(text[at + 1].toLower()).second)
                << menu.title().toStdString() << ": " << text.toStdString();
        }
    }
}

} // namespace

TEST_F(WindowTest, SeveralRunsAreChangedTogetherInOneStep)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    const core::Study before = study();
    choose(4, 7);
    press(Qt::Key_Return);
    EXPECT_EQ(find<QLabel>("runFormTitle")->text(), "4 runs: 5–8");
    EXPECT_EQ(find<QComboBox>("configuration")->currentText(), "B");
    EXPECT_EQ(find<QComboBox>("direction")->currentText(), "") << "it differs";
    EXPECT_FALSE(find<QLineEdit>("consumption")->isEnabled());
    EXPECT_FALSE(find<QLineEdit>("start")->isEnabled());
    fill("setting", "18");
    press(Qt::Key_Tab);
    for (std::size_t i = 0; i < 8; ++i)
        EXPECT_EQ(study().runs[i].setting, i < 4 ? "" : "18");
    EXPECT_EQ(study().runs[5].direction, "return") << "what was not touched stays";
    trigger("switchConfiguration");
    EXPECT_EQ(core::configurations(study()).size(), 1U);
    trigger("undo");
    EXPECT_EQ(study().runs[4].configuration, "B");
    EXPECT_EQ(study().runs[4].setting, "18");
    trigger("undo");
    EXPECT_EQ(study().runs, before.runs);
}

TEST_F(WindowTest, EnterCommitsAConfigurationTypedForSeveralRuns)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    for (const char* typed : {"A", "b"}) {
        choose(4, 7);
        press(Qt::Key_Return);
        fill("configuration", typed);
        press(Qt::Key_Return);
        for (std::size_t i = 4; i < 8; ++i)
            EXPECT_TRUE(core::sameWord(study().runs[i].configuration, typed)) << typed;
        EXPECT_EQ(study().runs[3].configuration, "A") << "it was not chosen";
        EXPECT_FALSE(window->page()->form().isVisible()) << typed;
    }
    trigger("undo"); // one step for all four
    EXPECT_EQ(core::configurations(study()).size(), 1U);
    trigger("undo");
    EXPECT_EQ(core::configurations(study()).size(), 2U);
    choose(0, 7); // where they differ, an empty field changes nothing
    press(Qt::Key_Return);
    fill("configuration", "B");
    press(Qt::Key_Return);
    EXPECT_EQ(core::configurations(study()).size(), 1U);
}

TEST_F(WindowTest, TheSelectionDecidesWhatTheFormIsAbout)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    choose(0);
    press(Qt::Key_Return);
    EXPECT_EQ(find<QLabel>("runFormTitle")->text(), "Run 1");
    choose(0, 2);
    EXPECT_EQ(find<QLabel>("runFormTitle")->text(), "3 runs: 1–3");
    choose(1);
    EXPECT_EQ(find<QLabel>("runFormTitle")->text(), "Run 2");
    EXPECT_TRUE(find<QLineEdit>("consumption")->isEnabled());
    EXPECT_EQ(find<QLineEdit>("consumption")->text(), "8.29");
}

TEST_F(WindowTest, OneKeySwitchesTheConfigurationAndTheFieldsHaveAccessKeys)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    now = QDateTime(QDate(2026, 5, 9), QTime(7, 20));
    window->page()->list().setFocus();
    press(Qt::Key_F8); // a new run, in the other configuration
    EXPECT_EQ(find<QComboBox>("configuration")->currentText(), "A");
    press(Qt::Key_F8);
    EXPECT_EQ(find<QComboBox>("configuration")->currentText(), "B");
    press(Qt::Key_F8);
    find<QLineEdit>("consumption")->setFocus();
    type("8.39");
    press(Qt::Key_Return);
    ASSERT_EQ(study().runs.size(), 9U);
    EXPECT_EQ(study().runs.back().configuration, "A");

    std::set<QChar> keys;
    for (const QChar key : menuKeysAround(*window))
        keys.insert(key);
    for (const auto* label : find("runForm")->findChildren<QLabel*>()) {
        if (!label->buddy() || !label->isVisible())
            continue;
        const qsizetype at = label->text().indexOf(u'&');
        if (at < 0)
            continue; // the letters of its name are taken
        EXPECT_TRUE(keys.insert(label->text()[at + 1].toLower()).second)
            << label->text().toStdString();
    }
    // What is in sight has its letter before what is not.
    for (const char* box : {"passingTraffic", "adjusted", "moreFields"})
        EXPECT_TRUE(find<QAbstractButton>(box)->text().contains(u'&')) << box;
    press(Qt::Key_C, Qt::AltModifier);
    EXPECT_EQ(QApplication::focusWidget(), find<QLineEdit>("consumption"));
}

TEST_F(WindowTest, NoMenuHasAnAccessKeyTwice)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    choose(0);
    window->document()->discardRuns({study().runs[0].id}, {"other", "F E R S V H"});
    settle();
    for (const QAction* top : window->menuBar()->actions()) {
        emit top->menu()->aboutToShow();
        expectUniqueKeys(*top->menu());
    }
    QSet<QChar> taken{u'a', u'b'};
    EXPECT_EQ(withAccessKey("&abc b", taken), "ab&c b");
    EXPECT_EQ(withAccessKey("ab", taken), "ab") << "there is none left";
    EXPECT_EQ(withAccessKey("R&&D", taken), "&R&&D");
}

TEST_F(WindowTest, TheWheelZoomsWithCtrlAloneAndChangesNoFieldThatItIsOver)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    window->showPage("result");
    auto* area = find("resultPage")->findChild<QScrollArea*>();
    ASSERT_NE(area, nullptr);
    QScrollBar* bar = area->verticalScrollBar();
    ASSERT_GT(bar->maximum(), 0);
    auto* plot = find("resultPage")->findChild<PlotView*>();
    ASSERT_NE(plot, nullptr);
    plot->setFocus(); // the zoom is not the wheel's, not even then
    turnWheel(*plot, -3);
    EXPECT_FALSE(plot->isZoomed());
    const int before = bar->value();
    EXPECT_GT(before, 0) << "the page did not scroll";
    turnWheel(*plot, 3, Qt::ControlModifier);
    EXPECT_EQ(bar->value(), before);
    EXPECT_TRUE(plot->isZoomed());
    auto* margin = find<QDoubleSpinBox>("margin");
    const double value = margin->value();
    bar->setValue(0);
    window->page()->list().setFocus();
    turnWheel(*margin, -1);
    EXPECT_EQ(margin->value(), value) << "nobody meant that field";
}

TEST_F(WindowTest, AllOfItFitsOnASmallScreen)
{
    EXPECT_LE(window->width(), window->screen()->availableSize().width());
    EXPECT_LE(window->height(), window->screen()->availableSize().height());
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    for (const QString& page : MainWindow::pageNames()) {
        if (page == "start" || page == "roadside" || page == "help" || page == "preferences")
            continue;
        window->showPage(page);
        QCoreApplication::processEvents();
        const QSize least = window->minimumSizeHint();
        // 1366 x 768 at a scale of 1.5 are 910 x 512.
        EXPECT_LE(least.width(), 910) << page.toStdString();
        EXPECT_LE(least.height(), 700) << page.toStdString();
        for (QDialog* dialog : window->findChildren<QDialog*>()) {
            EXPECT_LE(dialog->minimumSizeHint().width(), 1024) << page.toStdString();
            EXPECT_LE(dialog->minimumSizeHint().height(), 768) << page.toStdString();
            dialog->reject();
        }
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    const auto& list = window->page()->list();
    EXPECT_LT(list.columnViewportPosition(EditColumn::consumptionColumn),
              list.columnViewportPosition(EditColumn::directionColumn));
}

TEST_F(WindowTest, AnEmptyStudyDrawsNoNumbers)
{
    click("newStudy");
    settle();
    auto* plot = find("resultPage")->findChild<PlotView*>();
    ASSERT_NE(plot, nullptr);
    bool said = false;
    for (const auto* any : find("resultPage")->findChildren<PlotView*>())
        said = said || any->accessibleDescription().contains("No run has a consumption yet");
    EXPECT_TRUE(said);
    EXPECT_NE(find<QTableView>("findingsList")->accessibleDescription(), "Nothing was found.");
}

TEST_F(WindowTest, FileDialogsBeginWhereAFileWasLastChosen)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    trigger("export");
    auto* dialog = openDialog<QFileDialog>("fileDialog");
    ASSERT_NE(dialog, nullptr);
    emit dialog->filesSelected({path("out.csv")});
    dialog->reject();
    ASSERT_TRUE(waitFor([&] { return !window->findChild<QFileDialog*>("fileDialog"); }));
    trigger("open");
    dialog = openDialog<QFileDialog>("fileDialog");
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->directory().absolutePath(), QDir(folder.path()).absolutePath());
    dialog->reject();
}

TEST_F(WindowTest, AWrongFileStandsInFrontOfItsSentence)
{
    EXPECT_FALSE(window->openFile(write("photo.png", QByteArray("\x89PNG\0\0\0", 7))));
    EXPECT_TRUE(message().startsWith("photo.png:1: is a picture")) << message().toStdString();
}

TEST_F(WindowTest, TheFormProposesWhatThePlanHasNext)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    core::StudyProperties properties = study().properties;
    properties.plan = core::PlannedStudy{"ABA", 2, 1.0, 0.95};
    ASSERT_TRUE(window->document()->setProperties(properties));
    now = QDateTime(QDate(2026, 5, 9), QTime(7, 20));
    window->page()->newRun(); // two pairs of A and of B are driven
    EXPECT_EQ(find<QComboBox>("configuration")->currentText(), "A");
    EXPECT_EQ(find<QComboBox>("direction")->currentText(), "out");
}

TEST_F(WindowTest, TheEntryIsReadDownwardsWhereItsFieldsDoNotFitBesideEachOther)
{
    window->openDemo();
    settle();
    trigger("newRun");
    const auto* area = find<QScrollArea>("formArea");
    const auto rowOf = [&](const char* field) {
        const auto* editor = find<QWidget>(field);
        return editor->mapTo(&window->page()->form(), QPoint()).y();
    };
    for (const auto& [size, besides] :
         {std::pair{QSize(1600, 900), true}, {QSize(800, 768), false}, {QSize(1600, 900), true}}) {
        window->resize(size);
        EXPECT_TRUE(waitFor([&] { // all four of the first section beside each other, or not
            return (rowOf("direction") == rowOf("configuration")) == besides;
        })) << size.width();
        EXPECT_EQ(area->horizontalScrollBar()->maximum(), 0) << size.width();
    }
}

} // namespace bothways::app::tests
