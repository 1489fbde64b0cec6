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
    auto file = openForChange(options.study);
    if (!file)
        return file.error();
    const auto study = file.value().study();
    if (!study)
        return study.error();
    const auto ids = runsByNumber(study.value(), {options.one, options.other}, options.study);
    if (!ids)
        return ids.error();
    if (Outcome tied = file.value().pair(ids.value()[0], ids.value()[1]); !tied)
        return tied;
    io.out << fmt::format("tied runs {} and {}\n", options.one, options.other);
    return Done{};
}

Outcome untie(const PairingOptions& options, Surroundings& io)
{
    auto file = openForChange(options.study);
    if (!file)
        return file.error();
    const auto study = file.value().study();
    if (!study)
        return study.error();
    const auto id = runByNumber(study.value(), options.one, options.study);
    if (!id)
        return id.error();
    if (Outcome untied = file.value().unpair(id.value()); !untied)
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
