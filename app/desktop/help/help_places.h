// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <span>

class QWidget;

/// Which page of the handbook belongs to which part of the window.
namespace bothways::app {

struct HelpPlace {
    const char* object; ///< object name of the widget
    const char* topic;  ///< "page" or "page#anchor"
};

/// The one table.
[[nodiscard]] std::span<const HelpPlace> helpPlaces();

/// The topic of what has the keyboard: the nearest widget, from `focus` up, that carries one of its
/// own (setHelpTopic() of look/help_topics.h) or stands in the table; "index" where none does.
[[nodiscard]] QString helpTopicAt(const QWidget* focus);

} // namespace bothways::app
