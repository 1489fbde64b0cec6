// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/recording_check.h"

#include "core/recording/unreadable_recording.h"
#include "storage/chunks/chunk_codec.h"
#include "storage/recordings/run_traces.h"
#include "storage/study/recording_sums.h"

#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace bothways::storage {
namespace {

using core::Done;

std::string nameOf(SQLite::Database& database, std::int64_t recording)
{
    SQLite::Statement row(database, "SELECT name FROM recording WHERE id = ?");
    row.bind(1, recording);
    return row.executeStep() ? row.getColumn(0).getString() : fmt::format("{}", recording);
}

std::string channelNamed(SQLite::Database& database, std::int64_t recording, std::int64_t place)
{
    if (place == 0)
        return "time";
    SQLite::Statement row(database, "SELECT name FROM channel WHERE recording = ? AND place = ?");
    row.bind(1, recording);
    row.bind(2, place);
    return row.executeStep() ? row.getColumn(0).getString() : fmt::format("{}", place);
}

core::Message runsOf(SQLite::Database& database, std::int64_t recording)
{
    std::vector<std::int64_t> numbers;
    SQLite::Statement rows(database, "SELECT run.run FROM run_trace JOIN run ON run.id = "
                                     "run_trace.run WHERE recording = ? ORDER BY run.run");
    rows.bind(1, recording);
    while (rows.executeStep())
        numbers.push_back(rows.getColumn(0).getInt64());
    if (numbers.empty())
        return "of no run"_t;
    return numbers.size() == 1
               ? core::message("run {}"_t, numbers.front())
               : core::message("runs {}"_t, fmt::format("{}", fmt::join(numbers, ", ")));
}

/// Not after compact(), where a recording that was dropped is brought back by undo.
bool hasData(SQLite::Database& database, std::int64_t recording)
{
    SQLite::Statement row(database, "SELECT 1 FROM trace_data WHERE id = ?");
    row.bind(1, recording);
    return row.executeStep();
}

/// What table chunk says of a chunk.
struct ChunkLine {
    std::int64_t place, first_row, rows, samples, bytes;
    std::optional<double> minimum, maximum;
};

std::optional<double> numberIn(const SQLite::Column& column)
{
    return column.isNull() ? std::nullopt : std::optional(column.getDouble());
}

/// What a recording and its channels say of themselves.
struct Promised {
    std::int64_t rows = 0;
    double from_s = 0.0, to_s = 0.0;
    std::map<std::int64_t, std::int64_t> samples; ///< by place
};

std::optional<Promised> promisedBy(SQLite::Database& database, std::int64_t recording)
{
    SQLite::Statement row(database, "SELECT rows, from_s, to_s FROM recording WHERE id = ?");
    row.bind(1, recording);
    if (!row.executeStep())
        return std::nullopt;
    Promised promised{row.getColumn(0).getInt64(),
                      row.getColumn(1).getDouble(),
                      row.getColumn(2).getDouble(),
                      {}};
    SQLite::Statement channels(database, "SELECT place, samples FROM channel WHERE recording = ?");
    channels.bind(1, recording);
    while (channels.executeStep())
        promised.samples[channels.getColumn(0).getInt64()] = channels.getColumn(1).getInt64();
    return promised;
}

/// Goes through the lines in order of place and row.
class Lines {
public:
    explicit Lines(const Promised& promised) : m_promised(promised) {}

    /// @return  what is wrong with the line
    std::optional<core::Text<0>> add(const ChunkLine& line)
    {
        m_bytes += line.bytes;
        if (line.rows < 1 || line.rows > kMaxChunkRows || line.samples < 1 ||
            line.samples > line.rows || line.minimum.has_value() != line.maximum.has_value())
            return "its numbers cannot be"_t;
        return line.place == 0 ? addTimes(line) : addValues(line);
    }

    /// @return  a place and what is wrong there
    std::optional<std::pair<std::int64_t, core::Text<0>>> end() const
    {
        using Fault = std::pair<std::int64_t, core::Text<0>>;
        if (m_rows != m_promised.rows || m_groups.empty() || m_from_s != m_promised.from_s ||
            m_to_s != m_promised.to_s)
            return Fault{0, "a part of it is missing"_t};
        if (m_rows > kRowsForNothing && (m_rows - kRowsForNothing) / kRowsAByte > m_bytes)
            return Fault{0, "it claims more rows than its size can hold"_t};
        for (const auto& [place, samples] : m_promised.samples) {
            const auto found = m_samples.find(place);
            if ((found == m_samples.end() ? 0 : found->second) != samples)
                return Fault{place, "a part of it is missing"_t};
        }
        return std::nullopt;
    }

private:
    std::optional<core::Text<0>> addTimes(const ChunkLine& line)
    {
        if (line.first_row != m_rows)
            return "a part of it is missing"_t;
        if (line.samples != line.rows || !line.minimum || *line.minimum > *line.maximum ||
            (m_rows > 0 && *line.minimum <= m_to_s))
            return "its numbers cannot be"_t;
        if (m_rows == 0)
            m_from_s = *line.minimum;
        m_to_s = *line.maximum;
        m_rows += line.rows;
        m_groups[line.first_row] = line.rows;
        return std::nullopt;
    }

