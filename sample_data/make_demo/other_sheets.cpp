// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample_data/make_demo/other_sheets.h"

#include "sample_data/make_demo/portable_noise.h"

#include <fmt/format.h>

#include <algorithm>

namespace bothways::demo {
namespace {

constexpr double kMpgUsTimesLPer100km = 100.0 * 3.785411784 / 1.609344;

/// Noise of one run, relative; drift per hour; difference of the directions.
struct Scatter {
    double noise, drift_per_h, directions;
};

double consumption(double base, double effect, bool out, double hours, const Scatter& scatter,
                   PortableNoise& noise)
{
    return base * (1.0 + effect) * (1.0 + scatter.drift_per_h * hours) *
           (1.0 + (out ? 0.5 : -0.5) * scatter.directions) * (1.0 + scatter.noise * noise.bell());
}

std::string decimalComma(double value, int decimals)
{
    std::string text = fmt::format("{:.{}f}", value, decimals);
    std::replace(text.begin(), text.end(), '.', ',');
    return text;
}

} // namespace

std::string roofBoxSheet()
{
    // A box adds some 0.09 m2 of drag area; at 105 km/h that is 6 to 7 % of a small estate's
    // petrol (the formula of method, section 11, for drag area).
    constexpr double kEffect = 0.065;
    PortableNoise noise(20260509);
    std::string text = "# Invented data, made by the program in sample_data/make_demo with a fixed "
                       "seed.\n# A small estate car, its roof box off, on, and off again. 65 mph.\n"
                       "configuration,direction,start,duration_s,distance_mi,mpg_us,notes\n";
    int minute = 5 * 60 + 50;
    for (const bool box : {false, true, false}) {
        for (int i = 0; i < 8; ++i) {
            const double hours = (minute - 350) / 60.0;
            const double litres = consumption(6.9, box ? kEffect : 0.0, i % 2 == 0, hours,
                                              {0.006, -0.002, 0.03}, noise);
            // Drawn one by one: the order of a call's arguments is the compiler's choice.
            const double duration_s = 171.0 + 1.2 * noise.bell();
            const double distance_mi = 3.1 + 0.01 * noise.bell();
            text += fmt::format("{},{},{:02}:{:02},{:.0f},{:.2f},{:.1f},{}\n",
                                box ? "box" : "no box", i % 2 == 0 ? "north" : "south", minute / 60,
                                minute % 60, duration_s, distance_mi, kMpgUsTimesLPer100km / litres,
                                i == 0 && box ? "\"box mounted, empty\"" : "");
            minute += 6;
        }
        minute += 14;
    }
    return text;
}

std::string tyrePressureSheet()
{
    // Half a bar more takes some 7 % off rolling resistance, which is a fifth of the work at
    // 90 km/h (common practice, no source).
    constexpr double kEffect = -0.014;
    PortableNoise noise(20260620);
    std::string text =
        "# Invented data, made by the program in sample_data/make_demo with a fixed "
        "seed.\n# A saloon car with its tyres at 2,2 bar, at 2,7 bar, and at 2,2 bar "
        "again. 90 km/h.\n"
        "run;configuration;direction;start;duration_s;distance_km;l_per_100km;"
        "temperature_c;notes\n";
    int run = 0;
    int minute = 5 * 60 + 5;
    for (const bool high : {false, true, false}) {
        for (int i = 0; i < 8; ++i) {
            const double hours = (minute - 305) / 60.0;
            const double litres = consumption(5.4, high ? kEffect : 0.0, i % 2 == 0, hours,
                                              {0.007, -0.003, 0.02}, noise);
            const double duration_s = 200.0 + 1.4 * noise.bell();
            const double distance_km = 5.0 + 0.01 * noise.bell();
            const double temperature_c = 14.2 + 1.1 * hours + 0.1 * noise.bell();
            ++run;
            text +=
                fmt::format("{};{};{};2026-06-20T{:02}:{:02}:00;{};{};{};{};{}\n", run,
                            high ? "2,7 bar" : "2,2 bar", i % 2 == 0 ? "east" : "west", minute / 60,
                            minute % 60, decimalComma(duration_s, 1), decimalComma(distance_km, 2),
                            decimalComma(litres, 2), decimalComma(temperature_c, 1),
                            i == 0 && run > 1 ? "pressures set warm, gauge 0,05 bar" : "");
            minute += 7;
        }
        minute += 10;
    }
    return text;
}

} // namespace bothways::demo
