// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/recordings/stored_parts.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <cmath>

namespace bothways::storage {

using core::Error;
using core::ErrorCode;

core::ChannelInfo infoOf(const StoredChannel& channel,
                         const std::vector<TraceReader::Bounds>& bounds)
{
    core::ChannelInfo info{channel.name, channel.unit};
    const auto found = std::find_if(bounds.begin(), bounds.end(),
                                    [&](const auto& b) { return b.place == channel.place; });
    if (found == bounds.end() || std::isnan(found->minimum) || std::isnan(found->maximum))
        return info;
    const double a = found->minimum * channel.factor + channel.offset;
    const double b = found->maximum * channel.factor + channel.offset;
    info.minimum = std::min(a, b);
    info.maximum = std::max(a, b);
    return info;
}

std::vector<core::RunTrace::TextMark> marksIn(SQLite::Database& database, std::int64_t recording,
                                              const Window& window)
{
    std::vector<core::RunTrace::TextMark> marks;
    SQLite::Statement rows(database, "SELECT at_s, words FROM recording_mark WHERE recording = ? "
                                     "AND at_s BETWEEN ? AND ? ORDER BY place");
    rows.bind(1, recording);
    rows.bind(2, window.from_s);
    rows.bind(3, window.to_s);
    while (rows.executeStep())
        marks.push_back(
            {rows.getColumn(0).getDouble() - window.zero_s, rows.getColumn(1).getString()});
    return marks;
}

Error noRecording(const StudyFile& study, core::RecordingId recording)
{
    return Error{
        ErrorCode::badInput,
        core::message("the study has no recording {}"_t, static_cast<std::int64_t>(recording)),
        study.path().string()};
}

} // namespace bothways::storage
