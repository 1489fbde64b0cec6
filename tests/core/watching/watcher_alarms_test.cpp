// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/watching/own_usual.h"
#include "core/watching/watcher.h"
#include "tests/core/recording/trace_builders.h"
#include "tests/core/screening/screening_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace bothways;
using namespace bothways::core;
using namespace bothways::core::tests;

namespace {

/// Feeds channels at 10 Hz.
class Car {
public:
    explicit Car(Study study) : m_watcher(std::move(study)) {}
    Watcher& watcher() { return m_watcher; }
    Car& gives(const std::string& channel, double value)
    {
        m_values[channel] = value;
        return *this;
    }
    Car& isSilentOn(const std::string& channel)
    {
        m_values.erase(channel);
        return *this;
    }
    /// Drives until `to_s`, with a look each second.
    Car& driveTo(double to_s)
    {
        while (m_ticks < std::llround(to_s * 10.0)) {
            ++m_ticks;
            const double time_s = static_cast<double>(m_ticks) / 10.0;
            for (const auto& [name, value] : m_values) {
                const double with = value + noise(time_s, 3) * 0.001 * value;
                m_watcher.put(m_watcher.channel(name, ""), std::span(&time_s, 1),
                              std::span(&with, 1));
            }
            if (m_ticks % 10 == 0)
                m_alarms = m_watcher.look(time_s);
        }
        return *this;
    }
    [[nodiscard]] const std::vector<Alarm>& alarms() const { return m_alarms; }
    [[nodiscard]] std::optional<Alarm> alarm(Alarm::Kind kind, std::string_view name = {}) const
    {
        for (const Alarm& alarm : m_alarms)
            if (alarm.kind == kind && (name.empty() || alarm.name == name))
                return alarm;
        return std::nullopt;
    }

private:
    Watcher m_watcher;
    std::map<std::string, double> m_values;
    std::vector<Alarm> m_alarms;
    long long m_ticks = 0;
};

RunUnderWay underWay(double start_s, std::optional<double> expected_s = {})
{
    return {aRun(3).device().with([](core::Run& run) { run.duration_s.reset(); }), start_s,
            expected_s};
}

} // namespace

TEST(WatcherAlarms, WarnsAtNinetyFivePerCentOfTheLimitAndSpoilsAbove)
{
    Car car(studyOf({}, allLimitsSet()));
    car.gives("rotor_rpm", 2900.0).driveTo(10.0);
    car.watcher().begin(underWay(10.0));
    car.driveTo(20.0);
    EXPECT_FALSE(car.alarm(Alarm::Kind::nearLimit));
    car.gives("rotor_rpm", 3100.0).driveTo(23.0);
    const auto near = car.alarm(Alarm::Kind::nearLimit);
    ASSERT_TRUE(near);
    EXPECT_EQ(near->level, AlarmLevel::warning);
    EXPECT_EQ(near->finding.limit, 3200.0);
    EXPECT_NEAR(near->finding.value.value(), 3100.0, 4.0);
    car.gives("rotor_rpm", 3300.0).driveTo(26.0);
    EXPECT_FALSE(car.alarm(Alarm::Kind::nearLimit)) << "it is above now";
    const auto above = car.alarm(Alarm::Kind::finding);
    ASSERT_TRUE(above);
    EXPECT_EQ(above->level, AlarmLevel::spoiled);
    EXPECT_EQ(above->finding.rule, Rule::overspeed);
    EXPECT_EQ(car.alarms().front().key, above->key) << "gravest first";
    const std::string key = above->key;
    const double since_s = above->since_s;
    car.gives("rotor_rpm", 2900.0).driveTo(60.0);
    ASSERT_TRUE(car.alarm(Alarm::Kind::finding)) << "what spoilt the run stands until it ends";
    EXPECT_EQ(car.alarm(Alarm::Kind::finding)->key, key);
    EXPECT_EQ(car.alarm(Alarm::Kind::finding)->since_s, since_s);
    car.watcher().forget();
    car.driveTo(62.0);
    EXPECT_FALSE(car.alarm(Alarm::Kind::finding));
}

