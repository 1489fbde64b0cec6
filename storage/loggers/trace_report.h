// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/study/study.h"
#include "storage/loggers/channel_mapping.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace bothways::storage {

/// What was met in a recording, and counted.
struct TraceReport {
    core::RecordingId recording{};
    std::string format;              ///< "csv", "gpx", "nmea"
    std::int64_t rows = 0;           ///< kept
    std::int64_t missing_cells = 0;  ///< empty ones
    std::int64_t bad_cells = 0;      ///< neither a number nor a way to say that there is none
    std::int64_t bad_times = 0;      ///< rows without a time that can be read, left out
    std::int64_t repeated_times = 0; ///< rows with the time of the one before, left out
    std::int64_t backward_times = 0; ///< rows that fell back in time, left out
    std::int64_t clock_changes = 0;  ///< times after it were made to follow on
    std::int64_t rate_changes = 0;
    std::int64_t gaps = 0;
    std::int64_t short_rows = 0, long_rows = 0; ///< with too few, too many cells
    std::int64_t bad_checksums = 0;             ///< NMEA sentences left out
    std::int64_t bad_positions = 0;             ///< GPX track points off the Earth, left out
    std::int64_t no_fix = 0;                    ///< NMEA times without a position
    double longest_gap_s = 0.0;
    double interval_s = 0.0; ///< usual time between rows; 0: cannot be told
    bool half_last_line = false;
    std::vector<std::string> channels;
    std::vector<std::string> left_out; ///< columns that hold no number
    std::int64_t marks = 0;
    std::optional<core::Instant> first; ///< at time 0, where the recording has a clock
    double from_s = 0.0, to_s = 0.0;    ///< of its first and last row
    double length_s = 0.0;              ///< between them
    std::optional<double> offset_s;     ///< of the run that it was given to
    core::Message clock_note;           ///< how the two clocks were matched, where that was a guess
    std::string mapping_key;            ///< of the header
    bool mapping_kept = false;          ///< a mapping kept from an earlier import was used
};

/// What a recording looks like before it is imported, to map its columns.
struct TracePreview {
    std::string format;
    char separator = ',';
    bool decimalComma = false;
    std::vector<std::string> columns, units;
    std::vector<std::vector<std::string>> rows; ///< the first ones
    std::vector<ChannelMapping> mapping;        ///< of every column, as an import would take it
    bool mapping_kept = false;
    std::optional<core::Error> fault; ///< why an import with this mapping would be refused
};
/// A channel as it is stored: the recording's own values, and how they become ours.
struct StoredChannel {
    std::int64_t place = 0; ///< from 1; the time is 0
    std::string name;
    std::string unit;
    double factor = 1.0, offset = 0.0;
    std::int64_t samples = 0;
};

} // namespace bothways::storage
