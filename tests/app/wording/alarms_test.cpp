// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/alarms.h"
#include "app/wording/findings.h"
#include "app/wording/instruments.h"
#include "core/study/rule.h"
#include "storage/instruments/rig_reader.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <regex>

using namespace bothways;
using namespace bothways::app;
using namespace bothways::app::wording;
using core::Alarm;
using core::LostSensor;
using core::Rule;

namespace {

Alarm found(Rule rule, double value, std::string part = {})
{
    Alarm alarm;
    alarm.finding.rule = rule;
    alarm.finding.run = 9;
    alarm.finding.from_s = 61.25;
    alarm.finding.to_s = 63.5;
    alarm.finding.value = value;
    alarm.finding.limit = 3200.0;
    alarm.finding.part = std::move(part);
    return alarm;
}

Alarm lost(std::string channel, LostSensor::How how, std::string part = {})
{
    Alarm alarm = found(Rule::sensorLost, 2.0, std::move(part));
    alarm.finding.lost = {{std::move(channel), how}};
    return alarm;
}

Alarm named(Alarm::Kind kind, std::string name, double in_s = 0.0)
{
    Alarm alarm;
    alarm.kind = kind;
    alarm.name = std::move(name);
    alarm.in_s = in_s;
    alarm.finding = found(Rule::overspeed, 3100.0).finding;
    return alarm;
}

/// Each rule high and low, of a part, by hand; each way to lose a sensor; each other kind.
std::vector<Alarm> everyAlarm()
{
    std::vector<Alarm> all;
    for (const Rule rule : core::allRules()) {
        all.push_back(found(rule, 12.5));
        all.push_back(found(rule, -12.5));
        all.push_back(found(rule, 12.5, "left"));
        Alarm byHand = found(rule, 0.0);
        byHand.finding.value.reset();
        all.push_back(byHand);
    }
    for (const auto how : {LostSensor::How::gap, LostSensor::How::frozen, LostSensor::How::zero,
                           LostSensor::How::fell})
        all.push_back(lost("wind_ms", how));
    all.push_back(found(Rule::accessoryTimer, -450.0));
    all.back().finding.accessory = "windscreen";
    all.push_back(named(Alarm::Kind::nearLimit, ""));
    for (const double in_s : {-3.0, 40.0, 300.0})
        all.push_back(named(Alarm::Kind::timerWillDrop, "windscreen", in_s));
    all.push_back(named(Alarm::Kind::channelSilent, "wind_ms"));
    all.push_back(named(Alarm::Kind::limitMissing, "overspeed.rpm"));
    all.push_back(named(Alarm::Kind::noChannel, "output_w"));
    return all;
}

TEST(NotChecked, NamesWhatIsMissingAsPeopleDoAndAsFilesHaveIt)
{
    const Language german = Language::named("de").value();
    using core::WhyNotChecked;
    const auto why = [](const Language& in, Rule rule, WhyNotChecked reason, const char* what,
                        const char* part = "", Names names = Names::forPeople) {
        return whyNotChecked(in, {9, rule, reason, what, part}, names);
    };
    const Language english;
    EXPECT_EQ(why(english, Rule::warmingUp, WhyNotChecked::notNoted, "cold_start"),
              "not noted (cold start)");
    EXPECT_EQ(why(german, Rule::warmingUp, WhyNotChecked::notNoted, "cold_start"),
              "nicht notiert (Kaltstart)");
    EXPECT_EQ(why(german, Rule::sameRunTwice, WhyNotChecked::notNoted, "consumption"),
              "nicht notiert (Verbrauch)");
    EXPECT_EQ(why(english, Rule::accessoryTimer, WhyNotChecked::noSetTime, "windscreen_on_s"),
              "its switch-on time is not noted (windscreen)");
    EXPECT_EQ(why(english, Rule::loadLost, WhyNotChecked::noChannel, "rotor_rpm@left", "left"),
              "not recorded (rotor speed, left)");
    EXPECT_EQ(why(english, Rule::loadLost, WhyNotChecked::noChannel, "rotor_rpm@left", "left",
                  Names::ofFiles),
              "not recorded (rotor_rpm@left)");
    EXPECT_EQ(
        why(english, Rule::warmingUp, WhyNotChecked::notNoted, "cold_start", "", Names::ofFiles),
        "not noted (cold_start)");
}

} // namespace

