// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/verbs/sheet_import.h"

#include "app/cli/verbs/trace_import.h"
#include "app/cli/warnings.h"
#include "app/wording/numbers.h"
#include "app/wording/runs.h"
#include "core/study/clock.h"
#include "storage/recordings/sheet_import.h"
#include "storage/sheet/run_sheet.h"

#include <ostream>

namespace bothways::cli {
namespace {

/// Columns without a meaning, and those whose name is nearly one that has.
std::string ownColumnsText(const Language& in, const std::vector<storage::OwnColumn>& columns)
{
    std::string kept, meant;
    for (const storage::OwnColumn& column : columns) {
        kept += (kept.empty() ? "" : ", ") + column.name;
        if (!column.nearest.empty())
            meant += "; " + in.say("did you mean '{}' by '{}'?"_t, column.nearest, column.name);
    }
    return kept.empty() ? kept
                        : in.say("kept as they are, without a meaning: {}{}"_t, kept, meant) + "\n";
}

/// What was found in a spreadsheet that is not in our own form, a line each.
void sayWhatWasFound(const storage::RunSheet& sheet, Surroundings& io)
{
    for (const core::Message& found : sheet.found)
        io.told() << io.language.say("The sheet was read with {}."_t, found) << "\n";
}

/// A sheet that is imported twice is not refused: it may be meant, and is undone by one step.
void warnOfKnownRuns(const storage::RunSheet& sheet, Surroundings& io)
{
    if (sheet.already_there.empty())
        return;
    const Language& in = io.language;
    const auto count = static_cast<long long>(sheet.already_there.size());
    warn(in.sayCount(count,
                     "{} run of the sheet was in the study already, with the same start, "
                     "configuration, direction and consumption, and is there twice now: run {}; "
                     "'bothways undo' takes the import back"_t,
                     "{} runs of the sheet were in the study already, with the same start, "
                     "configuration, direction and consumption, and are there twice now: runs {}; "
                     "'bothways undo' takes the import back"_t,
                     app::grouped(in, static_cast<double>(count)),
                     app::wording::runList(sheet.already_there)),
         io);
}

} // namespace

Outcome importSheet(storage::StudyFile& file, const std::filesystem::path& path,
                    const std::string& date, const storage::SheetOptions& given,
                    const storage::SheetTraces& traces, Surroundings& io)
{
    const auto before = file.study();
    if (!before)
        return before.error();
    const auto bytes = storage::readSheetBytes(path);
    if (!bytes)
        return bytes.error();
    storage::SheetOptions options =
        storage::withKeptColumns(file, bytes.value(), path.string(), given);
    options.date = date; // else the sheet's own, else the study's
    options.today = io.today;
    const auto read =
        storage::parseRunSheet(bytes.value(), path.string(), options, &before.value());
    if (!read && storage::isRecordingInstead(path, bytes.value(), options))
        return core::Error{
            core::ErrorCode::badInput,
            "is no run sheet, but a logger's recording by its look; expected it behind --trace, or "
            "to be told what its columns are: --column 'HEADER=configuration'"_t,
            path.string()};
    if (!read)
        return read.error();
    const storage::RunSheet& sheet = read.value();
    const std::string name = path.filename().string();
    ImportWatch watch(io);
    const auto recordings =
        storage::importSheet(file, sheet.study, path, {watch.progress(), io.stop, traces});
    if (!recordings)
        return recordings.error();
    watch.done();
    if (Outcome kept = storage::keepColumns(file, bytes.value(), path.string(), options); !kept)
        return kept;
    const Language& in = io.language;
    const auto count = static_cast<long long>(sheet.study.runs.size());
    io.told() << in.sayCount(count, "imported {} run from {}"_t, "imported {} runs from {}"_t,
                             app::grouped(in, static_cast<double>(count)), name)
              << "\n";
    if (sheet.dateAssumed)
        io.told() << in.say("the sheet has times of day only; {} was taken as its date"_t, io.today)
                  << "\n";
    sayWhatWasFound(sheet, io);
    io.told() << ownColumnsText(in, sheet.own_columns);
    for (const storage::ImportedRecording& recording : recordings.value())
        io.told() << whatWasMet(in, recording.report, recording.name);
    const auto now = file.study();
    if (!now)
        return now.error();
    warnOfKnownRuns(sheet, io);
    warnOfNewRuns(before.value(), now.value(), io);
    return Done{};
}

} // namespace bothways::cli
