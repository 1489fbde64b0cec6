// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/live/live_recorder.h"
#include "storage/study/history_detail.h"
#include "storage/study/query.h"
#include "storage/study/study_database.h"

#include <SQLiteCpp/Transaction.h>
#include <map>

namespace bothways::storage {
namespace {

using core::Done;

/// Forms of the history: {name, recording, rig} and {name, recording, rows, channels, 1 where it
/// was recovered, counts}.
constexpr const char* kBegun = "record";
constexpr const char* kEnded = "record_end";

long long numberAt(const HistoryValue::List& values, std::size_t place)
{
    return place < values.size() ? values[place].number() : 0;
}

/// Details of all lines of a kind, by the recording.
std::map<long long, HistoryDetail> linesOf(SQLite::Database& database, const char* kind)
{
    std::map<long long, HistoryDetail> lines;
    Query rows(database, "SELECT detail FROM history WHERE kind = ? ORDER BY id");
    rows.bind(1, std::string_view(kind));
    while (rows.step())
        if (auto detail = HistoryDetail::read(rows.text(0)))
            lines[numberAt(detail->values, 1)] = *std::move(detail);
    return lines;
}

std::vector<LiveCounts> countsIn(const HistoryValue::List& list)
{
    std::vector<LiveCounts> counts;
    for (const HistoryValue& value : list) {
        const HistoryValue::List& parts = value.list();
        LiveCounts one;
        one.instrument = parts.empty() ? std::string() : parts[0].text();
        one.lines = numberAt(parts, 1);
        one.garbage_lines = numberAt(parts, 2);
        one.lost_bytes = numberAt(parts, 3);
        one.reconnects = numberAt(parts, 4);
        one.silences = numberAt(parts, 5);
        if (parts.size() > 6)
            one.clock_drift_s = static_cast<double>(parts[6].number()) / 1e3;
        counts.push_back(std::move(one));
    }
    return counts;
}

} // namespace

Result<std::optional<LiveRecord>> liveRecord(const StudyFile& study, core::RecordingId recording)
{
    using Maybe = std::optional<LiveRecord>;
    const StudyFile::Private& d = study.database();
    return d.guarded<Maybe>([&]() -> Result<Maybe> {
        const auto id = static_cast<long long>(recording);
        const auto begun = linesOf(*d.database, kBegun);
        const auto found = begun.find(id);
        if (found == begun.end())
            return Maybe();
        LiveRecord record;
        if (found->second.values.size() > 2)
            record.rig = found->second.values[2].text();
        const auto ended = linesOf(*d.database, kEnded);
        if (const auto end = ended.find(id); end != ended.end()) {
            const HistoryValue::List& values = end->second.values;
            record.ended = numberAt(values, 4) == 0;
            if (values.size() > 5)
                record.counts = countsIn(values[5].list());
        }
        return Maybe(std::move(record));
    });
}

Result<std::vector<RecoveredRecording>> sayRecovered(StudyFile& study)
{
    using List = std::vector<RecoveredRecording>;
    StudyFile::Private& d = study.database();
    auto found = d.guarded<List>([&]() -> Result<List> {
        const SQLite::Transaction oneState(*d.database);
        List list;
        const auto ended = linesOf(*d.database, kEnded);
        for (const auto& [id, detail] : linesOf(*d.database, kBegun)) {
            if (ended.contains(id))
                continue;
            Query row(*d.database, "SELECT name, to_s - from_s FROM recording WHERE id = ?");
            row.bind(1, std::int64_t{id});
            if (row.step())
                list.push_back({core::RecordingId{id}, row.text(0), row.real(1)});
        }
        return list;
    });
    if (!found || d.readOnly)
        return found;
    for (const RecoveredRecording& one : found.value()) {
        const HistoryDetail detail{"record_end",
                                   {one.name, static_cast<long long>(one.recording), 0, 0, 1}};
        if (const Outcome noted = study.note(kEnded, detail.written()); !noted)
            return noted.error();
    }
    return found;
}

} // namespace bothways::storage
