// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample_data/make_demo/generator_traces.h"

#include "sample_data/make_demo/portable_noise.h"

#include <fmt/format.h>

#include <algorithm>

namespace bothways::demo {
namespace {

constexpr std::uint64_t kSeed = 2026061300;
constexpr double kRate_hz = 4.0;
constexpr double kApproach_s = 12.0;
constexpr double kAfter_s = 2.0;

// Braking for the roadworks and getting away again: together they lose the 28 s by which the run
// took longer than its stand.
constexpr double kBraking_s = 24.0;
constexpr double kGettingAway_s = 32.0;

constexpr double kMass_kg = 2800.0;
constexpr double kJoulesPerLitre = 0.42 * 35.9e6; ///< at the crankshaft, of a litre of diesel
constexpr double kIdle_l_per_h = 0.8;

/// A quantity that wanders about 0, standard deviation about 1, forgetting itself in some 5 s.
class Wander {
public:
    double next(PortableNoise& noise)
    {
        m_value = 0.95 * m_value + 0.312 * noise.bell();
        return m_value;
    }

private:
    double m_value = 0.0;
};

/// 1 in the middle, falling straight to 0 at `half` either side.
double hump(double time_s, double middle_s, double half_s)
{
    const double away = time_s > middle_s ? time_s - middle_s : middle_s - time_s;
    return std::max(0.0, 1.0 - away / half_s);
}

/// From `from` before `begin_s` to `to` after `end_s`, straight between.
double ramp(double time_s, double begin_s, double end_s, double from, double to)
{
    const double share = std::clamp((time_s - begin_s) / (end_s - begin_s), 0.0, 1.0);
    return from + share * (to - from);
}

class Logger {
public:
    explicit Logger(const DayRun& run)
        : m_run(run),
          m_noise(kSeed + static_cast<std::uint64_t>(run.number)),
          m_cruise_kmh(run.stopped_at_s ? kTarget_kmh : run.distance_km * 3600.0 / run.duration_s),
          m_peak_s(m_noise.uniform(20.0, 110.0))
    {
    }

    std::string record()
    {
        std::string text = header();
        const int last = static_cast<int>((m_run.duration_s + kAfter_s) * kRate_hz);
        for (int i = static_cast<int>(-kApproach_s * kRate_hz); i <= last; ++i)
            text += row(i / kRate_hz);
        return text;
    }

private:
    [[nodiscard]] std::string header() const
    {
        return std::string("time_s,road_speed_kmh,distance_m,fuel_rate_l_per_h,accessory_w,"
                           "wind_ms,battery_v,") +
               (m_run.device ? "output_w,rotor_rpm,setting,setting_set,mark\n" : "mark\n");
    }

    std::string row(double time_s)
    {
        // Drawn one by one: the order of a call's arguments is the compiler's choice.
        const double wander_kmh = 0.35 * m_speed.next(m_noise);
        const double kmh = speed(time_s) + (standing(time_s) ? 0.0 : wander_kmh);
        m_metres += kmh / 3.6 / kRate_hz;
        const double litres = fuel(time_s, kmh);
        const double watts = accessory(time_s);
        const double air_ms = wind(time_s);
        const double charged_v = m_run.battery_v_end - m_run.battery_v_start;
        const double volts =
            m_run.battery_v_start + charged_v * time_s / m_run.duration_s + 0.012 * m_noise.bell();
        std::string text = fmt::format("{:.2f},{:.2f},{:.1f},{:.3f},{:.1f},{:.2f},{:.2f},", time_s,
                                       kmh, m_metres, litres, watts, air_ms, volts);
        if (m_run.device)
            text += device(time_s);
        const bool flagman = m_run.stopped_at_s && time_s == 122.0;
        return text + (flagman ? "flagman\n" : "\n");
    }

    [[nodiscard]] bool standing(double time_s) const
    {
        return m_run.stopped_at_s && time_s >= *m_run.stopped_at_s &&
               time_s <= *m_run.stopped_at_s + *m_run.standing_s;
    }

