// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/trace_reader.h"

#include "storage/bytes/large_pages.h"
#include "storage/study/query.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <sqlite3.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace bothways::storage {
namespace {

std::span<const std::byte> bytesOf(const SQLite::Column& column)
{
    return {static_cast<const std::byte*>(column.getBlob()),
            static_cast<std::size_t>(column.getBytes())};
}

/// A bound is no number in the file where no sample is.
double bound(const SQLite::Column& column)
{
    return column.isNull() ? std::nan("") : column.getDouble();
}

/// Rows and samples, from two columns.
ChunkCounts countsIn(SQLite::Statement& row, int first)
{
    return {static_cast<std::uint32_t>(row.getColumn(first).getInt64()),
            static_cast<std::uint32_t>(row.getColumn(first + 1).getInt64())};
}

/// From the time before `from` on.
bool ascend(const std::vector<double>& times, std::size_t from)
{
    for (std::size_t i = std::max<std::size_t>(from, 1); i < times.size(); ++i)
        if (!(times[i] > times[i - 1]))
            return false;
    return true;
}

void convert(std::vector<double>& values, const StoredChannel& channel)
{
    if (channel.factor == 1.0 && channel.offset == 0.0)
        return;
    for (double& value : values)
        value = value * channel.factor + channel.offset;
}

} // namespace

/// Appends a chunk's samples; what is damaged is thrown and becomes an Error at the border.
void TraceReader::decode(std::span<const std::byte> bytes, std::int64_t place,
                         std::int64_t firstRow, const ChunkCounts& counts, ChunkSums& sums,
                         std::vector<double>& values)
{
    goOnReading(m_stop);
    checkChunkBytes(*m_study.database, m_data, place, firstRow, bytes, sums);
    auto decoded = m_decoder.decode(bytes, counts, values);
    if (!decoded)
        throw damagedRecording(*m_study.database, m_data, place, decoded.error().message);
    m_decoded = std::move(decoded).take();
}

/// Before anything is believed that they say.
void TraceReader::checkLines()
{
    goOnReading(m_stop);
    if (m_checked->contains(m_data))
        return;
    checkChunkLines(*m_study.database, m_data);
    m_checked->insert(m_data);
}

template <class T>
Result<T> TraceReader::oneState(const std::function<Result<T>()>& work)
{
    return m_study.guarded<T>([&]() -> Result<T> {
        std::optional<SQLite::Transaction> state;
        if (sqlite3_get_autocommit(m_study.database->getHandle()) != 0)
            state.emplace(*m_study.database);
        static_cast<void>(oneNumber(*m_study.database, "PRAGMA schema_version")); // takes the lock
        const std::int64_t now = oneNumber(*m_study.database, "PRAGMA data_version");
        if (m_state != 0 && m_state != now) {
            m_loaded = false;
            m_checked->erase(m_data);
        }
        m_state = now;
        return work();
    });
}

void TraceReader::load()
{
    if (m_loaded)
        return;
    m_groups.clear();
    checkLines();
    std::int64_t rows = 0;
    {
        SQLite::Statement sum(*m_study.database,
                              "SELECT sum(rows) FROM chunk WHERE data = ? AND place = 0 AND "
                              "maximum >= ? AND minimum <= ?");
        sum.bind(1, m_data);
        sum.bind(2, m_window.from_s);
        sum.bind(3, m_window.to_s);
        sum.executeStep();
        rows = sum.getColumn(0).getInt64();
    }
    std::vector<double> times;
    reserveInLargePages(times,
                        static_cast<std::size_t>(std::clamp<std::int64_t>(rows, 0, 1 << 28)));
    SQLite::Statement chunks(*m_study.database,
                             "SELECT first_row, rows, samples, bytes FROM chunk WHERE data = ? "
                             "AND place = 0 AND maximum >= ? AND minimum <= ? ORDER BY first_row");
    chunks.bind(1, m_data);
    chunks.bind(2, m_window.from_s);
    chunks.bind(3, m_window.to_s);
    ChunkSums sums(*m_study.database, m_data);
    while (chunks.executeStep()) {
        const std::size_t before = times.size();
        const std::int64_t firstRow = chunks.getColumn(0).getInt64();
        decode(bytesOf(chunks.getColumn(3)), 0, firstRow, countsIn(chunks, 1), sums, times);
        if (!ascend(times, before))
            throw damagedRecording(*m_study.database, m_data, 0, "its times do not ascend"_t);
        Group group{firstRow, m_decoded.rows, 0, m_decoded.samples};
        const auto first = times.begin() + static_cast<std::ptrdiff_t>(before);
        const auto low = std::lower_bound(first, times.end(), m_window.from_s);
        const auto high = std::upper_bound(low, times.end(), m_window.to_s);
        group.begin = static_cast<std::uint32_t>(low - first);
        group.end = static_cast<std::uint32_t>(high - first);
        times.erase(high, times.end());
        times.erase(first, low);
        if (group.begin < group.end)
            m_groups.push_back(group);
    }
    if (m_window.zero_s != 0.0)
        for (double& time : times)
            time -= m_window.zero_s;
    m_times = core::SampleTimes(std::move(times));
    m_loaded = true;
}

