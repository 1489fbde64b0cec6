// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSet>
#include <QString>

class QMenu;
class QWidget;

/// Access keys (Alt and a letter): each only once where it is pressed, in every language, also
/// where texts change.
namespace bothways::app {

/// The text with '&' before a letter that is not `taken`: its own where that is free, else the
/// first of a word, else any; none where all are taken. The letter is taken then.
[[nodiscard]] QString withAccessKey(QString text, QSet<QChar>& taken);
/// For the menu's lines, whenever it is shown, and for those of menus within it.
void keepAccessKeys(QMenu& menu);
/// What the menu bar of the window that `widget` is in has taken.
[[nodiscard]] QSet<QChar> menuKeysAround(const QWidget& widget);

} // namespace bothways::app
