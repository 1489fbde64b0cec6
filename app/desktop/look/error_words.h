// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QString>

/// Errors of core and storage in the user's language. They are made as English sentences, which the
/// command line and files keep; here a sentence is recognised by its pattern (error_patterns.h),
/// and the pattern's translation gets the values that stood in it. What is not recognised stays
/// English.
namespace bothways::app {

/// "is larger than 4 MB; expected a study" in the user's language, values as they were.
[[nodiscard]] QString translated(const std::string& sentence);

/// Whether `sentence` has the form of one of the patterns.
[[nodiscard]] bool isRecognised(const std::string& sentence);

/// The message as a sentence of its own: capital letter, full stop. Without its place.
[[nodiscard]] QString sentenceOf(const core::Error& error);

/// "morning.csv:14: column 'start'" in the user's language.
[[nodiscard]] QString placeOf(const core::Error& error);

/// core::describe() in the user's language: "WHERE: MESSAGE", one line a fault.
[[nodiscard]] QString describedHere(const core::Error& error);

} // namespace bothways::app
