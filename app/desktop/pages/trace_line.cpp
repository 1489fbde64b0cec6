// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/pages/trace_plot.h"

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

/// Fewer samples a column than this are drawn one by one.
constexpr std::size_t kSamplesPerColumn = 4;
/// Far outside of any screen, yet small enough for the rasterizer.
constexpr double kFarPixel = 1e5;

double clampedPixel(double pixel)
{
    return std::isfinite(pixel) ? std::clamp(pixel, -kFarPixel, kFarPixel)
                                : (pixel < 0.0 ? -kFarPixel : kFarPixel);
}

} // namespace

TraceLine::TraceLine(QCPAxis* keyAxis, QCPAxis* valueAxis,
                     std::shared_ptr<const TraceSeries> series)
    : QCPAbstractPlottable(keyAxis, valueAxis), m_series(std::move(series))
{
    setSelectable(QCP::stNone);
}

double TraceLine::selectTest(const QPointF&, bool, QVariant*) const
{
    return -1.0; // read off by the plot, never selected
}

QCPRange TraceLine::getKeyRange(bool& foundRange, QCP::SignDomain) const
{
    const auto places = m_series->places();
    foundRange = !places.empty();
    return foundRange ? QCPRange(places.front(), places.back()) : QCPRange();
}

QCPRange TraceLine::getValueRange(bool& foundRange, QCP::SignDomain,
                                  const QCPRange& inKeyRange) const
{
    core::SampleRange range{0, m_series->values().size()};
    if (inKeyRange != QCPRange())
        range = core::samplesBetween(m_series->places(), inKeyRange.lower, inKeyRange.upper);
    const auto extent = m_series->pyramid().over(range.first, range.last);
    foundRange = extent.has_value();
    return foundRange ? QCPRange(extent->minimum, extent->maximum) : QCPRange();
}

void TraceLine::draw(QCPPainter* painter)
{
    if (!mKeyAxis || !mValueAxis || m_series->values().empty())
        return;
    const QCPRange range = mKeyAxis->range();
    const auto columns = static_cast<std::size_t>(std::max(1, mKeyAxis->axisRect()->width()));
    core::SampleRange seen = core::samplesBetween(m_series->places(), range.lower, range.upper);
    const bool dense = seen.last - seen.first > kSamplesPerColumn * columns;
    applyDefaultAntialiasingHint(painter);
    painter->setPen(mPen);
    painter->setBrush(Qt::NoBrush);
    if (dense) {
        drawColumns(painter, range, columns);
        return;
    }
    // one sample more on both sides, so that the line enters and leaves the picture
    if (seen.first > 0)
        --seen.first;
    seen.last = std::min(seen.last + 1, m_series->values().size());
    drawSamples(painter, seen);
}

void TraceLine::drawSamples(QCPPainter* painter, core::SampleRange seen) const
{
    const auto places = m_series->places();
    const auto values = m_series->values();
    QPolygonF line;
    const auto flush = [&] {
        if (line.size() == 1)
            painter->drawEllipse(line.front(), 1.0, 1.0);
        else if (line.size() > 1)
            painter->drawPolyline(line);
        line.clear();
    };
    for (std::size_t i = seen.first; i < seen.last; ++i) {
        if (std::isnan(values[i]) || m_series->gapBefore(i))
            flush();
        if (!std::isnan(values[i]))
            line << QPointF(clampedPixel(mKeyAxis->coordToPixel(places[i])),
                            clampedPixel(mValueAxis->coordToPixel(values[i])));
    }
    flush();
}

void TraceLine::drawColumns(QCPPainter* painter, const QCPRange& range, std::size_t count) const
{
    const auto values = m_series->values();
    const double left = mKeyAxis->axisRect()->left();
    QPolygonF line;
    line.reserve(static_cast<qsizetype>(4 * count));
    const auto add = [&](double x, double value) {
        if (std::isnan(value))
            return;
        const QPointF point(x, clampedPixel(mValueAxis->coordToPixel(value)));
        if (line.isEmpty() || line.back() != point)
            line << point;
    };
    for (const core::PlacedColumn& column : core::columnsOf(m_series->places(), m_series->pyramid(),
                                                            range.lower, range.upper, count)) {
        if (m_series->gapBefore(column.what.first)) {
            painter->drawPolyline(line);
            line.clear();
        }
        const double x = left + static_cast<double>(column.column) + 0.5;
        add(x, values[column.what.first]);
        add(x, column.what.minimum);
        add(x, column.what.maximum);
        add(x, values[column.what.last - 1]);
    }
    painter->drawPolyline(line);
}

void TraceLine::drawLegendIcon(QCPPainter* painter, const QRectF& rect) const
{
    painter->setPen(mPen);
    painter->drawLine(QLineF(rect.left(), rect.center().y(), rect.right(), rect.center().y()));
}

} // namespace bothways::app
