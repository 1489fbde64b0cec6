// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/channels.h"
#include "core/screening/screening.h"
#include "core/study/limits.h"
#include "core/study/parts.h"
#include "core/study/properties.h"
#include "tests/core/recording/trace_builders.h"
#include "tests/core/screening/screening_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using namespace bothways::core;
using namespace bothways::core::tests;
using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;

// A device of two parts: each is asked by itself.

namespace {

constexpr const char* kParted[] = {"rotor_rpm", "generator_rpm", "output_w",
                                   "setting",   "setting_set",   "vibration_ms2"};

/// A healthy run whose device has a left and a right part, each like a whole one.
TraceBuilder twoParts(unsigned seed = 0)
{
    TraceBuilder whole = aHealthyTrace(10.0, seed);
    const MemoryTrace trace = whole.build();
    for (const char* channel : kParted) {
        const auto samples = trace.samples(channel);
        for (const char* part : {"left", "right"}) {
            const std::string name = ofPart(channel, part);
            whole.channel(name, [](double) { return 0.0; });
            whole.edit(name, -100.0, 1000.0, [&, i = std::size_t{0}](double, double) mutable {
                return samples->value[i++];
            });
        }
        whole.without(channel);
    }
    return whole;
}

Screening partsScreened(const TraceBuilder& trace, Limits limits = allLimitsSet())
{
    Recordings recordings;
    recordings.add(1, trace).add(2, twoParts(2)).add(3, twoParts(3));
    return screen(studyOf({aRun(1).device(), aRun(2).device(), aRun(3).device()}, limits),
                  recordings);
}

/// Rule and part of each finding.
std::vector<std::string> whatOf(const Screening& screening)
{
    std::vector<std::string> what;
    for (const Finding& finding : screening.findings)
        what.push_back(ofPart(ruleName(finding.rule), finding.part));
    return what;
}

} // namespace

TEST(Parts, NothingIsFoundOnTwoHealthyOnes)
{
    const Screening screening = partsScreened(twoParts(1));
    EXPECT_THAT(screening.findings, IsEmpty());
    for (const NotChecked& skipped : screening.not_checked)
        EXPECT_THAT(skipped.rule,
                    ::testing::AnyOf(Rule::accessoryTimer, Rule::batteryBalance, Rule::warmingUp));
}

// Shorter than 5 s, or not at one value: what stands still for longer is a frozen sensor as well.
TEST(Parts, OneThatIsFaultyIsNamedByEachRule)
{
    EXPECT_THAT(whatOf(partsScreened(twoParts(1)
                                         .set("rotor_rpm@left", 50.0, 51.0, 3300.0)
                                         .set("generator_rpm@left", 50.0, 51.0, 3300.0 * 3.2))),
                ElementsAre("overspeed@left"));
    EXPECT_THAT(whatOf(partsScreened(twoParts(1).set("output_w@right", 60.0, 70.0, 0.0))),
                ElementsAre("load_lost@right"));
    EXPECT_THAT(whatOf(partsScreened(twoParts(1).edit("generator_rpm@right", 120.0, 125.0,
                                                      [](double, double x) { return 1.06 * x; }))),
                ElementsAre("drive_slip@right"));
    EXPECT_THAT(whatOf(partsScreened(twoParts(1).edit("output_w@left", 100.0, 300.0,
                                                      [](double, double w) { return 0.6 * w; }))),
                ElementsAre("output_drop@left"));
    EXPECT_THAT(whatOf(partsScreened(twoParts(1).set("setting@right", 30.0, 34.0, 21.0))),
                ElementsAre("setting_mismatch@right"));
    EXPECT_THAT(whatOf(partsScreened(twoParts(1)
                                         .set("setting_set@left", 150.0, 300.0, 20.0)
                                         .edit("setting@left", 150.0, 300.0,
                                               [](double, double x) { return x + 2.0; }))),
                ElementsAre("setting_changed@left"));
    EXPECT_THAT(whatOf(partsScreened(twoParts(1).set("vibration_ms2@left", 150.0, 154.0, 12.0))),
                ElementsAre("vibration@left"));
    EXPECT_THAT(whatOf(partsScreened(twoParts(1).cut("rotor_rpm@right", 60.0, 70.0))),
                ElementsAre("sensor_lost@right"));
}

TEST(Parts, FaultsOfTwoAtOnceAreTwoFindings)
{
    const Screening screening = partsScreened(twoParts(1)
                                                  .set("vibration_ms2@left", 150.0, 154.0, 12.0)
                                                  .set("vibration_ms2@right", 151.0, 153.0, 14.0));
    ASSERT_THAT(whatOf(screening), ElementsAre("vibration@left", "vibration@right"));
    EXPECT_EQ(screening.findings[0].value, 12.0);
    EXPECT_EQ(screening.findings[1].value, 14.0);
}

