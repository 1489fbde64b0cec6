// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/decimal.h"
#include "storage/chunks/chunk_codec.h"
#include "storage/chunks/chunk_form.h"

#include <zstd.h>

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstring>
#include <type_traits>

namespace bothways::storage {
namespace {

/// No chunk of so many rows unpacks to more: each a bit for a gap, an odd value, and eight bytes.
std::size_t largestPayload(std::uint32_t rows)
{
    return kHeaderSize + std::size_t{rows} / 8 + 1 + (kOddSize + 8) * std::size_t{rows};
}

template <class Signed>
Signed unzigzag(std::make_unsigned_t<Signed> code)
{
    return static_cast<Signed>((code >> 1) ^ (0 - (code & 1)));
}

template <int Width, class Signed>
std::make_unsigned_t<Signed> codeAt(const std::uint8_t* planes, std::size_t n, std::size_t i)
{
    using Word = std::make_unsigned_t<Signed>;
    Word code = 0;
    for (std::size_t plane = 0; plane < Width; ++plane)
        code |= static_cast<Word>(planes[plane * n + i]) << (8 * plane);
    return code;
}

constexpr std::size_t kBlock = 256;

/// Adding 1.5 * 2^52 as bits and taking it off as a number turns integers below 2^51 into doubles,
/// exactly and several at once; plain x86-64 converts 64-bit integers one by one.
void divideInto(double* out, const std::uint64_t* integers, std::size_t count, double divisor)
{
    constexpr std::uint64_t kHalf = std::uint64_t{1} << 51;
    constexpr std::uint64_t kMagicBits = 0x4338000000000000;
    constexpr double kMagic = 6755399441055744.0;
    std::uint64_t high = 0;
    for (std::size_t i = 0; i < count; ++i)
        high |= integers[i] + kHalf;
    if (high < 2 * kHalf) {
        for (std::size_t i = 0; i < count; ++i)
            out[i] = (std::bit_cast<double>(integers[i] + kMagicBits) - kMagic) / divisor;
    } else {
        for (std::size_t i = 0; i < count; ++i)
            out[i] = static_cast<double>(static_cast<std::int64_t>(integers[i])) / divisor;
    }
}

/// Differences first, then sums, then quotients, block by block: only the sums must go in turn.
/// Appended a block at a time, which is still near: fresh memory is walked through once.
template <int Width>
void readPlanes(const Header& header, const std::uint8_t* planes, std::vector<double>& values)
{
    using Word = std::conditional_t<(Width < 4), std::int32_t, std::int64_t>;
    [[maybe_unused]] std::array<Word, kBlock> differences;
    std::array<std::uint64_t, kBlock> integers;
    std::array<double, kBlock> quotients;
    const double divisor = kPowersOfTen[header.decimals];
    const std::size_t n = header.samples - 1;
    auto sum = static_cast<std::uint64_t>(header.base);
    values.push_back(static_cast<double>(header.base) / divisor);
    for (std::size_t from = 0; from < n; from += kBlock) {
        const std::size_t count = std::min(kBlock, n - from);
        if constexpr (Width > 0)
            for (std::size_t i = 0; i < count; ++i)
                differences[i] = unzigzag<Word>(codeAt<Width, Word>(planes, n, from + i));
        for (std::size_t i = 0; i < count; ++i) {
            if constexpr (Width == 0)
                sum += static_cast<std::uint64_t>(header.step);
            else
                sum += static_cast<std::uint64_t>(std::int64_t{differences[i]});
            integers[i] = sum;
        }
        divideInto(quotients.data(), integers.data(), count, divisor);
        values.insert(values.end(), quotients.data(), quotients.data() + count);
    }
}

void readPlanes(const Header& header, const std::uint8_t* planes, std::vector<double>& values)
{
    switch (header.width) {
    case 0: readPlanes<0>(header, planes, values); break;
    case 1: readPlanes<1>(header, planes, values); break;
    case 2: readPlanes<2>(header, planes, values); break;
    case 4: readPlanes<4>(header, planes, values); break;
    default: readPlanes<8>(header, planes, values); break;
    }
}

void readBinaryPlanes(const Header& header, const std::uint8_t* planes, std::vector<double>& values)
{
    std::array<double, kBlock> block;
    for (std::size_t from = 0; from < header.samples; from += kBlock) {
        const std::size_t count = std::min<std::size_t>(kBlock, header.samples - from);
        for (std::size_t i = 0; i < count; ++i)
            block[i] =
                std::bit_cast<double>(codeAt<8, std::int64_t>(planes, header.samples, from + i));
        values.insert(values.end(), block.data(), block.data() + count);
    }
}

core::Error damaged(core::Text<0> what)
{
    return core::Error{core::ErrorCode::studyFile,
                       core::message("a chunk of a recording is damaged: {}"_t, what),
                       {}};
}

std::optional<core::Text<0>> faultOf(const Header& header, std::size_t size,
                                     const ChunkCounts& counts)
{
    const bool decimal = header.form == Form::decimal;
    if (!decimal && header.form != Form::binary64)
        return "its form is unknown"_t;
    const bool widthKnown = header.width == 1 || header.width == 2 || header.width == 4 ||
                            header.width == 8 || (decimal && header.width == 0);
    if (!widthKnown || (!decimal && header.width != 8) || header.decimals > kMaxDecimals ||
        (header.flags & ~(kHasGaps | kHasOdd)) != 0)
        return "its head is unknown"_t;
    const bool oddFlag = (header.flags & kHasOdd) != 0;
    const bool known = counts.samples.has_value(); // then the rows are exact as well
    if (header.rows > counts.rows || (known && header.rows != counts.rows) ||
        (known && header.samples != *counts.samples))
        return "it has not as many rows as it should"_t;
    if (header.samples > header.rows || header.odd > header.samples ||
        oddFlag != (header.odd > 0) || (oddFlag && !decimal) ||
        ((header.flags & kHasGaps) == 0 && header.samples != header.rows))
        return "its counts contradict each other"_t;
    if (payloadSize(header) != size)
        return "it is too short or too long"_t;
    return std::nullopt;
}

/// Copies the bitmap. @return false where it does not have as many samples as the head says
bool takeBitmap(const Header& header, const std::uint8_t* bitmap, DecodedChunk& chunk)
{
    const std::size_t size = bitmapSize(header);
    if (size == 0)
        return true;
    chunk.present.assign(bitmap, bitmap + size);
    std::size_t count = 0;
    for (const std::uint8_t byte : chunk.present)
        count += static_cast<std::size_t>(std::popcount(byte));
    const bool tailClear = header.rows % 8 == 0 || (chunk.present.back() >> (header.rows % 8)) == 0;
    return count == header.samples && tailClear;
}

} // namespace

struct ChunkDecoder::Private {
    struct Free {
        void operator()(ZSTD_DCtx* context) const { ZSTD_freeDCtx(context); }
    };
    std::unique_ptr<ZSTD_DCtx, Free> zstd{ZSTD_createDCtx()};
    std::vector<std::uint8_t> payload;

