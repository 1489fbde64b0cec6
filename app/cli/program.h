// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"

#include <string>
#include <vector>

namespace bothways::cli {

/// The whole command line: parses, runs one verb, reports.
/// @param arguments  without the program's own name
/// @return  the exit code: 0 done (also with no verdict), 2 wrong use, 3 the input is bad, 4 a
///          study file cannot be opened, read or written
[[nodiscard]] int runProgram(const std::vector<std::string>& arguments, Surroundings& io);

} // namespace bothways::cli
