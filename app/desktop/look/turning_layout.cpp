// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/turning_layout.h"

#include <algorithm>

namespace bothways::app {

TurningLayout::TurningLayout(int wide, QWidget* parent)
    : QBoxLayout(QBoxLayout::LeftToRight, parent), m_wide(wide)
{
}

void TurningLayout::setGeometry(const QRect& rect)
{
    turnFor(rect.width());
    QBoxLayout::setGeometry(rect);
}

QSize TurningLayout::minimumSize() const
{
    int width = 0;
    for (int i = 0; i < count(); ++i)
        if (!itemAt(i)->isEmpty())
            width = std::max(width, itemAt(i)->minimumSize().width());
    return {width, QBoxLayout::minimumSize().height()};
}

int TurningLayout::heightForWidth(int width) const
{
    turnFor(width);
    return QBoxLayout::heightForWidth(width);
}

int TurningLayout::minimumHeightForWidth(int width) const
{
    turnFor(width);
    return QBoxLayout::minimumHeightForWidth(width);
}

// The direction is no more than what was last computed for: the height for a width is asked before
// that width is given.
void TurningLayout::turnFor(int width) const
{
    const Direction wanted = width < m_wide ? TopToBottom : LeftToRight;
    if (direction() != wanted)
        const_cast<TurningLayout*>(this)->setDirection(wanted);
}

} // namespace bothways::app
