// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "core/study/rule.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct DiscardOptions {
    std::string study;
    std::vector<int> runs;
    std::string reason, evidence;
};

std::string runsWords(const std::vector<int>& numbers)
{
    return fmt::format("run{} {}", numbers.size() == 1 ? "" : "s", fmt::join(numbers, ", "));
}

std::string reasonNames()
{
    std::string names;
    for (const core::Rule rule : core::allRules())
        names += std::string(core::ruleName(rule)) + ", ";
    return names + "other";
}

Outcome checkReason(const DiscardOptions& options)
{
    if (options.reason != "other" && !core::ruleFromName(options.reason))
        return wrongUse(
            fmt::format("'{}' is no reason; expected one of {}", options.reason, reasonNames()));
    if (options.reason == "other" && options.evidence.empty())
        return wrongUse("the reason 'other' needs words: --evidence 'what was seen'");
    return Done{};
}

Outcome discard(const DiscardOptions& options, Surroundings& io)
{
    if (Outcome checked = checkReason(options); !checked)
        return checked;
    const core::Discard why{options.reason, options.evidence};
    const Outcome discarded =
        changeRuns(options.study, options.runs,
                   [&](auto& study, const auto& runs) { return study.discard(runs, why); });
    if (!discarded)
        return discarded;
    io.out << fmt::format("discarded {}: {}{}{}\n", runsWords(options.runs), options.reason,
                          options.evidence.empty() ? "" : ", ", options.evidence);
    return Done{};
}

/// Those of the runs that do not count.
Result<std::vector<int>> discardedAmong(const storage::StudyFile& file,
                                        const std::vector<core::RunId>& runs)
{
    const auto study = file.study();
    if (!study)
        return study.error();
    std::vector<int> numbers;
    for (const core::Run& run : study.value().runs)
        if (!run.counted() && std::find(runs.begin(), runs.end(), run.id) != runs.end())
            numbers.push_back(run.number);
    return numbers;
}

Outcome countAgain(const DiscardOptions& options, Surroundings& io)
{
    std::vector<int> lifted;
    const Outcome counted =
        changeRuns(options.study, options.runs, [&](auto& study, const auto& runs) -> Outcome {
            auto discarded = discardedAmong(study, runs);
            if (!discarded)
                return discarded.error();
            lifted = std::move(discarded).take();
            return study.count(runs);
        });
    if (!counted)
        return counted;
    std::vector<int> already;
    for (const int number : options.runs)
        if (std::find(lifted.begin(), lifted.end(), number) == lifted.end())
            already.push_back(number);
    if (!lifted.empty())
        io.out << fmt::format("counting {} again\n", runsWords(lifted));
    if (!already.empty())
        io.out << fmt::format("{} {} already\n", runsWords(already),
                              already.size() == 1 ? "counts" : "count");
    return Done{};
}

} // namespace

void addDiscard(CLI::App& program, Context& context)
{
    auto options = std::make_shared<DiscardOptions>();
    CLI::App* verb = program.add_subcommand("discard", "Set runs aside, with a reason");
    verb->add_option("STUDY", options->study, "The study")->required();
    verb->add_option("RUN", options->runs, "Numbers of the runs")->required();
    verb->add_option("--reason", options->reason, "A rule's name, or other")
        ->required()
        ->type_name("REASON");
    verb->add_option("--evidence", options->evidence, "What was seen; 'other' needs it")
        ->type_name("WORDS");
    verb->footer(
        "Example:\n  bothways discard day.bothways 9 --reason overspeed --evidence 'rotor "
        "3410 rpm beside a road train'\n\nReasons: " +
        reasonNames() +
        ".\nDecide by what was seen in the run, never by its consumption: the result shows "
        "what\nputting each discard back would do.");
    onCall(*verb, context, [options, &context] { return discard(*options, context.io); });

    CLI::App* count = program.add_subcommand("count", "Lift a discard: the runs count again");
    count->add_option("STUDY", options->study, "The study")->required();
    count->add_option("RUN", options->runs, "Numbers of the runs")->required();
    count->footer("Example:\n  bothways count day.bothways 9\n\nThe history keeps the discard and "
                  "its lifting.");
    onCall(*count, context, [options, &context] { return countAgain(*options, context.io); });
}

} // namespace bothways::cli
