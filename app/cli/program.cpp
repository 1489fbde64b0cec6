// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/program.h"

#include "app/cli/complaints.h"
#include "app/cli/completion.h"
#include "app/cli/exit_codes.h"
#include "app/cli/help.h"
#include "app/cli/options.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/version.h"
#include "storage/study/study_file.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <ostream>

namespace bothways::cli {
namespace {

constexpr const char* kLanguageOption = "--language";
constexpr const char* kQuietOption = "--quiet";
constexpr const char* kHelpVerb = "help";

using Words = std::vector<std::string>;

core::Text<0> introduction()
{
    return "Bothways keeps the log of fuel-economy runs driven out and back, baseline - device -\n"
           "baseline, finds the runs that cannot be used, and says whether there is an effect,\n"
           "how large, and how sure. FILE is a study (NAME.bothways) or a run sheet (CSV).\n"_t;
}

std::string footer(const Language& in)
{
    return in.say("Begin with a run sheet that you have:"_t) +
           "\n  bothways analyse morning.csv\n" + in.say("or with a study:"_t) +
           "\n  bothways new day.bothways stretch.km=5 margin=1\n"
           "  bothways import day.bothways morning.csv\n"
           "  bothways screen day.bothways\n"
           "  bothways analyse day.bothways\n\n" +
           exitCodesText(in) + "\n" + in.say("The driver drives; the companion types."_t);
}

const Verb* verbNamed(std::string_view name)
{
    const auto verbs = allVerbs();
    const auto found = std::find_if(verbs.begin(), verbs.end(),
                                    [&](const Verb& verb) { return verb.name == name; });
    return found == verbs.end() ? nullptr : &*found;
}

std::string verbNames()
{
    std::string names;
    for (const Verb& verb : allVerbs())
        names += (names.empty() ? "" : ", ") + std::string(verb.name);
    return names;
}

/// The verb that was being read when the parser gave up.
std::string verbAsked(const Words& arguments)
{
    for (const std::string& argument : arguments) {
        if (verbNamed(argument))
            return argument + " ";
        if (!argument.empty() && argument.front() != '-')
            break;
    }
    return {};
}

std::vector<std::string_view> namesOfVerbs()
{
    std::vector<std::string_view> names;
    for (const Verb& verb : allVerbs())
        names.emplace_back(verb.name);
    return names;
}

core::Message noSuchVerb(const std::string& typed)
{
    return withNearest(
        core::message("there is no verb '{}'; expected one of {}"_t, typed, verbNames()), typed,
        namesOfVerbs());
}

int report(const Outcome& outcome, Surroundings& io)
{
    if (outcome)
        return 0;
    io.err << io.language.describe(outcome.error()) << "\n";
    return static_cast<int>(outcome.error().code);
}

int wrongUseOf(const Words& arguments, const core::Message& message, Surroundings& io)
{
    io.err << "bothways: " << io.language.say(message) << "\n"
           << io.language.say("See: {}"_t, "bothways " + verbAsked(arguments) + "--help") << "\n";
    return static_cast<int>(ErrorCode::wrongUse);
}

core::Message noVerb()
{
    return core::message("no verb was given; expected one of {}"_t, verbNames());
}

/// Takes --language out of the words, wherever it stands: what the parser says is in it, too.
/// @return  what is wrong with it; empty where all is well
core::Message takeLanguage(Words& arguments, Language& language)
{
    const std::string known = fmt::format("{}", fmt::join(Language::all(), ", "));
    const std::string withValue = std::string(kLanguageOption) + "=";
    const auto end = std::find(arguments.begin(), arguments.end(), "--");
    Words kept;
    for (auto word = arguments.begin(); word != arguments.end(); ++word) {
        const bool apart = word < end && *word == kLanguageOption;
        if (!apart && !(word < end && word->starts_with(withValue))) {
            kept.push_back(std::move(*word));
            continue;
        }
        if (apart && ++word == end)
            return core::message("--language needs a value; expected one of {}"_t, known);
        const std::string name = apart ? *word : word->substr(withValue.size());
        const auto named = Language::named(name);
        if (!named)
            return core::message("there is no language '{}'; expected one of {}"_t, name, known);
        language = *named;
    }
    arguments = std::move(kept);
    return {};
}

/// Takes --quiet out of the words, wherever it stands.
bool takeQuiet(Words& arguments)
{
    const auto end = std::find(arguments.begin(), arguments.end(), "--");
    const auto kept = std::remove(arguments.begin(), end, kQuietOption);
    const bool given = kept != end;
    arguments.erase(kept, end);
    return given;
}

/// "help VERB" becomes "VERB --help", and "help" alone "--help".
/// @return  what is wrong with it; empty where all is well
core::Message takeHelp(Words& arguments)
{
    if (arguments.empty() || arguments.front() != kHelpVerb ||
        (arguments.size() > 1 && arguments[1].starts_with('-')))
        return {};
    if (arguments.size() == 1) {
        arguments = {"--help"};
        return {};
    }
    if (!verbNamed(arguments[1]))
        return noSuchVerb(arguments[1]);
    if (arguments.size() > 2)
        return core::message("'{}' was not expected"_t, arguments[2]);
    arguments = {arguments[1], "--help"};
    return {};
}

/// The verbs, of which only those that are among the words can be asked for their options; without
/// a verb in front, help may list them all.
void addVerbs(CLI::App& program, const Words& arguments, Context& context)
{
    const Language& in = context.io.language;
    const bool oneIsAsked = verbNamed(arguments.front()) != nullptr;
    for (const Verb& verb : allVerbs()) {
        const bool asked =
            std::find(arguments.begin(), arguments.end(), verb.name) != arguments.end();
        if (oneIsAsked && !asked)
            continue;
        CLI::App* added = program.add_subcommand(verb.name, in.say(verb.what));
        added->group(in.say("Verbs"_t));
        if (!asked)
            continue;
        verb.describe(*added, context);
        nameTypes(in, *added);
    }
}

void describeProgram(CLI::App& program, const Language& in)
{
    program.formatter(helpIn(in));
    program.set_version_flag("--version", std::string("bothways ") + app::kVersion,
                             in.say("Say the version and leave"_t));
    program.set_help_flag("-h,--help", in.say("Say this and leave"_t));
    const std::string language =
        in.say("Language of what is said to people: {} (default: that of LC_ALL, LC_MESSAGES or "
               "LANG). JSON and CSV do not change"_t,
               fmt::format("{}", fmt::join(Language::all(), ", ")));
    program
        .add_option(kLanguageOption, language) // for help alone: takeLanguage() has been here
        ->type_name(in.say("LANGUAGE"_t));
    program
        .add_flag(kQuietOption) // for help alone: takeQuiet() has been here
        ->description(in.say("Say results, warnings and errors alone: not what was done"_t));
    program.footer(footer(in));
    program.require_subcommand(0, 1);
}

/// A word too many: of the program, or after one value of an option that is given once for each.
core::Message complaintOf(const std::string& extra, const CLI::App& program, const Words& arguments)
{
    const auto isOption = [](const std::string& argument) { return argument.starts_with("--"); };
    const auto at = std::find(arguments.rbegin(), arguments.rend(), extra);
    const auto before = std::find_if(at, arguments.rend(), isOption);
    if (before != arguments.rend())
        for (const CLI::App* verb : program.get_subcommands())
            if (const CLI::Option* option = verb->get_option_no_throw(*before);
                option && option->get_items_expected_max() > 1 && !option->get_allow_extra_args())
                return strayValue(extra, *before);
    const core::Message unexpected = core::message("'{}' was not expected"_t, extra);
    if (!isOption(extra))
        return unexpected;
    std::vector<std::string> options;
    for (const CLI::App* verb : program.get_subcommands())
        for (const CLI::Option* option : verb->get_options())
            for (const std::string& name : option->get_lnames())
                options.push_back("--" + name);
    const std::vector<std::string_view> known(options.begin(), options.end());
    return withNearest(unexpected, extra.substr(0, extra.find('=')), known);
}

/// Reads the words and runs the verb.
/// @return  the exit code where that is settled: help was asked for, or the words are wrong
std::optional<int> parse(CLI::App& program, const Words& arguments, Surroundings& io)
{
    try {
        program.parse(Words(arguments.rbegin(), arguments.rend()));
    } catch (const CLI::Success& asked) { // --help, --version
        program.exit(asked, io.out, io.err);
        return 0;
    } catch (const CLI::ExtrasError&) {
        const Words extra = program.remaining(true);
        return wrongUseOf(
            arguments,
            complaintOf(extra.empty() ? std::string() : extra.front(), program, arguments), io);
    } catch (const CLI::ParseError& problem) {
        return wrongUseOf(arguments, complaint(problem), io);
    }
    return std::nullopt;
}

/// While the verb runs, says for whom a study waits.
class WaitingLine {
public:
    explicit WaitingLine(Surroundings& io)
    {
        storage::StudyFile::setWaiting([&io, last = std::string()](const core::Message& m) mutable {
            if (std::string words = io.language.say(m); words != last) {
                last = std::move(words);
                io.err << "bothways: " << last << std::endl;
            }
            return true;
        });
    }
    ~WaitingLine() { storage::StudyFile::setWaiting({}); }
    WaitingLine(const WaitingLine&) = delete;
    WaitingLine& operator=(const WaitingLine&) = delete;
};

} // namespace

namespace {

int runVerb(const std::vector<std::string>& given, Surroundings& io)
{
    Words arguments = given;
    if (const core::Message wrong = takeLanguage(arguments, io.language); !wrong.empty())
        return wrongUseOf({}, wrong, io);
    if (takeQuiet(arguments)) {
        io.quiet = true;
        io.errIsTerminal = false; // no progress either
    }
    if (const core::Message wrong = takeHelp(arguments); !wrong.empty())
        return wrongUseOf({}, wrong, io);
    if (arguments.empty())
        return wrongUseOf(arguments, noVerb(), io);
    if (!arguments.front().starts_with('-') && !verbNamed(arguments.front()))
        return wrongUseOf({}, noSuchVerb(arguments.front()), io);
    const Language& in = io.language;
    CLI::App program(in.say(introduction()), "bothways");
    describeProgram(program, in);
    Context context{io};
    const WaitingLine waiting(io);
    addVerbs(program, arguments, context);
    if (const auto settled = parse(program, arguments, io))
        return *settled;
    if (!context.result)
        return wrongUseOf(arguments, noVerb(), io);
    return report(*context.result, io);
}

} // namespace

void withWholeParser(Surroundings& io, const std::function<void(const CLI::App&)>& use)
{
    const Language& in = io.language;
    CLI::App program(in.say(introduction()), "bothways");
    describeProgram(program, in);
    Context context{io};
    for (const Verb& verb : allVerbs()) {
        CLI::App* added = program.add_subcommand(verb.name, in.say(verb.what));
        verb.describe(*added, context);
        nameTypes(in, *added);
    }
    use(program);
}

int runProgram(const std::vector<std::string>& given, Surroundings& io)
{
    if (!given.empty() && given.front() == kCompletionOption)
        return complete({given.begin() + 1, given.end()}, io);
    const int code = runVerb(given, io);
    io.out.flush();
    if (code != 0 || io.out)
        return code;
    io.err << io.language.say("bothways: the results cannot be written to standard output"_t)
           << "\n";
    return static_cast<int>(ErrorCode::studyFile);
}

} // namespace bothways::cli
