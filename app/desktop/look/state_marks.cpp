// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/state_marks.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace bothways::app {
namespace {

QPointF in(const QRectF& box, double x, double y)
{
    return {box.x() + x * box.width(), box.y() + y * box.height()};
}

/// A square in the middle of a widget.
QRectF squareOf(const QWidget& widget, double air)
{
    const double side = std::min(widget.width(), widget.height()) - 2.0 * air;
    return {0.5 * (widget.width() - side), 0.5 * (widget.height() - side), side, side};
}

QPen strongPen(const QColor& colour, const QRectF& box)
{
    return {colour, std::max(1.5, 0.13 * box.width()), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
}

} // namespace

void paintVerdict(QPainter& painter, const QRectF& box, core::VerdictClass cls, const Theme& theme)
{
    painter.setRenderHint(QPainter::Antialiasing);
    const bool known = cls == core::VerdictClass::less || cls == core::VerdictClass::more;
    const QColor colour = known                                   ? theme.device
                          : cls == core::VerdictClass::equivalent ? theme.baseline
                                                                  : theme.faint_ink;
    const double line = 0.06 * box.width();
    painter.setPen(QPen(colour, line));
    painter.setBrush(cls == core::VerdictClass::none ? QBrush(Qt::NoBrush) : QBrush(colour));
    painter.drawEllipse(box.adjusted(line, line, -line, -line));
    painter.setPen(strongPen(theme.paper, box));
    switch (cls) {
    case core::VerdictClass::less:
    case core::VerdictClass::more: {
        const bool down = cls == core::VerdictClass::less;
        const double tip = down ? 0.74 : 0.26;
        const double wing = down ? 0.54 : 0.46;
        painter.drawLine(in(box, 0.5, 1.0 - tip), in(box, 0.5, tip));
        painter.drawLine(in(box, 0.3, wing), in(box, 0.5, tip));
        painter.drawLine(in(box, 0.7, wing), in(box, 0.5, tip));
        break;
    }
    case core::VerdictClass::equivalent:
        painter.drawLine(in(box, 0.3, 0.4), in(box, 0.7, 0.4));
        painter.drawLine(in(box, 0.3, 0.6), in(box, 0.7, 0.6));
        break;
    case core::VerdictClass::undecided: {
        QFont font = painter.font();
        font.setBold(true);
        font.setPixelSize(std::max(8, static_cast<int>(0.62 * box.height())));
        painter.setFont(font);
        painter.drawText(box, Qt::AlignCenter, QStringLiteral("?"));
        break;
    }
    case core::VerdictClass::none: break;
    }
}

void paintCheck(QPainter& painter, const QRectF& box, core::CheckState state, const Theme& theme)
{
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor& colour = theme.state(state);
    switch (state) {
    case core::CheckState::holds:
        painter.setPen(strongPen(colour, box));
        painter.drawPolyline(
            QPolygonF({in(box, 0.15, 0.55), in(box, 0.4, 0.8), in(box, 0.85, 0.2)}));
        break;
    case core::CheckState::note:
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawPolygon(
            QPolygonF({in(box, 0.5, 0.05), in(box, 0.98, 0.92), in(box, 0.02, 0.92)}));
        painter.setPen(strongPen(theme.paper, box));
        painter.drawLine(in(box, 0.5, 0.4), in(box, 0.5, 0.6));
        painter.drawPoint(in(box, 0.5, 0.79));
        break;
    case core::CheckState::fails:
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawRoundedRect(box, 0.14 * box.width(), 0.14 * box.height());
        painter.setPen(strongPen(theme.paper, box));
        painter.drawLine(in(box, 0.28, 0.28), in(box, 0.72, 0.72));
        painter.drawLine(in(box, 0.72, 0.28), in(box, 0.28, 0.72));
        break;
    case core::CheckState::notComputed: {
        const double line = 0.1 * box.width();
        painter.setPen(QPen(colour, line, Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(box.adjusted(line, line, -line, -line));
        break;
    }
    }
}

StateMark::StateMark(QWidget* parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void StateMark::showIn(const Theme& theme)
{
    m_theme = theme;
    update();
}

void StateMark::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    paint(painter, squareOf(*this, air()), m_theme);
}

void VerdictMark::show(core::VerdictClass cls, const Theme& theme)
{
    m_class = cls;
    showIn(theme);
}

void VerdictMark::paint(QPainter& painter, const QRectF& box, const Theme& theme) const
{
    paintVerdict(painter, box, m_class, theme);
}

void CheckMark::show(core::CheckState state, const Theme& theme)
{
    m_state = state;
    showIn(theme);
}

void CheckMark::paint(QPainter& painter, const QRectF& box, const Theme& theme) const
{
    paintCheck(painter, box, m_state, theme);
}

} // namespace bothways::app
