// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/air.h"

#include <cmath>

namespace bothways::core {

double airDensity_kg_m3(const Air& air)
{
    const double t = air.temperature_c;
    const double kelvin = t + 273.15;
    const double p = 100.0 * air.pressure_hpa;

    const double saturation_pa = std::exp(1.2378847e-5 * kelvin * kelvin - 1.9121316e-2 * kelvin +
                                          33.93711047 - 6.3431645e3 / kelvin);
    const double enhancement = 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t;
    const double water = air.humidity_pct / 100.0 * enhancement * saturation_pa / p;
    const double ratio = p / kelvin;
    const double compressibility =
        1.0 -
        ratio * (1.58123e-6 - 2.9331e-8 * t + 1.1043e-10 * t * t +
                 (5.707e-6 - 2.051e-8 * t) * water + (1.9898e-4 - 2.376e-6 * t) * water * water) +
        ratio * ratio * (1.83e-11 - 0.765e-8 * water * water);
    return 3.483740e-3 * p / (compressibility * kelvin) * (1.0 - 0.3780 * water);
}

bool airFormulaHolds(const Air& air)
{
    return air.temperature_c >= 15.0 && air.temperature_c <= 27.0 && air.pressure_hpa >= 600.0 &&
           air.pressure_hpa <= 1100.0;
}

} // namespace bothways::core
