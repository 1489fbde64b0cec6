// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: what is written, and what is known once it is, belong together.
#include "storage/live/live_recorder.h"

#include "storage/live/open_group.h"
#include "storage/recordings/chunk_rows.h"
#include "storage/study/history_detail.h"
#include "storage/study/query.h"
#include "storage/study/recording_sums.h"
#include "storage/study/study_database.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <deque>
#include <map>
#include <utility>

namespace bothways::storage {
namespace {

using core::Done;

/// While nothing can be written (a full disk), so many readings are kept, some 200 MB; then the
/// newest are left out.
constexpr std::size_t kMostWaiting = std::size_t{1} << 23;

std::int64_t inMicroseconds(double time_s)
{
    return std::llround(time_s * 1e6);
}

} // namespace

struct LiveRecorder::Private {
    /// What the channel is called in the study, and what its numbers mean.
    struct Column {
        RigChannel channel;
        std::int64_t samples = 0; ///< in rows of groups
        bool inserted = false;
    };

    struct Mark {
        double at_s = 0.0;
        std::string words;
    };

    StudyFile* study = nullptr;
    LiveBeginning what;
    std::vector<Column> columns;
    std::vector<Reading> pending; ///< not yet rows
    bool inOrder = true;          ///< `pending`
    std::deque<OpenGroup> groups; ///< all but the last are full and wait for the disk
    std::vector<Mark> marks;
    std::int64_t marksWritten = 0;
    std::int64_t data = 0;                         ///< of trace_data; 0: not begun
    std::optional<std::int64_t> first_us, last_us; ///< of rows
    std::int64_t samples = 0, waiting = 0, late = 0;
    std::size_t bytes = 0, closedBytes = 0;
    ChunkEncoder encoder;

    /// What a commit writes, and what is true once it is done.
    struct Attempt {
        std::int64_t data = 0, rows = 0;
        std::size_t marks = 0;
        std::vector<std::vector<Piece>> pieces; ///< by group
        std::vector<bool> inserted;             ///< by column
    };
    /// A commit that failed at its very end may be in the file all the same: which of both the next
    /// one finds out before it writes.
    std::optional<Attempt> unsure;

