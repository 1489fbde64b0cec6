// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct PairingOptions {
    std::string study;
    int one = 0, other = 0;
};

Outcome tie(const PairingOptions& options, Surroundings& io)
{
    const Outcome tied =
        changeRuns(options.study, {options.one, options.other},
                   [](auto& study, const auto& runs) { return study.pair(runs[0], runs[1]); });
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
