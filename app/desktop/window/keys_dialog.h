// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QMenuBar;

namespace bothways::app {

/// Every key of the menus, a line each.
class KeysDialog final : public QDialog {
    Q_OBJECT

public:
    KeysDialog(const QMenuBar& menus, QWidget* parent);
};

} // namespace bothways::app
