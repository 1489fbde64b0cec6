// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/verbs/sheet_import.h"

#include "app/cli/verbs/trace_import.h"
#include "app/cli/warnings.h"
#include "app/wording/numbers.h"
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
    const std::string name = path.filename().string();
    ImportWatch watch(io);
    const auto recordings =
        storage::importSheet(file, sheet.study, path, {watch.progress(), io.stop});
    if (!recordings)
        return recordings.error();
    watch.done();
    const Language& in = io.language;
    const auto count = static_cast<long long>(sheet.study.runs.size());
    io.out << in.sayCount(count, "imported {} run from {}"_t, "imported {} runs from {}"_t,
                          app::grouped(in, static_cast<double>(count)), name)
           << "\n";
    if (sheet.dateAssumed)
        io.out << in.say("the sheet has times of day only; {} was taken as its date"_t,
                         options.date.empty() ? io.today : options.date)
               << "\n";
    io.out << ownColumnsText(in, sheet.own_columns);
    for (const storage::ImportedRecording& recording : recordings.value())
        io.out << whatWasMet(in, recording.report, recording.name);
    const auto now = file.study();
    if (!now)
        return now.error();
    warnOfNewRuns(before.value(), now.value(), io);
    return Done{};
}

} // namespace bothways::cli
