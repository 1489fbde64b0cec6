// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/checks_page.h"

#include "app/desktop/look/help_topics.h"
#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/state_marks.h"
#include "app/desktop/look/turning_layout.h"
#include "app/desktop/plots/check_plots.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace bothways::app {

ChecksPage::ChecksPage(QWidget* parent) : ResultView(parent)
{
    auto* column = new QVBoxLayout;
    m_summary = parts::sentence(QStringLiteral("checksSummary"));
    m_power = parts::sentence(QStringLiteral("checksPower"));
    column->addWidget(m_summary);
    column->addWidget(m_power);
    m_quantiles = addGroup(*column, {CheckKind::normal, CheckKind::outlier}, "quantilesPlot");
    m_residuals = addGroup(*column, {CheckKind::order, CheckKind::curve}, "residualsPlot");
    m_spread = addGroup(*column, {CheckKind::spread}, "spreadPlot");
    m_baseline = addGroup(*column, {CheckKind::baseline}, "baselinePlot");
    m_direction = addGroup(*column, {CheckKind::direction}, "directionPlot");
    addLine(*column, CheckKind::ways);
    addLine(*column, CheckKind::settling);
    addLine(*column, CheckKind::days);
    addLine(*column, CheckKind::resolution);
    addLine(*column, CheckKind::air);
    column->addStretch();
    setContent(parts::scrolled(column));
}

ChecksPage::~ChecksPage() = default;

PlotView* ChecksPage::addGroup(QBoxLayout& column, std::initializer_list<CheckKind> kinds,
                               const char* plotName)
{
    constexpr int kWide = 620; // narrower words beside a plot would be a ribbon
    auto* row = new TurningLayout(kWide);
    row->setSpacing(18);
    auto* lines = new QVBoxLayout;
    lines->setSpacing(10);
    for (const CheckKind kind : kinds)
        addLine(*lines, kind);
    lines->addStretch();
    row->addLayout(lines, 1);
    auto* plot = new PlotView;
    plot->setObjectName(QLatin1String(plotName));
    plot->setMinimumSize(300, 190);
    connect(plot, &PlotView::readingActivated, this, &ResultView::runActivated);
    row->addWidget(plot, 1);
    column.addLayout(row);
    return plot;
}

void ChecksPage::addLine(QBoxLayout& column, CheckKind kind)
{
    Line line;
    auto* row = new QHBoxLayout;
    line.mark = new CheckMark;
    row->addWidget(line.mark, 0, Qt::AlignTop);
    auto* texts = new QVBoxLayout;
    texts->setSpacing(2);
    line.name = parts::heading(QStringLiteral("checkName"));
    line.sentence = parts::sentence(QStringLiteral("checkSentence"));
    texts->addWidget(line.name);
    texts->addWidget(line.sentence);
    row->addLayout(texts, 1);
    line.help = helpButton(helpTopic(kind), {}); // named when there is a language
    row->addWidget(line.help, 0, Qt::AlignTop);
    setHelpTopic(*line.sentence, helpTopic(kind));
    column.addLayout(row);
    m_lines.emplace(kind, line);
}

void ChecksPage::refresh()
{
    const core::Analysis& analysis = result()->analysis;
    const Words words(analysis, units());
    const auto count = [&](core::CheckState state) {
        return static_cast<int>(
            std::count_if(kCheckKinds.begin(), kCheckKinds.end(),
                          [&](CheckKind kind) { return stateOf(analysis.checks, kind) == state; }));
    };
    parts::enlarge(*m_summary, 1.25, true);
    const int fails = count(core::CheckState::fails);
    const int notes = count(core::CheckState::note);
    parts::setSentence(
        *m_summary,
        !analysis.headline ? tr("Without a verdict there are no assumptions to check.")
        : fails > 0
            ? tr("%n check(s) fail: read them before you trust the interval.", nullptr, fails)
        : notes > 0 ? tr("No check fails; %n of them deserve(s) a look.", nullptr, notes)
                    : tr("No check that these runs allow fails."));
    parts::setSentence(*m_power, words.checksPower());
    for (const auto& [kind, line] : m_lines) {
        const core::CheckState state = stateOf(analysis.checks, kind);
        line.mark->show(state, theme());
        parts::enlarge(*line.name, 1.0, true);
        //: the name of a check, and its state
        const QString name = shown(wording::checkName(words.language(), kind));
        line.name->setText(
            tr("%1: %2").arg(name, shown(wording::stateWords(words.language(), state))));
        setHelpAbout(*line.help, name);
        line.sentence->setText(words.check(kind));
    }
    for (PlotView* plot : {m_quantiles, m_residuals, m_spread, m_baseline, m_direction}) {
        plot->setVisible(analysis.headline.has_value());
        plot->setTheme(theme());
        plot->setLocale(units().locale);
    }
    check_plots::fillQuantiles(*m_quantiles, *result(), words);
    check_plots::fillResiduals(*m_residuals, *result(), words);
    check_plots::fillSpread(*m_spread, *result(), words);
    check_plots::fillBaseline(*m_baseline, *result(), words);
    check_plots::fillDirection(*m_direction, *result(), words);
}

} // namespace bothways::app
