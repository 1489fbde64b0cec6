// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/chunks/chunk_codec.h"

#include <gtest/gtest.h>
#include <zstd.h>

#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>
#include <random>

namespace bothways::storage {
namespace {

using Limits = std::numeric_limits<double>;

std::vector<std::uint64_t> bitsOf(const std::vector<double>& values)
{
    std::vector<std::uint64_t> bits;
    for (const double value : values)
        bits.push_back(std::bit_cast<std::uint64_t>(value));
    return bits;
}

double fromBits(std::uint64_t bits)
{
    return std::bit_cast<double>(bits);
}

std::vector<double> decoded(const EncodedChunk& chunk)
{
    std::vector<double> values;
    ChunkDecoder decoder;
    const auto result = decoder.decode(chunk.bytes, values);
    EXPECT_TRUE(result) << result.error().message.english();
    if (result) {
        EXPECT_EQ(result.value().rows, chunk.rows);
        EXPECT_EQ(result.value().samples, chunk.samples);
    }
    return values;
}

void expectSameBitsBack(const std::vector<double>& values)
{
    ChunkEncoder encoder;
    EXPECT_EQ(bitsOf(decoded(encoder.encode(values))), bitsOf(values));
}

/// A random walk in steps of at most 100 units of the last decimal.
std::vector<double> decimals(std::size_t n, double divisor, std::uint64_t seed = 1)
{
    std::mt19937_64 random(seed);
    std::vector<double> values(n);
    std::int64_t at = 100'000;
    for (auto& value : values) {
        at += static_cast<std::int64_t>(random() % 201) - 100;
        value = static_cast<double>(at) / divisor;
    }
    return values;
}

TEST(ChunkCodec, GivesBackNoSamplesAndOne)
{
    expectSameBitsBack({});
    expectSameBitsBack({0.0});
    expectSameBitsBack({-12.5});
    expectSameBitsBack({-0.0});
    expectSameBitsBack({Limits::quiet_NaN()});
}

TEST(ChunkCodec, GivesBackEveryKindOfDouble)
{
    expectSameBitsBack({0.0, -0.0, 0.0, -0.0});
    expectSameBitsBack({Limits::infinity(), -Limits::infinity(), 1.0});
    expectSameBitsBack({Limits::denorm_min(), -Limits::denorm_min(), Limits::min(), Limits::max(),
                        Limits::lowest(), Limits::epsilon()});
    expectSameBitsBack({fromBits(0x7ff8000000000001), fromBits(0xfff8dead0000beef),
                        fromBits(0x7ff0000000000001), fromBits(0x7fffffffffffffff), 2.5});
}

TEST(ChunkCodec, GivesBackIntegersAroundTheLargestExactOne)
{
    const double border = 9007199254740992.0; // 2^53
    expectSameBitsBack({border - 1, border, border + 2, -border, 1 - border, -border - 2, 0.0});
    expectSameBitsBack({9007199254740991.0, -9007199254740991.0, 9007199254740992.0});
    expectSameBitsBack({0.1, 0.2, 0.30000000000000004, 0.3, 1e22, 1e23, 1e-22});
    expectSameBitsBack({900719925474099.1, 0.1, -900719925474099.3});
}

TEST(ChunkCodec, GivesBackAFewOddValuesAmongDecimals)
{
    auto values = decimals(1000, 100.0);
    values[0] = -0.0;
    values[17] = fromBits(0x7ff8000000000123);
    values[18] = 1e300;
    values[999] = -Limits::infinity();
    expectSameBitsBack(values);
}

TEST(ChunkCodec, GivesBackRandomBitPatterns)
{
    std::mt19937_64 random(20260314);
    for (const std::size_t n : {1U, 2U, 7U, 8U, 255U, 256U, 257U, 4096U}) {
        std::vector<double> values(n);
        for (auto& value : values)
            value = fromBits(random());
        expectSameBitsBack(values);
    }
}

TEST(ChunkCodec, GivesBackDifferencesOfEveryWidth)
{
    for (int bits = 1; bits <= 53; ++bits) {
        std::mt19937_64 random(static_cast<std::uint64_t>(bits));
        std::vector<double> values(300);
        for (auto& value : values)
            value = static_cast<double>(random() >> (64 - bits)) * ((random() & 1U) != 0 ? 1 : -1) +
                    0.0;
        expectSameBitsBack(values);
    }
}

TEST(ChunkCodec, TakesAboutAByteForASampleOfSmallSteps)
{
    ChunkEncoder encoder;
    const auto values = decimals(65536, 1000.0);
    const auto chunk = encoder.encode(values);
    EXPECT_LT(chunk.bytes.size(), values.size() * 11 / 10);
    EXPECT_EQ(bitsOf(decoded(chunk)), bitsOf(values));
}

TEST(ChunkCodec, TakesNextToNothingForAnEvenClock)
{
    std::vector<double> values(65536);
    for (std::size_t i = 0; i < values.size(); ++i)
        values[i] = static_cast<double>(i) / 100.0;
    ChunkEncoder encoder;
    const auto chunk = encoder.encode(values);
    EXPECT_LT(chunk.bytes.size(), 80U);
    EXPECT_EQ(bitsOf(decoded(chunk)), bitsOf(values));
}

TEST(ChunkCodec, KnowsMinimumAndMaximumWithoutWhatIsNoNumber)
{
    ChunkEncoder encoder;
    const std::vector<double> values{3.25, Limits::quiet_NaN(), -7.5, 12.125, -0.0};
    const auto chunk = encoder.encode(values);
    EXPECT_EQ(chunk.minimum, -7.5);
    EXPECT_EQ(chunk.maximum, 12.125);
    const auto nothing = encoder.encode(std::vector<double>{Limits::quiet_NaN()});
    EXPECT_TRUE(std::isnan(nothing.minimum));
    EXPECT_TRUE(std::isnan(nothing.maximum));
    const auto endless = encoder.encode(std::vector<double>{1.5, Limits::infinity()});
    EXPECT_EQ(endless.minimum, 1.5);
    EXPECT_EQ(endless.maximum, Limits::infinity());
}

TEST(ChunkCodec, RemembersWhichRowsHaveNoSample)
{
    const std::vector<double> cells{1.5, 99.0, 2.5, 99.0, 99.0, 3.5, 4.5, 5.5, 6.5, 99.0};
    const std::vector<std::uint32_t> gaps{1, 3, 4, 9};
    ChunkEncoder encoder;
    const auto chunk = encoder.encode(cells, gaps);
    EXPECT_EQ(chunk.rows, 10U);
    EXPECT_EQ(chunk.samples, 6U);
    std::vector<double> values;
    ChunkDecoder decoder;
    const auto result = decoder.decode(chunk.bytes, values);
    ASSERT_TRUE(result);
    EXPECT_EQ(values, (std::vector<double>{1.5, 2.5, 3.5, 4.5, 5.5, 6.5}));
    for (std::uint32_t row = 0; row < 10; ++row)
        EXPECT_EQ(result.value().has(row), std::find(gaps.begin(), gaps.end(), row) == gaps.end())
            << row;
}

TEST(ChunkCodec, StoresRowsThatHaveNoSampleAtAll)
{
    const std::vector<double> cells(20, 1.0);
    std::vector<std::uint32_t> gaps;
    for (std::uint32_t row = 0; row < 20; ++row)
        gaps.push_back(row);
    ChunkEncoder encoder;
    const auto chunk = encoder.encode(cells, gaps);
    EXPECT_EQ(chunk.samples, 0U);
    EXPECT_TRUE(decoded(chunk).empty());
}

TEST(ChunkCodec, EncodesIntegersAsGatheredFromText)
{
    ScaledColumn column;
    column.decimals = 2;
    column.scaled = {1250, -3, 0, 777, 0};
    column.gaps = {2};
    column.odd = {{4, -0.0}};
    ChunkEncoder encoder;
    EXPECT_EQ(bitsOf(decoded(encoder.encode(column, 5))), bitsOf({12.5, -0.03, 7.77, -0.0}));
    EXPECT_EQ(bitsOf(decoded(encoder.encode(column, 2))), bitsOf({12.5, -0.03}));
}

TEST(ChunkCodec, AppendsToWhatWasDecodedBefore)
{
    ChunkEncoder encoder;
    ChunkDecoder decoder;
    std::vector<double> values;
    ASSERT_TRUE(decoder.decode(encoder.encode(std::vector<double>{1, 2}).bytes, values));
    ASSERT_TRUE(decoder.decode(encoder.encode(std::vector<double>{0.25}).bytes, values));
    EXPECT_EQ(values, (std::vector<double>{1, 2, 0.25}));
}

TEST(ChunkCodec, RefusesEveryFlippedBitAndEveryCutOfAChunk)
{
    ChunkEncoder encoder;
    auto cells = decimals(200, 10.0);
    cells[50] = -0.0;
    const auto chunk = encoder.encode(cells, std::vector<std::uint32_t>{3, 4, 77});
    ChunkDecoder decoder;
    std::vector<double> values{42.0};
    const auto intact = decoded(chunk);
    for (std::size_t bit = 0; bit < chunk.bytes.size() * 8; ++bit) {
        auto bytes = chunk.bytes;
        bytes[bit / 8] ^= std::byte{1} << (bit % 8);
        if (const auto result = decoder.decode(bytes, values)) {
            // A bit of the frame that has no meaning (a reserved window size): the same values.
            EXPECT_EQ(bitsOf({values.begin() + 1, values.end()}), bitsOf(intact)) << "bit " << bit;
            values.resize(1);
        } else {
            EXPECT_EQ(result.error().code, core::ErrorCode::studyFile);
        }
        ASSERT_EQ(values.size(), 1U) << "bit " << bit;
    }
    for (std::size_t size = 0; size < chunk.bytes.size(); ++size) {
        EXPECT_FALSE(decoder.decode(std::span(chunk.bytes).first(size), values)) << size;
        ASSERT_EQ(values.size(), 1U);
    }
}

/// The content of a chunk, changed by `change`, and packed again with a right checksum.
template <class Change>
std::vector<std::byte> repacked(const EncodedChunk& chunk, Change change)
{
    std::vector<std::uint8_t> content(
        ZSTD_getFrameContentSize(chunk.bytes.data(), chunk.bytes.size()));
    EXPECT_EQ(
        ZSTD_decompress(content.data(), content.size(), chunk.bytes.data(), chunk.bytes.size()),
        content.size());
    change(content);
    std::vector<std::byte> packed(ZSTD_compressBound(content.size()));
    packed.resize(ZSTD_compress(packed.data(), packed.size(), content.data(), content.size(), 1));
    return packed;
}

TEST(ChunkCodec, RefusesAWellPackedContentWhoseHeadIsNonsense)
{
    std::mt19937_64 random(7);
    ChunkDecoder decoder;
    ChunkEncoder encoder;
    std::vector<double> values;
    int refused = 0;
    for (int turn = 0; turn < 4000; ++turn) {
        auto cells = decimals(1 + random() % 40, 10.0, random());
        if (turn % 2 == 0)
            cells[random() % cells.size()] = -0.0;
        std::vector<std::uint32_t> gaps;
        if (turn % 3 == 0)
            gaps.push_back(static_cast<std::uint32_t>(random() % cells.size()));
        const auto bytes = repacked(encoder.encode(cells, gaps), [&](auto& content) {
            const auto last = std::min<std::size_t>(content.size(), 48);
            for (std::uint64_t n = 1 + random() % 3; n > 0; --n)
                content[random() % last] = static_cast<std::uint8_t>(random() >> 32);
            if (turn % 7 == 0)
                content.resize(random() % (content.size() + 8));
        });
        values.clear();
        const auto result = decoder.decode(bytes, values);
        EXPECT_EQ(values.size(), result ? result.value().samples : 0U);
        refused += result ? 0 : 1;
    }
    EXPECT_GT(refused, 1000); // the rest changed a value, which is the checksum's to find
}

} // namespace
} // namespace bothways::storage
