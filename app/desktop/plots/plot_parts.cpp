// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/plot_parts.h"

#include <algorithm>
#include <cmath>

namespace bothways::app::parts {
namespace {

QCPAxisRect* rectOf(PlotView& plot, QCPAxisRect* rect)
{
    return rect ? rect : plot.axisRect();
}

void bind(QCPItemPosition* position, QCPAxisRect* rect)
{
    position->setAxisRect(rect);
    position->setAxes(rect->axis(QCPAxis::atBottom), rect->axis(QCPAxis::atLeft));
}

template <class Item>
Item* addItem(PlotView& plot, QCPAxisRect* rect, const char* layer)
{
    auto* item = new Item(&plot);
    item->setClipAxisRect(rect);
    item->setClipToAxisRect(true);
    item->setSelectable(false);
    item->setLayer(QLatin1String(layer));
    return item;
}

void addBand(PlotView& plot, QCPAxisRect* rect, const QColor& fill, const QPointF& topLeft,
             const QPointF& bottomRight, bool upright)
{
    auto* band = addItem<QCPItemRect>(plot, rect, "background");
    for (QCPItemPosition* position : {band->topLeft, band->bottomRight}) {
        bind(position, rect);
        position->setTypeX(upright ? QCPItemPosition::ptPlotCoords
                                   : QCPItemPosition::ptAxisRectRatio);
        position->setTypeY(upright ? QCPItemPosition::ptAxisRectRatio
                                   : QCPItemPosition::ptPlotCoords);
    }
    band->topLeft->setCoords(topLeft);
    band->bottomRight->setCoords(bottomRight);
    band->setPen(Qt::NoPen);
    band->setBrush(fill);
}

QCPItemStraightLine* addStraight(PlotView& plot, QCPAxisRect* rect, const QPointF& a,
                                 const QPointF& b, const QPen& pen)
{
    auto* line = addItem<QCPItemStraightLine>(plot, rect, "grid");
    bind(line->point1, rect);
    bind(line->point2, rect);
    line->point1->setCoords(a);
    line->point2->setCoords(b);
    line->setPen(pen);
    return line;
}

} // namespace

void addColumnBand(PlotView& plot, double low, double high, const QColor& fill, QCPAxisRect* rect)
{
    addBand(plot, rectOf(plot, rect), fill, {low, 0.0}, {high, 1.0}, true);
}

void addRowBand(PlotView& plot, double low, double high, const QColor& fill, QCPAxisRect* rect)
{
    addBand(plot, rectOf(plot, rect), fill, {0.0, high}, {1.0, low}, false);
}

QCPItemStraightLine* addUpright(PlotView& plot, double x, const QPen& pen, QCPAxisRect* rect)
{
    return addStraight(plot, rectOf(plot, rect), {x, 0.0}, {x, 1.0}, pen);
}

void addLevel(PlotView& plot, double y, const QPen& pen, QCPAxisRect* rect)
{
    addStraight(plot, rectOf(plot, rect), {0.0, y}, {1.0, y}, pen);
}

void addLine(PlotView& plot, const QPointF& from, const QPointF& to, const QPen& pen,
             QCPAxisRect* rect)
{
    auto* line = addItem<QCPItemLine>(plot, rectOf(plot, rect), "main");
    bind(line->start, rectOf(plot, rect));
    bind(line->end, rectOf(plot, rect));
    line->start->setCoords(from);
    line->end->setCoords(to);
    line->setPen(pen);
}

void addMarks(PlotView& plot, const QList<QPointF>& points, const QCPScatterStyle& style,
              QCPAxisRect* rect)
{
    rect = rectOf(plot, rect);
    QCPGraph* graph = plot.addGraph(rect->axis(QCPAxis::atBottom), rect->axis(QCPAxis::atLeft));
    graph->setLineStyle(QCPGraph::lsNone);
    graph->setScatterStyle(style);
    graph->setSelectable(QCP::stNone);
    graph->setLayer(QStringLiteral("axes")); // above bars and lines
    for (const QPointF& point : points)
        graph->addData(point.x(), point.y());
}

void addCurve(PlotView& plot, const QList<QPointF>& points, const QPen& pen, QCPAxisRect* rect)
{
    rect = rectOf(plot, rect);
    QCPGraph* graph = plot.addGraph(rect->axis(QCPAxis::atBottom), rect->axis(QCPAxis::atLeft));
    graph->setPen(pen);
    graph->setSelectable(QCP::stNone);
    for (const QPointF& point : points)
        graph->addData(point.x(), point.y());
}

QCPItemText* addText(PlotView& plot, const QPointF& at, const QString& text, const QColor& colour,
                     Qt::Alignment alignment, QCPAxisRect* rect)
{
    rect = rectOf(plot, rect);
    auto* item = addItem<QCPItemText>(plot, rect, "axes");
    bind(item->position, rect);
    item->position->setCoords(at);
    item->setText(text);
    item->setColor(colour);
    item->setFont(plot.font());
    item->setPositionAlignment(alignment);
    item->setPadding(QMargins(4, 2, 4, 2));
    return item;
}

QCPItemText* addCornerText(PlotView& plot, const QPointF& share, const QString& text,
                           const QColor& colour, Qt::Alignment alignment, QCPAxisRect* rect)
{
    QCPItemText* item = addText(plot, share, text, colour, alignment, rect);
    item->position->setType(QCPItemPosition::ptAxisRectRatio);
    item->position->setCoords(share);
    return item;
}

void setLegend(PlotView& plot, const QList<LegendEntry>& entries)
{
    QCPLegend* legend = plot.legend;
    if (legend->layout() == plot.axisRect()->insetLayout()) {
        plot.axisRect()->insetLayout()->take(legend);
        auto* row = new QCPLayoutGrid;
        row->addElement(0, 0, legend);
        row->addElement(0, 1, new QCPLayoutElement(&plot)); // takes the space that is left
        row->setColumnStretchFactor(0, 0.001);
        plot.plotLayout()->insertRow(0);
        plot.plotLayout()->addElement(0, 0, row);
        plot.plotLayout()->setRowStretchFactor(0, 0.001);
        legend->setFillOrder(QCPLegend::foColumnsFirst);
        legend->setColumnSpacing(14);
        legend->setIconSize(22, 14);
        legend->setMargins(QMargins(6, 4, 6, 0));
    }
    legend->clearItems();
    legend->setVisible(!entries.isEmpty());
    legend->setBorderPen(Qt::NoPen);
    legend->setBrush(Qt::NoBrush);
    legend->setFont(plot.font());
    legend->setTextColor(plot.theme().ink);
    legend->setSelectableParts(QCPLegend::spNone);
    for (const LegendEntry& entry : entries) {
        QCPGraph* graph = plot.addGraph();
        graph->setName(entry.words);
        graph->setPen(entry.pen);
        graph->setLineStyle(entry.pen.style() == Qt::NoPen ? QCPGraph::lsNone : QCPGraph::lsLine);
        graph->setScatterStyle(entry.mark);
        graph->addToLegend();
    }
}

namespace {

/// The words in lines of no more than `room` pixels, where they can be parted.
QString inLines(const QString& text, const QFontMetrics& letters, int room)
{
    QString lines;
    QString line;
    for (const QString& word : text.split(u' ', Qt::SkipEmptyParts)) {
        const QString longer = line.isEmpty() ? word : line + u' ' + word;
        if (!line.isEmpty() && letters.horizontalAdvance(longer) > room) {
            lines += line + u'\n';
            line = word;
        } else {
            line = longer;
        }
    }
    return lines + line;
}

void fitLegend(PlotView& plot)
{
    if (!plot.legend)
        return; // a plot with a layout of its own has none
    QCPLegend& legend = *plot.legend;
    if (!legend.visible() || legend.itemCount() == 0 ||
        legend.fillOrder() != QCPLegend::foColumnsFirst)
        return;
    const QFontMetrics letters(legend.font());
    const int beside = legend.iconSize().width() + legend.iconTextPadding();
    const auto widthWith = [&](int columns) {
        int width = legend.margins().left() + legend.margins().right() +
                    (columns - 1) * legend.columnSpacing();
        for (int column = 0; column < columns; ++column) {
            int widest = 0;
            for (int i = column; i < legend.itemCount(); i += columns)
                if (auto* item = qobject_cast<QCPPlottableLegendItem*>(legend.item(i)))
                    widest = std::max(
                        widest, beside + letters.horizontalAdvance(item->plottable()->name()));
            width += widest;
        }
        return width;
    };
    int columns = legend.itemCount();
    while (columns > 1 && widthWith(columns) > plot.width())
        --columns;
    if (legend.wrap() == columns && legend.columnCount() <= columns)
        return;
    legend.setWrap(columns);
    legend.setFillOrder(QCPLegend::foColumnsFirst); // arranges them anew
}

} // namespace

void fitTexts(PlotView& plot)
{
    for (QCPAxisRect* rect : plot.axisRects()) {
        const int room = plot.width() - rect->margins().left() - rect->margins().right();
        for (QCPAxis* axis : rect->axes(QCPAxis::atBottom)) {
            const QString whole = axis->label().replace(u'\n', u' ');
            const QString fitted = inLines(whole, QFontMetrics(axis->labelFont()), room);
            if (fitted != axis->label())
                axis->setLabel(fitted);
        }
    }
    fitLegend(plot);
}

QCPRange rangeAround(const QList<double>& values, double share)
{
    double low = 0.0;
    double high = 0.0;
    bool first = true;
    for (const double value : values) {
        if (!std::isfinite(value))
            continue;
        low = first ? value : std::min(low, value);
        high = first ? value : std::max(high, value);
        first = false;
    }
    const double least = std::max(std::abs(low) * 1e-6, 1e-9);
    if (high - low < least) {
        low -= std::max(least, std::abs(low) * 0.01 + 1e-3);
        high += std::max(least, std::abs(high) * 0.01 + 1e-3);
    }
    const double air = share * (high - low);
    return {low - air, high + air};
}

namespace {

void setRowTicks(PlotView& plot, QCPAxis* axis, const QStringList& names)
{
    QSharedPointer<QCPAxisTickerText> ticker(new QCPAxisTickerText);
    for (qsizetype i = 0; i < names.size(); ++i)
        ticker->addTick(-static_cast<double>(i), names[i]);
    axis->setTicker(ticker);
    plot.setWhole(axis, QCPRange(-static_cast<double>(names.size()) + 0.4, 0.6));
    axis->grid()->setVisible(false);
    axis->setTicks(true);
    axis->setTickLength(0, 0);
}

} // namespace

void setRows(PlotView& plot, const QStringList& names)
{
    setRowTicks(plot, plot.yAxis, names);
    plot.axisRect()->setRangeZoom(Qt::Horizontal);
    plot.axisRect()->setRangeDrag(Qt::Horizontal);
}

void setRightRows(PlotView& plot, const QStringList& texts)
{
    plot.yAxis2->setVisible(true);
    plot.yAxis2->setTickLabels(true);
    setRowTicks(plot, plot.yAxis2, texts);
}

} // namespace bothways::app::parts
