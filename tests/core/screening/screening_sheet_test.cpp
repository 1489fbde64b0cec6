// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/finding.h"
#include "core/screening/screening.h"
#include "core/study/rule.h"

#include "core/study/clock.h"

#include "tests/core/screening/screening_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using namespace bothways::core;
using namespace bothways::core::tests;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

namespace {

/// A run of 3.5 minutes that starts `minutes` after the rear window was switched on.
Run afterSwitchOn(int number, double minutes)
{
    return aRun(number).with([=](auto& run) {
        run.duration_s = 210.0;
        run.accessory_on_s["rear_window"] = -60.0 * minutes;
    });
}

Study withRearWindow(std::vector<Run> runs)
{
    Study study = studyOf(std::move(runs));
    study.properties.timed_accessories = {{"rear_window", 200.0, 15.0}};
    return study;
}

} // namespace

// Common practice, no source: a heated rear window draws 200 W and goes off by itself after 15 min.
TEST(AccessoryTimer, SpoilsTheRunInWhichItDropsOutAndThoseAfter)
{
    const Screening screening = screen(withRearWindow(
        {afterSwitchOn(1, 2), afterSwitchOn(2, 9), afterSwitchOn(3, 14), afterSwitchOn(4, 16)}));
    const auto found = findingsOf(screening, Rule::accessoryTimer);
    ASSERT_THAT(found, SizeIs(2));
    EXPECT_EQ(found[0].run, 3);
    EXPECT_EQ(found[0].value, -200.0);
    EXPECT_EQ(found[0].unit, "W");
    EXPECT_EQ(found[0].from_s, 60.0);
    EXPECT_EQ(found[0].to_s, 210.0);
    EXPECT_EQ(found[0].grade, Grade::spoils);
    EXPECT_EQ(detailOf(found[0]), "rear_window");
    EXPECT_EQ(found[1].run, 4);
    EXPECT_EQ(found[1].from_s, std::nullopt) << "it dropped out before the run";
}

TEST(AccessoryTimer, LeavesARunThatEndsAsItDropsOut)
{
    EXPECT_THAT(findingsOf(screen(withRearWindow({afterSwitchOn(1, 11.5)})), Rule::accessoryTimer),
                IsEmpty());
    EXPECT_THAT(findingsOf(screen(withRearWindow({afterSwitchOn(1, 11.51)})), Rule::accessoryTimer),
                SizeIs(1));
}

TEST(AccessoryTimer, SeesOneSwitchedOnDuringTheRun)
{
    Study study = withRearWindow({aRun(1).with([](auto& run) {
        run.duration_s = 1200.0;
        run.accessory_on_s["Rear Window"] = 100.0;
    })});
    const auto found = findingsOf(screen(study), Rule::accessoryTimer);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].from_s, 1000.0);
    study.runs[0].accessory_on_s["Rear Window"] = 400.0;
    EXPECT_THAT(findingsOf(screen(study), Rule::accessoryTimer), IsEmpty());
}

TEST(AccessoryTimer, SaysWhatItMisses)
{
    const Screening undeclared = screen(studyOf({aRun()}));
    EXPECT_EQ(whyNot(undeclared, Rule::accessoryTimer)->why, WhyNotChecked::noLimit);
    const Screening untimed = screen(withRearWindow({aRun()}));
    ASSERT_TRUE(whyNot(untimed, Rule::accessoryTimer));
    EXPECT_EQ(whyNot(untimed, Rule::accessoryTimer)->why, WhyNotChecked::noSetTime);
    EXPECT_EQ(whyNot(untimed, Rule::accessoryTimer)->what, "rear_window_on_s");
    Study endless = withRearWindow({afterSwitchOn(1, 14)});
    endless.runs[0].duration_s.reset();
    EXPECT_EQ(whyNot(screen(endless), Rule::accessoryTimer)->what, "duration_s");
}

