// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/main_window.h"

#include "app/desktop/preferences.h"

namespace bothways::app {

MainWindow::MainWindow(Preferences& preferences, QWidget* parent)
    : QMainWindow(parent), m_preferences(preferences)
{
    setObjectName("mainWindow");
    setWindowTitle(tr("Bothways"));
    resize(1280, 800);
}

MainWindow::~MainWindow() = default;

} // namespace bothways::app
