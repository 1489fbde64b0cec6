// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/analysis_json.h"
#include "app/output/analysis_text.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct RunsOptions {
    std::string file;
    bool json = false;
    Overrides overrides;
};

Outcome listRuns(const RunsOptions& options, Surroundings& io)
{
    auto input = readInput(options.file, options.overrides, io);
    if (!input)
        return input.error();
    const auto answered = answerWithProgress(input.value(), io);
    if (!answered)
        return answered.error();
    const auto& answer = answered.value();
    if (options.json) {
        io.out << app::runsJson(answer->study, answer->analysis, answer->screening);
        return Done{};
    }
    io.out << app::runsText(io.language, answer->study, answer->analysis, answer->screening,
                            io.colour);
    return Done{};
}

} // namespace

void describeRuns(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<RunsOptions>();
    verb.add_option(in.say("FILE"_t), options->file, in.say("A study or a run sheet"_t))
        ->required();
    verb.add_flag("--json", options->json, in.say("As JSON, for programs"_t));
    addSheetOverrides(in, verb, options->overrides);
    addFooter(in, verb, "  bothways runs day.bothways");
    onCall(verb, context, [options, &context] { return listRuns(*options, context.io); });
}

} // namespace bothways::cli
