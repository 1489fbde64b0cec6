// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

/// A t interval and a p that may be looked at as often as one likes.
namespace bothways::core {

/// Prior precision of the effect in noise units: delta/sigma ~ N(0, 1/phi), two standard deviations
/// of a pair wide.
inline constexpr double kAnyLookPrecision = 0.25;

/// Half-width of the interval that holds at all looks together with probability 1 - alpha, in
/// standard errors:
///   sqrt(nu (K - 1)/(1 - r K)), r = phi/(phi + 1/v), K = (alpha sqrt(r))^(-2/(nu + 1)).
/// It holds every effect whose Bayes factor stays below 1/alpha. Under the right-Haar prior of
/// everything else the Bayes factor is a martingale when there is no effect, so that by Ville's
/// inequality it ever exceeds 1/alpha in at most a share alpha of all studies.
///
/// @param v   se^2/s^2, > 0
/// @param df  nu
/// @return  nothing with df < 1, or where every effect would be inside (r K >= 1)
///
/// Sources: A. Hendriksen, R. de Heide, P. Grunwald, "Optional stopping with Bayes factors",
/// Bayesian Analysis 16 (2021) 961-989; M. F. Perez-Ortiz, T. Lardy, R. de Heide, P. Grunwald,
/// "E-statistics, group invariance and anytime valid testing", arXiv:2208.07610 (2022); M. Lindon,
/// D. W. Ham, M. Tingley, I. Bojinov, "Anytime-valid inference in linear models with applications
/// to regression-adjusted causal inference", arXiv:2210.08589 (2022).
/// Checked: tests/core/statistics/any_look_test.cpp (against the integral over the prior).
[[nodiscard]] std::optional<double> anyLookHalfWidth(double v, double df, double alpha);

/// The Bayes factor for an effect, from its t statistic:
///   sqrt(r) ((1 + t^2/nu)/(1 + r t^2/nu))^((nu + 1)/2).
[[nodiscard]] double anyLookBayesFactor(double t, double v, double df);

} // namespace bothways::core
