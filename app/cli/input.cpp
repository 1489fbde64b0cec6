// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"

#include "app/answer/looks.h"
#include "app/cli/warnings.h"
#include "core/recording/unreadable_recording.h"
#include "core/screening/screening.h"
#include "storage/bytes/evidence_file.h"
#include "storage/bytes/written_file.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <ostream>
#include <system_error>
#include <utility>

namespace bothways::cli {
namespace {

/// Share done in per cent, on one line that is wiped away at the end.
class ProgressLine {
public:
    explicit ProgressLine(const Surroundings& io) : m_io(io) {}
    ~ProgressLine()
    {
        if (m_shownPct >= 0)
            m_io.err << "\r\033[K" << std::flush;
    }
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;

    /// What screening calls; empty where nobody would see it.
    std::function<void(double)> shown()
    {
        if (!m_io.errIsTerminal)
            return {};
        return [this](double share) {
            const int pct = static_cast<int>(100.0 * share);
            if (std::exchange(m_shownPct, pct) != pct)
                m_io.err << "\r" << m_io.language.say("screening {} %"_t, pct) << std::flush;
        };
    }

private:
    const Surroundings& m_io;
    int m_shownPct = -1;
};

} // namespace

Result<Input> readInput(const std::filesystem::path& path, const Overrides& overrides,
                        const Surroundings& io)
{
    storage::SheetTraces traces = overrides.traces;
    traces.shift_s = overrides.shift_s.value_or(0.0);
    return app::readInput(path, {overrides.properties, io.today, storage::Streams::taken, io.stop,
                                 overrides.sheet, traces});
}

Result<storage::StudyFile> openForChange(const std::filesystem::path& path)
{
    std::error_code problem;
    const bool sheetLike =
        std::filesystem::is_regular_file(path, problem) && !app::meansAStudy(path);
    if (sheetLike)
        return Error{ErrorCode::studyFile,
                     core::message("is not a study, and only a study can be changed; make one with "
                                   "'bothways new NAME{0}', then 'bothways import NAME{0} {1}'"_t,
                                   storage::kStudyEnding, path.filename().string()),
                     path.string()};
    return storage::StudyFile::open(path);
}

Result<core::RunId> runByNumber(const core::Study& study, int number,
                                const std::filesystem::path& path)
{
    const auto found = std::find_if(study.runs.begin(), study.runs.end(),
                                    [&](const core::Run& run) { return run.number == number; });
    if (found != study.runs.end())
        return found->id;
    if (study.runs.empty())
        return wrongUse(core::message("there is no run {}: the study has no runs"_t, number),
                        path.string());
    const auto [lowest, highest] = std::minmax_element(
        study.runs.begin(), study.runs.end(),
        [](const core::Run& a, const core::Run& b) { return a.number < b.number; });
    return wrongUse(core::message("there is no run {}: the study's runs are numbered {} to {}"_t,
                                  number, lowest->number, highest->number),
                    path.string());
}

Result<core::Screening> screenWithProgress(const Input& input, const Surroundings& io)
{
    ProgressLine line(io);
    auto screening = core::readingRecordings(
        [&] { return core::screen(input.study, input.traces, line.shown(), io.stop); });
    if (screening && io.stop.stop_requested())
        return Error{ErrorCode::stopped, "stopped before the end"_t, {}};
    return screening;
}

Result<std::shared_ptr<const app::ResultSet>>
answerWithProgress(const Input& input, const Surroundings& io, app::AnswerOptions options)
{
    ProgressLine line(io);
    options.progress = line.shown();
    options.stop = io.stop;
    return app::answer(input, options);
}

Result<std::shared_ptr<const app::ResultSet>> answerWithProgress(const Input& input,
                                                                 const Surroundings& io)
{
    app::AnswerOptions options;
    options.analysis = core::AnalysisOptions::of(input.study.properties);
    return answerWithProgress(input, io, std::move(options));
}

void recordLook(const Input& input, const core::Analysis& analysis, Surroundings& io)
{
    if (input.isSheet() ||
        !app::isLookForTheRecord(input.study.properties, analysis, input.looked_at_pairs))
        return;
    auto file = storage::StudyFile::open(input.path);
    const Outcome noted =
        file ? file.value().note("look", app::lookDetail(analysis, input.study.properties))
             : Outcome(file.error());
    if (!noted)
        warn(io.language.say(input.study.properties.plan
                                 ? "this look at a planned study could not be recorded: {}"_t
                                 : "this look at the verdict could not be recorded: {}"_t,
                             io.language.describe(noted.error())),
             io);
}

void addEvidenceFile(const Language& in, CLI::App& verb, std::string& file)
{
    verb.add_option("--file", file,
                    in.say("A photo, or a clip and its second, as evidence: name, size and SHA-256 "
                           "are kept"_t))
        ->option_text(in.say("PATH[@SECONDS]"_t));
}

Result<std::string> wordsWithFile(const std::string& words, const std::string& file,
                                  const std::filesystem::path& study)
{
    if (file.empty())
        return words;
    const auto evidence = storage::evidenceFile(file, study.parent_path());
    if (!evidence)
        return evidence.error();
    return storage::withEvidenceFile(words, evidence.value());
}

} // namespace bothways::cli
