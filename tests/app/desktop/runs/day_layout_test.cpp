// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/day_layout.h"

#include "core/answer/analyse.h"
#include "tests/storage/study/study_builders.h"

#include <gmock/gmock.h>

#include <random>

using namespace bothways;
using namespace bothways::app;
using bothways::tests::aRun;
using Part = BracketPiece::Part;

namespace {

core::Pair aPair(int number, std::size_t one, std::size_t other)
{
    core::Pair pair;
    pair.number = number;
    pair.out_index = one;
    pair.return_index = other;
    return pair;
}

std::vector<int> blocksOf(const core::Study& study)
{
    std::vector<int> blocks;
    for (const BlockPlace& place : blockPlaces(study))
        blocks.push_back(place.block);
    return blocks;
}

} // namespace

TEST(DayLayout, ANewBlockBeginsAtEachSwitchAndOnEachDay)
{
    core::Study study;
    study.runs = {aRun().at_min(0),           aRun().returning().at_min(7),
                  aRun().device().at_min(30), aRun().at_min(60),
                  aRun().at_min(60 + 361),    aRun().returning().at_min(60 + 368)};
    EXPECT_THAT(blocksOf(study), testing::ElementsAre(1, 1, 2, 3, 4, 4));
    const auto places = blockPlaces(study);
    EXPECT_EQ(places[1].row, 1);
    EXPECT_EQ(places[0].rows, 2);
    EXPECT_EQ(places[5].day, 1);
}

TEST(DayLayout, SixHoursToTheMicrosecondAreStillTheSameDay)
{
    core::Study study;
    study.runs = {aRun().at_min(0), aRun().at_min(360)};
    EXPECT_THAT(blocksOf(study), testing::ElementsAre(1, 1));
    study.runs[1].start.us += 1;
    EXPECT_THAT(blocksOf(study), testing::ElementsAre(1, 2));
}

TEST(DayLayout, BlocksAreTheOnesOfTheAnalysis)
{
    std::mt19937 random(7);
    for (int round = 0; round < 200; ++round) {
        core::Study study;
        int minute = 0;
        for (int i = 0; i < 12; ++i) {
            auto run = aRun();
            if (random() % 2 == 0)
                run.device();
            if (random() % 2 == 0)
                run.returning();
            study.runs.push_back(run.number(i + 1).at_min(minute));
            if (random() % 4 == 0)
                study.runs.back().discard = core::Discard{"adjusted", ""};
            minute += random() % 8 == 0 ? 400 : 7;
        }
        const core::Analysis analysis = core::analyse(study, {});
        const auto blocks = blocksOf(study);
        ASSERT_EQ(blocks.empty() ? 0 : blocks.back(), static_cast<int>(analysis.blocks.size()))
            << "round " << round;
        for (const core::Pair& pair : analysis.pairs)
            EXPECT_EQ(blocks[pair.out_index], pair.block) << "round " << round;
    }
}

TEST(DayLayout, NeighboursShareALaneAndCrossingPairsDoNot)
{
    const auto pieces = pairBrackets({aPair(1, 0, 2), aPair(2, 1, 3), aPair(3, 5, 4)}, 6);
    using Pieces = BracketPieces;
    EXPECT_EQ(pieces[0], (Pieces{{0, Part::top, 1, false}}));
    EXPECT_EQ(pieces[1], (Pieces{{0, Part::middle, 1, false}, {1, Part::top, 2, false}}));
    EXPECT_EQ(pieces[2], (Pieces{{0, Part::bottom, 1, false}, {1, Part::middle, 2, false}}));
    EXPECT_EQ(pieces[3], (Pieces{{1, Part::bottom, 2, false}}));
    EXPECT_EQ(pieces[4], (Pieces{{0, Part::top, 3, false}})) << "a lane that is free is used again";
}

TEST(DayLayout, PairsOfAnOlderAnswerThatNameNoRunAreLeftOut)
{
    const auto pieces = pairBrackets({aPair(1, 0, 9)}, 2);
    EXPECT_TRUE(pieces[0].empty());
}
