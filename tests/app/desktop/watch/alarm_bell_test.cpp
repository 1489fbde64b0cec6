// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/alarm_bell.h"

#include "app/desktop/watch/alarm_sounds.h"
#include "app/desktop/watch/calibration_dialog.h"
#include "app/desktop/watch/channel_band.h"
#include "core/screening/rule_channels.h"
#include "tests/app/desktop/watch/fake_source.h"

#include <QFile>
#include <QTest>

#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace bothways::app::tests {

class AlarmBellTest : public testing::Test {
protected:
    void look(const std::vector<core::Alarm>& alarms, std::int64_t now_ms)
    {
        bell.look(alarms, now_ms);
    }
    std::vector<core::AlarmLevel> rung;
    AlarmBell bell{[this](core::AlarmLevel level) { rung.push_back(level); }};
};

TEST_F(AlarmBellTest, AnAlarmIsHeardThreeTimesAndNeverMore)
{
    const auto alarm = fakeAlarm(core::AlarmLevel::spoiled, core::Rule::overspeed, 3);
    for (int ms = 0; ms < 60'000; ms += 200)
        look({alarm}, ms);
    EXPECT_EQ(rung.size(), 3U);
}

TEST_F(AlarmBellTest, WhatWasAcknowledgedIsSilentUntilItIsOverAndComesAgain)
{
    const auto alarm = fakeAlarm(core::AlarmLevel::warning, core::Rule::roadSpeed, 3);
    look({alarm}, 0);
    bell.acknowledge();
    for (int ms = 200; ms < 30'000; ms += 200)
        look({alarm}, ms);
    EXPECT_EQ(rung.size(), 1U);
    EXPECT_FALSE(bell.isRinging());
    ASSERT_NE(bell.foremost(), nullptr) << "it is still shown";
    for (int ms = 30'000; ms < 33'000; ms += 200)
        look({}, ms); // flickers
    look({alarm}, 33'000);
    EXPECT_EQ(rung.size(), 1U);
    for (int ms = 34'000; ms < 60'000; ms += 200)
        look({}, ms);
    look({alarm}, 60'000);
    EXPECT_EQ(rung.size(), 2U);
}

TEST_F(AlarmBellTest, WhatIsLackingForGoodIsAcknowledgedOnceForTheDay)
{
    auto limit = fakeAlarm(core::AlarmLevel::warning, core::Rule::overspeed, 3);
    limit.kind = core::Alarm::Kind::limitMissing;
    auto channel = fakeAlarm(core::AlarmLevel::note, core::Rule::vibration, 3);
    channel.kind = core::Alarm::Kind::noChannel;
    for (int ms = 0; ms < 3000; ms += 200)
        look({limit, channel}, ms);
    EXPECT_EQ(rung, (std::vector<core::AlarmLevel>{core::AlarmLevel::warning}))
        << "a channel that the car has not makes no sound";
    bell.acknowledge();
    EXPECT_EQ(bell.foremost(), nullptr);
    for (int ms = 3000; ms < 60'000; ms += 200)
        look({}, ms); // a run: it is not said then
    look({limit, channel}, 60'000);
    EXPECT_EQ(bell.foremost(), nullptr);
    EXPECT_EQ(rung.size(), 1U);
}

TEST_F(AlarmBellTest, TheGravestIsHeardAndShownFirst)
{
    const auto warning = fakeAlarm(core::AlarmLevel::warning, core::Rule::roadSpeed, 3);
    const auto spoiled = fakeAlarm(core::AlarmLevel::spoiled, core::Rule::overspeed, 3);
    look({warning, spoiled}, 0);
    ASSERT_EQ(rung.size(), 1U) << "one sound at a time";
    EXPECT_EQ(rung[0], core::AlarmLevel::spoiled);
    EXPECT_EQ(bell.foremost()->level, core::AlarmLevel::spoiled);
    look({warning, spoiled}, 2000);
    ASSERT_EQ(rung.size(), 2U);
    EXPECT_EQ(rung[1], core::AlarmLevel::warning);
}

TEST_F(AlarmBellTest, WhatGetsWorseIsHeardAnewThoughItWasAcknowledged)
{
    auto alarm = fakeAlarm(core::AlarmLevel::warning, core::Rule::overspeed, 3);
    look({alarm}, 0);
    bell.acknowledge();
    alarm.level = core::AlarmLevel::spoiled;
    look({alarm}, 5000);
    ASSERT_EQ(rung.size(), 2U);
    EXPECT_EQ(rung[1], core::AlarmLevel::spoiled);
    EXPECT_TRUE(bell.isRinging());
}

namespace {

/// When a sound begins after a rest, s, and how often its wave crosses zero in a second of tone.
struct Heard {
    int tones = 0;
    double length_s = 0.0, crossings_hz = 0.0;
};

Heard listenTo(const QString& file)
{
    QFile wav(file);
    EXPECT_TRUE(wav.open(QIODevice::ReadOnly)) << file.toStdString();
    const QByteArray bytes = wav.readAll();
    EXPECT_EQ(bytes.left(4), "RIFF");
    EXPECT_EQ(bytes.mid(8, 4), "WAVE");
    constexpr double kRate = 22'050.0;
    constexpr int kQuiet = 60, kRest = 220; // a hundredth of a second
    Heard heard;
    int quiet = kRest + 1, loud = 0, crossings = 0, before = 0;
    for (qsizetype i = 44; i + 1 < bytes.size(); i += 2) {
        const int value = static_cast<std::int16_t>(
            static_cast<unsigned char>(bytes[i]) | (static_cast<unsigned char>(bytes[i + 1]) << 8));
        if (std::abs(value) > kQuiet) {
            heard.tones += quiet > kRest ? 1 : 0;
            quiet = 0;
            ++loud;
            crossings += (value > 0) != (before > 0) ? 1 : 0;
            before = value;
        } else {
            ++quiet;
        }
    }
    heard.length_s = static_cast<double>(bytes.size() - 44) / 2.0 / kRate;
    heard.crossings_hz = crossings * kRate / loud;
    return heard;
}

} // namespace

TEST(AlarmSoundsTest, TheThreeSoundsDifferByRhythmAndByPitch)
{
    AlarmSounds sounds; // brings its files
    const Heard note = listenTo(AlarmSounds::file(core::AlarmLevel::note));
    const Heard warning = listenTo(AlarmSounds::file(core::AlarmLevel::warning));
    const Heard spoiled = listenTo(AlarmSounds::file(core::AlarmLevel::spoiled));
    EXPECT_EQ(std::set<int>({note.tones, warning.tones, spoiled.tones}).size(), 3U);
    EXPECT_GT(warning.crossings_hz, 1.3 * note.crossings_hz);
    EXPECT_GT(spoiled.crossings_hz, 1.2 * warning.crossings_hz);
    for (const Heard& heard : {note, warning, spoiled})
        EXPECT_LT(heard.length_s, 1.0) << "short: the next may follow";
}

TEST(ChannelBandTest, APartHasItsOwnLimitOrElseTheCommonOne)
{
    core::Study study;
    study.properties.limits["overspeed.rpm"] = 3200.0;
    study.properties.limits["overspeed@left.rpm"] = 3000.0;
    EXPECT_EQ(bandOf(study, "rotor_rpm@left").high, 3000.0);
    EXPECT_EQ(bandOf(study, "rotor_rpm@right").high, 3200.0);
    EXPECT_EQ(bandOf(study, "rotor_rpm").high, 3200.0);
    EXPECT_EQ(bandOf(study, "rotor_rpm").of(3039.0), ChannelBand::Place::inside);
    EXPECT_EQ(bandOf(study, "rotor_rpm").of(3041.0), ChannelBand::Place::near);
    EXPECT_EQ(bandOf(study, "rotor_rpm").of(3201.0), ChannelBand::Place::outside);
    EXPECT_EQ(bandOf(study, "rotor_rpm").of(std::nullopt), ChannelBand::Place::unknown);
    EXPECT_FALSE(bandOf(study, "vibration_ms2").isSet()) << "no limit is set, none is invented";
}

TEST(ChannelBandTest, RoadSpeedLiesBetweenWhatTheRuleAllows)
{
    core::Study study;
    study.properties.limits["road_speed.target_kmh"] = 90.0;
    const ChannelBand band = bandOf(study, "road_speed_kmh");
    ASSERT_TRUE(band.low && band.high);
    EXPECT_DOUBLE_EQ(*band.low, 85.5); // 5 %, by default
    EXPECT_DOUBLE_EQ(*band.high, 94.5);
    EXPECT_EQ(band.of(93.0), ChannelBand::Place::near); // 3 % by default: cruising ends there
}

TEST(RulesReadingTest, SaysWhichRulesReadAChannelAndWhichLackOne)
{
    EXPECT_EQ(core::rulesThatRead("rotor_rpm@left").size(), 3U);
    EXPECT_TRUE(core::rulesThatRead("my_own_thermometer").empty());
    const auto without = core::rulesLacking({"road_speed_kmh", "rotor_rpm@left"});
    const auto lacks = [&](core::Rule rule) {
        return std::any_of(without.begin(), without.end(),
                           [&](const core::RuleLack& one) { return one.rule == rule; });
    };
    EXPECT_TRUE(lacks(core::Rule::loadLost)) << "it needs the output too";
    EXPECT_TRUE(lacks(core::Rule::vibration));
    EXPECT_FALSE(lacks(core::Rule::overspeed));
    EXPECT_FALSE(lacks(core::Rule::roadSpeed));
}

TEST(CalibrationTest, TwoPointsGiveFactorAndOffset)
{
    // A converter that reads 102 at 0 W and 3102 at 1500 W.
    const auto scale = storage::calibrated({102.0, 0.0}, {3102.0, 1500.0});
    ASSERT_TRUE(scale);
    EXPECT_DOUBLE_EQ(scale.value().factor, 0.5);
    EXPECT_DOUBLE_EQ(scale.value().offset, -51.0);
    EXPECT_FALSE(storage::calibrated({5.0, 1.0}, {5.0, 2.0})) << "the instrument did not move";
    EXPECT_FALSE(storage::calibrated({5.0, 1.0}, {9.0, 1.0})) << "the meter did not move";
}

} // namespace bothways::app::tests
