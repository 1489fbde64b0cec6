// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/instruments/rig_reader.h"

#include <gtest/gtest.h>

#include <chrono>
#include <fstream>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <thread>
#include <vector>

#include <arpa/inet.h>
#include <fcntl.h>
#include <netinet/in.h>
#include <pty.h>
#include <sys/socket.h>
#include <termios.h>
#include <unistd.h>

/// A rig that is read in a test, and the other ends of its ports.
namespace bothways::tests {

class ReadingRig {
public:
    explicit ReadingRig(std::vector<storage::Instrument> instruments, double silence_s = 2.0)
    {
        auto reader =
            storage::RigReader::start({"test", std::move(instruments)}, {0.05, silence_s});
        if (reader)
            m_reader.emplace(std::move(reader).take());
        else
            ADD_FAILURE() << core::describe(reader.error());
    }
    /// Takes readings until the condition holds. @return  false: not in a minute, which is long for
    /// a busy machine
    bool until(const std::function<bool()>& holds)
    {
        const auto give = std::chrono::steady_clock::now() + std::chrono::minutes(1);
        for (;;) {
            take();
            if (holds())
                return true;
            if (std::chrono::steady_clock::now() > give)
                return false;
            std::this_thread::sleep_for(std::chrono::milliseconds(2));
        }
    }
    void take()
    {
        m_reader->take(readings);
        m_reader->takeMarks(marks);
    }
    bool untilReadings(std::size_t count)
    {
        return until([&] { return readings.size() >= count; });
    }
    bool untilTrouble(const std::string& words, std::size_t instrument = 0)
    {
        return until([&] { return trouble(instrument).find(words) != std::string::npos; });
    }
    [[nodiscard]] std::string trouble(std::size_t instrument = 0) const
    {
        return state(instrument).trouble.english();
    }
    [[nodiscard]] storage::InstrumentState state(std::size_t instrument = 0) const
    {
        return m_reader->states()[instrument];
    }
    storage::RigReader& reader() { return *m_reader; }
    /// Values of a channel in order, with factor and offset.
    [[nodiscard]] std::vector<double> values(const std::string& name) const
    {
        const auto channels = m_reader->channels();
        std::vector<double> found;
        for (const storage::Reading& reading : readings)
            if (const auto& channel = channels[reading.channel].channel; channel.name == name)
                found.push_back(reading.value() * channel.factor + channel.offset);
        return found;
    }
    /// Whether the times of each channel ascend.
    [[nodiscard]] bool timesAscend() const
    {
        std::map<std::uint32_t, double> last;
        for (const storage::Reading& reading : readings) {
            const auto [at, first] = last.emplace(reading.channel, reading.time_s);
            if (!first && !(reading.time_s > at->second))
                return false;
            at->second = reading.time_s;
        }
        return true;
    }

    std::vector<storage::Reading> readings;
    std::vector<storage::ReadMark> marks;

private:
    std::optional<storage::RigReader> m_reader;
};

inline storage::Instrument instrument(const std::string& text)
{
    auto made = storage::instrumentFromText(text);
    if (!made)
        ADD_FAILURE() << core::describe(made.error());
    return made ? made.value() : storage::Instrument{};
}

/// A serial port whose other end is ours.
class PseudoTerminal {
public:
    PseudoTerminal()
    {
        char name[100] = "";
        int port = -1;
        EXPECT_EQ(::openpty(&m_board, &port, name, nullptr, nullptr), 0);
        termios raw{};
        ::tcgetattr(port, &raw);
        ::cfmakeraw(&raw);
        ::tcsetattr(port, TCSANOW, &raw);
        ::close(port);
        path = name;
    }
    ~PseudoTerminal() { unplug(); }
    PseudoTerminal(const PseudoTerminal&) = delete;
    PseudoTerminal& operator=(const PseudoTerminal&) = delete;
    void print(std::string_view bytes) const
    {
        while (!bytes.empty()) {
            const ssize_t sent = ::write(m_board, bytes.data(), bytes.size());
            ASSERT_GT(sent, 0);
            bytes.remove_prefix(static_cast<std::size_t>(sent));
        }
    }
    void unplug()
    {
        if (m_board >= 0)
            ::close(m_board);
        m_board = -1;
    }
    [[nodiscard]] int board() const { return m_board; }
    std::string path;

private:
    int m_board = -1;
};

/// A server on the loopback.
class LoopbackServer {
public:
    LoopbackServer()
    {
        m_listener = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
        sockaddr_in here{};
        here.sin_family = AF_INET;
        here.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
        EXPECT_EQ(::bind(m_listener, reinterpret_cast<sockaddr*>(&here), sizeof here), 0);
        EXPECT_EQ(::listen(m_listener, 4), 0);
        socklen_t size = sizeof here;
        ::getsockname(m_listener, reinterpret_cast<sockaddr*>(&here), &size);
        port = ntohs(here.sin_port);
    }
    ~LoopbackServer()
    {
        hangUp();
        ::close(m_listener);
    }
    LoopbackServer(const LoopbackServer&) = delete;
    LoopbackServer& operator=(const LoopbackServer&) = delete;
    void accept() { m_caller = ::accept(m_listener, nullptr, nullptr); }
    void print(std::string_view bytes) const
    {
        while (!bytes.empty()) {
            const ssize_t sent = ::send(m_caller, bytes.data(), bytes.size(), MSG_NOSIGNAL);
            ASSERT_GT(sent, 0);
            bytes.remove_prefix(static_cast<std::size_t>(sent));
        }
    }
    void hangUp()
    {
        if (m_caller >= 0)
            ::close(m_caller);
        m_caller = -1;
    }
    [[nodiscard]] int listener() const { return m_listener; }
    int port = 0;

private:
    int m_listener = -1, m_caller = -1;
};

} // namespace bothways::tests
