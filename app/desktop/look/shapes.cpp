// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/shapes.h"

#include "app/desktop/look/theme.h"

#include <QPainter>
#include <QPixmap>

#include <algorithm>

namespace bothways::app {
namespace {

QRectF squareIn(const QRectF& box)
{
    const double side = std::min(box.width(), box.height());
    QRectF square(0.0, 0.0, side, side);
    square.moveCenter(box.center());
    return square;
}

void paintLetter(QPainter& painter, const QRectF& square, QChar letter, const QColor& colour,
                 double down)
{
    QFont font = painter.font();
    font.setBold(true);
    font.setStrikeOut(false);
    font.setPixelSize(std::max(6, static_cast<int>(square.height() * 0.7)));
    painter.setFont(font);
    painter.setPen(colour);
    painter.drawText(square.translated(0.0, down), Qt::AlignCenter, QString(letter));
}

} // namespace

void paintGrade(QPainter& painter, const QRectF& box, core::Grade grade, const Theme& theme)
{
    const QRectF s = squareIn(box);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    switch (grade) {
    case core::Grade::spoils:
        painter.setBrush(theme.fails);
        painter.drawPolygon(
            QPolygonF{QPointF(s.center().x(), s.top()), s.bottomRight(), s.bottomLeft()});
        paintLetter(painter, s, u'!', theme.paper, s.height() * 0.12);
        break;
    case core::Grade::doubtful:
        painter.setBrush(theme.note);
        painter.drawPolygon(
            QPolygonF{QPointF(s.center().x(), s.top()), QPointF(s.right(), s.center().y()),
                      QPointF(s.center().x(), s.bottom()), QPointF(s.left(), s.center().y())});
        paintLetter(painter, s, u'?', theme.paper, 0.0);
        break;
    case core::Grade::note:
        painter.setBrush(theme.unknown);
        painter.drawEllipse(s.adjusted(1, 1, -1, -1));
        paintLetter(painter, s, u'i', theme.paper, 0.0);
        break;
    }
    painter.restore();
}

QIcon gradeIcon(core::Grade grade, const Theme& theme)
{
    QIcon icon;
    for (const int size : {16, 24, 32, 48}) {
        QPixmap pixmap(size, size);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        paintGrade(painter, QRectF(0, 0, size, size), grade, theme);
        painter.end();
        icon.addPixmap(pixmap);
    }
    return icon;
}

void paintConfiguration(QPainter& painter, const QRectF& box, bool device, const QColor& colour)
{
    const QRectF s = squareIn(box);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    if (device)
        painter.drawRect(s.adjusted(0.5, 0.5, -0.5, -0.5));
    else
        painter.drawEllipse(s);
    painter.restore();
}

void paintQuestion(QPainter& painter, const QRectF& box, const Theme& theme)
{
    const QRectF s = squareIn(box).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme.note, 1.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(s);
    paintLetter(painter, s, u'?', theme.ink, 0.0);
    painter.restore();
}

} // namespace bothways::app
