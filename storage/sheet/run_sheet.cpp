// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/run_sheet.h"

#include "storage/sheet/column_names.h"
#include "storage/sheet/ordinary_sheet.h"
#include "storage/sheet/run_columns.h"
#include "storage/sheet/run_rules.h"
#include "storage/sheet/sheet_reader.h"
#include "storage/spreadsheet/workbook.h"

#include <algorithm>

namespace bothways::storage {

using core::Error;
using core::ErrorCode;
using core::Run;
using core::Study;

namespace {

/// As writeRunSheet() begins: whatever its other columns are called, they are as they are.
bool beginsAsWritten(std::string_view text)
{
    if (text.starts_with("\xEF\xBB\xBF"))
        text.remove_prefix(3);
    return text.starts_with("run,configuration,");
}

/// A sheet in our own form that says more than that reading took: a name of the table in a column
/// that was kept without a meaning, or the days of its times.
bool saysMore(const RunSheet& sheet, bool timesOfDay)
{
    return std::any_of(sheet.own_columns.begin(), sheet.own_columns.end(),
                       [&](const OwnColumn& column) {
                           const ColumnMeaning meaning = meaningOf(column.name);
                           return meaning.known() && (meaning.column != kDateColumn || timesOfDay);
                       });
}

Result<RunSheet> parseOrdinary(std::string_view bytes, const std::string& name,
                               const SheetOptions& options, const Study* existing, bool& adapted)
{
    const auto prepared = prepareSheet(bytes, name, options);
    adapted =
        prepared ? prepared.value().adapted : isArchive(bytes) || isOrdinaryText(bytes, options);
    if (!prepared)
        return prepared.error();
    return SheetReader(prepared.value(), options, existing).read();
}

} // namespace

Result<RunSheet> parseRunSheet(std::string_view bytes, std::string_view name,
                               const SheetOptions& options, const Study* existing)
{
    bool adapted = false;
    if (isArchive(bytes) || whyNoSpreadsheet(bytes) || !options.sheet.empty())
        return parseOrdinary(bytes, std::string(name), options, existing, adapted);
    SheetReader reader(bytes, name, options, existing);
    auto ours = reader.read();
    if (options.ours_alone ||
        (ours && options.columns.empty() &&
         (beginsAsWritten(bytes) || !saysMore(ours.value(), reader.hadTimesOfDay()))))
        return ours;
    auto ordinary = parseOrdinary(bytes, std::string(name), options, existing, adapted);
    if (ordinary) {
        if (!adapted && ours)
            ours.value().lacking = std::move(ordinary.value().lacking);
        return adapted ? ordinary : ours;
    }
    const bool asked = !options.columns.empty();
    return (ours && !asked) || !adapted ? ours : ordinary;
}

bool isWorkbook(std::string_view bytes)
{
    return isArchive(bytes);
}

Result<std::string> readSheetBytes(const std::filesystem::path& file, Streams streams)
{
    constexpr std::uintmax_t kMostBytes = std::uintmax_t{64} << 20;
    return readWholeFile(file, kMostBytes, "a run sheet"_t, streams);
}

std::vector<Error> faultsOf(const Study& study, const Run& run)
{
    const auto others = othersIn(study, run.id);
    Spellings spellings = Spellings::of(others, run);
    const Run whole = normalised(run, spellings);
    std::vector<RunFault> faults = ownFaults(whole);
    const auto among = faultsAmong(others, {&whole, 1});
    faults.insert(faults.end(), among.begin(), among.end());
    const auto units = fuelFaults(study.properties.fuel, others, {&whole, 1});
    faults.insert(faults.end(), units.begin(), units.end());
    std::vector<Error> errors;
    for (RunFault& wrong : faults) {
        core::Place where;
        where.column = shownCell(wrong.column);
        errors.push_back(Error{ErrorCode::badInput, std::move(wrong.message), std::move(where)});
    }
    return errors;
}

} // namespace bothways::storage
