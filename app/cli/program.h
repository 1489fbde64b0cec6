// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/context.h"

#include <functional>
#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace bothways::cli {

/// The whole command line: parses, runs one verb, reports.
/// @param arguments  without the program's own name
/// @return  the exit code: one of those that exitCodesText() lists
[[nodiscard]] int runProgram(const std::vector<std::string>& arguments, Surroundings& io);

/// Hands over the parser with every verb described, as help is made from it: manual and completion
/// say nothing else than help does.
void withWholeParser(Surroundings& io, const std::function<void(const CLI::App&)>& use);

} // namespace bothways::cli
