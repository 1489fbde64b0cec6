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
using ::testing::SizeIs;

// What must not change the findings: the clock, the unit, the sampling rate.

namespace {

/// A day with a fault of nearly every rule, at `hz`.
Recordings faultyDay(double hz)
{
    Recordings recordings;
    const auto trace = [&](unsigned seed) { return aHealthyTrace(hz, seed); };
    recordings.add(
        1, trace(1).edit("accessory_w", 96.0, 300.0, [](double, double w) { return w - 140.0; }));
    recordings.add(2, trace(2)
                          .set("rotor_rpm", 50.0, 52.0, 3300.0)
                          .set("generator_rpm", 50.0, 52.0, 3300.0 * 3.2));
    recordings.add(
        3, trace(3)
               .set("output_w", 60.0, 70.0, 0.0)
               .edit("generator_rpm", 120.0, 125.0, [](double, double rpm) { return 1.06 * rpm; }));
    recordings.add(
        4, trace(4).edit("output_w", 100.0, 300.0, [](double, double w) { return 0.6 * w; }));
    recordings.add(
        5, trace(5).set("setting", 30.0, 40.0, 21.0).set("setting_set", 150.0, 300.0, 20.0));
    recordings.add(6, trace(6)
                          .set("road_speed_kmh", 80.0, 95.0, 5.0)
                          .set("vibration_ms2", 150.0, 155.0, 12.0)
                          .set("wind_ms", 20.0, 22.0, 11.0)
                          .set("battery_v", 100.0, 130.0, 12.5));
    recordings.add(
        7, trace(7).edit("road_speed_kmh", -10.0, 10.0, [](double t, double) { return 80.0 + t; }));
    recordings.add(8, trace(8).cut("fuel_rate_l_per_h", 33.0, 44.0).cutAll(180.0, 300.0));
    return recordings;
}

Study dayOfEight()
{
    std::vector<core::Run> runs;
    for (int number = 1; number <= 8; ++number)
        runs.push_back(aRun(number).device().mark(170.0, "adjusted"));
    return studyOf(runs, allLimitsSet());
}

void expectSame(const std::vector<Finding>& left, const std::vector<Finding>& right, double time_s,
                double share)
{
    ASSERT_EQ(left.size(), right.size());
    for (std::size_t i = 0; i < left.size(); ++i) {
        EXPECT_EQ(left[i].rule, right[i].rule);
        EXPECT_EQ(left[i].run, right[i].run);
        EXPECT_EQ(left[i].grade, right[i].grade);
        EXPECT_NEAR(*left[i].from_s, *right[i].from_s, time_s) << ruleName(left[i].rule);
        EXPECT_NEAR(*left[i].to_s, *right[i].to_s, time_s) << ruleName(left[i].rule);
        if (left[i].value) {
            EXPECT_NEAR(*left[i].value, *right[i].value, share * std::abs(*right[i].value) + 1e-9)
                << ruleName(left[i].rule) << " run " << left[i].run;
        }
    }
}

/// The recording of another provider with its values changed.
class Converted final : public RunTrace {
public:
    Converted(std::unique_ptr<RunTrace> base, double perTime)
        : m_base(std::move(base)), m_perTime(perTime)
    {
    }
    const std::vector<ChannelInfo>& channels() const override { return m_base->channels(); }
    std::shared_ptr<const Samples> samples(std::string_view channel) const override
    {
        const auto base = m_base->samples(channel);
        if (!base)
            return nullptr;
        Samples copy = *base;
        std::vector<double> times(base->time_s.begin(), base->time_s.end());
        for (double& time : times)
            time = (time + m_perTime) - m_perTime; // rounded as from a clock far from 0
        copy.time_s = SampleTimes(std::move(times));
        if (channel == "road_speed_kmh")
            for (double& kmh : copy.value)
                kmh = (kmh / 1.609344) * 1.609344; // imported from mph
        return std::make_shared<const Samples>(std::move(copy));
    }
    const std::vector<TextMark>& marks() const override { return m_base->marks(); }
    double last_s() const override { return m_base->last_s(); }

private:
    std::unique_ptr<RunTrace> m_base;
    double m_perTime;
};

} // namespace

TEST(ScreeningProperties, TheFaultyDayHasAFaultOfNearlyEveryRule)
{
    const Screening screening = screen(dayOfEight(), faultyDay(20.0));
    for (const Rule rule :
         {Rule::accessoryChange, Rule::overspeed, Rule::loadLost, Rule::driveSlip, Rule::outputDrop,
          Rule::settingMismatch, Rule::settingChanged, Rule::vibration, Rule::roadSpeed,
          Rule::interrupted, Rule::notCruising, Rule::passingTraffic, Rule::sensorLost,
          Rule::traceEndsEarly, Rule::adjusted})
        EXPECT_FALSE(findingsOf(screening, rule).empty()) << ruleName(rule);
}

TEST(ScreeningProperties, TwiceTheSamplingRateGivesTheSameFindings)
{
    const auto once = screen(dayOfEight(), faultyDay(20.0)).findings;
    const auto twice = screen(dayOfEight(), faultyDay(40.0)).findings;
    // One interval at the slower rate; the level follows its noise by a few samples more.
    expectSame(once, twice, 0.151, 0.05);
}

TEST(ScreeningProperties, AStudyOnAnotherDayGivesTheSameFindings)
{
    Study study = dayOfEight();
    const auto before = screen(study, faultyDay(20.0)).findings;
    for (core::Run& run : study.runs)
        run.start.us += std::int64_t{86'400'000'000} * 1000;
    EXPECT_EQ(screen(study, faultyDay(20.0)).findings, before);
}

TEST(ScreeningProperties, TheRoundingOfClocksAndUnitsChangesNoFinding)
{
    const TraceProvider plain = faultyDay(20.0);
    const auto before = screen(dayOfEight(), plain).findings;
    const TraceProvider converted = [&](const core::Run& run) -> std::unique_ptr<RunTrace> {
        return std::make_unique<Converted>(plain(run), 86'400.0);
    };
    expectSame(screen(dayOfEight(), converted).findings, before, 1e-9, 1e-9);
}

TEST(ScreeningProperties, NumbersOfRunsOnlyChangeTheOrder)
{
    Study study = dayOfEight();
    const TraceProvider plain = faultyDay(20.0);
    auto before = screen(study, plain).findings;
    for (core::Run& run : study.runs)
        run.number = 100 - run.number;
    const TraceProvider renumbered = [&](core::Run run) {
        run.number = 100 - run.number;
        return plain(run);
    };
    auto after = screen(study, renumbered).findings;
    EXPECT_TRUE(std::is_sorted(after.begin(), after.end(), [](const auto& a, const auto& b) {
        return std::tuple(a.run, a.from_s, a.rule) < std::tuple(b.run, b.from_s, b.rule);
    }));
    for (Finding& finding : after)
        finding.run = 100 - finding.run;
    EXPECT_THAT(after, ::testing::UnorderedElementsAreArray(before));
}
