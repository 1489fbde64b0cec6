// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/recordings/import_faults.h"
#include "tests/storage/study/study_builders.h"

#include <gtest/gtest.h>

namespace bothways::tests {
namespace {

// Every call is tried by storage_fault_stress in tests/bench.
void expectNothingLost(FaultyImport import, long every)
{
    const TemporaryFolder folder;
    const FaultSweep sweep = sweepFaults(import, folder.path(), every, 1, 700);
    EXPECT_EQ(sweep.failure, "");
    EXPECT_GT(sweep.calls, 20);
    EXPECT_GE(sweep.tried, 3 * sweep.calls / every);
    EXPECT_LT(sweep.acknowledged, sweep.tried / 2) << "the faults were not felt";
}

TEST(FailingImport, OfASheetWithRecordingsLosesNothingAndIsNeverHalf)
{
    expectNothingLost(FaultyImport::sheetWithRecordings, 9);
}

TEST(FailingImport, OfARecordingLosesNothingAndIsNeverHalf)
{
    expectNothingLost(FaultyImport::recording, 5);
}

} // namespace
} // namespace bothways::tests
