// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: journeys through the whole window; what they share is their fixture.
#include "app/desktop/findings/findings_model.h"
#include "app/desktop/findings/findings_panel.h"
#include "app/desktop/look/appearance.h"
#include "app/desktop/runs/run_form.h"
#include "app/desktop/runs/run_list_model.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/window/compare_dialog.h"
#include "core/study/clock.h"
#include "storage/sheet/run_sheet.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMessageBox>
#include <QMimeData>
#include <QPointer>
#include <QPushButton>
#include <QRegularExpression>
#include <QTabBar>
#include <QTableWidget>
#include <QTest>
#include <QTimer>

#include <set>

namespace bothways::app::tests {

using Column = RunListModel::Column;

namespace {

core::VerdictClass verdictOf(const MainWindow& window)
{
    return window.document()->result()->analysis.verdict.cls;
}

/// Every text on the page, as a reader sees it.
QString wordsOnLabels(const QWidget& page)
{
    QStringList words;
    for (const QLabel* label : page.findChildren<QLabel*>())
        words += label->text();
    return words.join(u'\n');
}

} // namespace

TEST_F(WindowTest, ADayTypedByHandGivesAVerdictAndIsTheSameAfterReopening)
{
    click("newStudy");
    ASSERT_NE(window->document(), nullptr);
    const QString file = window->document()->path();
    for (const char* consumption : {"8.41", "8.29", "8.44", "8.30"})
        drive(consumption);
    settle();
    EXPECT_EQ(verdictOf(*window), core::VerdictClass::none);
    EXPECT_NE(wordsOnLabels(*find("resultPage")), "") << "nothing says what is missing";

    press(Qt::Key_N, Qt::ControlModifier);
    fill("configuration", "B");
    fill("consumption", "8.05");
    press(Qt::Key_Return);
    passMinutes(7);
    for (const char* consumption : {"7.99", "8.10", "7.96", "8.9", "8.02"})
        drive(consumption);
    press(Qt::Key_Escape);
    settle();
    ASSERT_EQ(study().runs.size(), 10U);
    EXPECT_EQ(study().runs[1].direction, "return");
    EXPECT_EQ(study().runs[8].direction, "out");
    EXPECT_EQ(study().runs[9].configuration, "B");
    EXPECT_EQ(core::formatTimeOfDay(study().runs[4].start), "06:08:00");

    // The ninth run met a tractor.
    choose(8);
    press(Qt::Key_D, Qt::ControlModifier);
    auto* dialog = openDialog("discardDialog");
    ASSERT_NE(dialog, nullptr);
    type("behind a tractor");
    EXPECT_EQ(dialog->findChild<QLineEdit*>("evidence")->text(), "behind a tractor")
        << dialog->findChild<QComboBox*>("reason")->currentText().toStdString();
    press(Qt::Key_Return);
    settle();
    ASSERT_TRUE(study().runs[8].discard) << keyboard()->metaObject()->className();
    EXPECT_EQ(study().runs[8].discard->evidence, "behind a tractor");
    EXPECT_TRUE(cell(8, Column::remarksColumn).startsWith("behind a tractor"));
    EXPECT_EQ(cell(9, Column::stateColumn), "no partner");
    EXPECT_EQ(verdictOf(*window), core::VerdictClass::less);
    const QString words = wordsOnLabels(*find("resultPage"));
    EXPECT_TRUE(words.contains("less")) << words.toStdString();

    const core::Study before = study();
    trigger("closeStudy");
    EXPECT_EQ(window->document(), nullptr);
    auto* recent = find<QListWidget>("recentStudies");
    ASSERT_EQ(recent->count(), 1);
    emit recent->itemActivated(recent->item(0));
    ASSERT_NE(window->document(), nullptr);
    EXPECT_EQ(window->document()->path(), file);
    settle();
    EXPECT_EQ(study(), before);
    EXPECT_EQ(wordsOnLabels(*find("resultPage")), words);
}

TEST_F(WindowTest, SixRunsTypedAndOneDiscardedSayWhatIsMissing)
{
    click("newStudy");
    for (const char* consumption : {"8.41", "8.29"})
        drive(consumption);
    press(Qt::Key_N, Qt::ControlModifier);
    fill("configuration", "B");
    fill("consumption", "8.05");
    press(Qt::Key_Return);
    passMinutes(7);
    for (const char* consumption : {"7.99", "8.10", "7.96"})
        drive(consumption);
    press(Qt::Key_Escape);
    choose(5);
    press(Qt::Key_D, Qt::ControlModifier);
    ASSERT_NE(openDialog("discardDialog"), nullptr);
    type("stopped");
    press(Qt::Key_Return);
    settle();
    EXPECT_EQ(window->document()->result()->analysis.verdict.reason, core::NoVerdict::tooFewPairs);
    EXPECT_TRUE(wordsOnLabels(*find("resultPage")).contains("pair"));
}

TEST_F(WindowTest, UndoAndRedoWorkFromTheKeyboardAndSayWhatTheyWouldDo)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    choose(0, 1);
    window->page()->list().setFocus();
    press(Qt::Key_P); // passing traffic, for both
    EXPECT_EQ(study().runs[1].marks.size(), 1U);
    EXPECT_TRUE(window->action("undo")->text().contains("Run changed"));
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(study().runs[0].marks.empty());
    EXPECT_TRUE(study().runs[1].marks.empty());
    trigger("redo");
    EXPECT_EQ(study().runs[0].marks.size(), 1U);
}

