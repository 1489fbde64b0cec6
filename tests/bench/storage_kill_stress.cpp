// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/study/kill_rounds.h"

#include <fmt/format.h>

#include <cstdlib>
#include <filesystem>

/// storage_kill_stress [FOLDER]: 200 rounds of edits and imports killed with SIGKILL at random
/// moments. Prints what was met; fails when one study was not whole.
int main(int argc, char** argv)
{
    const std::filesystem::path folder =
        argc > 1 ? std::filesystem::path(argv[1]) : std::filesystem::temp_directory_path();
    const auto report = bothways::tests::killRounds(200, 1, folder);
    fmt::print("{} rounds, {} commits acknowledged, {} rounds left a journal to roll back, {} had "
               "committed once more than acknowledged\n",
               report.rounds, report.commits, report.rolledBack, report.oneAhead);
    std::filesystem::remove(folder / "killed.bothways");
    if (report.failure.empty())
        return EXIT_SUCCESS;
    fmt::print(stderr, "{}\n", report.failure);
    return EXIT_FAILURE;
}
