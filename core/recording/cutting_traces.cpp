// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/cruise_keeper.h"
#include "core/recording/cutting.h"
#include "core/recording/gate_keeper.h"
#include "core/recording/geodesic.h"
#include "core/recording/mark_words.h"
#include "core/statistics/events.h"
#include "core/statistics/robust.h"
#include "core/study/limits.h"

#include "core/base/decimal_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace bothways::core {
namespace {

constexpr double kBlind_s = GateKeeper::kBlind_s;
constexpr double kSlowestCruise_kmh = 20.0;
constexpr double kWidestGate_m = 1000.0;

/// Rows that have both; empty without the channels.
std::vector<Position> positionsOf(const RunTrace& recording)
{
    std::vector<Position> positions;
    const auto lat = recording.samples("lat_deg"), lon = recording.samples("lon_deg");
    if (!lat || !lon)
        return positions;
    std::size_t j = 0;
    for (std::size_t i = 0; i < lat->size(); ++i) {
        while (j < lon->size() && lon->time_s[j] < lat->time_s[i])
            ++j;
        if (j < lon->size() && lon->time_s[j] == lat->time_s[i])
            positions.push_back({lat->time_s[i], lat->value[i], lon->value[j]});
    }
    return positions;
}

/// Linear between samples; nothing outside of them.
std::optional<double> valueAt(const Samples& samples, double time_s)
{
    const auto after = std::lower_bound(samples.time_s.begin(), samples.time_s.end(), time_s);
    if (after == samples.time_s.end())
        return std::nullopt;
    const auto i = static_cast<std::size_t>(after - samples.time_s.begin());
    if (*after == time_s)
        return samples.value[i];
    if (i == 0)
        return std::nullopt;
    const double share = (time_s - samples.time_s[i - 1]) / (*after - samples.time_s[i - 1]);
    return samples.value[i - 1] + share * (samples.value[i] - samples.value[i - 1]);
}

double metresAlong(const std::vector<Position>& positions, double from_s, double to_s)
{
    double metres = 0.0;
    for (std::size_t i = 1; i < positions.size(); ++i) {
        const Position &a = positions[i - 1], &b = positions[i];
        const double covered =
            std::min(b.time_s, to_s) - std::max(a.time_s, from_s); // of this piece, s
        if (covered > 0.0)
            metres += geodesicBetween(a.lat_deg, a.lon_deg, b.lat_deg, b.lon_deg).distance_m *
                      covered / (b.time_s - a.time_s);
    }
    return metres;
}

double metresOfSpeed(const Samples& speed_kmh, double from_s, double to_s)
{
    double metres = 0.0;
    for (std::size_t i = 1; i < speed_kmh.size(); ++i) {
        const double a = std::max(speed_kmh.time_s[i - 1], from_s);
        const double b = std::min(speed_kmh.time_s[i], to_s);
        if (b > a)
            metres += (b - a) * 0.5 *
                      (valueAt(speed_kmh, a).value_or(0.0) + valueAt(speed_kmh, b).value_or(0.0)) /
                      3.6;
    }
    return metres;
}

/// From a counter, else from speed, else from positions.
std::optional<double> distanceOf(const RunTrace& recording, const std::vector<Position>& positions,
                                 double from_s, double to_s)
{
    if (const auto counter = recording.samples("distance_m")) {
        const auto from = valueAt(*counter, from_s), to = valueAt(*counter, to_s);
        if (from && to && *to > *from)
            return (*to - *from) / 1000.0;
    }
    if (const auto speed = recording.samples("road_speed_kmh"))
        return metresOfSpeed(*speed, from_s, to_s) / 1000.0;
    if (positions.size() > 1)
        return metresAlong(positions, from_s, to_s) / 1000.0;
    return std::nullopt;
}

/// The speed around which most time was spent.
std::optional<double> heldLongest_kmh(const Samples& speed, double tolerance_pct)
{
    std::map<int, double> seconds; // by whole km/h
    for (std::size_t i = 1; i < speed.size(); ++i) {
        const double interval_s = speed.time_s[i] - speed.time_s[i - 1];
        if (speed.value[i] >= kSlowestCruise_kmh && speed.value[i] < 1000.0)
            seconds[static_cast<int>(std::lround(speed.value[i]))] +=
                std::min(interval_s, kBlind_s);
    }
    std::optional<double> best;
    double longest_s = 0.0;
    for (const auto& [centre, unused] : seconds) {
        const int reach = std::max(1, static_cast<int>(centre * tolerance_pct / 100.0));
        double held_s = 0.0, weighted = 0.0;
        const auto end = seconds.upper_bound(centre + reach);
        for (auto it = seconds.lower_bound(centre - reach); it != end; ++it) {
            held_s += it->second;
            weighted += it->second * it->first;
        }
        if (held_s > longest_s) {
            longest_s = held_s;
            best = weighted / held_s;
        }
    }
    return best;
}

/// Directions by heading: the first stretch's is outward.
void tellDirections(std::vector<CutProposal>& proposals, const std::vector<Position>& positions)
{
    std::optional<double> outward_deg;
    for (CutProposal& proposal : proposals) {
        const auto first = std::lower_bound(
            positions.begin(), positions.end(), proposal.from_s,
            [](const Position& position, double time_s) { return position.time_s < time_s; });
        const auto last = std::upper_bound(
            positions.begin(), positions.end(), proposal.to_s,
            [](double time_s, const Position& position) { return time_s < position.time_s; });
        if (last - first < 2)
            continue;
        const Geodesic way = geodesicBetween(first->lat_deg, first->lon_deg,
                                             std::prev(last)->lat_deg, std::prev(last)->lon_deg);
        if (way.distance_m < 1.0)
            continue;
        if (!outward_deg)
            outward_deg = way.azimuth_deg;
        proposal.outward = std::abs(std::remainder(way.azimuth_deg - *outward_deg, 360.0)) < 90.0;
    }
}

} // namespace

