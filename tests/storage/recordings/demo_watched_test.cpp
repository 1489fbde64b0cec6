// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/watching/watcher.h"
#include "tests/core/watching/driven_live.h"

#include "storage/recordings/run_traces.h"
#include "tests/storage/recordings/demo_day.h"

#include <gtest/gtest.h>

// The recordings of the demo, driven again: what is said while driving is what screening says when
// the run is over.

using namespace bothways;

TEST(DemoTraces, DrivenAgainSayTheSame)
{
    const core::Study study = tests::generatorDay();
    auto traces = storage::tracesOfSheet(tests::generatorSheet(), study);
    ASSERT_TRUE(traces);
    const core::TraceProvider recordings = std::move(traces).take();
    int driven = 0, said = 0;
    for (std::size_t place = 0; place < study.runs.size(); ++place) {
        if (study.runs[place].trace.empty())
            continue;
        core::Study until = study;
        until.runs.resize(place + 1);
        const auto again =
            core::tests::driveAgain(until, place, recordings, static_cast<unsigned>(place));
        const core::Screening whole = core::screen(until, recordings);
        EXPECT_EQ(
            core::tests::differences(again, whole, study.runs[place], study.properties.limits), "")
            << "run " << study.runs[place].number;
        ++driven;
        said += again.said.empty() ? 0 : 1;
    }
    EXPECT_EQ(driven, 10);
    EXPECT_EQ(said, 6) << "runs 1, 15, 18, 20, 23 and 28";
}
