// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>

/// A program that edits a study, imports sheets, recordings and sheets with recordings, undoes,
/// does again and compacts, is killed with SIGKILL at a random moment, again and again on the same
/// file. Each time the file must open, its recordings be whole, and it must hold what was
/// acknowledged last (or that and the one change whose commit was done but not yet acknowledged).
/// Every other round waits for the first acknowledgement, however busy the machine is.
namespace bothways::tests {

struct KillReport {
    int rounds = 0;
    int commits = 0;     ///< acknowledged, over all rounds; at least one every other round
    int rolledBack = 0;  ///< rounds that left a journal with something in it
    int oneAhead = 0;    ///< rounds whose last commit was not acknowledged any more
    std::string failure; ///< empty: every round passed
};

/// @param folder   for the study; on a real disk commits last longer, and kills hit them more often
/// @param most_us  until a kill, at most, from the start or the first acknowledgement
[[nodiscard]] KillReport killRounds(int rounds, std::uint32_t seed,
                                    const std::filesystem::path& folder, int most_us = 250'000);

} // namespace bothways::tests
