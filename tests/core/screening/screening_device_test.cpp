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

/// A healthy run and one with `trace`, both with the device, so that a usual value is known.
Screening deviceScreened(const TraceBuilder& trace, Limits limits = allLimitsSet())
{
    return screen(
        studyOf({aRun(1).device(), aRun(2).device(), aRun(3).device()}, limits),
        Recordings().add(1, trace).add(2, aHealthyTrace(10.0, 2)).add(3, aHealthyTrace(10.0, 3)));
}

std::vector<Finding> foundOfDevice(Rule rule, const TraceBuilder& trace,
                                   Limits limits = allLimitsSet())
{
    return findingsOf(deviceScreened(trace, std::move(limits)), rule);
}

} // namespace

TEST(OverspeedInTrace, HasPeakSpanLengthAndTheOutputBefore)
{
    auto trace = aHealthyTrace();
    trace.set("rotor_rpm", 96.0, 97.0, 3300.0).set("rotor_rpm", 96.4, 96.4, 3410.0);
    trace.set("output_w", 95.0, 95.9, 700.0).set("output_w", 96.0, 97.0, 0.0);
    const auto events = foundOfDevice(Rule::overspeed, trace);
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_EQ(events[0].value, 3410.0);
    EXPECT_EQ(events[0].limit, 3200.0);
    EXPECT_EQ(events[0].unit, "rpm");
    EXPECT_NEAR(*events[0].from_s, 96.0, 1e-9);
    EXPECT_NEAR(*events[0].to_s, 97.0, 1e-9);
    EXPECT_NEAR(*events[0].length_s, 1.0, 1e-9);
    EXPECT_EQ(events[0].output_w, 700.0);
    EXPECT_EQ(events[0].grade, Grade::spoils);
}

TEST(OverspeedInTrace, LeavesTheLimitItselfAndWhatIsTooShort)
{
    EXPECT_THAT(
        foundOfDevice(Rule::overspeed, aHealthyTrace().set("rotor_rpm", 90.0, 99.0, 3200.0)),
        IsEmpty());
    EXPECT_THAT(
        foundOfDevice(Rule::overspeed, aHealthyTrace().set("rotor_rpm", 96.0, 96.4, 3300.0)),
        IsEmpty());
    EXPECT_THAT(
        foundOfDevice(Rule::overspeed, aHealthyTrace().set("rotor_rpm", 96.0, 96.5, 3300.0)),
        SizeIs(1))
        << "0.5 s from its first to its last sample";
}

TEST(OverspeedInTrace, JoinsWhatIsLessThanASecondApart)
{
    const auto twice = [](double second_s) {
        return foundOfDevice(Rule::overspeed,
                             aHealthyTrace()
                                 .set("rotor_rpm", 90.0, 91.0, 3300.0)
                                 .set("rotor_rpm", second_s, second_s + 1.0, 3350.0));
    };
    EXPECT_THAT(twice(92.0), SizeIs(2));
    ASSERT_THAT(twice(91.9), SizeIs(1));
    EXPECT_EQ(twice(91.9)[0].value, 3350.0);
    EXPECT_NEAR(*twice(91.9)[0].to_s, 92.9, 1e-9);
}

TEST(OverspeedInTrace, ReadsTheGeneratorWhereTheRotorIsNotRecorded)
{
    auto trace = aHealthyTrace().without("rotor_rpm").set("generator_rpm", 50.0, 52.0, 10400.0);
    Limits limits = allLimitsSet();
    limits["overspeed.rpm"] = 10000.0;
    const auto events = foundOfDevice(Rule::overspeed, trace, limits);
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_EQ(events[0].value, 10400.0);
}

