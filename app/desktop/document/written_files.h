// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/base/result.h"

#include <QByteArray>
#include <QString>

#include <string_view>

class QFileDialog;
class QWidget;

/// Files that leave the window: where to, and how they are written.
namespace bothways::app {

class Preferences;

/// The dialog begins where a file was last chosen, and keeps where one is chosen now.
void rememberFolder(QFileDialog& dialog, Preferences& preferences);

/// Asks where to write, in studyFolder(); asks again before a file that is there is replaced. Not
/// yet open, and gone once it is closed.
/// @param suffix  that a name without one gets
/// @param name    to begin with; empty: none
[[nodiscard]] QFileDialog* saveDialog(QWidget& window, Preferences& preferences,
                                      const QString& title, const QString& filter,
                                      const QString& suffix, const QString& name = {});

enum class IfThere { replaced, refused };

/// Whole or not at all, by the rules of the command line: never over a study, never over what a
/// link leads to.
/// @param study    that the bytes come from; empty: none
/// @param ifThere  `replaced` where somebody was asked
/// @param ownMark  of a file that may go without being asked
[[nodiscard]] core::Outcome writeFile(const QString& file, const QByteArray& bytes,
                                      const QString& study = {},
                                      IfThere ifThere = IfThere::replaced,
                                      std::string_view ownMark = {});

/// Why writeFile() did not: "No space left on device", without the file's name.
[[nodiscard]] QString whyNotWritten(const Language& in, const core::Error& error);

} // namespace bothways::app
