// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/forest_plot.h"

#include "app/desktop/plots/plot_parts.h"

#include <cstdlib>

namespace bothways::app {
namespace {

constexpr double kRowHeights = 2.1; // of a line of text
constexpr int kLeastPlot = 340;     // px that the picture keeps beside names and numbers
constexpr double kEndHeight = 0.16; // half the height of the ends of a wide interval

constexpr qsizetype kLongName = 24; // characters; a longer one takes two lines

/// Broken at the blank that is nearest to its middle, so that the picture keeps its width.
QString inTwoLines(QString name)
{
    if (name.size() <= kLongName)
        return name;
    qsizetype best = -1;
    for (qsizetype at = name.indexOf(QLatin1Char(' ')); at >= 0;
         at = name.indexOf(QLatin1Char(' '), at + 1))
        if (best < 0 || std::abs(2 * at - name.size()) < std::abs(2 * best - name.size()))
            best = at;
    if (best >= 0)
        name[best] = QLatin1Char('\n');
    return name;
}

QVariant cell(const std::optional<double>& value)
{
    return value ? QVariant(*value) : QVariant();
}

} // namespace

void ForestPlot::show(const Content& content)
{
    clearPicture();
    if (std::ranges::none_of(content.rows,
                             [](const ForestRow& row) { return row.effect_pct.has_value(); }))
        setNothing(tr("There is nothing to compare yet."));
    m_rows = std::max(1, static_cast<int>(content.rows.size()));
    QList<double> values{0.0};
    if (content.margin_pct) {
        values << -*content.margin_pct << *content.margin_pct;
        parts::addColumnBand(*this, -*content.margin_pct, *content.margin_pct, theme().margin);
    }
    parts::addUpright(*this, 0.0, QPen(theme().ink, 1.5));
    QStringList names;
    QStringList texts;
    std::vector<Reading> readings;
    PlotNumbers table({QStringLiteral("row"), QStringLiteral("effect_pct"),
                       QStringLiteral("low_pct"), QStringLiteral("high_pct"),
                       QStringLiteral("wide_low_pct"), QStringLiteral("wide_high_pct")});
    double y = 0.0;
    for (const ForestRow& row : content.rows) {
        names << inTwoLines(row.name);
        texts << row.text;
        drawRow(row, y);
        for (const auto& value :
             {row.effect_pct, row.low_pct, row.high_pct, row.wide_low_pct, row.wide_high_pct})
            if (value)
                values << *value;
        if (row.effect_pct)
            readings.push_back({nullptr, *row.effect_pct, y, row.words, row.key});
        table.add({row.id.isEmpty() ? row.name : row.id, cell(row.effect_pct), cell(row.low_pct),
                   cell(row.high_pct), cell(row.wide_low_pct), cell(row.wide_high_pct)});
        y -= 1.0;
    }
    parts::setRows(*this, names);
    parts::setRightRows(*this, texts);
    m_besideWidth = widestOf(names) + widestOf(texts) + kLeastPlot;
    showNumbersBeside();
    xAxis->setTicker(QSharedPointer<NumberTicker>::create(true));
    xAxis->setLabel(content.axisLabel);
    setWhole(xAxis, parts::rangeAround(values));
    setReadings(std::move(readings));
    setNumbers(std::move(table));
    setWords(content.title, content.sentence);
    updateGeometry();
    setMinimumHeight(sizeHint().height());
    finish();
    yAxis->setTickLabelColor(theme().ink);
    yAxis2->setTickLabelColor(theme().ink);
    yAxis->setBasePen(Qt::NoPen);
    yAxis2->setBasePen(Qt::NoPen);
    yAxis->setTickPen(Qt::NoPen);
    yAxis2->setTickPen(Qt::NoPen);
}

void ForestPlot::drawRow(const ForestRow& row, double y)
{
    if (!row.effect_pct)
        return;
    const bool strong =
        row.kind == ForestRow::Kind::headline || row.kind == ForestRow::Kind::pooled;
    const QColor colour = row.kind == ForestRow::Kind::setting ? theme().device : theme().ink;
    QPen line(colour, strong ? 5.0 : 2.5);
    line.setCapStyle(Qt::FlatCap);
    if (row.wide_low_pct && row.wide_high_pct) {
        const QPen thin(colour, 1.0);
        parts::addLine(*this, {*row.wide_low_pct, y}, {*row.wide_high_pct, y}, thin);
        for (const double end : {*row.wide_low_pct, *row.wide_high_pct})
            parts::addLine(*this, {end, y - kEndHeight}, {end, y + kEndHeight}, thin);
    }
    if (row.low_pct && row.high_pct)
        parts::addLine(*this, {*row.low_pct, y}, {*row.high_pct, y}, line);
    const auto shape = strong                                 ? QCPScatterStyle::ssDiamond
                       : row.kind == ForestRow::Kind::setting ? QCPScatterStyle::ssSquare
                                                              : QCPScatterStyle::ssCircle;
    const double size = strong ? 15.0 : 9.0;
    if (row.differs)
        parts::addMarks(
            *this, {{*row.effect_pct, y}},
            QCPScatterStyle(shape, QPen(theme().fails, 2.0), QBrush(theme().paper), size + 1.0));
    else
        parts::addMarks(*this, {{*row.effect_pct, y}},
                        QCPScatterStyle(shape, QPen(theme().paper, 1.5),
                                        QBrush(strong ? theme().device : colour), size));
}

int ForestPlot::widestOf(const QStringList& texts) const
{
    int widest = 0;
    for (const QString& text : texts)
        widest = std::max(widest, fontMetrics().size(0, text).width());
    return widest;
}

void ForestPlot::showNumbersBeside()
{
    yAxis2->setVisible(width() >= m_besideWidth);
}

void ForestPlot::resizeEvent(QResizeEvent* event)
{
    showNumbersBeside();
    PlotView::resizeEvent(event);
}

QSize ForestPlot::sizeHint() const
{
    const double line = fontMetrics().height();
    return {420, static_cast<int>(line * (kRowHeights * m_rows + 3.6)) + 24};
}

} // namespace bothways::app
