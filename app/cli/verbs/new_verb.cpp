// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "core/study/properties.h"

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
    for (const std::string& text : options.properties) {
        auto assignment = splitAssignment(text);
        if (!assignment)
            return assignment.error();
        const auto& [property, value] = assignment.value();
        if (Outcome set = core::setProperty(properties, property, value); !set)
            return set;
    }
    auto file = storage::StudyFile::create(options.study, properties);
    if (!file)
        return file.error();
    io.out << "made " << options.study << "\n";
    return Done{};
}

} // namespace

void addNew(CLI::App& program, Context& context)
{
    auto options = std::make_shared<NewOptions>();
    CLI::App* verb = program.add_subcommand("new", "Make an empty study");
    verb->add_option("STUDY", options->study, "The file to make; there must be none yet")
        ->required();
    verb->add_option("PROPERTIES", options->properties, "Properties, as 'bothways set' takes them")
        ->option_text("NAME=VALUE ...");
    verb->footer("Example:\n  bothways new day.bothways name='Levee road' stretch.km=5 "
                 "overspeed.rpm=3200");
    onCall(*verb, context, [options, &context] { return makeStudy(*options, context.io); });
}

} // namespace bothways::cli
