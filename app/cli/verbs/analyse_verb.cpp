// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/noise.h"
#include "app/cli/several.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/analysis_json.h"
#include "app/output/analysis_text.h"
#include "app/wording/findings.h"
#include "app/wording/runs.h"
#include "core/answer/pooled.h"
#include "core/effect/answer.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct AnalyseOptions {
    std::vector<std::string> files, noise_from;
    bool json = false, csv = false, applyScreening = false;
    std::optional<std::uint64_t> seed;
    std::optional<app::wording::ShownUnit> unit;
    Overrides overrides;
};

Result<std::shared_ptr<const app::ResultSet>>
answerOf(const Input& input, const AnalyseOptions& options, const Surroundings& io)
{
    app::AnswerOptions asked;
    asked.analysis = core::AnalysisOptions::of(input.study.properties);
    if (options.seed)
        asked.analysis.seed = *options.seed;
    asked.apply_screening = options.applyScreening;
    return answerWithProgress(input, io, std::move(asked));
}

/// What a person should look at again before going by the answer.
std::vector<std::string> remarksOn(const Language& in, const Input& input,
                                   const app::ResultSet& answer)
{
    std::vector<std::string> remarks;
    for (const storage::OwnColumn& column : input.own_columns)
        if (!column.nearest.empty())
            remarks.push_back(in.say("did you mean '{}' by '{}'?"_t, column.nearest, column.name));
    for (const core::OddRun& odd : answer.odd)
        remarks.push_back(app::wording::oddRunSentence(in, odd, answer.study));
    return remarks;
}

std::vector<std::string> warningsOf(const Language& in, const app::ResultSet& answer)
{
    std::string spoiled = app::wording::spoiledRunsSentence(in, answer.spoiled);
    if (spoiled.empty())
        return {};
    return {std::move(spoiled)};
}

Outcome analyseOne(const AnalyseOptions& options, Surroundings& io)
{
    auto input =
        readWithNoiseFrom(options.noise_from, options.files.front(), options.overrides, io);
    if (!input)
        return input.error();
    const auto answer = answerOf(input.value(), options, io);
    if (!answer)
        return answer.error();
    const app::ResultSet& result = *answer.value();
    const auto unit = options.unit.value_or(app::wording::shownUnitOf(result.study));
    if (options.json)
        io.out << app::analysisJson(result.analysis, result.screening, input.value().sha256, unit);
    else if (options.csv)
        io.out << app::pairsCsv(result.analysis);
    else
        io.out << app::analysisText(result.analysis, result.screening,
                                    {unit, io.colour, remarksOn(io.language, input.value(), result),
                                     warningsOf(io.language, result), io.language});
    io.out.flush();
    recordLook(input.value(), result.analysis, io);
    return Done{};
}

Outcome analyseSeveral(const AnalyseOptions& options, Surroundings& io)
{
    if (options.csv)
        return wrongUse("--csv lists the pairs of one study; several were given"_t,
                        "bothways analyse");
    const auto several = readSeveral(
        options.files, options.overrides, io,
        [&](const Input& input) { return answerOf(input, options, io); },
        [&](const Input& input, const std::shared_ptr<const app::ResultSet>& answer) {
            recordLook(input, answer->analysis, io);
        });
    if (!several)
        return several.error();
    const auto& [together, unit] = several.value();
    io.out << (options.json ? app::pooledJson(together)
                            : app::pooledText(io.language, together, options.unit.value_or(unit)));
    return Done{};
}

} // namespace

void describeAnalyse(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<AnalyseOptions>();
    verb.add_option(in.say("FILE"_t), options->files, in.say("Studies or run sheets"_t))
        ->required();
    CLI::Option* json = verb.add_flag("--json", options->json, in.say("As JSON, for programs"_t));
    verb.add_flag("--csv", options->csv, in.say("The pairs as CSV"_t))->excludes(json);
    addAnalysisOverrides(in, verb, options->overrides);
    addNoiseFrom(in, verb, options->noise_from);
    verb.add_flag("--apply-screening", options->applyScreening,
                  in.say("Leave out what a finding spoils, for this call"_t));
    addWhole(in, verb, "--fix-seed", options->seed, 0, std::numeric_limits<std::uint64_t>::max(),
             "Seed of the random deals; the same seed gives the same answer"_t);
    addUnit(in, verb, options->unit);
    addFooter(in, verb, "  bothways analyse morning.csv --margin 1",
              in.say("Verdicts: less, more, no difference as large as the margin, cannot tell, no "
                     "verdict.\nNone of them is an error: the exit code is 0."_t));
    onCall(verb, context, [options, &context] {
        return options->files.size() == 1 ? analyseOne(*options, context.io)
                                          : analyseSeveral(*options, context.io);
    });
}

} // namespace bothways::cli
