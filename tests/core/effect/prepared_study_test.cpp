// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/prepared_study.h"

#include "tests/support/study_builder.h"

#include <gmock/gmock.h>

#include <cmath>

using namespace bothways;
using core::NoteKind;
using core::PreparedStudy;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using tests::aDrivenRun;
using tests::StudyBuilder;

namespace {

PreparedStudy prepare(const core::Study& study, core::AnalysisOptions options = {})
{
    return core::prepareStudy(study, options);
}

/// "1-2 3-4": out and return run of each pair, in order of number.
std::string pairsIn(const PreparedStudy& prepared)
{
    std::string text;
    for (const core::Pair& pair : prepared.pairs)
        text += (text.empty() ? "" : " ") + std::to_string(pair.out_run) + '-' +
                std::to_string(pair.return_run);
    return text;
}

std::vector<NoteKind> notesOf(const PreparedStudy& prepared)
{
    std::vector<NoteKind> kinds;
    for (const core::Note& note : prepared.notes)
        kinds.push_back(note.kind);
    return kinds;
}

} // namespace

TEST(PreparedStudy, OutOutReturnReturnPairsFirstWithThird)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0)).add(aDrivenRun().out().at_min(7));
    study.add(aDrivenRun().back().at_min(14)).add(aDrivenRun().back().at_min(21));
    EXPECT_EQ(pairsIn(prepare(study)), "1-3 2-4");
}

TEST(PreparedStudy, LeavesARunAloneWhenTheNextIsTooFarAway)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0)).add(aDrivenRun().back().at_min(31));
    study.add(aDrivenRun().out().at_min(60))
        .add(aDrivenRun().back().at_min(90)); // 30 min is allowed
    const PreparedStudy prepared = prepare(study);
    EXPECT_EQ(pairsIn(prepared), "3-2"); // 29 min, closer than 30
    EXPECT_THAT(prepared.unpaired, ElementsAre(1, 4));
}

TEST(PreparedStudy, AGapEqualToTheWidestIsAllowed)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0)).add(aDrivenRun().back().at_min(30));
    EXPECT_EQ(pairsIn(prepare(study)), "1-2");
    core::AnalysisOptions narrower;
    narrower.max_gap_min = 29.999;
    EXPECT_EQ(pairsIn(prepare(study, narrower)), "");
}

// 0.1 + 0.2 min is not 0.3 min in doubles; in milliseconds it is.
TEST(PreparedStudy, EqualGapsAreEqualWhateverTheirDoubles)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0.1).lasting_s({}))
        .add(aDrivenRun().back().at_min(0.4).lasting_s({}));
    study.add(aDrivenRun().out().at_min(0.7).lasting_s({}));
    EXPECT_EQ(pairsIn(prepare(study)), "1-2");
}

TEST(PreparedStudy, TakesTheMidTimeFromDurationElseFromSpeedElseFromTheStart)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0).lasting_s(600));
    study.add(aDrivenRun().back().at_min(20).lasting_s({}).over_km(10).speed_kmh(60));
    study.add(aDrivenRun().out().at_min(40).lasting_s({}).over_km({}).speed_kmh(60));
    const PreparedStudy prepared = prepare(study);
    EXPECT_DOUBLE_EQ(prepared.runs[0].t_h, 5.0 / 60.0);
    EXPECT_DOUBLE_EQ(prepared.runs[1].t_h, 25.0 / 60.0);
    EXPECT_DOUBLE_EQ(prepared.runs[2].t_h, 40.0 / 60.0);
    EXPECT_DOUBLE_EQ(prepared.pairs[0].time_h, (25.0 + 40.0) / 2.0 / 60.0);
}

TEST(PreparedStudy, AnAbsurdDurationIsNoCrash)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0).lasting_s(1e300)).add(aDrivenRun().back().at_min(7));
    EXPECT_THAT(prepare(study).unpaired, ElementsAre(1, 2));
}

TEST(PreparedStudy, TimeIsCountedFromTheFirstRunEvenIfDiscarded)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(100).discarded());
    study.add(aDrivenRun().out().at_min(160).lasting_s({}))
        .add(aDrivenRun().back().at_min(220).lasting_s({}));
    EXPECT_DOUBLE_EQ(prepare(study).runs[0].t_h, 1.0);
}

