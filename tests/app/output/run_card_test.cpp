// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/output/run_card.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using testing::HasSubstr;
using testing::Not;

namespace {

core::Plan twoPairs()
{
    core::PlanOptions options;
    options.pairs_per_block = 2;
    return core::makePlan(options).value();
}

std::string cardFor(const core::StudyProperties& properties)
{
    return app::runCardHtml({properties, twoPairs(), "05:40"}).take();
}

} // namespace

// A/B/A with 2 pairs a block, 15 min a pair, 20 min a switch, from 05:40: by hand.
TEST(RunCard, GivesTheTimesOfTheDay)
{
    const std::string html = cardFor({});
    EXPECT_THAT(html, HasSubstr("<td>1</td><td>05:40</td><td>A</td><td>out</td>"));
    EXPECT_THAT(html, HasSubstr("<td>2</td><td>05:47</td><td>A</td><td>return</td>"));
    EXPECT_THAT(html, HasSubstr("<td>5</td><td>06:30</td><td>B</td><td>out</td>"));
    EXPECT_THAT(html, HasSubstr("Switch to B: 20 min, until 06:30"));
    EXPECT_THAT(html, HasSubstr("<td>12</td><td>07:42</td><td>A</td><td>return</td>"));
    EXPECT_THAT(html, Not(HasSubstr("<td>13</td>")));
}

TEST(RunCard, SaysWhenATimedAccessoryDropsOut)
{
    core::StudyProperties properties;
    properties.timed_accessories.push_back({"heated_windscreen", 180.0, 10.0});
    EXPECT_THAT(cardFor(properties),
                HasSubstr("heated windscreen (180 W, 10 min): leave it off. Switched on at 05:40 "
                          "it would drop out at 05:50."));
}

TEST(RunCard, RunsPastMidnight)
{
    const std::string html =
        app::runCardHtml({core::StudyProperties{}, twoPairs(), "23:50"}).take();
    EXPECT_THAT(html, HasSubstr("<td>3</td><td>00:05</td>"));
}

TEST(RunCard, RefusesWhatIsNoTimeOfDay)
{
    EXPECT_FALSE(app::runCardHtml({core::StudyProperties{}, twoPairs(), "dawn"}));
}

TEST(RunCard, KeepsAwkwardNamesAsText)
{
    core::StudyProperties properties;
    properties.name = "<script>";
    EXPECT_THAT(cardFor(properties), Not(HasSubstr("<script>")));
}
