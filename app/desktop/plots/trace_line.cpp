// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/trace_plot.h"

#include <algorithm>
#include <cmath>
#include <optional>

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

/// A column of the picture, as heights in pixels (downwards).
struct ColumnPixels {
    int column;
    double first, last, minimum, maximum;

    [[nodiscard]] double top() const { return std::min(minimum, maximum); }
    [[nodiscard]] double bottom() const { return std::max(minimum, maximum); }
    [[nodiscard]] bool covers(double y) const { return y >= top() && y <= bottom(); }
    /// Is the line from the column before to this one hidden by both? Then an upright is all that
    /// is to be seen of this column, and a rectangle draws it many times faster than a line.
    [[nodiscard]] bool hidesTheWayFrom(const ColumnPixels& before) const
    {
        constexpr double kTall = 2.0;
        return column == before.column + 1 && bottom() - top() >= kTall &&
               before.bottom() - before.top() >= kTall && covers(before.last) &&
               before.covers(first);
    }
};

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
    const int left = mKeyAxis->axisRect()->left();
    // On screens the painter shifts smoothed lines by half a pixel; the middle of column i is then
    // i.
    const bool vectors = painter->modes().testFlag(QCPPainter::pmVectorized);
    const double middle = painter->antialiasing() && !vectors ? 0.0 : 0.5;
    const bool rectangles =
        !vectors && mPen.style() == Qt::SolidLine && mPen.color().alpha() == 255;
    QVector<QRect> uprights;
    QPolygonF line;
    line.reserve(static_cast<qsizetype>(4 * count));
    const auto add = [&](double x, double y) {
        const QPointF point(x, y);
        if (line.isEmpty() || line.back() != point)
            line << point;
    };
    const auto flush = [&] {
        if (line.size() > 1)
            painter->drawPolyline(line);
        line.clear();
    };
    std::optional<ColumnPixels> before;
    for (const core::PlacedColumn& column : core::columnsOf(m_series->places(), m_series->pyramid(),
                                                            range.lower, range.upper, count)) {
        const core::TraceColumn& what = column.what;
        const auto y = [&](double value) {
            return clampedPixel(mValueAxis->coordToPixel(std::isnan(value) ? what.minimum : value));
        };
        const ColumnPixels now{static_cast<int>(column.column), y(values[what.first]),
                               y(values[what.last - 1]), y(what.minimum), y(what.maximum)};
        if (m_series->gapBefore(what.first)) {
            flush();
            before.reset();
        }
        const double x = left + now.column + middle;
        if (rectangles && before && now.hidesTheWayFrom(*before)) {
            flush();
            const auto row = [](double at) { return static_cast<int>(std::floor(at + 0.5)); };
            uprights << QRect(QPoint(left + now.column, row(now.top())),
                              QPoint(left + now.column, row(now.bottom())));
        } else {
            if (before && line.isEmpty())
                add(left + before->column + middle, before->last);
            const bool lowFirst =
                std::abs(now.first - now.minimum) <= std::abs(now.first - now.maximum);
            add(x, now.first);
            add(x, lowFirst ? now.minimum : now.maximum);
            add(x, lowFirst ? now.maximum : now.minimum);
            add(x, now.last);
        }
        before = now;
    }
    flush();
    painter->setAntialiasing(false);
    for (const QRect& upright : uprights)
        painter->fillRect(upright, mPen.color());
}

void TraceLine::drawLegendIcon(QCPPainter* painter, const QRectF& rect) const
{
    painter->setPen(mPen);
    painter->drawLine(QLineF(rect.left(), rect.center().y(), rect.right(), rect.center().y()));
}

} // namespace bothways::app
