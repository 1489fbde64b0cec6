// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/process.h"

#include "app/cli/exit_codes.h"
#include "app/cli/program.h"
#include "app/cli/stop_signals.h"

#include <fmt/chrono.h>
#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <ctime>
#include <iostream>
#include <string_view>

#include <unistd.h>

namespace bothways::cli {
namespace {

/// https://no-color.org: any value of NO_COLOR switches colour off.
bool mayColour()
{
    const char* none = std::getenv("NO_COLOR");
    const char* terminal = std::getenv("TERM");
    return (none == nullptr || *none == '\0') && terminal != nullptr &&
           std::string_view(terminal) != "dumb";
}

std::string today()
{
    const std::time_t now = std::time(nullptr);
    std::tm local{};
    if (localtime_r(&now, &local) == nullptr)
        return "1970-01-01";
    return fmt::format("{:%Y-%m-%d}", local);
}

std::string variable(const char* name)
{
    const char* value = std::getenv(name);
    return value == nullptr ? std::string() : std::string(value);
}

} // namespace

int runProcess(int argc, char** argv)
{
    prepareProcess();
    std::ios::sync_with_stdio(false);
    Surroundings io{std::cout, std::cerr};
    io.outIsTerminal = isatty(STDOUT_FILENO) == 1;
    io.errIsTerminal = isatty(STDERR_FILENO) == 1;
    io.colour = io.outIsTerminal && mayColour();
    io.today = today();
    io.language = app::Language::ofEnvironment(variable);
    StopSignals signals([language = io.language] {
        const std::string words = language.say("bothways: stopped before the end"_t) + "\n";
        if (write(STDERR_FILENO, words.data(), words.size()) < 0) {
            // Nobody is there to hear it.
        }
    });
    io.stop = signals.token();
    io.begin = [&signals] { signals.begin(); };
    return guarded(
        [&] {
            const std::vector<std::string> words(argv + std::min(argc, 1), argv + argc);
            return runProgram(words, io);
        },
        io);
}

} // namespace bothways::cli
