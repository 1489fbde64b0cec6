// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "app/wording/history.h"

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
    io.told() << app::wording::historySentence(io.language, back ? "undo" : "redo",
                                               entry.value().kind + " " + entry.value().detail)
              << "\n";
    return Done{};
}

void describeStep(CLI::App& verb, Context& context, const std::string& commands, bool back)
{
    const Language& in = context.io.language;
    auto study = std::make_shared<std::string>();
    verb.add_option(in.say("STUDY"_t), *study, in.say("The study"_t))->required();
    addFooter(in, verb, commands);
    onCall(verb, context, [study, back, &context] { return step(*study, back, context.io); });
}

} // namespace

void describeUndo(CLI::App& verb, Context& context)
{
    describeStep(verb, context, "  bothways undo day.bothways", true);
}

void describeRedo(CLI::App& verb, Context& context)
{
    describeStep(verb, context, "  bothways redo day.bothways", false);
}

} // namespace bothways::cli
