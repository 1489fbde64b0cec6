// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/sheet_import.h"

#include "storage/recordings/run_traces.h"
#include "storage/recordings/trace_import.h"

#include <algorithm>

namespace bothways::storage {
namespace {

using core::Done;
using core::Error;
using core::ErrorCode;

void takeBack(StudyFile& study, std::size_t changes)
{
    for (std::size_t i = 0; i < changes; ++i)
        if (!study.undo())
            return;
}

Outcome checkRecordings(const core::Study& runs, const std::filesystem::path& sheet)
{
    if (!namesRecordings(runs))
        return Done{};
    const auto traces = tracesOfSheet(sheet, runs);
    return traces ? Outcome(Done{}) : Outcome(traces.error());
}

Result<ImportedRecording> importRecording(StudyFile& study, const core::Run& run,
                                          const std::filesystem::path& file,
                                          const SheetImportOptions& options)
{
    ImportedRecording imported{file.filename().string(), {}};
    if (options.stop.stop_requested())
        return Error{ErrorCode::stopped, "stopped before the end; nothing was imported"_t,
                     imported.name};
    TraceImportOptions each;
    each.run = run.number;
    each.stop = options.stop;
    if (options.progress)
        each.progress = [&](double done, double bytesPerSecond) {
            options.progress(imported.name, done, bytesPerSecond);
        };
    auto report = importTrace(study, file, each);
    if (!report)
        return report.error();
    imported.report = std::move(report).take();
    return imported;
}

} // namespace

bool namesRecordings(const core::Study& runs)
{
    return std::any_of(runs.runs.begin(), runs.runs.end(),
                       [](const core::Run& run) { return !run.trace.empty(); });
}

Result<std::vector<ImportedRecording>> importSheet(StudyFile& study, const core::Study& runs,
                                                   const std::filesystem::path& sheet,
                                                   const SheetImportOptions& options)
{
    if (const Outcome there = checkRecordings(runs, sheet); !there)
        return there.error();
    if (const Outcome imported = study.importRuns(runs, sheet.filename().string()); !imported)
        return imported.error();
    std::vector<ImportedRecording> recordings;
    for (const core::Run& run : runs.runs) {
        if (run.trace.empty())
            continue;
        auto one = importRecording(study, run, sheet.parent_path() / run.trace, options);
        if (!one) {
            takeBack(study, recordings.size() + 1); // and the runs
            return one.error();
        }
        recordings.push_back(std::move(one).take());
    }
    return recordings;
}

} // namespace bothways::storage
