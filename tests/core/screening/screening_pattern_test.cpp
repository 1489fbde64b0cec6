// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/screening.h"
#include "tests/core/recording/trace_builders.h"
#include "tests/core/screening/screening_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using namespace bothways::core;
using namespace bothways::core::tests;

namespace {

/// Ten runs with the device, each with a minute at its own output; the rotor runs away after it in
/// the runs named.
Screening dayWith(const std::vector<double>& outputs_w, const std::vector<int>& oversped)
{
    std::vector<core::Run> runs;
    Recordings recordings;
    for (std::size_t i = 0; i < outputs_w.size(); ++i) {
        const int number = static_cast<int>(i) + 1;
        auto trace = aHealthyTrace(10.0, static_cast<unsigned>(i));
        trace.set("output_w", 60.0, 120.0, outputs_w[i]);
        if (std::find(oversped.begin(), oversped.end(), number) != oversped.end())
            trace.set("rotor_rpm", 110.0, 111.0, 3300.0);
        recordings.add(number, trace);
        runs.push_back(aRun(number).device());
    }
    return screen(studyOf(runs, allLimitsSet()), recordings);
}

} // namespace

TEST(OverspeedPattern, CountsTheRunsThatReachedTheSmallestOutput)
{
    const Screening screening =
        dayWith({700, 800, 810, 790, 800, 900, 650, 820, 640, 850}, {2, 3, 5, 6, 8, 10});
    ASSERT_TRUE(screening.pattern);
    EXPECT_EQ(screening.pattern->first_output_w, 800.0);
    EXPECT_EQ(screening.pattern->reached, 6);
    EXPECT_EQ(screening.pattern->oversped, 6);
    EXPECT_EQ(screening.pattern->share, 1.0);
    // All of n hit: low = (alpha/2)^(1/n), exactly.
    EXPECT_NEAR(screening.pattern->low, std::pow(0.025, 1.0 / 6.0), 1e-12);
    EXPECT_EQ(screening.pattern->high, 1.0);
}

TEST(OverspeedPattern, KnowsRunsThatReachedItWithoutTrouble)
{
    const Screening screening = dayWith({700, 800, 810, 900}, {2, 4});
    ASSERT_TRUE(screening.pattern);
    EXPECT_EQ(screening.pattern->reached, 3);
    EXPECT_EQ(screening.pattern->oversped, 2);
    EXPECT_LT(screening.pattern->low, 2.0 / 3.0);
    EXPECT_GT(screening.pattern->high, 2.0 / 3.0);
}

TEST(OverspeedPattern, IsNothingWithoutAnOverspeed)
{
    EXPECT_FALSE(dayWith({700, 800}, {}).pattern);
}