TEST_F(WindowTest, ABadSheetListsEveryBadLineAndChangesNothing)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    const core::Study before = study();
    window->importSheet(write("bad.csv", "run,configuration,direction,start,l_per_100km\n"
                                         "9,A,out,2026-05-09T07:20,-8.41\n"
                                         "10,C,return,2026-05-09T07:27,8.29\n"
                                         "11,A,sideways,2026-05-09T07:34,8.44\n"));
    auto* dialog = openDialog("importProblems");
    ASSERT_NE(dialog, nullptr);
    auto* list = dialog->findChild<QTableWidget*>("importProblemList");
    std::set<QString> lines;
    for (int row = 0; row < list->rowCount(); ++row)
        lines.insert(list->item(row, 0)->text().section(',', 0, 0));
    EXPECT_EQ(lines, (std::set<QString>{"line 2", "line 3", "line 4"}));
    EXPECT_TRUE(waitFor([&] { // no higher than its words
        return list->rowHeight(0) < 3 * list->fontMetrics().height();
    })) << list->rowHeight(0);
    EXPECT_EQ(study(), before);
    dialog->close();
}

TEST_F(WindowTest, AGoodSheetDroppedOnTheWindowJoinsTheStudy)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    const QString more = write("more.csv", "run,configuration,direction,start,l_per_100km\n"
                                           "9,A,out,2026-05-09T07:20,8.40\n"
                                           "10,A,return,2026-05-09T07:27,8.28\n");
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(more)});
    QDragEnterEvent enter({600, 300}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &enter);
    ASSERT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(600, 300), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(window.get(), &drop);
    settle();
    EXPECT_EQ(study().runs.size(), 10U);
    EXPECT_TRUE(message().contains("more.csv")) << message().toStdString();
    EXPECT_EQ(window->document()->result()->analysis.design, core::Design::closed);
}

TEST_F(WindowTest, AnOddNumberIsAskedAboutAndSavedWhenItIsConfirmed)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    now = QDateTime(QDate(2026, 5, 9), QTime(6, 58));
    window->page()->list().setFocus();
    press(Qt::Key_Insert);
    type("80.4");
    EXPECT_TRUE(find<QLabel>("runFormNotes")->text().contains("8.04"));
    press(Qt::Key_Return);
    EXPECT_EQ(study().runs.size(), 8U);
    click("keepTyped");
    ASSERT_EQ(study().runs.size(), 9U);
    EXPECT_DOUBLE_EQ(study().runs.back().consumption->value, 80.4);
    EXPECT_NE(cell(8, Column::consumptionColumn, RunListModel::questionRole), "");
}

TEST_F(WindowTest, WhatCannotBeIsKeptBackWithASentenceAndTheFieldHasTheKeyboard)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    window->page()->list().setFocus();
    press(Qt::Key_N, Qt::ControlModifier);
    press(Qt::Key_Return);
    EXPECT_EQ(study().runs.size(), 8U) << "a run without a number was saved";
    EXPECT_NE(find<QLabel>("runFormNotes")->text(), "");
    EXPECT_EQ(QApplication::focusWidget(), find<QLineEdit>("consumption"));
    type("eight");
    press(Qt::Key_Return);
    EXPECT_EQ(study().runs.size(), 8U);
    EXPECT_TRUE(find<QLabel>("runFormNotes")->text().contains("number"));
    fill("configuration", "C");
    fill("consumption", "8");
    press(Qt::Key_Return);
    EXPECT_EQ(study().runs.size(), 8U) << "a third configuration was saved";
    EXPECT_EQ(QApplication::focusWidget(), find<QComboBox>("configuration"));
    window->page()->form().dropDraft();
}

