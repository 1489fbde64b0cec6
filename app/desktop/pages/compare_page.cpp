// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/compare_page.h"

#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/said.h"
#include "app/desktop/look/words.h"
#include "app/desktop/plots/forest_plot.h"
#include "app/wording/pooled.h"
#include "core/study/units.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace bothways::app {
namespace {

bool hasHeadline(const ComparedStudy& study)
{
    return study.result && study.result->analysis.headline;
}

} // namespace

ComparePage::ComparePage(QWidget* parent) : QWidget(parent)
{
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* column = new QVBoxLayout;
    m_sentence = parts::sentence(QStringLiteral("pooledSentence"));
    m_caveat = parts::sentence(QStringLiteral("pooledCaveat"));
    m_forest = new ForestPlot;
    m_forest->setObjectName(QStringLiteral("comparePlot"));
    m_table = parts::readingTable(QStringLiteral("compareTable"));
    auto* buttons = new QHBoxLayout;
    m_add = new QPushButton;
    m_add->setObjectName(QStringLiteral("addStudy"));
    m_remove = new QPushButton;
    m_remove->setObjectName(QStringLiteral("removeStudy"));
    buttons->addWidget(m_add);
    buttons->addWidget(m_remove);
    buttons->addStretch();
    for (QWidget* widget : std::initializer_list<QWidget*>{m_sentence, m_caveat, m_forest, m_table})
        column->addWidget(widget);
    column->addLayout(buttons);
    column->addStretch();
    outer->addWidget(parts::scrolled(column));
    connect(m_add, &QPushButton::clicked, this, &ComparePage::addAsked);
    connect(m_remove, &QPushButton::clicked, this, [this] {
        if (m_table->currentRow() >= 0)
            emit removeAsked(m_table->currentRow());
    });
    connect(m_table, &QTableWidget::itemSelectionChanged, this,
            [this] { m_remove->setEnabled(!m_table->selectedItems().isEmpty()); });
    refresh();
}

ComparePage::~ComparePage() = default;

void ComparePage::setStudies(std::vector<ComparedStudy> studies)
{
    m_studies = std::move(studies);
    pool();
    refresh();
}

void ComparePage::setUnits(const UnitsShown& units)
{
    m_units = units;
    refresh();
}

void ComparePage::setTheme(const Theme& theme)
{
    m_theme = theme;
    refresh();
}

void ComparePage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange)
        refresh();
    QWidget::changeEvent(event);
}

void ComparePage::pool()
{
    std::vector<core::StudyEffect> effects;
    double confidence = 0.95;
    for (const ComparedStudy& study : m_studies) {
        if (!hasHeadline(study))
            continue;
        const core::Headline& headline = *study.result->analysis.headline;
        if (effects.empty())
            confidence = headline.confidence;
        effects.push_back(core::studyEffectOf(study.name.toStdString(), headline));
    }
    m_pooled = core::pool(effects, confidence);
}

core::AnalysisOptions ComparePage::asked() const
{
    const auto first = std::find_if(m_studies.begin(), m_studies.end(), hasHeadline);
    return first == m_studies.end() ? core::AnalysisOptions() : first->result->analysis.options;
}

QString ComparePage::pooledSentence() const
{
    return shown(wording::pooledSentence(m_units.language, m_pooled, asked().confidence));
}

/// What they say together, and what to keep in mind about it.
QString ComparePage::pooledCaveat() const
{
    const core::AnalysisOptions options = asked();
    const QStringList sentences{
        shown(wording::pooledVerdict(m_units.language, m_pooled, options.confidence,
                                     options.margin_pct)),
        shown(wording::pooledCaution(m_units.language, m_pooled))};
    return sentences.join(u'\n').trimmed();
}

void ComparePage::refresh()
{
    parts::enlarge(*m_sentence, 1.25, true);
    parts::setSentence(*m_sentence, pooledSentence());
    parts::setSentence(*m_caveat, pooledCaveat());
    m_add->setText(tr("&Add a study…"));
    m_remove->setText(tr("&Take it off the list"));
    m_remove->setEnabled(!m_table->selectedItems().isEmpty());
    showForest();
    showTable();
}

