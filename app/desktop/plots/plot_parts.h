// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/plots/plot_view.h"

#include <QList>
#include <QPointF>

/// The few things that every picture is made of. All draw on the bottom and left axis of `rect`
/// (the first rect when it is null) and stay inside it.
namespace bothways::app::parts {

/// A shaded rectangle behind the data, from `low` to `high` on the bottom axis, over the full
/// height.
void addColumnBand(PlotView& plot, double low, double high, const QColor& fill,
                   QCPAxisRect* rect = nullptr);
/// The same lying: from `low` to `high` on the left axis.
void addRowBand(PlotView& plot, double low, double high, const QColor& fill,
                QCPAxisRect* rect = nullptr);
/// A line over the full height at `x`, or the full width at `y`.
QCPItemStraightLine* addUpright(PlotView& plot, double x, const QPen& pen,
                                QCPAxisRect* rect = nullptr);
void addLevel(PlotView& plot, double y, const QPen& pen, QCPAxisRect* rect = nullptr);
/// A line from one point to another.
void addLine(PlotView& plot, const QPointF& from, const QPointF& to, const QPen& pen,
             QCPAxisRect* rect = nullptr);
/// Marks at points, in one style.
void addMarks(PlotView& plot, const QList<QPointF>& points, const QCPScatterStyle& style,
              QCPAxisRect* rect = nullptr);
/// Points joined by a line.
void addCurve(PlotView& plot, const QList<QPointF>& points, const QPen& pen,
              QCPAxisRect* rect = nullptr);
/// Text at a point of the axes; `alignment` is the side of the text that touches the point.
QCPItemText* addText(PlotView& plot, const QPointF& at, const QString& text, const QColor& colour,
                     Qt::Alignment alignment, QCPAxisRect* rect = nullptr);
/// Text at a share of the rect: (0, 0) its upper left corner, (1, 1) its lower right one.
QCPItemText* addCornerText(PlotView& plot, const QPointF& share, const QString& text,
                           const QColor& colour, Qt::Alignment alignment,
                           QCPAxisRect* rect = nullptr);

/// A line of legend above the picture: what each mark is. Call anew after clearPicture().
struct LegendEntry {
    QString words;
    QPen pen = Qt::NoPen;
    QCPScatterStyle mark = QCPScatterStyle(QCPScatterStyle::ssNone);
};
void setLegend(PlotView& plot, const QList<LegendEntry>& entries);

/// Labels of the lower axes in as many lines, the legend in as many columns, as there is room for.
/// Every picture does so before it is drawn.
void fitTexts(PlotView& plot);

/// A range around all values, with `share` of it as air on both sides; never empty.
[[nodiscard]] QCPRange rangeAround(const QList<double>& values, double share = 0.08);

/// Names in place of numbers on the left axis: row 0 on top.
void setRows(PlotView& plot, const QStringList& names);
/// The same on the right axis, for numbers beside the rows.
void setRightRows(PlotView& plot, const QStringList& texts);

} // namespace bothways::app::parts
