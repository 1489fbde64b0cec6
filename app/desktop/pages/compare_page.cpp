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

namespace bothways::app {
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
    std::vector<NamedAnswer> answers;
    for (const ComparedStudy& study : m_studies)
        answers.push_back({study.name.toStdString(), study.result});
    m_several = together(answers);
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

QString ComparePage::pooledSentence() const
{
    return shown(wording::pooledSentence(m_units.language, m_several.pooled, m_several.confidence));
}

/// What they say together, and what to keep in mind about it.
QString ComparePage::pooledCaveat() const
{
    const QStringList sentences{
        shown(wording::pooledVerdict(m_units.language, m_several.pooled, m_several.confidence,
                                     m_several.margin_pct)),
        shown(wording::pooledCaution(m_units.language, m_several.pooled))};
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
    content.margin_pct = m_several.margin_pct;
    content.axisLabel = tr("change of consumption with the device, in per cent");
    for (std::size_t i = 0; i < m_several.studies.size(); ++i) {
        const StudyRow& study = m_several.studies[i];
        ForestRow row;
        row.name = m_studies[i].name;
        row.key = static_cast<int>(i);
        if (study.effect) {
            const core::EffectRange range = core::rangeOf(*study.effect, m_several.confidence);
            row.effect_pct = core::pctFromLog(study.effect->effect_log);
            row.low_pct = core::pctFromLog(range.low_log);
            row.high_pct = core::pctFromLog(range.high_log);
            row.text = textOf(study.effect->effect_log, range.low_log, range.high_log);
            row.words = tr("%1: %2").arg(row.name, row.text) + u'\n' +
                        shown(wording::classWords(m_units.language, study.cls));
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
    if (m_several.pooled && m_several.pooled->common)
        addTogether("common", shown(wording::commonEffectName(m_units.language)),
                    *m_several.pooled->common);
    if (m_several.pooled)
        addTogether("pooled", shown(wording::meanEffectName(m_units.language, *m_several.pooled)),
                    *m_several.pooled);
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
        const StudyRow& study = m_several.studies[static_cast<std::size_t>(row)];
        const core::Analysis& analysis = m_studies[static_cast<std::size_t>(row)].result->analysis;
        parts::setCell(*m_table, row, 0, m_studies[static_cast<std::size_t>(row)].name);
        parts::setCell(*m_table, row, 1, nameShown(study.baseline));
        parts::setCell(*m_table, row, 2, nameShown(study.device));
        parts::setCell(*m_table, row, 3,
                       numbers.fixed(static_cast<double>(analysis.pairs.size()), 0), true);
        parts::setCell(*m_table, row, 7, shown(wording::classWords(m_units.language, study.cls)));
        if (!study.effect) {
            for (const int column : {4, 5, 6})
                parts::setCell(*m_table, row, column, tr("–"), true);
            continue;
        }
        const auto [low, high] = core::rangeOf(*study.effect, m_several.confidence);
        const int decimals = NumberWords::decimalsOfRange(low, high);
        parts::setCell(*m_table, row, 4, m_units.percentFromLog(study.effect->effect_log, decimals),
                       true);
        parts::setCell(*m_table, row, 5, numbers.signedRange(low, high, decimals), true);
        parts::setCell(*m_table, row, 6, numbers.pAlone(analysis.headline->p), true);
    }
    parts::fitToRows(*m_table);
}

} // namespace bothways::app
