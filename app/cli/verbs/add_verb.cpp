// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/typed_columns.h"
#include "app/cli/verbs/verbs.h"
#include "app/cli/warnings.h"
#include "core/study/clock.h"
#include "storage/sheet/run_sheet.h"
#include "storage/study/walk_rounds.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct AddOptions {
    std::string study;
    std::vector<std::string> columns;
};

/// What was typed, as a sheet of one line: so it is checked as a line of a sheet would be.
std::string asSheet(const Assignments& columns)
{
    std::string header, line;
    for (const auto& [column, value] : columns) {
        const char* separator = header.empty() ? "" : ",";
        header += separator + csvCell(column);
        line += separator + csvCell(value);
    }
    return header + "\n" + line + "\n";
}

bool has(const Assignments& columns, std::string_view wanted)
{
    return std::any_of(columns.begin(), columns.end(),
                       [&](const auto& column) { return core::sameWord(column.first, wanted); });
}

/// Configuration as in the last run, direction the other one: what the next run mostly is.
void fillIn(Assignments& columns, const core::Study& study)
{
    if (study.runs.empty())
        return;
    const core::Run& last = study.runs.back();
    if (!has(columns, "configuration"))
        columns.emplace_back("configuration", last.configuration);
    const std::vector<std::string> names = core::directions(study);
    if (!has(columns, "direction") && names.size() == 2)
        columns.emplace_back("direction", last.direction == names[0] ? names[1] : names[0]);
}

/// Nothing can be filled in for these.
Outcome checkNeeded(const Assignments& columns)
{
    if (!has(columns, "start"))
        return wrongUse(
            "the run has no start; expected start=HH:MM:SS or start=DATE-AND-TIME, like "
            "start=05:40 or start=2026-05-09T05:40:00"_t);
    for (const char* column : {"configuration", "direction"})
        if (!has(columns, column))
            return wrongUse(core::message("the run has no {0}, and no run before it says one; "
                                          "expected {0}=NAME"_t,
                                          column));
    return Done{};
}

/// "typed:2: column 'x'" is of no use to someone who typed no sheet: "column 'x'" is.
Error withoutLines(const Language& in, Error error)
{
    const auto strip = [&in](core::Place& where) {
        if (where.file != kTyped)
            return;
        where.file.clear();
        where.line = 0;
        where.run = 0;
        if (where.empty())
            where.file = in.say("the run"_t);
    };
    strip(error.where);
    for (Error& other : error.others)
        strip(other.where);
    return error;
}

Outcome addRun(const AddOptions& options, Surroundings& io)
{
    auto typed = assignmentsFrom(options.columns);
    if (!typed)
        return typed.error();
    auto file = openForChange(options.study);
    if (!file)
        return file.error();
    const auto study = file.value().study();
    if (!study)
        return study.error();
    auto meant = asColumns(std::move(typed).take(), study.value());
    if (!meant)
        return meant.error();
    Assignments columns = std::move(meant).take();
    const Assignments asTyped = columns;
    fillIn(columns, study.value());
    if (Outcome needed = checkNeeded(columns); !needed)
        return needed;
    storage::SheetOptions sheetOptions;
    sheetOptions.date = study.value().properties.date;
    if (sheetOptions.date.empty() && !study.value().runs.empty())
        sheetOptions.date = core::formatDate(study.value().runs.back().start);
    sheetOptions.today = io.today;
    sheetOptions.ours_alone = true; // what is typed is no spreadsheet
    const auto sheet =
        storage::parseRunSheet(asSheet(columns), kTyped, sheetOptions, &study.value());
    if (!sheet)
        return withoutLines(io.language, sheet.error());
    core::Run run = sheet.value().study.runs.front();
    const auto rounds = storage::walkRounds(file.value());
    if (!rounds)
        return rounds.error();
    core::putNumbers(run, rounds.value());
    if (auto added = file.value().addRun(run); !added)
        return added.error();
    io.told() << io.language.say("added run {}: {}, {}, {}"_t, run.number, run.configuration,
                                 run.direction, core::formatDateTime(run.start))
              << "\n";
    sayNearColumns(asTyped, io);
    const auto now = file.value().study();
    if (!now)
        return now.error();
    warnOfNewRuns(study.value(), now.value(), io);
    return Done{};
}

} // namespace

void describeAdd(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<AddOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    verb.add_option(in.say("COLUMNS"_t), options->columns,
                    in.say("The run, by the columns of a run sheet"_t))
        ->option_text(in.say("COLUMN=VALUE"_t) + " ... " + in.say("REQUIRED"_t))
        ->required();
    addFooter(in, verb,
              "  bothways add day.bothways configuration=B direction=out start=06:57:29 "
              "duration_s=211 distance_km=5.2 l_per_100km=8.41",
              in.say("Without configuration it is that of the last run; without direction, the "
                     "other one."_t));
    onCall(verb, context, [options, &context] { return addRun(*options, context.io); });
}

} // namespace bothways::cli
