// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/study/unfinished_traces.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <vector>

namespace bothways::storage {

using core::Done;

void removeTraceData(SQLite::Database& database, std::int64_t data)
{
    for (const char* sql :
         {"DELETE FROM chunk_sum WHERE data = ?", "DELETE FROM chunk WHERE data = ?",
          "DELETE FROM trace_data WHERE id = ?"}) {
        SQLite::Statement row(database, sql);
        row.bind(1, data);
        row.exec();
    }
}

Outcome removeUnfinishedTraces(StudyFile::Private& study)
{
    const auto any = study.guarded<bool>([&]() -> Result<bool> {
        SQLite::Statement row(*study.database,
                              "SELECT 1 FROM trace_data WHERE state = 'unfinished'");
        return row.executeStep();
    });
    if (!any)
        return any.error();
    if (!any.value())
        return Done{};
    return study.inTransaction([](SQLite::Database& database) -> Outcome {
        std::vector<std::int64_t> unfinished;
        {
            SQLite::Statement rows(database,
                                   "SELECT id FROM trace_data WHERE state = 'unfinished'");
            while (rows.executeStep())
                unfinished.push_back(rows.getColumn(0).getInt64());
        }
        for (const std::int64_t data : unfinished)
            removeTraceData(database, data);
        return Done{};
    });
}

} // namespace bothways::storage
