// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

#include <functional>

namespace bothways::app {
class MainWindow;
}

namespace bothways::app::tests {

/// Everything that a window and all parts of it say, on show or not: texts, tips, titles, what
/// models hold, what pictures have written in them, names and values for those who cannot see it.
/// Numbers that are not yet text are left out.
[[nodiscard]] QStringList everythingSaid(QWidget& window);

/// Shows every page of the window with its dialogs, one after the other, and calls `look` at each;
/// what opened for it is closed again. The roadside mode and the handbook are windows of their own.
void onEveryPage(MainWindow& window,
                 const std::function<void(const QString& page, QWidget&)>& look);

} // namespace bothways::app::tests
