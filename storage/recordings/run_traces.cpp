// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/run_traces.h"

#include "core/recording/unreadable_recording.h"
#include "storage/recordings/recording_check.h"
#include "storage/recordings/recordings.h"
#include "storage/recordings/stored_parts.h"
#include "storage/recordings/trace_reader.h"
#include "storage/study/study_database.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <cmath>

// A recording of a study, or a run's part of it, as a RunTrace.
namespace bothways::storage {

using core::Error;
using core::ErrorCode;

namespace {

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

Result<std::unique_ptr<core::RunTrace>> openRecording(const StudyFile& study,
                                                      core::RecordingId recording)
{
    auto trace = StoredTrace::open(study.database(), static_cast<std::int64_t>(recording), {});
    if (trace && trace.value()->channels().empty())
        return noRecording(study, recording);
    return trace;
}

Result<std::unique_ptr<core::RunTrace>> openPart(const StudyFile& study,
                                                 core::RecordingId recording, double zero_s,
                                                 double from_s, double to_s)
{
    return StoredTrace::open(study.database(), static_cast<std::int64_t>(recording),
                             {from_s, to_s, zero_s});
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
