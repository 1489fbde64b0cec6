// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

/// The demo's day: a delivery van with a ram-air generator on its roof rack, driven out and back on
/// a levee road beside a lake. All of it is invented: van, generator, road, lake, weather, numbers.
///
/// The truth behind the sheet is kept here, so that recordings of the same day can be made from it.
namespace bothways::demo {

// The van on the levee.
inline constexpr double kStretch_km = 5.0;
inline constexpr double kTarget_kmh = 90.0;
inline constexpr double kConsumption_l_per_100km = 8.60; ///< diesel, at the baseline
inline constexpr double kLoad_w = 900.0; ///< lights, fan, logger and the heated windscreen
inline constexpr double kWindscreen_w = 600.0;
inline constexpr double kWindscreen_min = 10.0; ///< then its timer switches it off
inline constexpr double kRotorLimit_rpm = 3200.0;

/// What really happened in one pass.
struct DayRun {
    int number = 0; ///< as in the sheet
    bool device = false;
    double pitch_deg = 0.0; ///< 0 without the device
    bool out = true;
    double start_s = 0.0; ///< since midnight
    double duration_s = 0.0;
    double distance_km = 0.0;
    double l_per_100km = 0.0;
    double output_w = 0.0;        ///< mean of the run
    double rotor_rpm = 0.0;       ///< usual, in this run
    double rotor_rpm_max = 0.0;   ///< highest, in this run
    double windscreen_on_s = 0.0; ///< when its button was pressed, from the run's start
    double wind_ms = 0.0, wind_from_deg = 0.0;
    double temperature_c = 0.0, pressure_hpa = 0.0, humidity_pct = 0.0;
    double battery_v_start = 0.0, battery_v_end = 0.0;

    // What went wrong, where it did.
    std::optional<double> overspeed_at_s;   ///< rotor beyond its limit, beside the road train
    std::optional<double> windscreen_off_s; ///< the timer drops the windscreen's load
    std::optional<double> stopped_at_s;     ///< at the roadworks
    std::optional<double> standing_s;       ///< for how long
    bool low_tyre = false;
    bool cruising_late = false; ///< the meter was reset before the van was at speed
    bool blades_slow = false;   ///< turned at the roadside, they reach their pitch in the run
    bool tractor_ahead = false; ///< on the last 200 m
    bool meter_lost = false;    ///< no consumption to be read
    std::optional<int> copy_of; ///< typed twice: the run that it repeats

    // What the companion wrote down.
    std::string reason, evidence; ///< of a discard made by hand
    std::string marks, notes;

    std::string trace; ///< file of the logger's recording, where it ran
    [[nodiscard]] bool recorded() const { return !trace.empty(); }
};

/// The day in order of start. The same on every machine.
[[nodiscard]] std::vector<DayRun> generatorDay();

/// The sheet that the companion typed, comment lines included.
[[nodiscard]] std::string generatorSheet(const std::vector<DayRun>& day);

} // namespace bothways::demo
