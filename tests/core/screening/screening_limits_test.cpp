// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/limits.h"
#include "core/study/rule.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

using namespace bothways::core;

TEST(ScreeningLimits, AreNamedAfterTheirRule)
{
    std::set<std::string_view> names;
    for (const LimitInfo& limit : allLimits()) {
        const std::string prefix = std::string(ruleName(limit.rule)) + '.';
        EXPECT_EQ(limit.name.substr(0, prefix.size()), prefix);
        EXPECT_TRUE(names.insert(limit.name).second) << limit.name << " is there twice";
        EXPECT_EQ(findLimit(limit.name), &limit);
    }
}

TEST(ScreeningLimits, HaveTheMethodsDefaultsWithinTheirRange)
{
    for (const LimitInfo& limit : allLimits()) {
        EXPECT_LT(limit.smallest, limit.largest) << limit.name;
        if (limit.byDefault) {
            EXPECT_GE(*limit.byDefault, limit.smallest) << limit.name;
            EXPECT_LE(*limit.byDefault, limit.largest) << limit.name;
        }
    }
    EXPECT_EQ(limitOf({}, "accessory_change.watts"), 50.0);
    EXPECT_EQ(limitOf({}, "overspeed.seconds"), 0.5);
    EXPECT_EQ(limitOf({}, "output_drop.pct"), 25.0);
    EXPECT_EQ(limitOf({}, "overspeed.rpm"), std::nullopt);
    EXPECT_EQ(limitOf({}, "road_speed.target_kmh"), std::nullopt);
}

TEST(ScreeningLimits, TheStudysOwnValueComesBeforeTheDefault)
{
    const Limits limits = {{"overspeed.rpm", 3200.0}, {"load_lost.seconds", 3.0}};
    EXPECT_EQ(limitOf(limits, "overspeed.rpm"), 3200.0);
    EXPECT_EQ(limitOf(limits, "load_lost.seconds"), 3.0);
    EXPECT_EQ(findLimit("overspeed.rmp"), nullptr);
    EXPECT_EQ(limitOf(limits, "overspeed.rmp"), std::nullopt);
}
