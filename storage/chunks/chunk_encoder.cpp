// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/decimal.h"
#include "storage/chunks/chunk_codec.h"
#include "storage/chunks/chunk_form.h"

#include <zstd.h>

#include <algorithm>
#include <bit>
#include <cassert>
#include <cmath>
#include <cstring>
#include <limits>

namespace bothways::storage {
namespace {

constexpr int kZstdLevel = 1;
/// Above one odd value in so many samples the binary form is smaller.
constexpr std::size_t kSamplesForAnOdd = 8;
constexpr int kMaxDecimalsOfDoubles = 9;

std::uint64_t zigzag(std::uint64_t difference)
{
    return (difference << 1) ^ (0 - (difference >> 63));
}

std::uint8_t widthFor(std::uint64_t codes)
{
    if (codes <= 0xff)
        return 1;
    if (codes <= 0xffff)
        return 2;
    return codes <= 0xffffffff ? 4 : 8;
}

/// What one pass over a chunk's integers finds out.
struct Differences {
    std::int64_t low = 0, high = 0;
    std::uint64_t codes = 0;     ///< all zigzag codes, or-ed
    std::uint64_t differing = 0; ///< bits in which a difference departs from the first one
};

/// @param shortCodes  the lower halves of the zigzag codes, one less than `values`
Differences differencesOf(std::span<const std::int64_t> values, std::uint32_t* shortCodes)
{
    Differences found{values[0], values[0]};
    const auto step = values.size() > 1 ? static_cast<std::uint64_t>(values[1]) -
                                              static_cast<std::uint64_t>(values[0])
                                        : 0;
    for (std::size_t i = 1; i < values.size(); ++i) {
        const auto difference =
            static_cast<std::uint64_t>(values[i]) - static_cast<std::uint64_t>(values[i - 1]);
        const std::uint64_t code = zigzag(difference);
        shortCodes[i - 1] = static_cast<std::uint32_t>(code);
        found.codes |= code;
        found.differing |= difference ^ step;
        found.low = std::min(found.low, values[i]);
        found.high = std::max(found.high, values[i]);
    }
    return found;
}

/// Codes of at most four bytes, byte plane after byte plane.
void writePlanes(std::span<const std::uint32_t> codes, int width, std::uint8_t* out)
{
    for (int plane = 0; plane < width; ++plane, out += codes.size())
        for (std::size_t i = 0; i < codes.size(); ++i)
            out[i] = static_cast<std::uint8_t>(codes[i] >> (8 * plane));
}

/// The same of eight bytes, from the integers.
void writeWidePlanes(std::span<const std::int64_t> values, std::uint8_t* out)
{
    const std::size_t n = values.size() - 1;
    for (std::size_t i = 0; i < n; ++i) {
        const std::uint64_t code = zigzag(static_cast<std::uint64_t>(values[i + 1]) -
                                          static_cast<std::uint64_t>(values[i]));
        for (std::size_t plane = 0; plane < 8; ++plane)
            out[plane * n + i] = static_cast<std::uint8_t>(code >> (8 * plane));
    }
}

void writeBinaryPlanes(std::span<const double> values, std::uint8_t* out)
{
    const std::size_t n = values.size();
    for (std::size_t i = 0; i < n; ++i) {
        const auto bits = std::bit_cast<std::uint64_t>(values[i]);
        for (std::size_t plane = 0; plane < 8; ++plane)
            out[plane * n + i] = static_cast<std::uint8_t>(bits >> (8 * plane));
    }
}

/// Minimum and maximum of what compares; both NaN where nothing does.
struct Bounds {
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();
    bool any = false;
    void take(double value)
    {
        if (std::isnan(value))
            return;
        any = true;
        low = std::min(low, value);
        high = std::max(high, value);
    }
    void store(EncodedChunk& chunk) const
    {
        chunk.minimum = any ? low : std::numeric_limits<double>::quiet_NaN();
        chunk.maximum = any ? high : std::numeric_limits<double>::quiet_NaN();
    }
};

} // namespace

struct ChunkEncoder::Private {
    struct Free {
        void operator()(ZSTD_CCtx* context) const { ZSTD_freeCCtx(context); }
    };
    std::unique_ptr<ZSTD_CCtx, Free> zstd{ZSTD_createCCtx()};
    std::vector<std::int64_t> integers;
    std::vector<std::uint32_t> codes;
    std::vector<double> values;
    std::vector<std::pair<std::uint32_t, double>> odd; ///< by sample
    std::vector<std::uint8_t> payload;
    std::vector<std::byte> packed;

