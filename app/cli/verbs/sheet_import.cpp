// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/verbs/sheet_import.h"

#include "app/cli/verbs/trace_import.h"
#include "app/cli/warnings.h"
#include "app/wording/numbers.h"
#include "core/study/clock.h"
#include "storage/recordings/sheet_import.h"
#include "storage/sheet/run_sheet.h"

#include <fmt/format.h>

#include <ostream>

namespace bothways::cli {
namespace {

/// Takes the newest changes back.
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
    const std::string name = path.filename().string();
    ImportWatch watch(io);
    const auto recordings =
        storage::importSheet(file, sheet.study, path, {watch.progress(), watch.stop()});
    if (!recordings)
        return recordings.error();
    watch.done();
    io.out << fmt::format(
        "imported {} from {}\n",
        app::counted(static_cast<long long>(sheet.study.runs.size()), "run", "runs"), name);
    if (sheet.dateAssumed)
        io.out << fmt::format("the sheet has times of day only; {} was taken as its date\n",
                              options.date.empty() ? io.today : options.date);
    io.out << ownColumnsText(sheet.own_columns);
    for (const storage::ImportedRecording& recording : recordings.value())
        io.out << whatWasMet(recording.report, recording.name);
    const auto now = file.study();
    if (!now)
        return now.error();
    warnOfNewRuns(before.value(), now.value(), io);
    return Done{};
}

} // namespace bothways::cli
