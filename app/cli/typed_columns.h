// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"
#include "core/study/study.h"

#include <string>
#include <utility>
#include <vector>

/// Runs that are typed as COLUMN=VALUE, and read as a run sheet is, so that they are checked as its
/// lines are.
namespace bothways::cli {

using Assignments = std::vector<std::pair<std::string, std::string>>;

/// Each "column=value" in two.
[[nodiscard]] Result<Assignments> assignmentsFrom(const std::vector<std::string>& words);

/// What was typed by the names of a run sheet's columns, which may be other names of them
/// ("richtung"), as in a spreadsheet; names of columns that the study keeps as its own stay. A
/// decimal comma in a column of numbers becomes a point. Fails where a name leaves its unit open.
[[nodiscard]] Result<Assignments> asColumns(Assignments typed, const core::Study& study);

/// In quotes.
[[nodiscard]] std::string csvCell(const std::string& cell);

/// Stands for the sheet that nobody has.
inline constexpr const char* kTyped = "typed";

/// Says which columns have no meaning, where one that has is spelled nearly the same.
void sayNearColumns(const Assignments& columns, Surroundings& io);

} // namespace bothways::cli
