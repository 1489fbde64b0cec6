// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cutting.h"
#include "core/result.h"
#include "core/screening.h"
#include "core/study.h"
#include "core/trace.h"
#include "storage/study_file.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

/// Recordings of data loggers: into the study file, and out of it again. (Method 9; DEVELOPERS.md,
/// "Traces".)
namespace bothways::storage {

/// Where a logger's column goes. Kept by the logger's header, and offered again.
struct ChannelMapping {
    std::string column; ///< as in the header
    /// Our name, or the column's own; empty: left out. "time_s", "time", "date" and "mark" say
    /// that the column is no channel but the time (in seconds; by a clock), its date, or words.
    std::string channel;
    double factor = 1.0; ///< value = cell * factor + offset (units)
    double offset = 0.0;
    friend bool operator==(const ChannelMapping&, const ChannelMapping&) = default;
};

/// "Speed [mph]=road_speed_kmh*1.609344", "T=temperature_c*0.5556-17.78", "Lap=": a mapping as
/// text.
[[nodiscard]] Result<ChannelMapping> parseMapping(std::string_view text);
[[nodiscard]] std::string formatMapping(const ChannelMapping& mapping);

struct Cut;
struct RecordingInfo;
/// Says into which parts a recording is to be cut. It is called once the recording is whole, within
/// the change that brings it in, so it must not begin another: no StudyFile::study(), no
/// recordings().
/// @param recording  without its channels
using CutsOf = std::function<Result<std::vector<Cut>>(const RecordingInfo& recording)>;

struct TraceImportOptions {
    std::optional<int> run; ///< number of the run that the recording belongs to; none: not yet cut
    /// Empty: the one kept for this header; without one, known names map by themselves and others
    /// keep theirs. What is given here is kept.
    std::vector<ChannelMapping> mapping;
    CutsOf cuts; ///< the recording is cut in the same change, or does not come in; may be empty
    core::ClockOptions clock; ///< how the recorder's clock relates to the study's times
    std::string date;         ///< YYYY-MM-DD for times of day; empty: the study's
    std::function<void(double done, double bytesPerSecond)> progress; ///< on the caller's thread
    std::stop_token stop;
};

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
    std::string clock_note;             ///< how the two clocks were matched, where that was a guess
    std::string mapping_key;            ///< of the header
    bool mapping_kept = false;          ///< a mapping kept from an earlier import was used
};

/// Imports CSV, GPX 1.1 or NMEA 0183 (told apart by content). Commits in batches under a mark
/// 'unfinished'; an Error (also of a stop) leaves the study as it was.
[[nodiscard]] Result<TraceReport> importTrace(StudyFile& study, const std::filesystem::path& file,
                                              const TraceImportOptions& options = {});

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
/// @param study  for the mapping kept for this header; may be null
[[nodiscard]] Result<TracePreview> previewTrace(const std::filesystem::path& file,
                                                const StudyFile* study = nullptr);

struct RecordingInfo {
    core::RecordingId id{};
    std::string name;                   ///< of the file it came from
    std::optional<core::Instant> first; ///< of its time 0, where it has a clock
    double from_s = 0.0, to_s = 0.0;    ///< times of its first and last row
    double length_s = 0.0;
    std::vector<core::ChannelInfo> channels;
    std::int64_t rows = 0;
    std::int64_t samples = 0; ///< of all channels
    std::int64_t bytes = 0;   ///< in the study file
    [[nodiscard]] core::RecordingSpan span() const { return {first, from_s, to_s}; }
};
[[nodiscard]] Result<std::vector<RecordingInfo>> recordings(const StudyFile& study);
/// Takes a recording, and what runs have of it, out of the study. May be undone until compact().
[[nodiscard]] Outcome dropRecording(StudyFile& study, core::RecordingId recording);
/// Frees the space of recordings that were dropped or whose import was undone: neither can be taken
/// back after that. Runs stay. @return  the bytes that the file became smaller by
[[nodiscard]] Result<std::int64_t> compact(StudyFile& study);

