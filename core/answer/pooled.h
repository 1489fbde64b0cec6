// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <optional>
#include <span>
#include <string>

/// One answer from several studies that ask the same question. (Product page, "analyse A B".)
namespace bothways::core {

struct StudyEffect {
    std::string name;
    double effect_log = 0.0, se_log = 0.0, df = 0.0;
};

/// Random effects: DerSimonian-Laird tau^2, Hartung-Knapp variance not below the plain one, t with
/// k - 1 df.
///
/// Sources: R. DerSimonian, N. Laird, "Meta-analysis in clinical trials", Controlled Clinical
/// Trials 7 (1986) 177-188; J. Hartung, G. Knapp, "A refined method for the meta-analysis of
/// controlled clinical trials with binary outcome", Statistics in Medicine 20 (2001) 3875-3889;
/// "not below the plain one": C. Roever, G. Knapp, T. Friede, BMC Medical Research Methodology 15
/// (2015) 99. Checked: tests/published/pooled_test.cpp.
struct Pooled {
    double effect_log = 0.0, low_log = 0.0, high_log = 0.0;
    double df = 0.0, p = 1.0;
    double tau = 0.0; ///< log
    double i2 = 0.0;  ///< share of the scatter that is not chance, 0 to 1
    double q = 0.0;   ///< Cochran's heterogeneity statistic, k - 1 df
};

/// Empty with fewer than two studies, or a standard error that is not positive.
[[nodiscard]] std::optional<Pooled> pool(std::span<const StudyEffect> studies,
                                         double confidence = 0.95);

} // namespace bothways::core