TEST(OverspeedInTrace, TheRecordingComesBeforeTheSheet)
{
    Study study =
        studyOf({aRun().with([](auto& run) { run.rotor_rpm_max = 3400.0; })}, allLimitsSet());
    const Recordings healthy = Recordings().add(1, aHealthyTrace());
    EXPECT_THAT(findingsOf(screen(study, healthy), Rule::overspeed), IsEmpty());
    const Recordings blind =
        Recordings().add(1, aHealthyTrace().without("rotor_rpm").without("generator_rpm"));
    EXPECT_THAT(findingsOf(screen(study, blind), Rule::overspeed), SizeIs(1));
    study.runs[0].rotor_rpm_max.reset();
    EXPECT_EQ(whyNot(screen(study, blind), Rule::overspeed)->what, "rotor_rpm");
}

TEST(OverspeedInTrace, IsNotCheckedWhereRecordedOnceASecond)
{
    auto trace = aHealthyTrace(1.0).set("rotor_rpm", 90.0, 99.0, 3300.0);
    const Screening slow = deviceScreened(trace);
    EXPECT_THAT(findingsOf(slow, Rule::overspeed), IsEmpty());
    ASSERT_TRUE(whyNot(slow, Rule::overspeed));
    EXPECT_EQ(whyNot(slow, Rule::overspeed)->why, WhyNotChecked::recordedTooSlowly);
    EXPECT_EQ(whyNot(slow, Rule::overspeed)->what, "rotor_rpm");
    Limits longer = allLimitsSet();
    longer["overspeed.seconds"] = 1.0;
    EXPECT_THAT(foundOfDevice(Rule::overspeed, trace, longer), SizeIs(1));
}

TEST(LoadLost, SeesTheRotorTurnWithoutLoad)
{
    const auto events = foundOfDevice(
        Rule::loadLost,
        aHealthyTrace().set("output_w", 60.0, 70.0, 20.0).set("rotor_rpm", 65.0, 65.0, 3150.0));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_EQ(events[0].value, 3150.0);
    EXPECT_NEAR(*events[0].from_s, 60.0, 1e-9);
    EXPECT_NEAR(*events[0].to_s, 70.0, 1e-9);
    EXPECT_NEAR(*events[0].limit, 1400.0, 30.0) << "half the usual speed";
    EXPECT_EQ(events[0].grade, Grade::spoils);
}

TEST(LoadLost, LeavesALittleOutputAShortLossAndASlowRotor)
{
    EXPECT_THAT(foundOfDevice(Rule::loadLost, aHealthyTrace().set("output_w", 60.0, 70.0, 35.0)),
                IsEmpty());
    EXPECT_THAT(foundOfDevice(Rule::loadLost, aHealthyTrace().set("output_w", 60.0, 61.9, 0.0)),
                IsEmpty());
    EXPECT_THAT(
        foundOfDevice(
            Rule::loadLost,
            aHealthyTrace().set("output_w", 60.0, 70.0, 0.0).set("rotor_rpm", 60.0, 70.0, 1300.0)),
        IsEmpty());
}

TEST(LoadLost, SeesALossThatLastsTheWholeRun)
{
    const auto events =
        foundOfDevice(Rule::loadLost, aHealthyTrace().set("output_w", -10.0, 300.0, 0.0));
    ASSERT_THAT(events, SizeIs(1)) << "the usual output is that of all runs with the device";
    EXPECT_EQ(events[0].from_s, 0.0);
    EXPECT_EQ(events[0].to_s, 200.0);
}

TEST(LoadLost, CountsDiscardedRunsAmongTheUsual)
{
    Study study = studyOf({aRun(1).device(), aRun(2).device(), aRun(3).device()});
    study.runs[1].discard = study.runs[2].discard = Discard{"other", "lunch"};
    EXPECT_THAT(findingsOf(screen(study, Recordings()
                                             .add(1, aHealthyTrace().set("output_w", -10, 300, 0.0))
                                             .add(2, aHealthyTrace())
                                             .add(3, aHealthyTrace())),
                           Rule::loadLost),
                SizeIs(1));
}

TEST(LoadLost, SaysNothingOfAParkedDevice)
{
    const auto parked = [] {
        return aHealthyTrace()
            .set("output_w", -10, 300, 0.0)
            .set("rotor_rpm", -10, 300, 0.0)
            .set("generator_rpm", -10, 300, 0.0);
    };
    const Screening screening = screen(studyOf({aRun(1), aRun(2)}, allLimitsSet()),
                                       Recordings().add(1, parked()).add(2, parked()));
    EXPECT_THAT(screening.findings, IsEmpty());
}

