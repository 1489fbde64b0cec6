// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/answer/input.h"

#include "core/study/fuel.h"
#include "core/study/properties.h"
#include "storage/bytes/sha256.h"
#include "storage/bytes/written_file.h"
#include "storage/recordings/run_traces.h"
#include "storage/sheet/run_sheet.h"
#include "storage/sheet/study_digest.h"

#include <optional>
#include <string_view>

namespace bothways::app {
namespace {

using core::Outcome;
using core::Result;

std::optional<std::string> given(const InputOptions& options, std::string_view property)
{
    std::optional<std::string> last;
    for (const auto& [name, value] : options.properties)
        if (core::sameWord(name, property))
            last = value;
    return last;
}

Outcome apply(const InputOptions& options, core::StudyProperties& properties)
{
    for (const auto& [name, value] : options.properties)
        if (Outcome set = core::setProperty(properties, name, value); !set)
            return set;
    return core::Done{};
}

core::Message dialectWords(const storage::SheetDialect& dialect)
{
    const core::Text<0> separator = dialect.separator == ';'    ? "semicolons"_t
                                    : dialect.separator == '\t' ? "tabs"_t
                                    : dialect.separator == '|'  ? "bars"_t
                                                                : "commas"_t;
    return core::message(dialect.decimalComma ? "{} between columns and decimal commas"_t
                                              : "{} between columns and decimal points"_t,
                         separator);
}

/// Columns that mean nothing to us, in one sentence.
core::Message ownColumnsWords(const std::vector<storage::OwnColumn>& columns)
{
    std::string names;
    for (const storage::OwnColumn& column : columns)
        names += (names.empty() ? "" : ", ") + column.name;
    return core::message("columns kept without a meaning: {}"_t, names);
}

Result<Input> readStudy(Input input, const InputOptions& options)
{
    auto file = storage::StudyFile::open(input.path, true);
    if (!file)
        return file.error();
    input.file = std::make_unique<storage::StudyFile>(std::move(file).take());
    auto study = input.file->study();
    if (!study)
        return study.error();
    auto overruled = input.file->overruled();
    if (!overruled)
        return overruled.error();
    const auto history = input.file->history();
    if (!history)
        return history.error();
    const std::string sha256 = storage::sha256OfStudy(study.value()); // whatever its history
    if (const Outcome applied = apply(options, study.value().properties); !applied)
        return applied.error();
    static_cast<Material&>(input) =
        materialOf(std::move(study).take(), std::move(overruled).take(), history.value());
    input.sha256 = sha256;
    const storage::SheetOptions& sheet = options.sheet;
    if (!sheet.lacking_columns && (!sheet.columns.empty() || !sheet.sheet.empty() ||
                                   sheet.dates != storage::DateOrder::unknown))
        return core::Error{core::ErrorCode::wrongUse,
                           "is a study; --column, --dates and --sheet are for spreadsheets"_t,
                           input.path.string()};
    if (!sheet.lacking_columns && !options.traces.folder.empty())
        return core::Error{core::ErrorCode::wrongUse,
                           "is a study, which holds its recordings; --traces is for run sheets"_t,
                           input.path.string()};
    if (!sheet.lacking_columns && options.traces.shift_s != 0.0)
        return core::Error{core::ErrorCode::wrongUse,
                           "is a study, which holds its recordings; --shift is for run sheets"_t,
                           input.path.string()};
    if (const Outcome whole = storage::checkRecordings(*input.file, options.stop); !whole)
        return whole.error();
    input.traces = storage::tracesOf(*input.file, options.stop);
    return input;
}

Result<Input> readSheet(Input input, const InputOptions& options)
{
    core::StudyProperties properties;
    if (const Outcome applied = apply(options, properties); !applied)
        return applied.error();
    storage::SheetOptions sheetOptions = options.sheet;
    sheetOptions.date = given(options, "date").value_or("");
    sheetOptions.today = options.today;
    const auto bytes = storage::readSheetBytes(input.path, options.streams); // a pipe is read once
    if (!bytes)
        return bytes.error();
    const bool isStandard = input.path == storage::kStandardInputWord;
    const std::string shownName = isStandard ? storage::kStandardInput : input.path.string();
    if (storage::beginsAsAStudy(bytes.value()))
        return core::Error{core::ErrorCode::badInput,
                           "is a study, which does not come through a pipe; give its name"_t,
                           shownName};
    auto read = storage::parseRunSheet(bytes.value(), shownName, sheetOptions);
    if (!read)
        return read.error();
    storage::RunSheet sheet = std::move(read).take();
    input.study = std::move(sheet.study);
    const std::string date = input.study.properties.date;
    input.study.properties = std::move(properties);
    if (input.study.properties.date.empty())
        input.study.properties.date = date;
    if (!storage::isWorkbook(bytes.value()))
        input.notes.push_back({core::NoteKind::sheetDialect, dialectWords(sheet.dialect)});
    for (const core::Message& found : sheet.found)
        input.notes.push_back({core::NoteKind::sheetDialect, found});
    if (!sheet.own_columns.empty())
        input.notes.push_back({core::NoteKind::sheetDialect, ownColumnsWords(sheet.own_columns)});
    input.own_columns = std::move(sheet.own_columns);
    input.lacking_columns = std::move(sheet.lacking);
    if (sheet.dateAssumed)
        input.notes.push_back(
            {core::NoteKind::dateAssumed, core::Message::verbatim(options.today)});
    auto files = storage::traceFiles(input.study, input.path, options.traces);
    if (!files)
        return files.error();
    input.trace_files = std::move(files).take();
    auto traces = storage::tracesOfSheet(input.path, input.study, options.stop, options.traces);
    if (!traces)
        return traces.error();
    input.traces = std::move(traces).take();
    input.sha256 = storage::sha256(bytes.value());
    return input;
}

} // namespace

std::string Input::name() const
{
    if (!study.properties.name.empty())
        return study.properties.name;
    return path == storage::kStandardInputWord ? fileName() : path.stem().string();
}

std::string Input::fileName() const
{
    return path == storage::kStandardInputWord ? storage::kStandardInput : path.filename().string();
}

std::vector<std::filesystem::path> Input::filesRead() const
{
    std::vector<std::filesystem::path> files{path};
    for (const auto& [run, recording] : trace_files)
        files.push_back(recording);
    return files;
}

bool meansAStudy(const std::filesystem::path& path)
{
    return storage::StudyFile::isStudyFile(path) || path.extension() == storage::kStudyEnding;
}

Result<Input> readInput(const std::filesystem::path& path, const InputOptions& options)
{
    Input input;
    input.path = path;
    auto read = meansAStudy(path) ? readStudy(std::move(input), options)
                                  : readSheet(std::move(input), options);
    if (!read)
        return read;
    if (given(options, "baseline"))
        if (const Outcome known = core::checkBaseline(read.value().study); !known)
            return core::Error{core::ErrorCode::wrongUse, known.error().message, path.string()};
    if (given(options, "fuel"))
        if (const Outcome fits =
                core::checkFuel(read.value().study, read.value().study.properties.fuel);
            !fits)
            return core::Error{core::ErrorCode::wrongUse, fits.error().message, path.string()};
    if (const Outcome taken = takeRecordedConsumption(read.value()); !taken)
        return taken.error();
    return read;
}

Result<std::shared_ptr<const ResultSet>> answerTo(const Input& input, std::stop_token stop)
{
    AnswerOptions options;
    options.stop = std::move(stop);
    options.analysis = core::AnalysisOptions::of(input.study.properties);
    return answer(input, options);
}

} // namespace bothways::app
