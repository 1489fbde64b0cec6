// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/report_html.h"
#include "app/wording/findings.h"
#include "app/wording/history.h"
#include "core/effect/answer.h"
#include "storage/study/library_versions.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

struct ReportOptions {
    std::string file, to;
    std::optional<app::wording::ShownUnit> unit;
    Overrides overrides;
};

/// What was done to the runs, and every look at the verdict, newest last.
Result<std::vector<std::string>> historyLines(const Language& in, const Input& input)
{
    std::vector<std::string> lines;
    if (input.isSheet())
        return lines;
    const auto history = input.file->history();
    if (!history)
        return history.error();
    for (const storage::HistoryEntry& entry : history.value())
        lines.push_back(entry.at + " " + app::wording::historyLine(in, entry) +
                        (entry.undone ? " " + in.say("(undone)"_t) : ""));
    return lines;
}

Outcome report(const ReportOptions& options, Surroundings& io)
{
    auto input = readInput(options.file, options.overrides, io);
    if (!input)
        return input.error();
    const auto answered = answerWithProgress(input.value(), io);
    if (!answered)
        return answered.error();
    const auto& answer = answered.value();
    const core::Study& study = answer->study;
    const core::Analysis& analysis = answer->analysis;
    auto lines = historyLines(io.language, input.value());
    if (!lines)
        return lines.error();
    const std::string html =
        app::reportHtml({study, analysis, answer->screening, std::move(lines).take(),
                         input.value().sha256, input.value().path.filename().string(),
                         options.unit.value_or(app::wording::shownUnitOf(study)),
                         app::ReportInput::programAndLibraries(storage::libraryVersions()),
                         app::wording::spoiledRunsSentence(
                             io.language, analysis,
                             storage::withoutOverruled(answer->screening, input.value().overruled)),
                         io.language});
    if (options.to.empty()) {
        io.out << html;
        recordLook(input.value(), analysis, io);
        return Done{};
    }
    if (Outcome written = writeWholeFile(options.to, html); !written)
        return written;
    recordLook(input.value(), analysis, io);
    io.out << io.language.say("wrote {}"_t, options.to) << "\n";
    return Done{};
}

} // namespace

void describeReport(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<ReportOptions>();
    verb.add_option(in.say("FILE"_t), options->file, in.say("A study or a run sheet"_t))
        ->required();
    verb.add_option(in.say("TO##a file"_t) + ",--to", options->to,
                    in.say("Where to write (default: standard output)"_t));
    addAnalysisOverrides(in, verb, options->overrides);
    addUnit(in, verb, options->unit);
    addFooter(in, verb, "  bothways report day.bothways --to day.html");
    onCall(verb, context, [options, &context] { return report(*options, context.io); });
}

} // namespace bothways::cli