TEST(LoadLost, TakesTheUsualSpeedOfAGeneratorFromRunsThatAlsoRecordedTheRotor)
{
    // Run 1 lost its rotor sensor and crept throughout; on its own its speed would be usual.
    const auto creeping =
        aHealthyTrace()
            .without("rotor_rpm")
            .edit("generator_rpm", -10, 300, [](double, double value) { return 0.4 * value; })
            .set("output_w", 60.0, 70.0, 0.0);
    const Study study = studyOf({aRun(1).device(), aRun(2).device(), aRun(3).device()});
    const Screening screening = screen(
        study,
        Recordings().add(1, creeping).add(2, aHealthyTrace()).add(3, aHealthyTrace(10.0, 3)));
    EXPECT_THAT(findingsOf(screening, Rule::loadLost), IsEmpty());
}

TEST(LoadLost, AnOutputAsOldAsALostSensorsLongestGapStillCounts)
{
    // The output comes every 0.2 s, so it may be 1 s old. Its gap is longer: the loss is known for
    // 1.2 s before it and 1 s into it. 61.2 - 60.2 is not exactly 1 in binary.
    for (int k = 0; k < 50; ++k) {
        const double begin_s = 50.0 + 0.2 * k;
        auto recording = aHealthyTrace().without("output_w").build();
        const MemoryTrace output = TraceBuilder(5.0)
                                       .channel("output_w", [](double) { return 600.0; })
                                       .set("output_w", begin_s + 0.2, begin_s + 1.4, 0.0)
                                       .cut("output_w", begin_s + 1.4, begin_s + 5.0)
                                       .build();
        recording.add("output_w", "W", *output.samples("output_w"));
        const auto events = findingsOf(
            screen(studyOf({aRun().device()}),
                   [&](const core::Run&) { return std::make_unique<MemoryTrace>(recording); }),
            Rule::loadLost);
        ASSERT_THAT(events, SizeIs(1)) << begin_s;
        EXPECT_NEAR(*events[0].from_s, begin_s + 0.2, 1e-9);
        EXPECT_NEAR(*events[0].to_s, begin_s + 2.4, 1e-9);
    }
}

TEST(LoadLost, NeedsTheOutput)
{
    const Screening blind = deviceScreened(aHealthyTrace().without("output_w"));
    EXPECT_EQ(whyNot(blind, Rule::loadLost)->why, WhyNotChecked::noChannel);
    EXPECT_EQ(whyNot(blind, Rule::loadLost)->what, "output_w");
}

TEST(DriveSlip, SeesTheBeltSlip)
{
    const auto events = foundOfDevice(
        Rule::driveSlip, aHealthyTrace().edit("generator_rpm", 80.0, 83.0,
                                              [](double, double rpm) { return 0.95 * rpm; }));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_NEAR(*events[0].from_s, 80.0, 1e-9);
    EXPECT_NEAR(*events[0].to_s, 83.0, 1e-9);
    EXPECT_NEAR(*events[0].value, -5.1, 0.3);
    EXPECT_EQ(events[0].unit, "%");
}

TEST(DriveSlip, LeavesTwoPerCentAndAHalfSecond)
{
    const auto slipping = [](double share, double to_s) {
        return foundOfDevice(Rule::driveSlip,
                             aHealthyTrace().edit("generator_rpm", 80.0, to_s,
                                                  [=](double, double rpm) { return share * rpm; }));
    };
    EXPECT_THAT(slipping(0.975, 90.0), IsEmpty());
    EXPECT_THAT(slipping(0.95, 80.9), IsEmpty());
    EXPECT_THAT(slipping(0.95, 300.0), SizeIs(1));
}

