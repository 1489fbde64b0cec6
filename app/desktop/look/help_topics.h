// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/look/words.h"

#include <QEvent>

class QToolButton;
class QWidget;

/// Where the handbook explains what a page shows: "rules#overspeed", "checks#normal". Anchors are
/// the names that files and JSON use, so that a rule is found by the name it has everywhere.
namespace bothways::app {

[[nodiscard]] QString helpTopic(core::Rule rule);
[[nodiscard]] QString helpTopic(CheckKind check);
[[nodiscard]] QString helpTopic(core::Companion companion);
[[nodiscard]] QString helpTopic(core::Qualifier qualifier);
[[nodiscard]] QString helpTopic(core::VerdictClass cls);

/// What F1 opens while this widget, or something in it, has the keyboard.
void setHelpTopic(QWidget& widget, const QString& topic);
[[nodiscard]] QString helpTopicOf(const QWidget& widget);

/// What a "?" sends itself when it is pressed; whoever has the handbook (help/help_desk.h) sees it
/// pass. So a page needs to know nobody.
[[nodiscard]] QEvent::Type helpWantedEvent();
/// Opens the handbook for this widget, as F1 does.
void askForHelp(QWidget& widget);
/// A small "?" beside what the topic explains. F1 on it does the same.
[[nodiscard]] QToolButton* helpButton(const QString& topic, const QString& about);
/// What a screen reader says the button is about.
void setHelpAbout(QToolButton& button, const QString& about);

} // namespace bothways::app
