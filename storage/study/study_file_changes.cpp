// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/study_file.h"

#include "storage/sheet/run_columns.h"
#include "storage/sheet/run_rules.h"
#include "storage/sheet/run_sheet.h"
#include "storage/study/change_values.h"
#include "storage/study/study_database.h"
#include "storage/study/study_rows.h"

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

#include <algorithm>
#include <set>

// What StudyFile changes in the runs: each change is one function and one action.
namespace bothways::storage {

using core::Done;
using core::Error;
using core::ErrorCode;
using core::Run;
using core::RunId;
using core::Study;

namespace {

Run* find(Study& study, RunId id)
{
    const auto at = std::find_if(study.runs.begin(), study.runs.end(),
                                 [id](const Run& run) { return run.id == id; });
    return at == study.runs.end() ? nullptr : &*at;
}

/// The runs with these identities, in order of start; an Error when one is not there.
Result<std::vector<Run*>> findAll(Study& study, const std::vector<RunId>& ids,
                                  const std::filesystem::path& file)
{
    const std::set<RunId> wanted(ids.begin(), ids.end());
    std::vector<Run*> runs;
    for (Run& run : study.runs) {
        if (runs.size() == wanted.size())
            break;
        if (wanted.contains(run.id))
            runs.push_back(&run);
    }
    if (runs.size() != wanted.size() || wanted.empty())
        return Error{ErrorCode::wrongUse, "the study has no such run"_t, file.string()};
    return runs;
}

/// A word that no pair of the study uses yet.
std::string freePairMark(const Study& study)
{
    std::set<std::string> used;
    for (const Run& run : study.runs)
        used.insert(run.pair_mark);
    int i = 1;
    while (used.contains(fmt::format("p{}", i)))
        ++i;
    return fmt::format("p{}", i);
}

Run* partnerOf(Study& study, const Run& run)
{
    for (Run& other : study.runs)
        if (!run.pair_mark.empty() && other.pair_mark == run.pair_mark && other.id != run.id)
            return &other;
    return nullptr;
}

/// For the history: which runs, and why.
HistoryValue discarding(HistoryValue::List numbers, const core::Discard& why)
{
    HistoryValue::List part = {std::move(numbers), canonicalColumn(why.reason)};
    if (!why.evidence.empty())
        part.push_back(why.evidence);
    return part;
}

void untie(SQLite::Database& db, Run& run)
{
    run.pair_mark.clear();
    rewriteRun(db, run);
}

/// A run discarded in `study` and in the file; an Error where the reason is none.
Outcome discardRun(SQLite::Database& db, const Study& study, Run& run, const core::Discard& why)
{
    run.discard = core::Discard{canonicalColumn(why.reason), why.evidence};
    if (auto faults = faultsOf(study, run); !faults.empty())
        return inOne(std::move(faults));
    rewriteRun(db, run);
    return Done{};
}

} // namespace

Result<RunId> StudyFile::addRun(const Run& given)
{
    RunId id{};
    HistoryDetail detail{"facts"};
    const Outcome outcome = d->change("add_run", detail, [&](SQLite::Database& db) -> Outcome {
        const Study& study = d->current(db);
        Spellings spellings = Spellings::of(othersIn(study, {}), given);
        Run run = normalised(given, spellings);
        run.id = {};
        if (auto faults = faultsOf(study, run); !faults.empty())
            return inOne(std::move(faults));
        if (study.runs.size() >= kMostRuns)
            return d->error(ErrorCode::badInput,
                            core::message("a study holds at most {} runs"_t, kMostRuns));
        numberRuns(study, {&run, 1});
        id = insertRun(db, run);
        detail.values = {factsOf(run)};
        return Done{};
    });
    if (!outcome)
        return outcome.error();
    return id;
}

Outcome changeRun(const StudyFile::Private& d, SQLite::Database& db, Study& study,
                  const Run& wanted, HistoryValue::List& edits)
{
    Run* before = find(study, wanted.id);
    if (!before)
        return d.error(ErrorCode::wrongUse, "the study has no such run"_t);
    Spellings spellings = Spellings::of(othersIn(study, wanted.id), wanted);
    Run run = normalised(wanted, spellings);
    if (run.number == 0)
        run.number = before->number;
    if (auto faults = faultsOf(study, run); !faults.empty())
        return inOne(std::move(faults));
    if (run == *before)
        return Done{};
    edits.push_back(differences(*before, run));
    rewriteRun(db, run);
    const bool moves = run.start.us != before->start.us;
    *before = std::move(run);
    if (moves)
        core::sortByStart(study);
    return Done{};
}

Outcome StudyFile::updateRun(const Run& run)
{
    return updateRuns({run});
}

Outcome StudyFile::updateRuns(const std::vector<Run>& given)
{
    HistoryDetail detail{"edit"};
    return d->change("edit_run", detail, [&](SQLite::Database& db) -> Outcome {
        Study& study = d->editable(db);
        for (const Run& wanted : given)
            if (Outcome changed = changeRun(*d, db, study, wanted, detail.values); !changed)
                return changed;
        return Done{};
    });
}

Outcome StudyFile::removeRuns(const std::vector<RunId>& ids)
{
    HistoryDetail detail{"facts"};
    return d->change("remove_runs", detail, [&](SQLite::Database& db) -> Outcome {
        Study& study = d->editable(db);
        const auto runs = findAll(study, ids, d->file);
        if (!runs)
            return runs.error();
        for (Run* run : runs.value()) {
            if (Run* partner = partnerOf(study, *run))
                untie(db, *partner);
            run->pair_mark.clear();
            detail.values.push_back(factsOf(*run));
            deleteRun(db, run->id);
        }
        return Done{};
    });
}

Outcome StudyFile::discard(const std::vector<RunId>& ids, const core::Discard& why)
{
    HistoryDetail detail{"discard"};
    return d->change("discard", detail, [&](SQLite::Database& db) -> Outcome {
        Study& study = d->editable(db);
        const auto runs = findAll(study, ids, d->file);
        if (!runs)
            return runs.error();
        for (Run* run : runs.value())
            if (Outcome discarded = discardRun(db, study, *run, why); !discarded)
                return discarded;
        detail.values = {discarding(numbersOf(runs.value()), why)};
        return Done{};
    });
}

Outcome StudyFile::discardEach(const std::vector<std::pair<RunId, core::Discard>>& runs)
{
    HistoryDetail detail{"discard"};
    return d->change("discard", detail, [&](SQLite::Database& db) -> Outcome {
        Study& study = d->editable(db);
        for (const auto& [id, why] : runs) {
            Run* run = find(study, id);
            if (!run)
                return d->error(ErrorCode::wrongUse, "the study has no such run"_t);
            if (Outcome discarded = discardRun(db, study, *run, why); !discarded)
                return discarded;
            detail.values.push_back(discarding({run->number}, why));
        }
        return Done{};
    });
}

Outcome StudyFile::count(const std::vector<RunId>& ids)
{
    HistoryDetail detail{"runs"};
    return d->change("count", detail, [&](SQLite::Database& db) -> Outcome {
        Study& study = d->editable(db);
        const auto runs = findAll(study, ids, d->file);
        if (!runs)
            return runs.error();
        for (Run* run : runs.value()) {
            if (!run->discard)
                continue;
            if (!run->consumption && run->trace.empty())
                return d->error(ErrorCode::badInput,
                                core::message("run {} has no consumption and cannot be counted"_t,
                                              run->number));
            run->discard.reset();
            rewriteRun(db, *run);
        }
        detail.values = numbersOf(runs.value());
        return Done{};
    });
}

Outcome StudyFile::pair(RunId one, RunId other)
{
    HistoryDetail detail{"runs"};
    return d->change("pair", detail, [&](SQLite::Database& db) -> Outcome {
        Study& study = d->editable(db);
        const auto runs = findAll(study, {one, other}, d->file);
        if (!runs)
            return runs.error();
        if (runs.value().size() != 2)
            return d->error(ErrorCode::wrongUse, "a run cannot be tied to itself"_t);
        detail.values = numbersOf(runs.value());
        const std::string mark = freePairMark(study);
        for (Run* run : runs.value()) {
            if (!run->pair_mark.empty())
                return d->error(
                    ErrorCode::badInput,
                    core::message("run {} is tied already; untie it first"_t, run->number));
        }
        for (Run* run : runs.value())
            run->pair_mark = mark;
        if (auto faults = faultsOf(study, *runs.value().back()); !faults.empty())
            return inOne(std::move(faults));
        for (Run* run : runs.value())
            rewriteRun(db, *run);
        return Done{};
    });
}

Outcome StudyFile::unpair(RunId id)
{
    return unpair(std::vector<RunId>{id});
}

Outcome StudyFile::unpair(const std::vector<RunId>& ids)
{
    HistoryDetail detail{"runs"};
    return d->change("unpair", detail, [&](SQLite::Database& db) -> Outcome {
        Study& study = d->editable(db);
        std::vector<Run*> tied;
        for (const RunId id : ids) {
            Run* run = find(study, id);
            if (!run)
                return d->error(ErrorCode::wrongUse, "the study has no such run"_t);
            if (std::find(tied.begin(), tied.end(), run) != tied.end())
                continue; // its partner was named before
            Run* partner = partnerOf(study, *run);
            if (!partner)
                return d->error(ErrorCode::wrongUse,
                                core::message("run {} is not tied by hand"_t, run->number));
            tied.insert(tied.end(), {run, partner});
        }
        detail.values = numbersOf(tied);
        for (Run* run : tied)
            untie(db, *run);
        return Done{};
    });
}

Outcome StudyFile::importRuns(const Study& sheet, std::string_view sourceName)
{
    HistoryDetail detail{"sheet"};
    return d->change("import", detail, [&](SQLite::Database& db) -> Outcome {
        const auto place = [&](std::size_t run, const std::string& column) {
            core::Place where{std::string(sourceName)};
            where.run = sheet.runs[run].number;
            where.column = shownCell(column);
            return where;
        };
        const auto runs = admitted(d->current(db), sheet.runs, place);
        if (!runs)
            return runs.error();
        for (const Run& run : runs.value())
            insertRun(db, run);
        detail.values = {sourceName, runs.value().size()};
        return Done{};
    });
}

} // namespace bothways::storage
