// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/instruments/reading_rig.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <modbus/modbus.h>

#include <atomic>
#include <filesystem>
#include <fstream>

namespace bothways::tests {
namespace {

namespace fs = std::filesystem;
using storage::Instrument;
using storage::InstrumentState;
using testing::ElementsAre;
using testing::HasSubstr;
using Is = InstrumentState::Is;

class ReplayFile {
public:
    ReplayFile(const std::string& name, const std::string& text)
        : path(fs::temp_directory_path() / fmt::format("bothways_{}_{}", ::getpid(), name))
    {
        std::ofstream(path) << text;
    }
    ~ReplayFile() { fs::remove(path); }
    ReplayFile(const ReplayFile&) = delete;
    ReplayFile& operator=(const ReplayFile&) = delete;
    [[nodiscard]] Instrument at(int speed) const
    {
        return instrument(fmt::format("replay:{},x{}", path.string(), speed));
    }
    fs::path path;
};

TEST(Replays, GiveWhatTheRecordingHoldsAtItsTimes)
{
    const ReplayFile file("a.csv", "time_s,rotor_rpm,Load [N],mark\n"
                                   "100,2950,1.25,\n100.5,2951,,lorry\n101,2952,1.5,\n");
    ReadingRig rig({file.at(100)});
    ASSERT_TRUE(rig.until([&] { return rig.reader().ended(); }));
    EXPECT_THAT(rig.values("rotor_rpm"), ElementsAre(2950.0, 2951.0, 2952.0));
    EXPECT_THAT(rig.values("Load [N]"), ElementsAre(1.25, 1.5));
    ASSERT_EQ(rig.readings.size(), 5u);
    EXPECT_EQ(rig.readings.front().time_s, 0.0);
    EXPECT_EQ(rig.readings.back().time_s, 1.0);
    ASSERT_EQ(rig.marks.size(), 1u);
    EXPECT_EQ(rig.marks[0].words, "lorry");
    EXPECT_EQ(rig.marks[0].time_s, 0.5);
    EXPECT_EQ(rig.reader().clock_s(), 1.0) << "time stands still where all have ended";
    EXPECT_EQ(rig.reader().channels()[0].channel.unit, "rpm");
}

TEST(Replays, TheClockNeverPassesWhatWasHandedOver)
{
    std::string text = "time_s,rotor_rpm\n";
    for (int i = 0; i < 3000; ++i)
        text += fmt::format("{},{}\n", i * 0.01, i);
    const ReplayFile file("b.csv", text);
    ReadingRig rig({file.at(100)});
    double last_s = -1.0;
    EXPECT_TRUE(rig.until([&] {
        const double now_s = rig.reader().clock_s();
        rig.take();
        EXPECT_GE(now_s, last_s);
        last_s = now_s;
        // All rows up to `now_s` are here.
        EXPECT_GE(rig.readings.size(), static_cast<std::size_t>(now_s / 0.01));
        return rig.reader().ended();
    }));
    EXPECT_EQ(rig.values("rotor_rpm").size(), 3000u);
    EXPECT_TRUE(rig.timesAscend());
}

TEST(Replays, OfOneRigBeginTogetherByTheirClocks)
{
    const ReplayFile early("c.csv",
                           "time,rotor_rpm\n2026-05-09T05:40:00,1\n2026-05-09T05:40:01,2\n");
    const ReplayFile late("d.csv",
                          "time,output_w\n2026-05-09T05:40:00.5,3\n2026-05-09T05:40:01.5,4\n");
    Instrument second = late.at(50);
    second.name = "second";
    ReadingRig rig({early.at(50), second});
    ASSERT_TRUE(rig.until([&] { return rig.reader().ended(); }));
    std::map<double, double> values;
    for (const storage::Reading& reading : rig.readings)
        values[reading.time_s] = reading.value();
    EXPECT_EQ(values, (std::map<double, double>{{0.0, 1}, {0.5, 3}, {1.0, 2}, {1.5, 4}}));
    second.speed = 20.0;
    EXPECT_FALSE(storage::RigReader::start({"x", {early.at(50), second}}));
}

TEST(Replays, ARigListsWhatItWants)
{
    const ReplayFile file("e.csv", "time_s,Speed [mph],Other\n0,60,1\n1,61,2\n");
    Instrument some = file.at(100);
    some.channels = {{"speed", "road_speed_kmh", "km/h", 1.609344, 0.0}};
    ReadingRig rig({some});
    ASSERT_TRUE(rig.until([&] { return rig.reader().ended(); }));
    EXPECT_EQ(rig.reader().channels().size(), 1u);
    EXPECT_THAT(rig.values("road_speed_kmh"), ElementsAre(60 * 1.609344, 61 * 1.609344));
}

TEST(Replays, StopInTheMiddle)
{
    const ReplayFile file("f.csv", "time_s,rotor_rpm\n0,1\n1000,2\n");
    ReadingRig rig({file.at(1)});
    ASSERT_TRUE(rig.untilReadings(1));
    rig.reader().stop(); // does not wait for the next line, which is due in a quarter of an hour
    rig.take();
    EXPECT_THAT(rig.values("rotor_rpm"), ElementsAre(1));
}

/// A device on the loopback, answering in a thread of its own.
class ModbusDevice {
public:
    ModbusDevice()
    {
        m_context = modbus_new_tcp("127.0.0.1", 0);
        m_map = modbus_mapping_new(0, 0, 20, 20);
        m_map->tab_registers[3] = 2950;
        m_map->tab_registers[4] = 0xE979; // 123.456, low word first
        m_map->tab_registers[5] = 0x42F6;
        m_map->tab_registers[6] =
            0x7FC0; // "not a number", by which devices say that they have none
        m_map->tab_input_registers[0] = 0xffff;
        m_thread = std::thread([this] { serve(); });
    }
    ~ModbusDevice()
    {
        m_stop = true;
        m_thread.join();
        modbus_mapping_free(m_map);
        modbus_free(m_context);
    }
    ModbusDevice(const ModbusDevice&) = delete;
    ModbusDevice& operator=(const ModbusDevice&) = delete;
    [[nodiscard]] int port() const { return m_server.port; }
    std::atomic<int> requests = 0;
    std::atomic<bool> silent = false, hangsUp = false;

private:
    static bool comes(int socket)
    {
        fd_set set;
        FD_ZERO(&set);
        FD_SET(socket, &set);
        timeval wait{0, 20'000};
        return ::select(socket + 1, &set, nullptr, nullptr, &wait) > 0;
    }
    void serve()
    {
        while (!m_stop) {
            if (!comes(m_server.listener()))
                continue;
            const int caller = ::accept(m_server.listener(), nullptr, nullptr);
            modbus_set_socket(m_context, caller);
            answer(caller);
            ::close(caller);
        }
    }
    void answer(int caller)
    {
        std::uint8_t query[MODBUS_TCP_MAX_ADU_LENGTH];
        while (!m_stop) {
            if (!comes(caller))
                continue;
            const int size = modbus_receive(m_context, query);
            if (size < 0 || hangsUp)
                return;
            ++requests;
            if (!silent)
                modbus_reply(m_context, query, size, m_map);
        }
    }
    LoopbackServer m_server;
    modbus_t* m_context = nullptr;
    modbus_mapping_t* m_map = nullptr;
    std::atomic<bool> m_stop = false;
    std::thread m_thread;
};

TEST(ModbusDevices, ArePolledForWhatTheRigLists)
{
    ModbusDevice device;
    Instrument meter = instrument(fmt::format("modbus:tcp:127.0.0.1:{}", device.port()));
    meter.poll_s = 0.01;
    meter.channels = {{"holding:3:u16", "output_w", "W", 0.1, 5.0},
                      {"holding:4:f32:cdab", "rotor_rpm", "rpm", 1.0, 0.0},
                      {"input:0:s16", "setting", "°", 1.0, 0.0}};
    ReadingRig rig({meter});
    ASSERT_TRUE(rig.until([&] { return rig.values("setting").size() >= 3; })) << rig.trouble();
    EXPECT_DOUBLE_EQ(rig.values("output_w")[0], 300.0);
    EXPECT_EQ(rig.values("rotor_rpm")[0], static_cast<double>(123.456f));
    EXPECT_EQ(rig.values("setting")[0], -1.0);
    EXPECT_EQ(rig.trouble(), "");
    EXPECT_TRUE(rig.timesAscend());
    rig.reader().stop();
    rig.take();
    EXPECT_LE(device.requests, static_cast<int>(2 * rig.values("output_w").size() + 2))
        << "neighbours are asked for together";
}

TEST(ModbusDevices, ARegisterThatIsNotThereIsSaidAndTheOthersGoOn)
{
    ModbusDevice device;
    Instrument meter = instrument(fmt::format("modbus:tcp:127.0.0.1:{}", device.port()));
    meter.poll_s = 0.01;
    meter.channels = {{"holding:18:u16", "a", "", 1.0, 0.0},
                      {"holding:19:u16", "b", "", 1.0, 0.0},
                      {"holding:20:u16", "c", "", 1.0, 0.0}}; // the device has 20, from 0
    ReadingRig rig({meter});
    ASSERT_TRUE(rig.until([&] { return rig.values("b").size() >= 2; })) << rig.trouble();
    EXPECT_EQ(rig.trouble(), "the device does not give holding:20:u16: Illegal data address");
    EXPECT_TRUE(rig.values("c").empty());
    EXPECT_GE(rig.values("a").size(), 2u);
}

/// Asked without a pause.
Instrument powerMeter(const ModbusDevice& device)
{
    Instrument meter = instrument(fmt::format("modbus:tcp:127.0.0.1:{}", device.port()));
    meter.poll_s = 0.0;
    meter.channels = {{"holding:3:u16", "output_w", "W", 1.0, 0.0}};
    return meter;
}

TEST(ModbusDevices, ThatFallSilentAreSaidAndCalledAgain)
{
    ModbusDevice device;
    ReadingRig rig({powerMeter(device)});
    ASSERT_TRUE(rig.untilReadings(1)) << rig.trouble();
    device.silent = true;
    ASSERT_TRUE(rig.until([&] { return rig.state().is == Is::silent; })) << rig.trouble();
    EXPECT_THAT(rig.trouble(), HasSubstr("the device does not answer for holding:3:u16"));
    EXPECT_EQ(rig.state().silences, 1);
    device.silent = false;
    const std::size_t before = rig.readings.size();
    EXPECT_TRUE(rig.untilReadings(before + 2)) << rig.trouble();
    EXPECT_EQ(rig.state().is, Is::reading);
}

TEST(ModbusDevices, ThatCannotBeReachedAreSaidWithTheirName)
{
    ModbusDevice device;
    LoopbackServer server;
    ::shutdown(server.listener(), SHUT_RDWR); // nobody listens any more
    const std::string there = fmt::format("modbus:tcp:127.0.0.1:{}", device.port());
    std::vector<Instrument> all = {instrument(fmt::format("modbus:tcp:127.0.0.1:{}", server.port)),
                                   instrument(there),
                                   instrument("modbus:serial:/dev/no_such_port,9600,8E1")};
    all[1].unit = 252; // of the addresses that the specification keeps for itself
    for (std::size_t i = 0; i < all.size(); ++i) {
        all[i].name = std::to_string(i);
        all[i].channels = {{"holding:3:u16", all[i].name, "W", 1.0, 0.0}};
    }
    ReadingRig rig(all);
    EXPECT_TRUE(rig.untilTrouble(
        fmt::format("127.0.0.1 port {} cannot be reached: Connection refused", server.port), 0))
        << rig.trouble(0);
    EXPECT_TRUE(rig.untilTrouble("unit 252 is no number of a Modbus device", 1)) << rig.trouble(1);
    EXPECT_TRUE(rig.untilTrouble("there is no /dev/no_such_port", 2)) << rig.trouble(2);
    for (std::size_t i = 0; i < all.size(); ++i)
        EXPECT_EQ(rig.state(i).is, Is::failed) << i;
    EXPECT_EQ(device.requests, 0);
}

TEST(ModbusDevices, ThatHangUpAreCalledAgain)
{
    ModbusDevice device;
    ReadingRig rig({powerMeter(device)});
    ASSERT_TRUE(rig.untilReadings(2)) << rig.trouble();
    device.hangsUp = true;
    EXPECT_TRUE(rig.untilTrouble("the connection was lost")) << rig.trouble();
    device.hangsUp = false;
    const std::size_t before = rig.readings.size();
    EXPECT_TRUE(rig.untilReadings(before + 2)) << rig.trouble();
    EXPECT_TRUE(rig.until([&] { return rig.trouble().empty(); })) << rig.trouble();
    EXPECT_GE(rig.state().reconnects, 1);
}

TEST(ModbusDevices, AValueThatIsNoNumberIsLeftOut)
{
    ModbusDevice device;
    Instrument meter = instrument(fmt::format("modbus:tcp:127.0.0.1:{}", device.port()));
    meter.poll_s = 0.0;
    meter.channels = {{"holding:6:f32", "no_number", "", 1.0, 0.0},
                      {"holding:3:u16", "output_w", "W", 1.0, 0.0}};
    ReadingRig rig({meter});
    ASSERT_TRUE(rig.until([&] { return rig.values("output_w").size() >= 2; })) << rig.trouble();
    EXPECT_TRUE(rig.values("no_number").empty());
    EXPECT_EQ(rig.trouble(), "");
}

/// The adapter's end of a serial port: each request that comes is answered from a list.
TEST(CarReaders, SpeakThroughARealPort)
{
    const PseudoTerminal terminal;
    Instrument car = instrument("obd:serial:" + terminal.path + ",38400");
    car.poll_s = 0.0;
    ReadingRig rig({car});
    const std::map<std::string, std::string> answers = {{"0100", "410000180000"}, // 0C 0D
                                                        {"010C", "410C1AF8"},
                                                        {"010D", "410D3C"}};
    ::fcntl(terminal.board(), F_SETFL, O_NONBLOCK);
    std::string asked;
    EXPECT_TRUE(rig.until([&] {
        char bytes[64];
        const ssize_t got = ::read(terminal.board(), bytes, sizeof bytes);
        for (ssize_t i = 0; i < got; ++i) {
            if (bytes[i] != '\r') {
                asked += bytes[i];
                continue;
            }
            const auto known = answers.find(asked);
            terminal.print((known == answers.end() ? "OK" : known->second) + "\r\r>");
            asked.clear();
        }
        return rig.values("road_speed_kmh").size() >= 2;
    })) << rig.trouble();
    EXPECT_EQ(rig.values("engine_rpm").at(0), 1726.0);
    EXPECT_EQ(rig.values("road_speed_kmh").at(0), 60.0);
}

} // namespace
} // namespace bothways::tests
