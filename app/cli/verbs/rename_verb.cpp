// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "storage/study/renaming.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

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
    io.out << fmt::format("renamed {} {} to {}\n", options.what, options.from, options.to);
    return Done{};
}

} // namespace

void addRename(CLI::App& program, Context& context)
{
    auto options = std::make_shared<RenameOptions>();
    CLI::App* verb = program.add_subcommand(
        "rename", "Another name for a configuration or a direction, in all runs");
    verb->add_option("STUDY", options->study, "The study")->required();
    verb->add_option("WHAT", options->what, "configuration or direction")
        ->required()
        ->check(CLI::IsMember({"configuration", "direction"}));
    verb->add_option("OLD", options->from, "The name that it has")->required();
    verb->add_option("NEW", options->to, "The name that it gets")->required();
    verb->footer("Example:\n  bothways rename day.bothways configuration wihtout without");
    onCall(*verb, context, [options, &context] { return rename(*options, context.io); });
}

} // namespace bothways::cli
