// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/start_drawings.h"

#include <QPainter>
#include <QPainterPath>

#include <array>

namespace bothways::app {
namespace {

constexpr double kMark = 3.4; // half a mark, as a disc or a square

void arrow(QPainter& painter, const QPointF& from, const QPointF& to, const QColor& colour)
{
    const double way = to.x() > from.x() ? 1.0 : -1.0;
    painter.setPen(QPen(colour, 3.0, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(from, to - QPointF(6.0 * way, 0.0));
    QPainterPath head(to);
    head.lineTo(to.x() - 9.0 * way, to.y() - 5.5);
    head.lineTo(to.x() - 9.0 * way, to.y() + 5.5);
    head.closeSubpath();
    painter.fillPath(head, colour);
}

void mark(QPainter& painter, const QPointF& at, bool device, const Theme& theme)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.series(device));
    if (device)
        painter.drawRect(QRectF(at.x() - kMark, at.y() - kMark, 2.0 * kMark, 2.0 * kMark));
    else
        painter.drawEllipse(at, kMark, kMark);
}

/// A sheet of paper with a frame.
void paper(QPainter& painter, const QRectF& sheet, const Theme& theme)
{
    painter.setPen(QPen(theme.faint_ink, 1.5));
    painter.setBrush(theme.paper);
    painter.drawRoundedRect(sheet, 3.0, 3.0);
}

void drawDays(QPainter& painter, const Theme& theme)
{
    painter.fillRect(QRectF(35.0, 6.0, 28.0, 48.0), theme.block_tint);
    painter.setPen(QPen(theme.faint_ink, 1.5));
    painter.drawLine(QPointF(6.0, 56.0), QPointF(92.0, 56.0));
    // Runs that rise a little over the day, and lie higher in the middle.
    constexpr std::array kHeights{41.0, 46.0, 39.0, 24.0, 18.0, 22.0, 37.0, 42.0, 34.0};
    for (std::size_t i = 0; i < kHeights.size(); ++i)
        mark(painter, {12.0 + 9.25 * static_cast<double>(i), kHeights[i]}, i / 3 == 1, theme);
}

void drawStretch(QPainter& painter, const Theme& theme)
{
    for (const double post : {12.0, 84.0}) {
        painter.setPen(QPen(theme.ink, 2.5));
        painter.drawLine(QPointF(post, 10.0), QPointF(post, 56.0));
        painter.fillRect(QRectF(post, 10.0, post < 50.0 ? 9.0 : -9.0, 8.0).normalized(), theme.ink);
    }
    painter.setPen(QPen(theme.faint_ink, 1.5, Qt::DashLine));
    painter.drawLine(QPointF(18.0, 37.0), QPointF(78.0, 37.0));
    arrow(painter, {20.0, 28.0}, {76.0, 28.0}, theme.baseline);
    arrow(painter, {76.0, 46.0}, {20.0, 46.0}, theme.baseline);
}

void drawAnswer(QPainter& painter, const Theme& theme)
{
    paper(painter, {18.0, 5.0, 60.0, 54.0}, theme);
    painter.setPen(QPen(theme.grid, 2.0));
    for (const double line : {14.0, 20.0, 26.0})
        painter.drawLine(QPointF(34.0, line), QPointF(70.0, line));
    for (int i = 0; i < 3; ++i)
        mark(painter, {27.0, 14.0 + 6.0 * i}, i == 1, theme);
    painter.fillRect(QRectF(40.0, 34.0, 14.0, 20.0), theme.margin);
    painter.setPen(QPen(theme.ink, 2.5));
    painter.drawLine(QPointF(44.0, 44.0), QPointF(70.0, 44.0));
    painter.drawLine(QPointF(44.0, 40.0), QPointF(44.0, 48.0));
    painter.drawLine(QPointF(70.0, 40.0), QPointF(70.0, 48.0));
    QPainterPath diamond(QPointF(57.0, 38.5));
    diamond.lineTo(62.5, 44.0);
    diamond.lineTo(57.0, 49.5);
    diamond.lineTo(51.5, 44.0);
    diamond.closeSubpath();
    painter.fillPath(diamond, theme.result);
}

void drawSheet(QPainter& painter, const Theme& theme)
{
    const QRectF sheet(38.0, 6.0, 50.0, 52.0);
    paper(painter, sheet, theme);
    painter.fillRect(QRectF(39.0, 7.0, 48.0, 10.0), theme.block_tint);
    painter.setPen(QPen(theme.grid, 1.5));
    for (double line = 17.0; line < 57.0; line += 10.0)
        painter.drawLine(QPointF(39.0, line), QPointF(87.0, line));
    for (const double line : {54.0, 70.0})
        painter.drawLine(QPointF(line, 7.0), QPointF(line, 57.0));
    arrow(painter, {6.0, 32.0}, {34.0, 32.0}, theme.baseline);
}

} // namespace

QPixmap startDrawing(StartDrawing which, const Theme& theme, double scale)
{
    QPixmap picture(kStartDrawing * scale);
    picture.setDevicePixelRatio(scale);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    switch (which) {
    case StartDrawing::days: drawDays(painter, theme); break;
    case StartDrawing::stretch: drawStretch(painter, theme); break;
    case StartDrawing::answer: drawAnswer(painter, theme); break;
    case StartDrawing::sheet: drawSheet(painter, theme); break;
    }
    return picture;
}

} // namespace bothways::app
