// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/live/live_session.h"

#include <array>
#include <cstddef>
#include <cstdint>

namespace bothways::app {

/// What a page shows of one channel, kept up to date sample by sample.
class ChannelStrip {
public:
    static constexpr std::size_t kPoints = 300;
    static constexpr double kPoint_s = 0.2; ///< 300 of them are the last minute
    static constexpr double kRateOver_s = 5.0;

    ChannelStrip();
    /// Times ascend.
    void put(double time_s, double value);
    /// Fills in value, rate and strip, as they are at `now_s`.
    void show(double now_s, LiveChannel& channel) const;

private:
    struct Point {
        std::int64_t number = -1; ///< time / kPoint_s; -1: none yet
        float low = 0.0F, high = 0.0F;
        std::int32_t count = 0;
    };
    [[nodiscard]] static std::int64_t numberAt(double time_s);

    std::array<Point, kPoints> m_points; ///< by number modulo kPoints
    double m_value = 0.0, m_last_s = 0.0;
    bool m_any = false;
};

/// How far a run has gone: by a distance counter, else by road speed over time.
class DistanceMeter {
public:
    void begin(double start_s);
    void putDistance(double time_s, double distance_m);
    void putSpeed(double time_s, double speed_kmh);
    void end() { m_running = false; }
    [[nodiscard]] std::optional<double> km() const;

private:
    bool m_running = false;
    double m_start_s = 0.0;
    std::optional<double> m_from_m, m_to_m;
    std::optional<double> m_speedAt_s;
    double m_speed_kmh = 0.0, m_bySpeed_km = 0.0;
};

} // namespace bothways::app
