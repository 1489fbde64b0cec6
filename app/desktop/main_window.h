// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMainWindow>

namespace bothways::app {

class Preferences;

class MainWindow final : public QMainWindow {
    Q_OBJECT

public:
    explicit MainWindow(Preferences& preferences, QWidget* parent = nullptr);
    ~MainWindow() override;

private:
    Preferences& m_preferences;
};

} // namespace bothways::app