void ComparePage::showForest()
{
    m_forest->setVisible(!m_studies.empty());
    m_forest->setTheme(m_theme);
    m_forest->setLocale(m_units.locale);
    const NumberWords numbers(m_units);
    const auto textOf = [&](double effect, double low, double high) {
        const int decimals = NumberWords::decimalsOfRange(low, high);
        //: an effect and its interval
        return tr("%1 (%2)").arg(m_units.percentFromLog(effect, decimals),
                                 numbers.signedRange(low, high, decimals));
    };
    ForestPlot::Content content;
    content.title = tr("Studies side by side");
    content.sentence = m_sentence->text();
    content.margin_pct = asked().margin_pct;
    content.axisLabel = tr("change of consumption with the device, in per cent");
    for (std::size_t i = 0; i < m_studies.size(); ++i) {
        ForestRow row;
        row.name = m_studies[i].name;
        row.key = static_cast<int>(i);
        if (hasHeadline(m_studies[i])) {
            const core::Headline& headline = *m_studies[i].result->analysis.headline;
            row.effect_pct = core::pctFromLog(headline.effect_log);
            row.low_pct = core::pctFromLog(headline.low_log);
            row.high_pct = core::pctFromLog(headline.high_log);
            row.text = textOf(headline.effect_log, headline.low_log, headline.high_log);
            row.words = tr("%1: %2").arg(row.name, row.text) + u'\n' +
                        shown(wording::classWords(m_units.language,
                                                  m_studies[i].result->analysis.verdict.cls));
        } else {
            row.text = shown(wording::classWords(m_units.language, core::VerdictClass::none));
        }
        content.rows.push_back(row);
    }
    const auto addTogether = [&](const char* id, const QString& name, const auto& together) {
        ForestRow row;
        row.id = QLatin1String(id);
        row.name = name;
        row.kind = ForestRow::Kind::pooled;
        row.key = -1;
        row.effect_pct = core::pctFromLog(together.effect_log);
        row.low_pct = core::pctFromLog(together.low_log);
        row.high_pct = core::pctFromLog(together.high_log);
        row.text = textOf(together.effect_log, together.low_log, together.high_log);
        row.words = tr("%1: %2").arg(row.name, row.text);
        content.rows.push_back(row);
    };
    if (m_pooled && m_pooled->common)
        addTogether("common", shown(wording::commonEffectName(m_units.language)),
                    *m_pooled->common);
    if (m_pooled)
        addTogether("pooled", shown(wording::meanEffectName(m_units.language, *m_pooled)),
                    *m_pooled);
    m_forest->show(content);
}

void ComparePage::showTable()
{
    m_table->setVisible(!m_studies.empty());
    m_table->clear();
    m_table->setColumnCount(8);
    m_table->setRowCount(static_cast<int>(m_studies.size()));
    m_table->setHorizontalHeaderLabels({tr("study"), tr("baseline"), tr("device"), tr("pairs"),
                                        tr("effect"), tr("interval"), tr("p"), tr("verdict")});
    m_table->setAccessibleName(tr("Studies side by side in numbers"));
    const NumberWords numbers(m_units);
    for (int row = 0; row < static_cast<int>(m_studies.size()); ++row) {
        const ComparedStudy& study = m_studies[static_cast<std::size_t>(row)];
        parts::setCell(*m_table, row, 0, study.name);
        if (!study.result)
            continue;
        const core::Analysis& analysis = study.result->analysis;
        parts::setCell(*m_table, row, 1, nameShown(analysis.baseline));
        parts::setCell(*m_table, row, 2, nameShown(analysis.device));
        parts::setCell(*m_table, row, 3,
                       numbers.fixed(static_cast<double>(analysis.pairs.size()), 0), true);
        parts::setCell(*m_table, row, 7,
                       shown(wording::classWords(m_units.language, analysis.verdict.cls)));
        if (!analysis.headline) {
            for (const int column : {4, 5, 6})
                parts::setCell(*m_table, row, column, tr("–"), true);
            continue;
        }
        const core::Headline& headline = *analysis.headline;
        const int decimals = NumberWords::decimalsOfRange(headline.low_log, headline.high_log);
        parts::setCell(*m_table, row, 4, m_units.percentFromLog(headline.effect_log, decimals),
                       true);
        parts::setCell(*m_table, row, 5,
                       numbers.signedRange(headline.low_log, headline.high_log, decimals), true);
        parts::setCell(*m_table, row, 6, numbers.pAlone(headline.p), true);
    }
    parts::fitToRows(*m_table);
}

} // namespace bothways::app
