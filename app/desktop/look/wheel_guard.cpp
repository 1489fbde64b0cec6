// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/wheel_guard.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QEvent>

namespace bothways::app {

bool WheelGuard::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::Wheel && event->type() != QEvent::Polish)
        return false;
    auto* field = qobject_cast<QWidget*>(watched);
    if (!qobject_cast<QAbstractSpinBox*>(watched) && !qobject_cast<QComboBox*>(watched))
        return false;
    if (event->type() == QEvent::Polish) {
        if (field->focusPolicy() == Qt::WheelFocus)
            field->setFocusPolicy(Qt::StrongFocus); // else the wheel itself brings the keyboard
        return false;
    }
    if (field->hasFocus())
        return false;
    event->ignore(); // goes on to what the field lies on
    return true;
}

} // namespace bothways::app
