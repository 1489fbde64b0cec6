// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "storage/study/renaming.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct RenameOptions {
    std::string study, what, from, to;
};

Outcome rename(const RenameOptions& options, Surroundings& io)
{
    auto file = openForChange(options.study);
    if (!file)
        return file.error();
    const auto what =
        options.what == "direction" ? storage::NameOf::direction : storage::NameOf::configuration;
    if (Outcome renamed = storage::rename(file.value(), {{what, options.from, options.to}});
        !renamed)
        return renamed;
    io.told() << io.language.say(what == storage::NameOf::direction
                                     ? "renamed direction {} to {}"_t
                                     : "renamed configuration {} to {}"_t,
                                 options.from, options.to)
              << "\n";
    return Done{};
}

} // namespace

void describeRename(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<RenameOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    verb.add_option(in.say("WHAT"_t), options->what, in.say("configuration or direction"_t))
        ->required()
        ->type_name(in.say("TEXT"_t))
        ->check(oneOf(in, {"configuration", "direction"}));
    verb.add_option(in.say("OLD"_t), options->from, in.say("The name that it has"_t))->required();
    verb.add_option(in.say("NEW"_t), options->to, in.say("The name that it gets"_t))->required();
    addFooter(in, verb, "  bothways rename day.bothways configuration wihtout without");
    onCall(verb, context, [options, &context] { return rename(*options, context.io); });
}

} // namespace bothways::cli
