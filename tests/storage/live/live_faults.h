// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>

/// A recording under way on a disk that fails.
namespace bothways::tests {

struct LiveFaultSweep {
    long calls = 0;      ///< to the disk that one recording takes
    long tried = 0;      ///< recordings with a fault
    long refused = 0;    ///< commits that said that they failed
    std::string failure; ///< empty: every row that was acknowledged was there afterwards
};

/// A recording of some commits with a fault at the first call to the disk, at the one `every`
/// later, and so on. Where one call fails, the recording goes on and must have every row in the
/// end; where the power goes, what was acknowledged must be in what the disk kept.
[[nodiscard]] LiveFaultSweep sweepLiveFaults(const std::filesystem::path& folder, long every,
                                             int forgotten);

} // namespace bothways::tests