TEST(WatcherAlarms, ForeseesThatATimerDropsOutBeforeTheRunWouldEnd)
{
    Study study = studyOf({}, allLimitsSet());
    study.properties.timed_accessories = {{"windscreen", 450.0, 10.0}};
    Car car(study);
    RunUnderWay run = underWay(100.0, 200.0);
    run.run.accessory_on_s = {{"windscreen", -450.0}}; // off at 150 s of the run
    car.gives("road_speed_kmh", 90.0);
    car.watcher().next(run);
    car.driveTo(90.0);
    ASSERT_TRUE(car.alarm(Alarm::Kind::timerWillDrop, "windscreen"));
    EXPECT_DOUBLE_EQ(car.alarm(Alarm::Kind::timerWillDrop)->in_s, 160.0);
    car.driveTo(100.0);
    car.watcher().begin(run);
    car.driveTo(120.0);
    ASSERT_TRUE(car.alarm(Alarm::Kind::timerWillDrop));
    EXPECT_DOUBLE_EQ(car.alarm(Alarm::Kind::timerWillDrop)->in_s, 130.0);
    EXPECT_EQ(car.alarm(Alarm::Kind::timerWillDrop)->level, AlarmLevel::warning);
    car.driveTo(252.0);
    EXPECT_FALSE(car.alarm(Alarm::Kind::timerWillDrop));
    ASSERT_TRUE(car.alarm(Alarm::Kind::finding));
    EXPECT_EQ(car.alarm(Alarm::Kind::finding)->finding.rule, Rule::accessoryTimer);
}

TEST(WatcherAlarms, TakesARunToLastAsLongAsTheStudysOthersWhereNobodySays)
{
    Study study = studyOf({aRun(1)}, allLimitsSet()); // of 200 s
    study.properties.timed_accessories = {{"windscreen", 450.0, 10.0}};
    Car car(study);
    RunUnderWay run = underWay(1.0);
    run.run.accessory_on_s = {{"windscreen", -410.0}};
    car.watcher().begin(run);
    car.driveTo(5.0);
    EXPECT_TRUE(car.alarm(Alarm::Kind::timerWillDrop)) << "off at 190 s";
    run.run.accessory_on_s = {{"windscreen", -390.0}};
    car.watcher().begin(run);
    car.driveTo(6.0);
    EXPECT_FALSE(car.alarm(Alarm::Kind::timerWillDrop)) << "off at 210 s";
}

TEST(WatcherAlarms, SaysBeforeTheStartWhatRulesWillLack)
{
    Car car(studyOf({}));
    car.gives("rotor_rpm", 2800.0).gives("vibration_ms2", 3.0).driveTo(5.0);
    EXPECT_TRUE(car.alarm(Alarm::Kind::limitMissing, "overspeed.rpm"));
    EXPECT_TRUE(car.alarm(Alarm::Kind::limitMissing, "vibration.ms2"));
    EXPECT_TRUE(car.alarm(Alarm::Kind::noChannel, "output_w"));
    EXPECT_TRUE(car.alarm(Alarm::Kind::noChannel, "road_speed_kmh"));
    EXPECT_FALSE(car.alarm(Alarm::Kind::noChannel, "rotor_rpm"));
    EXPECT_FALSE(car.alarm(Alarm::Kind::noChannel, "distance_m")) << "the stretch is not set";
    car.watcher().setStudy(studyOf({}, allLimitsSet()));
    car.driveTo(6.0);
    EXPECT_FALSE(car.alarm(Alarm::Kind::limitMissing));
    EXPECT_TRUE(car.alarm(Alarm::Kind::noChannel, "distance_m"));
    car.gives("distance_m", 100.0).driveTo(8.0);
    EXPECT_FALSE(car.alarm(Alarm::Kind::noChannel, "distance_m")) << "it is recorded";
    car.watcher().begin(underWay(8.0));
    car.driveTo(10.0);
    EXPECT_FALSE(car.alarm(Alarm::Kind::noChannel)) << "while driving there is nothing to be done";
}

TEST(WatcherAlarms, HearsThatAChannelIsSilentBeforeAndDuringARun)
{
    Car car(studyOf({}, allLimitsSet()));
    (void)car.watcher().channel("wind_ms", "m/s");
    car.gives("road_speed_kmh", 90.0).gives("rotor_rpm", 2800.0).driveTo(2.0);
    EXPECT_FALSE(car.alarm(Alarm::Kind::channelSilent)) << "it may only be starting";
    car.driveTo(5.0);
    EXPECT_TRUE(car.alarm(Alarm::Kind::channelSilent, "wind_ms"));
    car.gives("wind_ms", 2.0).driveTo(6.0);
    EXPECT_FALSE(car.alarm(Alarm::Kind::channelSilent));
    car.watcher().begin(underWay(6.0));
    car.driveTo(20.0);
    car.isSilentOn("rotor_rpm").driveTo(22.0);
    const auto lost = car.alarm(Alarm::Kind::finding);
    ASSERT_TRUE(lost);
    EXPECT_EQ(detailOf(lost->finding), "rotor_rpm:gap");
    EXPECT_FALSE(car.alarm(Alarm::Kind::channelSilent, "rotor_rpm")) << "said once";
    // All at once: no rule can tell, since time stands still in the recording.
    car.isSilentOn("road_speed_kmh").isSilentOn("wind_ms").driveTo(26.0);
    EXPECT_TRUE(car.alarm(Alarm::Kind::channelSilent, "road_speed_kmh"));
}

