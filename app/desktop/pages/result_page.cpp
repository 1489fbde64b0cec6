// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/result_page.h"

#include "app/desktop/look/help_topics.h"
#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/state_marks.h"
#include "app/desktop/plots/result_plots.h"

#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QToolButton>
#include <QVBoxLayout>

namespace bothways::app {
namespace {

constexpr double kSmallestMargin_pct = 0.01;
constexpr double kLargestMargin_pct = 99.0;
constexpr double kLowestConfidence_pct = 50.1;
constexpr double kHighestConfidence_pct = 99.9;

} // namespace

ResultPage::ResultPage(QWidget* parent) : ResultView(parent)
{
    auto* column = new QVBoxLayout;
    column->addWidget(makeVerdict());
    column->addWidget(makeChoices());
    m_effect = new EffectPlot;
    m_effect->setObjectName(QStringLiteral("effectPlot"));
    m_effect->setMinimumHeight(220);
    column->addWidget(m_effect, 1);
    m_day = new DayPlot;
    m_day->setObjectName(QStringLiteral("dayPlot"));
    m_day->setMinimumHeight(280);
    column->addWidget(m_day, 3);
    m_tally = parts::sentence(QStringLiteral("tally"));
    column->addWidget(m_tally);
    m_detectable = parts::sentence(QStringLiteral("detectable"));
    column->addWidget(m_detectable);
    connect(m_day, &PlotView::readingActivated, this, &ResultView::runActivated);
    setContent(parts::scrolled(column));
}

ResultPage::~ResultPage() = default;

QWidget* ResultPage::makeVerdict()
{
    auto* panel = new QWidget;
    auto* row = new QHBoxLayout(panel);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(14);
    m_mark = new VerdictMark;
    row->addWidget(m_mark, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout;
    column->setSpacing(6);
    m_verdict = parts::sentence(QStringLiteral("verdict"));
    m_inUnits = parts::sentence(QStringLiteral("inUnits"));
    m_whatItWouldTake = parts::sentence(QStringLiteral("whatItWouldTake"));
    m_qualifiers = new QVBoxLayout;
    m_qualifiers->setSpacing(4);
    for (QLabel* label : {m_verdict, m_inUnits, m_whatItWouldTake})
        column->addWidget(label);
    column->addLayout(m_qualifiers);
    row->addLayout(column, 1);
    m_help = helpButton({}, tr("Verdict"));
    row->addWidget(m_help, 0, Qt::AlignTop);
    return panel;
}

QWidget* ResultPage::makeChoices()
{
    auto* panel = new QWidget;
    auto* row = new QHBoxLayout(panel);
    row->setContentsMargins(0, 0, 0, 0);
    const auto makeBox = [&](const char* name, double low, double high, double step, int decimals) {
        auto* box = new QDoubleSpinBox;
        box->setObjectName(QLatin1String(name));
        box->setRange(low, high);
        box->setSingleStep(step);
        box->setDecimals(decimals);
        box->setSuffix(QStringLiteral("\u00a0%"));
        return box;
    };
    m_margin = makeBox("margin", kSmallestMargin_pct, kLargestMargin_pct, 0.1, 2);
    m_confidence = makeBox("confidence", kLowestConfidence_pct, kHighestConfidence_pct, 1.0, 1);
    m_marginLabel = new QLabel;
    m_marginLabel->setBuddy(m_margin);
    m_confidenceLabel = new QLabel;
    m_confidenceLabel->setBuddy(m_confidence);
    row->addWidget(m_marginLabel);
    row->addWidget(m_margin);
    row->addSpacing(18);
    row->addWidget(m_confidenceLabel);
    row->addWidget(m_confidence);
    row->addStretch();
    connect(m_margin, &QDoubleSpinBox::valueChanged, this, &ResultPage::marginAsked);
    connect(m_confidence, &QDoubleSpinBox::valueChanged, this,
            [this](double percent) { emit confidenceAsked(percent / 100.0); });
    return panel;
}

void ResultPage::refresh()
{
    const core::Analysis& analysis = result()->analysis;
    const Words words(analysis, units());
    m_mark->show(analysis.verdict.cls, theme());
    parts::enlarge(*m_verdict, 1.45, true);
    parts::setSentence(*m_verdict, words.verdict());
    setHelpTopic(*m_verdict, helpTopic(analysis.verdict.cls));
    setHelpTopic(*m_help, helpTopic(analysis.verdict.cls));
    parts::setSentence(*m_inUnits, words.inUnits());
    parts::setSentence(*m_whatItWouldTake, words.whatItWouldTake());
    showQualifiers();

    m_marginLabel->setText(tr("&Margin: I care about"));
    m_confidenceLabel->setText(tr("&Confidence"));
    m_margin->setAccessibleName(tr("Margin, the smallest effect that you care about, in per cent"));
    m_confidence->setAccessibleName(tr("Confidence of the interval, in per cent"));
    const QSignalBlocker quietMargin(m_margin);
    const QSignalBlocker quietConfidence(m_confidence);
    for (QDoubleSpinBox* box : {m_margin, m_confidence})
        box->setLocale(units().locale);
    m_margin->setValue(analysis.options.margin_pct);
    m_confidence->setValue(100.0 * analysis.options.confidence);

    m_effect->setVisible(analysis.headline.has_value());
    m_effect->setTheme(theme());
    m_effect->setLocale(units().locale);
    m_effect->show(analysis, words);
    m_day->setTheme(theme());
    m_day->setLocale(units().locale);
    m_day->show(*result(), words);
    QStringList below{words.tally()};
    for (const core::Note& note : analysis.notes)
        below << words.note(note);
    parts::setSentence(*m_tally, below.join(u'\n'));
    parts::setSentence(*m_detectable, analysis.detectable ? words.detectable() : QString());
}

void ResultPage::showQualifiers()
{
    parts::clear(*m_qualifiers);
    const core::Analysis& analysis = result()->analysis;
    const Words words(analysis, units());
    if (!result()->spoiled.empty())
        m_qualifiers->addWidget(
            reservation(QStringLiteral("spoiledRuns"),
                        shown(wording::spoiledRunsSentence(words.language(), result()->spoiled)),
                        QStringLiteral("rules"), tr("Spoiled runs count")));
    for (const core::Qualifier qualifier : analysis.verdict.qualifiers)
        m_qualifiers->addWidget(reservation(
            QStringLiteral("qualifier"), words.qualifier(qualifier), helpTopic(qualifier),
            shown(wording::qualifierName(words.language(), qualifier))));
}

/// A mark, the sentence, and the way to the handbook.
QWidget* ResultPage::reservation(const QString& objectName, const QString& sentence,
                                 const QString& topic, const QString& name)
{
    auto* row = new QWidget;
    row->setObjectName(objectName);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* mark = new CheckMark;
    mark->show(core::CheckState::note, theme());
    layout->addWidget(mark, 0, Qt::AlignTop);
    QLabel* text = parts::sentence(objectName + QStringLiteral("Text"));
    parts::setSentence(*text, sentence);
    layout->addWidget(text, 1);
    layout->addWidget(helpButton(topic, name), 0, Qt::AlignTop);
    setHelpTopic(*row, topic);
    return row;
}

} // namespace bothways::app
