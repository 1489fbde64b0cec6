// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"

#include <string>
#include <vector>

namespace bothways::cli {

/// The whole command line: parses, runs one verb, reports.
/// @param arguments  without the program's own name
/// @return  the exit code: one of exitCodes()
[[nodiscard]] int runProgram(const std::vector<std::string>& arguments, Surroundings& io);

} // namespace bothways::cli