TEST_F(WindowTest, SomeoneWithANotebookTypesStartsAndGetsTheNextOneProposed)
{
    click("newStudy");
    fill("start", "5:40");
    fill("consumption", "8.41");
    now = QDateTime(QDate(2026, 5, 9), QTime(21, 0));
    press(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), find<QLineEdit>("start"));
    type("5:47"); // what is proposed is selected: typing replaces it
    fill("consumption", "8.30");
    press(Qt::Key_Return);
    ASSERT_EQ(study().runs.size(), 2U);
    EXPECT_EQ(core::formatDateTime(study().runs[1].start), "2026-05-09T05:47:00");
    EXPECT_EQ(find<QLineEdit>("start")->text(), "05:54");
}

TEST_F(WindowTest, TabGoesThroughTheFieldsInDrivingOrder)
{
    click("newStudy");
    find("start")->setFocus();
    QStringList names;
    for (int i = 0; i < 12; ++i) {
        QWidget* focus = QApplication::focusWidget();
        names += focus->objectName().isEmpty() ? focus->parentWidget()->objectName()
                                               : focus->objectName();
        press(Qt::Key_Tab);
    }
    const QStringList wanted{"start",         "configuration", "setting",     "direction",
                             "temperature_c", "wind_ms",       "accessories", "passingTraffic",
                             "adjusted",      "consumption",   "distance_km", "duration_s"};
    EXPECT_EQ(names.join(' ').remove("_text"), wanted.join(' '));
}

TEST_F(WindowTest, CircumstancesAreTaggedWithAKeyAndSeenInTheList)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    choose(2);
    press(Qt::Key_T);
    type("12.5");
    press(Qt::Key_Return);
    EXPECT_EQ(study().runs[2].temperature_c, 12.5);
    EXPECT_TRUE(cell(2, Column::remarksColumn).contains("12.5"));
    choose(2);
    press(Qt::Key_J);
    settle();
    EXPECT_TRUE(cell(2, Column::remarksColumn).contains("adjusted"));
    EXPECT_EQ(cell(2, Column::stateColumn, RunListModel::gradeRole).toInt(),
              static_cast<int>(core::Grade::spoils));
}

TEST_F(WindowTest, AFindingIsAcceptedOrOverruledWhereItIsShown)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    choose(2);
    press(Qt::Key_J);
    choose(5);
    press(Qt::Key_P);
    settle();
    window->page()->list().setFocus();
    press(Qt::Key_F4);
    EXPECT_EQ(window->page()->list().currentIndex().row(), 2) << "the list did not follow";
    click("acceptFinding");
    settle();
    ASSERT_TRUE(study().runs[2].discard);
    EXPECT_EQ(study().runs[2].discard->reason, "adjusted");
    EXPECT_EQ(window->page()->list().currentIndex().row(), 5) << "the next finding is not shown";
    find("overruleWords")->setFocus();
    type("only a cyclist");
    press(Qt::Key_Return);
    settle();
    ASSERT_EQ(window->document()->overruled().size(), 1U);
    EXPECT_EQ(window->document()->overruled()[0].words, "only a cyclist");
    EXPECT_TRUE(study().runs[5].counted());
    EXPECT_FALSE(window->action("nextFinding")->isEnabled());
}

TEST_F(WindowTest, AllFindingsOfARuleAreAcceptedInOneStep)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    choose(1, 4);
    press(Qt::Key_J);
    settle();
    window->page()->list().setFocus();
    press(Qt::Key_F4);
    find<QAbstractButton>("allOfRule")->setChecked(true);
    click("acceptFinding");
    for (int i = 0; i < 8; ++i)
        EXPECT_EQ(study().runs[static_cast<std::size_t>(i)].counted(), i < 1 || i > 4) << i;
    trigger("undo");
    for (const core::Run& run : study().runs)
        EXPECT_TRUE(run.counted());
}

TEST_F(WindowTest, ManyRunsAreDiscardedAtOnceAndCountedAgain)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    choose(0, 2);
    trigger("discardRuns");
    auto* dialog = openDialog("discardDialog");
    ASSERT_NE(dialog, nullptr);
    auto* reason = dialog->findChild<QComboBox*>("reason");
    reason->setCurrentIndex(reason->findData("warming_up"));
    dialog->findChild<QAbstractButton*>("discardOk")->click();
    EXPECT_FALSE(study().runs[1].counted());
    choose(0, 7);
    trigger("countRuns");
    for (const core::Run& run : study().runs)
        EXPECT_TRUE(run.counted());
}