    [[nodiscard]] bool wasDone(SQLite::Database& database, const Attempt& attempt) const;
    void takeOver(Attempt&& attempt);
    void makeRows(std::int64_t until_us);
    void addRow(std::vector<Reading>& row, std::int64_t time_us);
    [[nodiscard]] Outcome write(bool whole);
    [[nodiscard]] std::int64_t begin(SQLite::Database& database) const;
    void remove(SQLite::Database& database, std::int64_t of, std::int64_t firstRow) const;
    void writeGroup(SQLite::Database& database, ChunkRows& rows, std::int64_t of,
                    const OpenGroup& group, std::vector<Piece>& pieces);
    void writeColumns(SQLite::Database& database, Attempt& attempt) const;
    void writeMarks(SQLite::Database& database, std::int64_t of) const;
    void writeSpan(SQLite::Database& database, const Attempt& attempt) const;
};

LiveRecorder::LiveRecorder(std::unique_ptr<Private> p) : d(std::move(p)) {}
LiveRecorder::LiveRecorder(LiveRecorder&&) noexcept = default;
LiveRecorder::~LiveRecorder() = default;

Result<LiveRecorder> LiveRecorder::begin(StudyFile& study, const LiveBeginning& what)
{
    if (study.database().readOnly)
        return study.database().error(
            core::ErrorCode::studyFile,
            "is open for reading only; nothing can be recorded into it"_t);
    auto p = std::make_unique<Private>();
    p->study = &study;
    p->what = what;
    p->groups.emplace_back(0);
    return LiveRecorder(std::move(p));
}

void LiveRecorder::setChannels(const std::vector<ReadChannel>& channels)
{
    for (std::size_t i = d->columns.size(); i < channels.size(); ++i) {
        Private::Column column{channels[i].channel, 0, false};
        std::string& name = column.channel.name;
        if (name.empty())
            name = column.channel.source.empty() ? "channel" : column.channel.source;
        const std::string wanted = name;
        const auto isTaken = [&] {
            return std::any_of(
                d->columns.begin(), d->columns.end(),
                [&](const Private::Column& other) { return other.channel.name == name; });
        };
        for (int number = 2; isTaken(); ++number)
            name = fmt::format("{}_{}", wanted, number);
        d->columns.push_back(std::move(column));
    }
}

void LiveRecorder::put(std::span<const Reading> readings)
{
    for (const Reading& reading : readings) {
        if (reading.channel >= d->columns.size() || !std::isfinite(reading.time_s) ||
            d->pending.size() >= kMostWaiting || d->waiting >= std::int64_t{kMostWaiting}) {
            ++d->late;
            continue;
        }
        d->inOrder =
            d->inOrder && (d->pending.empty() || reading.time_s >= d->pending.back().time_s);
        d->pending.push_back(reading);
        ++d->samples;
        ++d->waiting;
    }
}

void LiveRecorder::mark(double at_s, std::string words)
{
    if (!words.empty() && std::isfinite(at_s))
        d->marks.push_back({at_s, std::move(words)});
}

void LiveRecorder::Private::addRow(std::vector<Reading>& row, std::int64_t time_us)
{
    if (row.empty())
        return;
    if (last_us && time_us <= *last_us) {
        late += static_cast<std::int64_t>(row.size());
        waiting -= static_cast<std::int64_t>(row.size());
        row.clear();
        return;
    }
    if (groups.back().isFull())
        groups.emplace_back(groups.back().firstRow() + groups.back().rows());
    groups.back().add(time_us, row);
    for (const Reading& reading : row)
        ++columns[reading.channel].samples;
    first_us = first_us.value_or(time_us);
    last_us = time_us;
    row.clear();
}

/// Readings of one microsecond are a row; two of one channel in it cannot be, so the second takes
/// the next that is free.
void LiveRecorder::Private::makeRows(std::int64_t until_us)
{
    if (!inOrder)
        std::stable_sort(pending.begin(), pending.end(),
                         [](const Reading& a, const Reading& b) { return a.time_s < b.time_s; });
    inOrder = true;
    std::vector<Reading> row;
    std::int64_t time_us = 0;
    std::size_t taken = 0;
    const auto isIn = [&](std::uint32_t channel) {
        return std::any_of(row.begin(), row.end(),
                           [&](const Reading& reading) { return reading.channel == channel; });
    };
    for (; taken < pending.size(); ++taken) {
        const Reading& reading = pending[taken];
        const std::int64_t own_us = inMicroseconds(reading.time_s);
        if (own_us >= until_us)
            break;
        if (!row.empty() && own_us <= time_us && isIn(reading.channel)) {
            const std::int64_t next_us = time_us + 1;
            addRow(row, time_us);
            time_us = next_us;
        } else if (row.empty() || own_us > time_us) {
            addRow(row, time_us);
            time_us = own_us;
        }
        row.push_back(reading);
    }
    addRow(row, time_us);
    pending.erase(pending.begin(), pending.begin() + static_cast<std::ptrdiff_t>(taken));
}

std::int64_t LiveRecorder::Private::begin(SQLite::Database& database) const
{
    Query(database, "INSERT INTO trace_data (state) VALUES ('complete')").step();
    const std::int64_t id = database.getLastInsertRowid();
    Query row(database, "INSERT INTO recording (id, name, format, clock_start_us, utc_offset_min, "
                        "from_s, to_s, rows) VALUES (?, ?, 'csv', ?, ?, 0, 0, 0)");
    row.bind(1, id).bind(2, what.name).bind(3, what.first.us);
    if (what.first.utc_offset_min)
        row.bind(4, std::int64_t{*what.first.utc_offset_min});
    row.step();
    return id;
}

void LiveRecorder::Private::remove(SQLite::Database& database, std::int64_t of,
                                   std::int64_t firstRow) const
{
    for (const char* sql : {"DELETE FROM chunk_sum WHERE data = ? AND place = ? AND first_row = ?",
                            "DELETE FROM chunk WHERE data = ? AND place = ? AND first_row = ?"}) {
        Query gone(database, sql);
        for (std::int64_t place = 0; place <= static_cast<std::int64_t>(columns.size()); ++place) {
            gone.bind(1, of).bind(2, place).bind(3, firstRow).step();
            gone.reset();
        }
    }
}

void LiveRecorder::Private::writeGroup(SQLite::Database& database, ChunkRows& rows, std::int64_t of,
                                       const OpenGroup& group, std::vector<Piece>& pieces)
{
    const auto stays = [](const std::vector<Piece>& list, const Piece& piece) {
        return std::find_if(list.begin(), list.end(),
                            [&](const Piece& other) { return other.isSame(piece); });
    };
    for (const Piece& piece : group.stored())
        if (stays(pieces, piece) == pieces.end())
            remove(database, of, group.firstRow() + piece.begin);
    for (Piece& piece : pieces) {
        if (const auto same = stays(group.stored(), piece); same != group.stored().end()) {
            piece.bytes = same->bytes;
            continue;
        }
        const std::int64_t first = group.firstRow() + piece.begin;
        piece.bytes = rows.insert(0, first, group.encodeTimes(encoder, piece));
        for (std::size_t i = 0; i < group.channels(); ++i)
            if (group.hasSample(i, piece))
                piece.bytes += rows.insert(static_cast<std::int64_t>(i) + 1, first,
                                           group.encode(encoder, i, piece));
    }
}

void LiveRecorder::Private::writeColumns(SQLite::Database& database, Attempt& attempt) const
{
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const Column& column = columns[i];
        attempt.inserted[i] = column.inserted || column.samples > 0;
        if (column.samples == 0)
            continue;
        Query row(database,
                  column.inserted
                      ? "UPDATE channel SET samples = ? WHERE recording = ? AND place = ?"
                      : "INSERT INTO channel (samples, recording, place, name, unit, factor, "
                        "\"offset\") VALUES (?, ?, ?, ?, ?, ?, ?)");
        row.bind(1, column.samples).bind(2, attempt.data).bind(3, static_cast<std::int64_t>(i) + 1);
        if (!column.inserted)
            row.bind(4, column.channel.name)
                .bind(5, column.channel.unit)
                .bindReal(6, column.channel.factor)
                .bindReal(7, column.channel.offset);
        row.step();
    }
}