TEST(AccessoryChange, ComparesTheSheetWithWhatWasDeclared)
{
    const Limits limits = {{"accessory_change.declared_w", 180.0}};
    const auto drawing = [&](double watts) {
        return findingsOf(
            screen(studyOf({aRun().with([=](auto& run) { run.accessory_w = watts; })}, limits)),
            Rule::accessoryChange);
    };
    EXPECT_THAT(drawing(229.9), IsEmpty());
    ASSERT_THAT(drawing(130.0), SizeIs(1));
    EXPECT_EQ(drawing(130.0)[0].value, -50.0);
    EXPECT_EQ(drawing(130.0)[0].limit, 50.0);
    EXPECT_EQ(drawing(130.0)[0].from_s, std::nullopt);
    const Screening none = screen(studyOf({aRun()}, limits));
    EXPECT_EQ(whyNot(none, Rule::accessoryChange)->what, "accessory_w");
}

TEST(Overspeed, ReadsTheSheetsHighestSpeed)
{
    const auto turning = [](double rpm) {
        return screen(studyOf({aRun().with([=](auto& run) { run.rotor_rpm_max = rpm; })},
                              {{"overspeed.rpm", 3200.0}}));
    };
    EXPECT_THAT(findingsOf(turning(3200.0), Rule::overspeed), IsEmpty());
    const auto found = findingsOf(turning(3410.0), Rule::overspeed);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].value, 3410.0);
    EXPECT_EQ(found[0].limit, 3200.0);
    EXPECT_EQ(whyNot(screen(studyOf({aRun()})), Rule::overspeed)->what, "overspeed.rpm");
}

TEST(Stretch, AllowsExactlyTwoPerCent)
{
    const auto driven = [](double km) {
        return findingsOf(screen(studyOf({aRun().with([=](auto& run) { run.distance_km = km; })},
                                         {{"stretch.km", 5.0}})),
                          Rule::stretch);
    };
    EXPECT_THAT(driven(5.1), IsEmpty());
    EXPECT_THAT(driven(4.9), IsEmpty());
    ASSERT_THAT(driven(4.88), SizeIs(1));
    EXPECT_NEAR(*driven(4.88)[0].value, -2.4, 1e-9);
}

TEST(BatteryBalance, ReadsVoltsAsDecimalsNotAsBinary)
{
    const auto between = [](double start_v, double end_v) {
        return findingsOf(screen(studyOf({aRun().with([=](auto& run) {
                              run.battery_v_start = start_v;
                              run.battery_v_end = end_v;
                          })})),
                          Rule::batteryBalance);
    };
    EXPECT_THAT(between(12.1, 12.3), IsEmpty()) << "12.3 - 12.1 is more than 0.2 in binary";
    EXPECT_THAT(between(12.4, 12.6), IsEmpty());
    ASSERT_THAT(between(12.6, 12.39), SizeIs(1));
    EXPECT_NEAR(*between(12.6, 12.39)[0].value, -0.21, 1e-12);
    EXPECT_EQ(between(12.6, 12.39)[0].grade, Grade::doubtful);
}

TEST(WarmingUp, NotesRunsSoonAfterTheColdStart)
{
    Study study = studyOf({aRun(1), aRun(2)});
    EXPECT_EQ(whyNot(screen(study), Rule::warmingUp)->what, "cold_start");
    study.runs[0].start = parseDateTime("2026-05-09T05:39:00+02:00").value();
    study.runs[1].start = parseDateTime("2026-05-09T05:41:00+02:00").value();
    study.properties.cold_start = parseDateTime("2026-05-09T05:10:00+02:00").value();
    const auto found = findingsOf(screen(study), Rule::warmingUp);
    ASSERT_THAT(found, SizeIs(1));
    EXPECT_EQ(found[0].run, 1);
    EXPECT_DOUBLE_EQ(*found[0].value, 29.0);
    EXPECT_EQ(found[0].grade, Grade::note);
    study.properties.cold_start = parseDateTime("2026-05-09T05:10:00").value();
    EXPECT_THAT(findingsOf(screen(study), Rule::warmingUp), SizeIs(1))
        << "a cold start without an offset is on the clock of the place";
}

