// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"

#include "app/wording/sentences.h"
#include "core/effect/answer.h"
#include "core/recording/trace_consumption.h"
#include "core/screening/finding.h"
#include "core/screening/screening.h"
#include "core/study/properties.h"
#include "storage/bytes/sha256.h"
#include "storage/recordings/run_traces.h"
#include "storage/sheet/run_sheet.h"
#include "storage/sheet/study_digest.h"

#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <ostream>
#include <system_error>

namespace bothways::cli {
namespace {

constexpr const char* kStudySuffix = ".bothways";

bool meansAStudy(const std::filesystem::path& path)
{
    return storage::StudyFile::isStudyFile(path) || path.extension() == kStudySuffix;
}

std::string dialectWords(const storage::SheetDialect& dialect)
{
    const char* separator = dialect.separator == ';'    ? "semicolons"
                            : dialect.separator == '\t' ? "tabs"
                                                        : "commas";
    return fmt::format("{} between columns and decimal {}", separator,
                       dialect.decimalComma ? "commas" : "points");
}

Result<Input> readStudy(Input input, const Overrides& overrides)
{
    auto file = storage::StudyFile::open(input.path, true);
    if (!file)
        return file.error();
    input.file = std::make_unique<storage::StudyFile>(std::move(file).take());
    auto study = input.file->study();
    if (!study)
        return study.error();
    input.study = std::move(study).take();
    input.sha256 = storage::sha256OfStudy(input.study); // what it says, whatever its history
    if (const Outcome applied = overrides.applyTo(input.study.properties); !applied)
        return applied.error();
    auto overruled = input.file->overruled();
    if (!overruled)
        return overruled.error();
    input.overruled = std::move(overruled).take();
    input.traces = storage::tracesOf(*input.file);
    return input;
}

Result<Input> readSheet(Input input, const Overrides& overrides, const Surroundings& io)
{
    core::StudyProperties properties;
    if (const Outcome applied = overrides.applyTo(properties); !applied)
        return applied.error();
    storage::SheetOptions options;
    options.date = overrides.given("date").value_or("");
    options.today = io.today;
    auto read = storage::readRunSheet(input.path, options);
    if (!read)
        return read.error();
    storage::RunSheet sheet = std::move(read).take();
    input.study = std::move(sheet.study);
    const std::string date = input.study.properties.date;
    input.study.properties = std::move(properties);
    if (input.study.properties.date.empty())
        input.study.properties.date = date;
    input.notes.push_back({core::NoteKind::sheetDialect, dialectWords(sheet.dialect)});
    if (sheet.dateAssumed)
        input.notes.push_back({core::NoteKind::dateAssumed, io.today});
    auto traces = storage::tracesOfSheet(input.path, input.study);
    if (!traces)
        return traces.error();
    input.traces = std::move(traces).take();
    auto sum = storage::sha256OfFile(input.path);
    if (!sum)
        return sum.error();
    input.sha256 = std::move(sum).take();
    return input;
}

/// Runs whose driver noted no consumption take it from their recordings.
void fillFromTraces(Input& input)
{
    const core::ConsumptionTaken filled =
        core::takeConsumptionFromTraces(input.study, input.traces);
    if (!filled.taken.empty())
        input.notes.push_back({core::NoteKind::consumptionFromTrace,
                               fmt::format("{}", fmt::join(filled.taken, ", "))});
    if (!filled.lacking.empty())
        input.notes.push_back({core::NoteKind::consumptionLacking,
                               fmt::format("{}", fmt::join(filled.lacking, ", "))});
}

} // namespace

std::string Input::name() const
{
    return study.properties.name.empty() ? path.stem().string() : study.properties.name;
}

Result<Input> readInput(const std::filesystem::path& path, const Overrides& overrides,
                        const Surroundings& io)
{
    Input input;
    input.path = path;
    auto read = meansAStudy(path) ? readStudy(std::move(input), overrides)
                                  : readSheet(std::move(input), overrides, io);
    if (!read)
        return read;
    if (overrides.given("baseline"))
        if (const Outcome known = core::checkBaseline(read.value().study); !known)
            return wrongUse(known.error().message.english(), path.string());
    fillFromTraces(read.value());
    return read;
}

Result<storage::StudyFile> openForChange(const std::filesystem::path& path)
{
    std::error_code problem;
    const bool sheetLike = std::filesystem::is_regular_file(path, problem) && !meansAStudy(path);
    if (sheetLike)
        return Error{ErrorCode::studyFile,
                     fmt::format("is not a study, and only a study can be changed; make one with "
                                 "'bothways new NAME{0}', then 'bothways import NAME{0} {1}'",
                                 kStudySuffix, path.filename().string()),
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
        return wrongUse(fmt::format("there is no run {}: the study has no runs", number),
                        path.string());
    const auto [lowest, highest] = std::minmax_element(
        study.runs.begin(), study.runs.end(),
        [](const core::Run& a, const core::Run& b) { return a.number < b.number; });
    return wrongUse(fmt::format("there is no run {}: the study's runs are numbered {} to {}",
                                number, lowest->number, highest->number),
                    path.string());
}

Result<std::vector<core::RunId>> runsByNumber(const core::Study& study,
                                              const std::vector<int>& numbers,
                                              const std::filesystem::path& path)
{
    std::vector<core::RunId> ids;
    for (const int number : numbers) {
        auto id = runByNumber(study, number, path);
        if (!id)
            return id.error();
        ids.push_back(id.value());
    }
    return ids;
}

core::Screening screenWithProgress(const Input& input, const Surroundings& io)
{
    if (!io.errIsTerminal)
        return core::screen(input.study, input.traces);
    int shownPct = -1;
    auto screening = core::screen(input.study, input.traces, [&](double share) {
        const int pct = static_cast<int>(100.0 * share);
        if (pct == shownPct)
            return;
        shownPct = pct;
        io.err << fmt::format("\rscreening {} %", pct) << std::flush;
    });
    io.err << "\r\033[K" << std::flush;
    return screening;
}

void recordLook(const Input& input, const core::Analysis& analysis, Surroundings& io)
{
    if (input.isSheet() || !input.study.properties.plan)
        return;
    auto file = storage::StudyFile::open(input.path);
    const Outcome noted = file ? file.value().note("look", app::english::verdictSentence(analysis))
                               : Outcome(file.error());
    if (!noted)
        io.err << fmt::format("warning: this look at a planned study could not be recorded: {}\n",
                              core::describe(noted.error()));
}

Outcome writeWholeFile(const std::filesystem::path& path, const std::string& text)
{
    const auto failed = [&](const std::string& why) {
        return Error{ErrorCode::studyFile, "cannot be written: " + why, path.string()};
    };
    if (storage::StudyFile::isStudyFile(path))
        return failed("it is a study, which is not written over");
    std::error_code problem;
    if (std::filesystem::is_directory(path, problem))
        return failed("it is a directory");
    // Into a neighbour first, so that a full disk leaves the old file as it was; a device or a pipe
    // is written to as it is.
    const bool special =
        std::filesystem::exists(path, problem) && !std::filesystem::is_regular_file(path, problem);
    std::filesystem::path part = path;
    if (!special)
        part += ".part";
    std::FILE* stream = std::fopen(part.c_str(), "wb");
    if (stream == nullptr)
        return failed(std::generic_category().message(errno));
    const bool whole = std::fwrite(text.data(), 1, text.size(), stream) == text.size();
    int reason = errno;
    const bool closed = std::fclose(stream) == 0;
    if (whole)
        reason = errno;
    if (!whole || !closed) {
        if (!special)
            std::filesystem::remove(part, problem);
        return failed(std::generic_category().message(reason));
    }
    if (special)
        return Done{};
    std::filesystem::rename(part, path, problem);
    if (problem) {
        const std::string why = problem.message();
        std::filesystem::remove(part, problem);
        return failed(why);
    }
    return Done{};
}

Outcome
changeRuns(const std::filesystem::path& path, const std::vector<int>& numbers,
           const std::function<Outcome(storage::StudyFile&, const std::vector<core::RunId>&)>& job)
{
    auto file = openForChange(path);
    if (!file)
        return file.error();
    const auto study = file.value().study();
    if (!study)
        return study.error();
    const auto runs = runsByNumber(study.value(), numbers, path);
    if (!runs)
        return runs.error();
    return job(file.value(), runs.value());
}

} // namespace bothways::cli
