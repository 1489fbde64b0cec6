// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace bothways::app {

enum class Breaks { marked, kept };

/// What people and files gave, as it may be shown: nothing in it commands a terminal, turns the
/// direction of writing, hides, or is no text. Control characters become their pictures ("␛"),
/// those that have none, and all that are invisible, their number ("<U+202E>"), bytes that are no
/// UTF-8 a "�". Twice is as once. CSV and JSON keep what was given.
/// @param breaks  whether line breaks and tabs stay as they are
[[nodiscard]] std::string visibleText(std::string_view text, Breaks breaks = Breaks::marked);

} // namespace bothways::app
