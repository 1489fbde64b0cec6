// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/typed_columns.h"

#include "app/cli/options.h"
#include "app/cli/warnings.h"
#include "core/study/property_values.h"
#include "core/study/units.h"
#include "storage/sheet/run_columns.h"

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

} // namespace

Result<Assignments> assignmentsFrom(const std::vector<std::string>& words)
{
    Assignments columns;
    for (const std::string& text : words) {
        auto assignment = splitAssignment(text);
        if (!assignment)
            return assignment.error();
        auto& [column, value] = assignment.value();
        if (isNumberColumn(storage::canonicalColumn(column)))
            value = core::withDecimalPoint(value);
        columns.push_back(std::move(assignment.value()));
    }
    return columns;
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
