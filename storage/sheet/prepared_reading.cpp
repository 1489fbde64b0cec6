// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/run_columns.h"
#include "storage/sheet/sheet_reader.h"

#include <algorithm>

// SheetReader on an ordinary spreadsheet that was prepared for it.
namespace bothways::storage {

/// An ordinary spreadsheet: its columns are named, its cells rewritten.
std::optional<core::Error> SheetReader::takePrepared()
{
    for (std::size_t i = 0; i < m_prepared->columns.size(); ++i) {
        const PreparedColumn& column = m_prepared->columns[i];
        m_columns.push_back({column.name, column.asWritten});
        if (!column.name.empty() && !m_places.emplace(column.name, i).second)
            place(m_prepared->headerLine, column.name,
                  "is there twice; expected one of each name"_t);
    }
    m_headerLine = m_prepared->headerLine;
    checkHeader(m_headerLine);
    takePreparedFaults();
    m_records = m_prepared->records;
    if (m_records.size() + m_existing->runs.size() > kMostRuns) {
        const std::size_t room = kMostRuns - std::min(kMostRuns, m_existing->runs.size());
        return inFile(
            m_records[std::min(room, m_records.size() - 1)].line,
            core::message("is one run too many; expected at most {} in a study"_t, kMostRuns));
    }
    return std::nullopt;
}

/// Those of the line at hand; before the first, those of the header's.
void SheetReader::takePreparedFaults()
{
    if (!m_prepared)
        return;
    const int line = m_record ? m_record->line : m_headerLine;
    for (const PreparedFault& wrong : m_prepared->faults) {
        if (wrong.line != line)
            continue;
        if (wrong.column.empty())
            placeAt(wrong.line, wrong.number, wrong.message);
        else
            place(wrong.line, wrong.column, wrong.message);
        if (!wrong.shown.empty())
            m_faults.back().error.where.column = shownCell(wrong.shown);
    }
}

} // namespace bothways::storage
