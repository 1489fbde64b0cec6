// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/output/noise_of_study.h"
#include "app/wording/units.h"
#include "core/answer/pooled.h"
#include "core/effect/answer.h"
#include "core/planning/ledger.h"
#include "core/planning/plan.h"
#include "core/planning/sequence_study.h"
#include "core/screening/finding.h"
#include "storage/bytes/csv.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
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
/// "bothways.plan/1".
/// @param noises  the studies that the plan's noise was pooled from; none where it was typed
[[nodiscard]] std::string planJson(const core::Plan& plan,
                                   std::span<const NoiseOfStudy> noises = {});
/// "bothways.plans/1": what fits into some hours, best first, each with what it is weak against.
[[nodiscard]] std::string plansJson(std::span<const core::Plan> plans,
                                    std::span<const core::SequenceWeakness> weakness);
/// "bothways.ledger/1".
[[nodiscard]] std::string ledgerJson(const core::Ledger& ledger,
                                     std::optional<double> watts_to_see);

/// One study in a table of several; `effect` is empty where it has no verdict.
struct StudyRow {
    std::string name;
    std::optional<core::StudyEffect> effect;
    core::VerdictClass cls = core::VerdictClass::none;
};
/// "bothways.pooled/1".
[[nodiscard]] std::string pooledJson(std::span<const StudyRow> studies,
                                     const std::optional<core::Pooled>& pooled);

/// "bothways.study/1": properties as `set` takes them, runs with the keys of the sheet's columns.
[[nodiscard]] std::string studyJson(const core::Study& study);

/// The pairs, a line each, for a spreadsheet; a header line first.
[[nodiscard]] std::string pairsCsv(const core::Analysis& analysis,
                                   storage::csv::Form form = storage::csv::Form::plain);

} // namespace bothways::app
