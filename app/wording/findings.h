// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/units.h"
#include "core/effect/answer.h"
#include "core/screening/finding.h"
#include "core/study/rule.h"

#include <string>
#include <string_view>
#include <vector>

/// Screening, in words.
namespace bothways::app::wording {

/// "run 9: rotor at 3,410 rpm ...".
[[nodiscard]] std::string findingSentence(const Language& in, const core::Finding& finding,
                                          const Units& units = {});
/// The same without the run's number, where that is told already.
[[nodiscard]] std::string findingWords(const Language& in, const core::Finding& finding,
                                       const Units& units = {});
/// That runs count which a finding calls spoiled; empty where there are none.
/// @param runs  ResultSet::spoiled
[[nodiscard]] std::string spoiledRunsSentence(const Language& in, const std::vector<int>& runs);
enum class Names { forPeople, ofFiles };
/// Why a rule said nothing, without run and rule: "no limit is set (overspeed.rpm)".
/// @param names  of what is missing: "vibration", or "vibration_ms2" as files have it
[[nodiscard]] std::string whyNotChecked(const Language& in, const core::NotChecked& notChecked,
                                        Names names = Names::forPeople);
[[nodiscard]] std::string notCheckedSentence(const Language& in,
                                             const core::NotChecked& notChecked);
[[nodiscard]] std::string patternSentence(const Language& in,
                                          const core::OverspeedPattern& pattern);

/// As on a label: "accessory load changed", "over-speed".
[[nodiscard]] std::string ruleName(const Language& in, core::Rule rule);
/// A discard's reason as on a label: ruleName() where it is a rule, else "other reason".
[[nodiscard]] std::string reasonName(const Language& in, std::string_view reason);
/// The same as reports have it: ruleName(), "other", or the words that were given.
[[nodiscard]] std::string reasonWord(const Language& in, std::string_view reason);
/// As on a label: "note", "doubtful", "spoils the run".
[[nodiscard]] std::string gradeName(const Language& in, core::Grade grade);
/// As reports have it: "spoils".
[[nodiscard]] std::string gradeWord(const Language& in, core::Grade grade);
/// A mark's word as a person says it: "passing traffic", "gust".
[[nodiscard]] std::string markName(const Language& in, std::string_view word);

} // namespace bothways::app::wording