    std::optional<core::Text<0>> addValues(const ChunkLine& line)
    {
        const auto group = m_groups.find(line.first_row);
        if (group == m_groups.end() || group->second != line.rows ||
            !m_promised.samples.contains(line.place))
            return "a chunk of it has not as many rows as its times"_t;
        m_samples[line.place] += line.samples;
        return std::nullopt;
    }

    const Promised& m_promised;
    std::int64_t m_rows = 0, m_bytes = 0;
    double m_from_s = 0.0, m_to_s = 0.0;
    std::map<std::int64_t, std::int64_t> m_groups;  ///< rows by first row
    std::map<std::int64_t, std::int64_t> m_samples; ///< by place
};

/// Every byte of one recording.
void checkWhole(SQLite::Database& database, std::int64_t recording, ChunkDecoder& decoder,
                const std::stop_token& stop)
{
    checkChunkLines(database, recording);
    ChunkSums sums(database, recording);
    SQLite::Statement chunks(database, "SELECT place, first_row, rows, samples, minimum, maximum, "
                                       "bytes FROM chunk WHERE data = ?");
    chunks.bind(1, recording);
    std::vector<double> values;
    while (chunks.executeStep()) {
        goOnReading(stop);
        const std::int64_t place = chunks.getColumn(0).getInt64();
        const SQLite::Column blob = chunks.getColumn(6);
        const std::span bytes(static_cast<const std::byte*>(blob.getBlob()),
                              static_cast<std::size_t>(blob.getBytes()));
        checkChunkBytes(database, recording, place, chunks.getColumn(1).getInt64(), bytes, sums);
        const ChunkCounts counts{static_cast<std::uint32_t>(chunks.getColumn(2).getInt64()),
                                 static_cast<std::uint32_t>(chunks.getColumn(3).getInt64())};
        values.clear();
        // With a sum the bounds are under it; without, the values must show them.
        const auto fault = sums.areKept()
                               ? decoder.check(bytes, counts)
                               : decoder.checkBounds(bytes, counts, numberIn(chunks.getColumn(4)),
                                                     numberIn(chunks.getColumn(5)));
        if (fault)
            throw damagedRecording(database, recording, place, fault->message);
    }
}

} // namespace

DamagedRecording damagedRecording(SQLite::Database& database, std::int64_t recording,
                                  std::int64_t place, const core::Message& what)
{
    return {core::message("the recording {} ({}) is damaged in channel {}: {}; restore the study "
                          "from a copy"_t,
                          nameOf(database, recording), runsOf(database, recording),
                          channelNamed(database, recording, place), what)};
}

void checkChunkLines(SQLite::Database& database, std::int64_t recording)
{
    const auto promised = promisedBy(database, recording);
    if (!promised || !hasData(database, recording))
        return; // no recording of the study (any more)
    Lines lines(*promised);
    SQLite::Statement rows(database, "SELECT place, first_row, rows, samples, length(bytes), "
                                     "minimum, maximum FROM chunk WHERE data = ? "
                                     "ORDER BY place, first_row");
    rows.bind(1, recording);
    while (rows.executeStep()) {
        const ChunkLine line{rows.getColumn(0).getInt64(), rows.getColumn(1).getInt64(),
                             rows.getColumn(2).getInt64(), rows.getColumn(3).getInt64(),
                             rows.getColumn(4).getInt64(), numberIn(rows.getColumn(5)),
                             numberIn(rows.getColumn(6))};
        if (const auto fault = lines.add(line))
            throw damagedRecording(database, recording, line.place, *fault);
    }
    if (const auto fault = lines.end())
        throw damagedRecording(database, recording, fault->first, fault->second);
    if (!recordingFits(database, recording))
        throw damagedRecording(database, recording, 0,
                               "its chunks are not those that Bothways wrote"_t);
}

void checkChunkBytes(SQLite::Database& database, std::int64_t recording, std::int64_t place,
                     std::int64_t firstRow, std::span<const std::byte> bytes, ChunkSums& sums)
{
    if (!sums.areKept())
        return;
    const std::string_view text(reinterpret_cast<const char*>(bytes.data()), bytes.size());
    if (sums.of(place, firstRow) != sumOfChunk(text))
        throw damagedRecording(database, recording, place,
                               "a chunk of it is not what Bothways wrote"_t);
}

void goOnReading(const std::stop_token& stop)
{
    if (stop.stop_requested())
        throw core::UnreadableRecording({core::ErrorCode::stopped, "stopped before the end"_t, {}});
}

Outcome checkRecordings(const StudyFile& study, const std::stop_token& stop)
{
    const StudyFile::Private& d = study.database();
    return d.guarded<Done>([&]() -> Outcome {
        const SQLite::Transaction oneState(*d.database);
        std::vector<std::int64_t> recordings;
        {
            SQLite::Statement rows(*d.database, "SELECT id FROM recording WHERE id IN "
                                                "(SELECT id FROM trace_data) ORDER BY id");
            while (rows.executeStep())
                recordings.push_back(rows.getColumn(0).getInt64());
        }
        ChunkDecoder decoder;
        for (const std::int64_t recording : recordings)
            checkWhole(*d.database, recording, decoder, stop);
        return Done{};
    });
}

} // namespace bothways::storage