TEST(PreparedStudy, ADiscardedRunStillSeparatesBlocks)
{
    StudyBuilder study;
    study.add(aDrivenRun().a().out().at_min(0)).add(aDrivenRun().a().back().at_min(7));
    study.add(aDrivenRun().b().out().at_min(14).discarded());
    study.add(aDrivenRun().a().out().at_min(21)).add(aDrivenRun().a().back().at_min(28));
    const PreparedStudy prepared = prepare(study);
    ASSERT_EQ(prepared.blocks.size(), 3U);
    EXPECT_EQ(prepared.blocks[1].runs, 0);
    EXPECT_EQ(prepared.pairs[1].block, 3);
    ASSERT_EQ(prepared.design_blocks.size(), 1U); // without pairs of B, the two A are neighbours
    EXPECT_THAT(prepared.design_blocks[0].blocks, ElementsAre(1, 3));
    EXPECT_FALSE(prepared.design);
}

TEST(PreparedStudy, PairsAcrossMidnight)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(23 * 60 + 55)).add(aDrivenRun().back().at_min(24 * 60 + 2));
    const PreparedStudy prepared = prepare(study);
    EXPECT_EQ(pairsIn(prepared), "1-2");
    EXPECT_EQ(prepared.days, 1);
}

TEST(PreparedStudy, MoreThanSixHoursBeginADayAndABlock)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0))
        .add(aDrivenRun().back().at_min(360)); // six hours: the same day
    study.add(aDrivenRun().out().at_min(720.001));
    core::AnalysisOptions options;
    options.max_gap_min = 10'000;
    const PreparedStudy prepared = prepare(study, options);
    EXPECT_EQ(prepared.days, 2);
    ASSERT_EQ(prepared.blocks.size(), 2U);
    EXPECT_EQ(prepared.blocks[1].day, 1);
    EXPECT_EQ(pairsIn(prepared), "1-2");
}

TEST(PreparedStudy, OpenAndClosedAreDecidedByBlocksWithPairs)
{
    EXPECT_EQ(prepare(tests::aDay("AB", 2)).design, core::Design::open);
    EXPECT_EQ(prepare(tests::aDay("BA", 2)).design, core::Design::open);
    EXPECT_EQ(prepare(tests::aDay("ABA", 2)).design, core::Design::closed);
    EXPECT_EQ(prepare(tests::aDay("BAB", 1)).design, core::Design::closed);
    EXPECT_FALSE(prepare(tests::aDay("A", 4)).design);
    EXPECT_FALSE(prepare({}).design);

    core::Study study = tests::aDay("ABA", 1);
    study.runs.back().discard = core::Discard{"other", "spoiled"}; // the last block has no pair
    EXPECT_EQ(prepare(study).design, core::Design::open);
}

TEST(PreparedStudy, AnyClosedDayClosesTheDesign)
{
    core::Study study = tests::aDay("ABA", 2);
    for (core::Run run : tests::aDay("BA", 2).runs) {
        run.start.us += std::int64_t{24} * 3600 * 1'000'000;
        run.number += 100;
        study.runs.push_back(run);
    }
    const PreparedStudy prepared = prepare(study);
    EXPECT_EQ(prepared.design, core::Design::closed);
    EXPECT_TRUE(prepared.sloped()); // every day, the open one too
    EXPECT_THAT(prepared.days_with_pairs, ElementsAre(0, 1));
    EXPECT_EQ(prepared.design_blocks.size(), 5U); // A at night and B in the morning stay apart
}

TEST(PreparedStudy, AnOpenDayTwiceIsOpen)
{
    core::Study study = tests::aDay("AB", 2);
    for (core::Run run : tests::aDay("BA", 2).runs) {
        run.start.us += std::int64_t{24} * 3600 * 1'000'000;
        study.runs.push_back(run);
    }
    EXPECT_EQ(prepare(study).design, core::Design::open);
}

