// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "app/wording/findings.h"
#include "app/wording/runs.h"
#include "core/study/rule.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct DiscardOptions {
    std::string study;
    RunWords runs;
    std::string reason, evidence, file;
};

/// One run or several, with their numbers in the place.
std::string ofRuns(const Language& in, const std::vector<int>& numbers, core::Text<1> one,
                   core::Text<1> several)
{
    return in.sayCount(static_cast<long long>(numbers.size()), one, several,
                       app::wording::runList(numbers));
}

std::string reasonNames()
{
    std::string names;
    for (const core::Rule rule : core::allRules())
        names += std::string(core::ruleName(rule)) + ", ";
    return names + "other";
}

Outcome checkReason(const core::Discard& options)
{
    if (options.reason != "other" && !core::ruleFromName(options.reason)) {
        std::vector<std::string_view> names{"other"};
        for (const core::Rule rule : core::allRules())
            names.push_back(core::ruleName(rule));
        return wrongUse(withNearest(
            core::message("'{}' is no reason; expected one of {}"_t, options.reason, reasonNames()),
            options.reason, names));
    }
    if (options.reason == "other" && options.evidence.empty())
        return wrongUse("the reason 'other' needs words: --evidence 'what was seen'"_t);
    return Done{};
}

Outcome discard(const DiscardOptions& options, Surroundings& io)
{
    const auto evidence = wordsWithFile(options.evidence, options.file, options.study);
    if (!evidence)
        return evidence.error();
    const core::Discard why{options.reason, evidence.value()};
    if (Outcome checked = checkReason(why); !checked)
        return checked;
    std::vector<int> numbers;
    const Outcome discarded =
        changeRuns(options.study, options.runs,
                   [&](storage::StudyFile& file, const core::Study&, const auto& runs) -> Outcome {
                       numbers = numbersOf(runs);
                       return file.discard(idsOf(runs), why);
                   });
    if (!discarded)
        return discarded;
    const std::string reason = app::wording::reasonWord(io.language, why.reason) +
                               (why.evidence.empty() ? "" : ", ") + why.evidence;
    io.told() << io.language.sayCount(static_cast<long long>(numbers.size()),
                                      "discarded run {}: {}"_t, "discarded runs {}: {}"_t,
                                      app::wording::runList(numbers), reason)
              << "\n";
    return Done{};
}

Outcome countAgain(const DiscardOptions& options, Surroundings& io)
{
    std::vector<int> lifted, already;
    const Outcome counted =
        changeRuns(options.study, options.runs,
                   [&](storage::StudyFile& file, const core::Study&, const auto& runs) -> Outcome {
                       for (const core::Run* run : runs)
                           (run->counted() ? already : lifted).push_back(run->number);
                       return file.count(idsOf(runs));
                   });
    if (!counted)
        return counted;
    if (!lifted.empty())
        io.told() << ofRuns(io.language, lifted, "counting run {} again"_t,
                            "counting runs {} again"_t)
                  << "\n";
    if (!already.empty())
        io.told() << ofRuns(io.language, already, "run {} counts already"_t,
                            "runs {} count already"_t)
                  << "\n";
    return Done{};
}

} // namespace

void describeDiscard(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<DiscardOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    addRuns(in, verb, options->runs);
    verb.add_option("--reason", options->reason, in.say("A rule's name, or other"_t))
        ->required()
        ->type_name(in.say("REASON"_t));
    verb.add_option("--evidence", options->evidence, in.say("What was seen; 'other' needs it"_t))
        ->type_name(in.say("WORDS"_t));
    addEvidenceFile(in, verb, options->file);
    addFooter(in, verb,
              "  bothways discard day.bothways 9 --reason overspeed --evidence 'rotor 3410 rpm "
              "beside a road train'\n  bothways discard day.bothways 7-9,12 --reason warming_up",
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
    addRuns(in, verb, options->runs);
    addFooter(in, verb, "  bothways count day.bothways 9",
              in.say("The history keeps the discard and its lifting."_t));
    onCall(verb, context, [options, &context] { return countAgain(*options, context.io); });
}

} // namespace bothways::cli
