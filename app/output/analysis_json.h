// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/analysis.h"
#include "core/finding.h"
#include "core/ledger.h"
#include "core/plan.h"
#include "core/pooled.h"

#include <string>
#include <string_view>
#include <vector>

/// The JSON forms of the command line. Keys and units are a promise: README, "For programs".
namespace bothways::app {

[[nodiscard]] std::string analysisJson(const core::Analysis& analysis,
                                       const core::Screening& screening,
                                       std::string_view inputSha256);
[[nodiscard]] std::string findingsJson(const core::Screening& screening);
[[nodiscard]] std::string planJson(const core::Plan& plan);
[[nodiscard]] std::string ledgerJson(const core::Ledger& ledger,
                                     std::optional<double> watts_to_see);
[[nodiscard]] std::string pooledJson(const std::vector<core::StudyEffect>& studies,
                                     const std::optional<core::Pooled>& pooled);
/// The pairs, a line each, for a spreadsheet.
[[nodiscard]] std::string pairsCsv(const core::Analysis& analysis);

} // namespace bothways::app
