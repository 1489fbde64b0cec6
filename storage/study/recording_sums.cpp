// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/recording_sums.h"

#include "storage/study/row_hash.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <bit>
#include <vector>

namespace bothways::storage {
namespace {

struct RecordingSum {
    std::int64_t chunks = 0;
    std::string sha256;
};

/// From version 2 on.
bool keepsSums(SQLite::Database& database)
{
    return oneNumber(database, "PRAGMA user_version") >= 2;
}

/// A bound that is not there is no number: a word before it says which.
void addBound(Sha256& hash, const SQLite::Column& bound)
{
    addWord(hash, bound.isNull() ? 0 : 1);
    addWord(hash, bound.isNull() ? 0 : std::bit_cast<std::uint64_t>(bound.getDouble()));
}

RecordingSum sumOfRecording(SQLite::Database& database, std::int64_t data)
{
    SQLite::Statement chunks(
        database, "SELECT c.place, c.first_row, c.rows, c.samples, c.minimum, c.maximum, s.sha256 "
                  "FROM chunk AS c LEFT JOIN chunk_sum AS s ON s.data = c.data AND "
                  "s.place = c.place AND s.first_row = c.first_row "
                  "WHERE c.data = ? ORDER BY c.place, c.first_row");
    chunks.bind(1, data);
    RecordingSum sum;
    Sha256 hash;
    while (chunks.executeStep()) {
        ++sum.chunks;
        for (int i = 0; i < 4; ++i)
            addWord(hash, static_cast<std::uint64_t>(chunks.getColumn(i).getInt64()));
        addBound(hash, chunks.getColumn(4));
        addBound(hash, chunks.getColumn(5));
        const std::string bytes = chunks.getColumn(6).getString();
        addWord(hash, bytes.size());
        hash.add(bytes);
    }
    sum.sha256 = hash.hex();
    return sum;
}

} // namespace

std::string sumOfChunk(std::string_view bytes)
{
    return sha256(bytes);
}

void completeRecording(SQLite::Database& database, std::int64_t data)
{
    const RecordingSum sum = sumOfRecording(database, data);
    SQLite::Statement row(database, "UPDATE trace_data SET state = 'complete', chunks = ?, "
                                    "sha256 = ? WHERE id = ?");
    row.bind(1, sum.chunks);
    row.bind(2, sum.sha256);
    row.bind(3, data);
    row.exec();
}

bool recordingFits(SQLite::Database& database, std::int64_t data)
{
    if (!keepsSums(database))
        return true;
    SQLite::Statement kept(database,
                           "SELECT chunks, sha256 FROM trace_data WHERE id = ? AND state = "
                           "'complete'");
    kept.bind(1, data);
    if (!kept.executeStep())
        return false;
    const RecordingSum sum = sumOfRecording(database, data);
    return sum.chunks == kept.getColumn(0).getInt64() &&
           sum.sha256 == kept.getColumn(1).getString();
}

ChunkSums::ChunkSums(SQLite::Database& database, std::int64_t data)
{
    if (!keepsSums(database))
        return;
    m_row.emplace(database, "SELECT sha256 FROM chunk_sum WHERE data = ? AND place = ? AND "
                            "first_row = ?");
    m_row->bind(1, data);
}

std::string ChunkSums::of(std::int64_t place, std::int64_t firstRow)
{
    if (!m_row)
        return {};
    m_row->bind(2, place).bind(3, firstRow);
    std::string sum = m_row->step() ? m_row->text(0) : std::string();
    m_row->reset();
    return sum;
}

void sumOldRecordings(SQLite::Database& database)
{
    {
        SQLite::Statement chunks(database, "SELECT data, place, first_row, bytes FROM chunk");
        SQLite::Statement sum(
            database, "INSERT INTO chunk_sum (data, place, first_row, sha256) VALUES (?, ?, ?, ?)");
        while (chunks.executeStep()) {
            for (int i = 0; i < 3; ++i)
                sum.bind(i + 1, chunks.getColumn(i).getInt64());
            const SQLite::Column bytes = chunks.getColumn(3);
            sum.bind(4, sumOfChunk({static_cast<const char*>(bytes.getBlob()),
                                    static_cast<std::size_t>(bytes.getBytes())}));
            sum.exec();
            sum.reset();
        }
    }
    std::vector<std::int64_t> complete;
    {
        SQLite::Statement rows(database, "SELECT id FROM trace_data WHERE state = 'complete'");
        while (rows.executeStep())
            complete.push_back(rows.getColumn(0).getInt64());
    }
    for (const std::int64_t data : complete)
        completeRecording(database, data);
}

} // namespace bothways::storage