void LiveRecorder::Private::writeMarks(SQLite::Database& database, std::int64_t of) const
{
    std::int64_t place = marksWritten;
    for (const Mark& mark : marks) {
        Query row(database, "INSERT INTO recording_mark (recording, place, at_s, words) VALUES "
                            "(?, ?, ?, ?)");
        row.bind(1, of).bind(2, place++).bindReal(3, mark.at_s).bind(4, mark.words);
        row.step();
    }
}

void LiveRecorder::Private::writeSpan(SQLite::Database& database, const Attempt& attempt) const
{
    const double scale = 1e6; // as a decimal of six places is divided, to the last bit
    Query row(database, "UPDATE recording SET from_s = ?, to_s = ?, rows = ? WHERE id = ?");
    row.bindReal(1, static_cast<double>(*first_us) / scale)
        .bindReal(2, static_cast<double>(*last_us) / scale)
        .bind(3, attempt.rows)
        .bind(4, attempt.data);
    row.step();
}

bool LiveRecorder::Private::wasDone(SQLite::Database& database, const Attempt& attempt) const
{
    Query recording(database, "SELECT 1 FROM recording WHERE id = ? AND rows = ?");
    if (!recording.bind(1, attempt.data).bind(2, attempt.rows).step())
        return false;
    Query chunk(database, "SELECT 1 FROM chunk WHERE data = ? AND place = 0 AND first_row = ? AND "
                          "rows = ?");
    for (std::size_t i = 0; i < attempt.pieces.size(); ++i)
        for (const Piece& piece : attempt.pieces[i]) {
            chunk.reset();
            chunk.bind(1, attempt.data)
                .bind(2, groups[i].firstRow() + piece.begin)
                .bind(3, piece.end - piece.begin);
            if (!chunk.step())
                return false;
        }
    if (attempt.marks == 0)
        return true;
    Query mark(database, "SELECT 1 FROM recording_mark WHERE recording = ? AND place = ?");
    mark.bind(1, attempt.data).bind(2, marksWritten + static_cast<std::int64_t>(attempt.marks) - 1);
    return mark.step();
}

