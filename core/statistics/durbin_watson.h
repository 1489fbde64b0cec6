// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

namespace bothways::core {

struct DurbinWatson {
    double d = 2.0;    ///< sum of squared steps over sum of squares, in [0, 4]; 2: no correlation
    double lag1 = 0.0; ///< sum of e[t] e[t+1] over sum of squares
    double p = 1.0;    ///< two-sided, min(1, 2 min(P(D <= d), P(D >= d)))
};

/// Durbin-Watson test of least squares residuals in the order given, with the exact distribution
/// for this very design.
///
/// @param residuals  of the fit on `design`, in time order
/// @param design     the model's columns, one after the other, each as long as `residuals`; they
///                   may depend on one another
/// @return  nothing when the residuals are all zero, with under 2 degrees of freedom, with more
///          than 20,000 of them, or with so many columns that it would take seconds
[[nodiscard]] std::optional<DurbinWatson> durbinWatson(std::span<const double> residuals,
                                                       std::span<const double> design);
/// False where durbinWatson() would find only after long work that it takes seconds.
[[nodiscard]] bool durbinWatsonMayBeHad(std::size_t n, std::size_t columns);

struct TailProbabilities {
    double below = 0.0; ///< P(D <= d)
    double above = 1.0; ///< P(D >= d)
};

/// Where d lies under independent normal errors, for residuals of a fit on `design` (`n` rows).
/// What durbinWatson() goes by, by itself, as published tables have it.
///
/// P(D <= d) = 1/pi * integral over v > 0 of Re(det(I + wS)^(-1/2) / w), w = c + iv, where S is
/// A - d, restricted to the residuals' space, A tridiagonal. With Q an orthonormal basis of the
/// design, det(I + wS) = det B * det Q'B^-1 Q, B = I + w(A - d): O(n k^2) a value, no eigenvalues.
/// c goes near the saddle point, so that small probabilities keep their digits. The integral is
/// taken by the trapezoid rule after v = exp(pi/2 sinh t), halving the step until it rests.
///
/// @return  relative error of the smaller one below 1e-9
/// Sources: J. P. Imhof, "Computing the distribution of quadratic forms in normal variables",
/// Biometrika 48 (1961) 419-426 (the inversion; here on a shifted path); H. Takahasi, M. Mori,
/// Publ. RIMS Kyoto 9 (1974) 721-741 (the quadrature). Checked:
/// tests/published/durbin_watson_test.cpp.
[[nodiscard]] TailProbabilities durbinWatsonTails(double d, std::span<const double> design,
                                                  std::size_t n);

} // namespace bothways::core
