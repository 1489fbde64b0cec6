// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Lets the readers at changed files for as long as asked: fuzz_stress SECONDS [SEED]. A file that
// broke something is left as fuzz_broken.txt in the folder it was started from.

#include "tests/storage/loggers/fuzz.h"

#include <fmt/format.h>

#include <chrono>
#include <cstdlib>
#include <fstream>

int main(int argc, char** argv)
{
    const double seconds = argc > 1 ? std::atof(argv[1]) : 60.0;
    const std::uint64_t seed = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 20260314;
    bothways::tests::Fuzz fuzz(std::filesystem::path(BOTHWAYS_SOURCE_DIR) / "tests/storage/corpus",
                               seed);
    const auto end = std::chrono::steady_clock::now() + std::chrono::duration<double>(seconds);
    long turns = 0;
    for (; std::chrono::steady_clock::now() < end; ++turns)
        if (const std::string fault = fuzz.turn(); !fault.empty()) {
            std::ofstream("fuzz_broken.txt", std::ios::binary) << fuzz.lastFile();
            fmt::print("seed {}, turn {}: {}\n", seed, turns, fault);
            return 1;
        }
    fmt::print("seed {}: {} turns, {} files read, nothing broken\n", seed, turns, fuzz.readable());
}
