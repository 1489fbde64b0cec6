// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "app/wording/sentences.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

Outcome step(const std::string& path, bool back, Surroundings& io)
{
    auto file = openForChange(path);
    if (!file)
        return file.error();
    const auto entry = back ? file.value().undo() : file.value().redo();
    if (!entry)
        return entry.error();
    io.out << app::english::historySentence(back ? "undo" : "redo",
                                            entry.value().kind + " " + entry.value().detail)
           << "\n";
    return Done{};
}

void addStep(CLI::App& program, Context& context, const char* name, const char* what, bool back)
{
    auto study = std::make_shared<std::string>();
    CLI::App* verb = program.add_subcommand(name, what);
    verb->add_option("STUDY", *study, "The study")->required();
    verb->footer(std::string("Example:\n  bothways ") + name + " day.bothways");
    onCall(*verb, context, [study, back, &context] { return step(*study, back, context.io); });
}

} // namespace

void addUndo(CLI::App& program, Context& context)
{
    addStep(program, context, "undo", "Take back the newest change; the history keeps both", true);
    addStep(program, context, "redo", "Do again what was taken back", false);
}

} // namespace bothways::cli
