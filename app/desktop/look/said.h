// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/base/result.h"

#include <QString>
#include <QStringList>

#include <vector>

/// Sentences that the window shares with the command line and the report, as the window shows them.
namespace bothways::app {

/// With a no-break space between a number and its unit: no line ends between them.
[[nodiscard]] QString withFixedSpaces(QString text);
/// What app/wording said.
[[nodiscard]] QString shown(const std::string& words);
[[nodiscard]] QStringList shown(const std::vector<std::string>& sentences);

/// A name, a note, a path as people and files gave it, through visibleText(). What is edited keeps
/// its characters.
[[nodiscard]] QString nameShown(const std::string& given);

[[nodiscard]] QString said(const Language& in, const core::Message& message);
/// "A, B and C".
[[nodiscard]] QString listed(const Language& in, const QStringList& parts);
/// With a capital letter, as a label begins.
[[nodiscard]] QString withCapital(QString phrase);
/// With a capital letter and a full stop.
[[nodiscard]] QString asSentence(QString phrase);
/// The message as a sentence of its own: capital letter, full stop. Without its place.
[[nodiscard]] QString sentenceOf(const Language& in, const core::Error& error);
[[nodiscard]] QString sentenceOf(const Language& in, const core::Message& message);
/// As a sentence behind its place: "logger.csv:14: …"; of the first fault alone.
[[nodiscard]] QString sentenceWithPlace(const Language& in, const core::Error& error);
/// "WHERE: MESSAGE", one line a fault.
[[nodiscard]] QString describedHere(const Language& in, const core::Error& error);

} // namespace bothways::app
