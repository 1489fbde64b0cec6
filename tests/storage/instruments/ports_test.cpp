// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/instruments/reading_rig.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <atomic>
#include <filesystem>

#include <sys/file.h>
#include <sys/ioctl.h>
#include <sys/stat.h>
#include <sys/wait.h>

namespace bothways::tests {
namespace {

namespace fs = std::filesystem;
using storage::Instrument;
using storage::InstrumentState;
using testing::ElementsAre;
using testing::HasSubstr;
using Is = InstrumentState::Is;

/// A folder that goes with the test.
class PortFolder {
public:
    PortFolder() : path(fs::temp_directory_path() / fmt::format("bothways_ports_{}", ::getpid()))
    {
        fs::remove_all(path);
        fs::create_directories(path);
    }
    ~PortFolder() { fs::remove_all(path); }
    PortFolder(const PortFolder&) = delete;
    PortFolder& operator=(const PortFolder&) = delete;
    fs::path path;
};

Instrument onSerial(const PseudoTerminal& terminal)
{
    return instrument("lines:serial:" + terminal.path + ",115200");
}

TEST(Ports, ASerialPortIsReadAndReadAgainWhenItWasUnplugged)
{
    auto terminal = std::make_unique<PseudoTerminal>();
    const PortFolder folder;
    const fs::path name = folder.path / "board"; // as /dev/serial/by-id names a device
    fs::create_symlink(terminal->path, name);
    Instrument board = instrument("lines:serial:" + name.string() + ",115200");
    board.channels = {{"rpm", "rotor_rpm", "rpm", 2.0, 10.0}};
    ReadingRig rig({board});
    ASSERT_TRUE(rig.until([&] { return rig.state().is == Is::reading; })) << rig.trouble();
    terminal->print("pm=7 w=1\nrpm=100 w=612\nrpm=101 w=613\n");
    ASSERT_TRUE(rig.untilReadings(2));
    EXPECT_THAT(rig.values("rotor_rpm"), ElementsAre(210.0, 212.0))
        << "the first line may be half of one";
    terminal->unplug();
    ASSERT_TRUE(rig.until([&] { return rig.state().is != Is::reading; }));
    EXPECT_THAT(rig.trouble(), HasSubstr("board"));
    terminal = std::make_unique<PseudoTerminal>();
    fs::remove(name);
    fs::create_symlink(terminal->path, name);
    ASSERT_TRUE(rig.until([&] { return rig.state().is == Is::reading; }));
    terminal->print("9\nrpm=200\n");
    ASSERT_TRUE(rig.untilReadings(3));
    EXPECT_EQ(rig.values("rotor_rpm").back(), 410.0);
    EXPECT_EQ(rig.state().reconnects, 1);
    EXPECT_EQ(rig.state().trouble.english(), "");
    EXPECT_TRUE(rig.timesAscend());
    EXPECT_EQ(rig.reader().channels().size(), 1u) << "the rig does not list w";
}

TEST(Ports, APortThatSomebodyElseHoldsIsSaid)
{
    const PseudoTerminal terminal;
    int ready[2];
    ASSERT_EQ(::pipe(ready), 0);
    const pid_t other = ::fork();
    if (other == 0) {
        const int port = ::open(terminal.path.c_str(), O_RDWR | O_NOCTTY);
        ::flock(port, LOCK_EX);
        static_cast<void>(::write(ready[1], "x", 1));
        ::pause();
        ::_exit(0);
    }
    char byte = 0;
    ASSERT_EQ(::read(ready[0], &byte, 1), 1);
    ReadingRig rig({onSerial(terminal)});
    EXPECT_TRUE(rig.untilTrouble("is in use by")) << rig.trouble();
    EXPECT_THAT(rig.trouble(), HasSubstr(fmt::format("process {}", other)));
    EXPECT_EQ(rig.state().is, Is::failed);
    ::kill(other, SIGKILL);
    ::waitpid(other, nullptr, 0);
    EXPECT_TRUE(rig.until([&] { return rig.state().is == Is::reading; })) << rig.trouble();
    ::close(ready[0]);
    ::close(ready[1]);
}

TEST(Ports, WhatIsNotThereIsSaidWithItsName)
{
    LoopbackServer server;
    const int nobody = server.port;
    ::shutdown(server.listener(), SHUT_RDWR); // nobody listens any more
    std::vector<Instrument> all = {instrument("lines:serial:/dev/no_such_port,9600"),
                                   instrument("lines:serial:/dev/null,9600"),
                                   instrument(fmt::format("lines:tcp:127.0.0.1:{}", nobody)),
                                   instrument("lines:file:/no/such/file"),
                                   instrument("lines:udp:10.255.255.1:2000"),
                                   instrument("replay:/no/such/run.csv")};
    for (std::size_t i = 0; i < all.size(); ++i)
        all[i].name = std::to_string(i);
    ReadingRig rig(all);
    EXPECT_TRUE(rig.untilTrouble("there is no /dev/no_such_port", 0)) << rig.trouble(0);
    EXPECT_TRUE(rig.untilTrouble("/dev/null is no serial port", 1)) << rig.trouble(1);
    EXPECT_TRUE(rig.untilTrouble(fmt::format("127.0.0.1 port {} cannot be reached", nobody), 2))
        << rig.trouble(2);
    EXPECT_TRUE(rig.untilTrouble("there is no /no/such/file", 3)) << rig.trouble(3);
    EXPECT_TRUE(rig.untilTrouble("cannot be listened on", 4)) << rig.trouble(4);
    EXPECT_TRUE(rig.untilTrouble("no such file", 5)) << rig.trouble(5);
    for (std::size_t i = 0; i < all.size(); ++i)
        EXPECT_EQ(rig.state(i).is, Is::failed) << i;
}

TEST(Ports, TwoOnOneUdpPortAreToldApart)
{
    const int taken = ::socket(AF_INET, SOCK_DGRAM, 0);
    sockaddr_in here{};
    here.sin_family = AF_INET;
    here.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    ASSERT_EQ(::bind(taken, reinterpret_cast<sockaddr*>(&here), sizeof here), 0);
    socklen_t size = sizeof here;
    ::getsockname(taken, reinterpret_cast<sockaddr*>(&here), &size);
    const int port = ntohs(here.sin_port);
    ReadingRig rig({instrument(fmt::format("lines:udp:127.0.0.1:{}", port))});
    EXPECT_TRUE(rig.untilTrouble(fmt::format("UDP port {} is in use by another program", port)))
        << rig.trouble();
    ::close(taken);
    ASSERT_TRUE(rig.until([&] { return rig.state().is == Is::reading; })) << rig.trouble();
    const int sender = ::socket(AF_INET, SOCK_DGRAM, 0);
    for (const char* text : {"rpm=1", "rpm=2\n", "rpm=3\nrpm=4"})
        ::sendto(sender, text, std::strlen(text), 0, reinterpret_cast<sockaddr*>(&here),
                 sizeof here);
    EXPECT_TRUE(rig.untilReadings(4));
    EXPECT_THAT(rig.values("rpm"), ElementsAre(1.0, 2.0, 3.0, 4.0))
        << "each datagram is whole lines";
    ::close(sender);
}

TEST(Ports, AServerThatHangsUpIsCalledAgain)
{
    LoopbackServer server;
    ReadingRig rig({instrument(fmt::format("lines:tcp:127.0.0.1:{}", server.port))});
    server.accept();
    server.print("rpm,w\n1,2\n3,4\n5,");
    EXPECT_TRUE(rig.untilReadings(4));
    server.hangUp();
    EXPECT_TRUE(rig.untilTrouble("closed the connection")) << rig.trouble();
    server.accept();
    server.print("6\n7,8\n");
    EXPECT_TRUE(rig.untilReadings(6));
    EXPECT_THAT(rig.values("rpm"), ElementsAre(1.0, 3.0, 7.0));
    EXPECT_THAT(rig.values("w"), ElementsAre(2.0, 4.0, 8.0)) << "5,6 is of two connections";
    EXPECT_EQ(rig.state().reconnects, 1);
}

TEST(Ports, APipesWritersComeAndGo)
{
    const PortFolder folder;
    const std::string pipe = (folder.path / "pipe").string();
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    ReadingRig rig({instrument("lines:file:" + pipe)});
    for (const std::string_view text : {"rpm=1\nrpm=2\nrp", "rpm=3\n"}) {
        const int writer = ::open(pipe.c_str(), O_WRONLY);
        ASSERT_EQ(::write(writer, text.data(), text.size()), static_cast<ssize_t>(text.size()));
        ASSERT_TRUE(rig.untilReadings(text.starts_with("rpm=3") ? 3 : 2));
        ::close(writer);
        EXPECT_TRUE(rig.untilTrouble("nothing is written to " + pipe)) << rig.trouble();
    }
    EXPECT_EQ(rig.state().reconnects, 1);
    EXPECT_THAT(rig.values("rpm"), ElementsAre(1.0, 2.0, 3.0));
}

TEST(Ports, AFileIsReadFromItsEndUnderItsHeader)
{
    const PortFolder folder;
    const fs::path file = folder.path / "growing.csv";
    std::ofstream(file) << "rpm,w\n1,2\n3,4\n5,";
    ReadingRig rig({instrument("lines:file:" + file.string())});
    ASSERT_TRUE(rig.until([&] { return rig.state().is == Is::reading; }));
    std::ofstream(file, std::ios::app) << "6\n7,8\n";
    EXPECT_TRUE(rig.untilReadings(4));
    EXPECT_THAT(rig.values("rpm"), ElementsAre(5.0, 7.0)) << "what is old was not read now";
    EXPECT_THAT(rig.values("w"), ElementsAre(6.0, 8.0));
    // Another file under that name is read from its beginning.
    fs::rename(file, folder.path / "old.csv");
    std::ofstream(file) << "rpm,w\n9,10\n";
    EXPECT_TRUE(rig.untilReadings(6));
    EXPECT_EQ(rig.values("rpm").back(), 9.0);
}

TEST(Ports, SilenceIsSaidAndCounted)
{
    const PseudoTerminal terminal;
    ReadingRig rig({onSerial(terminal)}, 0.2);
    ASSERT_TRUE(rig.until([&] { return rig.state().is == Is::reading; }));
    terminal.print("x\na=1\n");
    ASSERT_TRUE(rig.untilReadings(1));
    EXPECT_TRUE(rig.until([&] { return rig.state().is == Is::silent; }));
    EXPECT_EQ(rig.trouble(), "nothing comes");
    EXPECT_GE(rig.state().silences, 1);
    terminal.print("a=2\n");
    EXPECT_TRUE(rig.until([&] { return rig.state().is == Is::reading; }));
    EXPECT_EQ(rig.trouble(), "");
}

TEST(Ports, AWrongSpeedIsSaid)
{
    const PseudoTerminal terminal;
    ReadingRig rig({onSerial(terminal)});
    ASSERT_TRUE(rig.until([&] { return rig.state().is == Is::reading; }));
    std::string noise;
    for (int i = 0; i < 400; ++i)
        noise += static_cast<char>(0x80 + i * 37 % 128);
    terminal.print(noise + "\n" + noise + "\n");
    EXPECT_TRUE(rig.untilTrouble("what comes is no text: is 115200 baud right?")) << rig.trouble();
    EXPECT_TRUE(rig.until([&] { return rig.state().garbage_lines >= 1; }));
    EXPECT_TRUE(rig.readings.empty());
}

TEST(Ports, AFloodThatNobodyTakesIsCountedAndHarmsNoOther)
{
    const PseudoTerminal flooding, other;
    Instrument quiet = onSerial(other);
    quiet.name = "other";
    ReadingRig rig({onSerial(flooding), quiet});
    ASSERT_TRUE(rig.until(
        [&] { return rig.state(0).is == Is::reading && rig.state(1).is == Is::reading; }));
    const std::string line = "1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16\n";
    std::string block;
    for (int i = 0; i < 200; ++i)
        block += line;
    while (rig.state().lost_bytes == 0) // nothing is taken meanwhile
        flooding.print(block);
    EXPECT_EQ(rig.state().readings, 1 << 18) << "so many wait, and no more";
    other.print("x\nrpm=7\n");
    EXPECT_TRUE(rig.until([&] { return !rig.values("rpm").empty(); }));
    EXPECT_TRUE(rig.timesAscend());
}

TEST(Ports, ReadersOfAPipeWaitAndLoseNothing)
{
    const PortFolder folder;
    const std::string pipe = (folder.path / "pipe").string();
    ASSERT_EQ(::mkfifo(pipe.c_str(), 0600), 0);
    ReadingRig rig({instrument("lines:file:" + pipe)});
    constexpr int kLines = 80'000;
    std::atomic<bool> done = false;
    std::thread writer([&] {
        std::ofstream stream(pipe);
        for (int i = 0; i < kLines; ++i)
            stream << i << ",1,2,3\n";
        stream.close();
        done = true;
    });
    // More than waits at most: the writer must be held back, and nothing thrown away.
    while (rig.state().readings < 200'000)
        std::this_thread::sleep_for(std::chrono::milliseconds(1));
    for (int i = 0; i < 100 && !done; ++i)
        std::this_thread::sleep_for(std::chrono::milliseconds(1));
    EXPECT_FALSE(done);
    EXPECT_TRUE(rig.untilReadings(kLines * 4));
    writer.join();
    rig.take();
    EXPECT_EQ(rig.state().lost_bytes, 0);
    const auto counted = rig.values("1");
    ASSERT_EQ(counted.size(), static_cast<std::size_t>(kLines));
    for (int i = 0; i < kLines; ++i)
        ASSERT_EQ(counted[static_cast<std::size_t>(i)], i);
    EXPECT_TRUE(rig.timesAscend());
}

TEST(Ports, AreStoppedWhileNobodyAnswers)
{
    const PseudoTerminal terminal;
    std::vector<Instrument> all = {onSerial(terminal), instrument("lines:tcp:10.255.255.1:9"),
                                   instrument("modbus:tcp:10.255.255.1:502")};
    all[1].name = "unreachable";
    all[2].channels = {{"holding:0:u16", "a", "", 1.0, 0.0}};
    ReadingRig rig(all);
    ASSERT_TRUE(rig.until([&] { return rig.state().is == Is::reading; }));
    rig.reader().stop(); // waits for none of them: a connection is given up after minutes
    terminal.print("1,2,3\n");
    rig.take();
    EXPECT_TRUE(rig.values("1").empty());
}

} // namespace
} // namespace bothways::tests
