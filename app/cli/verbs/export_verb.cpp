// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/analysis_json.h"
#include "app/wording/numbers.h"
#include "core/answer/analyse.h"
#include "core/effect/answer.h"
#include "storage/sheet/run_sheet.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct ExportOptions {
    std::string file, to;
    bool csv = false, json = false, pairs = false;
    Overrides overrides;
};

Outcome exportStudy(const ExportOptions& options, Surroundings& io)
{
    auto input = readInput(options.file, options.overrides, io);
    if (!input)
        return input.error();
    const core::Study& study = input.value().study;
    std::string text;
    if (options.json)
        text = app::studyJson(study);
    else if (options.pairs)
        text = app::pairsCsv(core::analyse(study, core::AnalysisOptions::of(study.properties)));
    else
        text = storage::writeRunSheet(study);
    if (!options.to.empty()) {
        if (Outcome written = writeWholeFile(options.to, text); !written)
            return written;
        io.err << fmt::format(
            "wrote {} to {}\n",
            options.pairs ? std::string("the pairs")
                          : app::counted(static_cast<long long>(study.runs.size()), "run", "runs"),
            options.to);
        return Done{};
    }
    io.out << text;
    return Done{};
}

} // namespace

void addExport(CLI::App& program, Context& context)
{
    auto options = std::make_shared<ExportOptions>();
    CLI::App* verb =
        program.add_subcommand("export", "Give back the runs (CSV, JSON) or the pairs (CSV)");
    verb->add_option("FILE", options->file, "A study or a run sheet")->required();
    verb->add_option("TO,--to", options->to, "Where to write (default: standard output)");
    CLI::Option* csv =
        verb->add_flag("--csv", options->csv, "A run sheet with every column (default)");
    CLI::Option* json = verb->add_flag("--json", options->json, "Properties and runs as JSON");
    CLI::Option* pairs = verb->add_flag("--pairs", options->pairs, "The pairs, a line each");
    csv->excludes(json)->excludes(pairs);
    json->excludes(pairs);
    addAnalysisOverrides(*verb, options->overrides);
    verb->footer("Example:\n  bothways export day.bothways --csv --to day.csv");
    onCall(*verb, context, [options, &context] { return exportStudy(*options, context.io); });
}

} // namespace bothways::cli
