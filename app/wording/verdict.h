// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/units.h"
#include "core/effect/answer.h"

#include <string>
#include <string_view>
#include <vector>

/// The answer in words, from its class and numbers.
///
/// Every function is total: a value that is not there gives a sentence that says so, never a NaN.
/// Sizes are in words ("1.2 % less"), never signed.
namespace bothways::app::wording {

/// The answer, what it means in consumption, and what it would take to know more.
[[nodiscard]] std::string verdictSentence(const Language& in, const core::Analysis& analysis,
                                          const Units& units = {});
/// The answer alone, or what is missing.
[[nodiscard]] std::string shortVerdict(const Language& in, const core::Analysis& analysis);
/// "That is 7.90 in place of 8.00 L/100 km." Empty where only a ratio is known.
[[nodiscard]] std::string inUnits(const Language& in, const core::Analysis& analysis,
                                  const Units& units = {});
/// "That is at least 1.1 % less.": the near end of the interval. Empty unless it is less or more.
[[nodiscard]] std::string atLeastSentence(const Language& in, const core::Analysis& analysis);
/// What the interval says of a claim: "The claimed 5 % less is ruled out: it is at most 1.2 %
/// less." Empty without a claim or a verdict.
[[nodiscard]] std::string claimSentence(const Language& in, const core::Analysis& analysis);
/// What it would take to see the margin; empty where the answer needs no more.
[[nodiscard]] std::string whatItWouldTake(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string noVerdictSentence(const Language& in, core::NoVerdict reason,
                                            const core::Analysis& analysis);

[[nodiscard]] std::string qualifierSentence(const Language& in, core::Qualifier qualifier,
                                            const core::Analysis& analysis);
/// The sentences of all qualifiers, in order: the first few, and what stands behind a "more".
struct QualifierWords {
    std::vector<std::string> first, more;
};
inline constexpr std::size_t kQualifiersShown = 3;
[[nodiscard]] QualifierWords qualifierWords(const Language& in, const core::Analysis& analysis);
/// As on a label: "one switch only", "fragile".
[[nodiscard]] std::string qualifierName(const Language& in, core::Qualifier qualifier);
/// A class in words: "less", "more", "no difference as large as the margin", "cannot tell", "no
/// verdict".
[[nodiscard]] std::string classWords(const Language& in, core::VerdictClass cls);

/// "9 pairs from 18 counted runs in 3 blocks; none discarded."
[[nodiscard]] std::string tally(const Language& in, const core::Analysis& analysis);

/// A configuration's name as it stands in a sentence: B, 'roof box'.
[[nodiscard]] std::string inQuotes(const Language& in, std::string_view name);
/// The same of the two that are compared; "the baseline", "the device" where they have no name yet.
[[nodiscard]] std::string baselineWords(const Language& in, const core::Analysis& analysis);
[[nodiscard]] std::string deviceWords(const Language& in, const core::Analysis& analysis);

} // namespace bothways::app::wording
