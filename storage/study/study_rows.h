// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"
#include "core/study/study.h"

#include <cstdint>

namespace SQLite {
class Database;
}

/// Runs and properties as rows. SQLite's problems are thrown; what a row cannot mean is thrown as
/// DamagedRow. All within a transaction of the caller's.
namespace bothways::storage {

[[nodiscard]] inline std::int64_t toColumn(core::RunId id)
{
    return static_cast<std::int64_t>(id);
}

/// A row that no version of this program writes.
struct DamagedRow {
    core::Message what; ///< "duration_s of run 9 in table run"
};

/// Everything, with runs in order of start. Every value of every row is looked at.
[[nodiscard]] core::Study readStudy(SQLite::Database& database);
[[nodiscard]] core::StudyProperties readProperties(SQLite::Database& database);
/// Throws DamagedRow where the runs cannot be in one study: a third configuration or direction, two
/// kinds of clock.
void checkTogether(const core::Study& study);
/// The same where all but the run `changed` were looked at before: it alone can be the third.
void checkAmong(const core::Study& study, core::RunId changed);
/// The run with this id in `study` becomes what its rows say, or goes where there are none.
void readRunAgain(SQLite::Database& database, core::RunId run, core::Study& study);

/// @return  the identity of the new row; run.id is not looked at
core::RunId insertRun(SQLite::Database& database, const core::Run& run);
/// The row with run.id becomes `run`.
void rewriteRun(SQLite::Database& database, const core::Run& run);
void deleteRun(SQLite::Database& database, core::RunId run);
/// The recording, from `offset_s` of it on, becomes the trace of the run, instead of any other.
void assignRunTrace(SQLite::Database& database, core::RunId run, core::RecordingId recording,
                    double offset_s);

void rewriteProperties(SQLite::Database& database, const core::StudyProperties& properties);

} // namespace bothways::storage
