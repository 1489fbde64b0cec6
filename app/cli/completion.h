// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"

#include <string>
#include <vector>

/// What a shell may put in place of the word that is being typed. resources/completions has the
/// shells' own part, which knows nothing of verbs and options.
namespace bothways::cli {

inline constexpr const char* kCompletionOption = "--complete-for-shell";

/// Says a candidate a line, with a tab and words on it where there are any. ":studies", ":sheets",
/// ":inputs" (either) and ":files" ask the shell for names of files.
/// @param words  after the program's name; the last is the one that is being typed, and may be
///               empty
/// @return  the exit code: 0 also where nothing fits
[[nodiscard]] int complete(const std::vector<std::string>& words, Surroundings& io);

} // namespace bothways::cli
