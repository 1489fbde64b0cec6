// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"

#include <string>
#include <utility>
#include <vector>

/// Runs that are typed as COLUMN=VALUE, and read as a run sheet is, so that they are checked as its
/// lines are.
namespace bothways::cli {

using Assignments = std::vector<std::pair<std::string, std::string>>;

/// Each "column=value" in two. A decimal comma in a column of numbers becomes a point.
[[nodiscard]] Result<Assignments> assignmentsFrom(const std::vector<std::string>& words);

/// In quotes.
[[nodiscard]] std::string csvCell(const std::string& cell);

/// Stands for the sheet that nobody has.
inline constexpr const char* kTyped = "typed";

/// Says which columns have no meaning, where one that has is spelled nearly the same.
void sayNearColumns(const Assignments& columns, Surroundings& io);

} // namespace bothways::cli