    Header header;

    /// Leaves the payload and its head. @return  what is wrong; nothing where all is well
    std::optional<core::Text<0>> unpack(std::span<const std::byte> bytes, const ChunkCounts& counts)
    {
        const unsigned long long size = ZSTD_getFrameContentSize(bytes.data(), bytes.size());
        if (size == ZSTD_CONTENTSIZE_ERROR || size == ZSTD_CONTENTSIZE_UNKNOWN)
            return "it is not a compressed block"_t;
        if (size < kHeaderSize || size > largestPayload(std::min(counts.rows, kMaxChunkRows)))
            return "its size cannot be"_t;
        payload.resize(size);
        const std::size_t got = ZSTD_decompressDCtx(zstd.get(), payload.data(), payload.size(),
                                                    bytes.data(), bytes.size());
        if (ZSTD_isError(got) || got != size)
            return "its checksum or compression is wrong"_t;
        std::memcpy(&header, payload.data(), kHeaderSize);
        return faultOf(header, payload.size(), counts);
    }

    /// Where the samples begin in the payload; what goes before them is sound.
    core::Result<const std::uint8_t*> open(std::span<const std::byte> bytes,
                                           const ChunkCounts& counts, DecodedChunk& chunk)
    {
        if (const auto fault = unpack(bytes, counts))
            return damaged(*fault);
        chunk = {header.rows, header.samples, {}};
        const std::uint8_t* at = payload.data() + kHeaderSize;
        if (!takeBitmap(header, at, chunk))
            return damaged("its counts contradict each other"_t);
        const std::uint8_t* odd = at + bitmapSize(header);
        for (std::size_t i = 0; i < header.odd; ++i) {
            std::uint32_t sample = 0;
            std::memcpy(&sample, odd + kOddSize * i, 4);
            if (sample >= header.samples)
                return damaged("an odd value lies outside"_t);
        }
        return odd;
    }
};

ChunkDecoder::ChunkDecoder() : d(std::make_unique<Private>()) {}
ChunkDecoder::~ChunkDecoder() = default;
ChunkDecoder::ChunkDecoder(ChunkDecoder&&) noexcept = default;
ChunkDecoder& ChunkDecoder::operator=(ChunkDecoder&&) noexcept = default;

core::Result<DecodedChunk> ChunkDecoder::decode(std::span<const std::byte> bytes,
                                                std::vector<double>& values)
{
    return decode(bytes, {}, values);
}

core::Result<DecodedChunk> ChunkDecoder::decode(std::span<const std::byte> bytes,
                                                const ChunkCounts& counts,
                                                std::vector<double>& values)
{
    DecodedChunk chunk;
    const auto opened = d->open(bytes, counts, chunk);
    if (!opened)
        return opened.error();
    const Header& header = d->header;
    const std::uint8_t* odd = opened.value();
    const std::uint8_t* at = odd + kOddSize * header.odd;
    const std::size_t before = values.size();
    if (header.samples == 0)
        return chunk;
    if (header.form == Form::binary64)
        readBinaryPlanes(header, at, values);
    else
        readPlanes(header, at, values);
    double* out = values.data() + before;
    for (std::size_t i = 0; i < header.odd; ++i) {
        std::uint32_t sample = 0;
        std::memcpy(&sample, odd + kOddSize * i, 4);
        std::memcpy(out + sample, odd + kOddSize * i + 4, 8);
    }
    return chunk;
}

std::optional<core::Error> ChunkDecoder::check(std::span<const std::byte> bytes,
                                               const ChunkCounts& counts)
{
    DecodedChunk chunk;
    const auto opened = d->open(bytes, counts, chunk);
    return opened ? std::nullopt : std::optional(opened.error());
}

std::optional<core::Error> ChunkDecoder::checkBounds(std::span<const std::byte> bytes,
                                                     const ChunkCounts& counts,
                                                     const std::optional<double>& minimum,
                                                     const std::optional<double>& maximum)
{
    std::vector<double> values;
    const auto decoded = decode(bytes, counts, values);
    if (!decoded)
        return decoded.error();
    std::optional<double> low, high;
    for (const double value : values) {
        if (std::isnan(value))
            continue;
        low = low && *low <= value ? *low : value;
        high = high && *high >= value ? *high : value;
    }
    return low == minimum && high == maximum
               ? std::nullopt
               : std::optional(damaged("its bounds are not those of its values"_t));
}

} // namespace bothways::storage