TEST(Alarms, AreShortAndSaidInBothLanguages)
{
    const Language english;
    const Language german = *Language::named("de");
    for (const Alarm& alarm : everyAlarm()) {
        for (const Language& in : {english, german}) {
            const std::string headline = alarmHeadline(in, alarm);
            EXPECT_NE(headline, "");
            EXPECT_LE(headline.size(), 64u) << headline;
            EXPECT_NE(alarmToDo(in, alarm), "") << headline;
            for (const std::string& text : {headline, alarmToDo(in, alarm)}) {
                EXPECT_EQ(text.find("##"), std::string::npos) << text;
                EXPECT_EQ(text.find("{}"), std::string::npos) << text;
                EXPECT_FALSE(std::regex_search(text, std::regex("100 km|mpg|km/L|kWh"))) << text;
            }
        }
        EXPECT_NE(alarmHeadline(english, alarm), alarmHeadline(german, alarm));
        EXPECT_NE(alarmToDo(english, alarm), alarmToDo(german, alarm));
    }
}

TEST(Alarms, SayWhatIsWrongAndWhatToDo)
{
    const Language english;
    EXPECT_EQ(alarmHeadline(english, found(Rule::overspeed, 3410.0)), "Over-speed: 3,410 rpm");
    EXPECT_EQ(alarmHeadline(english, found(Rule::overspeed, 3410.0, "left")),
              "Over-speed: 3,410 rpm (left)");
    EXPECT_EQ(alarmHeadline(english, named(Alarm::Kind::nearLimit, "")),
              "Near over-speed: 3,100 of 3,200 rpm");
    EXPECT_EQ(alarmHeadline(english, named(Alarm::Kind::timerWillDrop, "windscreen", 39.5)),
              "windscreen drops out in 40 s");
    EXPECT_EQ(alarmHeadline(english, named(Alarm::Kind::timerWillDrop, "windscreen", -2.0)),
              "windscreen has dropped out");
    EXPECT_EQ(alarmToDo(english, named(Alarm::Kind::timerWillDrop, "windscreen", 39.5)),
              "Switch windscreen on again.");
    EXPECT_EQ(alarmHeadline(english, lost("rotor_rpm@left", LostSensor::How::gap, "left")),
              "No samples of rotor speed (left)");
    EXPECT_EQ(alarmLevelName(english, core::AlarmLevel::spoiled), "spoiled");
    Alarm fast = found(Rule::overspeed, 3410.0);
    fast.level = core::AlarmLevel::spoiled;
    EXPECT_EQ(alarmSentence(english, fast),
              "Over-speed: 3,410 rpm. Slow down. Turn and drive the run again.");
    EXPECT_EQ(alarmLine(english, fast), "spoiled: " + alarmSentence(english, fast));
    EXPECT_TRUE(alarmLine(*Language::named("de"), fast).starts_with("unbrauchbar: "));
}

TEST(Instruments, SayWhatHasBecomeOfThemNow)
{
    using Is = storage::InstrumentState::Is;
    const Language english;
    const Language german = *Language::named("de");
    storage::InstrumentState state;
    state.is = Is::reading;
    EXPECT_EQ(instrumentNow(english, "board", state, 20.0), "board: reading");
    state.is = Is::silent;
    EXPECT_EQ(instrumentNow(english, "board", state, 20.0), "board: nothing came yet");
    state.last_s = 8.0;
    EXPECT_EQ(instrumentNow(english, "board", state, 20.0), "board: silent for 0:12");
    EXPECT_EQ(instrumentNow(german, "board", state, 20.0), "board: schweigt seit 0:12");
    state.is = Is::failed;
    state.trouble = "nothing comes"_t;
    EXPECT_EQ(instrumentNow(english, "board", state, 20.0), "board: not open, nothing comes");
    state.is = Is::reading;
    EXPECT_EQ(instrumentNow(english, "board", state, 20.0), "board: reading") << "it is over";
}

TEST(Findings, NameThePartOfTheDevice)
{
    const Language english;
    core::Finding finding = found(Rule::overspeed, 3410.0, "left").finding;
    EXPECT_EQ(
        findingSentence(english, finding),
        "run 9: left: rotor at 3,410 rpm from 61.2 s to 63.5 s, above the limit of 3,200 rpm");
    finding = lost("rotor_rpm@left", LostSensor::How::gap, "left").finding;
    EXPECT_EQ(findingSentence(english, finding),
              "run 9: no samples of rotor speed (left) from 61.2 s to 63.5 s");
    EXPECT_EQ(whyNotChecked(english, {9, Rule::overspeed, core::WhyNotChecked::noLimit,
                                      "overspeed.rpm", "left"}),
              "no limit is set (overspeed.rpm, left)");
    EXPECT_EQ(whyNotChecked(english, {9, Rule::loadLost, core::WhyNotChecked::noChannel,
                                      "output_w@left", "left"}),
              "not recorded (output, left)");
}
