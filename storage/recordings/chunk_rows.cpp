// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/chunk_rows.h"

#include "storage/recordings/recording_check.h"
#include "storage/study/recording_sums.h"

#include <SQLiteCpp/Database.h>

#include <cmath>
#include <span>
#include <vector>

namespace bothways::storage {
namespace {

void bindBound(SQLite::Statement& row, int at, double value)
{
    if (std::isnan(value))
        row.bind(at);
    else
        row.bind(at, value);
}

/// The compressed bytes and behind them a frame that readers skip (RFC 8878, 3.1.2), so that they
/// weigh at least `weight`: rows that follow an even clock compress to nothing, and what a
/// recording may ask of memory goes by its size (recording_check.h).
std::vector<std::byte> padded(const std::vector<std::byte>& bytes, std::size_t weight)
{
    constexpr std::uint32_t kSkippable = 0x184D2A50;
    const auto size = static_cast<std::uint32_t>(weight - bytes.size());
    std::vector<std::byte> result = bytes;
    for (const std::uint32_t word : {kSkippable, size})
        for (unsigned shift = 0; shift < 32; shift += 8)
            result.push_back(static_cast<std::byte>(word >> shift & 0xFFU));
    result.resize(result.size() + size);
    return result;
}

} // namespace

ChunkRows::ChunkRows(SQLite::Database& database, std::int64_t data)
    : m_data(data),
      m_row(database, "INSERT INTO chunk (data, place, first_row, rows, samples, minimum, "
                      "maximum, bytes) VALUES (?, ?, ?, ?, ?, ?, ?, ?)"),
      m_sum(database, "INSERT INTO chunk_sum (data, place, first_row, sha256) VALUES (?, ?, ?, ?)")
{
}

std::size_t ChunkRows::insert(std::int64_t place, std::int64_t firstRow, const EncodedChunk& chunk)
{
    m_row.bind(1, m_data);
    m_row.bind(2, place);
    m_row.bind(3, firstRow);
    m_row.bind(4, chunk.rows);
    m_row.bind(5, chunk.samples);
    bindBound(m_row, 6, chunk.minimum);
    bindBound(m_row, 7, chunk.maximum);
    std::vector<std::byte> heavier;
    if (place == 0 && chunk.bytes.size() < chunk.rows / kRowsAByte)
        heavier = padded(chunk.bytes, chunk.rows / kRowsAByte);
    const std::span<const std::byte> bytes = heavier.empty() ? chunk.bytes : heavier;
    m_row.bindNoCopy(8, bytes.data(), static_cast<int>(bytes.size()));
    m_row.exec();
    m_row.reset();
    m_sum.bind(1, m_data);
    m_sum.bind(2, place);
    m_sum.bind(3, firstRow);
    m_sum.bind(4, sumOfChunk({reinterpret_cast<const char*>(bytes.data()), bytes.size()}));
    m_sum.exec();
    m_sum.reset();
    return bytes.size();
}

} // namespace bothways::storage
