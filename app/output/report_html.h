// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/output/english.h"
#include "core/analysis.h"
#include "core/finding.h"
#include "core/study.h"

#include <string>
#include <vector>

/// The report: one self-contained HTML page that a stranger can check. No script, nothing fetched,
/// pictures as SVG, made for a phone and for A4 or Letter paper.
namespace bothways::app {

struct ReportInput {
    const core::Study& study;
    const core::Analysis& analysis;
    const core::Screening& screening;
    std::vector<std::string> historyLines; ///< discards, liftings and looks; from a study file
    std::string inputSha256;
    std::string sourceName; ///< file name without its folder
    english::ShownUnit unit = english::ShownUnit::lPer100km;
};

/// The same input gives the same bytes: no clock, no locale, nothing unordered is read.
/// Positions are not among the input and so cannot enter.
[[nodiscard]] std::string reportHtml(const ReportInput& input);

} // namespace bothways::app
