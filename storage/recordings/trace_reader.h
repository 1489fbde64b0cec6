// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"
#include "storage/chunks/chunk_codec.h"
#include "storage/recordings/recording_check.h"
#include "storage/recordings/trace_store.h"
#include "storage/study/study_database.h"

#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <vector>

/// Reads a window of a recording. Chunks outside it are not touched.
namespace bothways::storage {

struct Window {
    double from_s = -std::numeric_limits<double>::infinity();
    double to_s = std::numeric_limits<double>::infinity();
    double zero_s = 0.0; ///< taken from every time
};

class TraceReader {
public:
    /// @param checked  recordings whose lines need not be checked any more; may be null
    /// @param stop     asked at every chunk
    TraceReader(const StudyFile::Private& study, std::int64_t data, const Window& window,
                std::shared_ptr<CheckedRecordings> checked = nullptr, std::stop_token stop = {})
        : m_study(study),
          m_data(data),
          m_window(window),
          m_checked(checked ? std::move(checked) : std::make_shared<CheckedRecordings>()),
          m_stop(std::move(stop))
    {
    }
    /// Times of all rows in the window. Read once, then kept.
    [[nodiscard]] Result<core::SampleTimes> times();
    /// Samples of a channel in the window. Channels that have one in every row share the times.
    [[nodiscard]] Result<core::Samples> samples(const StoredChannel& channel);
    /// Bounds of every channel of the window's chunks, by place; NaN where there is no sample.
    struct Bounds {
        std::int64_t place;
        double minimum, maximum;
    };
    [[nodiscard]] Result<std::vector<Bounds>> bounds();

private:
    /// Rows that were recorded together, as far as they lie in the window.
    struct Group {
        std::int64_t firstRow = 0;
        std::uint32_t rows = 0;
        std::uint32_t begin = 0, end = 0;
    };

    /// Within oneState(): whatever was read belongs to the state that it shows.
    void checkLines();
    void load();
    /// Gives what `work` gives, read as of one commit: a recording that is being made has its
    /// chunks written anew as larger ones meanwhile.
    template <class T>
    [[nodiscard]] Result<T> oneState(const std::function<Result<T>()>& work);
    core::Samples read(const StoredChannel& channel);
    void decode(std::span<const std::byte> bytes, std::int64_t place, std::int64_t firstRow,
                const ChunkCounts& counts, ChunkSums& sums, std::vector<double>& values);

    const StudyFile::Private& m_study;
    std::int64_t m_data;
    Window m_window;
    std::shared_ptr<CheckedRecordings> m_checked;
    std::stop_token m_stop;
    bool m_loaded = false;
    std::int64_t m_state = 0; ///< as SQLite counts commits, when it was loaded
    std::vector<Group> m_groups;
    core::SampleTimes m_times;
    ChunkDecoder m_decoder;
    DecodedChunk m_decoded;
};

/// Of a recording that is in the study; empty where it has none (its data were compacted away).
[[nodiscard]] std::vector<StoredChannel> channelsOf(SQLite::Database& database,
                                                    std::int64_t recording);

} // namespace bothways::storage