TEST_F(WindowTest, TwoRunsAreTiedByHandAndUntied)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    RunListView& list = window->page()->list();
    list.clearSelection();
    for (const int row : {0, 3})
        list.selectionModel()->select(list.model()->index(row, 0),
                                      QItemSelectionModel::Select | QItemSelectionModel::Rows);
    trigger("pairRuns");
    settle();
    EXPECT_EQ(cell(0, Column::pairColumn), cell(3, Column::pairColumn));
    EXPECT_TRUE(cell(0, Column::pairColumn, Qt::ToolTipRole).contains("by hand"));
    trigger("unpairRuns");
    settle();
    EXPECT_EQ(cell(0, Column::pairColumn), cell(1, Column::pairColumn));
}

TEST_F(WindowTest, AMistypedNameIsChangedInAllRunsAtOnce)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    const std::vector<std::string> before = core::configurations(study());
    ASSERT_EQ(before.size(), 2U);
    trigger("rename");
    const QPointer<QDialog> dialog = openDialog("renameDialog"); // gone with its close
    ASSERT_NE(dialog, nullptr);
    const auto lines = dialog->findChildren<QLineEdit*>();
    ASSERT_EQ(lines.size(), 4);
    lines[1]->setText(QString::fromStdString(before[0]));
    dialog->accept();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_TRUE(dialog->findChild<QLabel*>("renameProblem")->text().contains("two names"));
    EXPECT_EQ(core::configurations(study()), before);
    lines[1]->setText("roof box on");
    dialog->accept();
    settle();
    EXPECT_FALSE(dialog && dialog->isVisible());
    EXPECT_EQ(core::configurations(study())[1], "roof box on");
    trigger("undo");
    settle();
    EXPECT_EQ(core::configurations(study()), before);
}

TEST_F(WindowTest, WhileScreeningIsBlindNothingShowsConsumptionOrVerdict)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    press(Qt::Key_B, Qt::ControlModifier);
    EXPECT_TRUE(window->document()->isBlind());
    EXPECT_EQ(window->findChild<QWidget*>("resultPage"), nullptr) << "it is not even there";
    EXPECT_FALSE(cell(0, Column::consumptionColumn).contains("8"));
    window->page()->list().setFocus();
    press(Qt::Key_Return);
    EXPECT_EQ(find<QLineEdit>("consumption")->text(), "");
    press(Qt::Key_Escape);
    EXPECT_TRUE(study().runs[7].consumption) << "hiding took the number away";
    click("reveal");
    EXPECT_TRUE(find("resultPage")->isVisible());
    EXPECT_EQ(cell(0, Column::consumptionColumn), "8.41");
}

TEST_F(WindowTest, ARunThatIsBeingTypedIsNotLostByClosing)
{
    click("newStudy");
    type("8.4");
    QTimer::singleShot(0, window.get(), [] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        ASSERT_NE(box, nullptr);
        box->defaultButton()->click(); // save
    });
    const QString file = window->document()->path();
    EXPECT_TRUE(window->closeStudy());
    ASSERT_TRUE(window->openFile(file));
    EXPECT_EQ(study().runs.size(), 1U);
}

TEST_F(WindowTest, PropertiesAreTakenWholeOrTheFaultIsShownAtItsField)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    trigger("properties");
    auto* dialog = openDialog("studyProperties");
    ASSERT_NE(dialog, nullptr);
    dialog->findChild<QLineEdit*>("name")->setText("Roof generator");
    dialog->findChild<QLineEdit*>("stretch.km")->setText("5,2");
    dialog->findChild<QLineEdit*>("margin")->setText("200");
    QMetaObject::invokeMethod(dialog, "accept");
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_TRUE(dialog->findChild<QLabel*>("propertiesFault")->text().contains("margin"));
    EXPECT_EQ(study().properties.name, "");
    dialog->findChild<QLineEdit*>("margin")->setText("2");
    QMetaObject::invokeMethod(dialog, "accept");
    EXPECT_EQ(study().properties.name, "Roof generator");
    EXPECT_EQ(study().properties.margin_pct, 2.0);
    EXPECT_DOUBLE_EQ(study().properties.limits.at("stretch.km"), 5.2);
    EXPECT_TRUE(window->windowTitle().contains("Roof generator"));
}

TEST_F(WindowTest, WhatCannotBeOpenedSaysSoAndTheWindowGoesOn)
{
    EXPECT_FALSE(window->openFile(path("missing.bothways")));
    EXPECT_NE(message(), "");
    EXPECT_FALSE(window->openFile(write("broken.bothways", "SQLite format 3 but not really")));
    EXPECT_NE(message(), "");
    EXPECT_TRUE(window->openFile(aSheet()));
}

