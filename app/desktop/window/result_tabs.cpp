// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/result_tabs.h"

#include "app/desktop/pages/checks_page.h"
#include "app/desktop/pages/companions_page.h"
#include "app/desktop/pages/result_page.h"
#include "app/desktop/pages/why_page.h"
#include "app/desktop/planning/ledger_page.h"
#include "app/desktop/planning/plan_page.h"

#include <QScrollArea>

namespace bothways::app {

ResultTabs::ResultTabs(QWidget* parent)
    : QTabWidget(parent), m_verdict(new ResultPage), m_plan(new PlanPage), m_ledger(new LedgerPage)
{
    setObjectName("resultTabs");
    setAccessibleName(tr("Result"));
    setDocumentMode(true);
    addView(m_verdict, "resultPage", tr("Verdict"));
    addView(new CompanionsPage, "companionsPage", tr("Companions"));
    addView(new ChecksPage, "checksPage", tr("Checks"));
    addView(new WhyPage, "whyPage", tr("Why"));
    addTab(m_plan, tr("Plan"));
    addTab(m_ledger, tr("Ledger"));
    for (int i = 0; i < count(); ++i)
        for (QScrollArea* area : widget(i)->findChildren<QScrollArea*>())
            area->setAccessibleName(tabText(i));
}

void ResultTabs::addView(ResultView* view, const char* objectName, const QString& title)
{
    view->setObjectName(objectName);
    connect(view, &ResultView::runActivated, this, &ResultTabs::runActivated);
    m_views.push_back(view);
    addTab(view, title);
}

void ResultTabs::setResult(const std::shared_ptr<const ResultSet>& result)
{
    for (ResultView* view : m_views)
        view->setResult(result);
    m_plan->setResult(result);
    m_ledger->setResult(result);
}

void ResultTabs::setLook(const Theme& theme, const UnitsShown& units)
{
    for (ResultView* view : m_views) {
        view->setTheme(theme);
        view->setUnits(units);
    }
    m_plan->setTheme(theme);
    m_plan->setUnits(units);
    m_ledger->setTheme(theme);
    m_ledger->setUnits(units);
}

void ResultTabs::setRecomputing(bool recomputing)
{
    for (ResultView* view : m_views)
        view->setRecomputing(recomputing);
}

bool ResultTabs::showPage(const QString& objectName)
{
    for (int i = 0; i < count(); ++i)
        if (widget(i)->objectName() == objectName) {
            setCurrentIndex(i);
            return true;
        }
    return false;
}

} // namespace bothways::app
