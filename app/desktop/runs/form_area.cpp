// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/form_area.h"

#include "app/desktop/look/page_parts.h"

#include <QApplication>
#include <QEvent>
#include <QScrollBar>
#include <QTimer>

#include <algorithm>

namespace bothways::app {

FormArea::FormArea(QWidget* fields, QWidget* parent) : QScrollArea(parent)
{
    setObjectName("formArea");
    setAccessibleName(tr("Entry of a run"));
    setFocusPolicy(Qt::NoFocus);
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setWidget(fields);
    fields->installEventFilter(this);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    connect(qApp, &QApplication::focusChanged, this,
            [this](QWidget*, QWidget* now) { follow(now); });
}

QSize FormArea::sizeHint() const
{
    const int wide = width() - frameWidth() * 2;
    QSize size(widget()->sizeHint().width(), widget()->heightForWidth(wide));
    if (wide < widget()->minimumSizeHint().width())
        size += QSize(0, horizontalScrollBar()->sizeHint().height());
    return size;
}

/// Two rows of fields and their labels; one where there is little height.
QSize FormArea::minimumSizeHint() const
{
    constexpr int kLeastWidth = 300;
    const QSize least = widget()->minimumSizeHint();
    return {
        std::min(least.width(), kLeastWidth),
        std::min(least.height(), (parts::isOnLowScreen(*this) ? 3 : 6) * fontMetrics().height())};
}

bool FormArea::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == widget() && event->type() == QEvent::LayoutRequest)
        updateGeometry();
    else if (watched == widget() && event->type() == QEvent::Resize)
        follow(window()->focusWidget());
    return QScrollArea::eventFilter(watched, event);
}

void FormArea::resizeEvent(QResizeEvent* event)
{
    QScrollArea::resizeEvent(event);
    updateGeometry(); // a narrower one is higher
    follow(window()->focusWidget());
}

/// Once the fields have their places.
void FormArea::follow(QWidget* keyboard)
{
    if (keyboard && widget()->isAncestorOf(keyboard))
        QTimer::singleShot(0, keyboard, [this, keyboard] {
            ensureWidgetVisible(keyboard, 0, 2 * fontMetrics().height()); // with its label
        });
}

} // namespace bothways::app
