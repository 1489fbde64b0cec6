// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/cutting.h"

#include "core/study/clock.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <set>

namespace bothways::core {
namespace {

constexpr std::int64_t kMinute_us = 60 * kSecond_us;
/// A recorder that is switched on as the run starts may say so a moment later.
constexpr double kLateStart_s = 5.0;
/// A run without duration may have been noted so long before its part begins.
constexpr double kNotedEarly_s = 60.0;
constexpr int kEarliestOffset_min = -12 * 60, kLatestOffset_min = 14 * 60;

bool holds(const RecordingSpan& recording, double start_s)
{
    return start_s >= recording.from_s - kLateStart_s && start_s <= recording.to_s;
}

/// Start of a run in the recording's time, both clocks taken to say the same.
double startIn(const RecordingSpan& recording, const Run& run, const ClockOptions& options)
{
    return static_cast<double>(run.start.us - recording.first->us) / 1e6 + options.ahead_s;
}

bool holdsAll(const RecordingSpan& recording, std::span<const Run> runs, double shift_s,
              const ClockOptions& options)
{
    return std::all_of(runs.begin(), runs.end(), [&](const Run& run) {
        return holds(recording, startIn(recording, run, options) + shift_s);
    });
}

bool bothSame(const RecordingSpan& recording, const Run& run)
{
    return recording.first->utc_offset_min.has_value() == run.start.utc_offset_min.has_value();
}

/// What is to be added to startIn() where one clock tells UTC and the other local time.
double shiftFor(const RecordingSpan& recording, int utcOffset_min)
{
    // A local run of 05:40 at +02:00 is 03:40 UTC; a run in UTC is two hours later by local time.
    const double offset_s = 60.0 * utcOffset_min;
    return recording.first->utc_offset_min ? -offset_s : offset_s;
}

std::optional<int> knownOffset(const RecordingSpan& recording, const Run& run,
                               const ClockOptions& options)
{
    if (options.utc_offset_min)
        return options.utc_offset_min;
    return recording.first->utc_offset_min ? std::nullopt : run.start.utc_offset_min;
}

/// The quarter of an hour that alone puts most runs into the recording.
std::optional<int> guessedOffset(const RecordingSpan& recording, std::span<const Run> runs,
                                 const ClockOptions& options)
{
    std::optional<int> found;
    std::ptrdiff_t most = 0;
    for (int offset = kEarliestOffset_min; offset <= kLatestOffset_min; offset += 15) {
        const auto inside = std::count_if(runs.begin(), runs.end(), [&](const Run& run) {
            return holds(recording, startIn(recording, run, options) + shiftFor(recording, offset));
        });
        if (inside > most)
            found = offset;
        else if (inside == most)
            found.reset();
        most = std::max(most, inside);
    }
    return found;
}

std::string hoursAndMinutes(int minutes)
{
    return fmt::format("{}:{:02} h", std::abs(minutes) / 60, std::abs(minutes) % 60);
}

Error outside(const RecordingSpan& recording, const Run& run, std::span<const Run> runs,
              double shift_s, const ClockOptions& options)
{
    const auto at = [&](double time_s) {
        Instant instant = *recording.first;
        instant.us += std::llround(time_s * 1e6);
        return instant;
    };
    Instant start = run.start;
    if (!bothSame(recording, run)) { // said in the recording's kind of time
        start = at(startIn(recording, run, options) + shift_s);
    }
    const std::string starts = formatDateTime(start);
    const std::string from = formatDateTime(at(recording.from_s));
    const std::string to = formatDateTime(at(recording.to_s));
    for (int minutes = 30; minutes <= 14 * 60; minutes += 30)
        for (const int sign : {1, -1})
            if (holdsAll(recording, runs, shift_s + 60.0 * sign * minutes, options)) {
                const auto fits =
                    sign > 0 ? "run {} starts at {}, the recording lasts from {} to {}; it would "
                               "fit if the recorder's clock were {} fast"_t
                             : "run {} starts at {}, the recording lasts from {} to {}; it would "
                               "fit if the recorder's clock were {} slow"_t;
                return Error{ErrorCode::badInput,
                             message(fits, run.number, starts, from, to, hoursAndMinutes(minutes)),
                             {}};
            }
    return Error{ErrorCode::badInput,
                 message("run {} starts at {}, the recording lasts from {} to {}"_t, run.number,
                         starts, from, to),
                 {}};
}

/// How a whole recording relates to the study: what to add to startIn().
struct Shift {
    double shift_s = 0.0;
    std::optional<int> guessed_min;
};

Result<Shift> shiftBetween(const RecordingSpan& recording, std::span<const Run> runs,
                           const ClockOptions& options)
{
    if (bothSame(recording, runs.front()))
        return Shift{};
    if (const auto known = knownOffset(recording, runs.front(), options))
        return Shift{shiftFor(recording, *known), std::nullopt};
    if (const auto guessed = guessedOffset(recording, runs, options))
        return Shift{shiftFor(recording, *guessed), guessed};
    return Error{ErrorCode::badInput,
                 "the recording tells the time in UTC and the study in local time; expected the "
                 "local time's offset from UTC, like +02:00"_t,
                 {}};
}

double overlap_s(const CutProposal& a, const CutProposal& b)
{
    return std::min(a.to_s, b.to_s) - std::max(a.from_s, b.from_s);
}

bool hasDuration(const Study& study, int number)
{
    return std::any_of(study.runs.begin(), study.runs.end(), [&](const Run& run) {
        return run.number == number && duration_s(run).has_value();
    });
}

/// Whether a part may be given to the run with which it overlaps most.
bool isThatRun(const CutProposal& part, const CutProposal& timed, const Study& study)
{
    if (!hasDuration(study, *timed.run))
        return timed.from_s >= part.from_s - kNotedEarly_s && timed.from_s <= part.to_s;
    return overlap_s(part, timed) >=
           0.5 * std::min(part.to_s - part.from_s, timed.to_s - timed.from_s);
}

} // namespace

Result<std::vector<ClockMatch>> matchClocks(const RecordingSpan& recording,
                                            std::span<const Run> runs, const ClockOptions& options)
{
    std::vector<ClockMatch> matches;
    if (!recording.first) {
        matches.resize(runs.size());
        return matches;
    }
    const auto shift = shiftBetween(recording, runs, options);
    if (!shift)
        return shift.error();
    for (const Run& run : runs) {
        const double start_s = startIn(recording, run, options) + shift.value().shift_s;
        if (!holds(recording, start_s))
            return outside(recording, run, runs, shift.value().shift_s, options);
        matches.push_back({start_s, shift.value().guessed_min});
    }
    return matches;
}

Result<std::vector<CutProposal>> cutByTimes(const RecordingSpan& recording, const Study& study,
                                            const ClockOptions& options)
{
    if (study.runs.empty())
        return Error{
            ErrorCode::badInput, "the study has no runs to cut by; expected their times"_t, {}};
    if (!recording.first)
        return Error{ErrorCode::badInput,
                     "the recording has no clock; expected marks, positions or speed to cut by"_t,
                     {}};
    const auto shift = shiftBetween(recording, study.runs, options);
    if (!shift)
        return shift.error();
    const std::string out = directions(study).front();
    std::vector<CutProposal> proposals;
    for (const Run& run : study.runs) {
        const double from_s = startIn(recording, run, options) + shift.value().shift_s;
        if (!holds(recording, from_s))
            continue;
        if (!proposals.empty()) // a run without a duration lasts until the next at most
            proposals.back().to_s = std::min(proposals.back().to_s, from_s);
        const double to_s = from_s + duration_s(run).value_or(recording.to_s - from_s);
        proposals.push_back(
            {from_s, to_s, sameWord(run.direction, out), run.number, run.distance_km, {}});
    }
    if (proposals.empty())
        return outside(recording, study.runs.front(), {&study.runs.front(), 1},
                       shift.value().shift_s, options);
    return proposals;
}

std::vector<std::optional<int>> runsInTime(std::span<const CutProposal> parts,
                                           std::span<const CutProposal> byTimes, const Study& study)
{
    struct Claim {
        double overlap_s;
        std::size_t part;
        int run;
    };
    std::vector<std::optional<int>> runs;
    std::vector<Claim> claims;
    std::set<int> given;
    for (const CutProposal& part : parts) {
        runs.push_back(part.run);
        if (part.run) {
            given.insert(*part.run);
            continue;
        }
        const CutProposal* most = nullptr;
        for (const CutProposal& timed : byTimes)
            if (timed.run && overlap_s(part, timed) > (most ? overlap_s(part, *most) : 0.0))
                most = &timed;
        if (most && isThatRun(part, *most, study))
            claims.push_back({overlap_s(part, *most), runs.size() - 1, *most->run});
    }
    std::stable_sort(claims.begin(), claims.end(),
                     [](const Claim& a, const Claim& b) { return a.overlap_s > b.overlap_s; });
    for (const Claim& claim : claims)
        if (given.insert(claim.run).second)
            runs[claim.part] = claim.run;
    return runs;
}

Result<Run> runFromProposal(const CutProposal& proposal, const RecordingSpan& recording,
                            const Study& study, const ClockOptions& options)
{
    if (!recording.first)
        return Error{ErrorCode::badInput,
                     "the recording has no clock; expected the date and time of its start"_t,
                     {}};
    Run run;
    run.start = *recording.first;
    run.start.us += std::llround((proposal.from_s - options.ahead_s) * 1e6);
    if (!study.runs.empty() && !bothSame(recording, study.runs.front())) {
        const auto shift = shiftBetween(recording, study.runs, options);
        if (!shift)
            return shift.error();
        run.start.us -= std::llround(shift.value().shift_s * 1e6);
        run.start.utc_offset_min = study.runs.front().start.utc_offset_min;
    }
    run.duration_s = proposal.to_s - proposal.from_s;
    run.distance_km = proposal.distance_km;
    if (run.distance_km && *run.duration_s > 0.0)
        run.speed_kmh = *run.distance_km / *run.duration_s * 3600.0;
    const auto known = directions(study);
    const auto direction = [&](std::size_t i, const char* otherwise) {
        return known.size() > i ? known[i] : std::string(otherwise);
    };
    if (proposal.outward)
        run.direction = *proposal.outward ? direction(0, "out") : direction(1, "return");
    return run;
}

} // namespace bothways::core
