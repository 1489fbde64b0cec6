// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"

#include <optional>

namespace bothways::core {

/// The headline's effect with the noise of this study and of earlier days together:
///   s_b^2 = (df s^2 + df0 s0^2)/(df + df0), delta +- t(1 - alpha/2, df + df0) s_b sqrt(v).
/// `ratio_p` is the two-sided F test of s^2/s0^2. (Method, section 5, `borrowed`.)
///
/// @return  nothing without AnalysisOptions::noise
[[nodiscard]] std::optional<BorrowedInterval> borrowedOf(const Headline& headline,
                                                         const AnalysisOptions& options);

/// Below this `ratio_p` the borrowed noise is shown, and said not to be comparable.
inline constexpr double kNotComparable = 0.05;

} // namespace bothways::core
