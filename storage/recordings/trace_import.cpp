// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/trace_import.h"
#include "core/study/clock.h"
#include "storage/loggers/channel_mapping.h"
#include "storage/loggers/trace_names.h"
#include "storage/loggers/trace_open.h"
#include "storage/loggers/trace_report.h"
#include "storage/recordings/read_recording.h"
#include "storage/recordings/trace_store.h"

#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

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

/// The day of a time of day; empty where it cannot be told.
std::string onlyDay(const core::Study& study)
{
    if (!study.properties.date.empty())
        return study.properties.date;
    std::string day;
    for (const core::Run& run : study.runs) {
        const std::string its = core::formatDate(run.start);
        if (!day.empty() && its != day)
            return {};
        day = its;
    }
    return day;
}

/// Sets the recording's clock right, once it is read.
Outcome setClock(TraceReport& report, const TraceImportOptions& options, const core::Study& study,
                 const std::string& name)
{
    if (!options.start.empty()) {
        if (report.first)
            return Error{ErrorCode::wrongUse,
                         "the recording has a clock of its own, which says when it began; expected "
                         "only by how much it is wrong"_t,
                         name};
        auto start = recordingStart(options.start, study);
        if (!start) {
            Error error = start.error();
            error.where = name;
            return error;
        }
        report.first = start.value();
    }
    if (report.first)
        report.first->us -= std::llround(options.clock.ahead_s * 1e6);
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
                                          const core::Run* run, const core::Study& known,
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
    const std::string date = options.date.empty() ? known.properties.date : options.date;
    auto described = describeTrace(trace, read.value(), date);
    if (!described)
        return described.error();
    TraceReport report = std::move(described.value().report);
    report.mapping_kept = options.mapping.empty() && !mapping.value().empty();
    if (Outcome set = setClock(report, options, known, file.string()); !set)
        return set.error();
    FinishedRecording recording = finished(report, file.filename().string(), options);
    recording.channels = std::move(described.value().channels);
    if (run)
        if (const Outcome placed = placeRun(recording, report, *run,
                                            {0.0, options.clock.utc_offset_min}, file.string());
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
    auto recording = ReadRecording::read(study, file, run, before.value(), options);
    if (!recording)
        return recording.error();
    TraceReport& report = recording.value().report;
    if (!report.first && options.clock.ahead_s != 0.0)
        return Error{ErrorCode::wrongUse,
                     "the recording has no clock that could be wrong; expected when it began"_t,
                     file.string()};
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

Result<core::Instant> recordingStart(const std::string& words, const core::Study& study)
{
    if (const auto time_us = core::parseTimeOfDay_us(words)) {
        const std::string day = onlyDay(study);
        const auto date_us = core::parseDate_us(day);
        if (!date_us)
            return Error{ErrorCode::badInput,
                         core::message("'{}' is a time of day, and the study has no one date; "
                                       "expected date and time, like 2026-05-09 05:40"_t,
                                       words),
                         {}};
        core::Instant start;
        start.us = date_us.value() + time_us.value();
        if (!study.runs.empty()) // by the clock that the runs go by
            start.utc_offset_min = study.runs.front().start.utc_offset_min;
        if (start.utc_offset_min)
            start.us -= std::int64_t{60'000'000} * *start.utc_offset_min;
        return start;
    }
    auto moment = core::parseDateTime(words);
    if (moment)
        return moment;
    return Error{ErrorCode::badInput,
                 core::message("'{}' is no time; expected date and time, like 2026-05-09 05:40, or "
                               "a time of day"_t,
                               words),
                 {}};
}

bool looksLikeRecording(const std::filesystem::path& file)
{
    const auto seen = previewTrace(file);
    if (!seen || seen.value().fault)
        return false;
    const TracePreview& preview = seen.value();
    if (preview.format != "csv") // GPX and NMEA are told by their form
        return true;
    std::size_t numbers = 0, words = 0;
    for (const std::vector<std::string>& row : preview.rows)
        for (std::size_t i = 0; i < std::min(row.size(), preview.columns.size()); ++i)
            if (!row[i].empty() &&
                timeName(preview.columns[i], preview.units[i]) == TimeName::none &&
                plainName(preview.columns[i]) != "mark")
                ++(isNumber(row[i], preview.decimalComma) ? numbers : words);
    constexpr std::size_t kFarMore = 3; // what was not measured is written as a word now and then
    return numbers > kFarMore * words;
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
