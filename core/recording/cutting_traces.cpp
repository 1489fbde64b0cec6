// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
// Long: the ways to cut a recording that look at its samples, side by side.
#include "core/recording/cutting.h"
#include "core/recording/geodesic.h"
#include "core/statistics/events.h"
#include "core/statistics/robust.h"
#include "core/study/limits.h"

#include "core/base/decimal_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>
#include <map>

namespace bothways::core {
namespace {

/// Between samples further apart it is not known where the vehicle was.
constexpr double kBlind_s = 10.0;
constexpr double kSlowestCruise_kmh = 20.0;
constexpr double kWidestGate_m = 1000.0;
constexpr double kOnGate_m = 1.0; ///< finer than receivers tell a place
constexpr double kNever = -std::numeric_limits<double>::infinity();

std::vector<std::string_view> wordsOf(std::string_view text)
{
    std::vector<std::string_view> words;
    while (!text.empty()) {
        const std::size_t begin = text.find_first_not_of(" \t,;:");
        if (begin == std::string_view::npos)
            break;
        text.remove_prefix(begin);
        const std::size_t end = std::min(text.find_first_of(" \t,;:"), text.size());
        words.push_back(text.substr(0, end));
        text.remove_prefix(end);
    }
    return words;
}

bool isOneOf(std::string_view word, std::initializer_list<std::string_view> list)
{
    return std::any_of(list.begin(), list.end(),
                       [&](std::string_view other) { return sameWord(word, other); });
}

/// What the words of a mark say about the run that begins there.
void readWords(CutProposal& proposal, const std::vector<std::string_view>& words,
               const std::vector<std::string>& directions)
{
    for (const std::string_view word : words) {
        int number = 0;
        const auto [end, problem] = std::from_chars(word.data(), word.data() + word.size(), number);
        if (problem == std::errc() && end == word.data() + word.size() && number > 0)
            proposal.run = number;
        for (std::size_t i = 0; i < directions.size(); ++i)
            if (sameWord(word, directions[i]))
                proposal.outward = i == 0;
    }
}

struct Position {
    double time_s = 0.0;
    double lat_deg = 0.0, lon_deg = 0.0;
};

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

/// Where a vehicle is, seen from the start of the stretch: along it and beside it.
struct OnStretch {
    double time_s = 0.0;
    double along_m = 0.0, beside_m = 0.0;
};

class GateKeeper {
public:
    explicit GateKeeper(const Geofence& fence) : m_fence(fence)
    {
        const LocalPosition end = localPosition(fence.start_lat_deg, fence.start_lon_deg,
                                                fence.end_lat_deg, fence.end_lon_deg);
        m_length_m = std::hypot(end.east_m, end.north_m);
        if (m_length_m > 0.0) {
            m_east = end.east_m / m_length_m;
            m_north = end.north_m / m_length_m;
        }
    }
    [[nodiscard]] bool hasLength() const { return m_length_m > 0.0; }

    /// The next position. @return  a run that it ends
    std::optional<CutProposal> pass(const Position& position)
    {
        const LocalPosition p = localPosition(m_fence.start_lat_deg, m_fence.start_lon_deg,
                                              position.lat_deg, position.lon_deg);
        const OnStretch now{position.time_s, p.east_m * m_east + p.north_m * m_north,
                            p.north_m * m_east - p.east_m * m_north};
        std::optional<CutProposal> ended;
        if (!m_started)
            beginAt(now);
        else if (now.time_s - m_before.time_s > kBlind_s)
            m_outwardSince_s = m_returnSince_s = kNever;
        else
            ended = passGates(m_before, now);
        m_before = now;
        m_started = true;
        return ended;
    }

private:
    /// A recording that begins on a gate (one was taken from its first part) passes it there.
    void beginAt(const OnStretch& first)
    {
        if (std::abs(first.beside_m) > m_fence.radius_m)
            return;
        if (std::abs(first.along_m) <= kOnGate_m)
            m_outwardSince_s = first.time_s;
        else if (std::abs(first.along_m - m_length_m) <= kOnGate_m)
            m_returnSince_s = first.time_s;
    }

    /// When the line across the road at `gate_m` was passed; nothing where it was not, or too far
    /// beside the road's end.
    [[nodiscard]] std::optional<double> passed(const OnStretch& a, const OnStretch& b,
                                               double gate_m) const
    {
        if ((a.along_m < gate_m) == (b.along_m < gate_m))
            return std::nullopt;
        const double share = (gate_m - a.along_m) / (b.along_m - a.along_m);
        const double beside_m = a.beside_m + share * (b.beside_m - a.beside_m);
        if (std::abs(beside_m) > m_fence.radius_m)
            return std::nullopt;
        return a.time_s + share * (b.time_s - a.time_s);
    }

    std::optional<CutProposal> passGates(const OnStretch& a, const OnStretch& b)
    {
        std::optional<CutProposal> ended;
        const bool ahead = b.along_m > a.along_m;
        const auto atStart = passed(a, b, 0.0), atEnd = passed(a, b, m_length_m);
        if (ahead && atStart)
            m_outwardSince_s = *atStart;
        if (!ahead && atEnd)
            m_returnSince_s = *atEnd;
        if (ahead && atEnd) {
            if (m_outwardSince_s != kNever)
                ended = CutProposal{m_outwardSince_s, *atEnd, true, {}, {}, {}};
            m_outwardSince_s = m_returnSince_s = kNever;
        }
        if (!ahead && atStart) {
            if (m_returnSince_s != kNever)
                ended = CutProposal{m_returnSince_s, *atStart, false, {}, {}, {}};
            m_outwardSince_s = m_returnSince_s = kNever;
        }
        return ended;
    }

    Geofence m_fence;
    double m_length_m = 0.0, m_east = 0.0, m_north = 0.0;
    bool m_started = false;
    OnStretch m_before;
    double m_outwardSince_s = kNever, m_returnSince_s = kNever;
};

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
        const auto words = wordsOf(mark.words);
        if (words.empty())
            continue;
        if (isOneOf(words.front(), {"end", "stop", "finish"})) {
            endAt(mark.at_s);
        } else if (isOneOf(words.front(), {"start", "begin"})) {
            endAt(mark.at_s);
            CutProposal proposal{mark.at_s, mark.at_s, {}, {}, {}, mark.words};
            readWords(proposal, words, known);
            proposals.push_back(std::move(proposal));
            open = true;
        }
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
    const double allowed_kmh = *target * options.tolerance_pct / 100.0;
    double from_s = kNever;
    double last_s = kNever; // sample that was within
    const auto endStretch = [&] {
        if (from_s != kNever && last_s - from_s >= options.shortest_s)
            proposals.push_back({from_s, last_s, {}, {}, {}, {}});
        from_s = kNever;
    };
    for (std::size_t i = 0; i < speed->size(); ++i) {
        const double time_s = speed->time_s[i];
        if (from_s != kNever && time_s - last_s > options.bridged_s)
            endStretch();
        if (std::abs(speed->value[i] - *target) > allowed_kmh)
            continue;
        if (from_s == kNever)
            from_s = time_s;
        last_s = time_s;
    }
    endStretch();
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
