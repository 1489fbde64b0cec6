// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/result_tabs.h"

#include "app/desktop/pages/checks_page.h"
#include "app/desktop/pages/companions_page.h"
#include "app/desktop/pages/result_page.h"
#include "app/desktop/pages/why_page.h"
#include "app/desktop/planning/ledger_page.h"
#include "app/desktop/planning/plan_page.h"

#include <QProxyStyle>
#include <QScrollArea>
#include <QTabBar>

#include <algorithm>
#include <cassert>
#include <type_traits>

namespace bothways::app {
namespace {

/// Less air beside the names, so that the row of pages fits a small screen in either language.
class CloseTabs final : public QProxyStyle {
public:
    int pixelMetric(PixelMetric metric, const QStyleOption* option,
                    const QWidget* widget) const override
    {
        constexpr int kBeside = 16;
        const int usual = QProxyStyle::pixelMetric(metric, option, widget);
        return metric == PM_TabBarTabHSpace ? std::min(usual, kBeside) : usual;
    }
};

} // namespace

ResultTabs::ResultTabs(QWidget* parent) : QTabWidget(parent)
{
    setObjectName("resultTabs");
    setAccessibleName(tr("Result"));
    setDocumentMode(true);
    auto* style = new CloseTabs;
    style->setParent(this);
    tabBar()->setStyle(style);
    const auto leads = [this](ResultView* view) {
        connect(view, &ResultView::runActivated, this, &ResultTabs::runActivated);
    };
    addOfAnswer<ResultPage>("result", [this, leads](ResultPage* page) {
        leads(page);
        connect(page, &ResultPage::optionsAsked, this, &ResultTabs::optionsAsked);
    });
    addOfAnswer<CompanionsPage>("companions", leads);
    addOfAnswer<ChecksPage>("checks", leads);
    addOfAnswer<WhyPage>("why", leads);
    addOfAnswer<PlanPage>("plan", [this](PlanPage* page) { connectPlan(page); });
    addOfAnswer<LedgerPage>("ledger", [](LedgerPage*) {});
}

LatePage* ResultTabs::add(Kind kind, const QString& name, const QString& title, LatePage::Make make)
{
    auto* place = new LatePage([title, make = std::move(make)] {
        QWidget* page = make();
        for (QScrollArea* area : page->findChildren<QScrollArea*>())
            area->setAccessibleName(title);
        return page;
    });
    // What stands in place of the answer stands where the answer does: before what is beside it.
    auto at = m_tabs.end();
    if (kind == Kind::instead)
        at = std::find_if(m_tabs.begin(), m_tabs.end(),
                          [](const Tab& tab) { return tab.kind == Kind::beside; });
    const auto index = static_cast<int>(at - m_tabs.begin());
    m_tabs.insert(at, {name, kind, place});
    insertTab(index, place, title);
    return place;
}

template <class Page>
void ResultTabs::addOfAnswer(const char* name, const std::function<void(Page*)>& connectIt)
{
    const auto titles = pagesOfAnswer();
    const auto known = std::find_if(titles.begin(), titles.end(),
                                    [&](const auto& page) { return page.first == name; });
    assert(known != titles.end());
    LatePage* place = add(Kind::answer, name, known->second, [name, connectIt] {
        auto* page = new Page;
        page->setObjectName(QLatin1String(name) + QLatin1String("Page"));
        connectIt(page);
        return page;
    });
    connect(place, &LatePage::aboutToBeSeen, this, [this, place] {
        auto* page = static_cast<Page*>(place->made());
        page->setTheme(m_theme);
        page->setUnits(m_units);
        page->setResult(m_result);
        if constexpr (std::is_base_of_v<ResultView, Page>)
            page->setRecomputing(m_recomputing);
    });
}

void ResultTabs::connectPlan(PlanPage* plan)
{
    plan->setReadOnly(m_readOnly);
    connect(plan, &PlanPage::runCardRequested, this, &ResultTabs::runCardRequested);
    connect(plan, &PlanPage::noiseStudiesRequested, this,
            [this, plan] { emit noiseStudiesRequested(plan); });
    connect(plan, &PlanPage::tieRequested, this, &ResultTabs::tieRequested);
}

void ResultTabs::addBeside(const QString& name, const QString& title, LatePage::Make make)
{
    add(Kind::beside, name, title, std::move(make));
}

void ResultTabs::addInstead(const QString& name, LatePage::Make make)
{
    add(Kind::instead, name, tr("Verdict"), std::move(make));
    showTab(find(name), false);
}

/// The keys that go along the row would stop at a tab that is hidden and not disabled.
void ResultTabs::showTab(int index, bool shown)
{
    setTabVisible(index, shown);
    setTabEnabled(index, shown);
}

void ResultTabs::standInstead(const QString& name)
{
    if (m_instead == name)
        return;
    const bool moves = m_tabs[static_cast<std::size_t>(currentIndex())].kind != Kind::beside;
    if (m_instead.isEmpty() && moves)
        m_answerTab = currentIndex();
    m_instead = name;
    // First the new one comes to the front, then the others go: none is seen, and made, between.
    const int wanted = name.isEmpty() ? m_answerTab : find(name);
    showTab(wanted, true);
    if (moves)
        setCurrentIndex(wanted);
    for (int i = 0; i < count(); ++i) {
        const Tab& tab = m_tabs[static_cast<std::size_t>(i)];
        showTab(i, tab.kind == Kind::beside ||
                       (tab.kind == Kind::answer ? name.isEmpty() : tab.name == name));
    }
}

void ResultTabs::setResult(const std::shared_ptr<const ResultSet>& result)
{
    m_result = result;
    m_recomputing = false;
    refresh();
}

void ResultTabs::forgetResult()
{
    m_result = nullptr;
    for (const Tab& tab : m_tabs)
        if (tab.kind == Kind::answer)
            tab.place->drop();
}

void ResultTabs::setLook(const Theme& theme, const UnitsShown& units)
{
    m_theme = theme;
    m_units = units;
    refresh();
}

void ResultTabs::setRecomputing(bool recomputing)
{
    m_recomputing = recomputing;
    if (auto* view = currentWidget()->findChild<ResultView*>())
        view->setRecomputing(recomputing);
}

void ResultTabs::refresh()
{
    if (auto* place = qobject_cast<LatePage*>(currentWidget()); place && place->isVisible())
        emit place->aboutToBeSeen();
}

int ResultTabs::find(const QString& name) const
{
    const auto tab = std::find_if(m_tabs.begin(), m_tabs.end(),
                                  [&](const Tab& known) { return known.name == name; });
    return tab == m_tabs.end() ? -1 : static_cast<int>(tab - m_tabs.begin());
}

bool ResultTabs::showPage(const QString& name)
{
    const int index = find(name);
    if (index < 0)
        return false;
    if (isTabVisible(index)) {
        setCurrentIndex(index);
        return true;
    }
    m_answerTab = index;
    setCurrentIndex(find(m_instead));
    return true;
}

std::vector<std::pair<QString, QString>> ResultTabs::pagesOfAnswer()
{
    return {{"result", tr("Verdict")}, {"companions", tr("Companions")},
            {"checks", tr("Checks")},  {"why", tr("Why")},
            {"plan", tr("Plan")},      {"ledger", tr("Ledger")}};
}

bool ResultTabs::showsAnswer() const
{
    return isVisible() && m_tabs[static_cast<std::size_t>(currentIndex())].kind == Kind::answer;
}

bool ResultTabs::isBusy() const
{
    const auto* plan = findChild<PlanPage*>();
    return plan && plan->isVisible() && plan->isBusy();
}

} // namespace bothways::app
