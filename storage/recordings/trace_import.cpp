// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/trace_import.h"
#include "core/study/clock.h"
#include "storage/loggers/channel_mapping.h"
#include "storage/loggers/trace_open.h"
#include "storage/loggers/trace_report.h"
#include "storage/recordings/read_recording.h"
#include "storage/recordings/trace_store.h"

#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>

#include <algorithm>

namespace bothways::storage {
namespace {

using core::Done;
using core::Error;
using core::ErrorCode;

const core::Run* runOf(const core::Study& study, int number)
{
    const auto run = std::find_if(study.runs.begin(), study.runs.end(),
                                  [&](const core::Run& r) { return r.number == number; });
    return run == study.runs.end() ? nullptr : &*run;
}

HistoryDetail forHistory(const TraceReport& report, const std::string& name,
                         const std::optional<int>& run)
{
    return {"recording", {name, report.rows, report.channels.size(), run.value_or(0)}};
}

/// Where the run that the recording belongs to starts in it.
Outcome placeRun(FinishedRecording& recording, TraceReport& report, const core::Run& run,
                 const core::ClockOptions& clock, const std::string& name)
{
    const auto match =
        core::matchClocks({report.first, report.from_s, report.to_s}, {&run, 1}, clock);
    if (!match) {
        Error error = match.error();
        error.where = name;
        return error;
    }
    recording.run = run.id;
    recording.offset_s = match.value().front().offset_s;
    report.offset_s = recording.offset_s;
    if (const auto offset = match.value().front().guessed_offset_min)
        report.clock_note =
            core::message("local time taken to be UTC{}"_t,
                          fmt::format("{}{:02}:{:02}", *offset < 0 ? '-' : '+',
                                      std::abs(*offset) / 60, std::abs(*offset) % 60));
    return Done{};
}

/// What was given, else what is kept for this header; empty where neither is.
Result<std::vector<ChannelMapping>> mappingFor(StudyFile::Private& database, const TraceFile& trace,
                                               const TraceImportOptions& options)
{
    if (!options.mapping.empty())
        return options.mapping;
    return database.guarded<std::vector<ChannelMapping>>(
        [&]() -> Result<std::vector<ChannelMapping>> {
            return keptMapping(*database.database, trace.headerKey());
        });
}

/// Without its channels and its place in a run.
FinishedRecording finished(const TraceReport& report, const std::string& name,
                           const TraceImportOptions& options)
{
    FinishedRecording recording;
    recording.name = name;
    recording.format = report.format;
    recording.first = report.first;
    recording.from_s = report.from_s;
    recording.to_s = report.to_s;
    recording.rows = report.rows;
    recording.cuts = options.cuts;
    recording.detail = forHistory(report, name, options.run);
    return recording;
}

} // namespace

Result<ReadRecording> ReadRecording::read(StudyFile& study, const std::filesystem::path& file,
                                          const core::Run* run, const std::string& studyDate,
                                          const TraceImportOptions& options)
{
    StudyFile::Private& database = study.database();
    auto opened = openTrace(file);
    if (!opened)
        return opened.error();
    TraceFile& trace = *opened.value();
    const auto mapping = mappingFor(database, trace, options);
    if (!mapping)
        return mapping.error();
    if (const Outcome planned = trace.plan(mapping.value()); !planned)
        return planned.error();

    auto writer = TraceWriter::begin(database);
    if (!writer)
        return writer.error();
    const auto read =
        trace.read([&](RowGroup&& group) { return writer.value().put(std::move(group)); },
                   options.progress, options.stop);
    if (!read)
        return read.error();
    if (const Outcome ended = writer.value().endOfGroups(); !ended)
        return ended.error();
    const std::string date = options.date.empty() ? studyDate : options.date;
    auto described = describeTrace(trace, read.value(), date);
    if (!described)
        return described.error();
    TraceReport report = std::move(described.value().report);
    report.mapping_kept = options.mapping.empty() && !mapping.value().empty();
    FinishedRecording recording = finished(report, file.filename().string(), options);
    recording.channels = std::move(described.value().channels);
    if (run)
        if (const Outcome placed = placeRun(recording, report, *run, options.clock, file.string());
            !placed)
            return placed.error();
    return ReadRecording{std::move(writer).take(), std::move(recording), std::move(report)};
}

Outcome ReadRecording::finish(const std::optional<core::RunId>& run)
{
    if (run)
        recording.run = run;
    const auto id = writer.finish(recording);
    if (!id)
        return id.error();
    report.recording = id.value();
    return Done{};
}

Result<TraceReport> importTrace(StudyFile& study, const std::filesystem::path& file,
                                const TraceImportOptions& options)
{
    StudyFile::Private& database = study.database();
    const auto before = study.study();
    if (!before)
        return before.error();
    const core::Run* run = nullptr;
    if (options.run && !(run = runOf(before.value(), *options.run)))
        return Error{ErrorCode::badInput, core::message("the study has no run {}"_t, *options.run),
                     study.path().string()};
    auto recording = ReadRecording::read(study, file, run, before.value().properties.date, options);
    if (!recording)
        return recording.error();
    TraceReport& report = recording.value().report;
    const Outcome done = database.inTransaction([&](SQLite::Database&) -> Outcome {
        if (Outcome finished = recording.value().finish(); !finished)
            return finished;
        if (options.mapping.empty() || report.mapping_key.empty())
            return Done{};
        return keepMapping(database, report.mapping_key, options.mapping);
    });
    if (!done)
        return done.error();
    recording.value().writer.keep();
    if (options.progress)
        options.progress(1.0, 0.0);
    return report;
}

Result<TracePreview> previewTrace(const std::filesystem::path& file, const StudyFile* study)
{
    auto opened = openTrace(file);
    if (!opened)
        return opened.error();
    TraceFile& trace = *opened.value();
    TracePreview preview = trace.preview();
    std::vector<ChannelMapping> mapping;
    if (study && !trace.headerKey().empty()) {
        StudyFile::Private& database = study->database();
        const auto found = database.guarded<std::vector<ChannelMapping>>(
            [&]() -> Result<std::vector<ChannelMapping>> {
                return keptMapping(*database.database, trace.headerKey());
            });
        if (!found)
            return found.error();
        mapping = found.value();
        preview.mapping_kept = !mapping.empty();
    }
    if (const Outcome planned = trace.plan(mapping); !planned)
        preview.fault = planned.error();
    preview.mapping = trace.mapping(mapping);
    return preview;
}

} // namespace bothways::storage
