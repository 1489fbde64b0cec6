// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/verbs/sheet_import.h"

#include "app/cli/verbs/trace_import.h"
#include "app/cli/warnings.h"
#include "app/wording/numbers.h"
#include "core/study/clock.h"
#include "storage/recordings/run_traces.h"
#include "storage/sheet/run_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

namespace bothways::cli {
namespace {

/// Takes the newest changes back.
void takeBack(storage::StudyFile& file, int changes)
{
    for (int i = 0; i < changes; ++i)
        if (!file.undo())
            return;
}

/// The recordings that the sheet's column 'trace' names. When one fails, the runs go too: a sheet
/// comes in whole or not at all.
/// @return  what is to be said about them
Result<std::string> importTracesOfSheet(storage::StudyFile& file,
                                        const std::filesystem::path& sheet, const core::Study& runs,
                                        Surroundings& io)
{
    std::string said;
    int changes = 1; // the runs
    for (const core::Run& run : runs.runs) {
        if (run.trace.empty())
            continue;
        const std::filesystem::path recording = sheet.parent_path() / run.trace;
        const auto imported = importRecording(file, {recording, run.number, {}, {}}, io);
        if (!imported) {
            takeBack(file, changes);
            return imported.error();
        }
        ++changes;
        said += whatWasMet(imported.value(), recording.filename().string());
    }
    return said;
}

/// Every recording must be there before anything is written.
Outcome checkTraces(const std::filesystem::path& sheet, const core::Study& runs)
{
    if (std::all_of(runs.runs.begin(), runs.runs.end(),
                    [](const core::Run& run) { return run.trace.empty(); }))
        return Done{};
    const auto traces = storage::tracesOfSheet(sheet, runs);
    return traces ? Outcome(Done{}) : Outcome(traces.error());
}

/// Columns without a meaning, and those whose name is nearly one that has.
std::string ownColumnsText(const std::vector<storage::OwnColumn>& columns)
{
    std::string kept, meant;
    for (const storage::OwnColumn& column : columns) {
        kept += (kept.empty() ? "" : ", ") + column.name;
        if (!column.nearest.empty())
            meant += fmt::format("; did you mean '{}' by '{}'?", column.nearest, column.name);
    }
    return kept.empty() ? kept
                        : fmt::format("kept as they are, without a meaning: {}{}\n", kept, meant);
}

} // namespace

Outcome importSheet(storage::StudyFile& file, const std::filesystem::path& path,
                    const std::string& date, Surroundings& io)
{
    const auto before = file.study();
    if (!before)
        return before.error();
    storage::SheetOptions options;
    options.date = date.empty() ? before.value().properties.date : date;
    options.today = io.today;
    const auto read = storage::readRunSheet(path, options, &before.value());
    if (!read)
        return read.error();
    const storage::RunSheet& sheet = read.value();
    if (Outcome there = checkTraces(path, sheet.study); !there)
        return there;
    const std::string name = path.filename().string();
    if (Outcome imported = file.importRuns(sheet.study, name); !imported)
        return imported;
    const auto traces = importTracesOfSheet(file, path, sheet.study, io);
    if (!traces)
        return traces.error();
    io.out << fmt::format(
        "imported {} from {}\n",
        app::counted(static_cast<long long>(sheet.study.runs.size()), "run", "runs"), name);
    if (sheet.dateAssumed)
        io.out << fmt::format("the sheet has times of day only; {} was taken as its date\n",
                              options.date.empty() ? io.today : options.date);
    io.out << ownColumnsText(sheet.own_columns) << traces.value();
    const auto now = file.study();
    if (!now)
        return now.error();
    warnOfNewRuns(before.value(), now.value(), io);
    return Done{};
}

} // namespace bothways::cli