    /// What the driver meant the van to do, km/h.
    [[nodiscard]] double speed(double time_s) const
    {
        if (m_run.cruising_late)
            return ramp(time_s, -14.0, 5.0, 62.0, m_cruise_kmh);
        if (m_run.tractor_ahead) {
            const double near_s = m_run.duration_s - 9.0;
            return ramp(time_s, near_s - 2.0, near_s, m_cruise_kmh, 79.0);
        }
        if (!m_run.stopped_at_s)
            return m_cruise_kmh;
        const double stop_s = *m_run.stopped_at_s;
        const double go_s = stop_s + *m_run.standing_s;
        return time_s < go_s ? ramp(time_s, stop_s - kBraking_s, stop_s, m_cruise_kmh, 0.0)
                             : ramp(time_s, go_s, go_s + kGettingAway_s, 0.0, m_cruise_kmh);
    }

    /// L/h: that of steady driving and of the van's inertia; cut off while braking.
    double fuel(double time_s, double kmh)
    {
        const double faster_ms2 = (speed(time_s + 0.5) - speed(time_s - 0.5)) / 3.6;
        const double steady = m_run.l_per_100km * kmh / 100.0;
        const double inertia = 3600.0 * kMass_kg * faster_ms2 * kmh / 3.6 / kJoulesPerLitre;
        const double noise = 1.0 + 0.02 * m_noise.bell();
        if (standing(time_s))
            return kIdle_l_per_h * noise;
        return std::max(0.0, steady + inertia) * noise;
    }

    double accessory(double time_s)
    {
        const double off_s = m_run.windscreen_on_s + 60.0 * kWindscreen_min;
        const bool heated = time_s >= m_run.windscreen_on_s && time_s < off_s;
        return kLoad_w - (heated ? 0.0 : kWindscreen_w) + 5.0 * m_noise.bell();
    }

    double wind(double time_s)
    {
        const double slow = 0.25 * m_wind.next(m_noise);
        const double ms = m_run.wind_ms + slow + 0.1 * m_noise.bell();
        return std::max(0.0, ms + (gust(time_s) > 0.0 ? 4.0 + 3.0 * gust(time_s) : 0.0));
    }

    /// The road train's bow wave: from a little before the rotor runs away until it has passed.
    [[nodiscard]] double gust(double time_s) const
    {
        return m_run.overspeed_at_s ? hump(time_s, *m_run.overspeed_at_s + 0.3, 1.9) : 0.0;
    }

    std::string device(double time_s)
    {
        double watts = m_run.output_w * (1.0 + 0.015 * m_output.next(m_noise));
        const double slow_rpm = 9.0 * m_rotor.next(m_noise);
        double rpm = m_run.rotor_rpm + slow_rpm + 4.0 * m_noise.bell();
        const double highest = m_run.overspeed_at_s ? m_run.rotor_rpm + 70.0 : m_run.rotor_rpm_max;
        rpm = std::min(rpm, highest - 5.0);
        rpm += (highest - rpm) * hump(time_s, m_peak_s, 1.2);
        if (m_run.overspeed_at_s) {
            const double at_s = *m_run.overspeed_at_s;
            watts += gust(time_s) > 0.0 ? ramp(time_s, at_s - 1.5, at_s, 0.0, 70.0) : 0.0;
            if (time_s >= at_s && time_s <= at_s + 2.2) { // the regulator lets go
                watts *= 0.55;
                rpm = 3230.0 + (m_run.rotor_rpm_max - 3230.0) * hump(time_s, at_s + 1.1, 1.1);
            }
        }
        double blades_deg = m_run.pitch_deg + 0.08 * m_blades.next(m_noise);
        if (m_run.blades_slow)
            blades_deg -= ramp(time_s, 0.0, 11.0, 2.6, 0.0);
        return fmt::format("{:.1f},{:.0f},{:.2f},{:.0f},", watts, rpm, blades_deg, m_run.pitch_deg);
    }

    const DayRun& m_run;
    PortableNoise m_noise;
    double m_cruise_kmh;
    double m_peak_s; ///< when the rotor is fastest
    double m_metres = 0.0;
    Wander m_speed, m_wind, m_output, m_rotor, m_blades;
};

} // namespace

std::vector<TraceFile> generatorTraces(const std::vector<DayRun>& day)
{
    std::vector<TraceFile> files;
    for (const DayRun& run : day)
        if (run.recorded())
            files.push_back({run.trace, Logger(run).record()});
    return files;
}

} // namespace bothways::demo
