// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/analysis.h"
#include "core/finding.h"
#include "core/study.h"

#include <string>
#include <string_view>
#include <vector>

/// The report: one self-contained HTML page, no script, pictures as SVG. Same input, same bytes.
namespace bothways::app {

struct ReportInput {
    const core::Study& study;
    const core::Analysis& analysis;
    const core::Screening& screening;
    std::vector<std::string> historyLines; ///< discards, liftings and looks; from the study file
    std::string inputSha256;
    std::string sourceName;
};
[[nodiscard]] std::string reportHtml(const ReportInput& input);

} // namespace bothways::app
