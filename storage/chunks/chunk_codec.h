// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <utility>
#include <vector>

/// One channel over one group of rows, as bytes and back: the doubles that come back are bit for
/// bit those that went in. The form is described in chunk.md here; its numbers are on
/// disk.
namespace bothways::storage {

/// Limits that a reader may rely on; what claims more is damaged.
inline constexpr std::uint32_t kMaxChunkRows = 1U << 22;
inline constexpr int kMaxDecimals = 22; ///< 10^22 is the largest power of ten that a double holds

/// Cells of a channel as a reader gathers them: integers of value * 10^decimals, each at most 2^53
/// in size (so that integer / 10^decimals is the correctly rounded value), and what is not such.
struct ScaledColumn {
    std::vector<std::int64_t> scaled; ///< one a row; where a row is in `gaps` or `odd`, anything
    int decimals = 0;
    std::vector<std::uint32_t> gaps;                        ///< rows without a sample, ascending
    std::vector<std::pair<std::uint32_t, double>> odd = {}; ///< other values, by row, ascending
};

struct EncodedChunk {
    std::vector<std::byte> bytes;
    std::uint32_t rows = 0;
    std::uint32_t samples = 0;
    double minimum = 0.0, maximum = 0.0; ///< over samples that are numbers; NaN where none is
};

/// Encodes chunks. Keeps its work space; one for each thread.
class ChunkEncoder {
public:
    ChunkEncoder();
    ~ChunkEncoder();
    ChunkEncoder(ChunkEncoder&&) noexcept;
    ChunkEncoder& operator=(ChunkEncoder&&) noexcept;

    /// The first `rows` rows of `column`.
    [[nodiscard]] EncodedChunk encode(const ScaledColumn& column, std::uint32_t rows);
    /// Values of any kind; decimal where they are decimals of at most nine places.
    [[nodiscard]] EncodedChunk encode(std::span<const double> values,
                                      std::span<const std::uint32_t> gaps = {});

private:
    struct Private;
    std::unique_ptr<Private> d;
};

struct DecodedChunk {
    std::uint32_t rows = 0;
    std::uint32_t samples = 0;
    /// One bit a row, lowest first: whether it has a sample. Empty: every row has one.
    std::vector<std::uint8_t> present;
    [[nodiscard]] bool has(std::uint32_t row) const
    {
        return present.empty() || ((present[row / 8] >> (row % 8)) & 1U) != 0;
    }
};

/// What is known of a chunk before it is read.
struct ChunkCounts {
    std::uint32_t rows = kMaxChunkRows;
    std::optional<std::uint32_t> samples; ///< none: any
};

/// Decodes chunks. Keeps its work space; one for each thread.
class ChunkDecoder {
public:
    ChunkDecoder();
    ~ChunkDecoder();
    ChunkDecoder(ChunkDecoder&&) noexcept;
    ChunkDecoder& operator=(ChunkDecoder&&) noexcept;

    /// Appends the samples to `values`. An Error (studyFile, without a place) where the bytes are
    /// damaged or have other counts than these; `values` is then as it was. No memory is taken for
    /// more than `counts` says.
    [[nodiscard]] core::Result<DecodedChunk> decode(std::span<const std::byte> bytes,
                                                    const ChunkCounts& counts,
                                                    std::vector<double>& values);
    /// Of any counts.
    [[nodiscard]] core::Result<DecodedChunk> decode(std::span<const std::byte> bytes,
                                                    std::vector<double>& values);
    /// What decode() would find wrong, without the samples.
    [[nodiscard]] std::optional<core::Error> check(std::span<const std::byte> bytes,
                                                   const ChunkCounts& counts);
    /// That, and whether the least and the largest number are these.
    [[nodiscard]] std::optional<core::Error> checkBounds(std::span<const std::byte> bytes,
                                                         const ChunkCounts& counts,
                                                         const std::optional<double>& minimum,
                                                         const std::optional<double>& maximum);

private:
    struct Private;
    std::unique_ptr<Private> d;
};

} // namespace bothways::storage
