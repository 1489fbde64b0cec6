// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/chunks/chunk_codec.h"
#include "storage/instruments/rig_reader.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

/// For the files of storage/live alone.
namespace bothways::storage {

/// Rows that lie in the study as one chunk a channel: some of the whole recording's.
struct Piece {
    std::uint32_t begin = 0, end = 0; ///< rows of the group
    int level = 0;                    ///< 8 pieces of a level become one of the next
    std::size_t bytes = 0;            ///< of its chunks
    [[nodiscard]] bool isSame(const Piece& other) const
    {
        return begin == other.begin && end == other.end;
    }
};

/// The last rows of a recording that grows, in memory as they came, so that the small pieces in
/// which they reach the disk can be written again as larger ones: a piece for each commit would
/// take several times the room.
class OpenGroup {
public:
    /// A group becomes one chunk a channel when it has so many rows, as an import writes them.
    static constexpr std::uint32_t kRows = 65'536;
    /// Times are whole microseconds.
    static constexpr int kTimeDecimals = 6;

    explicit OpenGroup(std::int64_t firstRow);

    /// @param row  readings of one moment, of different channels
    void add(std::int64_t time_us, std::span<const Reading> row);

    [[nodiscard]] std::int64_t firstRow() const { return m_first; }
    [[nodiscard]] std::uint32_t rows() const
    {
        return static_cast<std::uint32_t>(m_time.scaled.size());
    }
    [[nodiscard]] bool isFull() const { return rows() >= kRows; }
    [[nodiscard]] std::size_t channels() const { return m_channels.size(); }
    [[nodiscard]] bool hasSample(std::size_t channel, const Piece& piece) const;

    /// What lies in the study, in order, without a hole.
    [[nodiscard]] const std::vector<Piece>& stored() const { return m_stored; }
    void setStored(std::vector<Piece> pieces) { m_stored = std::move(pieces); }
    [[nodiscard]] std::uint32_t storedRows() const
    {
        return m_stored.empty() ? 0 : m_stored.back().end;
    }
    /// What should lie there once all rows do.
    /// @param whole  one piece of all
    [[nodiscard]] std::vector<Piece> wanted(bool whole) const;

    [[nodiscard]] EncodedChunk encodeTimes(ChunkEncoder& encoder, const Piece& piece) const;
    [[nodiscard]] EncodedChunk encode(ChunkEncoder& encoder, std::size_t channel,
                                      const Piece& piece) const;

private:
    struct Column {
        ScaledColumn values;
        std::int64_t largest = 0; ///< in size, of `values.scaled`
        bool any = false;
    };
    void addTo(Column& column, std::uint32_t row, const Reading& reading);

    std::int64_t m_first;
    ScaledColumn m_time;
    std::vector<Column> m_channels;
    std::vector<Piece> m_stored;
};

} // namespace bothways::storage
