// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/trace_series.h"

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

constexpr double kShortestGap_s = 1.0;
constexpr double kGapOfIntervals = 3.0;
constexpr std::size_t kLooks = 1001; // intervals looked at for the usual one: odd, for a median
constexpr double kMsPerKmh = 1.0 / 3.6;

double usualInterval_s(std::span<const double> times)
{
    if (times.size() < 2)
        return 0.0;
    std::vector<double> gaps;
    const std::size_t step = std::max<std::size_t>(1, (times.size() - 1) / kLooks);
    for (std::size_t i = 1; i < times.size(); i += step)
        gaps.push_back(times[i] - times[i - 1]);
    const auto middle = gaps.begin() + static_cast<std::ptrdiff_t>(gaps.size() / 2);
    std::nth_element(gaps.begin(), middle, gaps.end());
    return *middle;
}

} // namespace

DistanceOfTime::DistanceOfTime(const core::RunTrace& trace, double perMetre)
{
    if (const auto samples = trace.samples("distance_m"); samples && samples->size() > 1) {
        m_times.assign(samples->time_s.begin(), samples->time_s.end());
        m_distances = samples->value;
    } else if (const auto speed = trace.samples("road_speed_kmh"); speed && speed->size() > 1) {
        m_times.assign(speed->time_s.begin(), speed->time_s.end());
        m_distances.assign(speed->size(), 0.0);
        for (std::size_t i = 1; i < m_distances.size(); ++i)
            m_distances[i] = m_distances[i - 1] + 0.5 * (speed->value[i] + speed->value[i - 1]) *
                                                      kMsPerKmh * (m_times[i] - m_times[i - 1]);
    } else {
        return;
    }
    double highest = m_distances.front();
    for (double& metres : m_distances)
        metres = highest = metres > highest ? metres : highest;
    const double start = at(0.0);
    for (double& metres : m_distances)
        metres = (metres - start) * perMetre;
}

double DistanceOfTime::at(double time_s) const
{
    const auto after = std::lower_bound(m_times.begin(), m_times.end(), time_s);
    if (after == m_times.begin())
        return m_distances.front();
    if (after == m_times.end())
        return m_distances.back();
    const auto i = static_cast<std::size_t>(after - m_times.begin());
    const double share = (time_s - m_times[i - 1]) / (m_times[i] - m_times[i - 1]);
    return m_distances[i - 1] + share * (m_distances[i] - m_distances[i - 1]);
}

TraceSeries::TraceSeries(std::shared_ptr<const core::Samples> samples, TraceAxis axis,
                         const DistanceOfTime& distance)
    : m_samples(std::move(samples)), m_pyramid(m_samples->value)
{
    const std::span<const double> times(m_samples->time_s.data(), m_samples->size());
    m_gap_s = std::max(kShortestGap_s, kGapOfIntervals * usualInterval_s(times));
    if (axis == TraceAxis::time || !distance.known())
        return;
    m_places.reserve(times.size());
    for (const double time : times)
        m_places.push_back(distance.at(time));
}

std::span<const double> TraceSeries::places() const
{
    if (!m_places.empty())
        return m_places;
    return {m_samples->time_s.data(), m_samples->size()};
}

bool TraceSeries::gapBefore(std::size_t sample) const
{
    return sample > 0 && m_samples->time_s[sample] - m_samples->time_s[sample - 1] > m_gap_s;
}

std::optional<std::size_t> TraceSeries::nearest(double place) const
{
    const std::span<const double> at = places();
    if (at.empty() || place < at.front() || place > at.back())
        return std::nullopt;
    const auto after =
        static_cast<std::size_t>(std::lower_bound(at.begin(), at.end(), place) - at.begin());
    if (after == 0)
        return after;
    if (gapBefore(after))
        return std::nullopt;
    return place - at[after - 1] < at[after] - place ? after - 1 : after;
}

} // namespace bothways::app
