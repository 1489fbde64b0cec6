// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/output.h"

#include "storage/bytes/written_file.h"

#include <CLI/CLI.hpp>

#include <unistd.h>

namespace bothways::cli {

bool Target::isStandardOutput() const
{
    return file().empty() || file() == "-" || storage::handedFile(file()) == STDOUT_FILENO;
}

namespace {

/// --output (--to), --replace
CLI::Option* addOptions(const Language& in, CLI::App& verb, Target& target)
{
    CLI::Option* output = verb.add_option("--output,--to", target.output,
                                          in.say("Where to write (default: standard output)"_t))
                              ->type_name(in.say("FILE"_t));
    verb.add_flag("--replace", target.replace,
                  in.say("With --output: put it in the place of a file that is there. Without it "
                         "only a page that Bothways wrote is replaced"_t))
        ->needs(output);
    return output;
}

} // namespace

void addTarget(const Language& in, CLI::App& verb, Target& target)
{
    CLI::Option* word = verb.add_option(in.say("TO##a file"_t), target.word,
                                        in.say("Where to write (default: standard output)"_t));
    addOptions(in, verb, target)->excludes(word)->description(in.say("The same, as an option"_t));
}

void addOutput(const Language& in, CLI::App& verb, Target& target)
{
    addOptions(in, verb, target);
}

namespace {

storage::WriteRules rulesFor(const std::string& file, const std::string& option, bool replace,
                             const std::vector<std::filesystem::path>& inputs,
                             std::string_view ownMark)
{
    storage::WriteRules rules;
    rules.replace = replace;
    rules.inputs = inputs;
    rules.ownMark = ownMark;
    rules.howToReplace = core::message("to replace it, give {} {} --replace"_t, option, file);
    rules.streams = storage::Streams::taken;
    return rules;
}

constexpr const char* kOutput = "--output";

} // namespace

Outcome writeTo(const std::string& file, const std::string& option, bool replace,
                std::string_view text, const std::vector<std::filesystem::path>& inputs,
                std::string_view ownMark)
{
    return storage::writeWholeFile(file, text, rulesFor(file, option, replace, inputs, ownMark));
}

Outcome writeTo(const Target& target, std::string_view text,
                const std::vector<std::filesystem::path>& inputs, std::string_view ownMark)
{
    return writeTo(target.file(), kOutput, target.replace, text, inputs, ownMark);
}

Outcome mayWriteTo(const Target& target, const std::vector<std::filesystem::path>& inputs,
                   std::string_view ownMark)
{
    if (target.isStandardOutput())
        return Done{};
    return storage::mayWriteFile(target.file(),
                                 rulesFor(target.file(), kOutput, target.replace, inputs, ownMark));
}

} // namespace bothways::cli
