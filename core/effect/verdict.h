// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/effect/answer.h"
#include "core/effect/prepared_study.h"

#include <span>

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

/// True at place i: the blocks may stand for the first i letters of the plan's sequence, each
/// letter with at least the planned pairs. A block drives one letter or several equal ones; a plan
/// with BB allows a block B and, on the next day, another. All false: the blocks are not the
/// plan's.
[[nodiscard]] std::vector<bool> lettersDriven(const PlannedStudy& plan,
                                              std::span<const DesignBlock> driven);
/// Of the letter at place i: other than A.
[[nodiscard]] bool isDeviceLetter(const PlannedStudy& plan, std::size_t i);
/// Whether the runs driven so far fulfil the plan that was tied to the study: the blocks with
/// pairs, in order of driving, begin with the planned sequence, each with at least the planned
/// pairs. Neighbours of one configuration on one day are one block, which then drives as many
/// letters; a new day begins a new block, which may be of the configuration before.
[[nodiscard]] bool fulfils(const PlannedStudy& plan, std::span<const DesignBlock> driven);

/// The companions that disagree with the headline, in the order of enum Companion. (Method, section
/// 5.)
///
/// One that merely sees less does not disagree. `bracket`, `runs`, `blocks` and `curved` (df >= 2)
/// do when their interval leaves the headline's effect out, or when they say less or more and the
/// headline says something else that is not `undecided`. `labels` does, beside a headline that is
/// not `undecided`, when there are deals enough to reach alpha and its p and the headline's lie on
/// different sides of alpha, clearly: p at least 2 alpha, or at most alpha/2.
[[nodiscard]] std::vector<Companion>
disagreeing(const Headline& headline, VerdictClass headlineClass, const Companions& companions);

/// Whether the verdict holds only if each pair's error is its own: the headline says something, and
/// `correlated` (df >= 2) another thing.
[[nodiscard]] bool needsIndependence(VerdictClass headlineClass, const Companions& companions);

/// What the headline's interval says of a claimed effect: it bears it out when all of it is at
/// least as much, refutes it when all of it is less.
/// @param claim_pct  above -100 and not 0
[[nodiscard]] ClaimAnswer answerToClaim(double claim_pct, const Headline& headline);

/// Fails at p < 0.01, a note at p < 0.05. (Method, section 7.)
[[nodiscard]] CheckState checkStateOf(double p);
/// True when any check fails. `baseline` informs, it never fails.
[[nodiscard]] bool anyFails(const Checks& checks);

} // namespace bothways::core
