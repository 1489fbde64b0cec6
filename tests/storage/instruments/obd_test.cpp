// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/obd_dialogue.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <random>
#include <regex>

namespace bothways::tests {
namespace {

using namespace bothways::storage;
using testing::ElementsAre;
using testing::HasSubstr;

/// A car and its adapter: what is asked, and what they answer.
class PlayedCar {
public:
    explicit PlayedCar(Instrument instrument = {})
        : m_dialogue(
              instrument, [this](const ObdRequest& request) { sent.push_back(request.bytes()); },
              [this](std::string_view source, std::string_view name, std::string_view unit,
                     bool derived) {
                  const std::string all =
                      fmt::format("{} {} {}{}", source, name, unit, derived ? " derived" : "");
                  for (std::size_t i = 0; i < names.size(); ++i)
                      if (names[i] == all)
                          return std::vector<std::uint32_t>{static_cast<std::uint32_t>(i)};
                  names.push_back(all);
                  return std::vector<std::uint32_t>{static_cast<std::uint32_t>(names.size() - 1)};
              })
    {
        for (const char* setup : {"ATE0", "ATL0", "ATS0", "ATH0", "ATSP0"})
            answers[setup] = "OK\r";
        answers["ATZ"] = "\r\radapter v1\r";
        answers["0100"] = "SEARCHING...\r41 00 18 1B 80 01\r"; // 04 05 0C 0D 0F 10 11 20
        answers["0120"] = "412000000001\r";                    // 40
        answers["0140"] = "4140400000 00\r";                   // 42
        answers["010C"] = "410C1AF8\r";
        answers["010D"] = "410D3C\r";
        answers["0110"] = "41100FA0\r";
        answers["0142"] = "4142 36 B0\r";
    }

    /// Answers what was asked until `requests` of them.
    void drive(std::size_t requests, bool cut = false)
    {
        if (sent.empty())
            m_dialogue.begin(now_s);
        for (int turns = 0; sent.size() < requests && turns < 100'000; ++turns) {
            if (m_answered < sent.size()) {
                const std::string asked = sent[m_answered].substr(0, sent[m_answered].size() - 1);
                ++m_answered;
                const auto known = answers.find(asked);
                std::string reply = known == answers.end() ? "NO DATA\r" : known->second;
                if (echo)
                    reply = asked + "\r" + reply;
                give(reply + "\r>", cut);
            } else {
                now_s += 0.05;
                m_dialogue.look(now_s);
            }
        }
    }
    void give(std::string_view bytes, bool cut = false)
    {
        for (std::size_t at = 0; at < bytes.size(); at += cut ? 1 : bytes.size())
            m_dialogue.take(cut ? bytes.substr(at, 1) : bytes, now_s, said);
    }
    ObdDialogue& dialogue() { return m_dialogue; }
    /// The last value of a channel.
    double last(const std::string& channel) const
    {
        for (auto line = said.rbegin(); line != said.rend(); ++line)
            for (const ParsedValue& value : line->values)
                if (names[value.channel] == channel)
                    return value.number.value();
        ADD_FAILURE() << "no " << channel;
        return -1.0;
    }
    bool has(const std::string& channel) const
    {
        return std::find(names.begin(), names.end(), channel) != names.end();
    }

