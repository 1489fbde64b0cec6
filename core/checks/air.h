// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// Air as the road test meets it. (Method, section 10.)
namespace bothways::core {

struct Air {
    double temperature_c = 20.0;
    double pressure_hpa = 1013.25; ///< at the place, not reduced to sea level
    double humidity_pct = 50.0;    ///< relative, 0 to 100
};

/// Density of moist air in kg/m3, CIPM-2007, with a mole fraction of carbon dioxide of 0.0004.
///
/// Saturation pressure, enhancement factor and compressibility as in the source, with the rounded
/// constants 3.483740e-3 and 0.3780 of its equation (the unrounded ones differ by 5e-7).
///
/// @param air  temperature above -273 degC, pressure > 0, humidity in [0, 100]
/// @return  relative accuracy 2.2e-5 within airFormulaHolds(), some 5e-4 down to -5 degC
///
/// Source: A. Picard, R. S. Davis, M. Glaeser, K. Fujii, "Revised formula for the density of moist
/// air (CIPM-2007)", Metrologia 45 (2008) 149-155. Checked: tests/published/air_test.cpp.
[[nodiscard]] double airDensity_kg_m3(const Air& air);

/// The formula's own range: 15 to 27 degC, 600 to 1100 hPa.
[[nodiscard]] bool airFormulaHolds(const Air& air);

} // namespace bothways::core
