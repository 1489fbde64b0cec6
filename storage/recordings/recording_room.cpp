// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/recording_room.h"

#include "storage/study/study_database.h"

#include <SQLiteCpp/Statement.h>

namespace bothways::storage {

Result<std::int64_t> freeableBytes(const StudyFile& study)
{
    return study.database().guarded<std::int64_t>([&]() -> Result<std::int64_t> {
        SQLite::Statement room(
            *study.database().database,
            "SELECT total(length(bytes)) FROM chunk WHERE data IN (SELECT id FROM trace_data WHERE "
            "state = 'complete' AND id NOT IN (SELECT id FROM recording))");
        room.executeStep();
        return static_cast<std::int64_t>(room.getColumn(0).getDouble());
    });
}

} // namespace bothways::storage
