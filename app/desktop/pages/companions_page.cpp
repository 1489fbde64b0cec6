// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/companions_page.h"

#include "app/desktop/look/help_topics.h"
#include "app/desktop/look/page_parts.h"
#include "app/desktop/pages/companions_rows.h"
#include "app/desktop/plots/leave_out_plot.h"

#include <QLabel>
#include <QTableWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include <cmath>

namespace bothways::app {
namespace {

/// The headline is explained with the verdict, the settings together.
QString helpTopicOfRow(const QString& id)
{
    if (id == "headline")
        return QStringLiteral("verdict");
    return QStringLiteral("companions#") + (id == "setting" ? QStringLiteral("settings") : id);
}

} // namespace

CompanionsPage::CompanionsPage(QWidget* parent) : ResultView(parent)
{
    auto* column = new QVBoxLayout;
    const auto addHeading = [&](const char* name) {
        QLabel* label = parts::heading(QLatin1String(name));
        column->addWidget(label);
        return label;
    };
    const auto addSentence = [&](const char* name) {
        QLabel* label = parts::sentence(QLatin1String(name));
        column->addWidget(label);
        return label;
    };
    m_companionsHeading = addHeading("companionsHeading");
    m_agreement = addSentence("agreement");
    m_forest = new ForestPlot;
    m_forest->setObjectName(QStringLiteral("forestPlot"));
    column->addWidget(m_forest);
    m_table = parts::readingTable(QStringLiteral("companionsTable"));
    column->addWidget(m_table);
    m_explanations = new QVBoxLayout;
    m_explanations->setSpacing(4);
    column->addLayout(m_explanations);
    column->addSpacing(10);
    m_leaveHeading = addHeading("leaveHeading");
    m_leaveSentence = addSentence("leaveSentence");
    m_leave = new LeaveOneOutPlot;
    m_leave->setObjectName(QStringLiteral("leavePlot"));
    m_leave->setMinimumHeight(240);
    column->addWidget(m_leave);
    column->addSpacing(10);
    m_restoredHeading = addHeading("restoredHeading");
    m_restoredSentence = addSentence("restoredSentence");
    m_restored = new ForestPlot;
    m_restored->setObjectName(QStringLiteral("restoredPlot"));
    column->addWidget(m_restored);
    m_restoredTable = parts::readingTable(QStringLiteral("restoredTable"));
    column->addWidget(m_restoredTable);
    column->addStretch();
    connect(m_leave, &PlotView::readingActivated, this, &ResultView::runActivated);
    connect(m_restored, &PlotView::readingActivated, this, [this](int run) {
        if (run > 0)
            emit runActivated(run);
    });
    setContent(parts::scrolled(column));
}

CompanionsPage::~CompanionsPage() = default;

void CompanionsPage::refresh()
{
    const Words words(result()->analysis, units());
    for (PlotView* plot : findChildren<PlotView*>()) {
        plot->setTheme(theme());
        plot->setLocale(units().locale);
    }
    m_companionsHeading->setText(tr("Other honest ways to the same number"));
    m_leaveHeading->setText(tr("Which pair does it hang on?"));
    m_restoredHeading->setText(tr("Did the discards choose the result?"));
    for (QLabel* label : {m_companionsHeading, m_leaveHeading, m_restoredHeading})
        parts::enlarge(*label, 1.25, true);
    showCompanions(words);
    showLeaveOneOut(words);
    showRestored(words);
}

// Long: one table, a row after the other.
void CompanionsPage::showCompanions(const Words& words)
{
    const core::Analysis& analysis = result()->analysis;
    const NumberWords& numbers = words.numbers();
    const std::vector<CompanionRow> rows = companionRows(analysis, words);
    const bool there = !rows.empty();
    parts::clear(*m_explanations);
    m_forest->setVisible(there);
    m_table->setVisible(there);
    if (!there) {
        parts::setSentence(*m_agreement,
                           tr("Without a verdict there is nothing to set beside it."));
        return;
    }
    parts::setSentence(*m_agreement,
                       analysis.verdict.fragile_by.empty()
                           ? tr("None of the other ways that these runs allow contradicts the "
                                "headline.")
                           : words.qualifier(core::Qualifier::fragile));
    m_forest->show({tr("Headline and companions"), m_agreement->text(), forestAxis(analysis, words),
                    forestRows(rows, words), analysis.verdict.margin_pct});
    // F1 on a row: what that way is.
    m_table->disconnect(this);
    connect(m_table, &QTableWidget::currentCellChanged, this, [this, rows](int row) {
        const bool isRow = row >= 0 && row < static_cast<int>(rows.size());
        setHelpTopic(*m_table,
                     isRow ? helpTopicOfRow(rows[static_cast<std::size_t>(row)].id) : QString());
    });
    m_table->clear();
    m_table->setColumnCount(6);
    m_table->setRowCount(static_cast<int>(rows.size()));
    m_table->setHorizontalHeaderLabels(
        {tr("way"), tr("effect"),
         tr("%1 interval").arg(numbers.percent(analysis.options.confidence)),
         tr("df", "degrees of freedom"), tr("p"), tr("verdict")});
    m_table->setAccessibleName(tr("Headline and companions in numbers"));
    int line = 0;
    for (const CompanionRow& row : rows) {
        parts::setCell(*m_table, line, 0, row.name);
        const bool has = row.effect_log && row.low_log && row.high_log;
        const int decimals = has ? NumberWords::decimalsOfRange(*row.low_log, *row.high_log) : 2;
        parts::setCell(*m_table, line, 1,
                       has ? units().percentFromLog(*row.effect_log, decimals) : tr("–"), true);
        parts::setCell(*m_table, line, 2,
                       has ? numbers.signedRange(*row.low_log, *row.high_log, decimals) : tr("–"),
                       true);
        parts::setCell(*m_table, line, 3,
                       row.df ? numbers.shortest(std::round(10.0 * *row.df) / 10.0) : tr("–"),
                       true);
        parts::setCell(*m_table, line, 4, row.p ? numbers.pAlone(*row.p) : tr("–"), true);
        parts::setCell(*m_table, line, 5, row.cls ? words.className(*row.cls) : tr("–"));
        ++line;
    }
    parts::fitToRows(*m_table);
    for (const core::Companion companion : wording::kCompanions) {
        auto* row = new QWidget;
        setHelpTopic(*row, helpTopic(companion));
        auto* layout = new QHBoxLayout(row);
        layout->setContentsMargins(0, 0, 0, 0);
        QLabel* label = parts::sentence(QStringLiteral("explanation"));
        label->setText(words.companion(companion));
        layout->addWidget(label, 1);
        layout->addWidget(helpButton(helpTopic(companion), words.companionName(companion)), 0,
                          Qt::AlignTop);
        m_explanations->addWidget(row);
    }
}

void CompanionsPage::showLeaveOneOut(const Words& words)
{
    const core::Analysis& analysis = result()->analysis;
    m_leave->setVisible(analysis.leave_one_out.has_value());
    parts::setSentence(*m_leaveSentence, words.leaveOneOut());
    m_leave->show(analysis, words);
}

void CompanionsPage::showRestored(const Words& words)
{
    const core::Analysis& analysis = result()->analysis;
    parts::setSentence(*m_restoredSentence, words.discardsRestored());
    const std::vector<RestoredRow> rows = restoredRows(*result(), words);
    const bool there = analysis.discarded > 0 && !rows.empty();
    m_restored->setVisible(there);
    m_restoredTable->setVisible(there);
    if (!there)
        return;
    m_restored->show({tr("Discards put back"), m_restoredSentence->text(),
                      tr("change of consumption with %1, in per cent").arg(words.device()),
                      forestRows(rows, analysis, words), analysis.verdict.margin_pct});
    m_restoredTable->clear();
    m_restoredTable->setColumnCount(5);
    m_restoredTable->setRowCount(static_cast<int>(rows.size()));
    m_restoredTable->setHorizontalHeaderLabels(
        {tr("counted again"), tr("effect"), tr("verdict"), tr("discarded for"), tr("evidence")});
    m_restoredTable->setAccessibleName(tr("Discards put back in numbers"));
    int line = 0;
    for (const RestoredRow& row : rows) {
        parts::setCell(*m_restoredTable, line, 0, row.name);
        parts::setCell(*m_restoredTable, line, 1,
                       row.effect_log ? units().percentFromLog(*row.effect_log, 2) : tr("–"), true);
        parts::setCell(*m_restoredTable, line, 2,
                       row.possible ? words.className(row.cls)
                                    : tr("cannot be put back: no consumption"));
        parts::setCell(*m_restoredTable, line, 3, row.reason);
        parts::setCell(*m_restoredTable, line, 4, row.evidence);
        ++line;
    }
    parts::fitToRows(*m_restoredTable);
}

} // namespace bothways::app