TEST(PreparedStudy, PairValueIsTotalFuelOverTotalDistance)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0).over_km(4).using_l(10));
    study.add(aDrivenRun().back().at_min(7).over_km(6).using_l(8));
    const core::Pair pair = prepare(study).pairs.at(0);
    EXPECT_DOUBLE_EQ(pair.l_per_100km, (10.0 * 4 + 8.0 * 6) / 10.0);
    EXPECT_DOUBLE_EQ(pair.log, std::log(8.8));
}

TEST(PreparedStudy, OneUnknownDistanceMeansEqualWeights)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0).over_km(4).using_l(10));
    study.add(aDrivenRun().back().at_min(7).over_km({}).using_l(8));
    EXPECT_DOUBLE_EQ(prepare(study).pairs.at(0).l_per_100km, 9.0);
}

TEST(PreparedStudy, MilesAGallonAreConvertedBeforeTheyAreAveraged)
{
    using core::ConsumptionUnit;
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0).over_km({}).using_unit(20.0, ConsumptionUnit::mpgUs));
    study.add(aDrivenRun().back().at_min(7).over_km({}).using_unit(40.0, ConsumptionUnit::mpgUs));
    EXPECT_DOUBLE_EQ(prepare(study).pairs.at(0).l_per_100km,
                     core::kLPer100kmTimesMpgUs * (1.0 / 20.0 + 1.0 / 40.0) / 2.0);
}

TEST(PreparedStudy, MarksAPairOfDifferentSettings)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0).setting("20"))
        .add(aDrivenRun().back().at_min(7).setting("20.0"));
    study.add(aDrivenRun().out().at_min(40).setting("20"))
        .add(aDrivenRun().back().at_min(47).setting("22"));
    const PreparedStudy prepared = prepare(study);
    EXPECT_FALSE(prepared.pairs[0].mixed_setting);
    EXPECT_TRUE(prepared.pairs[1].mixed_setting);
}

TEST(PreparedStudy, AFixedPairComesFirstWhateverItsGap)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0).tied("x")).add(aDrivenRun().back().at_min(7));
    study.add(aDrivenRun().out().at_min(14)).add(aDrivenRun().back().at_min(60).tied("x"));
    const PreparedStudy prepared = prepare(study);
    EXPECT_EQ(pairsIn(prepared), "3-2 1-4");
    EXPECT_TRUE(prepared.pairs[1].fixed);
    EXPECT_FALSE(prepared.pairs[0].fixed);
    EXPECT_THAT(prepared.notes, IsEmpty());
}

TEST(PreparedStudy, AFixedPairRestsWhileOneOfItsRunsIsDiscarded)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0).tied("x")).add(aDrivenRun().back().at_min(7));
    study.add(aDrivenRun().back().at_min(14).tied("x").discarded());
    core::Study built = study;
    EXPECT_EQ(pairsIn(prepare(built)), "1-2");
    EXPECT_THAT(prepare(built).notes, IsEmpty());
    EXPECT_EQ(pairsIn(core::prepareStudy(built, {}, {.restored = {2}})), "1-3");
    built.runs[2].discard.reset();
    EXPECT_EQ(pairsIn(prepare(built)), "1-3");
}

TEST(PreparedStudy, AMarkThatCannotTieIsSaid)
{
    StudyBuilder study;
    study.add(aDrivenRun().a().out().at_min(0).tied("lonely"));
    study.add(aDrivenRun().a().back().at_min(7).tied("same direction"));
    study.add(aDrivenRun().a().back().at_min(14).tied("same direction"));
    study.add(aDrivenRun().a().out().at_min(21).tied("other block"));
    study.add(aDrivenRun().b().back().at_min(28).tied("other block"));
    const PreparedStudy prepared = prepare(study);
    EXPECT_THAT(notesOf(prepared), ElementsAre(NoteKind::pairMarkIgnored, NoteKind::pairMarkIgnored,
                                               NoteKind::pairMarkIgnored));
    EXPECT_EQ(prepared.notes[0].text.english(), "lonely");
}

TEST(PreparedStudy, PairsAreNumberedByTimeTiesByTheEarlierRun)
{
    StudyBuilder study; // nested: both pairs have their middle at 10.5 min
    study.add(aDrivenRun().out().at_min(0).lasting_s({}).tied("wide"));
    study.add(aDrivenRun().out().at_min(7).lasting_s({}).tied("narrow"));
    study.add(aDrivenRun().back().at_min(14).lasting_s({}).tied("narrow"));
    study.add(aDrivenRun().back().at_min(21).lasting_s({}).tied("wide"));
    EXPECT_EQ(pairsIn(prepare(study)), "1-4 2-3");
}

