// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct NewOptions {
    std::string study;
    std::vector<std::string> properties;
};

Outcome makeStudy(const NewOptions& options, Surroundings& io)
{
    core::StudyProperties properties;
    if (Outcome set = assignProperties(properties, options.properties); !set)
        return set;
    auto file = storage::StudyFile::create(options.study, properties);
    if (!file)
        return file.error();
    io.told() << io.language.say("made {}"_t, options.study) << "\n";
    return Done{};
}

} // namespace

void describeNew(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<NewOptions>();
    verb.add_option(in.say("STUDY"_t), options->study,
                    in.say("The file to make; there must be none yet"_t))
        ->required();
    verb.add_option(in.say("PROPERTIES"_t), options->properties,
                    in.say("Properties, as 'bothways set' takes them"_t))
        ->option_text(in.say("NAME=VALUE"_t) + " ...");
    addFooter(in, verb,
              "  bothways new day.bothways name='Levee road' stretch.km=5 overspeed.rpm=3200");
    onCall(verb, context, [options, &context] { return makeStudy(*options, context.io); });
}

} // namespace bothways::cli