TEST(Parts, EachHasItsOwnLimitOrElseTheCommonOne)
{
    const auto at3300 = [] {
        return twoParts(1)
            .set("rotor_rpm@left", 50.0, 51.0, 3300.0)
            .set("rotor_rpm@right", 80.0, 81.0, 3300.0)
            .set("generator_rpm@left", 50.0, 51.0, 3300.0 * 3.2)
            .set("generator_rpm@right", 80.0, 81.0, 3300.0 * 3.2);
    };
    EXPECT_THAT(whatOf(partsScreened(at3300())), ElementsAre("overspeed@left", "overspeed@right"));
    Limits limits = allLimitsSet();
    limits["overspeed@left.rpm"] = 3400.0;
    const Screening right = partsScreened(at3300(), limits);
    EXPECT_THAT(whatOf(right), ElementsAre("overspeed@right"));
    EXPECT_EQ(right.findings[0].limit, 3200.0);
    limits.erase("overspeed.rpm");
    const Screening none = partsScreened(at3300(), limits);
    EXPECT_THAT(whatOf(none), IsEmpty());
    const auto why = whyNot(none, Rule::overspeed);
    ASSERT_TRUE(why) << "the right part has no limit";
    EXPECT_EQ(why->part, "right");
    EXPECT_EQ(why->why, WhyNotChecked::noLimit);
}

TEST(Parts, OutputIsTheirSumWhereNoTotalIsRecorded)
{
    MemoryTrace trace;
    trace.add("output_w@left", "W", {{0.0, 1.0, 2.0, 3.0}, {100.0, 110.0, 120.0, 130.0}});
    trace.add("output_w@right", "W", {{0.0, 2.0, 3.0}, {200.0, 220.0, 230.0}});
    rules::RunChannels channels(&trace, 10.0);
    const rules::Channel* total = channels.find("output_w");
    ASSERT_TRUE(total);
    EXPECT_THAT(std::vector<double>(total->time_s().begin(), total->time_s().end()),
                ElementsAre(0.0, 2.0, 3.0));
    EXPECT_THAT(std::vector<double>(total->value().begin(), total->value().end()),
                ElementsAre(300.0, 340.0, 360.0));
    trace.add("output_w", "W", {{0.0, 1.0}, {7.0, 8.0}});
    rules::RunChannels recorded(&trace, 10.0);
    EXPECT_EQ(recorded.find("output_w")->size(), 2u) << "a recorded total is the total";
}

TEST(Parts, LoggersOfTheirOwnAreSummedWithTheLatestSample)
{
    MemoryTrace trace;
    trace.add("output_w@left", "W", {{0.0, 1.0, 2.0, 3.0, 9.0}, {1.0, 2.0, 3.0, 4.0, 5.0}});
    trace.add("output_w@right", "W", {{-0.5, 0.5, 1.5, 2.5}, {10.0, 20.0, 30.0, 40.0}});
    rules::RunChannels channels(&trace, 10.0);
    const rules::Channel* total = channels.find("output_w");
    ASSERT_TRUE(total);
    EXPECT_THAT(std::vector<double>(total->value().begin(), total->value().end()),
                ElementsAre(11.0, 22.0, 33.0, 44.0))
        << "at 9 s the other is too old";
}

TEST(Parts, ThePatternIsLookedForInEachAndInTheTotal)
{
    std::vector<core::Run> runs;
    Recordings recordings;
    for (int number = 1; number <= 4; ++number) {
        auto trace = twoParts(static_cast<unsigned>(number));
        // 1 and 2 overspeed on the left, at 900 W there; 3 reaches it and stays; 4 does not.
        if (number <= 3)
            trace.set("output_w@left", 60.0, 120.0, 900.0);
        trace.set("output_w@right", 60.0, 120.0, 600.0);
        if (number <= 2)
            trace.set("rotor_rpm@left", 110.0, 111.0, 3300.0);
        recordings.add(number, trace);
        runs.push_back(aRun(number).device());
    }
    const Screening screening = screen(studyOf(runs, allLimitsSet()), recordings);
    ASSERT_THAT(screening.part_patterns, SizeIs(1));
    const OverspeedPattern& left = screening.part_patterns[0];
    EXPECT_EQ(left.part, "left");
    EXPECT_EQ(left.first_output_w, 900.0);
    EXPECT_EQ(left.reached, 3);
    EXPECT_EQ(left.oversped, 2);
    ASSERT_TRUE(screening.pattern);
    EXPECT_EQ(screening.pattern->part, "");
    EXPECT_EQ(screening.pattern->first_output_w, 1500.0);
    EXPECT_EQ(screening.pattern->reached, 3);
    EXPECT_EQ(screening.pattern->oversped, 2);
}

