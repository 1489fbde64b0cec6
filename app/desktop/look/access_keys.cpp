// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/access_keys.h"

#include <QAction>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>

namespace bothways::app {
namespace {

/// Place of the letter behind a single '&'; -1 where there is none.
qsizetype keyPlace(const QString& text)
{
    for (qsizetype i = 0; i + 1 < text.size(); ++i) {
        if (text[i] != u'&')
            continue;
        if (text[i + 1] != u'&')
            return i + 1;
        ++i; // "&&" is a sign of its own
    }
    return -1;
}

/// Typed without a second key, on every keyboard that has the letter.
bool isKey(QChar letter)
{
    return letter.isLetterOrNumber();
}

qsizetype freePlace(const QString& text, const QSet<QChar>& taken)
{
    for (const bool first : {true, false})
        for (qsizetype i = 0; i < text.size(); ++i)
            if (isKey(text[i]) && !taken.contains(text[i].toLower()) &&
                (!first || i == 0 || text[i - 1].isSpace()))
                return i;
    return -1;
}

void giveKeys(const QMenu& menu)
{
    QSet<QChar> taken;
    for (QAction* action : menu.actions())
        if (!action->isSeparator())
            if (const QString text = withAccessKey(action->text(), taken); text != action->text())
                action->setText(text);
}

} // namespace

QString withAccessKey(QString text, QSet<QChar>& taken)
{
    if (const qsizetype own = keyPlace(text); own >= 0) {
        const QChar letter = text[own].toLower();
        if (!taken.contains(letter)) {
            taken.insert(letter);
            return text;
        }
        text.remove(own - 1, 1);
    }
    const qsizetype place = freePlace(text, taken);
    if (place < 0)
        return text;
    taken.insert(text[place].toLower());
    return text.insert(place, u'&');
}

void keepAccessKeys(QMenu& menu)
{
    giveKeys(menu);
    QObject::connect(&menu, &QMenu::aboutToShow, &menu, [&menu] { giveKeys(menu); });
    for (const QAction* action : menu.actions())
        if (action->menu())
            keepAccessKeys(*action->menu());
}

QSet<QChar> menuKeysAround(const QWidget& widget)
{
    QSet<QChar> taken;
    const auto* window = qobject_cast<const QMainWindow*>(widget.window());
    if (!window)
        return taken;
    for (const QAction* action : window->menuBar()->actions())
        if (const qsizetype place = keyPlace(action->text()); place >= 0)
            taken.insert(action->text()[place].toLower());
    return taken;
}

} // namespace bothways::app
