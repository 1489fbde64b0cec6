// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_form.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "core/study/clock.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QTest>
#include <QTimer>

/// Runs that go out and come in through the clipboard.
namespace bothways::app::tests {

TEST_F(WindowTest, RunsAreCopiedWithAHeaderForASpreadsheetAndPastedIntoAnotherStudy)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    choose(0, 3);
    press(Qt::Key_C, Qt::ControlModifier);
    QString copied = QApplication::clipboard()->text();
    copied.chop(1); // the last line's end
    const QStringList lines = copied.split(u'\n');
    ASSERT_EQ(lines.size(), 5) << QApplication::clipboard()->text().toStdString();
    EXPECT_TRUE(lines[0].startsWith("Run\tStart\tConfiguration")) << lines[0].toStdString();
    EXPECT_TRUE(lines[0].contains("L/100")) << lines[0].toStdString();
    EXPECT_EQ(lines[1].split(u'\t')[0], "1");
    EXPECT_TRUE(lines[1].contains("\tA\t") && lines[1].contains("\t8.41\t"))
        << lines[1].toStdString();
    EXPECT_EQ(lines[0].count(u'\t'), lines[4].count(u'\t'));

    trigger("newStudyAction");
    window->page()->form().dropDraft();
    press(Qt::Key_Escape);
    window->page()->list().setFocus();
    press(Qt::Key_V, Qt::ControlModifier);
    ASSERT_EQ(study().runs.size(), 4U) << message().toStdString();
    EXPECT_EQ(study().runs[0].consumption->value, 8.41);
    EXPECT_EQ(study().runs[3].direction, "return");
    press(Qt::Key_Z, Qt::ControlModifier); // one step
    EXPECT_TRUE(study().runs.empty());
}

TEST_F(WindowTest, LinesOfASpreadsheetArePastedThroughTheSheetReaderAllOrNone)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    window->page()->list().setFocus();
    QApplication::clipboard()->setText("configuration\tdirection\tstart\tl_per_100km\n"
                                       "A\tout\t2026-05-09T07:20\t8.40\n"
                                       "A\treturn\t2026-05-09T07:27\t8.28\n");
    trigger("pasteRuns");
    ASSERT_EQ(study().runs.size(), 10U) << message().toStdString();
    EXPECT_EQ(study().runs.back().number, 10);
    EXPECT_TRUE(message().startsWith("2 run")) << message().toStdString();
    QApplication::clipboard()->setText("configuration\tdirection\tstart\tl_per_100km\n"
                                       "A\tout\t2026-05-09T07:40\t8.40\n"
                                       "A\treturn\tsoon\t8.28\n");
    trigger("pasteRuns");
    EXPECT_EQ(study().runs.size(), 10U);
    EXPECT_TRUE(message().contains(":3")) << message().toStdString();
    QApplication::clipboard()->setText("  ");
    trigger("pasteRuns");
    EXPECT_TRUE(message().contains("clipboard")) << message().toStdString();
}

TEST_F(WindowTest, LinesOfASpreadsheetGoIntoTheStudyWhileAFieldOfTheEntryHasTheKeyboard)
{
    window->newStudy();
    settle();
    ASSERT_EQ(keyboard(), find("consumption"));
    QApplication::clipboard()->setText("configuration\tdirection\tstart\tl_per_100km\n"
                                       "A\tout\t2026-05-09T07:20\t8.40\n"
                                       "A\treturn\t2026-05-09T07:27\t8.28\n");
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(study().runs.size(), 2U) << message().toStdString();
    EXPECT_EQ(find<QLineEdit>("consumption")->text(), "");
    QApplication::clipboard()->setText("8.41");
    trigger("newRun");
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(find<QLineEdit>("consumption")->text(), "8.41") << "one cell is for the field";
}

TEST_F(WindowTest, PastedLinesOfAnyFormAreAskedAboutLikeASheet)
{
    window->newStudy();
    settle();
    press(Qt::Key_Escape);
    QApplication::clipboard()->setText("Config\tDirection\tStart\tMPG (US)\n"
                                       "A\tout\t5/9/2026 5:40 AM\t28.0\n"
                                       "A\treturn\t5/9/2026 5:47 AM\t28.1\n");
    QTimer::singleShot(0, window.get(), [this] {
        const auto* dialog = openDialog("columnsDialog");
        ASSERT_NE(dialog, nullptr);
        EXPECT_FALSE(dialog->findChild<QLabel*>("foundInSheet")->text().contains(u'='));
        auto* dates = dialog->findChild<QComboBox*>("orderOfDates");
        dates->setFocus();
        QTest::keyClick(dates, Qt::Key_Down);
        QTest::keyClick(dates, Qt::Key_Down);
        dialog->findChild<QPushButton*>("importColumns")->click();
    });
    trigger("pasteRuns");
    ASSERT_EQ(study().runs.size(), 2U) << message().toStdString();
    EXPECT_EQ(core::formatDate(study().runs.front().start), "2026-05-09");
}

TEST_F(WindowTest, WhileConsumptionIsHiddenCopyingDoesNotTakeItAlong)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    ASSERT_TRUE(window->document()->setBlind(true));
    choose(0, 3);
    press(Qt::Key_C, Qt::ControlModifier);
    const QMimeData* data = QApplication::clipboard()->mimeData();
    for (const QString& form : data->formats())
        EXPECT_FALSE(data->data(form).contains("8.41")) << form.toStdString();
    EXPECT_TRUE(data->text().contains("out"));
}

TEST_F(WindowTest, ATextFieldCopiesItsOwnText)
{
    ASSERT_TRUE(window->openFile(aSheet()));
    settle();
    choose(0);
    press(Qt::Key_Return);
    fill("notes", "wet road");
    find<QLineEdit>("notes")->selectAll();
    trigger("copyRuns");
    EXPECT_EQ(QApplication::clipboard()->text(), "wet road");
}

} // namespace bothways::app::tests
