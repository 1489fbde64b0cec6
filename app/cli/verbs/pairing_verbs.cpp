// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "app/wording/runs.h"
#include "storage/sheet/run_rules.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <memory>
#include <ostream>
#include <vector>

namespace bothways::cli {
namespace {

struct PairingOptions {
    std::string study;
    RunWords runs;
};

/// The sentences of a run sheet speak of its marks, which nobody who types two numbers knows.
Outcome checkTie(const core::Study& study, const core::Run& a, const core::Run& b,
                 const std::string& file)
{
    std::vector<const core::Run*> sorted;
    for (const core::Run& run : study.runs)
        sorted.push_back(&run);
    const auto placeOf = [&](const core::Run& run) {
        return static_cast<std::size_t>(std::find(sorted.begin(), sorted.end(), &run) -
                                        sorted.begin());
    };
    const auto refused = [&](core::Message why) {
        return Error{ErrorCode::badInput, std::move(why), file};
    };
    if (core::sameWord(a.direction, b.direction))
        return refused(core::message(
            "runs {} and {} were both driven '{}'; expected an out and a return run"_t, a.number,
            b.number, a.direction));
    const std::size_t one = placeOf(a), other = placeOf(b);
    if (!storage::inOneBlock(sorted, std::min(one, other), std::max(one, other)))
        return refused(core::message("runs {} and {} are of two blocks; expected two of one "
                                     "block, without a switch or a new day between them"_t,
                                     a.number, b.number));
    return Done{};
}

Outcome tie(const PairingOptions& options, Surroundings& io)
{
    std::vector<int> numbers;
    const Outcome tied = changeRuns(
        options.study, options.runs,
        [&](storage::StudyFile& file, const core::Study& study, const auto& runs) -> Outcome {
            numbers = numbersOf(runs);
            if (runs.size() == 1)
                return wrongUse("a run cannot be tied to itself; expected two runs, like 3 6"_t,
                                options.study);
            if (runs.size() != 2)
                return wrongUse(
                    core::message("{} runs are named; expected two, like 3 6"_t, runs.size()),
                    options.study);
            const Outcome possible = checkTie(study, *runs[0], *runs[1], options.study);
            return possible ? file.pair(runs[0]->id, runs[1]->id) : possible;
        });
    if (!tied)
        return tied;
    io.told() << io.language.say("tied runs {} and {}"_t, numbers[0], numbers[1]) << "\n";
    return Done{};
}

Outcome untie(const PairingOptions& options, Surroundings& io)
{
    std::vector<int> numbers;
    const Outcome untied =
        changeRuns(options.study, options.runs,
                   [&](storage::StudyFile& file, const core::Study&, const auto& runs) {
                       numbers = numbersOf(runs);
                       return file.unpair(idsOf(runs));
                   });
    if (!untied)
        return untied;
    io.told() << io.language.sayCount(static_cast<long long>(numbers.size()), "untied run {}"_t,
                                      "untied runs {}"_t, app::wording::runList(numbers))
              << "\n";
    return Done{};
}

} // namespace

void describePair(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<PairingOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    addRuns(in, verb, options->runs);
    addFooter(in, verb, "  bothways pair day.bothways 3 6");
    onCall(verb, context, [options, &context] { return tie(*options, context.io); });
}

void describeUnpair(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<PairingOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    addRuns(in, verb, options->runs);
    addFooter(in, verb, "  bothways unpair day.bothways 3");
    onCall(verb, context, [options, &context] { return untie(*options, context.io); });
}

} // namespace bothways::cli