std::vector<CutProposal> cutByMarks(const RunTrace& recording, const Study& study)
{
    const auto known = directions(study);
    std::vector<CutProposal> proposals;
    bool open = false;
    const auto endAt = [&](double time_s) {
        if (open && time_s > proposals.back().from_s)
            proposals.back().to_s = time_s;
        else if (open)
            proposals.pop_back();
        open = false;
    };
    for (const auto& mark : recording.marks()) {
        const auto bound = markOfRun(mark.words, known);
        if (!bound)
            continue;
        endAt(mark.at_s);
        if (!bound->begins)
            continue;
        proposals.push_back({mark.at_s, mark.at_s, bound->outward, bound->run, {}, mark.words});
        open = true;
    }
    if (const double last_s = recording.last_s(); open)
        endAt(std::isnan(last_s) ? proposals.back().from_s : last_s);
    const auto positions = positionsOf(recording);
    for (CutProposal& proposal : proposals)
        proposal.distance_km = distanceOf(recording, positions, proposal.from_s, proposal.to_s);
    return proposals;
}

Outcome checkFence(const Geofence& fence)
{
    const auto bad = [](Message why) { return Error{ErrorCode::badInput, std::move(why), {}}; };
    const auto outside = [](double degrees, double most) { return !(std::abs(degrees) <= most); };
    if (outside(fence.start_lat_deg, 90.0))
        return bad(
            message("the latitude of the start gate is {}; expected degrees from -90 to 90"_t,
                    decimalText(fence.start_lat_deg)));
    if (outside(fence.start_lon_deg, 180.0))
        return bad(
            message("the longitude of the start gate is {}; expected degrees from -180 to 180"_t,
                    decimalText(fence.start_lon_deg)));
    if (outside(fence.end_lat_deg, 90.0))
        return bad(message("the latitude of the end gate is {}; expected degrees from -90 to 90"_t,
                           decimalText(fence.end_lat_deg)));
    if (outside(fence.end_lon_deg, 180.0))
        return bad(
            message("the longitude of the end gate is {}; expected degrees from -180 to 180"_t,
                    decimalText(fence.end_lon_deg)));
    if (!(fence.radius_m > 0.0 && fence.radius_m <= kWidestGate_m))
        return bad(message("the gates reach {} m to each side; expected more than 0 and at "
                           "most {} m"_t,
                           decimalText(fence.radius_m), decimalText(kWidestGate_m)));
    const double apart_m = geodesicBetween(fence.start_lat_deg, fence.start_lon_deg,
                                           fence.end_lat_deg, fence.end_lon_deg)
                               .distance_m;
    if (apart_m == 0.0)
        return bad("both gates are the same place; expected one at each end of the stretch"_t);
    if (apart_m < fence.radius_m)
        return bad(message("the gates are {} m apart and reach {} m to each side; "
                           "expected a stretch that is longer than that"_t,
                           fmt::format("{:.0f}", apart_m), fmt::format("{:.0f}", fence.radius_m)));
    return Done{};
}

