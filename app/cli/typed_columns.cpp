// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/typed_columns.h"

#include "app/cli/options.h"
#include "app/cli/warnings.h"
#include "core/study/property_values.h"
#include "core/study/units.h"
#include "storage/sheet/column_names.h"
#include "storage/sheet/run_columns.h"

#include <fmt/format.h>

#include <algorithm>

namespace bothways::cli {
namespace {

bool isNumberColumn(const std::string& canonical)
{
    const auto numbers = storage::numberColumns();
    return core::unitFromName(canonical) || !storage::timedAccessoryOf(canonical).empty() ||
           std::any_of(numbers.begin(), numbers.end(), [&](const storage::NumberColumn& column) {
               return column.name == canonical;
           });
}

/// A column that the study keeps without a meaning, by the name that it was given.
bool isOwnColumn(const core::Study& study, const std::string& name)
{
    return std::ranges::any_of(study.runs, [&](const core::Run& run) {
        return std::ranges::any_of(
            run.extra, [&](const auto& own) { return core::sameWord(own.first, name); });
    });
}

/// "consumption" alone says what is meant, not in which unit.
Error needsUnit(const std::string& name, const storage::ColumnMeaning& meaning)
{
    const std::string ours =
        meaning.known() ? meaning.column : fmt::format("{}", fmt::join(meaning.candidates, ", "));
    core::Place where;
    where.column = name;
    return {core::ErrorCode::badInput,
            core::message("does not name a unit that can be taken here; expected {}"_t, ours),
            std::move(where)};
}

} // namespace

Result<Assignments> assignmentsFrom(const std::vector<std::string>& words)
{
    Assignments columns;
    for (const std::string& text : words) {
        auto assignment = splitAssignment(text);
        if (!assignment)
            return assignment.error();
        columns.push_back(std::move(assignment.value()));
    }
    return columns;
}

Result<Assignments> asColumns(Assignments typed, const core::Study& study)
{
    for (auto& [column, value] : typed) {
        if (!storage::isKnownColumn(storage::canonicalColumn(column)) &&
            !isOwnColumn(study, column)) {
            const storage::ColumnMeaning meaning = storage::meaningOf(column);
            if (meaning.mentioned() && (!meaning.known() || meaning.converts()))
                return needsUnit(column, meaning);
            if (meaning.known())
                column = meaning.column;
        }
        if (isNumberColumn(storage::canonicalColumn(column)))
            value = core::withDecimalPoint(value);
    }
    return typed;
}

std::string csvCell(const std::string& cell)
{
    std::string text = "\"";
    for (const char c : cell)
        text += c == '"' ? std::string("\"\"") : std::string(1, c);
    return text + '"';
}

void sayNearColumns(const Assignments& columns, Surroundings& io)
{
    for (const auto& [column, value] : columns) {
        const std::string canonical = storage::canonicalColumn(column);
        if (storage::isKnownColumn(canonical))
            continue;
        if (const std::string nearest = storage::nearestColumn(canonical); !nearest.empty())
            warn(io.language.say("'{}' is kept as a column of your own; did you mean '{}'?"_t,
                                 column, nearest),
                 io);
    }
}

} // namespace bothways::cli
