// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/alarm_band.h"

#include "app/desktop/look/big_label.h"

#include <QAccessible>
#include <QApplication>
#include <QPainter>
#include <QPolygonF>

#include <cmath>
#include <numbers>

namespace bothways::app {
namespace {

constexpr int kEdge = 6;
constexpr double kMostOfHeight = 0.42; // two lines, or a large one

QPolygonF octagon(const QRectF& box)
{
    QPolygonF corners;
    for (int i = 0; i < 8; ++i) {
        const double turn = std::numbers::pi * (2 * i + 1) / 8.0;
        corners << box.center() + QPointF(std::cos(turn), std::sin(turn)) * box.width() / 2.0;
    }
    return corners;
}

} // namespace

AlarmBand::AlarmBand(QWidget* parent) : QWidget(parent)
{
    setObjectName("alarmBand");
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
}

void AlarmBand::showAlarm(const core::Alarm& alarm, const QString& words, int others,
                          bool acknowledged)
{
    const QString all = others > 0 ? tr("%1 (%n more)", nullptr, others).arg(words) : words;
    if (all == m_words && alarm.level == m_level && acknowledged == m_acknowledged)
        return;
    const bool anew = all != m_words;
    m_level = alarm.level;
    m_words = all;
    m_acknowledged = acknowledged;
    setAccessibleName(all);
    if (anew) { // a screen reader says it at once
        QAccessibleEvent event(this, QAccessible::Alert);
        QAccessible::updateAccessibility(&event);
    }
    update();
}

void AlarmBand::setTheme(const Theme& theme)
{
    m_theme = theme;
    update();
}

QColor AlarmBand::levelColour() const
{
    switch (m_level) {
    case core::AlarmLevel::note: return m_theme.selection;
    case core::AlarmLevel::warning: return m_theme.note;
    case core::AlarmLevel::spoiled: return m_theme.fails;
    }
    return m_theme.ink;
}

QColor AlarmBand::fill() const
{
    if (m_acknowledged || m_level == core::AlarmLevel::note)
        return m_theme.paper;
    return levelColour();
}

QColor AlarmBand::ink() const
{
    return fill() == m_theme.paper ? m_theme.ink : QColor(Qt::black);
}

double AlarmBand::textContrast() const
{
    return contrast(ink(), fill());
}

QRect AlarmBand::textRoom() const
{
    const QRect inner = rect().adjusted(kEdge + 2, kEdge, -kEdge - 2, -kEdge);
    return inner.adjusted(std::min(inner.height(), inner.width() / 6) + kEdge, 0, 0, 0);
}

QFont AlarmBand::textFont() const
{
    QFont font = QApplication::font();
    font.setBold(!m_acknowledged);
    const int most = static_cast<int>(kMostOfHeight * height());
    font.setPixelSize(fittingPx(m_words, font, textRoom().size(), most));
    return font;
}

bool AlarmBand::isWhole() const
{
    const QFont font = textFont();
    return fits(m_words, font, textRoom().size(), font.pixelSize());
}

void AlarmBand::paintShape(QPainter& painter, const QRectF& box) const
{
    const bool filled = fill() == m_theme.paper;
    painter.setPen(Qt::NoPen);
    painter.setBrush(filled ? levelColour() : QColor(Qt::black));
    QString sign = "!";
    if (m_level == core::AlarmLevel::note) {
        painter.drawEllipse(box);
        sign = "i";
    } else if (m_level == core::AlarmLevel::warning) {
        painter.drawPolygon(
            QPolygonF({box.bottomLeft(), {box.center().x(), box.top()}, box.bottomRight()}));
    } else {
        painter.drawPolygon(octagon(box));
        sign = QString(QChar(0x00D7));
    }
    QFont font = QApplication::font();
    font.setBold(true);
    font.setPixelSize(std::max(kLeastPx, static_cast<int>(box.height() * 0.6)));
    painter.setFont(font);
    const QColor ground = painter.brush().color();
    painter.setPen(contrast(ground, Qt::white) > contrast(ground, Qt::black) ? Qt::white
                                                                             : Qt::black);
    const double low = m_level == core::AlarmLevel::warning ? box.height() * 0.14 : 0.0;
    painter.drawText(box.adjusted(0, low, 0, low), Qt::AlignCenter, sign);
}

void AlarmBand::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), fill());
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(levelColour(), kEdge));
    painter.drawRect(rect().adjusted(kEdge / 2, kEdge / 2, -kEdge / 2, -kEdge / 2));
    const QRect text = textRoom();
    const int size = std::min(height() - 4 * kEdge, text.left() - 2 * kEdge);
    paintShape(painter, QRectF(kEdge + 4, (height() - size) / 2.0, size, size));
    painter.setFont(textFont());
    painter.setPen(ink());
    painter.drawText(text, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, m_words);
}

} // namespace bothways::app
