// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "app/wording/findings.h"
#include "app/wording/runs.h"
#include "core/screening/screening.h"
#include "core/study/rule.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct OverruleOptions {
    std::string study, rule, words, file;
    RunWords runs;
    bool takeBack = false;
};

Error noSuchRule(const std::string& typed)
{
    std::vector<std::string_view> names;
    std::string list;
    for (const core::Rule rule : core::allRules()) {
        names.push_back(core::ruleName(rule));
        list += (list.empty() ? "" : ", ") + std::string(core::ruleName(rule));
    }
    return wrongUse(withNearest(core::message("'{}' is no rule; expected one of {}"_t, typed, list),
                                typed, names));
}

/// Only what was found can be overruled.
Outcome checkFound(const OverruleOptions& options, core::Rule rule,
                   const std::vector<const core::Run*>& runs, Surroundings& io)
{
    const auto input = readInput(options.study, {}, io);
    if (!input)
        return input.error();
    const auto screening = screenWithProgress(input.value(), io);
    if (!screening)
        return screening.error();
    std::vector<int> without;
    for (const core::Run* run : runs)
        if (std::ranges::none_of(screening.value().findings, [&](const core::Finding& finding) {
                return finding.run == run->number && finding.rule == rule;
            }))
            without.push_back(run->number);
    if (without.empty())
        return Done{};
    const auto count = static_cast<long long>(without.size());
    const std::string list = app::wording::runList(without);
    return wrongUse(count == 1 ? core::message("run {} has no finding '{}'; 'bothways screen' "
                                               "lists the findings"_t,
                                               list, options.rule)
                               : core::message("runs {} have no finding '{}'; 'bothways screen' "
                                               "lists the findings"_t,
                                               list, options.rule),
                    options.study);
}

Outcome overrule(OverruleOptions options, Surroundings& io)
{
    if (!options.file.empty()) {
        auto words = wordsWithFile(options.words, options.file, options.study);
        if (!words)
            return words.error();
        options.words = std::move(words).take();
    }
    const auto rule = core::ruleFromName(options.rule);
    if (!rule)
        return noSuchRule(options.rule);
    if (!options.takeBack && options.words.find_first_not_of(" \t\r\n") == std::string::npos)
        return wrongUse("overruling a finding needs words: --reason 'why it does not matter'"_t);
    std::vector<int> numbers;
    const Outcome done =
        changeRuns(options.study, options.runs,
                   [&](storage::StudyFile& file, const core::Study&, const auto& runs) -> Outcome {
                       numbers = numbersOf(runs);
                       std::vector<storage::Overruled> list;
                       for (const int number : numbers)
                           list.push_back({number, options.rule, options.words});
                       if (options.takeBack)
                           return file.letStand(list);
                       const Outcome found = checkFound(options, *rule, runs, io);
                       return found ? file.overrule(list) : found;
                   });
    if (!done)
        return done;
    const Language& in = io.language;
    const std::string runs = app::wording::runsWords(in, numbers);
    const std::string what = app::wording::ruleName(in, *rule);
    io.told() << (options.takeBack ? in.say("{}: the finding '{}' stands again"_t, runs, what)
                                   : in.say("{}: overruled '{}': {}"_t, runs, what, options.words))
              << "\n";
    return Done{};
}

} // namespace

void describeOverrule(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<OverruleOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    verb.add_option(in.say("RULE"_t), options->rule,
                    in.say("The rule whose finding it is, as 'bothways screen' names it"_t))
        ->required();
    addRuns(in, verb, options->runs);
    CLI::Option* words =
        verb.add_option("--reason", options->words, in.say("Why the finding does not matter"_t))
            ->type_name(in.say("WORDS"_t));
    addEvidenceFile(in, verb, options->file);
    verb.add_flag("--take-back", options->takeBack, in.say("Let the finding stand again"_t))
        ->excludes(words);
    addFooter(in, verb,
              "  bothways overrule day.bothways overspeed 9 --reason 'the counter was wrong'\n"
              "  bothways overrule day.bothways overspeed 9 --take-back",
              in.say("An overruled finding is kept with its reason; the run counts, and "
                     "'screen --apply' leaves it alone."_t));
    onCall(verb, context, [options, &context] { return overrule(*options, context.io); });
}

} // namespace bothways::cli
