// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/statistics/least_squares.h"

#include <functional>
#include <optional>
#include <span>
#include <vector>

/// The effect when successive pairs resemble each other. (Method, section 5, `correlated`.)
namespace bothways::core {

/// What is believed of the autocorrelation rho before the pairs are seen.
struct RhoPrior {
    double atZero = 0.125; ///< probability that there is none at all
    double highest = 0.95; ///< the rest lies in (0, highest)
    /// Density of that rest in phi = asin(rho), up to a factor; empty: constant, that is
    /// 1/sqrt(1 - rho^2) in rho.
    std::function<double(double rho)> inAngle = {};
};

/// Pairs in order, as a linear model whose last column is the effect.
struct CorrelatedModel {
    const Columns& x; ///< independent columns; the last one is the effect
    std::span<const double> y;
    std::span<const std::size_t>
        begins; ///< where a new day begins, 0 included: no memory across it
};

/// An interval that keeps its coverage when the noise of successive pairs follows a first-order
/// autoregression: generalised least squares, averaged over rho.
///
/// Given rho the effect has a t distribution about the generalised least squares estimate. The
/// mixture of them is weighted by prior times restricted likelihood
///   (1 - rho^2)^(days/2) |X'R^-1 X|^(-1/2) RSS(rho)^(-df/2);
/// its alpha/2 and 1 - alpha/2 quantiles are the interval, its mean is the effect, twice its
/// smaller tail beyond 0 is p. rho is integrated by Gauss-Legendre in asin(rho); at each node the
/// rows are made independent in O(n k) and reduced by Householder QR.
///
/// Why this prior: of twelve methods compared in tests/bench/README.md it keeps the wanted coverage
/// (0.945, 0.945 and 0.94 at rho = 0, 0.3, 0.6 from four pairs a block on) with the least width at
/// rho = 0. A published comparison of six methods for short series found all of them below their
/// nominal coverage: S. L. Turner, A. B. Forbes, A. Karahalios, M. Taljaard, J. E. McKenzie, BMC
/// Medical Research Methodology 21 (2021) 181.
///
/// @return  nothing with df < 1, a fit without residuals, columns that depend on one another, or so
///          many of them that it would take seconds
/// Checked: tests/core/companions/correlated_test.cpp (against the same integral elsewhere, and
/// coverage).
[[nodiscard]] std::optional<CorrelatedInterval> correlatedInterval(const CorrelatedModel& model,
                                                                   const AnalysisOptions& options,
                                                                   const RhoPrior& prior = {});

} // namespace bothways::core
