// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/recording/trace.h"
#include "core/study/study.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// Cutting a long recording into runs: proposals that a person accepts or moves. A recording is a
/// RunTrace whose time 0 is the recording's own.
namespace bothways::core {

/// When a recording was made.
struct RecordingSpan {
    std::optional<Instant> first; ///< at its time 0, where it has a clock
    double from_s = 0.0, to_s = 0.0;
};

/// How the recorder's clock relates to the study's.
struct ClockOptions {
    double ahead_s = 0.0; ///< the recorder's clock is fast by so much
    /// Offset of the local time from UTC, where one of both tells UTC and the other local time.
    std::optional<int> utc_offset_min;
};

struct ClockMatch {
    double offset_s = 0.0;                 ///< of the run's start in the recording's time
    std::optional<int> guessed_offset_min; ///< of local time from UTC: taken since it alone fits
};

/// Where a run starts in a recording.
///
/// Both with an offset from UTC, or both without: by their difference. One with, one without: by
/// `utc_offset_min`, or by the offset that the run's own clock has; without both by the whole
/// quarter of an hour between -12 and +14 h that puts most of `runs` into the recording, where one
/// alone does. A recording without a clock: its time 0 is the run's start.
/// @param runs   those that the recording is said to hold, one at least
/// @return  a match each; an Error (badInput) where a run starts outside the recording: when, by
///          how much, and whether a whole number of half hours would make it fit
[[nodiscard]] Result<std::vector<ClockMatch>> matchClocks(const RecordingSpan& recording,
                                                          std::span<const Run> runs,
                                                          const ClockOptions& options = {});

/// A stretch of a recording that may be a run.
struct CutProposal {
    double from_s = 0.0, to_s = 0.0;   ///< in the recording's time
    std::optional<bool> outward;       ///< direction, where it can be told; false: the return
    std::optional<int> run;            ///< number of the run that it was found for, or a mark named
    std::optional<double> distance_km; ///< from the recording, where it can be told
    std::string words;                 ///< of the mark that began it
};

/// By the times in the run sheet. Runs that start outside the recording are left out; an Error as
/// in matchClocks() where none is inside.
[[nodiscard]] Result<std::vector<CutProposal>>
cutByTimes(const RecordingSpan& recording, const Study& study, const ClockOptions& options = {});

/// By marks: one whose first word is "start" (or "begin") begins a run, one whose first word is
/// "end" (or "stop", "finish") ends it; so does the next "start". A number in the words is a run's,
/// a word that is one of the study's directions is its direction.
[[nodiscard]] std::vector<CutProposal> cutByMarks(const RunTrace& recording, const Study& study);

/// The stretch between two points on the road.
struct Geofence {
    double start_lat_deg = 0.0, start_lon_deg = 0.0;
    double end_lat_deg = 0.0, end_lon_deg = 0.0;
    double radius_m = 50.0; ///< how far beside the ends the road may be taken to be
    friend bool operator==(const Geofence&, const Geofence&) = default;
};
/// An Error (badInput) where the gates are nowhere on Earth or too close to one another to tell
/// which way was driven (less than the radius apart), or the radius is not above 0 and at most
/// 1000 m.
[[nodiscard]] Outcome checkFence(const Geofence& fence);
/// By position: from the moment when the line across the road at one end is passed towards the
/// other end, to the moment when that end's is passed. A turn within the stretch gives none.
/// Outward: from start to end. Needs the channels lat_deg and lon_deg; empty without.
[[nodiscard]] std::vector<CutProposal> cutByPosition(const RunTrace& recording,
                                                     const Geofence& fence);

struct CruiseOptions {
    std::optional<double> target_kmh; ///< none: the speed that was held longest
    double tolerance_pct = 5.0;
    double shortest_s = 60.0; ///< a stretch that is not held as long is none
    double bridged_s = 10.0;  ///< so long may it be left in between
};
/// By speed: stretches on which the target was held. Directions by heading where there are
/// positions (the first stretch's is outward), else none. Needs road_speed_kmh; empty without.
[[nodiscard]] std::vector<CutProposal> cutBySpeed(const RunTrace& recording,
                                                  const CruiseOptions& options = {});

struct TargetCut {
    std::vector<CutProposal> parts;
    std::optional<double> heldLongest_kmh; ///< the speed taken where it is not the study's target
};
/// By the study's own target speed (road_speed.target_kmh); where it has none, or that was never
/// held, by the speed that was held longest.
[[nodiscard]] TargetCut cutByTarget(const RunTrace& recording, const Study& study);

/// A stretch of a recording without samples, longer than 10 s and than three usual intervals, in
/// what runs are cut by: its speed, else positions, else distance, else its first channel.
struct RecordingGap {
    double from_s = 0.0, to_s = 0.0;
};
[[nodiscard]] std::vector<RecordingGap> gapsIn(const RunTrace& recording);
enum class EndsFrom {
    sheet,    ///< a gap beside the part says nothing
    recording ///< a part that ends or begins with a gap may have been longer
};
/// The longest of the gaps that the part holds, or ends or begins with.
[[nodiscard]] std::optional<RecordingGap>
longestGapOf(const CutProposal& part, std::span<const RecordingGap> gaps, EndsFrom ends);

/// The number of the study's run that each part of a recording is given to; nothing for a part
/// that is none's. A part that has a number keeps it. Another is given to the run with which it
/// overlaps most in time, and only if they overlap by at least half of the shorter of the two (for
/// a run without duration: if its start lies within the part or at most 60 s before its
/// beginning). Never two parts to one run: of two, the one that overlaps more is given to it.
/// @param byTimes  of cutByTimes()
[[nodiscard]] std::vector<std::optional<int>> runsInTime(std::span<const CutProposal> parts,
                                                         std::span<const CutProposal> byTimes,
                                                         const Study& study);

/// A run of a proposal, to be added to the study: start (in the study's kind of time), duration,
/// direction, distance and mean speed. Number, configuration and consumption are the caller's to
/// fill in. An Error (badInput) where the recording has no clock, or the relation of UTC to the
/// study's local time is not known (neither from `options` nor from the runs it has).
[[nodiscard]] Result<Run> runFromProposal(const CutProposal& proposal,
                                          const RecordingSpan& recording, const Study& study,
                                          const ClockOptions& options = {});

} // namespace bothways::core
