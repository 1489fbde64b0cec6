// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMessageBox>

namespace bothways::app {

/// What this program is, its version, its licence, and what it was made with.
class AboutBox final : public QMessageBox {
    Q_OBJECT

public:
    explicit AboutBox(QWidget* parent);
};

} // namespace bothways::app
