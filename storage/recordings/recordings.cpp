// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: what a study knows of its recordings and how one of them is read share their window.
#include "storage/recordings/recordings.h"
#include "core/recording/unreadable_recording.h"
#include "storage/loggers/trace_report.h"
#include "storage/recordings/recording_check.h"
#include "storage/recordings/run_traces.h"
#include "storage/recordings/trace_reader.h"
#include "storage/study/connection.h"
#include "storage/study/study_rows.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace bothways::storage {
namespace {

using core::Done;
using core::Error;
using core::ErrorCode;

std::int64_t number(core::RecordingId id)
{
    return static_cast<std::int64_t>(id);
}

/// Bounds as a ChannelInfo has them: unknown where the window has no chunk of it.
core::ChannelInfo infoOf(const StoredChannel& channel,
                         const std::vector<TraceReader::Bounds>& bounds)
{
    core::ChannelInfo info{channel.name, channel.unit};
    const auto found = std::find_if(bounds.begin(), bounds.end(),
                                    [&](const auto& b) { return b.place == channel.place; });
    if (found == bounds.end() || std::isnan(found->minimum) || std::isnan(found->maximum))
        return info;
    const double a = found->minimum * channel.factor + channel.offset;
    const double b = found->maximum * channel.factor + channel.offset;
    info.minimum = std::min(a, b);
    info.maximum = std::max(a, b);
    return info;
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

Error noRecording(const StudyFile& study, core::RecordingId recording)
{
    return Error{ErrorCode::badInput,
                 core::message("the study has no recording {}"_t, number(recording)),
                 study.path().string()};
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

std::vector<core::RunTrace::TextMark> marksIn(SQLite::Database& database, std::int64_t recording,
                                              const Window& window)
{
    std::vector<core::RunTrace::TextMark> marks;
    SQLite::Statement rows(database, "SELECT at_s, words FROM recording_mark WHERE recording = ? "
                                     "AND at_s BETWEEN ? AND ? ORDER BY place");
    rows.bind(1, recording);
    rows.bind(2, window.from_s);
    rows.bind(3, window.to_s);
    while (rows.executeStep())
        marks.push_back(
            {rows.getColumn(0).getDouble() - window.zero_s, rows.getColumn(1).getString()});
    return marks;
}

/// What a RunTrace throws.
core::UnreadableRecording unreadable(Error error, int run)
{
    if (run != 0 && error.code != ErrorCode::stopped)
        error.where.run = run;
    return core::UnreadableRecording(std::move(error));
}

/// A window on a recording in the study file.
class StoredTrace final : public core::RunTrace {
public:
    /// @param run  its number, for errors; 0: none
    static Result<std::unique_ptr<core::RunTrace>>
    open(const StudyFile::Private& study, std::int64_t recording, const Window& window, int run = 0,
         std::shared_ptr<CheckedRecordings> checked = nullptr, std::stop_token stop = {})
    {
        using Pointer = std::unique_ptr<core::RunTrace>;
        return study.guarded<Pointer>([&]() -> Result<Pointer> {
            auto trace = std::unique_ptr<StoredTrace>(new StoredTrace(
                study, recording, window, run, std::move(checked), std::move(stop)));
            trace->m_stored = channelsOf(*study.database, recording);
            const auto bounds = trace->m_reader.bounds();
            if (!bounds)
                return bounds.error();
            for (const StoredChannel& channel : trace->m_stored)
                trace->m_channels.push_back(infoOf(channel, bounds.value()));
            trace->m_marks = marksIn(*study.database, recording, window);
            return Pointer(std::move(trace));
        });
    }

    const std::vector<core::ChannelInfo>& channels() const override { return m_channels; }
    const std::vector<TextMark>& marks() const override { return m_marks; }

    std::shared_ptr<const core::Samples> samples(std::string_view channel) const override
    {
        for (const StoredChannel& stored : m_stored) {
            if (stored.name != channel)
                continue;
            auto samples = m_reader.samples(stored);
            if (!samples)
                throw unreadable(samples.error(), m_run);
            if (samples.value().size() == 0)
                return nullptr;
            return std::make_shared<const core::Samples>(std::move(samples).take());
        }
        return nullptr;
    }

    double last_s() const override
    {
        const auto times = m_reader.times();
        if (!times)
            throw unreadable(times.error(), m_run);
        return times.value().empty() ? std::nan("") : times.value().back();
    }

private:
    StoredTrace(const StudyFile::Private& study, std::int64_t recording, const Window& window,
                int run, std::shared_ptr<CheckedRecordings> checked, std::stop_token stop)
        : m_reader(study, recording, window, std::move(checked), std::move(stop)), m_run(run)
    {
    }
    mutable TraceReader m_reader; ///< remembers the times that it read
    int m_run;
    std::vector<StoredChannel> m_stored;
    std::vector<core::ChannelInfo> m_channels;
    std::vector<TextMark> m_marks;
};

/// From the end of the run before to the start of the run after, of the same recording.
struct Assigned {
    std::int64_t recording = 0;
    Window window;
};

std::optional<Assigned> assignedTo(SQLite::Database& database, core::RunId run)
{
    SQLite::Statement mine(database, "SELECT recording, offset_s FROM run_trace WHERE run = ?");
    mine.bind(1, static_cast<std::int64_t>(run));
    if (!mine.executeStep())
        return std::nullopt;
    Assigned assigned{mine.getColumn(0).getInt64(), {}};
    assigned.window.zero_s = mine.getColumn(1).getDouble();
    SQLite::Statement others(
        database, "SELECT offset_s, coalesce(duration_s, 3600.0 * distance_km / speed_kmh, 0) "
                  "FROM run_trace JOIN run ON run.id = run_trace.run "
                  "WHERE recording = ? AND offset_s <> ?");
    others.bind(1, assigned.recording);
    others.bind(2, assigned.window.zero_s);
    while (others.executeStep()) {
        const double start = others.getColumn(0).getDouble();
        const double end = start + others.getColumn(1).getDouble();
        if (start > assigned.window.zero_s)
            assigned.window.to_s = std::min(assigned.window.to_s, start);
        else
            assigned.window.from_s =
                std::max(assigned.window.from_s, std::min(end, assigned.window.zero_s));
    }
    return assigned;
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

Result<std::vector<ChannelOutline>> readOutline(const StudyFile& study, core::RecordingId recording,
                                                std::string_view channel)
{
    using List = std::vector<ChannelOutline>;
    const auto found = findChannel(study, recording, channel);
    if (!found)
        return found.error();
    return study.database().guarded<List>([&]() -> Result<List> {
        SQLite::Statement rows(
            *study.database().database,
            "SELECT t.minimum, t.maximum, c.minimum, c.maximum FROM chunk AS c JOIN chunk AS t "
            "ON t.data = c.data AND t.place = 0 AND t.first_row = c.first_row "
            "WHERE c.data = ? AND c.place = ? AND c.minimum IS NOT NULL ORDER BY c.first_row");
        checkChunkLines(*study.database().database, number(recording));
        rows.bind(1, number(recording));
        rows.bind(2, found.value().place);
        List list;
        while (rows.executeStep()) {
            const core::ChannelInfo info =
                infoOf(found.value(), {{found.value().place, rows.getColumn(2).getDouble(),
                                        rows.getColumn(3).getDouble()}});
            list.push_back({rows.getColumn(0).getDouble(), rows.getColumn(1).getDouble(),
                            info.minimum, info.maximum});
        }
        return list;
    });
}

Result<std::vector<core::RunTrace::TextMark>> readMarks(const StudyFile& study,
                                                        core::RecordingId recording)
{
    using List = std::vector<core::RunTrace::TextMark>;
    return study.database().guarded<List>([&]() -> Result<List> {
        return marksIn(*study.database().database, number(recording), {});
    });
}

Result<std::unique_ptr<core::RunTrace>> openRecording(const StudyFile& study,
                                                      core::RecordingId recording)
{
    auto trace = StoredTrace::open(study.database(), number(recording), {});
    if (trace && trace.value()->channels().empty())
        return noRecording(study, recording);
    return trace;
}

Result<std::unique_ptr<core::RunTrace>> openPart(const StudyFile& study,
                                                 core::RecordingId recording, double zero_s,
                                                 double from_s, double to_s)
{
    return StoredTrace::open(study.database(), number(recording), {from_s, to_s, zero_s});
}

Outcome assignTrace(StudyFile& study, core::RunId run, core::RecordingId recording, double offset_s)
{
    if (!std::isfinite(offset_s))
        return Error{ErrorCode::wrongUse, "expected the run's start as a number of seconds"_t, {}};
    StudyFile::Private& d = study.database();
    HistoryDetail detail{"assign"};
    return d.change("assign_trace", detail, [&](SQLite::Database& database) -> Outcome {
        SQLite::Statement known(database, "SELECT run FROM run WHERE id = ?");
        known.bind(1, static_cast<std::int64_t>(run));
        if (!known.executeStep())
            return d.error(ErrorCode::wrongUse, "the study has no such run"_t);
        SQLite::Statement name(database, "SELECT name FROM recording WHERE id = ? AND id IN "
                                         "(SELECT id FROM trace_data)");
        name.bind(1, number(recording));
        if (!name.executeStep())
            return noRecording(study, recording);
        detail.values = {known.getColumn(0).getInt64(), name.getColumn(0).getString(),
                         fmt::format("{:.3f}", offset_s)};
        assignRunTrace(database, run, recording, offset_s);
        return Done{};
    });
}

Outcome unassignTrace(StudyFile& study, core::RunId run)
{
    StudyFile::Private& d = study.database();
    HistoryDetail detail{"runs"};
    return d.change("unassign_trace", detail, [&](SQLite::Database& database) -> Outcome {
        SQLite::Statement known(database, "SELECT run FROM run WHERE id = ?");
        known.bind(1, static_cast<std::int64_t>(run));
        if (known.executeStep())
            detail.values = {known.getColumn(0).getInt64()};
        SQLite::Statement row(database, "DELETE FROM run_trace WHERE run = ?");
        row.bind(1, static_cast<std::int64_t>(run));
        if (row.exec() == 0)
            return d.error(ErrorCode::wrongUse, "the run has no trace"_t);
        return Done{};
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

core::TraceProvider tracesOf(const StudyFile& study, std::stop_token stop)
{
    auto checked = std::make_shared<CheckedRecordings>();
    return [&study, checked,
            stop = std::move(stop)](const core::Run& run) -> std::unique_ptr<core::RunTrace> {
        const StudyFile::Private& d = study.database();
        const auto assigned = d.guarded<std::optional<Assigned>>(
            [&]() -> Result<std::optional<Assigned>> { return assignedTo(*d.database, run.id); });
        if (!assigned)
            throw unreadable(assigned.error(), run.number);
        if (!assigned.value())
            return nullptr;
        auto trace = StoredTrace::open(d, assigned.value()->recording, assigned.value()->window,
                                       run.number, checked, stop);
        if (!trace)
            throw unreadable(trace.error(), run.number);
        if (trace.value()->channels().empty()) // its data were compacted away
            return nullptr;
        return std::move(trace).take();
    };
}

} // namespace bothways::storage
