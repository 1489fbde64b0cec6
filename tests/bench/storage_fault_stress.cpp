// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/live/live_faults.h"
#include "tests/storage/recordings/import_faults.h"
#include "tests/storage/study/study_builders.h"

#include <fmt/format.h>

#include <cstdlib>

/// storage_fault_stress [EVERY [FORGOTTEN [ROWS]]]: imports of a sheet with three recordings and of
/// a recording, and a recording under way, with a fault at every call to the disk. Fails when a
/// study lost what was acknowledged, or holds a half.
int main(int argc, char** argv)
{
    using namespace bothways::tests;
    const long every = argc > 1 ? std::atol(argv[1]) : 1;
    const int forgotten = argc > 2 ? std::atoi(argv[2]) : 4;
    const int rows = argc > 3 ? std::atoi(argv[3]) : 700;
    int failed = 0;
    for (const auto& [import, name] :
         {std::pair{FaultyImport::sheetWithRecordings, "sheet with three recordings"},
          {FaultyImport::recording, "a recording"}}) {
        const TemporaryFolder folder;
        const FaultSweep sweep = sweepFaults(import, folder.path(), every, forgotten, rows);
        fmt::print("{}: {} calls to the disk, {} imports at a fault, {} acknowledged, {} in though "
                   "not acknowledged; {}\n",
                   name, sweep.calls, sweep.tried, sweep.acknowledged, sweep.inAfterAll,
                   sweep.failure.empty() ? "nothing lost" : sweep.failure);
        failed += sweep.failure.empty() ? 0 : 1;
    }
    const TemporaryFolder folder;
    const LiveFaultSweep live = sweepLiveFaults(folder.path(), every, forgotten);
    fmt::print("recording under way: {} calls to the disk, {} recordings with a fault, {} commits "
               "refused; {}\n",
               live.calls, live.tried, live.refused,
               live.failure.empty() ? "nothing lost" : live.failure);
    failed += live.failure.empty() ? 0 : 1;
    return failed == 0 ? EXIT_SUCCESS : EXIT_FAILURE;
}