TEST(Parts, AStandingOneBesideAWorkingOneIsNoDeadSensor)
{
    TraceBuilder trace = twoParts(1)
                             .set("rotor_rpm@left", -10.0, 300.0, 0.0)
                             .set("generator_rpm@left", -10.0, 300.0, 0.0)
                             .without("output_w@left")
                             .without("output_w@right")
                             .channel("output_w", [](double t) { return 600.0 + noise(t, 5); });
    for (const Finding& finding : partsScreened(trace).findings)
        EXPECT_NE(finding.rule, Rule::sensorLost) << detailOf(finding);
}

TEST(Parts, ACommonChannelServesAPartThatHasNoneOfItsOwn)
{
    TraceBuilder trace = twoParts(1)
                             .without("setting_set@left")
                             .without("setting_set@right")
                             .channel("setting_set", [](double) { return 18.0; })
                             .set("setting@left", 30.0, 34.0, 21.0);
    EXPECT_THAT(whatOf(partsScreened(trace)), ElementsAre("setting_mismatch@left"));
}

TEST(Parts, TheSheetMayKnowTheHighestSpeedOfEach)
{
    const auto noted = [](const char* column, const char* text) {
        return aRun().with([=](core::Run& run) { run.extra = {{column, text}}; });
    };
    const auto screened = [](const core::Run& run, Limits limits = allLimitsSet()) {
        return screen(studyOf({run}, std::move(limits)));
    };
    const Screening found = screened(noted("rotor_rpm_max@left", "3300"));
    ASSERT_THAT(whatOf(found), ElementsAre("overspeed@left"));
    EXPECT_EQ(found.findings[0].value, 3300.0);
    EXPECT_THAT(whatOf(screened(noted("Rotor rpm max@left", "3300,5"))),
                ElementsAre("overspeed@left"));
    EXPECT_THAT(whatOf(screened(noted("rotor_rpm_max@left", "3100"))), IsEmpty());
    Limits limits = allLimitsSet();
    limits["overspeed@left.rpm"] = 3000.0;
    EXPECT_THAT(whatOf(screened(noted("rotor_rpm_max@left", "3100"), limits)),
                ElementsAre("overspeed@left"));
    EXPECT_THAT(whatOf(screened(noted("rotor_rpm_max_left", "3300"))), IsEmpty());
}

TEST(Parts, OfADiscardedRunIsInTheEvidence)
{
    Study study = studyOf({aRun().with([](core::Run& run) {
                              run.extra = {{"rotor_rpm_max@left", "3300"}};
                          })},
                          allLimitsSet());
    EXPECT_THAT(applyScreening(study, screen(study)), ElementsAre(1));
    EXPECT_EQ(study.runs[0].discard->evidence, "left, 3300 rpm (limit 3200 rpm)");
}

TEST(Parts, NamesAreTakenApartAtTheirSign)
{
    EXPECT_EQ(partedName("rotor_rpm@left").base, "rotor_rpm");
    EXPECT_EQ(partedName("rotor_rpm@left").part, "left");
    for (const char* whole : {"rotor_rpm", "@left", "rotor_rpm@", "a@b@c", "a@b c", "a@b.c"}) {
        EXPECT_EQ(partedName(whole).base, whole);
        EXPECT_EQ(partedName(whole).part, "");
    }
    EXPECT_EQ(partedName("setting@hinten_rechts-2").part, "hinten_rechts-2");
}

TEST(Parts, LimitsOfThemAreSetLikeTheCommonOnes)
{
    StudyProperties properties;
    ASSERT_TRUE(setProperty(properties, "overspeed@Left.rpm", "3100"));
    EXPECT_EQ(properties.limits.at("overspeed@left.rpm"), 3100.0);
    EXPECT_EQ(limitOf(properties.limits, "overspeed@right.rpm"), std::nullopt);
    ASSERT_TRUE(setProperty(properties, "overspeed.rpm", "3200"));
    EXPECT_EQ(limitOf(properties.limits, "overspeed@left.rpm"), 3100.0);
    EXPECT_EQ(limitOf(properties.limits, "overspeed@right.rpm"), 3200.0);
    EXPECT_EQ(limitOf(properties.limits, "load_lost@left.seconds"), 2.0);
    EXPECT_FALSE(setProperty(properties, "overspeed@left.rpm", "0")) << "the common range";
    EXPECT_FALSE(setProperty(properties, "stretch@left.km", "5")) << "a road has no parts";
    EXPECT_FALSE(setProperty(properties, "overspeed@.rpm", "5"));
    ASSERT_TRUE(setProperty(properties, "overspeed@left.rpm", ""));
    EXPECT_EQ(properties.limits.count("overspeed@left.rpm"), 0u);
}
