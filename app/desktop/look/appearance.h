// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QApplication;

namespace bothways::app {

class Preferences;

/// Colours and size of text of the whole program, now and after each change of the preferences.
void followAppearance(QApplication& application, Preferences& preferences);

/// Installs the translation of the preferred language, where there is one.
void installTranslation(QApplication& application, const Preferences& preferences);

} // namespace bothways::app
