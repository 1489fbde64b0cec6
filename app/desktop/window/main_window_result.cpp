// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/findings/findings_model.h"
#include "app/desktop/findings/findings_panel.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/pages/blind_page.h"
#include "app/desktop/pages/look_first_page.h"
#include "app/desktop/planning/plan_page.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/window/main_window.h"
#include "app/desktop/window/recordings_desk.h"
#include "app/desktop/window/report_desk.h"
#include "app/desktop/window/result_tabs.h"

#include <QDockWidget>
#include <QMessageBox>
#include <QPushButton>

#include <algorithm>

/// The row of pages at the right, and what stands before the answer.
namespace bothways::app {

/// The row of pages at the right.
void MainWindow::buildResult()
{
    m_result = new ResultTabs(m_resultDock);
    m_result->setReadOnly(m_document->isReadOnly());
    m_result->addBeside("recordings", tr("Recordings"),
                        [this] { return m_recordings->makePanel(); });
    m_result->addInstead("blind", [this] {
        auto* page = new BlindPage(!m_document->isReadOnly());
        connect(page, &BlindPage::showWanted, this, [this] { setBlind(false); });
        return page;
    });
    m_result->addInstead("lookFirst", [this] {
        auto* page = new LookFirstPage;
        const auto allow = [this](const char* first) {
            m_lookAllowed = true;
            m_result->showPage(first);
            takeResult();
        };
        connect(page, &LookFirstPage::anyLookWanted, this, [allow] { allow("companions"); });
        connect(page, &LookFirstPage::verdictWanted, this, [allow] { allow("result"); });
        return page;
    });
    showResultPart();
    dressResult();
    m_resultDock->setWidget(m_result);
    connect(m_result, &QTabWidget::currentChanged, this, &MainWindow::recordLook);
    connect(m_result, &ResultTabs::optionsAsked, this,
            [this](double margin_pct, double confidence, std::optional<double> claim_pct) {
                m_document->tryOptions({margin_pct, confidence, claim_pct});
            });
    connect(&m_preferences, &Preferences::unitsChanged, m_result, [this] { dressResult(); });
    connect(&m_preferences, &Preferences::appearanceChanged, m_result, [this] { dressResult(); });
    connect(m_result, &ResultTabs::runActivated, m_page, &StudyPage::showRun);
    connect(m_result, &ResultTabs::runCardRequested, this,
            [this](const core::Plan& card) { m_reports->chooseRunCard(*m_document, card); });
    connect(m_result, &ResultTabs::noiseStudiesRequested, this,
            [this](PlanPage* plan) { m_reports->chooseNoiseStudies(*plan); });
    connect(m_result, &ResultTabs::tieRequested, this, [this](const core::PlannedStudy& tied) {
        core::StudyProperties properties = m_document->study().properties;
        properties.plan = tied;
        m_document->setProperties(properties);
    });
}

void MainWindow::takeResult()
{
    const auto result = m_document->result();
    if (!result)
        return;
    dressResult();
    if (!m_document->isBlind())
        m_result->setResult(result);
    showResultPart();
    follow();
    recordLook();
}

/// Whoever sees an answer has looked at it, whether it came or was turned to.
void MainWindow::recordLook()
{
    if (m_document && m_document->result() && m_result->showsAnswer() && isActiveWindow())
        m_document->recordLook();
}

/// The answer, or what stands before it: consumption is hidden, or a look has its price.
void MainWindow::showResultPart()
{
    const auto result = m_document->result();
    const bool interim =
        result && result->analysis.headline &&
        std::ranges::count(result->analysis.verdict.qualifiers, core::Qualifier::interim) > 0;
    m_result->standInstead(m_document->isBlind()                                     ? "blind"
                           : interim && !m_lookAllowed && !m_document->wasLookedAt() ? "lookFirst"
                                                                                     : "");
}

void MainWindow::dressResult()
{
    m_result->setLook(Theme::of(palette()), m_preferences.units(m_document->isElectric()));
}

void MainWindow::setBlind(bool blind)
{
    if (!blind && m_document->isBlind())
        if (const int open = m_findings->model().openCount(); open > 0) {
            follow(); // the menu's tick stays until it is settled
            askBeforeShowing(open);
            return;
        }
    m_document->setBlind(blind);
    follow();
}

/// Once the answer is known it can choose the runs.
void MainWindow::askBeforeShowing(int open)
{
    auto* box = new QMessageBox(
        QMessageBox::Question, tr("Show the consumption?"),
        tr("%n finding(s) are not answered yet. Once the result is known, it can no longer be "
           "ruled out that it chose the runs.",
           nullptr, open),
        QMessageBox::NoButton, this);
    box->setObjectName("showBeforeSettled");
    box->setAttribute(Qt::WA_DeleteOnClose);
    QPushButton* first = box->addButton(tr("Go through the &findings"), QMessageBox::RejectRole);
    QPushButton* show = box->addButton(tr("&Show it all the same"), QMessageBox::AcceptRole);
    box->setDefaultButton(first);
    box->setEscapeButton(first);
    connect(show, &QPushButton::clicked, this, [this] {
        if (m_document)
            m_document->setBlind(false);
        follow();
    });
    connect(first, &QPushButton::clicked, this, &MainWindow::nextFinding);
    box->open();
}

} // namespace bothways::app