    std::map<std::string, std::string> answers;
    std::vector<std::string> sent, names;
    std::vector<ParsedLine> said;
    double now_s = 0.0;
    bool echo = false;

private:
    std::size_t m_answered = 0;
    ObdDialogue m_dialogue;
};

TEST(ObdDialogue, SetsUpAsksWhatThereIsAndThenAsksForThat)
{
    PlayedCar car;
    car.drive(25);
    EXPECT_THAT(std::vector(car.sent.begin(), car.sent.begin() + 17),
                ElementsAre("ATZ\r", "ATE0\r", "ATL0\r", "ATS0\r", "ATH0\r", "ATSP0\r", "0100\r",
                            "0120\r", "0140\r", "0104\r", "0105\r", "010C\r", "010D\r", "010F\r",
                            "0110\r", "0111\r", "0142\r"));
    EXPECT_EQ(car.last("0C engine_rpm rpm"), 1726.0);
    EXPECT_EQ(car.last("0D road_speed_kmh km/h"), 60.0);
    EXPECT_EQ(car.last("42 battery_v V"), 14.0);
    EXPECT_FALSE(car.has("05 coolant_c °C")) << "NO DATA is no value";
    EXPECT_FALSE(car.has("5E fuel_rate_l_per_h L/h derived")) << "nobody named a fuel";
}

TEST(ObdDialogue, EchoesSpacesAndCutsChangeNothing)
{
    PlayedCar plain, other;
    plain.drive(60);
    other.echo = true;
    other.answers["010C"] = "41 0C 1A F8 \r\n";
    other.drive(60, true);
    EXPECT_EQ(other.sent, plain.sent);
    ASSERT_EQ(other.said.size(), plain.said.size());
    for (std::size_t i = 0; i < plain.said.size(); ++i)
        EXPECT_EQ(other.said[i].values[0].number, plain.said[i].values[0].number);
}

TEST(ObdDialogue, OfSeveralControlUnitsTheFirstCountsAndAllAreAskedWhatTheyHave)
{
    PlayedCar car;
    car.answers["0100"] = "410000080000\r410000100000\r"; // 0D of one, 0C of the other
    car.answers["010C"] = "410C1AF8\r410C0000\r";
    car.drive(20);
    EXPECT_EQ(car.last("0C engine_rpm rpm"), 1726.0);
    EXPECT_EQ(car.last("0D road_speed_kmh km/h"), 60.0);
}

TEST(ObdDialogue, FuelFromAirWhereTheCarGivesNoFuelRate)
{
    Instrument petrol;
    petrol.fuel = "petrol";
    PlayedCar car(petrol);
    car.drive(40);
    // 0x0FA0 / 100 = 40 g/s of air; 40 * 3600 / (14.7 * 745) = 13.149 L/h
    EXPECT_NEAR(car.last("5E fuel_rate_l_per_h L/h derived"), 13.149, 0.001);

    PlayedCar gives(petrol);
    gives.answers["0140"] = "414040000005\r"; // 42 5E 60: the car itself says its fuel rate
    gives.answers["0160"] = "416000000000\r";
    gives.answers["015E"] = "415E0064\r";
    gives.drive(40);
    EXPECT_EQ(gives.last("5E fuel_rate_l_per_h L/h"), 5.0);
    EXPECT_FALSE(gives.has("5E fuel_rate_l_per_h L/h derived"));
}

TEST(ObdDialogue, ADieselNeedsItsShareOfAir)
{
    Instrument diesel;
    diesel.fuel = "diesel";
    PlayedCar without(diesel);
    without.drive(40);
    EXPECT_FALSE(without.has("5E fuel_rate_l_per_h L/h derived"));
    EXPECT_THAT(without.dialogue().notice().english(),
                HasSubstr("a diesel burns with air left over"));
    PlayedCar with(diesel);
    with.answers["0140"] = "414050000000\r"; // 42 44
    with.answers["0144"] = "41448000\r";     // 1.0
    with.drive(40);
    EXPECT_NEAR(with.last("5E fuel_rate_l_per_h L/h derived"), 40.0 * 3600.0 / (14.5 * 835.0),
                0.001);
    with.answers["0144"] = "4144FFFF\r"; // nearly twice as much air as it burns
    with.drive(80);
    EXPECT_NEAR(with.last("5E fuel_rate_l_per_h L/h derived"), 20.0 * 3600.0 / (14.5 * 835.0),
                0.001);
}

TEST(ObdDialogue, WhatTheRigWantsAndTheCarDoesNotGiveIsSaid)
{
    Instrument wants;
    wants.channels = {{"0D", "road_speed_kmh", "km/h", 1.0, 0.0}, {"5C", "oil_c", "°C", 1.0, 0.0}};
    PlayedCar car(wants);
    car.drive(20);
    EXPECT_EQ(car.dialogue().notice().english(), "this car does not give oil_c");
    EXPECT_EQ(std::count(car.sent.begin(), car.sent.end(), "010C\r"), 0);
}

TEST(ObdDialogue, WhatAdaptersSayInsteadIsUnderstood)
{
    const std::pair<const char*, const char*> words[] = {
        {"SEARCHING...\rUNABLE TO CONNECT\r", "the car does not answer: is the ignition on?"},
        {"NO DATA\r", "the car gives no data"},
        {"STOPPED\r", "the adapter was interrupted"},
        {"BUS INIT: ...ERROR\r", "the adapter cannot read the car's bus"},
        {"?\r", "the adapter does not know what it was asked"}};
    for (const auto& [reply, meaning] : words) {
        PlayedCar car;
        car.answers["0100"] = reply;
        car.drive(8); // it begins anew after a while
        EXPECT_EQ(car.sent[7], "ATZ\r") << reply;
        EXPECT_EQ(car.dialogue().notice().english(), meaning);
        car.answers["0100"] = "BUS INIT: OK\r410018188001\r";
        car.drive(40);
        EXPECT_EQ(car.dialogue().notice().english(), "") << reply;
        EXPECT_EQ(car.last("0D road_speed_kmh km/h"), 60.0) << "the ignition is on now";
    }
}

TEST(ObdDialogue, AnAdapterThatSaysNothingIsAskedAgain)
{
    PlayedCar car;
    car.dialogue().begin(0.0);
    for (int i = 0; i < 100; ++i)
        car.dialogue().look(i * 0.1);
    EXPECT_GE(car.sent.size(), 3u);
    EXPECT_EQ(car.dialogue().notice().english(), "the adapter does not answer");
}

TEST(ObdDialogue, NothingButTheListIsEverSent)
{
    const std::regex allowed("(ATZ|ATE0|ATL0|ATS0|ATH0|ATSP0|01[0-9A-F]{2})\r");
    std::mt19937 random(11);
    const std::string letters = "0123456789ABCDEF41>\r\n ?.NODATASEARCHING";
    std::size_t requests = 0;
    for (int round = 0; round < 300; ++round) {
        Instrument instrument;
        instrument.fuel = round % 3 == 0 ? "petrol" : "";
        instrument.poll_s = 0.0;
        PlayedCar car(instrument);
        car.dialogue().begin(0.0);
        if (round % 2 == 0)
            car.drive(10);
        for (int i = 0; i < 300; ++i) {
            std::string noise;
            for (std::size_t k = random() % 20; k > 0; --k)
                noise += round % 5 == 0 ? static_cast<char>(random() % 256)
                                        : letters[random() % letters.size()];
            car.give(noise + (random() % 3 == 0 ? "\r>" : ""));
            car.now_s += static_cast<double>(random() % 40) / 10.0;
            car.dialogue().look(car.now_s);
        }
        requests += car.sent.size();
        for (const std::string& request : car.sent)
            ASSERT_TRUE(std::regex_match(request, allowed)) << request;
    }
    EXPECT_GT(requests, 10'000u) << "or nothing was tried";
}

TEST(ObdTable, IsThatOfTheStandard)
{
    // SAE J1979 / ISO 15031-5, table of service 01: the least and the greatest that each value can
    // be, and the formula's step.
    struct Row {
        int pid;
        double least, greatest, step;
    };
    const Row rows[] = {{0x04, 0, 100, 100.0 / 255},
                        {0x05, -40, 215, 1},
                        {0x0B, 0, 255, 1},
                        {0x0C, 0, 16383.75, 0.25},
                        {0x0D, 0, 255, 1},
                        {0x0F, -40, 215, 1},
                        {0x10, 0, 655.35, 0.01},
                        {0x11, 0, 100, 100.0 / 255},
                        {0x1F, 0, 65535, 1},
                        {0x2F, 0, 100, 100.0 / 255},
                        {0x33, 0, 255, 1},
                        {0x42, 0, 65.535, 0.001},
                        {0x44, 0, 1.99997, 2.0 / 65536},
                        {0x46, -40, 215, 1},
                        {0x5C, -40, 215, 1}, // the standard's -40 to 210 leaves 5 codes out
                        {0x5E, 0, 3276.75, 0.05}};
    EXPECT_EQ(std::size(rows), obdPids().size());
    for (const Row& row : rows) {
        const ObdPid* pid = obdPid(static_cast<std::uint8_t>(row.pid));
        ASSERT_NE(pid, nullptr) << row.pid;
        EXPECT_NEAR(pid->value(0, 0).value(), row.least, 1e-9) << pid->name;
        EXPECT_NEAR(pid->value(255, 255).value(), row.greatest, 1e-5) << pid->name;
        const double one = pid->bytes == 2 ? pid->value(0, 1).value() : pid->value(1, 0).value();
        EXPECT_NEAR(one - row.least, row.step, 1e-9) << pid->name;
    }
    EXPECT_EQ(obdPid("0x0d"), obdPid("0D"));
    EXPECT_EQ(obdPid("zz"), nullptr);
    EXPECT_EQ(obdPid("03"), nullptr) << "a state, not a number";
}

} // namespace
} // namespace bothways::tests
