// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/analysis.h"
#include "core/finding.h"
#include "core/ledger.h"
#include "core/plan.h"
#include "core/pooled.h"

#include <string>

/// The sentences of the program in English: for the command line, JSON and the report. The desktop
/// says the same from the same class and numbers through tr(), in app/desktop/words.h.
namespace bothways::app::english {

/// Units in which a person reads consumption. Files and JSON never use them.
enum class ShownUnit { lPer100km, mpgUs, mpgImp, kmPerL };

[[nodiscard]] std::string verdictSentence(const core::Analysis& analysis,
                                          ShownUnit unit = ShownUnit::lPer100km);
[[nodiscard]] std::string qualifierSentence(core::Qualifier qualifier,
                                            const core::Analysis& analysis);
[[nodiscard]] std::string noVerdictSentence(core::NoVerdict reason, const core::Analysis& analysis);
[[nodiscard]] std::string findingSentence(const core::Finding& finding);
[[nodiscard]] std::string notCheckedSentence(const core::NotChecked& notChecked);
[[nodiscard]] std::string patternSentence(const core::OverspeedPattern& pattern);
[[nodiscard]] std::string noteSentence(const core::Note& note);
/// One sentence each, that says what it means for this study.
[[nodiscard]] std::string normalSentence(const core::Analysis& analysis);
[[nodiscard]] std::string outlierSentence(const core::Analysis& analysis);
[[nodiscard]] std::string orderSentence(const core::Analysis& analysis);
[[nodiscard]] std::string curveSentence(const core::Analysis& analysis);
[[nodiscard]] std::string spreadSentence(const core::Analysis& analysis);
[[nodiscard]] std::string baselineSentence(const core::Analysis& analysis);
[[nodiscard]] std::string directionSentence(const core::Analysis& analysis);
[[nodiscard]] std::string resolutionSentence(const core::Analysis& analysis);
[[nodiscard]] std::string airSentence(const core::Analysis& analysis);

} // namespace bothways::app::english
