// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "storage/sheet/run_rules.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

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
    const auto refused = [&](const std::string& why) {
        return Error{ErrorCode::badInput,
                     fmt::format("runs {} and {} {}", options.one, options.other, why),
                     options.study};
    };
    if (one == other)
        return Done{}; // said by the study
    if (core::sameWord(sorted[one]->direction, sorted[other]->direction))
        return refused(fmt::format("were both driven '{}'; expected an out and a return run",
                                   sorted[one]->direction));
    if (!storage::inOneBlock(sorted, std::min(one, other), std::max(one, other)))
        return refused("are of two blocks; expected two of one block, without a switch or a new "
                       "day between them");
    return Done{};
}

Outcome tie(const PairingOptions& options, Surroundings& io)
{
    const Outcome tied = changeRuns(options.study, {options.one, options.other},
                                    [&](storage::StudyFile& file, const auto& runs) -> Outcome {
                                        const auto study = file.study();
                                        if (!study)
                                            return study.error();
                                        const Outcome possible = checkTie(study.value(), options);
                                        return possible ? file.pair(runs[0], runs[1]) : possible;
                                    });
    if (!tied)
        return tied;
    io.out << fmt::format("tied runs {} and {}\n", options.one, options.other);
    return Done{};
}

Outcome untie(const PairingOptions& options, Surroundings& io)
{
    const Outcome untied =
        changeRuns(options.study, {options.one},
                   [](auto& study, const auto& runs) { return study.unpair(runs[0]); });
    if (!untied)
        return untied;
    io.out << fmt::format("untied run {}\n", options.one);
    return Done{};
}

} // namespace

void addPairing(CLI::App& program, Context& context)
{
    auto options = std::make_shared<PairingOptions>();
    CLI::App* pair = program.add_subcommand(
        "pair", "Tie an out and a return run of one block, whatever their gap");
    pair->add_option("STUDY", options->study, "The study")->required();
    pair->add_option("RUN", options->one, "Number of the one run")->required();
    pair->add_option("OTHER", options->other, "Number of the other run")->required();
    pair->footer("Example:\n  bothways pair day.bothways 3 6");
    onCall(*pair, context, [options, &context] { return tie(*options, context.io); });

    CLI::App* unpair = program.add_subcommand("unpair", "Untie a run that was tied by hand");
    unpair->add_option("STUDY", options->study, "The study")->required();
    unpair->add_option("RUN", options->one, "Number of either run")->required();
    unpair->footer("Example:\n  bothways unpair day.bothways 3");
    onCall(*unpair, context, [options, &context] { return untie(*options, context.io); });
}

} // namespace bothways::cli
