// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/theme.h"
#include "app/desktop/window/result_tabs.h"
#include "app/desktop/window/start_drawings.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QAction>
#include <QDockWidget>
#include <QLabel>
#include <QTabBar>
#include <QTest>

namespace bothways::app::tests {
namespace {

/// The window on the demo.
class ResultTabsTest : public WindowTest {
protected:
    ResultTabsTest()
    {
        window->openDemo();
        settle();
    }
    [[nodiscard]] ResultTabs& tabs() const { return *find<ResultTabs>("resultTabs"); }
    [[nodiscard]] QStringList row() const
    {
        QStringList titles;
        for (int i = 0; i < tabs().count(); ++i)
            if (tabs().isTabVisible(i))
                titles += tabs().tabText(i);
        return titles;
    }
    [[nodiscard]] QString front() const { return tabs().tabText(tabs().currentIndex()); }
    [[nodiscard]] bool isMade(const char* page) const
    {
        return window->findChild<QWidget*>(page) != nullptr;
    }
};

} // namespace

TEST_F(ResultTabsTest, NothingIsMadeThatNobodyHasSeen)
{
    EXPECT_TRUE(find("resultPage")->isVisible());
    const std::pair<const char*, const char*> pages[] = {{"companions", "companionsPage"},
                                                         {"checks", "checksPage"},
                                                         {"why", "whyPage"},
                                                         {"plan", "planPage"},
                                                         {"ledger", "ledgerPage"},
                                                         {"recordings", "recordingsPanel"}};
    for (const auto& [name, page] : pages)
        EXPECT_FALSE(isMade(page)) << page;
    for (const auto& [name, page] : pages) {
        ASSERT_TRUE(window->showPage(name));
        ASSERT_TRUE(isMade(page)) << page;
        EXPECT_TRUE(find(page)->isVisible()) << page;
    }
}

TEST_F(ResultTabsTest, OneRowHoldsThePagesAndNoTitleSaysTheSameAgain)
{
    EXPECT_EQ(row(), QStringList({"Verdict", "Companions", "Checks", "Why", "Plan", "Ledger",
                                  "Recordings"}));
    auto* dock = find<QDockWidget>("resultDock");
    ASSERT_TRUE(waitFor([&] { return dock->titleBarWidget() != nullptr; }));
    EXPECT_LE(dock->titleBarWidget()->height(), 0) << "it takes room";
    trigger("show_apart"); // in a window of its own it needs a frame
    EXPECT_TRUE(dock->isFloating());
    EXPECT_TRUE(waitFor([&] { return dock->titleBarWidget() == nullptr; }));
    trigger("show_apart");
    EXPECT_FALSE(dock->isFloating());
}

TEST_F(ResultTabsTest, TheWindowIsNoWiderThanASmallScreenWithAnyPage)
{
    constexpr int kSmall = 1024; // px
    for (const char* page :
         {"result", "companions", "checks", "why", "plan", "ledger", "recordings", "history"}) {
        ASSERT_TRUE(window->showPage(page));
        QCoreApplication::processEvents();
        EXPECT_LE(window->minimumSizeHint().width(), kSmall) << page;
    }
}

TEST_F(ResultTabsTest, AKeyTurnsToEachPageAndGivesItTheKeyboard)
{
    const auto pages = ResultTabs::pagesOfAnswer();
    for (std::size_t i = pages.size(); i-- > 0;) {
        press(static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(i)), Qt::AltModifier);
        EXPECT_EQ(front(), pages[i].second);
        EXPECT_TRUE(tabs().currentWidget()->isAncestorOf(keyboard()))
            << front().toStdString() << " has not got the keyboard";
    }
    press(Qt::Key_5, Qt::ControlModifier);
    EXPECT_EQ(front(), "Recordings");
    EXPECT_TRUE(tabs().currentWidget()->isAncestorOf(keyboard()));
    press(Qt::Key_2, Qt::ControlModifier); // the row of tabs itself
    press(Qt::Key_Left);
    EXPECT_EQ(front(), "Ledger");
}

TEST_F(ResultTabsTest, WhileConsumptionIsHiddenTheAnswersPagesAreGoneAndRecordingsStay)
{
    for (const char* page : {"companions", "checks", "why", "plan", "ledger", "recordings"})
        ASSERT_TRUE(window->showPage(page));
    ASSERT_TRUE(window->showPage("checks"));
    press(Qt::Key_B, Qt::ControlModifier);
    ASSERT_TRUE(window->document()->isBlind());
    EXPECT_EQ(row(), QStringList({"Verdict", "Recordings"}));
    EXPECT_TRUE(find("blindPage")->isVisible());
    for (const char* page : {"resultPage", "companionsPage", "checksPage", "whyPage"})
        EXPECT_FALSE(isMade(page)) << page << " keeps its numbers";
    ASSERT_TRUE(window->showPage("ledger")) << "it comes when the place is free";
    EXPECT_TRUE(find("blindPage")->isVisible());
    ASSERT_TRUE(window->showPage("recordings"));
    EXPECT_TRUE(find("recordingsPanel")->isVisible());
    press(Qt::Key_2, Qt::ControlModifier);
    for (const char* next : {"Verdict", "Verdict"}) { // and no further: there the numbers are
        press(Qt::Key_Left);
        EXPECT_EQ(front(), next);
        EXPECT_TRUE(find("blindPage")->isVisible());
    }
    ASSERT_TRUE(window->showPage("result"));
    window->document()->setBlind(false);
    EXPECT_EQ(front(), "Verdict");
    EXPECT_TRUE(find("resultPage")->isVisible());
    EXPECT_EQ(row().size(), 7);
}

TEST_F(ResultTabsTest, APageThatWasSeenShowsWhatHasBecomeOfTheStudyWhenItIsSeenAgain)
{
    ASSERT_TRUE(window->showPage("companions"));
    const auto* words = find<QLabel>("restoredSentence");
    const QString before = words->text();
    ASSERT_NE(before, "");
    ASSERT_TRUE(window->showPage("result"));
    const core::Run run = study().runs[19];
    ASSERT_TRUE(run.counted());
    ASSERT_TRUE(window->document()->discardRuns({run.id}, {"other", "made for a test"}));
    settle();
    EXPECT_EQ(words->text(), before) << "nobody sees it";
    ASSERT_TRUE(window->showPage("companions"));
    EXPECT_NE(words->text(), before);
}

TEST(StartDrawings, EachIsAPictureOfItsOwnInLightAndInDark)
{
    QList<QImage> seen;
    for (const StartDrawing drawing :
         {StartDrawing::days, StartDrawing::stretch, StartDrawing::answer, StartDrawing::sheet})
        for (const Theme& theme : {Theme::light(), Theme::night()}) {
            const QImage picture = startDrawing(drawing, theme, 1.5).toImage();
            EXPECT_EQ(picture.size(), kStartDrawing * 1.5);
            EXPECT_EQ(picture.pixelColor(0, 0).alpha(), 0) << "stands on any ground";
            EXPECT_FALSE(seen.contains(picture));
            seen += picture;
        }
}

} // namespace bothways::app::tests
