// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/noise.h"
#include "app/answer/several.h"
#include "app/output/analysis_json.h"
#include "app/wording/units.h"
#include "core/effect/answer.h"
#include "core/screening/finding.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// What people read at a terminal: some 96 columns wide, no control characters unless `colour`.
namespace bothways::app {

struct TextOptions {
    wording::ShownUnit unit = wording::ShownUnit::lPer100km;
    bool colour = false;                    ///< ANSI colours; only for a terminal
    std::vector<std::string> notes = {};    ///< of the caller, before those of the analysis
    std::vector<std::string> warnings = {}; ///< of the caller, after the qualifiers of the verdict
    Language language = {};
};

/// The whole result: verdict, numbers, companions, checks, sensitivity, findings, notes.
[[nodiscard]] std::string analysisText(const core::Analysis& analysis,
                                       const core::Screening& screening,
                                       const TextOptions& options = {});
/// Findings, what was not checked and why, the pattern.
/// @param study  whose discarded runs are settled: their findings stand apart
[[nodiscard]] std::string screeningText(const Language& in, const core::Screening& screening,
                                        bool colour = false, const core::Study& study = {});
/// @param noises  the studies that the plan's noise was pooled from; none where it was typed
[[nodiscard]] std::string planText(const Language& in, const core::Plan& plan,
                                   std::span<const NoiseOfStudy> noises = {});
/// What fits into some hours, best first, and how often each keeps its promise when the day does
/// not hold still.
[[nodiscard]] std::string plansText(const Language& in, std::span<const core::Plan> plans,
                                    std::span<const core::SequenceWeakness> weakness);
[[nodiscard]] std::string ledgerText(const Language& in, const core::Ledger& ledger,
                                     std::optional<double> watts_to_see);
/// "8.31 L/100 km" without the device and with it; "-" where there is no effect.
[[nodiscard]] std::pair<std::string, std::string>
consumptionsOf(const Language& in, const StudyRow& study, wording::ShownUnit unit);
[[nodiscard]] std::string pooledText(const Language& in, const Several& together,
                                     wording::ShownUnit unit = wording::ShownUnit::lPer100km);
/// The run list as the day was: blocks, pairs, discards with their reason, findings.
[[nodiscard]] std::string runsText(const Language& in, const core::Study& study,
                                   const core::Analysis& analysis, const core::Screening& screening,
                                   bool colour = false);

/// What a person should look at again, under a heading; empty where nothing looks odd.
[[nodiscard]] std::string oddRunsText(const Language& in, const core::Study& study,
                                      bool colour = false);

/// `text` broken at blanks so that no line is longer than `width`; further lines are indented.
[[nodiscard]] std::string wrapped(std::string_view text, std::size_t indent,
                                  std::size_t width = 96);

} // namespace bothways::app
