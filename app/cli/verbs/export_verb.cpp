// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/output.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/analysis_json.h"
#include "app/wording/numbers.h"
#include "core/answer/analyse.h"
#include "core/effect/answer.h"
#include "storage/sheet/run_sheet.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct ExportOptions {
    std::string file;
    Target target;
    bool csv = false, json = false, pairs = false, forSpreadsheet = false;
    Overrides overrides;
};

std::string whatWasWritten(const Language& in, const ExportOptions& options, long long runs)
{
    if (options.pairs)
        return in.say("wrote the pairs to {}"_t, options.target.file());
    return in.sayCount(runs, "wrote {} run to {}"_t, "wrote {} runs to {}"_t,
                       app::grouped(in, static_cast<double>(runs)), options.target.file());
}

Outcome exportStudy(const ExportOptions& options, Surroundings& io)
{
    auto input = readInput(options.file, options.overrides, io);
    if (!input)
        return input.error();
    const core::Study& study = input.value().study;
    const auto form =
        options.forSpreadsheet ? storage::csv::Form::forSpreadsheet : storage::csv::Form::plain;
    std::string text;
    if (options.json)
        text = app::studyJson(study);
    else if (options.pairs)
        text =
            app::pairsCsv(core::analyse(study, core::AnalysisOptions::of(study.properties)), form);
    else
        text = storage::writeRunSheet(study, form);
    if (!options.target.isStandardOutput()) {
        if (Outcome written = writeTo(options.target, text, input.value().filesRead()); !written)
            return written;
        io.told(io.err) << whatWasWritten(io.language, options,
                                          static_cast<long long>(study.runs.size()))
                        << "\n";
        return Done{};
    }
    io.out << text;
    return Done{};
}

} // namespace

void describeExport(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<ExportOptions>();
    verb.add_option(in.say("FILE"_t), options->file, in.say("A study or a run sheet"_t))
        ->required();
    addTarget(in, verb, options->target);
    CLI::Option* csv =
        verb.add_flag("--csv", options->csv, in.say("A run sheet with every column (default)"_t));
    CLI::Option* json =
        verb.add_flag("--json", options->json, in.say("Properties and runs as JSON"_t));
    CLI::Option* pairs =
        verb.add_flag("--pairs", options->pairs, in.say("The pairs, a line each"_t));
    csv->excludes(json)->excludes(pairs);
    json->excludes(pairs);
    verb.add_flag("--for-spreadsheet", options->forSpreadsheet,
                  in.say("Of the CSV: an apostrophe before each text that a spreadsheet would take "
                         "for a formula"_t))
        ->excludes(json);
    addAnalysisOverrides(in, verb, options->overrides);
    addFooter(in, verb, "  bothways export day.bothways --csv --output day.csv");
    onCall(verb, context, [options, &context] { return exportStudy(*options, context.io); });
}

} // namespace bothways::cli
