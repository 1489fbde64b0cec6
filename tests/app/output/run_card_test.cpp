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

// A4 less its margins of 12 mm is 273 mm, Letter 255 mm, at 96 pixels an inch: 963 pixels of
// Letter. Heights are those of the style for print; letters are 1.3 lines high.
TEST(RunCard, Of24RunsFitsOnAPageOfLetterPaper)
{
    core::PlanOptions options;
    options.pairs_per_block = 4;
    core::StudyProperties properties;
    properties.timed_accessories.push_back({"heated_windscreen", 180.0, 10.0});
    const std::string html =
        app::runCardHtml({properties, core::makePlan(options).value(), "05:40"}).take();
    EXPECT_THAT(html, HasSubstr("<td>24</td>"));
    const auto print = html.substr(html.find("@media print"));
    const auto number = [&](const std::string& before) {
        const std::size_t at = print.find(before);
        EXPECT_NE(at, std::string::npos) << before;
        return std::stod(print.substr(at + before.size()));
    };
    const double line = number("font-size: ") * number("line-height: ");
    const double row = line + 2.0 * number("th, td { padding: ") + 1.0;
    const auto count = [&](const std::string& what) {
        double n = 0.0;
        for (std::size_t at = html.find(what); at != std::string::npos;
             at = html.find(what, at + 1))
            ++n;
        return n;
    };
    const double heading =
        1.3 * number("h2 { font-size: ") + number("h2 { font-size: 12.5px; margin: ") + 2.0;
    // Items stand in two columns and take two lines at most; paragraphs take three.
    const double height = 30.0 + count("<h2>") * heading +
                          (count("<p>") * 3.0 + count("<li>")) * line + count("<tr") * row;
    EXPECT_LT(height, 963.0);
    EXPECT_GT(row, 20.0) << "a hand needs 5 mm";
}

TEST(RunCard, MarksTheConfigurationsAsTheReportDoes)
{
    const std::string html = cardFor({});
    EXPECT_THAT(
        html,
        HasSubstr(
            "tr.baseline td:nth-child(3)::before { content: \"\\25CF\\A0\"; color: #0072b2; }"));
    EXPECT_THAT(
        html,
        HasSubstr(
            "tr.device td:nth-child(3)::before { content: \"\\25A0\\A0\"; color: #d55e00; }"));
}