void LiveRecorder::Private::takeOver(Attempt&& attempt)
{
    data = attempt.data;
    for (std::size_t i = 0; i < attempt.inserted.size(); ++i)
        columns[i].inserted = attempt.inserted[i];
    for (std::size_t i = 0; i < attempt.pieces.size(); ++i)
        groups[i].setStored(std::move(attempt.pieces[i]));
    marksWritten += static_cast<std::int64_t>(attempt.marks);
    marks.erase(marks.begin(), marks.begin() + static_cast<std::ptrdiff_t>(attempt.marks));
    const auto bytesOf = [](const OpenGroup& group) {
        std::size_t sum = 0;
        for (const Piece& piece : group.stored())
            sum += piece.bytes;
        return sum;
    };
    while (groups.size() > 1 && groups.front().storedRows() == groups.front().rows()) {
        closedBytes += bytesOf(groups.front());
        groups.pop_front();
    }
    bytes = closedBytes;
    for (const OpenGroup& group : groups)
        bytes += bytesOf(group);
}

Outcome LiveRecorder::Private::write(bool whole)
{
    if (!last_us)
        return Done{}; // a recording begins with its first row
    StudyFile::Private& file = study->database();
    Attempt attempt;
    const Outcome done = file.inTransaction([&](SQLite::Database& database) -> Outcome {
        if (unsure && wasDone(database, *unsure))
            takeOver(std::move(*unsure));
        unsure.reset();
        const bool begins = data == 0;
        attempt.data = begins ? begin(database) : data;
        if (Query there(database, "SELECT 1 FROM recording WHERE id = ?");
            !there.bind(1, attempt.data).step())
            return file.error(core::ErrorCode::wrongUse,
                              "has lost the recording that is being made: it was taken out"_t);
        attempt.rows = groups.back().firstRow() + groups.back().rows();
        attempt.marks = marks.size();
        attempt.inserted.resize(columns.size());
        ChunkRows rows(database, attempt.data);
        for (const OpenGroup& group : groups) {
            attempt.pieces.push_back(group.wanted(whole));
            writeGroup(database, rows, attempt.data, group, attempt.pieces.back());
        }
        writeColumns(database, attempt);
        writeMarks(database, attempt.data);
        writeSpan(database, attempt);
        completeRecording(database, attempt.data);
        if (!begins)
            return Done{};
        return study->note("record",
                           HistoryDetail{"record", {what.name, attempt.data, what.rig}}.written());
    });
    if (!done) {
        if (attempt.pieces.size() == groups.size())
            unsure = std::move(attempt);
        return done;
    }
    takeOver(std::move(attempt));
    waiting = static_cast<std::int64_t>(pending.size());
    return Done{};
}

Outcome LiveRecorder::commit(double until_s)
{
    d->makeRows(inMicroseconds(until_s));
    return d->write(false);
}

Outcome LiveRecorder::stop(const std::vector<LiveCounts>& counts)
{
    d->makeRows(std::numeric_limits<std::int64_t>::max());
    if (const Outcome written = d->write(true); !written)
        return written;
    if (d->data == 0)
        return Done{};
    std::int64_t rows = d->groups.back().firstRow() + d->groups.back().rows();
    HistoryValue::List told;
    for (const LiveCounts& one : counts) {
        HistoryValue::List parts = {one.instrument, one.lines,      one.garbage_lines,
                                    one.lost_bytes, one.reconnects, one.silences};
        if (one.clock_drift_s)
            parts.emplace_back(std::llround(*one.clock_drift_s * 1e3)); // ms
        told.emplace_back(std::move(parts));
    }
    const auto channels = std::count_if(d->columns.begin(), d->columns.end(),
                                        [](const Private::Column& c) { return c.inserted; });
    const HistoryDetail detail{"record_end",
                               {d->what.name, d->data, rows, channels, 0, std::move(told)}};
    return d->study->note("record_end", detail.written());
}

std::optional<core::RecordingId> LiveRecorder::recording() const
{
    if (d->data == 0)
        return std::nullopt;
    return core::RecordingId{d->data};
}

std::int64_t LiveRecorder::samples() const
{
    return d->samples;
}

std::int64_t LiveRecorder::waiting() const
{
    return d->waiting;
}

std::int64_t LiveRecorder::late() const
{
    return d->late;
}

std::int64_t LiveRecorder::bytes() const
{
    return static_cast<std::int64_t>(d->bytes);
}

} // namespace bothways::storage
