// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/hinted_table_view.h"
#include "app/desktop/runs/run_form.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "tests/app/desktop/support/desktop_fixture.h"
#include "tests/app/desktop/support/german.h"

#include <QFontMetrics>

#include <QHeaderView>
#include <QListWidget>
#include <QStyle>
#include <QTabBar>
#include <QToolBar>
#include <QToolButton>

#include <algorithm>

/// A small screen: what is worked with is in sight, and what is said can be read.
namespace bothways::app::tests {
namespace {

constexpr QSize kSmall(1024, 768);

bool isWholeInSight(const QWidget* widget)
{
    return widget->visibleRegion() == QRegion(widget->rect());
}

} // namespace

class SmallWindowTest : public WindowTest, public testing::WithParamInterface<bool> {
protected:
    void openDemo()
    {
        if (GetParam()) {
            german = std::make_unique<German>(preferences);
            window = std::make_unique<MainWindow>(preferences, clock());
            window->show();
        }
        window->resize(kSmall);
        window->openDemo();
        settle();
        ASSERT_EQ(window->size(), kSmall);
    }
    std::unique_ptr<German> german;
};

TEST_P(SmallWindowTest, TheEntryLeavesRunsInSightAndHasItsButtonsAndItsFieldThere)
{
    openDemo();
    const RunListView& list = window->page()->list();
    for (const bool more : {false, true}) {
        trigger("newRun");
        if (more)
            click("moreFields");
        EXPECT_TRUE(waitFor([&] {
            return list.viewport()->height() >= 4 * list.rowHeight(0) &&
                   isWholeInSight(find("saveRun")) && isWholeInSight(find("consumption")) &&
                   isWholeInSight(find("notes"));
        })) << "more fields: "
            << more << ", list " << list.viewport()->height();
        EXPECT_EQ(window->size(), kSmall); // not by a higher window
        keyboard();                        // makes the window active
        find("setting")->setFocus();
        EXPECT_TRUE(waitFor([&] { return isWholeInSight(find("setting")); })) << more;
        press(Qt::Key_Escape);
    }
}

TEST_P(SmallWindowTest, AFindingIsReadToItsEnd)
{
    openDemo();
    const auto* list = find<HintedTableView>("findingsList");
    ASSERT_GT(list->model()->rowCount(), 5);
    const auto isRead = [&](int row, int column) {
        const QModelIndex index = list->model()->index(row, column);
        const QRect cell = list->visualRect(index).adjusted(2, 0, -2, 0);
        const QRect needed = list->fontMetrics().boundingRect(
            QRect(0, 0, cell.width(), 1), Qt::TextWordWrap, index.data().toString());
        return needed.height() <= cell.height() && needed.width() <= cell.width();
    };
    for (int row = 0; row < list->model()->rowCount(); ++row)
        for (const int column : {2, 3})
            EXPECT_TRUE(waitFor([&] { return isRead(row, column); })) << row << ' ' << column;
    EXPECT_GE(list->viewport()->height(), 3 * list->verticalHeader()->defaultSectionSize());
    for (const char* part : {"acceptFinding", "overruleWords", "overruleFinding", "allOfRule"})
        EXPECT_TRUE(isWholeInSight(find(part))) << part;
}

TEST_P(SmallWindowTest, TheNamesOfAllPagesAreInSight)
{
    openDemo();
    const auto* tabs = find<QTabWidget>("resultTabs")->tabBar();
    ASSERT_GE(tabs->count(), 7);
    for (int i = 0; i < tabs->count(); ++i)
        EXPECT_TRUE(!tabs->isTabVisible(i) || tabs->rect().contains(tabs->tabRect(i)))
            << tabs->tabText(i).toStdString();
}

TEST_P(SmallWindowTest, TheToolBarIsInSightToItsEnd)
{
    openDemo();
    const auto* bar = find<QToolBar>("toolBar");
    for (QAction* action : bar->actions())
        EXPECT_TRUE(waitFor([&] { return isWholeInSight(bar->widgetForAction(action)); }))
            << action->iconText().toStdString();
}

TEST_P(SmallWindowTest, WhatWasNotCheckedAndWhatHappenedIsReadToItsEnd)
{
    openDemo();
    const auto* below = find<QToolButton>("notChecked");
    EXPECT_LE(below->fontMetrics().horizontalAdvance(below->text()), below->width());
    window->showPage("history");
    const auto* list = find<HintedTableView>("historyList");
    const int detail = list->model()->columnCount() - 1;
    for (int row = 0; row < std::min(5, list->model()->rowCount()); ++row) {
        const QModelIndex index = list->model()->index(row, detail);
        EXPECT_TRUE(waitFor([&] {
            const QRect cell = list->visualRect(index).adjusted(2, 0, -2, 0);
            return list->fontMetrics()
                       .boundingRect(QRect(0, 0, cell.width(), 1), Qt::TextWordWrap,
                                     index.data().toString())
                       .height() <= cell.height();
        })) << index.data().toString().toStdString();
    }
}

TEST_P(SmallWindowTest, NamesOfRunsAndChannelsGoOnBelowAndAreNotCut)
{
    openDemo();
    window->showPage("recordings");
    for (const char* name : {"traceRuns", "traceChannels"}) {
        const auto* list = find<QListWidget>(name);
        ASSERT_TRUE(waitFor([&] { return list->count() > 5; }));
        for (int i = 0; i < list->count(); ++i) {
            const QListWidgetItem& item = *list->item(i);
            const QRect row = list->visualItemRect(&item);
            const int margin = list->style()->pixelMetric(QStyle::PM_FocusFrameHMargin) + 1;
            int beside =
                list->style()->pixelMetric(QStyle::PM_IndicatorWidth) + 2 * margin + 2 * margin;
            if (!item.icon().isNull())
                beside += list->iconSize().width() + 2 * margin;
            const QRect needed = list->fontMetrics().boundingRect(
                QRect(0, 0, row.width() - beside, 1), Qt::TextWordWrap, item.text());
            EXPECT_LE(needed.height(), row.height()) << item.text().toStdString();
            EXPECT_LE(needed.width(), row.width() - beside) << item.text().toStdString();
        }
    }
}

TEST_P(SmallWindowTest, TheLedgersTableLeavesItsBoxesInSight)
{
    openDemo();
    window->showPage("ledger");
    const auto* boxes = find("ledgerFlow");
    const auto* table = find("ledgerTable");
    EXPECT_TRUE(waitFor([&] {
        return boxes->height() > 0 && boxes->geometry().bottom() < table->geometry().top();
    })) << boxes->geometry().bottom()
        << ' ' << table->geometry().top();
}

INSTANTIATE_TEST_SUITE_P(InBothLanguages, SmallWindowTest, testing::Bool(),
                         [](const auto& given) { return given.param ? "German" : "English"; });

} // namespace bothways::app::tests
