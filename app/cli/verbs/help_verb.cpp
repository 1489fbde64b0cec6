// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/options.h"
#include "app/cli/verbs/verbs.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <string>

namespace bothways::cli {

/// What it is asked for is said by the verb itself: the program reads "help VERB" as "VERB --help",
/// and "help" as "--help". This is what stands in the list of verbs, and in "help help".
void describeHelp(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto asked = std::make_shared<std::string>();
    verb.add_option(in.say("VERB"_t), *asked,
                    in.say("The verb to be told of (default: all of them)"_t));
    addFooter(in, verb, "  bothways help analyse");
    onCall(verb, context, [asked] { return Outcome(Done{}); });
}

} // namespace bothways::cli
