// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"

/// From an estimate to its interval and class. (Method, section 6.)
namespace bothways::core {

/// delta +- t(1 - alpha/2, df) se with its two-sided p and class.
///
/// With se = 0 the interval is a point and p is 1 at effect 0, else 0.
/// @param df  > 0; fractional allowed
[[nodiscard]] Interval intervalOf(double effect_log, double se_log, double df,
                                  const AnalysisOptions& options);

/// t(1 - alpha, df) se: half the interval at confidence 1 - 2 alpha.
[[nodiscard]] double equivalenceHalfWidth(double se_log, double df, double confidence);

/// The class of an interval [low, high] at the asked confidence whose equivalence interval, at
/// confidence 1 - 2 alpha, is [lowEquivalence, highEquivalence] (Schuirmann 1987): less, more,
/// equivalent or undecided.
[[nodiscard]] VerdictClass classOf(double low_log, double high_log, double lowEquivalence_log,
                                   double highEquivalence_log, double margin_pct);

/// Whether [low, high] lies inside (ln(1 - M/100), ln(1 + M/100)).
[[nodiscard]] bool insideMargins(double low_log, double high_log, double margin_pct);

/// Whether the runs driven so far fulfil the plan that was tied to the study. They do when there
/// are as many blocks as planned (counting only blocks with pairs, equal neighbours as one) and as
/// many pairs of each configuration.
[[nodiscard]] bool fulfils(const PlannedStudy& plan, int designBlocks, int baselinePairs,
                           int devicePairs);

/// The companions that disagree with the headline, in the order of enum Companion. (Method, section
/// 5.)
[[nodiscard]] std::vector<Companion>
disagreeing(const Headline& headline, VerdictClass headlineClass, const Companions& companions);

/// True when any check fails. `baseline` and `resolution` inform, they never fail.
[[nodiscard]] bool anyFails(const Checks& checks);

} // namespace bothways::core
