// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

namespace bothways::app {

class Preferences;

/// The user's choices. Each takes effect at once.
class PreferencesDialog final : public QDialog {
    Q_OBJECT

public:
    explicit PreferencesDialog(Preferences& preferences, QWidget* parent = nullptr);
};

} // namespace bothways::app
