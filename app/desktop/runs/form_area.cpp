// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/form_area.h"

#include <QEvent>
#include <QScrollBar>

#include <algorithm>

namespace bothways::app {

FormArea::FormArea(QWidget* form, QWidget* parent) : QScrollArea(parent)
{
    setObjectName("formArea");
    setAccessibleName(tr("Entry of a run"));
    setFocusPolicy(Qt::NoFocus);
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    const bool hidden = form->isHidden();
    setWidget(form); // which shows it
    form->setVisible(!hidden);
    form->installEventFilter(this);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    setVisible(!hidden);
}

QSize FormArea::sizeHint() const
{
    QSize size = widget()->sizeHint();
    if (width() < widget()->minimumSizeHint().width())
        size += QSize(0, horizontalScrollBar()->sizeHint().height());
    return size;
}

QSize FormArea::minimumSizeHint() const
{
    constexpr int kLeast = 150;
    const QSize least = widget()->minimumSizeHint();
    return {std::min(least.width(), 2 * kLeast), std::min(least.height(), kLeast)};
}

bool FormArea::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == widget()) {
        if (event->type() == QEvent::ShowToParent)
            show();
        else if (event->type() == QEvent::HideToParent)
            hide();
        else if (event->type() == QEvent::LayoutRequest)
            updateGeometry();
    }
    return QScrollArea::eventFilter(watched, event);
}

void FormArea::resizeEvent(QResizeEvent* event)
{
    QScrollArea::resizeEvent(event);
    updateGeometry(); // a narrower one needs a scroll bar's height more
}

} // namespace bothways::app