    /// Lays out header, bitmap and odd values. @return where the planes go
    std::uint8_t* lay(const Header& header, std::span<const std::uint32_t> gaps)
    {
        payload.resize(payloadSize(header));
        std::memcpy(payload.data(), &header, kHeaderSize);
        std::uint8_t* at = payload.data() + kHeaderSize;
        if (const std::size_t size = bitmapSize(header); size > 0) {
            std::fill(at, at + size, std::uint8_t{0xff});
            if (header.rows % 8 != 0)
                at[size - 1] = static_cast<std::uint8_t>((1U << (header.rows % 8)) - 1U);
            for (const std::uint32_t row : gaps)
                at[row / 8] = static_cast<std::uint8_t>(at[row / 8] & ~(1U << (row % 8)));
            at += size;
        }
        for (std::size_t i = 0; i < header.odd; ++i, at += kOddSize) {
            std::memcpy(at, &odd[i].first, 4);
            std::memcpy(at + 4, &odd[i].second, 8);
        }
        return at;
    }

    void pack(EncodedChunk& chunk)
    {
        packed.resize(ZSTD_compressBound(payload.size()));
        const std::size_t size = ZSTD_compress2(zstd.get(), packed.data(), packed.size(),
                                                payload.data(), payload.size());
        assert(!ZSTD_isError(size)); // the bound leaves it nothing to fail at
        chunk.bytes.assign(packed.begin(), packed.begin() + static_cast<std::ptrdiff_t>(size));
    }

