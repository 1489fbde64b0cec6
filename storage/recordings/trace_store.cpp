// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/trace_store.h"

#include "storage/recordings/recording_cuts.h"
#include "storage/study/recording_sums.h"
#include "storage/study/study_rows.h"
#include "storage/study/unfinished_traces.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <thread>

namespace bothways::storage {
namespace {

using core::Done;

/// A batch is some tenths of a second of other people's waiting at most, on a slow disk too.
constexpr std::size_t kBatchBytes = std::size_t{4} << 20;
/// Between two of them, for those who wait: they look every 2 ms (waiting.cpp).
constexpr std::chrono::milliseconds kRoomForOthers(6);
/// So that a batch stays in memory until its commit: spilling it would lock readers out.
constexpr std::int64_t kCacheKiB = 12 << 10;

std::int64_t cacheSize(SQLite::Database& database)
{
    SQLite::Statement row(database, "PRAGMA cache_size");
    row.executeStep();
    return row.getColumn(0).getInt64();
}

void setCacheSize(SQLite::Database& database, std::int64_t size)
{
    database.exec(fmt::format("PRAGMA cache_size = {}", size));
}

void insertRecording(SQLite::Database& database, std::int64_t id, const FinishedRecording& given)
{
    SQLite::Statement row(database,
                          "INSERT INTO recording (id, name, format, clock_start_us, utc_offset_min,"
                          " from_s, to_s, rows) VALUES (?, ?, ?, ?, ?, ?, ?, ?)");
    row.bind(1, id);
    row.bind(2, given.name);
    row.bind(3, given.format);
    if (given.first)
        row.bind(4, given.first->us);
    if (given.first && given.first->utc_offset_min)
        row.bind(5, *given.first->utc_offset_min);
    row.bind(6, given.from_s);
    row.bind(7, given.to_s);
    row.bind(8, given.rows);
    row.exec();
}

void insertChannels(SQLite::Database& database, std::int64_t id,
                    const std::vector<StoredChannel>& channels)
{
    SQLite::Statement row(database, "INSERT INTO channel (recording, place, name, unit, factor, "
                                    "\"offset\", samples) VALUES (?, ?, ?, ?, ?, ?, ?)");
    for (const StoredChannel& channel : channels) {
        row.bind(1, id);
        row.bind(2, channel.place);
        row.bind(3, channel.name);
        row.bind(4, channel.unit);
        row.bind(5, channel.factor);
        row.bind(6, channel.offset);
        row.bind(7, channel.samples);
        row.exec();
        row.reset();
    }
}

void insertMarks(SQLite::Database& database, std::int64_t id,
                 const std::vector<std::pair<std::int64_t, RecordedMark>>& marks)
{
    SQLite::Statement row(
        database, "INSERT INTO recording_mark (recording, place, at_s, words) VALUES (?, ?, ?, ?)");
    std::int64_t place = 0;
    for (const auto& [firstRow, mark] : marks) {
        row.bind(1, id);
        row.bind(2, place++);
        row.bind(3, mark.at_s);
        row.bind(4, mark.words);
        row.exec();
        row.reset();
    }
}

} // namespace

TraceWriter::TraceWriter(StudyFile::Private& study) : m_study(&study) {}

TraceWriter::TraceWriter(TraceWriter&& other) noexcept
    : m_study(std::exchange(other.m_study, nullptr)),
      m_data(other.m_data),
      m_cacheBefore(other.m_cacheBefore),
      m_insert(std::move(other.m_insert)),
      m_batch(std::move(other.m_batch)),
      m_batchBytes(other.m_batchBytes),
      m_marks(std::move(other.m_marks))
{
}

Result<TraceWriter> TraceWriter::begin(StudyFile::Private& study)
{
    TraceWriter writer(study);
    const Outcome begun = study.inTransaction([&](SQLite::Database& database) -> Outcome {
        database.exec("INSERT INTO trace_data (state) VALUES ('unfinished')");
        writer.m_data = database.getLastInsertRowid();
        writer.m_insert = std::make_unique<ChunkRows>(database, writer.m_data);
        return Done{};
    });
    if (!begun) {
        writer.m_study = nullptr;
        return begun.error();
    }
    writer.m_cacheBefore = cacheSize(*study.database);
    setCacheSize(*study.database, -kCacheKiB);
    return writer;
}

TraceWriter::~TraceWriter()
{
    if (!m_study)
        return; // kept, or moved from
    try {
        m_insert.reset();
        m_batch.reset(); // rolls back
        setCacheSize(*m_study->database, m_cacheBefore);
    } catch (const SQLite::Exception&) {
        // Nothing is lost by a cache of another size.
    }
    // Where that fails (the disk is full, the file locked) the next open does it.
    static_cast<void>(m_study->inTransaction([&](SQLite::Database& database) -> Outcome {
        removeTraceData(database, m_data);
        return Done{};
    }));
}

void TraceWriter::commitBatch()
{
    if (!m_batch)
        return;
    m_batch->commit();
    m_batch.reset();
    m_batchBytes = 0;
}

Outcome TraceWriter::put(RowGroup&& group)
{
    return m_study->guarded<Done>([&]() -> Outcome {
        if (!m_batch)
            m_batch = std::make_unique<SQLite::Transaction>(*m_study->database,
                                                            SQLite::TransactionBehavior::IMMEDIATE);
        m_batchBytes += m_insert->insert(0, group.first_row, group.time);
        for (std::size_t i = 0; i < group.channels.size(); ++i)
            if (group.channels[i].samples > 0)
                m_batchBytes += m_insert->insert(static_cast<std::int64_t>(i) + 1, group.first_row,
                                                 group.channels[i]);
        for (auto& mark : group.marks)
            m_marks.emplace_back(group.first_row, std::move(mark));
        if (m_batchBytes >= kBatchBytes) {
            commitBatch();
            std::this_thread::sleep_for(kRoomForOthers);
        }
        return Done{};
    });
}

Outcome TraceWriter::endOfGroups()
{
    return m_study->guarded<Done>([&]() -> Outcome {
        commitBatch();
        m_insert.reset();
        setCacheSize(*m_study->database, m_cacheBefore);
        return Done{};
    });
}

Result<core::RecordingId> TraceWriter::finish(const FinishedRecording& recording)
{
    std::stable_sort(m_marks.begin(), m_marks.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    HistoryDetail detail = recording.detail;
    const Outcome done =
        m_study->change("import_trace", detail, [&](SQLite::Database& database) -> Outcome {
            insertRecording(database, m_data, recording);
            insertChannels(database, m_data, recording.channels);
            insertMarks(database, m_data, m_marks);
            if (recording.run)
                assignRunTrace(database, *recording.run, core::RecordingId{m_data},
                               recording.offset_s);
            completeRecording(database, m_data);
            return recording.cuts ? cutInto(database, recording, detail) : Done{};
        });
    if (!done)
        return done.error();
    return core::RecordingId{m_data};
}

void TraceWriter::keep()
{
    m_study = nullptr;
}

Outcome TraceWriter::cutInto(SQLite::Database& database, const FinishedRecording& recording,
                             HistoryDetail& detail)
{
    RecordingInfo info;
    info.id = core::RecordingId{m_data};
    info.name = recording.name;
    info.first = recording.first;
    info.from_s = recording.from_s;
    info.to_s = recording.to_s;
    info.length_s = recording.to_s - recording.from_s;
    info.rows = recording.rows;
    const auto cuts = recording.cuts(info);
    if (!cuts)
        return cuts.error();
    const auto runs = writeCuts(*m_study, database, info.id, cuts.value());
    if (!runs)
        return runs.error();
    detail.values.insert(detail.values.end(), runs.value().begin(), runs.value().end());
    return Done{};
}

std::vector<ChannelMapping> keptMapping(SQLite::Database& database, const std::string& headerKey)
{
    std::vector<ChannelMapping> mapping;
    SQLite::Statement rows(database, "SELECT name, channel, factor, \"offset\" FROM mapping "
                                     "WHERE header = ? ORDER BY place");
    rows.bind(1, headerKey);
    while (rows.executeStep())
        mapping.push_back({rows.getColumn(0).getString(), rows.getColumn(1).getString(),
                           rows.getColumn(2).getDouble(), rows.getColumn(3).getDouble()});
    return mapping;
}

Outcome keepMapping(StudyFile::Private& study, const std::string& headerKey,
                    const std::vector<ChannelMapping>& mapping)
{
    return study.inTransaction([&](SQLite::Database& database) -> Outcome {
        SQLite::Statement old(database, "DELETE FROM mapping WHERE header = ?");
        old.bind(1, headerKey);
        old.exec();
        SQLite::Statement row(database, "INSERT INTO mapping (header, place, name, channel, factor,"
                                        " \"offset\") VALUES (?, ?, ?, ?, ?, ?)");
        std::int64_t place = 0;
        for (const ChannelMapping& column : mapping) {
            row.bind(1, headerKey);
            row.bind(2, place++);
            row.bind(3, column.column);
            row.bind(4, column.channel);
            row.bind(5, column.factor);
            row.bind(6, column.offset);
            row.exec();
            row.reset();
        }
        return Done{};
    });
}

} // namespace bothways::storage
