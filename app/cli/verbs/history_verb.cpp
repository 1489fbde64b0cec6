// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/analysis_json.h"
#include "app/wording/history.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct HistoryOptions {
    std::string study;
    bool json = false;
};

Outcome sayHistory(const HistoryOptions& options, Surroundings& io)
{
    if (!app::meansAStudy(options.study) && std::filesystem::exists(options.study))
        return Error{ErrorCode::studyFile, "is not a study, and only a study has a history"_t,
                     options.study};
    const auto file = storage::StudyFile::open(options.study, true);
    if (!file)
        return file.error();
    const auto history = file.value().history();
    if (!history)
        return history.error();
    if (options.json) {
        io.out << app::historyJson(history.value());
        return Done{};
    }
    for (const std::string& line : app::wording::historyLines(io.language, history.value()))
        io.out << line << "\n";
    return Done{};
}

} // namespace

void describeHistory(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<HistoryOptions>();
    verb.add_option(in.say("STUDY"_t), options->study, in.say("The study"_t))->required();
    verb.add_flag("--json", options->json, in.say("As JSON, for programs"_t));
    addFooter(in, verb, "  bothways history day.bothways",
              in.say("Every change and every look at the verdict, oldest first, in UTC. Nothing is "
                     "ever taken out of it."_t));
    onCall(verb, context, [options, &context] { return sayHistory(*options, context.io); });
}

} // namespace bothways::cli