Result<core::SampleTimes> TraceReader::times()
{
    return oneState<core::SampleTimes>([&]() -> Result<core::SampleTimes> {
        load();
        return m_times;
    });
}

// Long: one pass over the chunks, with what it keeps between two of them.
core::Samples TraceReader::read(const StoredChannel& channel)
{
    load();
    core::Samples result;
    if (m_groups.empty())
        return result;
    reserveInLargePages(result.value, m_times.size());
    std::vector<double> own; // times, from the first row that has no sample
    std::vector<double> part;
    bool shared = true;
    std::size_t row = 0; // of the window
    const auto leaveShared = [&](std::size_t rows) {
        if (shared)
            own.assign(m_times.begin(), m_times.begin() + rows);
        shared = false;
    };
    SQLite::Statement chunk(*m_study.database,
                            "SELECT rows, samples, bytes FROM chunk WHERE data = ? AND place = ? "
                            "AND first_row = ?");
    ChunkSums sums(*m_study.database, m_data);
    for (const Group& group : m_groups) {
        const std::size_t rows = group.end - group.begin;
        chunk.bind(1, m_data);
        chunk.bind(2, channel.place);
        chunk.bind(3, group.firstRow);
        if (!chunk.executeStep()) { // no sample in all of its rows
            leaveShared(row);
        } else {
            const bool whole = rows == group.rows;
            std::vector<double>& into = whole ? result.value : part;
            part.clear();
            decode(bytesOf(chunk.getColumn(2)), channel.place, group.firstRow, countsIn(chunk, 0),
                   sums, into);
            if (m_decoded.rows != group.rows)
                throw damagedRecording(*m_study.database, m_data, channel.place,
                                       "a chunk of it has not as many rows as its times"_t);
            const bool dense = m_decoded.samples == m_decoded.rows;
            if (dense && !whole)
                result.value.insert(result.value.end(), part.begin() + group.begin,
                                    part.begin() + group.end);
            if (!dense)
                leaveShared(row);
            if (!dense || !shared) {
                std::size_t sample = 0;
                for (std::uint32_t i = 0; i < group.end; ++i) {
                    if (!m_decoded.has(i))
                        continue;
                    if (i >= group.begin) {
                        own.push_back(m_times[row + i - group.begin]);
                        if (!dense && !whole)
                            result.value.push_back(part[sample]);
                    }
                    ++sample;
                }
            }
        }
        row += rows;
        chunk.reset();
    }
    result.time_s = shared ? m_times : core::SampleTimes(std::move(own));
    convert(result.value, channel);
    return result;
}

Result<core::Samples> TraceReader::samples(const StoredChannel& channel)
{
    return oneState<core::Samples>([&]() -> Result<core::Samples> { return read(channel); });
}

Result<std::vector<TraceReader::Bounds>> TraceReader::bounds()
{
    using List = std::vector<Bounds>;
    return oneState<List>([&]() -> Result<List> {
        checkLines();
        SQLite::Statement span(*m_study.database,
                               "SELECT min(first_row), max(first_row) FROM chunk WHERE data = ? "
                               "AND place = 0 AND maximum >= ? AND minimum <= ?");
        span.bind(1, m_data);
        span.bind(2, m_window.from_s);
        span.bind(3, m_window.to_s);
        span.executeStep();
        SQLite::Statement rows(*m_study.database,
                               "SELECT place, min(minimum), max(maximum) FROM chunk WHERE data = ? "
                               "AND place > 0 AND first_row BETWEEN ? AND ? GROUP BY place");
        rows.bind(1, m_data);
        rows.bind(2, span.getColumn(0).getInt64());
        rows.bind(3, span.getColumn(1).getInt64());
        List list;
        while (rows.executeStep())
            list.push_back(
                {rows.getColumn(0).getInt64(), bound(rows.getColumn(1)), bound(rows.getColumn(2))});
        return list;
    });
}

std::vector<StoredChannel> channelsOf(SQLite::Database& database, std::int64_t recording)
{
    std::vector<StoredChannel> channels;
    SQLite::Statement rows(database,
                           "SELECT place, name, unit, factor, \"offset\", samples FROM channel "
                           "WHERE recording = ? AND EXISTS (SELECT 1 FROM trace_data WHERE id = ?) "
                           "ORDER BY place");
    rows.bind(1, recording);
    rows.bind(2, recording);
    while (rows.executeStep())
        channels.push_back({rows.getColumn(0).getInt64(), rows.getColumn(1).getString(),
                            rows.getColumn(2).getString(), rows.getColumn(3).getDouble(),
                            rows.getColumn(4).getDouble(), rows.getColumn(5).getInt64()});
    return channels;
}

} // namespace bothways::storage
