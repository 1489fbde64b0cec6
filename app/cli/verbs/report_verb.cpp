// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/answer/same_runs.h"
#include "app/cli/input.h"
#include "app/cli/noise.h"
#include "app/cli/output.h"
#include "app/cli/several.h"
#include "app/cli/verbs/verbs.h"
#include "app/output/report_html.h"
#include "app/wording/findings.h"
#include "app/wording/history.h"
#include "app/wording/recordings.h"
#include "core/effect/answer.h"
#include "storage/study/library_versions.h"

#include <CLI/CLI.hpp>

#include <filesystem>
#include <memory>
#include <ostream>

namespace bothways::cli {
namespace {

using Paths = std::vector<std::filesystem::path>;

struct ReportOptions {
    std::vector<std::string> files, noise_from;
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

/// Whether the second of two files is where the report of the first goes, as it ever could be: it
/// is, unless another study or run sheet stands there.
bool isTarget(const std::filesystem::path& first, const std::filesystem::path& second)
{
    std::error_code problem;
    if (!std::filesystem::is_regular_file(second, problem) ||
        std::filesystem::equivalent(first, second, problem))
        return true;
    const std::string ending = second.extension().string();
    return !storage::StudyFile::isStudyFile(second) &&
           (core::sameWord(ending, ".html") || core::sameWord(ending, ".htm"));
}

Outcome writeReport(const ReportOptions& options, const std::string& html, const Paths& inputs,
                    Surroundings& io)
{
    if (options.target.isStandardOutput()) {
        io.out << html;
        return Done{};
    }
    if (Outcome written = writeTo(options.target, html, inputs, app::kReportMark); !written)
        return written;
    io.told() << io.language.say("wrote {}"_t, options.target.file()) << "\n";
    return Done{};
}

Outcome reportOne(const ReportOptions& options, Surroundings& io)
{
    auto input =
        readWithNoiseFrom(options.noise_from, options.files.front(), options.overrides, io);
    if (!input)
        return input.error();
    const auto answered = answerWithProgress(input.value(), io);
    if (!answered)
        return answered.error();
    const auto& answer = answered.value();
    const core::Study& study = answer->study;
    const core::Analysis& analysis = answer->analysis;
    const Paths inputs = input.value().filesRead();
    if (Outcome may = mayWriteTo(options.target, inputs, app::kReportMark); !may)
        return may;
    recordLook(input.value(), analysis, io); // first, so that the report shows it
    auto lines = historyOf(io.language, input.value());
    if (!lines)
        return lines.error();
    std::vector<std::string> live;
    if (!input.value().isSheet()) {
        auto told = app::wording::liveRecordings(io.language, *input.value().file);
        if (!told)
            return told.error();
        live = std::move(told).take();
    }
    const std::string html = app::reportHtml(
        {study, analysis, answer->screening, std::move(lines).take(), input.value().sha256,
         input.value().fileName(), options.unit.value_or(app::wording::shownUnitOf(study)),
         app::ReportInput::programAndLibraries(storage::libraryVersions()),
         app::wording::spoiledRunsSentence(io.language, answer->spoiled), io.language,
         std::move(live)});
    return writeReport(options, html, inputs, io);
}

Outcome reportSeveral(const ReportOptions& options, Surroundings& io)
{
    app::SeveralInput given;
    given.language = io.language;
    given.madeBy = app::ReportInput::programAndLibraries(storage::libraryVersions());
    std::vector<std::pair<Input, std::shared_ptr<const app::ResultSet>>> read;
    Paths inputs;
    app::GivenRuns known;
    auto several = readSeveral(
        options.files, options.overrides, io,
        [&](const Input& input) { return answerWithProgress(input, io); },
        [&](Input&& input, const std::shared_ptr<const app::ResultSet>& answer) {
            given.checksums.push_back(input.sha256);
            core::Message twice;
            if (known.take(app::givenStudy(input), twice) && !twice.empty())
                given.remarks.push_back(io.language.say(twice) + ".");
            const std::string spoiled =
                app::wording::spoiledRunsSentence(io.language, answer->spoiled);
            if (!spoiled.empty())
                given.remarks.push_back(input.name() + ": " + spoiled);
            const Paths files = input.filesRead();
            inputs.insert(inputs.end(), files.begin(), files.end());
            read.emplace_back(std::move(input), answer);
        });
    if (!several)
        return several.error();
    given.together = std::move(several.value().together);
    given.unit = options.unit.value_or(several.value().unit);
    const Outcome written = writeReport(options, app::reportOfSeveralHtml(given), inputs, io);
    if (written)
        for (const auto& [input, answer] : read)
            recordLook(input, answer->analysis, io);
    return written;
}

} // namespace

void describeReport(CLI::App& verb, Context& context)
{
    const Language& in = context.io.language;
    auto options = std::make_shared<ReportOptions>();
    verb.add_option(in.say("FILE"_t), options->files,
                    in.say("A study or a run sheet; several are pooled"_t))
        ->required();
    addOutput(in, verb, options->target);
    addAnalysisOverrides(in, verb, options->overrides);
    addNoiseFrom(in, verb, options->noise_from);
    addUnit(in, verb, options->unit);
    addFooter(in, verb, "  bothways report day.bothways --output day.html");
    onCall(verb, context, [options, &context] {
        Target& target = options->target;
        if (options->files.size() == 2 && target.file().empty() &&
            isTarget(options->files[0], options->files[1])) {
            target.word = options->files.back();
            options->files.pop_back();
        }
        return options->files.size() == 1 ? reportOne(*options, context.io)
                                          : reportSeveral(*options, context.io);
    });
}

} // namespace bothways::cli
