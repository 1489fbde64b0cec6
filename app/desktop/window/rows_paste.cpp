// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/rows_paste.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QLineEdit>

namespace bothways::app {

bool rowsInClipboard()
{
    const QString text = QGuiApplication::clipboard()->text().trimmed();
    return text.contains(u'\t') && text.contains(u'\n');
}

bool RowsPaste::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::ShortcutOverride ||
        !static_cast<QKeyEvent*>(event)->matches(QKeySequence::Paste) ||
        !qobject_cast<QLineEdit*>(watched) || !rowsInClipboard())
        return false;
    event->ignore(); // so that it is a key of the menu
    return true;
}

} // namespace bothways::app
