// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/study/kill_rounds.h"

#include <fmt/format.h>

#include <cstdlib>
#include <filesystem>

/// storage_kill_stress [FOLDER [ROUNDS [SEED]]]: 10,000 rounds of edits, imports of sheets and
/// recordings, undo and compacting, killed with SIGKILL at random moments. Prints what was met;
/// fails when one study was not whole.
int main(int argc, char** argv)
{
    const std::filesystem::path folder =
        argc > 1 ? std::filesystem::path(argv[1]) : std::filesystem::temp_directory_path();
    const int rounds = argc > 2 ? std::atoi(argv[2]) : 10'000;
    const auto seed = static_cast<std::uint32_t>(argc > 3 ? std::strtoul(argv[3], nullptr, 10) : 1);
    const auto report = bothways::tests::killRounds(rounds, seed, folder);
    fmt::print("{} rounds, {} commits acknowledged, {} rounds left a journal to roll back, {} had "
               "committed once more than acknowledged\n",
               report.rounds, report.commits, report.rolledBack, report.oneAhead);
    std::filesystem::remove(folder / "killed.bothways");
    std::filesystem::remove(folder / "drive.csv");
    if (report.failure.empty())
        return EXIT_SUCCESS;
    fmt::print(stderr, "{}\n", report.failure);
    return EXIT_FAILURE;
}
