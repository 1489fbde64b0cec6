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

std::string numbersText(const std::vector<int>& numbers)
{
    return fmt::format("{}", fmt::join(numbers, ", "));
}

/// One run or several, with their numbers in the place.
std::string ofRuns(const Language& in, const std::vector<int>& numbers, core::Text<1> one,
                   core::Text<1> several)
{
    return in.sayCount(static_cast<long long>(numbers.size()), one, several, numbersText(numbers));
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
        return wrongUse(core::message("'{}' is no reason; expected one of {}"_t, options.reason,
                                      reasonNames()));
    if (options.reason == "other" && options.evidence.empty())
        return wrongUse("the reason 'other' needs words: --evidence 'what was seen'"_t);
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
    const std::string reason =
        options.reason + (options.evidence.empty() ? "" : ", ") + options.evidence;
    io.out << io.language.sayCount(static_cast<long long>(options.runs.size()),
                                   "discarded run {}: {}"_t, "discarded runs {}: {}"_t,
                                   numbersText(options.runs), reason)
           << "\n";
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
        io.out << ofRuns(io.language, lifted, "counting run {} again"_t, "counting runs {} again"_t)
               << "\n";
    if (!already.empty())
        io.out << ofRuns(io.language, already, "run {} counts already"_t, "runs {} count already"_t)
               << "\n";
    return Done{};
}

} // namespace

void describeDiscard(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<DiscardOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    verb.add_option(in.say("RUN"_t), options->runs, in.say("Numbers of the runs"_t))->required();
    verb.add_option("--reason", options->reason, in.say("A rule's name, or other"_t))
        ->required()
        ->type_name(in.say("REASON"_t));
    verb.add_option("--evidence", options->evidence, in.say("What was seen; 'other' needs it"_t))
        ->type_name(in.say("WORDS"_t));
    addFooter(in, verb,
              "  bothways discard day.bothways 9 --reason overspeed --evidence 'rotor 3410 rpm "
              "beside a road train'",
              in.say("Reasons: {}.\nDecide by what was seen in the run, never by its consumption: "
                     "the result shows what\nputting each discard back would do."_t,
                     reasonNames()));
    onCall(verb, context, [options, &context] { return discard(*options, context.io); });
}

void describeCount(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<DiscardOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    verb.add_option(in.say("RUN"_t), options->runs, in.say("Numbers of the runs"_t))->required();
    addFooter(in, verb, "  bothways count day.bothways 9",
              in.say("The history keeps the discard and its lifting."_t));
    onCall(verb, context, [options, &context] { return countAgain(*options, context.io); });
}

} // namespace bothways::cli
