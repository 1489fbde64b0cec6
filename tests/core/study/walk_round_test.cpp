// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/walk_round.h"

#include "core/study/properties.h"
#include "tests/support/study_builder.h"

#include <gtest/gtest.h>

namespace bothways::core {
namespace {

WalkRound roundAt(const core::Run& run, double before_s, std::optional<double> number = {})
{
    WalkRound round;
    round.at = run.start;
    round.at.us -= static_cast<std::int64_t>(before_s * 1e6);
    round.run = run.number;
    round.ticks = {{"belts on", true, std::nullopt, ""}, {"tyre pressure", true, number, "kPa"}};
    return round;
}

TEST(WalkRound, ReadsWordsUnitsAndTolerances)
{
    const auto lines =
        walkLines(" no loose nut;belts on ;; tyre pressure = kPa +- 10; blade = deg ± 0,5; x = V");
    ASSERT_TRUE(lines);
    ASSERT_EQ(lines.value().size(), 5U);
    EXPECT_EQ(lines.value()[0], (WalkLine{"no loose nut", "", std::nullopt}));
    EXPECT_EQ(lines.value()[2], (WalkLine{"tyre pressure", "kPa", 10.0}));
    EXPECT_EQ(lines.value()[3], (WalkLine{"blade", "deg", 0.5}));
    EXPECT_EQ(lines.value()[4], (WalkLine{"x", "V", std::nullopt}));
    const std::string text = walkText(lines.value());
    EXPECT_EQ(text, "no loose nut; belts on; tyre pressure = kPa +- 10; blade = deg +- 0.5; x = V");
    EXPECT_EQ(walkLines(text).value(), lines.value());
}

TEST(WalkRound, RefusesLinesThatSayNothing)
{
    for (const char* bad : {"= kPa", "tyres =", "tyres = kPa +- x", "tyres = kPa +- 0",
                            "tyres = kPa +- -1", "belts on; Belts On", "tyres = +- 3"})
        EXPECT_FALSE(walkLines(bad)) << bad;
    std::string many;
    for (int i = 0; i < 41; ++i)
        many += "line " + std::to_string(i) + ";";
    EXPECT_FALSE(walkLines(many));
    EXPECT_FALSE(walkLines(std::string(300, 'x')));
    StudyProperties properties;
    EXPECT_FALSE(setProperty(properties, "walk_round", "= kPa"));
    EXPECT_TRUE(properties.walk_round.empty());
    EXPECT_TRUE(setProperty(properties, "walk_round", "a ;b=V"));
    EXPECT_EQ(properties.walk_round, "a; b = V");
}

TEST(WalkRound, SaysNumbersThatAreFurtherApartThanTheirTolerance)
{
    const Study study = tests::aDay("ABA", 1);
    const auto lines = walkLines("belts on; tyre pressure = kPa +- 10").value();
    const std::vector before = {roundAt(study.runs[0], 60, 230.0), roundAt(study.runs[2], 60)};
    EXPECT_TRUE(differencesOf(lines, before, roundAt(study.runs[4], 60, 240.0)).empty());
    EXPECT_TRUE(differencesOf(lines, before, roundAt(study.runs[4], 60)).empty());
    const auto apart = differencesOf(lines, before, roundAt(study.runs[4], 60, 219.9));
    ASSERT_EQ(apart.size(), 1U) << "against the last number that there is";
    EXPECT_EQ(apart[0].before, 230.0);
    EXPECT_EQ(apart[0].now, 219.9);
}

TEST(WalkRound, IsAskedForBeforeTheRunThatWouldBeginABlock)
{
    Study study = tests::aDay("ABA", 1);
    core::Run next = study.runs.back(); // A again: the same block
    next.number = 99;
    next.start.us += std::int64_t{600} * 1'000'000;
    EXPECT_FALSE(wouldBeWithoutWalkRound(study, next, {})) << "no list";
    study.properties.walk_round = "belts on";
    EXPECT_FALSE(wouldBeWithoutWalkRound(study, next, {}));
    core::Run other = next;
    other.configuration = study.runs[2].configuration;
    EXPECT_TRUE(wouldBeWithoutWalkRound(study, other, {}));
    EXPECT_FALSE(wouldBeWithoutWalkRound(study, other, {roundAt(other, 60)}));
    EXPECT_TRUE(wouldBeWithoutWalkRound(study, other, {roundAt(study.runs.back(), 60)}))
        << "that one was the block before";
    next.start.us += 2 * kNewDay_us;
    EXPECT_TRUE(wouldBeWithoutWalkRound(study, next, {})) << "a new day";
    study.runs.clear();
    EXPECT_TRUE(wouldBeWithoutWalkRound(study, next, {}));
}

TEST(WalkRound, GivesItsNumbersToTheRunThatFollows)
{
    core::Run run;
    run.number = 5;
    run.extra = {{"tyre pressure (kPa)", "230"}};
    WalkRound round;
    round.run = 5;
    round.ticks = {{"tyre pressure", true, 250.0, "kPa"}, {"blade", true, 1.5, "deg"}};
    WalkRound other = round;
    other.run = 4;
    other.ticks[1].number = 9.0;
    putNumbers(run, {round, other});
    ASSERT_EQ(run.extra.size(), 2U);
    EXPECT_EQ(run.extra[0].second, "230") << "what was noted stays";
    EXPECT_EQ(run.extra[1], (std::pair<std::string, std::string>("blade (deg)", "1.5")));
}

} // namespace
} // namespace bothways::core
