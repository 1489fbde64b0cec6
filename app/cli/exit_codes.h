// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"

#include <functional>
#include <string>

/// Every way in which the program ends. README.md and the handbook have the same table.
namespace bothways::cli {

/// The table for people, a line each.
[[nodiscard]] std::string exitCodesText(const Language& in);

/// Runs it. What it throws is said, and has an exit code of the table like everything else.
[[nodiscard]] int guarded(const std::function<int()>& program, const Surroundings& io);

/// Once, before anything else: a reader that went away, a file that grew too large, and standard
/// streams that were closed are errors to be met where they occur. They neither end the program nor
/// have it write into a file that got the number of a stream.
void prepareProcess();

} // namespace bothways::cli
