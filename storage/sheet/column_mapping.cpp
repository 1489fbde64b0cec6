// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/column_mapping.h"

#include "storage/bytes/csv.h"
#include "storage/sheet/column_names.h"
#include "storage/sheet/run_columns.h"

namespace bothways::storage {

core::Result<ColumnMapping> parseColumnMapping(std::string_view text)
{
    const auto wrong = [](core::Message message) {
        return core::Error{core::ErrorCode::wrongUse, std::move(message), {}};
    };
    const std::size_t equals = text.rfind('=');
    if (equals == std::string_view::npos || csv::trimmed(text.substr(0, equals)).empty())
        return wrong(core::message("'{}' is no column; expected HEADER=COLUMN"_t, shownCell(text)));
    ColumnMapping mapping;
    mapping.column = csv::trimmed(text.substr(0, equals));
    mapping.ours = csv::trimmed(text.substr(equals + 1));
    if (!mapping.ours.empty() && !meaningOf(mapping.ours).known())
        return wrong(core::message("'{}' means no column of a run sheet; 'bothways columns' lists "
                                   "them"_t,
                                   shownCell(mapping.ours)));
    return mapping;
}

} // namespace bothways::storage