TEST(PreparedStudy, TheControlVehicleIsUsedWhenEveryCountedRunHasIt)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0).over_km(4).using_l(10).control(5));
    study.add(aDrivenRun().back().at_min(7).over_km(6).using_l(8).control(6));
    study.add(aDrivenRun().out().at_min(14).discarded());
    const PreparedStudy prepared = prepare(study);
    EXPECT_TRUE(prepared.control);
    EXPECT_THAT(notesOf(prepared), ElementsAre(NoteKind::controlUsed));
    EXPECT_DOUBLE_EQ(prepared.pairs[0].l_per_100km, 8.8); // still the vehicle's own
    EXPECT_NEAR(prepared.pairs[0].log, std::log(8.8 / 5.6), 1e-15);
    EXPECT_NEAR(prepared.runs[0].y, std::log(10.0 / 5.0), 1e-15);
}

TEST(PreparedStudy, AnIncompleteControlVehicleIsIgnoredAndSaid)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0).using_l(10).control(5));
    study.add(aDrivenRun().back().at_min(7).using_l(8));
    const PreparedStudy prepared = prepare(study);
    EXPECT_FALSE(prepared.control);
    EXPECT_THAT(notesOf(prepared), ElementsAre(NoteKind::controlIncomplete));
    EXPECT_DOUBLE_EQ(prepared.pairs[0].log, std::log(9.0));
}

TEST(PreparedStudy, KnowsAnElectricDriveAndAMixture)
{
    StudyBuilder study;
    study.add(aDrivenRun().out().at_min(0).using_unit(18, core::ConsumptionUnit::kwhPer100km));
    EXPECT_TRUE(prepare(study).electric);
    study.add(aDrivenRun().back().at_min(7).using_l(8));
    EXPECT_FALSE(prepare(study).electric);
    EXPECT_THAT(notesOf(prepare(study)), ElementsAre(NoteKind::mixedUnits));
}

TEST(PreparedStudy, NothingIsDroppedSilently)
{
    StudyBuilder study; // none of these belongs in a valid study; each stays visible
    study.add(aDrivenRun().a().out().at_min(0))
        .add(aDrivenRun().a().back().at_min(7).without_consumption());
    study.add(aDrivenRun().b().out().at_min(14))
        .add(aDrivenRun().configuration("C").back().at_min(21));
    study.add(aDrivenRun().b().direction("sideways").at_min(28));
    study.add(aDrivenRun().b().back().at_min(35).over_km({}).using_unit(
        0.4, core::ConsumptionUnit::fuelL));
    const PreparedStudy prepared = prepare(study);
    EXPECT_EQ(prepared.counted, 6);
    EXPECT_THAT(prepared.unpaired, ElementsAre(1, 2, 3, 4, 5, 6));
}

TEST(PreparedStudy, TheBaselineCanBeNamed)
{
    core::AnalysisOptions options;
    options.baseline = "b";
    const PreparedStudy prepared = prepare(tests::aDay("ABA", 1), options);
    EXPECT_EQ(prepared.baseline, "B");
    EXPECT_EQ(prepared.device, "A");
    EXPECT_TRUE(prepared.pairs[0].device);
}

TEST(PreparedStudy, DesignBlocksCarryTheirMeans)
{
    const PreparedStudy prepared = prepare(tests::aDay("AB", 3));
    ASSERT_EQ(prepared.design_blocks.size(), 2U);
    const core::DesignBlock& b = prepared.design_blocks[1];
    EXPECT_TRUE(b.device);
    EXPECT_THAT(b.pairs, ElementsAre(3U, 4U, 5U));
    EXPECT_NEAR(b.m, (prepared.pairs[3].log + prepared.pairs[4].log + prepared.pairs[5].log) / 3.0,
                1e-15);
    EXPECT_NEAR(b.t_h, prepared.pairs[4].time_h, 1e-12);
}
