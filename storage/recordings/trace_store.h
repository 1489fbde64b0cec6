// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "storage/loggers/channel_mapping.h"
#include "storage/loggers/trace_pipeline.h"
#include "storage/loggers/trace_report.h"
#include "storage/recordings/chunk_rows.h"
#include "storage/recordings/cut.h"
#include "storage/study/study_database.h"

#include <SQLiteCpp/Transaction.h>

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// Writes a recording into the study file. Chunks are committed in batches under a line of
/// trace_data that says 'unfinished'; the recording itself, its channels and marks come last, as
/// one action of a person that can be undone.
namespace bothways::storage {

/// What finish() writes.
struct FinishedRecording {
    std::string name;
    std::string format;
    std::optional<core::Instant> first;
    double from_s = 0.0, to_s = 0.0;
    std::int64_t rows = 0;
    std::vector<StoredChannel> channels; ///< those that have a sample
    std::optional<core::RunId> run;      ///< that it belongs to
    double offset_s = 0.0;
    CutsOf cuts;
    HistoryDetail detail; ///< for the history
};

class TraceWriter {
public:
    /// Marks the beginning. An Error where the study cannot be written.
    static Result<TraceWriter> begin(StudyFile::Private& study);
    TraceWriter(TraceWriter&&) noexcept;
    TraceWriter& operator=(TraceWriter&&) = delete;
    /// Without keep(): takes everything back.
    ~TraceWriter();

    [[nodiscard]] Outcome put(RowGroup&& group);
    /// All groups are put: what is left is written down, so that finish() has little to do.
    [[nodiscard]] Outcome endOfGroups();
    /// May be a part of a transaction of the caller's (StudyFile::Private::inTransaction): then
    /// keep() when that is done.
    [[nodiscard]] Result<core::RecordingId> finish(const FinishedRecording& recording);
    /// It is in the study: nothing is taken back any more.
    void keep();

private:
    explicit TraceWriter(StudyFile::Private& study);
    void commitBatch();
    [[nodiscard]] Outcome cutInto(SQLite::Database& database, const FinishedRecording& recording,
                                  HistoryDetail& detail);

    StudyFile::Private* m_study; ///< null: kept, or moved from
    std::int64_t m_data = 0;
    std::int64_t m_cacheBefore = 0;
    std::unique_ptr<ChunkRows> m_insert;
    std::unique_ptr<SQLite::Transaction> m_batch;
    std::size_t m_batchBytes = 0;
    std::vector<std::pair<std::int64_t, RecordedMark>> m_marks; ///< by the row of their group
};

/// The mapping kept for a header; empty where there is none.
[[nodiscard]] std::vector<ChannelMapping> keptMapping(SQLite::Database& database,
                                                      const std::string& headerKey);
[[nodiscard]] Outcome keepMapping(StudyFile::Private& study, const std::string& headerKey,
                                  const std::vector<ChannelMapping>& mapping);

} // namespace bothways::storage
