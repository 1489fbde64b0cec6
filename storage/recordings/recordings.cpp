// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/recordings.h"

#include "storage/recordings/stored_parts.h"
#include "storage/recordings/trace_reader.h"
#include "storage/study/connection.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>

#include <algorithm>

namespace bothways::storage {
namespace {

using core::Done;
using core::Error;
using core::ErrorCode;

std::int64_t number(core::RecordingId id)
{
    return static_cast<std::int64_t>(id);
}

std::optional<core::Instant> firstOf(const SQLite::Column& us, const SQLite::Column& offset)
{
    if (us.isNull())
        return std::nullopt;
    core::Instant first{us.getInt64(), std::nullopt};
    if (!offset.isNull())
        first.utc_offset_min = offset.getInt();
    return first;
}

Result<StoredChannel> findChannel(const StudyFile& study, core::RecordingId recording,
                                  std::string_view name)
{
    return study.database().guarded<StoredChannel>([&]() -> Result<StoredChannel> {
        const auto channels = channelsOf(*study.database().database, number(recording));
        if (channels.empty())
            return noRecording(study, recording);
        for (const StoredChannel& channel : channels)
            if (channel.name == name)
                return channel;
        return Error{ErrorCode::badInput,
                     core::message("recording {} has no channel '{}'"_t, number(recording), name),
                     study.path().string()};
    });
}

} // namespace

Result<std::vector<RecordingInfo>> recordings(const StudyFile& study)
{
    using List = std::vector<RecordingInfo>;
    const StudyFile::Private& d = study.database();
    return d.guarded<List>([&]() -> Result<List> {
        const SQLite::Transaction oneState(*d.database);
        List list;
        SQLite::Statement rows(
            *d.database,
            "SELECT id, name, clock_start_us, utc_offset_min, from_s, to_s, rows, "
            "(SELECT total(length(bytes)) FROM chunk WHERE data = recording.id) FROM recording "
            "WHERE id IN (SELECT id FROM trace_data) ORDER BY id");
        while (rows.executeStep()) {
            RecordingInfo info;
            info.id = core::RecordingId{rows.getColumn(0).getInt64()};
            info.name = rows.getColumn(1).getString();
            info.first = firstOf(rows.getColumn(2), rows.getColumn(3));
            info.from_s = rows.getColumn(4).getDouble();
            info.to_s = rows.getColumn(5).getDouble();
            info.length_s = info.to_s - info.from_s;
            info.rows = rows.getColumn(6).getInt64();
            info.bytes = static_cast<std::int64_t>(rows.getColumn(7).getDouble());
            const auto bounds = TraceReader(d, number(info.id), {}).bounds();
            if (!bounds)
                return bounds.error();
            for (const StoredChannel& channel : channelsOf(*d.database, number(info.id))) {
                info.channels.push_back(infoOf(channel, bounds.value()));
                info.samples += channel.samples;
            }
            list.push_back(std::move(info));
        }
        return list;
    });
}

Result<core::Samples> readChannel(const StudyFile& study, core::RecordingId recording,
                                  std::string_view channel)
{
    constexpr double kEver = std::numeric_limits<double>::infinity();
    return readChannel(study, recording, channel, -kEver, kEver);
}

Result<core::Samples> readChannel(const StudyFile& study, core::RecordingId recording,
                                  std::string_view channel, double from_s, double to_s)
{
    const auto found = findChannel(study, recording, channel);
    if (!found)
        return found.error();
    return TraceReader(study.database(), number(recording), {from_s, to_s, 0.0})
        .samples(found.value());
}

Result<std::vector<core::RunTrace::TextMark>> readMarks(const StudyFile& study,
                                                        core::RecordingId recording)
{
    using List = std::vector<core::RunTrace::TextMark>;
    return study.database().guarded<List>([&]() -> Result<List> {
        return marksIn(*study.database().database, number(recording), {});
    });
}

Result<std::vector<RunTraceInfo>> assignedTraces(const StudyFile& study)
{
    using List = std::vector<RunTraceInfo>;
    return study.database().guarded<List>([&]() -> Result<List> {
        List list;
        SQLite::Statement rows(*study.database().database,
                               "SELECT run, recording, offset_s FROM run_trace WHERE recording IN "
                               "(SELECT id FROM trace_data) ORDER BY recording, offset_s");
        while (rows.executeStep())
            list.push_back({core::RunId{rows.getColumn(0).getInt64()},
                            core::RecordingId{rows.getColumn(1).getInt64()},
                            rows.getColumn(2).getDouble()});
        return list;
    });
}

Outcome dropRecording(StudyFile& study, core::RecordingId recording)
{
    HistoryDetail detail{"words"};
    return study.database().change(
        "drop_recording", detail, [&](SQLite::Database& database) -> Outcome {
            SQLite::Statement name(database, "SELECT name FROM recording WHERE id = ?");
            name.bind(1, number(recording));
            if (!name.executeStep())
                return noRecording(study, recording);
            detail.values = {name.getColumn(0).getString()};
            for (const char* sql : {"DELETE FROM run_trace WHERE recording = ?",
                                    "DELETE FROM recording_mark WHERE recording = ?",
                                    "DELETE FROM channel WHERE recording = ?",
                                    "DELETE FROM recording WHERE id = ?"}) {
                SQLite::Statement row(database, sql);
                row.bind(1, number(recording));
                row.exec();
            }
            return Done{};
        });
}

Result<std::int64_t> compact(StudyFile& study)
{
    StudyFile::Private& d = study.database();
    std::error_code problem;
    const auto sizeNow = [&] {
        const auto size = std::filesystem::file_size(d.file, problem);
        return problem ? 0 : static_cast<std::int64_t>(size);
    };
    const std::int64_t before = sizeNow();
    const Outcome removed = d.inTransaction([&](SQLite::Database& database) -> Outcome {
        constexpr const char* kOrphans =
            "SELECT id FROM trace_data WHERE state = 'complete' AND id NOT IN "
            "(SELECT id FROM recording)";
        database.exec(fmt::format("DELETE FROM chunk_sum WHERE data IN ({})", kOrphans));
        database.exec(fmt::format("DELETE FROM chunk WHERE data IN ({})", kOrphans));
        database.exec(fmt::format("DELETE FROM trace_data WHERE id IN ({})", kOrphans));
        return Done{};
    });
    if (!removed)
        return removed.error();
    return d.guarded<std::int64_t>([&]() -> Result<std::int64_t> {
        rewriteWithoutGaps(*d.database);
        return std::max<std::int64_t>(before - sizeNow(), 0);
    });
}

} // namespace bothways::storage
