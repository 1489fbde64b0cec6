// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace bothways::core {

struct ShareInterval {
    double low = 0.0, high = 1.0;
};

/// Exact (Clopper-Pearson) interval for a share: `hits` of `trials`.
///
/// Quantiles of the beta distribution; low is 0 without hits, high is 1 when all hit.
///
/// @param hits        in [0, trials]
/// @param trials      >= 1
/// @param confidence  in (0, 1)
/// Source: C. J. Clopper, E. S. Pearson, "The use of confidence or fiducial limits illustrated in
/// the case of the binomial", Biometrika 26 (1934) 404-413. Checked:
/// tests/core/statistics/binomial_test.cpp.
[[nodiscard]] ShareInterval clopperPearson(int hits, int trials, double confidence);

} // namespace bothways::core
