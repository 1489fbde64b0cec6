// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/live/open_group.h"

#include "storage/bytes/decimal.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <limits>

namespace bothways::storage {
namespace {

constexpr int kPiecesALevel = 8;
/// A column of more decimals keeps its values as doubles.
constexpr int kMostDecimals = 15;

/// Rows [begin, end) of a column, counted from begin.
ScaledColumn partOf(const ScaledColumn& column, std::uint32_t begin, std::uint32_t end)
{
    ScaledColumn part;
    part.decimals = column.decimals;
    part.scaled.assign(column.scaled.begin() + begin, column.scaled.begin() + end);
    const auto gap = std::lower_bound(column.gaps.begin(), column.gaps.end(), begin);
    for (auto at = gap; at != column.gaps.end() && *at < end; ++at)
        part.gaps.push_back(*at - begin);
    const auto odd =
        std::lower_bound(column.odd.begin(), column.odd.end(), begin,
                         [](const auto& one, std::uint32_t row) { return one.first < row; });
    for (auto at = odd; at != column.odd.end() && at->first < end; ++at)
        part.odd.emplace_back(at->first - begin, at->second);
    return part;
}

} // namespace

OpenGroup::OpenGroup(std::int64_t firstRow) : m_first(firstRow)
{
    m_time.decimals = kTimeDecimals;
}

void OpenGroup::add(std::int64_t time_us, std::span<const Reading> row)
{
    const std::uint32_t place = rows();
    m_time.scaled.push_back(time_us);
    for (const Reading& reading : row)
        while (m_channels.size() <= reading.channel) {
            m_channels.emplace_back();
            ScaledColumn& values = m_channels.back().values;
            values.scaled.assign(place, 0);
            values.gaps.resize(place);
            for (std::uint32_t i = 0; i < place; ++i)
                values.gaps[i] = i;
        }
    for (const Reading& reading : row)
        addTo(m_channels[reading.channel], place, reading);
    for (Column& column : m_channels)
        if (column.values.scaled.size() == place) { // nothing came of it
            column.values.gaps.push_back(place);
            column.values.scaled.push_back(place == 0 ? 0 : column.values.scaled.back());
        }
}

void OpenGroup::addTo(Column& column, std::uint32_t row, const Reading& reading)
{
    ScaledColumn& values = column.values;
    const auto putOdd = [&](double value) {
        values.odd.emplace_back(row, value);
        values.scaled.push_back(row == 0 ? 0 : values.scaled.back());
    };
    if (reading.decimals < 0)
        return putOdd(reading.odd);
    if (reading.decimals > kMostDecimals)
        return putOdd(reading.value());
    const int decimals = reading.decimals;
    if (!column.any)
        values.decimals = decimals;
    if (decimals > values.decimals) {
        const int more = decimals - values.decimals;
        if (!withMoreDecimals(column.largest, more))
            return putOdd(reading.value());
        for (std::int64_t& scaled : values.scaled)
            scaled = *withMoreDecimals(scaled, more);
        column.largest = *withMoreDecimals(column.largest, more);
        values.decimals = decimals;
    }
    const auto integer = withMoreDecimals(reading.integer, values.decimals - decimals);
    if (!integer || std::abs(*integer) > kMaxScaled)
        return putOdd(reading.value());
    column.any = true;
    column.largest = std::max(column.largest, std::abs(*integer));
    values.scaled.push_back(*integer);
}

bool OpenGroup::hasSample(std::size_t channel, const Piece& piece) const
{
    const std::vector<std::uint32_t>& gaps = m_channels[channel].values.gaps;
    const auto first = std::lower_bound(gaps.begin(), gaps.end(), piece.begin);
    const auto last = std::lower_bound(first, gaps.end(), piece.end);
    return static_cast<std::uint32_t>(last - first) < piece.end - piece.begin;
}

std::vector<Piece> OpenGroup::wanted(bool whole) const
{
    if (rows() == 0)
        return {};
    if (whole || isFull())
        return {Piece{0, rows(), std::numeric_limits<int>::max(), 0}};
    std::vector<Piece> pieces = m_stored;
    if (rows() > storedRows())
        pieces.push_back({storedRows(), rows(), 0, 0});
    const auto fullLevel = [&] {
        if (pieces.size() < kPiecesALevel)
            return false;
        return std::all_of(pieces.end() - kPiecesALevel, pieces.end(),
                           [&](const Piece& piece) { return piece.level == pieces.back().level; });
    };
    while (fullLevel()) {
        const Piece all{(pieces.end() - kPiecesALevel)->begin, pieces.back().end,
                        pieces.back().level + 1, 0};
        pieces.erase(pieces.end() - kPiecesALevel, pieces.end());
        pieces.push_back(all);
    }
    return pieces;
}

EncodedChunk OpenGroup::encodeTimes(ChunkEncoder& encoder, const Piece& piece) const
{
    return encoder.encode(partOf(m_time, piece.begin, piece.end), piece.end - piece.begin);
}

EncodedChunk OpenGroup::encode(ChunkEncoder& encoder, std::size_t channel, const Piece& piece) const
{
    return encoder.encode(partOf(m_channels[channel].values, piece.begin, piece.end),
                          piece.end - piece.begin);
}

} // namespace bothways::storage
