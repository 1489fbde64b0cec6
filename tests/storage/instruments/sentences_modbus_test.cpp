// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/storage/instruments/parsed_text.h"

#include "storage/instruments/modbus_source.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <modbus/modbus.h>

#include <array>
#include <random>

#include <sys/socket.h>
#include <unistd.h>

namespace bothways::tests {
namespace {

using namespace bothways::storage;

std::string sentence(const std::string& body)
{
    unsigned sum = 0;
    for (const char c : body)
        sum ^= static_cast<unsigned char>(c);
    return fmt::format("${}*{:02X}\r\n", body, sum);
}

TEST(SentenceLines, PositionSpeedAndTimeOfAnyTalker)
{
    ParsedText parsed(makeSentenceParser);
    parsed.feed(sentence("GNRMC,120000.20,A,4807.038,N,01131.000,W,022.4,084.4,230394,003.1,W"));
    EXPECT_EQ(parsed.text(), "utc_s=43200200000e-6 lat_deg=48117300000e-9 lon_deg=-11516666667e-9 "
                             "road_speed_kmh=414848e-4\n");
    parsed.feed(sentence("GPGGA,120000.20,4807.038,N,01131.000,W,1,08,0.9,545.4,M,46.9,M,,"));
    EXPECT_EQ(parsed.lines().back(), "altitude_m=5454e-1") << "RMC has said the position";
    parsed.feed(sentence("GPVTG,054.7,T,034.4,M,005.5,N,010.2,K"));
    EXPECT_EQ(parsed.lines().size(), 2u) << "RMC has said the speed";
}

TEST(SentenceLines, WithoutRmcTheOthersCount)
{
    ParsedText parsed(makeSentenceParser);
    parsed.feed(sentence("GPVTG,054.7,T,034.4,M,005.5,N,010.2,K"));
    parsed.feed(sentence("GPGGA,235959,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,"));
    EXPECT_EQ(parsed.text(), "road_speed_kmh=102e-1\nutc_s=86399000000e-6 lat_deg=48117300000e-9 "
                             "lon_deg=11516666667e-9 altitude_m=5454e-1\n");
    EXPECT_EQ(parsed.last().own, 86399.0);
    parsed.feed(sentence("GPGGA,000001,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,"));
    EXPECT_EQ(parsed.last().own, 86401.0) << "over midnight";
}

TEST(SentenceLines, WrongChecksumsAreGarbageAndHalvesAreNothing)
{
    ParsedText parsed(makeSentenceParser, true);
    parsed.feed("07.038,N,01131.000,E*3F\r\n$GPVTG,,T,,M,005.5,N,010.2,K*00\r\nnoise\r\n");
    parsed.feed("!AIVDM,1,1,,A,14eG;o@034o8sd<L9i:a;WF>062D,0*7D\r\n");
    parsed.feed(sentence("GPGSV,1,1,00"));
    EXPECT_EQ(parsed.text(), "garbage\ngarbage\n");
    parsed.feed(sentence("GPRMC,120000,V,,,,,,,230394,,"));
    EXPECT_EQ(parsed.notice(), "the receiver has no position yet");
    EXPECT_EQ(parsed.lines().back(), "utc_s=43200000000e-6") << "time comes before a position";
}

TEST(ModbusSources, AreReadAndRefused)
{
    const auto plain = parseModbusSource("holding:3:u16");
    ASSERT_TRUE(plain);
    EXPECT_EQ(plain.value(),
              (ModbusSource{ModbusSource::Table::holding, 3, ModbusSource::Type::u16, "abcd"}));
    const auto wide = parseModbusSource("input:0x10:f32:cdab");
    ASSERT_TRUE(wide);
    EXPECT_EQ(wide.value(),
              (ModbusSource{ModbusSource::Table::input, 16, ModbusSource::Type::f32, "cdab"}));
    for (const char* bad : {"", "holding", "holding:3", "coil:3:u16", "holding:-1:u16",
                            "holding:65536:u16", "holding:65535:u32", "holding:3:u16:cdab",
                            "holding:3:f32:abdc", "holding:3:f64", "holding:0x:u16"})
        EXPECT_FALSE(parseModbusSource(bad)) << bad;
}

TEST(ModbusSources, WordsComeInFourOrders)
{
    // 123.456 is 0x42F6E979 as IEEE 754; 0x42F6E979 as a whole number is 1123477881.
    const std::array<std::uint16_t, 2> abcd = {0x42F6, 0xE979}, cdab = {0xE979, 0x42F6},
                                       badc = {0xF642, 0x79E9}, dcba = {0x79E9, 0xF642};
    const auto valueOf = [](const char* source, std::span<const std::uint16_t> registers) {
        return modbusValue(parseModbusSource(source).value(), registers).value();
    };
    EXPECT_EQ(valueOf("input:0:f32", abcd), static_cast<double>(123.456f));
    EXPECT_EQ(valueOf("input:0:f32:abcd", abcd), static_cast<double>(123.456f));
    EXPECT_EQ(valueOf("input:0:f32:cdab", cdab), static_cast<double>(123.456f));
    EXPECT_EQ(valueOf("input:0:f32:badc", badc), static_cast<double>(123.456f));
    EXPECT_EQ(valueOf("input:0:f32:dcba", dcba), static_cast<double>(123.456f));
    EXPECT_EQ(valueOf("input:0:u32", abcd), 1123477881.0);
    EXPECT_EQ(valueOf("input:0:s32:cdab", std::array<std::uint16_t, 2>{0xfffe, 0xffff}), -2.0);
    EXPECT_EQ(valueOf("input:0:u16", std::array<std::uint16_t, 1>{65535}), 65535.0);
    EXPECT_EQ(valueOf("input:0:s16", std::array<std::uint16_t, 1>{65535}), -1.0);
}

TEST(ModbusSources, NeighboursAreAskedForTogether)
{
    std::vector<ModbusSource> sources;
    for (const char* text : {"input:9:u16", "holding:4:u16", "holding:0:f32", "holding:2:u32",
                             "holding:3:u16", "holding:200:u16", "holding:6:u16"})
        sources.push_back(parseModbusSource(text).value());
    const auto requests = modbusRequests(sources);
    using Table = ModbusSource::Table;
    EXPECT_EQ(requests, (std::vector<ModbusRequest>{{Table::holding, 0, 5, {2, 3, 4, 1}},
                                                    {Table::holding, 6, 1, {6}},
                                                    {Table::holding, 200, 1, {5}},
                                                    {Table::input, 9, 1, {0}}}));
    sources.clear();
    for (int i = 0; i < 300; ++i)
        sources.push_back({Table::holding, i, ModbusSource::Type::u16, "abcd"});
    for (const ModbusRequest& request : modbusRequests(sources))
        EXPECT_LE(request.registers, 125);
}

/// What libmodbus sends for a request, and the reply that it is given, byte for byte.
std::vector<std::uint8_t> requestBytes(int count, std::span<const std::uint8_t> reply,
                                       std::vector<std::uint16_t>& registers)
{
    int ends[2];
    EXPECT_EQ(::socketpair(AF_UNIX, SOCK_STREAM, 0, ends), 0);
    modbus_t* context = modbus_new_tcp("127.0.0.1", 502);
    modbus_set_slave(context, 0x11);
    modbus_set_socket(context, ends[0]);
    EXPECT_EQ(::write(ends[1], reply.data(), reply.size()), static_cast<ssize_t>(reply.size()));
    registers.assign(static_cast<std::size_t>(count), 0);
    EXPECT_EQ(modbus_read_registers(context, 0x6B, count, registers.data()), count);
    std::vector<std::uint8_t> sent(64);
    sent.resize(static_cast<std::size_t>(::read(ends[1], sent.data(), sent.size())));
    modbus_free(context);
    ::close(ends[0]);
    ::close(ends[1]);
    return sent;
}

TEST(ModbusFrames, AreThoseOfTheSpecification)
{
    // MODBUS Application Protocol Specification V1.1b3, section 6.3, example of function 03: read
    // registers 108 to 110 (addresses 0x6B to 0x6D); the reply is 022B 0000 0064. The header is
    // that of MODBUS Messaging on TCP/IP V1.0b, section 3.1.3: transaction, protocol 0, length,
    // unit.
    const std::vector<std::uint8_t> reply = {0x00, 0x01, 0x00, 0x00, 0x00, 0x09, 0x11, 0x03,
                                             0x06, 0x02, 0x2B, 0x00, 0x00, 0x00, 0x64};
    std::vector<std::uint16_t> registers;
    const auto sent = requestBytes(3, reply, registers);
    EXPECT_EQ(sent, (std::vector<std::uint8_t>{0x00, 0x01, 0x00, 0x00, 0x00, 0x06, 0x11, 0x03, 0x00,
                                               0x6B, 0x00, 0x03}));
    EXPECT_EQ(registers, (std::vector<std::uint16_t>{0x022B, 0x0000, 0x0064}));
}

} // namespace
} // namespace bothways::tests
