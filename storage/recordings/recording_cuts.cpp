// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/recording_cuts.h"

#include "storage/recordings/cut.h"
#include "storage/recordings/recordings.h"
#include "storage/sheet/run_columns.h"
#include "storage/sheet/run_rules.h"
#include "storage/study/study_database.h"
#include "storage/study/study_rows.h"

#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace bothways::storage {
namespace {

using core::Done;
using core::Error;
using core::ErrorCode;

/// Which of the cuts are to be new runs, checked against the study and against each other.
Result<std::vector<core::Run>> newRuns(const core::Study& study, const std::vector<Cut>& cuts)
{
    std::vector<core::Run> runs;
    for (const Cut& cut : cuts)
        if (!cut.existing) {
            runs.push_back(cut.run);
            runs.back().id = {};
        }
    return admitted(study, std::move(runs), [](std::size_t run, const std::string& column) {
        core::Place where;
        where.run = static_cast<int>(run) + 1;
        where.new_run = true;
        where.column = column;
        return where;
    });
}

Outcome checkCuts(const std::vector<Cut>& cuts)
{
    if (cuts.empty())
        return Error{ErrorCode::wrongUse, "expected at least one part of the recording"_t, {}};
    for (const Cut& cut : cuts)
        if (!std::isfinite(cut.offset_s))
            return Error{
                ErrorCode::wrongUse, "expected a run's start as a number of seconds"_t, {}};
    return Done{};
}

double toMicroseconds(double time_s)
{
    return std::round(time_s * 1e6) / 1e6;
}

/// The run with the times of its part; what was noted in seconds from its start keeps its moment.
core::Run timedBy(const Cut& cut, core::Run run)
{
    if (cut.start && cut.start->us != run.start.us) {
        const double later_s = static_cast<double>(cut.start->us - run.start.us) / 1e6;
        for (core::Mark& mark : run.marks)
            mark.at_s = toMicroseconds(mark.at_s - later_s);
        for (auto& [accessory, on_s] : run.accessory_on_s)
            on_s = toMicroseconds(on_s - later_s);
        run.start = *cut.start;
    }
    if (cut.duration_s)
        run.duration_s = cut.duration_s;
    return run;
}

} // namespace

Cut cutForRun(core::RunId run, const core::CutProposal& part, const RecordingInfo& recording,
              const core::Study& study, const core::ClockOptions& clock, bool timed)
{
    Cut cut;
    cut.existing = run;
    cut.offset_s = part.from_s;
    if (!timed)
        return cut;
    cut.duration_s = toMicroseconds(part.to_s - part.from_s);
    if (const auto made = core::runFromProposal(part, recording.span(), study, clock))
        cut.start = made.value().start;
    return cut;
}

Result<Cut> cutForNewRun(const core::CutProposal& part, const RecordingInfo& recording,
                         const core::Study& study, const core::ClockOptions& clock)
{
    auto run = core::runFromProposal(part, recording.span(), study, clock);
    if (!run)
        return run.error();
    Cut cut;
    cut.offset_s = part.from_s;
    cut.run = std::move(run).take();
    cut.run.trace = recording.name;
    return cut;
}

Result<HistoryValue::List> writeCuts(const StudyFile::Private& d, SQLite::Database& database,
                                     core::RecordingId recording, const std::vector<Cut>& cuts)
{
    if (const Outcome possible = checkCuts(cuts); !possible)
        return possible.error();
    const core::Study before = readStudy(database);
    const auto added = newRuns(before, cuts);
    if (!added)
        return added.error();
    core::Study now = before;
    HistoryValue::List numbers;
    HistoryValue::List edits;
    std::set<core::RunId> given;
    auto next = added.value().begin();
    for (const Cut& cut : cuts) {
        core::RunId id{};
        if (cut.existing) {
            const auto known =
                std::find_if(before.runs.begin(), before.runs.end(),
                             [&](const core::Run& run) { return run.id == *cut.existing; });
            if (known == before.runs.end())
                return d.error(ErrorCode::wrongUse, "the study has no such run"_t);
            id = known->id;
            if (!given.insert(id).second)
                return d.error(
                    ErrorCode::wrongUse,
                    core::message("run {} is given two parts; expected one"_t, known->number));
            if (Outcome changed = changeRun(d, database, now, timedBy(cut, *known), edits);
                !changed)
                return changed.error();
            numbers.emplace_back(known->number);
        } else {
            id = insertRun(database, *next);
            numbers.emplace_back(next->number);
            ++next;
        }
        assignRunTrace(database, id, recording, cut.offset_s);
    }
    HistoryValue::List written;
    written.emplace_back(std::move(numbers));
    written.insert(written.end(), edits.begin(), edits.end());
    return written;
}

Outcome cutRecording(StudyFile& study, core::RecordingId recording, const std::vector<Cut>& cuts)
{
    StudyFile::Private& d = study.database();
    HistoryDetail detail{"cut"};
    return d.change("cut_recording", detail, [&](SQLite::Database& database) -> Outcome {
        SQLite::Statement name(database, "SELECT name FROM recording WHERE id = ? AND id IN "
                                         "(SELECT id FROM trace_data)");
        name.bind(1, static_cast<std::int64_t>(recording));
        if (!name.executeStep())
            return d.error(ErrorCode::badInput, "the study has no such recording"_t);
        const auto runs = writeCuts(d, database, recording, cuts);
        if (!runs)
            return runs.error();
        detail.values = {name.getColumn(0).getString()};
        detail.values.insert(detail.values.end(), runs.value().begin(), runs.value().end());
        return Done{};
    });
}

} // namespace bothways::storage
