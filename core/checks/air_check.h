// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/effect/prepared_study.h"

namespace bothways::core {

/// What the air alone would have done to B against A. (Method, section 10.)
///
/// density_pct = 100 aero_share (mean rho_B - mean rho_A)/mean rho_A over paired runs that have
/// temperature, pressure and humidity. wind_pct = 100 aero_share (mean w^2_B - mean w^2_A)/V^2 over
/// paired runs that have wind, its direction and a speed, where the stretch's bearing is known; w
/// is the wind along the stretch, V the mean speed of those runs (the run's own, or distance over
/// duration, or the target speed).
///
/// The check fails when the larger of the two exceeds (high - low)/4 of the headline's interval, in
/// per cent. With a control vehicle it is not computed: both vehicles met the same air.
[[nodiscard]] AirCheck airCheckOf(const Study& study, const PreparedStudy& prepared,
                                  const Headline& headline);

} // namespace bothways::core
