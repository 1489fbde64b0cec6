// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/analysis_json.h"
#include "app/output/analysis_text.h"
#include "app/wording/findings.h"
#include "core/screening/screening.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct ScreenOptions {
    std::string file;
    bool json = false, apply = false;
    Overrides overrides;
};

/// Discards in the file what the screening names, each run with its own reason.
Outcome discardSpoiled(const Input& input, const core::Screening& screening, Surroundings& io)
{
    auto file = openForChange(input.path);
    if (!file)
        return file.error();
    core::Study study = input.study;
    const std::vector<int> spoiled =
        core::applyScreening(study, storage::withoutOverruled(screening, input.overruled));
    if (spoiled.empty()) {
        io.told(io.err) << io.language.say("nothing to discard"_t) << "\n";
        return Done{};
    }
    std::vector<std::pair<core::RunId, core::Discard>> discards;
    std::string words;
    for (const core::Run& run : study.runs) {
        if (std::find(spoiled.begin(), spoiled.end(), run.number) == spoiled.end())
            continue;
        discards.emplace_back(run.id, *run.discard);
        words += io.language.say("discarded run {}: {}"_t, run.number,
                                 app::wording::reasonWord(io.language, run.discard->reason)) +
                 "\n";
    }
    if (Outcome done = file.value().discardEach(discards); !done) // all of them, or none
        return done;
    io.told(io.err) << words;
    return Done{};
}

Outcome screenRuns(const ScreenOptions& options, Surroundings& io)
{
    auto input = readInput(options.file, options.overrides, io);
    if (!input)
        return input.error();
    if (options.apply && input.value().isSheet())
        return openForChange(options.file).error();
    const auto screened = screenWithProgress(input.value(), io);
    if (!screened)
        return screened.error();
    const core::Screening& screening = screened.value();
    io.out << (options.json
                   ? app::findingsJson(screening)
                   : app::screeningText(io.language, screening, io.colour, input.value().study) +
                         app::oddRunsText(io.language, input.value().study, io.colour));
    if (!options.apply)
        return Done{};
    io.out.flush();
    return discardSpoiled(input.value(), screening, io);
}

} // namespace

void describeScreen(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<ScreenOptions>();
    verb.add_option(in.say("FILE"_t), options->file, in.say("A study or a run sheet"_t))
        ->required();
    verb.add_flag("--json", options->json, in.say("As JSON, for programs"_t));
    verb.add_flag("--apply", options->apply,
                  in.say("On a study: discard every counted run that a finding spoils"_t));
    addSheetOverrides(in, verb, options->overrides);
    addFooter(in, verb,
              "  bothways screen morning.csv --limit overspeed.rpm=3200 --limit stretch.km=5",
              in.say("What cannot be checked is listed with the reason; it is not passed. "
                     "'bothways set --help' lists the limits."_t));
    onCall(verb, context, [options, &context] { return screenRuns(*options, context.io); });
}

} // namespace bothways::cli
