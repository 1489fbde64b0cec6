// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/trace_totals.h"

#include "core/recording/channels.h"
#include "core/recording/counter_fall.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

// Fuel and distance of a run from its recording.
namespace bothways::core {
namespace {

using rules::Channel;
using rules::RunChannels;

/// Total of a channel over a run of `duration_s`, in the channel's unit (times seconds for a rate).
using Total = std::optional<double> (*)(const Channel&, double duration_s);

/// What is not recorded cannot be summed up: near either end of the run there must be a sample.
bool coversRun(const Channel& channel, double duration_s)
{
    constexpr double kEndless = std::numeric_limits<double>::infinity();
    const SampleTimes& times = channel.owner->time_s;
    const double before_s = channel.begin > 0 ? -times[channel.begin - 1] : kEndless;
    const double after_s = channel.end < times.size() ? times[channel.end] - duration_s : kEndless;
    const double most_s = rules::longestGap_s(channel.interval_s) + kTimeGrace_s;
    return channel.size() >= 2 && std::min(before_s, times[channel.begin]) <= most_s &&
           std::min(after_s, duration_s - times[channel.end - 1]) <= most_s;
}

/// Value at a time between the first and the last sample, on the line between its neighbours.
double onTheLineAt(const Samples& samples, double time_s)
{
    const SampleTimes& times = samples.time_s;
    const auto next = static_cast<std::size_t>(
        std::lower_bound(times.begin(), times.end(), time_s) - times.begin());
    if (next == 0 || next == times.size())
        return samples.value[std::min(next, times.size() - 1)];
    const double share = (time_s - times[next - 1]) / (times[next] - times[next - 1]);
    return samples.value[next - 1] + share * (samples.value[next] - samples.value[next - 1]);
}

/// The part of the run between its samples (those beyond its ends included), from..to.
struct Recorded {
    double from_s, to_s;
};

Recorded recorded(const Channel& channel, double duration_s)
{
    const SampleTimes& times = channel.owner->time_s;
    return {std::max(0.0, times.front()), std::min(duration_s, times.back())};
}

/// Last minus first of a counter. Where the samples begin after 0 s or end before the run does (by
/// less than a lost sensor), the counter is taken to go on at its mean rate. Nothing of a counter
/// that falls within the run.
std::optional<double> counted(const Channel& channel, double duration_s)
{
    if (fallOf(channel.value()))
        return std::nullopt;
    const auto [from_s, to_s] = recorded(channel, duration_s);
    const double change = onTheLineAt(*channel.owner, to_s) - onTheLineAt(*channel.owner, from_s);
    return change * duration_s / (to_s - from_s);
}

/// Trapezoid rule over the run; before the first and after the last sample the rate is constant.
std::optional<double> integrated(const Channel& channel, double duration_s)
{
    const auto [from_s, to_s] = recorded(channel, duration_s);
    double last_s = from_s;
    double last = onTheLineAt(*channel.owner, from_s);
    double total = last * from_s;
    const auto add = [&](double time_s, double value) {
        total += (time_s - last_s) * (last + value) / 2.0;
        last_s = time_s;
        last = value;
    };
    const auto times = channel.time_s();
    const auto values = channel.value();
    for (std::size_t i = 0; i < times.size(); ++i)
        add(times[i], values[i]);
    add(to_s, onTheLineAt(*channel.owner, to_s));
    return total + last * (duration_s - to_s);
}

std::optional<double> totalOf(const RunTrace& trace, double duration_s, std::string_view name,
                              Total total)
{
    RunChannels channels(&trace, duration_s);
    const Channel* channel = channels.find(name);
    if (!channel || !coversRun(*channel, duration_s))
        return std::nullopt;
    const std::optional<double> sum = total(*channel, duration_s);
    return sum && std::isfinite(*sum) && *sum > 0.0 ? sum : std::nullopt;
}

/// Length of a short line on the WGS84 ellipsoid, m: its radii of curvature at the middle latitude.
/// Some parts in 1e8 off for neighbouring fixes. Checked:
/// tests/core/recording/trace_totals_test.cpp.
double shortDistance_m(double lat1_deg, double lon1_deg, double lat2_deg, double lon2_deg)
{
    constexpr double kA_m = 6378137.0;
    constexpr double kF = 1.0 / 298.257223563;
    constexpr double kE2 = kF * (2.0 - kF);
    constexpr double kRadians = std::numbers::pi / 180.0;
    const double middle = 0.5 * (lat1_deg + lat2_deg) * kRadians;
    const double w2 = 1.0 - kE2 * std::sin(middle) * std::sin(middle);
    const double north_m = kA_m * (1.0 - kE2) / (w2 * std::sqrt(w2));
    const double east_m = kA_m / std::sqrt(w2) * std::cos(middle);
    const double dLon_deg = std::remainder(lon2_deg - lon1_deg, 360.0);
    return std::hypot(north_m * (lat2_deg - lat1_deg), east_m * dLon_deg) * kRadians;
}

/// Distance along the fixes as a counter, m: where latitude and longitude were recorded together.
Samples pathLength(const Samples& lat, const Samples& lon)
{
    std::vector<double> times, metres;
    std::optional<std::size_t> lastLat, lastLon;
    for (std::size_t i = 0, j = 0; i < lat.size() && j < lon.size();) {
        const double apart_s = lat.time_s[i] - lon.time_s[j];
        if (std::abs(apart_s) <= kTimeGrace_s) {
            const double step_m = lastLat
                                      ? shortDistance_m(lat.value[*lastLat], lon.value[*lastLon],
                                                        lat.value[i], lon.value[j])
                                      : 0.0;
            times.push_back(lat.time_s[i]);
            metres.push_back(metres.empty() ? 0.0 : metres.back() + step_m);
            lastLat = i++;
            lastLon = j++;
        } else if (apart_s < 0.0) {
            ++i;
        } else {
            ++j;
        }
    }
    return {SampleTimes(std::move(times)), std::move(metres)};
}

std::optional<double> alongPositions_m(const RunTrace& trace, double duration_s)
{
    RunChannels channels(&trace, duration_s);
    const Channel* lat = channels.find("lat_deg");
    const Channel* lon = channels.find("lon_deg");
    if (!lat || !lon)
        return std::nullopt;
    MemoryTrace path;
    path.add("path_m", "m", pathLength(*lat->owner, *lon->owner));
    return totalOf(path, duration_s, "path_m", counted);
}

} // namespace

std::optional<FuelFromTrace> fuelFromTrace(const RunTrace& trace, double duration_s)
{
    struct Source {
        std::string_view channel;
        Total total;
        double perUnit;
    };
    constexpr double kHours = 1.0 / 3600.0;
    constexpr Source kSources[] = {{"fuel_used_l", counted, 1.0},
                                   {"fuel_rate_l_per_h", integrated, kHours},
                                   {"energy_used_kwh", counted, 1.0},
                                   {"power_kw", integrated, kHours}};
    if (!(duration_s > 0.0))
        return std::nullopt;
    for (const Source& source : kSources)
        if (const auto total = totalOf(trace, duration_s, source.channel, source.total))
            return FuelFromTrace{*total * source.perUnit, std::string(source.channel)};
    return std::nullopt;
}

std::optional<double> distanceFromTrace_km(const RunTrace& trace, double duration_s)
{
    if (!(duration_s > 0.0))
        return std::nullopt;
    if (const auto metres = totalOf(trace, duration_s, "distance_m", counted))
        return *metres / 1000.0;
    if (const auto km = totalOf(trace, duration_s, "road_speed_kmh", integrated))
        return *km / 3600.0;
    if (const auto metres = alongPositions_m(trace, duration_s))
        return *metres / 1000.0;
    return std::nullopt;
}

} // namespace bothways::core
