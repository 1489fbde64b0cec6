// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/program.h"

#include "app/cli/verbs/verbs.h"
#include "app/output/version.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <ostream>

namespace bothways::cli {
namespace {

constexpr const char* kIntroduction =
    "Bothways keeps the log of fuel-economy runs driven out and back, baseline - device -\n"
    "baseline, finds the runs that cannot be used, and says whether there is an effect,\n"
    "how large, and how sure. FILE is a study (NAME.bothways) or a run sheet (CSV).\n";

constexpr const char* kFooter =
    "Begin with a run sheet that you have:\n"
    "  bothways analyse morning.csv\n"
    "or with a study:\n"
    "  bothways new day.bothways stretch.km=5 margin=1\n"
    "  bothways import day.bothways morning.csv\n"
    "  bothways screen day.bothways\n"
    "  bothways analyse day.bothways\n"
    "\n"
    "Exit codes: 0 done (also with no verdict), 2 wrong use, 3 the input is bad,\n"
    "4 a study file cannot be opened, read or written.\n"
    "The driver drives; the companion types.";

void addVerbs(CLI::App& program, Context& context)
{
    addNew(program, context);
    addSet(program, context);
    addImport(program, context);
    addExport(program, context);
    addAdd(program, context);
    addPairing(program, context);
    addRename(program, context);
    addUndo(program, context);
    addRuns(program, context);
    addScreen(program, context);
    addDiscard(program, context);
    addAnalyse(program, context);
    addPlan(program, context);
    addLedger(program, context);
    addReport(program, context);
    for (CLI::App* verb : program.get_subcommands({}))
        verb->group("Verbs");
}

bool isVerb(const CLI::App& program, const std::string& name)
{
    return !program.get_subcommands([&](const CLI::App* verb) { return verb->get_name() == name; })
                .empty();
}

std::string verbNames(const CLI::App& program)
{
    std::vector<std::string> names;
    for (const CLI::App* verb : program.get_subcommands([](const CLI::App*) { return true; }))
        names.push_back(verb->get_name());
    return fmt::format("{}", fmt::join(names, ", "));
}

/// The verb that was being read when the parser gave up.
std::string verbAsked(const CLI::App& program, const std::vector<std::string>& arguments)
{
    for (const std::string& argument : arguments) {
        if (isVerb(program, argument))
            return argument + " ";
        if (!argument.empty() && argument.front() != '-')
            break;
    }
    return {};
}

/// Words that follow one value of an option which is given once for each value.
std::string hintFor(const std::string& extra, const CLI::App& program,
                    const std::vector<std::string>& arguments)
{
    const auto isOption = [](const std::string& argument) { return argument.starts_with("--"); };
    const auto at = std::find(arguments.rbegin(), arguments.rend(), extra);
    const auto before = std::find_if(at, arguments.rend(), isOption);
    if (before == arguments.rend())
        return {};
    for (const CLI::App* verb : program.get_subcommands())
        if (const CLI::Option* option = verb->get_option_no_throw(*before);
            option && option->get_items_expected_max() > 1 && !option->get_allow_extra_args())
            return fmt::format("; repeat {} for each", *before);
    return {};
}

int report(const Outcome& outcome, Surroundings& io)
{
    if (outcome)
        return 0;
    io.err << core::describe(outcome.error()) << "\n";
    return static_cast<int>(outcome.error().code);
}

int wrongUseOf(const CLI::App& program, const std::vector<std::string>& arguments,
               const std::string& message, Surroundings& io)
{
    io.err << "bothways: " << message << "\n"
           << "See: bothways " << verbAsked(program, arguments) << "--help\n";
    return static_cast<int>(ErrorCode::wrongUse);
}

} // namespace

int runProgram(const std::vector<std::string>& arguments, Surroundings& io)
{
    CLI::App program(kIntroduction, "bothways");
    program.set_version_flag("--version", std::string("bothways ") + app::kVersion,
                             "Say the version and leave");
    program.set_help_flag("-h,--help", "Say this and leave");
    program.footer(kFooter);
    program.require_subcommand(0, 1);
    program.get_formatter()->column_width(28);
    program.get_formatter()->label("SUBCOMMAND", "VERB");
    Context context{io};
    addVerbs(program, context);

    if (arguments.empty())
        return wrongUseOf(program, arguments,
                          "no verb was given; expected one of " + verbNames(program), io);
    if (!arguments.front().starts_with('-') && !isVerb(program, arguments.front()))
        return wrongUseOf(program, {},
                          fmt::format("there is no verb '{}'; expected one of {}",
                                      arguments.front(), verbNames(program)),
                          io);
    try {
        std::vector<std::string> reversed(arguments.rbegin(), arguments.rend());
        program.parse(std::move(reversed));
    } catch (const CLI::Success& asked) { // --help, --version
        program.exit(asked, io.out, io.err);
        return 0;
    } catch (const CLI::ExtrasError&) {
        const std::vector<std::string> extra = program.remaining(true);
        const std::string first = extra.empty() ? std::string() : extra.front();
        return wrongUseOf(
            program, arguments,
            fmt::format("'{}' was not expected{}", first, hintFor(first, program, arguments)), io);
    } catch (const CLI::ParseError& problem) {
        return wrongUseOf(program, arguments, problem.what(), io);
    }
    if (!context.result)
        return wrongUseOf(program, arguments,
                          "no verb was given; expected one of " + verbNames(program), io);
    const int code = report(*context.result, io);
    io.out.flush();
    if (code == 0 && !io.out) {
        io.err << "bothways: the results cannot be written to standard output\n";
        return static_cast<int>(ErrorCode::studyFile);
    }
    return code;
}

} // namespace bothways::cli
