// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/instruments/reading_rig.h"

#include <gtest/gtest.h>

#include <poll.h>

// Modbus over a serial line, frame by frame: what the wire carries, not what a library says.
namespace bothways::tests {
namespace {

using Is = storage::InstrumentState::Is;

/// "MODBUS over Serial Line Specification and Implementation Guide V1.02", section 6.2.2: the
/// register begins with all ones, and is shifted right against A001 (hexadecimal). From memory.
std::uint16_t crcOf(std::string_view frame)
{
    std::uint16_t crc = 0xffff;
    for (const char byte : frame) {
        crc = static_cast<std::uint16_t>(crc ^ static_cast<unsigned char>(byte));
        for (int bit = 0; bit < 8; ++bit)
            crc = static_cast<std::uint16_t>((crc & 1) != 0 ? (crc >> 1) ^ 0xa001 : crc >> 1);
    }
    return crc;
}

/// The low byte goes first.
std::string withCrc(std::string frame)
{
    const std::uint16_t crc = crcOf(frame);
    frame += static_cast<char>(crc & 0xff);
    frame += static_cast<char>(crc >> 8);
    return frame;
}

/// A meter on the line: takes requests of eight bytes, and answers what it is told to.
class SerialMeter {
public:
    using Answer = std::function<std::string(int request)>;
    explicit SerialMeter(Answer answer)
        : m_answer(std::move(answer)), m_thread([this](const std::stop_token& stop) { run(stop); })
    {
    }
    [[nodiscard]] std::string path() const { return m_line.path; }
    [[nodiscard]] std::vector<std::string> requests() const
    {
        const std::lock_guard lock(m_mutex);
        return m_requests;
    }

private:
    void run(const std::stop_token& stop)
    {
        constexpr std::size_t kRequest = 8;
        std::string got;
        while (!stop.stop_requested()) {
            pollfd wait{m_line.board(), POLLIN, 0};
            char bytes[64];
            if (::poll(&wait, 1, 20) < 1)
                continue;
            const ssize_t size = ::read(m_line.board(), bytes, sizeof bytes);
            if (size <= 0) { // nobody has the port open yet
                std::this_thread::sleep_for(std::chrono::milliseconds(5));
                continue;
            }
            got.append(bytes, static_cast<std::size_t>(size));
            if (got.size() < kRequest)
                continue;
            int number = 0;
            {
                const std::lock_guard lock(m_mutex);
                m_requests.push_back(got);
                number = static_cast<int>(m_requests.size());
            }
            got.clear();
            m_line.print(m_answer(number));
        }
    }
    PseudoTerminal m_line;
    Answer m_answer;
    mutable std::mutex m_mutex;
    std::vector<std::string> m_requests;
    std::jthread m_thread; ///< the last: it uses all of the above
};

storage::Instrument meterAt(const std::string& path)
{
    storage::Instrument meter = instrument("modbus:serial:" + path + ",9600");
    meter.poll_s = 0.02;
    meter.channels = {{"holding:0:u16", "output_w", "W", 1.0, 0.0}};
    return meter;
}

TEST(ModbusOverSerial, TheCheckIsThatOfThePublishedExample)
{
    // The specification's own example, appendix B: the frame 02 07 goes out as 02 07 41 12.
    EXPECT_EQ(withCrc({"\x02\x07", 2}), std::string("\x02\x07\x41\x12", 4));
}

TEST(ModbusOverSerial, AsksAndReadsInFramesOfTheSpecification)
{
    const SerialMeter meter([](int) { return withCrc({"\x01\x03\x02\x02\x64", 5}); });
    ReadingRig rig({meterAt(meter.path())});
    ASSERT_TRUE(rig.untilReadings(3)) << rig.trouble();
    EXPECT_EQ(rig.values("output_w").front(), 612.0);
    // unit 1, function 03, register 0, one of them, check
    EXPECT_EQ(meter.requests().front(), withCrc({"\x01\x03\x00\x00\x00\x01", 6}));
    EXPECT_EQ(rig.state().garbage_lines, 0);
}

TEST(ModbusOverSerial, AnAnswerWithAWrongCheckIsGarbageAndTheNextIsRead)
{
    const SerialMeter meter([](int request) {
        std::string frame = withCrc({"\x01\x03\x02\x02\x64", 5});
        if (request == 2)
            frame.back() = static_cast<char>(frame.back() ^ 0x01);
        return frame;
    });
    ReadingRig rig({meterAt(meter.path())});
    ASSERT_TRUE(rig.untilReadings(4)) << rig.trouble();
    EXPECT_EQ(rig.state().garbage_lines, 1);
    EXPECT_GE(meter.requests().size(), 5U) << "one of the answers was not taken";
    for (const double value : rig.values("output_w"))
        EXPECT_EQ(value, 612.0);
    EXPECT_EQ(rig.state().is, Is::reading);
}

} // namespace
} // namespace bothways::tests
