// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/big_button.h"

#include "app/desktop/look/big_label.h"

#include <QApplication>
#include <QKeyEvent>
#include <QKeySequence>
#include <QPainter>

#include <algorithm>

namespace bothways::app {
namespace {

QColor mixed(const QColor& a, const QColor& b, double share)
{
    const auto part = [&](int from, int to) {
        return static_cast<int>(from + (to - from) * share);
    };
    return {part(a.red(), b.red()), part(a.green(), b.green()), part(a.blue(), b.blue())};
}

} // namespace

BigButton::BigButton(Kind kind, const char* name, Qt::Key key, QWidget* parent)
    : QAbstractButton(parent), m_kind(kind), m_key(key)
{
    setObjectName(name);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
}

BigButton::~BigButton()
{
    if (m_group)
        std::erase(*m_group, this);
}

void BigButton::setGroup(const Group& group)
{
    m_group = group;
    m_group->push_back(this);
}

void BigButton::setKind(Kind kind)
{
    m_kind = kind;
    update();
}

void BigButton::setMost(double most)
{
    m_most = most;
    update();
}

void BigButton::setTheme(const Theme& theme)
{
    m_theme = theme;
    update();
}

QString BigButton::keyText() const
{
    if (m_key == kNoKey)
        return {};
    switch (m_key) {
    case Qt::Key_Return: return tr("Enter", "the key");
    case Qt::Key_Escape: return tr("Esc", "the key");
    case Qt::Key_Backspace: return QString(QChar(0x232B));
    default: return QKeySequence(m_key).toString(QKeySequence::NativeText);
    }
}

void BigButton::setWords(const QString& text, const QString& caption)
{
    if (text == this->text() && caption == m_caption)
        return;
    m_caption = caption;
    setText(text);
    setAccessibleName(caption.isEmpty() ? text : tr("%1: %2").arg(caption, text));
    setAccessibleDescription(m_key == kNoKey ? QString() : tr("Key: %1").arg(keyText()));
    updateGeometry();
    update();
}

BigButton::Look BigButton::look() const
{
    const Theme& t = m_theme;
    Look look{t.paper, t.ink, t.ink};
    if (m_kind == Kind::primary)
        look = t.dark ? Look{mixed(t.paper, t.selection, 0.30), Qt::white, t.selection}
                      : Look{t.ink, t.paper, t.ink};
    else if (m_kind == Kind::quiet)
        look = {t.window, t.ink, t.faint_ink};
    if (!isEnabled()) // pale and flat: seen in the sun, too
        return {mixed(t.window, t.grid, t.dark ? 0.15 : 0.25),
                mixed(t.faint_ink, t.window, t.dark ? 0.25 : 0.10), t.grid};
    if (isDown())
        look.fill = mixed(look.fill, look.ink, 0.2);
    return look;
}

double BigButton::textContrast() const
{
    return contrast(look().ink, look().fill);
}

QFont BigButton::textFont(int px) const
{
    QFont font = QApplication::font();
    font.setPixelSize(px);
    font.setBold(m_kind == Kind::primary);
    return font;
}

/// Where the text goes, the caption, and the key: beside the text on a low button, else in the
/// corner above it.
BigButton::Places BigButton::places() const
{
    Places places{};
    const int pad = std::max(4, std::min(width(), height()) / 16);
    QRect room = rect().adjusted(pad, pad, -pad, -pad);
    const bool isLow = height() < window()->height() / 7;
    places.keyPx = std::max(
        1, std::min(std::max(12, static_cast<int>(0.030 * window()->height())), height() / 2));
    if (m_key != kNoKey) {
        const QFontMetrics metrics(textFont(places.keyPx));
        const int w = std::max(metrics.horizontalAdvance(keyText()) + 10, metrics.height());
        const int h = metrics.height();
        places.key = isLow && m_caption.isEmpty()
                         ? QRect(room.left(), room.center().y() - h / 2, w, h)
                         : QRect(room.right() - w, room.top(), w, h);
        if (isLow && m_caption.isEmpty())
            room.setLeft(places.key.right() + 6);
        else if (!m_caption.isEmpty())
            room.setRight(places.key.left() - 6);
        else
            room.setTop(places.key.bottom() - h / 3);
    }
    if (!m_caption.isEmpty()) {
        places.caption = QRect(room.left(), room.top(), room.width(), room.height() * 3 / 10);
        places.captionPx = fittingPx(m_caption, textFont(12), places.caption.size(),
                                     static_cast<int>(0.034 * window()->height()));
        room.setTop(places.caption.bottom() + 1);
        room.setRight(rect().right() - pad);
    }
    places.text = room;
    return places;
}

int BigButton::ownPx() const
{
    return fittingPx(text(), textFont(12), places().text.size(),
                     static_cast<int>(m_most * window()->height()));
}

int BigButton::textPx() const
{
    int px = ownPx();
    if (m_group)
        for (const BigButton* other : *m_group)
            if (other != this && other->isVisible())
                px = std::min(px, other->ownPx());
    return px;
}

bool BigButton::isWhole() const
{
    const Places at = places();
    return fits(text(), textFont(12), at.text.size(), textPx()) &&
           (m_caption.isEmpty() ||
            fits(m_caption, textFont(12), at.caption.size(), at.captionPx)) &&
           (m_key == kNoKey || rect().contains(at.key));
}

void BigButton::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Look colours = look();
    const double edge = m_kind == Kind::quiet ? 1.0 : 2.5;
    painter.setPen(QPen(colours.edge, edge, isEnabled() ? Qt::SolidLine : Qt::DashLine));
    painter.setBrush(colours.fill);
    const QRectF frame = QRectF(rect()).adjusted(edge, edge, -edge, -edge);
    painter.drawRoundedRect(frame, 8.0, 8.0);
    if (hasFocus()) { // a second line inside: seen on every fill
        painter.setPen(QPen(colours.ink, 2.0, Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(frame.adjusted(3, 3, -3, -3), 6.0, 6.0);
    }
    const Places at = places();
    painter.setPen(colours.ink);
    if (!m_caption.isEmpty()) {
        painter.setFont(textFont(at.captionPx));
        painter.drawText(at.caption, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap,
                         m_caption);
    }
    painter.setFont(textFont(textPx()));
    painter.drawText(at.text, Qt::AlignCenter | Qt::TextWordWrap, text());
    if (m_key != kNoKey) {
        painter.setFont(textFont(at.keyPx));
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colours.ink, 1.0));
        if (isEnabled())
            painter.drawRoundedRect(QRectF(at.key).adjusted(0.5, 0.5, -0.5, -0.5), 4.0, 4.0);
        painter.drawText(at.key, Qt::AlignCenter, keyText());
    }
}

/// Space presses the button that has the keyboard; everything else is for the page.
void BigButton::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        QAbstractButton::keyPressEvent(event);
        return;
    }
    event->ignore();
}

} // namespace bothways::app
