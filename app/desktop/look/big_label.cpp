// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/big_label.h"

#include <QApplication>
#include <QEvent>
#include <QFontMetrics>

#include <algorithm>

namespace bothways::app {

bool fits(const QString& text, const QFont& font, const QSize& room, int px, Lines lines)
{
    QFont sized = font;
    sized.setPixelSize(px);
    const QFontMetrics metrics(sized);
    const QRect taken = metrics.boundingRect(
        QRect(0, 0, room.width(), 100'000),
        Qt::AlignLeft | (lines == Lines::one ? Qt::TextSingleLine : Qt::TextWordWrap), text);
    return taken.width() <= room.width() && taken.height() <= room.height();
}

int fittingPx(const QString& text, const QFont& font, const QSize& room, int most, Lines lines)
{
    int low = kLeastPx;
    int high = std::max(most, kLeastPx);
    while (low < high) {
        const int middle = (low + high + 1) / 2;
        if (fits(text, font, room, middle, lines))
            low = middle;
        else
            high = middle - 1;
    }
    return low;
}

BigLabel::BigLabel(double most, QWidget* parent) : QLabel(parent), m_most(most)
{
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);
    setMargin(0);
}

void BigLabel::setWords(const QString& words)
{
    if (words == text())
        return;
    setText(words);
    refit();
}

void BigLabel::setBold(bool bold)
{
    QFont heavier = font();
    heavier.setBold(bold);
    setFont(heavier);
    refit();
}

bool BigLabel::isWhole() const
{
    return text().isEmpty() || fits(text(), font(), room(), font().pixelSize());
}

QSize BigLabel::room() const
{
    return contentsRect().size() - QSize(2 * margin(), 2 * margin());
}

void BigLabel::refit()
{
    if (m_fitting)
        return;
    m_fitting = true;
    const int most = static_cast<int>(m_most * window()->height());
    QFont sized = font();
    sized.setFamily(QApplication::font().family());
    const int px = fittingPx(text(), sized, room(), most);
    if (sized.pixelSize() != px) {
        sized.setPixelSize(px);
        setFont(sized);
    }
    m_fitting = false;
}

void BigLabel::resizeEvent(QResizeEvent* event)
{
    QLabel::resizeEvent(event);
    refit();
}

void BigLabel::changeEvent(QEvent* event)
{
    QLabel::changeEvent(event);
    if (event->type() == QEvent::ApplicationFontChange || event->type() == QEvent::FontChange)
        refit();
}

} // namespace bothways::app
