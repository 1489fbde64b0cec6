// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/run_columns.h"
#include "storage/run_rules.h"
#include "storage/study_database.h"
#include "storage/study_rows.h"
#include "storage/traces.h"

#include <SQLiteCpp/Statement.h>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

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
        return fmt::format("new run {}: column '{}'", run + 1, column);
    });
}

} // namespace

Outcome cutRecording(StudyFile& study, core::RecordingId recording, const std::vector<Cut>& cuts)
{
    if (cuts.empty())
        return Error{ErrorCode::wrongUse, "expected at least one part of the recording", {}};
    for (const Cut& cut : cuts)
        if (!std::isfinite(cut.offset_s))
            return Error{ErrorCode::wrongUse, "expected a run's start as a number of seconds", {}};
    StudyFile::Private& d = study.database();
    std::string detail;
    return d.change("cut_recording", detail, [&](SQLite::Database& database) -> Outcome {
        SQLite::Statement name(database, "SELECT name FROM recording WHERE id = ? AND id IN "
                                         "(SELECT id FROM trace_data)");
        name.bind(1, static_cast<std::int64_t>(recording));
        if (!name.executeStep())
            return d.error(ErrorCode::badInput, "the study has no such recording");
        const core::Study before = readStudy(database);
        const auto added = newRuns(before, cuts);
        if (!added)
            return added.error();
        std::vector<std::string> numbers;
        auto next = added.value().begin();
        for (const Cut& cut : cuts) {
            core::RunId id{};
            if (cut.existing) {
                const auto known =
                    std::find_if(before.runs.begin(), before.runs.end(),
                                 [&](const core::Run& run) { return run.id == *cut.existing; });
                if (known == before.runs.end())
                    return d.error(ErrorCode::wrongUse, "the study has no such run");
                id = known->id;
                numbers.push_back(std::to_string(known->number));
            } else {
                id = insertRun(database, *next);
                numbers.push_back(std::to_string(next->number));
                ++next;
            }
            assignRunTrace(database, id, recording, cut.offset_s);
        }
        detail = fmt::format("{}: run{} {}", name.getColumn(0).getString(),
                             numbers.size() == 1 ? "" : "s", fmt::join(numbers, ", "));
        return Done{};
    });
}

} // namespace bothways::storage
