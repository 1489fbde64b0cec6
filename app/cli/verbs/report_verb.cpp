// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"
#include "app/cli/output.h"
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
    std::string file;
    Target target;
    std::optional<app::wording::ShownUnit> unit;
    Overrides overrides;
};

/// What was done to the runs, and every look at the verdict, newest last.
Result<std::vector<std::string>> historyOf(const Language& in, const Input& input)
{
    if (input.isSheet())
        return std::vector<std::string>();
    const auto history = input.file->history();
    if (!history)
        return history.error();
    return app::wording::historyLines(in, history.value());
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
    auto lines = historyOf(io.language, input.value());
    if (!lines)
        return lines.error();
    const std::string html = app::reportHtml(
        {study, analysis, answer->screening, std::move(lines).take(), input.value().sha256,
         input.value().fileName(), options.unit.value_or(app::wording::shownUnitOf(study)),
         app::ReportInput::programAndLibraries(storage::libraryVersions()),
         app::wording::spoiledRunsSentence(
             io.language, analysis,
             storage::withoutOverruled(answer->screening, input.value().overruled)),
         io.language});
    if (options.target.isStandardOutput()) {
        io.out << html;
        recordLook(input.value(), analysis, io);
        return Done{};
    }
    if (Outcome written =
            writeTo(options.target, html, input.value().filesRead(), app::kReportMark);
        !written)
        return written;
    recordLook(input.value(), analysis, io);
    io.out << io.language.say("wrote {}"_t, options.target.file()) << "\n";
    return Done{};
}

} // namespace

void describeReport(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<ReportOptions>();
    verb.add_option(in.say("FILE"_t), options->file, in.say("A study or a run sheet"_t))
        ->required();
    addTarget(in, verb, options->target);
    addAnalysisOverrides(in, verb, options->overrides);
    addUnit(in, verb, options->unit);
    addFooter(in, verb, "  bothways report day.bothways --output day.html");
    onCall(verb, context, [options, &context] { return report(*options, context.io); });
}

} // namespace bothways::cli
