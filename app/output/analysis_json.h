// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/noise.h"
#include "app/answer/several.h"
#include "app/wording/units.h"
#include "core/answer/pooled.h"
#include "core/effect/answer.h"
#include "core/planning/ledger.h"
#include "core/planning/plan.h"
#include "core/planning/sequence_study.h"
#include "core/screening/finding.h"
#include "storage/bytes/csv.h"
#include "storage/study/study_file.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// The JSON forms of the command line. Keys and units are a promise: README, "For programs".
/// Numbers have every digit (they read back as the same double), whatever the locale; what is not
/// available is null, and no key is ever missing.
namespace bothways::app {

/// "bothways.analysis/1".
/// @param extraNotes  sentences of the caller, before those of the analysis
/// @param unit        of the verdict's sentence only
[[nodiscard]] std::string analysisJson(const core::Analysis& analysis,
                                       const core::Screening& screening,
                                       std::string_view inputSha256,
                                       wording::ShownUnit unit = wording::ShownUnit::lPer100km,
                                       const std::vector<std::string>& extraNotes = {});
/// "bothways.findings/1".
[[nodiscard]] std::string findingsJson(const core::Screening& screening);
/// "bothways.runs/1": the runs as studyJson() has them, each with its pair and its findings.
[[nodiscard]] std::string runsJson(const core::Study& study, const core::Analysis& analysis,
                                   const core::Screening& screening);
/// "bothways.history/1": every line, oldest first; in English.
[[nodiscard]] std::string historyJson(const std::vector<storage::HistoryEntry>& history);
/// "bothways.plan/1".
/// @param noises  the studies that the plan's noise was pooled from; none where it was typed
/// @param stretch_from  as in LedgerSources
[[nodiscard]] std::string planJson(const core::Plan& plan,
                                   std::span<const NoiseOfStudy> noises = {},
                                   std::string_view stretch_from = "default");
/// "bothways.plans/1": what fits into some hours, best first, each with what it is weak against.
[[nodiscard]] std::string plansJson(std::span<const core::Plan> plans,
                                    std::span<const core::SequenceWeakness> weakness);
/// Whence the numbers of a ledger are: "option", "runs", "limit" (set for the study), "default".
struct LedgerSources {
    std::string output_w, speed_kmh, consumption;
};
/// "bothways.ledger/1".
[[nodiscard]] std::string ledgerJson(const core::Ledger& ledger, std::optional<double> watts_to_see,
                                     const LedgerSources& sources = {});

/// "bothways.pooled/1".
[[nodiscard]] std::string pooledJson(const Several& together);

/// "bothways.study/1": properties as `set` takes them, runs with the keys of the sheet's columns.
[[nodiscard]] std::string studyJson(const core::Study& study);

/// The pairs, a line each, for a spreadsheet; a header line first.
[[nodiscard]] std::string pairsCsv(const core::Analysis& analysis,
                                   storage::csv::Form form = storage::csv::Form::plain);

} // namespace bothways::app