TEST(DriveSlip, AStandingRotorDoesNotSlip)
{
    EXPECT_THAT(foundOfDevice(Rule::driveSlip, aHealthyTrace()
                                                   .set("rotor_rpm", 80.0, 90.0, 0.0)
                                                   .set("generator_rpm", 80.0, 90.0, 0.0)),
                IsEmpty());
}

TEST(DriveSlip, WorksAtDifferentRates)
{
    auto trace = aHealthyTrace().without("generator_rpm");
    const auto rotor = [](double t) { return 2800.0 + 60.0 * std::sin(0.11 * t); };
    trace.channel("rotor_rpm", rotor);
    MemoryTrace both = trace.build();
    both.add("generator_rpm", "",
             *TraceBuilder(4.0, -9.9, 202.0)
                  .channel("generator_rpm",
                           [&](double t) { return (t > 80 && t < 84 ? 3.04 : 3.2) * rotor(t); })
                  .build()
                  .samples("generator_rpm"));
    const Screening screening = screen(studyOf({aRun(1).device()}), [&](const core::Run&) {
        return std::make_unique<MemoryTrace>(both);
    });
    const auto events = findingsOf(screening, Rule::driveSlip);
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_NEAR(*events[0].value, -5.0, 0.1);
    EXPECT_NEAR(*events[0].from_s, 80.1, 0.3);
}

TEST(OutputDrop, SeesAThirdOfTheOutputGo)
{
    const auto events = foundOfDevice(
        Rule::outputDrop,
        aHealthyTrace().edit("output_w", 120.0, 300.0, [](double, double w) { return 0.66 * w; }));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_NEAR(*events[0].from_s, 120.0, 1e-9);
    EXPECT_EQ(events[0].to_s, 200.0);
    EXPECT_NEAR(*events[0].value, -34.0, 1.5);
    EXPECT_EQ(events[0].limit, 25.0);
    EXPECT_EQ(events[0].grade, Grade::doubtful);
}

TEST(OutputDrop, LeavesAFifthAndARise)
{
    const auto changed = [](double share) {
        return foundOfDevice(Rule::outputDrop,
                             aHealthyTrace().edit("output_w", 120.0, 300.0,
                                                  [=](double, double w) { return share * w; }));
    };
    EXPECT_THAT(changed(0.78), IsEmpty());
    EXPECT_THAT(changed(1.5), IsEmpty());
    EXPECT_THAT(changed(0.72), SizeIs(1));
}

TEST(OutputDrop, LeavesADipThatComesBack)
{
    EXPECT_THAT(foundOfDevice(Rule::outputDrop,
                              aHealthyTrace().edit("output_w", 120.0, 140.0,
                                                   [](double, double w) { return w / 3; })),
                IsEmpty());
}

TEST(OutputDrop, SkipsSecondsWithoutASample)
{
    const auto events =
        foundOfDevice(Rule::outputDrop,
                      aHealthyTrace()
                          .edit("output_w", 120.0, 300.0, [](double, double w) { return 0.5 * w; })
                          .cut("output_w", 109.9, 125.0));
    ASSERT_THAT(events, SizeIs(1));
    EXPECT_NEAR(*events[0].from_s, 125.0, 1e-9);
}

TEST(Vibration, SeesASecondOfIt)
{
    const auto shaking = [](double to_s, double ms2) {
        return foundOfDevice(Rule::vibration,
                             aHealthyTrace().set("vibration_ms2", 50.0, to_s, ms2));
    };
    ASSERT_THAT(shaking(51.0, 9.0), SizeIs(1));
    EXPECT_EQ(shaking(51.0, 9.0)[0].value, 9.0);
    EXPECT_EQ(shaking(51.0, 9.0)[0].unit, "m/s²");
    EXPECT_EQ(shaking(51.0, 9.0)[0].grade, Grade::doubtful);
    EXPECT_THAT(shaking(50.9, 9.0), IsEmpty());
    EXPECT_THAT(shaking(60.0, 8.0), IsEmpty());
    const Screening unlimited = deviceScreened(aHealthyTrace(), {});
    EXPECT_EQ(whyNot(unlimited, Rule::vibration)->what, "vibration.ms2");
}
