// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/planning/plan_page.h"
#include "app/desktop/window/result_tabs.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QAction>
#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QLabel>
#include <QPushButton>

namespace bothways::app::tests {
namespace {

QByteArray contentOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

class WindowReport : public WindowTest {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(window->openFile(aSheet()));
        settle();
        ASSERT_TRUE(window->document()->result()->analysis.headline);
    }
    /// Chooses `path` in the dialog that `action` opens.
    void save(const char* action, const QString& path, const QString& filter = {})
    {
        trigger(action);
        auto* dialog = openDialog<QFileDialog>("fileDialog");
        ASSERT_NE(dialog, nullptr);
        if (!filter.isEmpty())
            for (const QString& one : dialog->nameFilters())
                if (one.contains(filter))
                    dialog->selectNameFilter(one);
        emit dialog->fileSelected(path);
        dialog->reject();
        waitFor([this] { return window->findChild<QFileDialog*>("fileDialog") == nullptr; });
    }
};

TEST_F(WindowReport, IsSavedAsAWebPageAndAsPdfOfEitherPaper)
{
    save("report", path("day.html"));
    EXPECT_TRUE(contentOf(path("day.html")).contains("SHA-256"));
    save("reportPdf", path("a4.pdf"), "A4");
    EXPECT_TRUE(contentOf(path("a4.pdf")).contains("/MediaBox [0 0 595"));
    save("reportPdf", path("letter.pdf"), "Letter");
    EXPECT_TRUE(contentOf(path("letter.pdf")).contains("/MediaBox [0 0 612"));
    EXPECT_TRUE(message().contains("letter.pdf"));
}

TEST_F(WindowReport, SaysWhatCannotBeWrittenAndLeavesNothing)
{
    for (const char* action : {"report", "reportPdf"}) {
        save(action, path("no/such/folder/day"));
        EXPECT_TRUE(message().contains("no/such/folder/day cannot be written")) << action;
        EXPECT_FALSE(QDir(path("no")).exists());
    }
}

TEST_F(WindowReport, ReplacesNoStudyAndNothingThatALinkLeadsTo)
{
    const QString study = window->document()->path();
    const QByteArray before = contentOf(study);
    ASSERT_TRUE(QFile::copy(aSheet(), path("aim.csv")));
    ASSERT_TRUE(QFile::link(path("aim.csv"), path("link.csv")));
    const QByteArray sheet = contentOf(path("aim.csv"));
    for (const char* action : {"report", "reportPdf", "export", "copyStudy"}) {
        save(action, study);
        EXPECT_TRUE(message().contains("it is a study") ||
                    message().contains("it is what is being read") ||
                    message().contains("another name"))
            << action << message().toStdString();
        save(action, path("link.csv"));
        EXPECT_TRUE(message().contains("it is a link")) << action << message().toStdString();
    }
    EXPECT_EQ(contentOf(study), before);
    EXPECT_EQ(contentOf(path("aim.csv")), sheet);
    save("report", path("aim.csv"));
    EXPECT_TRUE(contentOf(path("aim.csv")).contains("SHA-256")) << "the dialog asked";
}

TEST_F(WindowReport, ASheetIsExportedWithOrWithoutWhatASpreadsheetTakesForAFormula)
{
    core::Run run = window->document()->study().runs.front();
    run.notes = "=1+1";
    ASSERT_TRUE(window->document()->updateRun(run));
    save("export", path("plain.csv"));
    EXPECT_TRUE(contentOf(path("plain.csv")).contains("=1+1"));
    EXPECT_FALSE(contentOf(path("plain.csv")).contains("'=1+1"));
    save("export", path("safe.csv"), "formula");
    EXPECT_TRUE(contentOf(path("safe.csv")).contains("'=1+1"));
}

TEST_F(WindowReport, IsNotToBeHadWhileConsumptionIsHidden)
{
    press(Qt::Key_B, Qt::ControlModifier);
    ASSERT_TRUE(window->document()->isBlind());
    for (const char* action : {"report", "reportPdf", "printReport"})
        EXPECT_FALSE(find<QAction>(action)->isEnabled()) << action;
    click("reveal");
    EXPECT_TRUE(find<QAction>("reportPdf")->isEnabled());
}

TEST_F(WindowReport, APlanTakesItsNoiseFromSeveralStudies)
{
    window->showPage("plan"); // a page is made when it is first shown
    auto* page = window->findChild<PlanPage*>();
    ASSERT_NE(page, nullptr);
    const core::Headline& headline = *window->document()->result()->analysis.headline;
    const auto choose = [&](const QStringList& files) {
        emit page->noiseStudiesRequested();
        auto* dialog = openDialog<QFileDialog>("fileDialog");
        ASSERT_NE(dialog, nullptr);
        emit dialog->filesSelected(files);
        dialog->reject();
        waitFor([this] { return window->findChild<QFileDialog*>("fileDialog") == nullptr; });
    };
    // The same study as a file and as a sheet: the same s with twice the degrees of freedom.
    choose({window->document()->path(), aSheet()});
    ASSERT_TRUE(waitFor([&] { return page->plan() && page->plan()->options.s_df.has_value(); }));
    EXPECT_NEAR(page->plan()->options.s, headline.s, 1e-15);
    EXPECT_EQ(page->plan()->options.s_df, 2.0 * headline.df);
    EXPECT_TRUE(page->findChild<QLabel*>("planNoiseFrom")->text().contains("of freedom"));
    EXPECT_TRUE(message().contains("count twice") || message().contains("counts twice"))
        << message().toStdString();
    choose({aSheet(), aSheet()});
    EXPECT_TRUE(waitFor([&] { return message().contains("given twice"); })) << message().toStdString();
    choose({path("no_such.bothways")});
    EXPECT_TRUE(waitFor([&] { return message().contains("no_such.bothways"); }));
    EXPECT_EQ(page->plan()->options.s_df, 2.0 * headline.df) << "what was taken stays";
}

} // namespace
} // namespace bothways::app::tests
