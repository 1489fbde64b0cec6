// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/answer/pooled.h"
#include "core/effect/answer.h"
#include "core/planning/ledger.h"
#include "core/planning/plan.h"
#include "core/screening/finding.h"
#include "core/screening/odd_runs.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The sentences of the program in English: for the command line, JSON and the report. The desktop
/// says the same from the same class and numbers through tr(), in app/desktop/look/words.h.
///
/// Every function is total: a value that is not there gives a sentence that says so, never a NaN.
/// Sizes are in words ("1.2 % less"), never signed.
namespace bothways::app::english {

/// Units in which a person reads consumption. Files and JSON never use them.
enum class ShownUnit { lPer100km, mpgUs, mpgImp, kmPerL };

/// "l_per_100km", "mpg_us", "mpg_imp", "km_per_l": as the option --unit takes them.
[[nodiscard]] std::optional<ShownUnit> shownUnitFromName(std::string_view name);
/// What the study's own runs are given in, as near as a shown unit comes: that of the first run.
[[nodiscard]] ShownUnit shownUnitOf(const core::Study& study);
/// "L/100 km", "mpg (US)", ...; "kWh/100 km" with electric drive.
[[nodiscard]] std::string unitText(ShownUnit unit, bool electric);
[[nodiscard]] double shownConsumption(double l_per_100km, ShownUnit unit, bool electric);
/// Consumption in a shown unit, without the unit's name.
[[nodiscard]] std::string consumptionText(double l_per_100km, ShownUnit unit, int decimals,
                                          bool electric);

// The answer.
[[nodiscard]] std::string verdictSentence(const core::Analysis& analysis,
                                          ShownUnit unit = ShownUnit::lPer100km);
[[nodiscard]] std::string qualifierSentence(core::Qualifier qualifier,
                                            const core::Analysis& analysis);
[[nodiscard]] std::string noVerdictSentence(core::NoVerdict reason, const core::Analysis& analysis);
/// What a study of this size and noise can show, and what it cannot.
[[nodiscard]] std::string detectableSentence(const core::Analysis& analysis);
[[nodiscard]] std::string leaveOneOutSentence(const core::Analysis& analysis);
[[nodiscard]] std::string discardsRestoredSentence(const core::Analysis& analysis);
/// What the companion is, what it finds here, and how far it is to be trusted.
[[nodiscard]] std::string companionSentence(core::Companion companion,
                                            const core::Analysis& analysis);
[[nodiscard]] std::string noteSentence(const core::Note& note);
/// A class in words: "less", "more", "no difference as large as the margin", "cannot tell", "no
/// verdict".
[[nodiscard]] std::string classWords(core::VerdictClass cls);
/// A configuration's name as it stands in a sentence: B, 'roof box'.
[[nodiscard]] std::string inQuotes(std::string_view name);

// Screening.
[[nodiscard]] std::string findingSentence(const core::Finding& finding);
/// That runs count which a finding calls spoiled; empty where there are none.
/// @param screening  without the findings that were overruled
[[nodiscard]] std::string spoiledRunsSentence(const core::Analysis& analysis,
                                              const core::Screening& screening);
/// Why a person should look at the run again: a question, not a finding.
[[nodiscard]] std::string oddRunSentence(const core::OddRun& odd, const core::Study& study);
/// Why a rule said nothing, without run and rule: "no limit is set (overspeed.rpm)".
[[nodiscard]] std::string whyNotChecked(const core::NotChecked& notChecked);
[[nodiscard]] std::string notCheckedSentence(const core::NotChecked& notChecked);
[[nodiscard]] std::string patternSentence(const core::OverspeedPattern& pattern);

/// A line of the history: "Run added: run 13: A out ...".
/// @param kind  as the study file has it: "add_run"
[[nodiscard]] std::string historySentence(std::string_view kind, std::string_view detail);

/// What the runs say beside what the ledger expects; empty without a verdict.
[[nodiscard]] std::string measuredBesideLedger(const core::Analysis& analysis,
                                               const core::Ledger& ledger);

// The checks: one sentence each, that says what it means for this study and what to do.
[[nodiscard]] std::string normalSentence(const core::Analysis& analysis);
[[nodiscard]] std::string outlierSentence(const core::Analysis& analysis);
[[nodiscard]] std::string orderSentence(const core::Analysis& analysis);
[[nodiscard]] std::string curveSentence(const core::Analysis& analysis);
[[nodiscard]] std::string spreadSentence(const core::Analysis& analysis);
[[nodiscard]] std::string baselineSentence(const core::Analysis& analysis);
[[nodiscard]] std::string directionSentence(const core::Analysis& analysis);
[[nodiscard]] std::string resolutionSentence(const core::Analysis& analysis);
[[nodiscard]] std::string airSentence(const core::Analysis& analysis);
/// A check by its name, what it came to, and its sentence.
/// "holds", "note", "not met", "not computed".
[[nodiscard]] std::string stateWords(core::CheckState state);
struct CheckWords {
    const char* check;
    core::CheckState state;
    std::string sentence;
};
/// All of them, in the order of method section 7.
[[nodiscard]] std::vector<CheckWords> checkWords(const core::Analysis& analysis);
/// How much the checks can see with so few pairs; empty where there are many.
[[nodiscard]] std::string checksPowerSentence(const core::Analysis& analysis);

} // namespace bothways::app::english
