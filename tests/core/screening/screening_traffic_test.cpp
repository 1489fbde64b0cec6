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
using ::testing::IsEmpty;
using ::testing::SizeIs;

namespace {

Screening trafficScreened(const TraceBuilder& trace, Limits limits = {})
{
    return screen(studyOf({aRun()}, std::move(limits)), Recordings().add(1, trace));
}

std::vector<Finding> foundInTraffic(const TraceBuilder& trace, Limits limits = {})
{
    return findingsOf(trafficScreened(trace, std::move(limits)), Rule::passingTraffic);
}

/// Wind that takes 0, 1, 2, 3 and 4 m/s in turn: median 2, median absolute deviation 1.
TraceBuilder steps()
{
    return TraceBuilder().channel(
        "wind_ms", [](double t) { return std::fmod(std::round(10.0 * t) + 1000.0, 5.0); });
}

} // namespace

TEST(PassingTraffic, MeasuresInRobustSigmas)
{
    const double sigma = 1.4826;
    const auto events = foundInTraffic(steps().set("wind_ms", 60.0, 60.5, 2.0 - 7.0 * sigma));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_NEAR(*events[0].value, -7.0, 1e-9);
    EXPECT_EQ(events[0].limit, 6.0);
    EXPECT_EQ(events[0].unit, "σ");
    EXPECT_NEAR(*events[0].from_s, 60.0, 1e-9);
    EXPECT_NEAR(*events[0].to_s, 60.5, 1e-9);
    EXPECT_EQ(events[0].grade, Grade::doubtful);
    EXPECT_EQ(detailOf(events[0]), "wind_ms");
}

TEST(PassingTraffic, FiresAtSixSigmasAndHalfASecond)
{
    const double sigma = 1.4826;
    EXPECT_THAT(foundInTraffic(steps().set("wind_ms", 60.0, 61.0, 2.0 + 6.0 * sigma)), SizeIs(1));
    EXPECT_THAT(foundInTraffic(steps().set("wind_ms", 60.0, 61.0, 2.0 + 5.99 * sigma)), IsEmpty());
    EXPECT_THAT(foundInTraffic(steps().set("wind_ms", 60.0, 60.4, 2.0 + 9.0 * sigma)), IsEmpty());
    EXPECT_THAT(foundInTraffic(steps().set("wind_ms", 60.0, 61.0, 2.0 + 6.0 * sigma),
                               {{"passing_traffic.sigmas", 7.0}}),
                IsEmpty());
}

TEST(PassingTraffic, ReadsYawAndMarksToo)
{
    EXPECT_THAT(foundInTraffic(aHealthyTrace().set("yaw_deg_per_s", 50.0, 51.0, 4.0)), SizeIs(1));
    const auto both = foundInTraffic(aHealthyTrace()
                                         .set("yaw_deg_per_s", 50.0, 51.0, 4.0)
                                         .set("wind_ms", 50.4, 52.0, 9.0)
                                         .mark(52.6, "passing_traffic road train"));
    ASSERT_THAT(both, SizeIs(1)) << "wind, yaw and mark say the same";
    EXPECT_NEAR(*both[0].from_s, 50.0, 1e-9);
    EXPECT_NEAR(*both[0].to_s, 52.6, 1e-9);
    EXPECT_EQ(detailOf(both[0]), "yaw_deg_per_s, wind_ms, road train");
    const auto marked = foundInTraffic(aHealthyTrace().mark(31.2, " passing_traffic  lorry"));
    ASSERT_THAT(marked, SizeIs(1));
    EXPECT_EQ(marked[0].value, std::nullopt);
    EXPECT_EQ(detailOf(marked[0]), "lorry");
}

TEST(PassingTraffic, IsNotCheckedWhereWindNeverVariesOrIsMissing)
{
    auto flat = TraceBuilder().channel("wind_ms", [](double t) { return t > 99.0 ? 2.5 : 2.0; });
    flat.set("wind_ms", 10.0, 198.0, 2.0);
    const Screening constant = trafficScreened(flat);
    EXPECT_EQ(whyNot(constant, Rule::passingTraffic)->why, WhyNotChecked::noSpread);
    const Screening missing =
        trafficScreened(aHealthyTrace().without("wind_ms").without("yaw_deg_per_s"));
    EXPECT_EQ(whyNot(missing, Rule::passingTraffic)->why, WhyNotChecked::noChannel);
    const Screening slow = trafficScreened(aHealthyTrace(1.0));
    EXPECT_EQ(whyNot(slow, Rule::passingTraffic)->why, WhyNotChecked::recordedTooSlowly);
}