    /// `odd` is filled in.
    EncodedChunk decimal(std::span<const std::int64_t> scaled, int decimals, std::uint32_t rows,
                         std::span<const std::uint32_t> gaps);
    /// `values` is filled in.
    EncodedChunk binary(std::uint32_t rows, std::span<const std::uint32_t> gaps);
};

EncodedChunk ChunkEncoder::Private::decimal(std::span<const std::int64_t> scaled, int decimals,
                                            std::uint32_t rows, std::span<const std::uint32_t> gaps)
{
    const auto samples = static_cast<std::uint32_t>(scaled.size());
    const auto flags =
        static_cast<std::uint8_t>((gaps.empty() ? 0 : kHasGaps) | (odd.empty() ? 0 : kHasOdd));
    EncodedChunk chunk{{}, rows, samples};
    Header header{Form::decimal, static_cast<std::uint8_t>(decimals),    0, flags, rows,
                  samples,       static_cast<std::uint32_t>(odd.size()), 0, 0};
    Bounds bounds;
    if (samples > 0) {
        codes.resize(samples - 1);
        const Differences found = differencesOf(scaled, codes.data());
        header.base = scaled[0];
        if (found.differing == 0 && samples > 1)
            header.step = scaled[1] - scaled[0];
        else if (samples > 1)
            header.width = widthFor(found.codes);
        const double divisor = kPowersOfTen[static_cast<std::size_t>(decimals)];
        if (samples > odd.size()) { // an odd one's place holds a neighbour's integer: no new bound
            bounds.take(static_cast<double>(found.low) / divisor);
            bounds.take(static_cast<double>(found.high) / divisor);
        }
    }
    for (const auto& [sample, value] : odd)
        bounds.take(value);
    bounds.store(chunk);
    std::uint8_t* planes = lay(header, gaps);
    if (header.width == 8)
        writeWidePlanes(scaled, planes);
    else
        writePlanes(codes, header.width, planes);
    pack(chunk);
    return chunk;
}

EncodedChunk ChunkEncoder::Private::binary(std::uint32_t rows, std::span<const std::uint32_t> gaps)
{
    const auto samples = static_cast<std::uint32_t>(values.size());
    EncodedChunk chunk{{}, rows, samples};
    const auto flags = static_cast<std::uint8_t>(gaps.empty() ? 0 : kHasGaps);
    const Header header{Form::binary64, 0, 8, flags, rows, samples, 0, 0, 0};
    Bounds bounds;
    for (const double value : values)
        bounds.take(value);
    bounds.store(chunk);
    writeBinaryPlanes(values, lay(header, gaps));
    pack(chunk);
    return chunk;
}

ChunkEncoder::ChunkEncoder() : d(std::make_unique<Private>())
{
    ZSTD_CCtx_setParameter(d->zstd.get(), ZSTD_c_compressionLevel, kZstdLevel);
    ZSTD_CCtx_setParameter(d->zstd.get(), ZSTD_c_checksumFlag, 1);
}
ChunkEncoder::~ChunkEncoder() = default;
ChunkEncoder::ChunkEncoder(ChunkEncoder&&) noexcept = default;
ChunkEncoder& ChunkEncoder::operator=(ChunkEncoder&&) noexcept = default;

EncodedChunk ChunkEncoder::encode(const ScaledColumn& column, std::uint32_t rows)
{
    assert(rows <= kMaxChunkRows && column.scaled.size() >= rows);
    const std::size_t samples = rows - column.gaps.size();
    const bool binary = column.odd.size() * kSamplesForAnOdd > samples;
    const double divisor = kPowersOfTen[static_cast<std::size_t>(column.decimals)];
    d->odd.clear();
    d->integers.clear();
    d->values.clear();
    if (!binary && column.gaps.empty() && column.odd.empty()) {
        return d->decimal({column.scaled.data(), rows}, column.decimals, rows, {});
    }
    auto gap = column.gaps.begin();
    auto odd = column.odd.begin();
    std::int64_t last = 0;
    bool started = false;
    for (std::uint32_t row = 0; row < rows; ++row) {
        if (gap != column.gaps.end() && *gap == row) {
            ++gap;
            continue;
        }
        const bool isOdd = odd != column.odd.end() && odd->first == row;
        if (binary) {
            d->values.push_back(isOdd ? odd->second
                                      : static_cast<double>(column.scaled[row]) / divisor);
        } else {
            if (isOdd) {
                d->odd.emplace_back(static_cast<std::uint32_t>(d->integers.size()), odd->second);
            } else {
                last = column.scaled[row];
                if (!started) // places before the first integer take it too
                    std::fill(d->integers.begin(), d->integers.end(), last);
                started = true;
            }
            d->integers.push_back(last);
        }
        if (isOdd)
            ++odd;
    }
    return binary ? d->binary(rows, column.gaps)
                  : d->decimal(d->integers, column.decimals, rows, column.gaps);
}

EncodedChunk ChunkEncoder::encode(std::span<const double> values,
                                  std::span<const std::uint32_t> gaps)
{
    assert(values.size() <= kMaxChunkRows);
    const auto rows = static_cast<std::uint32_t>(values.size());
    ScaledColumn column;
    column.gaps.assign(gaps.begin(), gaps.end());
    column.scaled.resize(rows);
    for (int decimals = 0; decimals <= kMaxDecimalsOfDoubles; ++decimals) {
        column.decimals = decimals;
        column.odd.clear();
        auto gap = gaps.begin();
        const std::size_t limit = (rows - gaps.size()) / kSamplesForAnOdd;
        for (std::uint32_t row = 0; row < rows && column.odd.size() <= limit; ++row) {
            if (gap != gaps.end() && *gap == row) {
                ++gap;
                continue;
            }
            if (const auto integer = scaledFrom(values[row], decimals))
                column.scaled[row] = *integer;
            else
                column.odd.emplace_back(row, values[row]);
        }
        if (column.odd.size() <= limit && (column.odd.empty() || decimals == kMaxDecimalsOfDoubles))
            return encode(column, rows);
    }
    d->values.clear();
    auto gap = gaps.begin();
    for (std::uint32_t row = 0; row < rows; ++row) {
        if (gap != gaps.end() && *gap == row)
            ++gap;
        else
            d->values.push_back(values[row]);
    }
    return d->binary(rows, gaps);
}

} // namespace bothways::storage