TEST(SameRunTwice, NamesTheEarlierRun)
{
    const core::Run first = aRun(1);
    core::Run again = first;
    again.number = 2;
    const auto twice = [&](const core::Run& second) {
        return findingsOf(screen(studyOf({first, second})), Rule::sameRunTwice);
    };
    ASSERT_THAT(twice(again), SizeIs(1));
    EXPECT_EQ(twice(again)[0].run, 2);
    EXPECT_EQ(twice(again)[0].value, 1.0);
    core::Run other = again;
    other.consumption->value = 8.01;
    EXPECT_THAT(twice(other), IsEmpty());
    other = again;
    other.direction = "return";
    EXPECT_THAT(twice(other), IsEmpty());
    other = again;
    other.start.us += 1'000'000;
    EXPECT_THAT(twice(other), IsEmpty());
}

TEST(Marks, CountForTheRuleTheyName)
{
    const Screening screening = screen(studyOf({aRun()
                                                    .mark(31.2, "passing_traffic", "lorry")
                                                    .mark(80.0, "gust")
                                                    .mark(120.0, "Adjusted", "mirror")
                                                    .mark(-3.0, "adjusted")
                                                    .mark(200.5, "adjusted")}));
    ASSERT_THAT(screening.findings, SizeIs(2));
    EXPECT_EQ(screening.findings[0].rule, Rule::passingTraffic);
    EXPECT_EQ(screening.findings[0].grade, Grade::doubtful);
    EXPECT_EQ(screening.findings[0].from_s, 31.2);
    EXPECT_EQ(screening.findings[0].to_s, 31.2);
    EXPECT_EQ(screening.findings[0].value, std::nullopt);
    EXPECT_EQ(detailOf(screening.findings[0]), "lorry");
    EXPECT_EQ(screening.findings[1].rule, Rule::adjusted);
    EXPECT_EQ(screening.findings[1].grade, Grade::spoils);
    EXPECT_FALSE(whyNot(screening, Rule::passingTraffic));
}

TEST(Marks, MayHaveAColonAfterTheirFirstWord)
{
    const Screening screening = screen(studyOf({aRun().mark(50.0, "adjusted:", "belt")}));
    ASSERT_THAT(findingsOf(screening, Rule::adjusted), SizeIs(1));
    EXPECT_EQ(detailOf(screening.findings[0]), "belt");
}

TEST(Marks, LessThanASecondApartAreOneEvent)
{
    const auto marked = [](double at_s) {
        return findingsOf(
            screen(studyOf({aRun().mark(10.0, "adjusted", "a").mark(at_s, "adjusted", "b")})),
            Rule::adjusted);
    };
    ASSERT_THAT(marked(10.9), SizeIs(1));
    EXPECT_EQ(marked(10.9)[0].to_s, 10.9);
    EXPECT_EQ(detailOf(marked(10.9)[0]), "a, b");
    EXPECT_THAT(marked(11.0), SizeIs(2));
}

TEST(Screening, SaysThatARunWithoutARecordingWasNotChecked)
{
    const Screening screening = screen(studyOf({aRun()}));
    EXPECT_THAT(screening.findings, IsEmpty());
    for (const Rule rule : {Rule::loadLost, Rule::notCruising, Rule::sensorLost})
        EXPECT_EQ(whyNot(screening, rule)->why, WhyNotChecked::noTrace) << ruleName(rule);
    EXPECT_FALSE(whyNot(screening, Rule::adjusted));
}

TEST(ApplyScreening, DiscardsWhatASpoilsFindingNamesAndNothingElse)
{
    Study study =
        studyOf({aRun(1).mark(5.0, "passing_traffic"), aRun(2).mark(40.0, "adjusted", "rack"),
                 aRun(3).mark(40.0, "adjusted"), aRun(4)});
    study.runs[2].discard = Discard{"other", "dog on the road"};
    EXPECT_THAT(applyScreening(study, screen(study)), ElementsAre(2));
    EXPECT_TRUE(study.runs[0].counted());
    EXPECT_EQ(study.runs[1].discard->reason, "adjusted");
    EXPECT_EQ(study.runs[1].discard->evidence, "40.0-40.0 s, rack");
    EXPECT_EQ(study.runs[2].discard->reason, "other") << "the first reason stays";
    EXPECT_TRUE(study.runs[3].counted());
}
