// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>

/// Whole imports on a disk that fails: a sheet with its recordings, and a recording by itself.
namespace bothways::tests {

enum class FaultyImport { sheetWithRecordings, recording };

struct FaultSweep {
    long calls = 0;        ///< to the disk that one import takes: opening, writing, truncating,
                           ///< flushing, deleting
    long tried = 0;        ///< imports at a fault
    long acknowledged = 0; ///< of them were done all the same
    long inAfterAll = 0;   ///< of the others are in: the power went after the last write
    std::string failure;   ///< empty: after each the study held what was acknowledged
};

/// The import with a fault at the first call, at the one `every` later, and so on: a full disk, an
/// error, and a power failure that forgets what was not flushed, in `forgotten` ways. Afterwards
/// the study must be whole and as before, or as after where that was acknowledged; and the import
/// must work when it is tried again.
/// @param rows  of each recording; from some 700,000 on they are written in several commits
[[nodiscard]] FaultSweep sweepFaults(FaultyImport import, const std::filesystem::path& folder,
                                     long every, int forgotten, int rows);

} // namespace bothways::tests
