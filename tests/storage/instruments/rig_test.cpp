// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/address.h"
#include "storage/instruments/calibration.h"
#include "storage/instruments/rig.h"
#include "storage/instruments/rig_check.h"
#include "storage/instruments/rig_reader.h"
#include "storage/instruments/rigs.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <optional>
#include <string>

#include <unistd.h>

namespace bothways::tests {
namespace {

using namespace bothways::storage;
using testing::HasSubstr;

Rig someRig()
{
    Rig rig{
        "car", {}, {core::RunsBy::Way::position, core::Geofence{47.5, 9.4, -47.125, 9.44, 35.5}}};
    rig.instruments.push_back(
        {"board",
         InstrumentKind::lines,
         "serial:/dev/ttyUSB0,115200",
         1,
         0.25,
         1.0,
         "",
         {{"rpm", "rotor_rpm@left", "rpm", 0.5, -3.25}, {"2", "output_w@left", "W", 1.0, 0.0}}});
    rig.instruments.push_back({"meter",
                               InstrumentKind::modbus,
                               "tcp:192.168.1.7:502",
                               17,
                               0.1,
                               1.0,
                               "",
                               {{"holding:3:u16", "output_w", "W", 0.1, 0.0}}});
    rig.instruments.push_back(
        {"car", InstrumentKind::obd, "serial:/dev/rfcomm0,38400", 1, 0.2, 1.0, "e10", {}});
    rig.instruments.push_back(
        {"again", InstrumentKind::replay, "file:a run.csv", 1, 0.25, 20.0, "", {}});
    rig.instruments.push_back({"gps", InstrumentKind::nmea, "udp:*:2000", 1, 0.25, 1.0, "", {}});
    return rig;
}

std::string refused(std::string_view json)
{
    const auto rig = rigFromText(json, "my.json");
    return rig ? "taken" : core::describe(rig.error());
}

TEST(Rigs, AreReadAsTheyWereWritten)
{
    const auto again = rigFromText(rigText(someRig()), "x.json");
    ASSERT_TRUE(again) << core::describe(again.error());
    EXPECT_EQ(again.value(), someRig());
}

// Long: a refusal a line.
TEST(Rigs, ThatMakeNoSenseAreRefusedWithWhatWasExpected)
{
    const std::string board = R"({"name":"b","kind":"lines","address":"file:x")";
    const auto one = [&](const std::string& rest) {
        return refused(R"({"version":1,"instruments":[)" + board + rest + "}]}");
    };
    EXPECT_EQ(one(""), "taken");
    EXPECT_THAT(refused("rpm"), HasSubstr("my.json: this is no JSON"));
    EXPECT_THAT(refused("[]"), HasSubstr("expected a rig in braces"));
    EXPECT_THAT(refused("{}"), HasSubstr("expected \"version\": 1"));
    EXPECT_THAT(refused(R"({"version":2,"wings":[]})"), HasSubstr("this rig has version 2"));
    EXPECT_THAT(refused(R"({"version":1,"instruments":[]})"), HasSubstr("without an instrument"));
    EXPECT_THAT(
        refused(R"({"version":1,"wings":1,"instruments":[]})"),
        HasSubstr("there is no \"wings\" here; expected one of version, name, instruments"));
    EXPECT_THAT(one(R"(,"bauds":1)"), HasSubstr("there is no \"bauds\" here"));
    EXPECT_THAT(one(R"(,"unit":1.5)"), HasSubstr("\"unit\" is the device's number"));
    EXPECT_THAT(one(R"(,"poll_s":"fast")"), HasSubstr("\"poll_s\" is no number"));
    EXPECT_THAT(one(R"(,"fuel":"coal")"), HasSubstr("fuel is 'coal'"));
    EXPECT_THAT(one(R"(,"channels":[{"source":"a","name":"b","factor":0}])"),
                HasSubstr("needs a factor other than 0"));
    EXPECT_THAT(one(R"(,"channels":[{"source":"a","name":"b"},{"source":"c","name":"b"}])"),
                HasSubstr("two channels are called 'b'"));
    const auto runs = [&](const std::string& rest) {
        return refused(R"({"version":1,"instruments":[)" + board + "}]," + rest + "}");
    };
    EXPECT_EQ(runs(R"("runs":"speed")"), "taken");
    EXPECT_THAT(runs(R"("runs":"luck")"), HasSubstr("runs do not begin by 'luck'; expected hand"));
    EXPECT_THAT(runs(R"("runs":"position")"), HasSubstr("need the gates at the two ends"));
    EXPECT_THAT(runs(R"("gates":[1,2,3,4])"), HasSubstr("expected \"gates\": [LAT, LON"));
    EXPECT_THAT(runs(R"("gates":[1,2,3,"4",50])"), HasSubstr("expected \"gates\": [LAT, LON"));
    EXPECT_THAT(runs(R"("gates":[91,2,3,4,50])"), HasSubstr("the latitude of the start gate"));
    EXPECT_THAT(one("}," + board), HasSubstr("two instruments are called 'b'"));
    EXPECT_THAT(
        refused(R"({"version":1,"instruments":[{"name":"b","kind":"lnes","address":"file:x"}]})"),
        HasSubstr("there is no kind 'lnes'"));
    EXPECT_THAT(
        refused(R"({"version":1,"instruments":[{"name":"b","kind":"modbus","address":"file:x"}]})"),
        HasSubstr("'file:x' is no address for modbus"));
    EXPECT_THAT(refused(std::string(100'000, '[')), HasSubstr("this is no JSON"));
    EXPECT_THAT(refused(std::string(1'100'000, ' ')), HasSubstr("too large for a rig"));
    EXPECT_THAT(refused(R"({"version":0})"), HasSubstr("expected \"version\": 1"));
    EXPECT_THAT(refused(R"({"version":1})"), HasSubstr("expected \"instruments\": a list"));
    EXPECT_THAT(refused(R"({"version":1,"instruments":[3]})"),
                HasSubstr("expected an instrument in braces"));
    EXPECT_THAT(one(R"(,"channels":3)"), HasSubstr("expected \"channels\": a list"));
    EXPECT_THAT(one(R"(,"fuel":3)"), HasSubstr("\"fuel\" is no text"));
    EXPECT_THAT(one(R"(,"poll_s":-1)"), HasSubstr("poll_s is -1; expected 0 to 3600 s"));
    EXPECT_THAT(one(R"(,"channels":[{"source":"","name":"b"}])"),
                HasSubstr("a channel needs a source and a name of ordinary characters"));
    const auto of = [&](const char* kind, const char* address, const char* rest) {
        return refused(fmt::format(
            R"({{"version":1,"instruments":[{{"name":"i","kind":"{}","address":"{}"{}}}]}})", kind,
            address, rest));
    };
    EXPECT_THAT(of("replay", "tcp:host:1", ""),
                HasSubstr("'tcp:host:1' is no address for replay; expected file:PATH"));
    EXPECT_THAT(of("modbus", "tcp:host:1", ""), HasSubstr("which registers are read?"));
    EXPECT_THAT(
        of("obd", "tcp:host:1", R"(,"channels":[{"source":"odometer","name":"b"}])"),
        HasSubstr("'odometer' is no value of service 01 that is read; expected one of 04, 05"));
    Instrument given{"b", InstrumentKind::lines, "file:x", 300, 0.25, 1.0, "", {}};
    EXPECT_EQ(checkInstrument(given).error().message.english(),
              "instrument 'b': unit is 300; expected the device's number, 0 to 255");
    given.name = "b\n";
    EXPECT_EQ(checkInstrument(given).error().message.english(),
              "an instrument needs a name of ordinary characters");
}

TEST(Rigs, AddressesSayWhatWasExpected)
{
    for (const char* good : {"lines:serial:/dev/ttyUSB0,9600", "lines:serial:/dev/a,b,19200,8E1",
                             "nmea:tcp:gps.local:2000", "lines:udp:*:2000", "lines:tcp:[::1]:2000",
                             "modbus:tcp:192.168.1.7:502", "obd:serial:/dev/rfcomm0,38400",
                             "replay:run_01.csv,x20", "lines:file:a,b.txt"})
        EXPECT_TRUE(instrumentFromText(good)) << good;
    for (const char* bad :
         {"lines:serial:/dev/ttyUSB0", "lines:serial:,9600", "lines:tcp:host", "lines:tcp:host:0",
          "lines:tcp:host:65536", "lines:tcp:host:2o", "lines:serial:/dev/a,9600,8X1",
          "lines:udp::5", "lines:pipe:x", "lines:file:", "lines:"}) {
        const auto made = instrumentFromText(bad);
        ASSERT_FALSE(made) << bad;
        EXPECT_THAT(made.error().message.english(),
                    HasSubstr("expected serial:PORT,BAUD, tcp:HOST:PORT, udp:*:PORT or file:PATH"));
    }
    EXPECT_THAT(instrumentFromText("lines:serial:/dev/a,9601").error().message.english(),
                HasSubstr("no serial port has 9601 baud"));
    EXPECT_THAT(instrumentFromText("canbus:x").error().message.english(),
                HasSubstr("lines, nmea, modbus, obd, replay"));
    EXPECT_THAT(instrumentFromText("replay").error().message.english(),
                HasSubstr("expected KIND:ADDRESS"));
    EXPECT_THAT(instrumentFromText("replay:a.csv,x1000").error().message.english(),
                HasSubstr("expected 1 to 100 times"));
    const auto odd = parseAddress("serial:/dev/a,b,19200,8o2");
    ASSERT_TRUE(odd);
    EXPECT_EQ(odd.value().path, "/dev/a,b");
    EXPECT_EQ(odd.value().parity, Address::Parity::odd);
    EXPECT_EQ(odd.value().stop_bits, 2);
    EXPECT_EQ(parseAddress("serial:/dev/a,9600,8n1").value().parity, Address::Parity::none);
    EXPECT_EQ(withWholePath("file:logs/../run.csv", "/home"), "file:/home/run.csv");
    EXPECT_EQ(withWholePath("serial:ttyUSB0,9600", "/dev"), "serial:/dev/ttyUSB0,9600");
    EXPECT_EQ(withWholePath("tcp:host:2000", "/home"), "tcp:host:2000");
    const auto replay = instrumentFromText("replay:file:run,x1.csv,x20");
    ASSERT_TRUE(replay);
    EXPECT_EQ(replay.value().address, "file:run,x1.csv");
    EXPECT_EQ(replay.value().speed, 20.0);
}

TEST(Rigs, AReaderRefusesARigThatMakesNoSense)
{
    EXPECT_FALSE(RigReader::start(Rig{}));
    Rig rig{"x",
            {{"m",
              InstrumentKind::modbus,
              "tcp:localhost:502",
              1,
              0.25,
              1.0,
              "",
              {{"holding:3:u17", "a", "", 1.0, 0.0}}}}};
    const auto reader = RigReader::start(rig);
    ASSERT_FALSE(reader);
    EXPECT_THAT(reader.error().message.english(), HasSubstr("'holding:3:u17' is no register"));
}

TEST(Rigs, AreKeptWithTheUserByName)
{
    namespace fs = std::filesystem;
    const fs::path folder =
        fs::temp_directory_path() / ("bothways_rigs_" + std::to_string(::getpid())) / "rigs";
    const auto file = rigFile(folder, "car");
    ASSERT_TRUE(file);
    EXPECT_TRUE(rigNames(folder).empty());
    EXPECT_THAT(rigByWord(folder, "car").error().message.english(),
                HasSubstr("make one with: bothways rig new car"));
    ASSERT_TRUE(saveRig(file.value(), someRig(), false));
    EXPECT_THAT(rigNames(folder), testing::ElementsAre("car"));
    const auto rig = rigByWord(folder, "car");
    ASSERT_TRUE(rig);
    EXPECT_EQ(rig.value(), someRig());
    EXPECT_THAT(rigByWord(folder, "cab").error().message.english(),
                HasSubstr("there is no rig 'cab'; expected one of car"));
    Rig other = someRig();
    other.instruments.pop_back();
    EXPECT_FALSE(saveRig(file.value(), other, false)) << "what is there stays";
    EXPECT_TRUE(saveRig(file.value(), other, true));
    for (const char* bad : {"", "../x", ".hidden", "a\nb"})
        EXPECT_FALSE(rigFile(folder, bad)) << bad;
    Rig nameless = someRig();
    nameless.name.clear();
    const fs::path elsewhere = folder / "of a friend.json";
    ASSERT_TRUE(saveRig(elsewhere, nameless, false));
    EXPECT_EQ(rigByWord({}, elsewhere.string()).value().name, "of a friend");
    EXPECT_THAT(rigByWord({}, (folder / "none.json").string()).error().message.english(),
                HasSubstr("there is no such file"));
    EXPECT_THAT(core::describe(saveRig(elsewhere / "in" / "a.json", nameless, false).error()),
                HasSubstr("this folder cannot be made: Not a directory"));
    EXPECT_THAT(rigByWord({}, "car").error().message.english(), HasSubstr("expected HOME"));
    fs::remove_all(folder.parent_path());
}

TEST(Rigs, StandInTheFolderForSettingsThatTheUserHas)
{
    const auto folderWith = [](const char* settings, const char* home) {
        const auto set = [](const char* name, const char* value) {
            return value ? ::setenv(name, value, 1) : ::unsetenv(name);
        };
        const std::array names = {"XDG_CONFIG_HOME", "HOME"};
        std::array<std::optional<std::string>, 2> before;
        for (std::size_t i = 0; i < names.size(); ++i)
            if (const char* value = std::getenv(names[i]))
                before[i] = value;
        set(names[0], settings);
        set(names[1], home);
        const std::string folder = rigsFolder().string();
        for (std::size_t i = 0; i < names.size(); ++i)
            set(names[i], before[i] ? before[i]->c_str() : nullptr);
        return folder;
    };
    EXPECT_EQ(folderWith("/settings", "/home/a"), "/settings/bothways/rigs");
    EXPECT_EQ(folderWith("settings", "/home/a"), "/home/a/.config/bothways/rigs")
        << "what is not absolute is to be ignored";
    EXPECT_EQ(folderWith(nullptr, "/home/a"), "/home/a/.config/bothways/rigs");
    EXPECT_EQ(folderWith(nullptr, nullptr), "");
}

TEST(SerialPorts, AreNamedByWhatStaysTheSame)
{
    namespace fs = std::filesystem;
    const fs::path devices =
        fs::temp_directory_path() / ("bothways_dev_" + std::to_string(::getpid()));
    fs::remove_all(devices);
    EXPECT_TRUE(serialPorts(devices).empty());
    fs::create_directories(devices / "serial" / "by-id");
    for (const char* name : {"ttyUSB0", "ttyUSB1", "ttyACM0", "tty1", "null"})
        std::ofstream(devices / name) << "";
    fs::create_symlink("../../ttyUSB1", devices / "serial" / "by-id" / "usb-board_A50285BI");
    fs::create_symlink("../../gone", devices / "serial" / "by-id" / "usb-unplugged");
    const auto ports = serialPorts(devices);
    ASSERT_EQ(ports.size(), 3u);
    const fs::path plain = fs::canonical(devices);
    EXPECT_EQ(ports[0].path, devices / "serial/by-id/usb-board_A50285BI");
    EXPECT_EQ(ports[0].means, plain / "ttyUSB1");
    EXPECT_EQ(ports[1].path, devices / "ttyACM0");
    EXPECT_EQ(ports[2].path, devices / "ttyUSB0");
    fs::remove_all(devices);
}

TEST(Calibration, TwoPointsGiveFactorAndOffset)
{
    const auto found = calibrated({100.0, 210.0}, {300.0, 610.0});
    ASSERT_TRUE(found);
    EXPECT_DOUBLE_EQ(found.value().factor, 2.0);
    EXPECT_DOUBLE_EQ(found.value().offset, 10.0);
    // Upon what the channel had: shown = read * 0.5 + 3.
    const RigChannel channel = corrected({"a", "b", "W", 0.5, 3.0}, found.value());
    EXPECT_DOUBLE_EQ(channel.factor, 1.0);
    EXPECT_DOUBLE_EQ(channel.offset, 16.0);
    const double read = (100.0 - 3.0) / 0.5;
    EXPECT_DOUBLE_EQ(read * channel.factor + channel.offset, 210.0);
}

TEST(Calibration, PointsThatSayNothingAreRefused)
{
    EXPECT_THAT(calibrated({5.0, 1.0}, {5.0, 2.0}).error().message.english(),
                HasSubstr("both points show 5"));
    EXPECT_THAT(calibrated({5.0, 1.0}, {6.0, 1.0}).error().message.english(),
                HasSubstr("both points should be 1"));
    EXPECT_THAT(calibrated({5.0, 1.0}, {5.0000001, 9.0}).error().message.english(),
                HasSubstr("was a digit left out?"));
    EXPECT_FALSE(calibrated({5.0, 1.0}, {std::numeric_limits<double>::infinity(), 2.0}));
}

} // namespace
} // namespace bothways::tests
