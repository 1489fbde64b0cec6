// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/live/channel_strip.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace bothways::app {

ChannelStrip::ChannelStrip() = default;

std::int64_t ChannelStrip::numberAt(double time_s)
{
    return static_cast<std::int64_t>(std::floor(std::max(time_s, 0.0) / kPoint_s));
}

void ChannelStrip::put(double time_s, double value)
{
    m_any = true;
    m_value = value;
    m_last_s = time_s;
    const std::int64_t number = numberAt(time_s);
    Point& point = m_points[static_cast<std::size_t>(number) % kPoints];
    const auto shown = static_cast<float>(value);
    if (point.number != number)
        point = {number, shown, shown, 0};
    point.low = std::min(point.low, shown);
    point.high = std::max(point.high, shown);
    ++point.count;
}

void ChannelStrip::show(double now_s, LiveChannel& channel) const
{
    constexpr float kNothing = std::numeric_limits<float>::quiet_NaN();
    channel.low.assign(kPoints, kNothing);
    channel.high.assign(kPoints, kNothing);
    const std::int64_t newest = numberAt(now_s);
    channel.strip_to_s = static_cast<double>(newest + 1) * kPoint_s;
    channel.rate_hz = 0.0;
    if (!m_any)
        return;
    channel.value = m_value;
    channel.last_s = m_last_s;
    constexpr auto kRatePoints = static_cast<std::int64_t>(kRateOver_s / kPoint_s);
    std::int64_t counted = 0;
    for (std::size_t i = 0; i < kPoints; ++i) {
        const std::int64_t number = newest - static_cast<std::int64_t>(kPoints - 1 - i);
        if (number < 0)
            continue;
        const Point& point = m_points[static_cast<std::size_t>(number) % kPoints];
        if (point.number != number)
            continue;
        channel.low[i] = point.low;
        channel.high[i] = point.high;
        if (number < newest && number >= newest - kRatePoints)
            counted += point.count;
    }
    channel.rate_hz = static_cast<double>(counted) / kRateOver_s;
}

void DistanceMeter::begin(double start_s)
{
    // The same start anew: its end was taken back, and the run goes on.
    if (m_running || m_start_s != start_s)
        *this = {};
    m_running = true;
    m_start_s = start_s;
}

void DistanceMeter::putDistance(double time_s, double distance_m)
{
    if (!m_running || time_s < m_start_s)
        return;
    m_from_m = m_from_m.value_or(distance_m);
    m_to_m = distance_m;
}

void DistanceMeter::putSpeed(double time_s, double speed_kmh)
{
    if (!m_running || time_s < m_start_s)
        return;
    if (m_speedAt_s)
        m_bySpeed_km += (m_speed_kmh + speed_kmh) / 2.0 * (time_s - *m_speedAt_s) / 3600.0;
    m_speedAt_s = time_s;
    m_speed_kmh = speed_kmh;
}

std::optional<double> DistanceMeter::km() const
{
    if (!m_running)
        return std::nullopt;
    if (m_from_m)
        return (*m_to_m - *m_from_m) / 1000.0;
    if (m_speedAt_s)
        return m_bySpeed_km;
    return std::nullopt;
}

} // namespace bothways::app
