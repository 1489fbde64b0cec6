// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <span>

namespace bothways::core {

struct LargestResidual {
    std::size_t place = 0;    ///< of equal ones the first
    double studentised = 0.0; ///< externally, with its sign
    double p = 1.0;           ///< Bonferroni: min(1, n P(|T_{df-1}| > |studentised|))
};

/// Which residual of a least squares fit stands out, and whether that is more than chance.
///
/// e/(s' sqrt(1 - h)), s'^2 = (RSS - e^2/(1 - h))/(df - 1), h the leverage: the t value of a term
/// for that observation alone. Where the others fit exactly, s' is `finest`. An observation that
/// alone carries a column (h = 1) fits whatever it reads and is passed over.
///
/// @param df      of the fit
/// @param finest  > 0: the least spread that could be seen, the display's rounding for instance
/// @return  nothing with df < 2, or when every observation is passed over or fits exactly
/// Source: R. D. Cook, S. Weisberg, *Residuals and Influence in Regression*, 1982, section 2.2.2.
/// Checked: tests/published/outlier_test.cpp (Grubbs' table).
[[nodiscard]] std::optional<LargestResidual> largestResidual(std::span<const double> residuals,
                                                             std::span<const double> leverage,
                                                             double df, double finest);

} // namespace bothways::core
