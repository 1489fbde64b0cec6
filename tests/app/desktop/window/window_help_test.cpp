// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/findings/findings_model.h"
#include "app/desktop/findings/findings_panel.h"
#include "app/desktop/help/help_desk.h"
#include "app/desktop/help/help_window.h"
#include "app/desktop/look/help_topics.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "tests/app/desktop/support/desktop_fixture.h"

#include <QAction>
#include <QComboBox>
#include <QDialog>
#include <QIcon>
#include <QLabel>
#include <QLineEdit>
#include <QTabWidget>
#include <QTableView>
#include <QTest>
#include <QToolButton>

namespace bothways::app::tests {
namespace {

/// The window on the demo study, and where its handbook is open.
class WindowHelpTest : public WindowTest {
protected:
    WindowHelpTest()
    {
        window->openDemo();
        settle();
    }
    [[nodiscard]] QString where() const
    {
        const HelpWindow* help = window->help().window();
        return help ? help->topic().text() : QString();
    }
    /// F1 while `widget` has the keyboard.
    QString helpAt(QWidget* widget)
    {
        keyboard();
        widget->setFocus();
        press(Qt::Key_F1);
        return where();
    }
    QString helpOn(const char* tab, const char* page)
    {
        EXPECT_TRUE(window->showPage(tab));
        auto* inside = find<QTabWidget>("resultTabs")->findChild<QWidget*>(page);
        EXPECT_NE(inside, nullptr) << page;
        QWidget* field = nullptr;
        for (QWidget* child : inside->findChildren<QWidget*>())
            if (!field && child->isVisible() && child->isEnabled() &&
                helpTopicOf(*child).isEmpty() && (child->focusPolicy() & Qt::TabFocus))
                field = child;
        EXPECT_NE(field, nullptr) << "nothing in " << page << " takes the keyboard";
        return field ? helpAt(field) : QString();
    }
    /// The "?" on a page of the result, by the topics that they open.
    QStringList questionMarks(const QString& tab)
    {
        EXPECT_TRUE(window->showPage(tab)); // a page is made when it is first seen
        const QByteArray part = tab.toUtf8() + "Page";
        QStringList topics;
        for (QToolButton* button : find(part.constData())->findChildren<QToolButton*>("helpButton"))
            topics += helpTopicOf(*button);
        return topics;
    }
};

} // namespace

TEST_F(WindowHelpTest, F1OpensThePageForWhereTheKeyboardIs)
{
    EXPECT_EQ(helpAt(&window->page()->list()), "why_pairs");
    EXPECT_EQ(helpOn("companions", "companionsPage").section('#', 0, 0), "companions");
    EXPECT_EQ(helpOn("checks", "checksPage").section('#', 0, 0), "checks");
    EXPECT_EQ(helpOn("why", "whyPage"), "method");
    EXPECT_EQ(helpOn("plan", "planPage"), "planning");
    EXPECT_EQ(helpOn("ledger", "ledgerPage"), "ledger");
    EXPECT_EQ(helpOn("result", "resultPage").section('#', 0, 0), "verdict");
    window->showPage("history");
    EXPECT_EQ(helpAt(find("historyList")), "window#history-and-undo");
    window->page()->newRun();
    press(Qt::Key_F1);
    EXPECT_EQ(where(), "roadside");
}

TEST_F(WindowHelpTest, F1OnAFindingOpensItsRule)
{
    FindingsPanel* panel = window->findChild<FindingsPanel*>("findingsPanel");
    window->showPage("findings");
    auto* list = find<QTableView>("findingsList");
    ASSERT_GE(panel->model().rowCount(), 5);
    for (int row = 0; row < panel->model().rowCount(); ++row) {
        list->selectRow(row);
        const QString expected = helpTopic(panel->model().findingAt(row).rule);
        EXPECT_EQ(helpAt(list), expected);
        window->help().open("index");
        EXPECT_EQ(where(), "index");
        auto* button = panel->findChild<QToolButton*>("helpButton");
        button->click();
        EXPECT_EQ(where(), expected);
    }
}

TEST_F(WindowHelpTest, EveryCheckCompanionAndWordBesideTheVerdictHasItsQuestionMark)
{
    const QStringList checks = questionMarks("checks");
    for (const CheckKind check : kCheckKinds)
        EXPECT_TRUE(checks.contains(helpTopic(check))) << helpTopic(check).toStdString();
    const QStringList companions = questionMarks("companions");
    using core::Companion;
    for (const Companion companion : {Companion::bracket, Companion::runs, Companion::blocks,
                                      Companion::labels, Companion::correlated})
        EXPECT_TRUE(companions.contains(helpTopic(companion)));
    const core::Verdict& verdict = window->document()->result()->analysis.verdict;
    QStringList expected{helpTopic(verdict.cls)};
    if (!window->document()->result()->spoiled.empty())
        expected += "rules";
    for (const core::Qualifier qualifier : verdict.qualifiers)
        expected += helpTopic(qualifier);
    EXPECT_EQ(questionMarks("result"), expected);
}

TEST_F(WindowHelpTest, F1InADialogOpensItsPageAndTheDialogStays)
{
    choose(1);
    trigger("discardRuns");
    auto* dialog = openDialog("discardDialog");
    ASSERT_NE(dialog, nullptr);
    QTest::keyClick(dialog->findChild<QComboBox*>("reason"), Qt::Key_F1);
    EXPECT_EQ(where(), "window#discarding-a-run");
    EXPECT_TRUE(dialog->isVisible());
    dialog->reject();
}

TEST_F(WindowHelpTest, TheHandbookGoesWithTheWindow)
{
    trigger("help");
    ASSERT_TRUE(window->help().window()->isVisible());
    window->close();
    EXPECT_FALSE(window->help().window()->isVisible());
}

TEST_F(WindowHelpTest, TheIconIsCompiledInAndCanBeDrawn)
{
    EXPECT_FALSE(QIcon(":/icons/bothways.svg").pixmap(64, 64).toImage().isNull());
}

} // namespace bothways::app::tests
