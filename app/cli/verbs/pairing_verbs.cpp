// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "storage/sheet/run_rules.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct PairingOptions {
    std::string study;
    int one = 0, other = 0;
};

/// The sentences of a run sheet speak of its marks, which nobody who types two numbers knows.
Outcome checkTie(const core::Study& study, const PairingOptions& options)
{
    std::vector<const core::Run*> sorted;
    for (const core::Run& run : study.runs)
        sorted.push_back(&run);
    const auto placeOf = [&](int number) {
        const auto at = std::find_if(sorted.begin(), sorted.end(),
                                     [&](const core::Run* run) { return run->number == number; });
        return static_cast<std::size_t>(at - sorted.begin());
    };
    const std::size_t one = placeOf(options.one), other = placeOf(options.other);
    const auto refused = [&](core::Message why) {
        return Error{ErrorCode::badInput, std::move(why), options.study};
    };
    if (one == other)
        return Done{}; // said by the study
    if (core::sameWord(sorted[one]->direction, sorted[other]->direction))
        return refused(core::message(
            "runs {} and {} were both driven '{}'; expected an out and a return run"_t, options.one,
            options.other, sorted[one]->direction));
    if (!storage::inOneBlock(sorted, std::min(one, other), std::max(one, other)))
        return refused(core::message("runs {} and {} are of two blocks; expected two of one "
                                     "block, without a switch or a new day between them"_t,
                                     options.one, options.other));
    return Done{};
}

Outcome tie(const PairingOptions& options, Surroundings& io)
{
    const RunWords words{std::to_string(options.one), std::to_string(options.other)};
    const Outcome tied = changeRuns(
        options.study, words,
        [&](storage::StudyFile& file, const core::Study& study, const auto& runs) -> Outcome {
            const Outcome possible = checkTie(study, options);
            return possible ? file.pair(runs.front()->id, runs.back()->id) : possible;
        });
    if (!tied)
        return tied;
    io.told() << io.language.say("tied runs {} and {}"_t, options.one, options.other) << "\n";
    return Done{};
}

Outcome untie(const PairingOptions& options, Surroundings& io)
{
    const Outcome untied =
        changeRuns(options.study, {std::to_string(options.one)},
                   [](storage::StudyFile& file, const core::Study&, const auto& runs) {
                       return file.unpair(runs.front()->id);
                   });
    if (!untied)
        return untied;
    io.told() << io.language.say("untied run {}"_t, options.one) << "\n";
    return Done{};
}

} // namespace

void describePair(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<PairingOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    verb.add_option(in.say("RUN"_t), options->one, in.say("Number of the one run"_t))->required();
    verb.add_option(in.say("OTHER##a run"_t), options->other, in.say("Number of the other run"_t))
        ->required();
    addFooter(in, verb, "  bothways pair day.bothways 3 6");
    onCall(verb, context, [options, &context] { return tie(*options, context.io); });
}

void describeUnpair(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<PairingOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    verb.add_option(in.say("RUN"_t), options->one, in.say("Number of either run"_t))->required();
    addFooter(in, verb, "  bothways unpair day.bothways 3");
    onCall(verb, context, [options, &context] { return untie(*options, context.io); });
}

} // namespace bothways::cli
