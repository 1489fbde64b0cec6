// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/events.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string_view>

using namespace bothways::core;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

namespace {

/// Samples every 0.1 s; '#' where the condition holds.
std::vector<Stretch> found(std::string_view pattern, double atLeast_s)
{
    std::vector<double> time_s;
    for (std::size_t i = 0; i < pattern.size(); ++i)
        time_s.push_back(0.1 * static_cast<double>(i));
    return joined(time_s,
                  stretches(time_s, atLeast_s, [&](std::size_t i) { return pattern[i] == '#'; }));
}

} // namespace

TEST(Events, LastFromTheirFirstToTheirLastSample)
{
    EXPECT_THAT(found("..####..", 0.3), ElementsAre(Stretch{2, 5}));
    EXPECT_THAT(found("..####..", 0.31), IsEmpty());
    EXPECT_THAT(found("####", 0.3), ElementsAre(Stretch{0, 3}));
    EXPECT_THAT(found("", 0.0), IsEmpty());
    EXPECT_THAT(found("...", 0.0), IsEmpty());
}

TEST(Events, TakeTheRoundingOfTimesForEqual)
{
    // 0.1 * 3 is a little more than 0.3, 0.1 * 10 - 0.1 * 3 a little less than 0.7.
    EXPECT_THAT(found("...########", 0.7), ElementsAre(Stretch{3, 10}));
}

TEST(Events, ShorterOnesDoNotAddUp)
{
    EXPECT_THAT(found("###.###", 0.5), IsEmpty());
}

TEST(Events, LessThanASecondApartAreOne)
{
    EXPECT_THAT(found("###.........###", 0.2), ElementsAre(Stretch{0, 2}, Stretch{12, 14}))
        << "exactly 1 s apart";
    EXPECT_THAT(found("###........###", 0.2), ElementsAre(Stretch{0, 13}));
}