TEST(WatcherAlarms, StandAgainWhereTheEndOfTheRunIsTakenBack)
{
    Study study = studyOf({}, allLimitsSet());
    TraceBuilder trace = aHealthyTrace(10.0, 1).set("rotor_rpm", 50.0, 52.0, 3300.0);
    Car car(study);
    car.watcher().recordedBy([&](const core::Run&) -> std::unique_ptr<RunTrace> {
        return std::make_unique<MemoryTrace>(trace.build());
    });
    const auto overspeed = [&] {
        const auto alarms = car.alarms();
        return std::count_if(alarms.begin(), alarms.end(), [](const Alarm& alarm) {
            return alarm.kind == Alarm::Kind::finding && alarm.finding.rule == Rule::overspeed;
        });
    };
    car.watcher().begin(underWay(0.0));
    car.gives("rotor_rpm", 2600).driveTo(50.0).gives("rotor_rpm", 3300).driveTo(52.0);
    car.gives("rotor_rpm", 2600).driveTo(180.0);
    ASSERT_EQ(overspeed(), 1);
    ASSERT_EQ(findingsOf(car.watcher().end(180.0), Rule::overspeed).size(), 1u);
    car.driveTo(185.0);
    ASSERT_EQ(overspeed(), 0);
    car.watcher().begin(underWay(0.0)); // taken back
    car.driveTo(190.0);
    EXPECT_EQ(overspeed(), 1) << "it was more than a minute ago";
    ASSERT_EQ(findingsOf(car.watcher().end(190.0), Rule::overspeed).size(), 1u);
    car.watcher().begin(underWay(195.0)); // the next
    car.driveTo(200.0);
    EXPECT_EQ(overspeed(), 0);
}

TEST(WatcherAlarms, ReadsTheRunBackFromWhoRecordedItAndKeepsLittle)
{
    Study study = studyOf({}, allLimitsSet());
    TraceBuilder trace = aHealthyTrace(10.0, 1).set("rotor_rpm", 50.0, 52.0, 3300.0);
    Car car(study);
    int asked = 0;
    car.watcher().recordedBy([&](const core::Run& run) -> std::unique_ptr<RunTrace> {
        ++asked;
        EXPECT_EQ(run.number, 3);
        EXPECT_EQ(run.duration_s, 200.0);
        return std::make_unique<MemoryTrace>(trace.build());
    });
    car.watcher().begin(underWay(0.0));
    car.driveTo(200.0);
    const Screening said = car.watcher().end(200.0);
    EXPECT_EQ(asked, 1);
    EXPECT_EQ(findingsOf(said, Rule::overspeed).size(), 1u);
    EXPECT_FALSE(car.watcher().isUnderWay());
}

TEST(OwnUsual, OfALongRunIsThinnedOutAndStaysItsMedian)
{
    OwnUsual own;
    double end_s = 0.0;
    for (int part = 0; part < 4; ++part) {
        std::vector<double> time_s, value;
        for (int i = 0; i < 3000; ++i) {
            time_s.push_back(end_s += 0.5);
            value.push_back(500.0 + end_s / 100.0);
        }
        own.add("output_w", Samples{SampleTimes(time_s), value}, 0.0);
        own.add("road_speed_kmh", Samples{SampleTimes(time_s), value}, 0.0);
    }
    const core::Run run = aRun(3).device();
    rules::UsualValues early, usual;
    own.join(run, 20.0, early);
    EXPECT_FALSE(early.of(run, "output_w")) << "the first half minute may be unlike the rest";
    own.join(run, end_s, usual);
    ASSERT_TRUE(usual.of(run, "output_w"));
    EXPECT_NEAR(*usual.of(run, "output_w"), 500.0 + end_s / 200.0, 0.1) << "a raster of 4 s";
    EXPECT_FALSE(usual.of(run, "road_speed_kmh")) << "not the device's";
}