/// A whole channel of a recording; times in the recording's own.
[[nodiscard]] Result<core::Samples> readChannel(const StudyFile& study, core::RecordingId recording,
                                                std::string_view channel);
/// The channel between two times, both included.
[[nodiscard]] Result<core::Samples> readChannel(const StudyFile& study, core::RecordingId recording,
                                                std::string_view channel, double from_s,
                                                double to_s);
/// Minimum and maximum of stretches of some thousands of samples, without reading these: for a
/// first picture.
struct ChannelOutline {
    double from_s = 0.0, to_s = 0.0;
    double minimum = 0.0, maximum = 0.0;
};
[[nodiscard]] Result<std::vector<ChannelOutline>>
readOutline(const StudyFile& study, core::RecordingId recording, std::string_view channel);
[[nodiscard]] Result<std::vector<core::RunTrace::TextMark>> readMarks(const StudyFile& study,
                                                                      core::RecordingId recording);
/// The whole recording as a RunTrace whose time 0 is its own, to be cut. The study must outlive it.
[[nodiscard]] Result<std::unique_ptr<core::RunTrace>> openRecording(const StudyFile& study,
                                                                    core::RecordingId recording);

/// Says which part of a recording a run is: `offset_s` is the run's start in the recording's time.
[[nodiscard]] Outcome assignTrace(StudyFile& study, core::RunId run, core::RecordingId recording,
                                  double offset_s);
/// Takes the assignment back. An Error (wrongUse) where there is none.
[[nodiscard]] Outcome unassignTrace(StudyFile& study, core::RunId run);
struct RunTraceInfo {
    core::RunId run{};
    core::RecordingId recording{};
    double offset_s = 0.0;
};
[[nodiscard]] Result<std::vector<RunTraceInfo>> assignedTraces(const StudyFile& study);

/// A part of a recording that is to be a run's.
struct Cut {
    std::optional<core::RunId> existing; ///< none: `run` is added to the study
    core::Run run;
    double offset_s = 0.0; ///< the run's start in the recording's time
    /// Of an existing run: what its own become; empty: they stay.
    std::optional<core::Instant> start;
    std::optional<double> duration_s;
};
/// A part that is given to a run that is there.
/// @param timed  the run's start and duration become those of the part (the start only where the
///               recording has a clock that can be told against the study's)
[[nodiscard]] Cut cutForRun(core::RunId run, const core::CutProposal& part,
                            const RecordingInfo& recording, const core::Study& study,
                            const core::ClockOptions& clock, bool timed);
/// A part that becomes a new run; configuration and, where the part tells none, direction are the
/// caller's to fill in. Errors are those of core::runFromProposal().
[[nodiscard]] Result<Cut> cutForNewRun(const core::CutProposal& part,
                                       const RecordingInfo& recording, const core::Study& study,
                                       const core::ClockOptions& clock);
/// Makes runs of parts of a recording, or gives the parts to runs that are there: all in one
/// change, or none. Faults of a run are those of addRun() and updateRun(). Where the start of a
/// run moves, its marks and switch-on times keep their moments.
[[nodiscard]] Outcome cutRecording(StudyFile& study, core::RecordingId recording,
                                   const std::vector<Cut>& cuts);

/// The traces of a study's runs, for screen(). The study must outlive it. A run's window ends
/// where the next run of the same recording starts, and begins where the one before ends.
[[nodiscard]] core::TraceProvider tracesOf(const StudyFile& study);
/// The traces that a run sheet names in its column 'trace', relative to the sheet's folder; an
/// Error names the first file that cannot be read.
[[nodiscard]] Result<core::TraceProvider> tracesOfSheet(const std::filesystem::path& sheet,
                                                        const core::Study& study);
/// One recording file whole in memory, for small files. Its time 0 becomes the run's start: by
/// the clock where the recording has one (see core::matchClocks), else as it stands.
[[nodiscard]] Result<std::unique_ptr<core::RunTrace>>
readTraceFile(const std::filesystem::path& file, const core::Run& run);

} // namespace bothways::storage