std::vector<CutProposal> cutByPosition(const RunTrace& recording, const Geofence& fence)
{
    GateKeeper gates(fence);
    std::vector<CutProposal> proposals;
    if (!gates.hasLength())
        return proposals;
    const auto positions = positionsOf(recording);
    for (const Position& position : positions)
        if (auto ended = gates.pass(position)) {
            ended->distance_km = distanceOf(recording, positions, ended->from_s, ended->to_s);
            proposals.push_back(*std::move(ended));
        }
    return proposals;
}

std::vector<CutProposal> cutBySpeed(const RunTrace& recording, const CruiseOptions& options)
{
    std::vector<CutProposal> proposals;
    const auto speed = recording.samples("road_speed_kmh");
    if (!speed)
        return proposals;
    const auto target =
        options.target_kmh ? options.target_kmh : heldLongest_kmh(*speed, options.tolerance_pct);
    if (!target || !(*target > 0.0))
        return proposals;
    CruiseOptions cruise = options;
    cruise.target_kmh = target;
    CruiseKeeper keeper(cruise);
    const auto take = [&](const std::optional<CruiseKeeper::Held>& held) {
        if (held)
            proposals.push_back({held->from_s, held->to_s, {}, {}, {}, {}});
    };
    for (std::size_t i = 0; i < speed->size(); ++i)
        take(keeper.pass(speed->time_s[i], speed->value[i]));
    take(keeper.finish());
    const auto positions = positionsOf(recording);
    tellDirections(proposals, positions);
    for (CutProposal& proposal : proposals)
        proposal.distance_km = distanceOf(recording, positions, proposal.from_s, proposal.to_s);
    return proposals;
}

TargetCut cutByTarget(const RunTrace& recording, const Study& study)
{
    TargetCut cut;
    CruiseOptions cruise;
    cruise.target_kmh = limitOf(study.properties.limits, "road_speed.target_kmh");
    if (cruise.target_kmh)
        cut.parts = cutBySpeed(recording, cruise);
    if (!cut.parts.empty())
        return cut;
    if (const auto speed = recording.samples("road_speed_kmh"))
        cut.heldLongest_kmh = heldLongest_kmh(*speed, cruise.tolerance_pct);
    cruise.target_kmh = cut.heldLongest_kmh;
    if (cruise.target_kmh)
        cut.parts = cutBySpeed(recording, cruise);
    return cut;
}

std::vector<RecordingGap> gapsIn(const RunTrace& recording)
{
    std::shared_ptr<const Samples> samples;
    for (const char* channel : {"road_speed_kmh", "lat_deg", "distance_m"})
        if (samples = recording.samples(channel); samples && samples->size() > 1)
            break;
    if ((!samples || samples->size() < 2) && !recording.channels().empty())
        samples = recording.samples(recording.channels().front().name);
    std::vector<RecordingGap> gaps;
    if (!samples || samples->size() < 3)
        return gaps;
    const SampleTimes& time_s = samples->time_s;
    const double usual_s =
        medianOf(time_s.size() - 1, [&](std::size_t i) { return time_s[i + 1] - time_s[i]; });
    const double longest_s = std::max(kBlind_s, 3.0 * usual_s) + kTimeGrace_s;
    for (std::size_t i = 1; i < time_s.size(); ++i)
        if (time_s[i] - time_s[i - 1] > longest_s)
            gaps.push_back({time_s[i - 1], time_s[i]});
    return gaps;
}

std::optional<RecordingGap> longestGapOf(const CutProposal& part,
                                         std::span<const RecordingGap> gaps, EndsFrom ends)
{
    // An end that the recording made lies at the gap's own sample, within rounding.
    const double beside_s = ends == EndsFrom::recording ? kTimeGrace_s : -kTimeGrace_s;
    std::optional<RecordingGap> longest;
    for (const RecordingGap& gap : gaps)
        if (gap.from_s < part.to_s + beside_s && gap.to_s > part.from_s - beside_s &&
            (!longest || gap.to_s - gap.from_s > longest->to_s - longest->from_s))
            longest = gap;
    return longest;
}

} // namespace bothways::core
