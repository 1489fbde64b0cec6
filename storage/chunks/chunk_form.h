// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>

/// The numbers of a chunk's form: on disk, never to be changed. chunk.md here.
namespace bothways::storage {

static_assert(std::endian::native == std::endian::little, "the chunk form is little-endian");

enum class Form : std::uint8_t { decimal = 1, binary64 = 2 };

inline constexpr std::uint8_t kHasGaps = 1;
inline constexpr std::uint8_t kHasOdd = 2;
inline constexpr std::size_t kHeaderSize = 32;
inline constexpr std::size_t kOddSize = 12;

struct Header {
    Form form;
    std::uint8_t decimals;
    std::uint8_t width; ///< bytes a difference; 0: every difference is `step`
    std::uint8_t flags;
    std::uint32_t rows;
    std::uint32_t samples;
    std::uint32_t odd;
    std::int64_t base;
    std::int64_t step;
};
static_assert(sizeof(Header) == kHeaderSize);

inline std::size_t planesSize(const Header& header)
{
    if (header.form == Form::binary64)
        return std::size_t{8} * header.samples;
    return header.samples == 0 ? 0 : std::size_t{header.width} * (header.samples - 1);
}

inline std::size_t bitmapSize(const Header& header)
{
    return (header.flags & kHasGaps) != 0 ? (std::size_t{header.rows} + 7) / 8 : 0;
}

inline std::size_t payloadSize(const Header& header)
{
    return kHeaderSize + bitmapSize(header) + kOddSize * header.odd + planesSize(header);
}

} // namespace bothways::storage