TEST_F(WindowTest, EveryPageCanBeShownAndPainted)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    for (const QString& page : MainWindow::pageNames()) {
        if (page == "start")
            continue;
        EXPECT_TRUE(window->showPage(page)) << page.toStdString();
        EXPECT_FALSE(window->picture().isNull());
        for (QDialog* dialog : window->findChildren<QDialog*>())
            dialog->reject();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        window->page()->form().hide();
    }
    EXPECT_FALSE(window->showPage("nowhere"));
}

TEST_F(WindowTest, AWindowWithACommaLocaleReadsAndShowsCommasAndWritesPoints)
{
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    EXPECT_EQ(cell(0, Column::consumptionColumn), "8,41");
    now = QDateTime(QDate(2026, 5, 9), QTime(6, 58));
    window->page()->list().setFocus();
    press(Qt::Key_N, Qt::ControlModifier);
    type("8,07");
    press(Qt::Key_Return);
    ASSERT_EQ(study().runs.size(), 9U);
    EXPECT_DOUBLE_EQ(study().runs[8].consumption->value, 8.07);
    EXPECT_EQ(study().runs[8].consumption->decimals, 2);
    settle();
    EXPECT_TRUE(wordsOnLabels(*find("resultPage")).contains(QRegularExpression("\\d,\\d")));
    const QString sheet = QString::fromStdString(storage::writeRunSheet(study()));
    EXPECT_TRUE(sheet.contains("8.07")) << sheet.toStdString();
    EXPECT_FALSE(sheet.contains("8,07"));
    QLocale::setDefault(before);
}

TEST_F(WindowTest, LightDarkAndLargeTextCanBeChangedWhileAStudyIsOpen)
{
    followAppearance(*qobject_cast<QApplication*>(QCoreApplication::instance()), preferences);
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    const int small = window->page()->list().fontMetrics().height();
    preferences.setTheme(ThemeChoice::dark);
    preferences.setLargeText(true);
    QCoreApplication::processEvents(); // Qt tells its widgets by and by
    EXPECT_LT(window->palette().color(QPalette::Window).lightness(), 100);
    EXPECT_GT(window->page()->list().fontMetrics().height(), small);
    EXPECT_FALSE(window->picture().isNull());
    preferences.setTheme(ThemeChoice::light);
    preferences.setLargeText(false);
    QCoreApplication::processEvents();
    EXPECT_GT(window->palette().color(QPalette::Window).lightness(), 150);
}

TEST_F(WindowTest, UnitsAreTheUsersAndWhatIsStoredStays)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    const core::Study before = study();
    preferences.setConsumptionUnit(core::ConsumptionUnit::mpgUs);
    preferences.setDistanceUnit(DistanceUnit::miles);
    EXPECT_EQ(cell(0, Column::consumptionColumn), "27.97");
    EXPECT_EQ(study(), before);
}

TEST_F(WindowTest, SetsStudiesSideBySideAndPoolsThem)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    trigger("compare");
    auto* dialog = qobject_cast<CompareDialog*>(openDialog("compareDialog"));
    ASSERT_NE(dialog, nullptr);
    EXPECT_FALSE(dialog->page()->pooled());
    const auto* state = dialog->findChild<QLabel*>("compareState");
    const auto add = [&](const QString& file) {
        dialog->addFiles({file});
        EXPECT_TRUE(state->text().startsWith("Reading 1")); // the window goes on meanwhile
        return waitFor([&] { return !dialog->isReading(); });
    };
    ASSERT_TRUE(add(window->document()->path()));
    EXPECT_FALSE(dialog->page()->pooled()) << "the open one counts once";
    EXPECT_TRUE(state->text().contains("given twice")) << state->text().toStdString();
    QFile::copy(window->document()->path(), path("again.bothways"));
    ASSERT_TRUE(add(path("again.bothways")));
    EXPECT_TRUE(state->text().contains("counts twice")) << state->text().toStdString();
    EXPECT_EQ(dialog->page()->pooled().has_value(),
              window->document()->result()->analysis.headline.has_value());
    ASSERT_TRUE(add(QString::fromLatin1(BOTHWAYS_SOURCE_DIR "/sample_data/roof_box.csv")));
    EXPECT_FALSE(state->isVisible());
    EXPECT_EQ(dialog->findChild<QTableWidget*>("compareTable")->rowCount(), 3);
    dialog->addFiles({"/nowhere/at/all.bothways"});
    ASSERT_TRUE(waitFor([&] { return !dialog->isReading(); }));
    EXPECT_TRUE(state->text().contains("all.bothways"));
}

} // namespace bothways::app::tests
