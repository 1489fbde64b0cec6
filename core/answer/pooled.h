// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"

#include <optional>
#include <span>
#include <string>

/// One answer from several studies that ask the same question. (`bothways analyse A B`.)
namespace bothways::core {

struct StudyEffect {
    std::string name;
    double effect_log = 0.0, se_log = 0.0, df = 0.0;
    double s = 0.0; ///< of a pair, log; se = s sqrt(v)
};

[[nodiscard]] StudyEffect studyEffectOf(std::string name, const Headline& headline);

struct EffectRange {
    double low_log = 0.0, high_log = 0.0;
};
/// effect ± t(df) se, two-sided.
/// @param confidence  between 0 and 1, whatever the study itself was answered with
[[nodiscard]] EffectRange rangeOf(const StudyEffect& study, double confidence);

/// One effect for all studies, under the assumption that they have one: weights 1/v, which no
/// chance enters.
///   p = (1/v)/sum(1/v), delta = sum p delta, var = sum p^2 se^2, df = var^2/sum(p^4 se^4/df)
/// (B. L. Welch, Biometrika 29 (1938) 350; F. E. Satterthwaite, Biometrics Bulletin 2 (1946)
/// 110-114), t interval. Covers 0.948 to 0.967 for studies of 2 degrees of freedom, noise alike or
/// threefold apart, where inverse variances with Meier's correction cover 0.875 / 0.815 / 0.750 for
/// 3 / 5 / 8 studies.
struct CommonEffect {
    double effect_log = 0.0, low_log = 0.0, high_log = 0.0;
    double df = 0.0, p = 1.0;
};

/// Whether the studies have one effect: Welch's F for means of unequal variances (B. L. Welch, "On
/// the comparison of several mean values: an alternative approach", Biometrika 38 (1951) 330-336).
struct Agreement {
    double statistic = 0.0, df1 = 0.0, df2 = 0.0, p = 1.0;
    CheckState state = CheckState::notComputed;
};

/// Random effects: DerSimonian and Laird's tau^2 and mean; t with k - 1 df.
///
/// The weights of that mean are as uncertain as the standard errors: with Hartung and Knapp's
/// variance, not below the plain one, eight studies of 2 degrees of freedom covered 0.91 of a
/// nominal 0.95. So with three studies or more whose noise is known the half-width is
///   t se' + 0.6 |mean - mean'|,
/// mean' and se' those with each study's noise drawn towards that of all of them (8 more degrees of
/// freedom at the pooled s^2) and Hartung and Knapp's factor, which may fall to 0.1. Simulated for
/// 3 to 10 studies of 2 to 9 degrees of freedom, noise alike or threefold apart, true scatter of
/// none, one and two standard errors (tests/bench/pooled_bench.cpp). With two studies, or from
/// standard errors alone, it is Hartung and Knapp's variance, not below the plain one.
///
/// Sources: R. DerSimonian, N. Laird, "Meta-analysis in clinical trials", Controlled Clinical
/// Trials 7 (1986) 177-188; J. Hartung, G. Knapp, "A refined method for the meta-analysis of
/// controlled clinical trials with binary outcome", Statistics in Medicine 20 (2001) 3875-3889;
/// "not below the plain one": C. Roever, G. Knapp, T. Friede, BMC Medical Research Methodology 15
/// (2015) 99. Checked: tests/published/pooled_test.cpp.
struct Pooled {
    double effect_log = 0.0, low_log = 0.0, high_log = 0.0;
    double df = 0.0, p = 1.0;
    double tau = 0.0;                   ///< log
    double i2 = 0.0;                    ///< share of the scatter that is not chance, 0 to 1
    double q = 0.0;                     ///< Cochran's heterogeneity statistic, k - 1 df
    std::optional<CommonEffect> common; ///< empty where a study's s is not known
    Agreement agreement;
};

/// Empty with fewer than two studies, or a standard error that is not positive.
[[nodiscard]] std::optional<Pooled> pool(std::span<const StudyEffect> studies,
                                         double confidence = 0.95);

/// The effect that is said first: the common one of up to four studies that do not disagree, else
/// the mean of effects of their own.
[[nodiscard]] bool commonLeads(const Pooled& pooled);
/// What the studies say together, as classOf() says of one. The mean's interval is no plain t
/// interval, so it has to lie inside the margins as a whole.
[[nodiscard]] VerdictClass classOfPooled(const Pooled& pooled, double confidence,
                                         double margin_pct);

} // namespace bothways::core
