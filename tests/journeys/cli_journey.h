// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/process.h"
#include "tests/support/program.h"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace bothways::tests {

/// The command line as a user runs it, but for the loading of the program.
[[nodiscard]] inline Ran bothwaysProgram(const std::vector<std::string>& arguments,
                                         const Environment& environment = {})
{
    return runMain(cli::runProcess, arguments, environment);
}

/// Standard output of a call that must succeed, as JSON.
[[nodiscard]] inline nlohmann::json jsonOf(const std::vector<std::string>& arguments)
{
    const Ran ran = bothwaysProgram(arguments);
    if (ran.code != 0)
        throw std::runtime_error(ran.err);
    return nlohmann::json::parse(ran.out);
}

[[nodiscard]] inline std::string exampleFile(const std::string& name)
{
    return std::string(BOTHWAYS_SOURCE_DIR "/tests/published/data/examples/") + name;
}

[[nodiscard]] inline std::string demoFile(const std::string& name)
{
    return std::string(BOTHWAYS_SOURCE_DIR "/sample_data/") + name;
}

} // namespace bothways::tests
