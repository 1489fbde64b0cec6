// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/live/live_faults.h"
#include "tests/storage/study/study_builders.h"

#include <gtest/gtest.h>

namespace bothways::tests {
namespace {

// Every call is tried by storage_fault_stress in tests/bench.
TEST(LiveFaults, LoseNoRowThatWasAcknowledged)
{
    const TemporaryFolder folder;
    const LiveFaultSweep sweep = sweepLiveFaults(folder.path(), 11, 1);
    EXPECT_EQ(sweep.failure, "");
    EXPECT_GT(sweep.calls, 50);
    EXPECT_GT(sweep.tried, 12);
    EXPECT_GT(sweep.refused, 5) << "the faults were not felt";
}

} // namespace
} // namespace bothways::tests
