// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/sheet_import.h"

#include "storage/loggers/trace_open.h"
#include "storage/recordings/read_recording.h"
#include "storage/recordings/trace_store.h"
#include "storage/sheet/ordinary_sheet.h"

#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <map>

namespace bothways::storage {
namespace {

using core::Done;
using core::Error;
using core::ErrorCode;

/// What can be said before the first recording is read: it is some recording.
Outcome checkFiles(const TraceFiles& files)
{
    for (const auto& [run, file] : files) {
        const auto opened = openTrace(file);
        if (!opened)
            return opened.error();
        if (const Outcome planned = opened.value()->plan({}); !planned)
            return planned;
    }
    return Done{};
}

/// The rows of all recordings, unfinished.
Result<std::vector<ReadRecording>> readAll(StudyFile& study, const core::Study& runs,
                                           const TraceFiles& files, const core::Study& known,
                                           const SheetImportOptions& options)
{
    std::vector<ReadRecording> recordings;
    for (const core::Run& run : runs.runs) {
        if (run.trace.empty())
            continue;
        const std::filesystem::path& file = files.at(run.number);
        const std::string name = file.filename().string();
        if (options.stop.stop_requested())
            return Error{ErrorCode::stopped, "stopped before the end; nothing was imported"_t,
                         name};
        TraceImportOptions each;
        each.run = run.number;
        each.stop = options.stop;
        each.clock.ahead_s = -options.traces.shift_s;
        if (options.progress)
            each.progress = [&](double done, double bytesPerSecond) {
                options.progress(name, done, bytesPerSecond);
            };
        auto one = ReadRecording::read(study, file, &run, known, each);
        if (!one)
            return one.error();
        recordings.push_back(std::move(one).take());
    }
    return recordings;
}

/// Identities of the sheet's runs by their numbers, once they are in the study.
Result<std::map<int, core::RunId>> identities(const StudyFile& study)
{
    return study.database().guarded<std::map<int, core::RunId>>(
        [&]() -> Result<std::map<int, core::RunId>> {
            std::map<int, core::RunId> ids;
            SQLite::Statement rows(*study.database().database, "SELECT run, id FROM run");
            while (rows.executeStep())
                ids.emplace(rows.getColumn(0).getInt(), core::RunId{rows.getColumn(1).getInt64()});
            return ids;
        });
}

/// Runs and recordings, as parts of the caller's transaction.
Outcome takeIn(StudyFile& study, const core::Study& runs, const std::string& sheetName,
               std::vector<ReadRecording>& recordings)
{
    if (Outcome imported = study.importRuns(runs, sheetName); !imported)
        return imported;
    const auto ids = identities(study);
    if (!ids)
        return ids.error();
    auto recording = recordings.begin();
    for (const core::Run& run : runs.runs) {
        if (run.trace.empty())
            continue;
        if (Outcome finished = recording->finish(ids.value().at(run.number)); !finished)
            return finished;
        ++recording;
    }
    return Done{};
}

} // namespace

bool namesRecordings(const core::Study& runs)
{
    return std::any_of(runs.runs.begin(), runs.runs.end(),
                       [](const core::Run& run) { return !run.trace.empty(); });
}

bool isRecordingInstead(const std::filesystem::path& file, std::string_view bytes,
                        const SheetOptions& options)
{
    if (!looksLikeRecording(file))
        return false;
    const auto preview = previewSheet(bytes, file.string(), options, 1);
    if (preview && preview.value().header_found) {
        const auto lacks = [&](const char* column) {
            return std::ranges::find(preview.value().missing, column) !=
                   preview.value().missing.end();
        };
        return lacks("configuration") && lacks("direction");
    }
    return true;
}

Result<std::vector<ImportedRecording>> importSheet(StudyFile& study, const core::Study& runs,
                                                   const std::filesystem::path& sheet,
                                                   const SheetImportOptions& options)
{
    const auto before = study.study();
    if (!before)
        return before.error();
    const std::string name = sheet.filename().string();
    const auto files = traceFiles(runs, sheet, options.traces);
    if (!files)
        return files.error();
    if (const Outcome readable = checkFiles(files.value()); !readable)
        return readable.error();
    auto recordings = readAll(study, runs, files.value(), before.value(), options);
    if (!recordings)
        return recordings.error();
    HistoryDetail detail{"sheet", {name, runs.runs.size()}};
    if (!recordings.value().empty())
        detail.values.emplace_back(recordings.value().size());
    const Outcome done =
        study.database().changeAsOne("import", detail, [&](SQLite::Database&) -> Outcome {
            return takeIn(study, runs, name, recordings.value());
        });
    if (!done)
        return done.error();
    std::vector<ImportedRecording> imported;
    for (ReadRecording& one : recordings.value()) {
        one.writer.keep();
        imported.push_back({one.recording.name, std::move(one.report)});
    }
    return imported;
}

namespace {

// The order of dates is kept as a column without a name.
constexpr const char* kDayFirst = "day-first";
constexpr const char* kMonthFirst = "month-first";

} // namespace

SheetOptions withKeptColumns(const StudyFile& study, std::string_view bytes,
                             const std::string& name, SheetOptions options)
{
    std::vector<ChannelMapping> kept;
    for (const std::string& key : possibleHeaderKeys(bytes, name, options)) {
        auto found = study.database().guarded<std::vector<ChannelMapping>>(
            [&]() -> Result<std::vector<ChannelMapping>> {
                return keptMapping(*study.database().database, key);
            });
        if (found && !found.value().empty()) {
            kept = std::move(found).take();
            break;
        }
    }
    for (const ChannelMapping& column : kept) {
        const bool said = std::any_of(
            options.columns.begin(), options.columns.end(),
            [&](const ColumnMapping& c) { return core::sameWord(c.column, column.column); });
        if (column.column.empty() && options.dates == DateOrder::unknown)
            options.dates =
                column.channel == kMonthFirst ? DateOrder::monthFirst : DateOrder::dayFirst;
        else if (!column.column.empty() && !said)
            options.columns.push_back({column.column, column.channel});
    }
    return options;
}

Outcome keepColumns(StudyFile& study, std::string_view bytes, const std::string& name,
                    const SheetOptions& options)
{
    if (options.columns.empty() && options.dates == DateOrder::unknown)
        return Done{};
    const std::string key = sheetHeaderKey(bytes, name, options);
    if (key.empty())
        return Done{};
    std::vector<ChannelMapping> kept;
    for (const ColumnMapping& column : options.columns)
        kept.push_back({column.column, column.ours, 1.0, 0.0});
    if (options.dates != DateOrder::unknown)
        kept.push_back(
            {"", options.dates == DateOrder::monthFirst ? kMonthFirst : kDayFirst, 1.0, 0.0});
    return keepMapping(study.database(), key, kept);
}

} // namespace bothways::storage
