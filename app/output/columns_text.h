// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"

#include <string>
#include <vector>

/// The columns that a run sheet may have, from the one table that its reader goes by.
namespace bothways::app {

/// For a terminal: name, unit, what a cell holds, an example; below it the other names.
/// @param names  by our names; none: all columns, and a sentence about them
[[nodiscard]] std::string columnsText(const Language& in,
                                      const std::vector<std::string>& names = {});
/// The table of README and handbook; after an empty line the other names, which the handbook has.
[[nodiscard]] std::string columnsMarkdown(const Language& in);

} // namespace bothways::app
