// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"
#include "storage/recordings/trace_reader.h"
#include "storage/study/study_file.h"

#include <cstdint>
#include <vector>

namespace SQLite {
class Database;
}

/// What lists of recordings and readers of one have in common; for the files of this room alone.
namespace bothways::storage {

/// Bounds as a ChannelInfo has them: unknown where the window has no chunk of it.
[[nodiscard]] core::ChannelInfo infoOf(const StoredChannel& channel,
                                       const std::vector<TraceReader::Bounds>& bounds);
/// The marks of a window, in its own time.
[[nodiscard]] std::vector<core::RunTrace::TextMark>
marksIn(SQLite::Database& database, std::int64_t recording, const Window& window);
[[nodiscard]] core::Error noRecording(const StudyFile& study, core::RecordingId recording);

} // namespace bothways::storage
