// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/answer/analyse.h"
#include "tests/support/plain_sheet.h"

#include <string>

namespace bothways::tests {

/// What the examples' SOURCES.md names.
inline core::AnalysisOptions exampleOptions(const std::string& name)
{
    core::AnalysisOptions options;
    if (name == "roof_box_open")
        options.baseline = "off";
    if (name == "two_days")
        options.claim_pct = -3.0;
    if (name == "claim") {
        options.claim_pct = -5.0;
        const core::Analysis morning = core::analyse(
            PlainSheet::read(BOTHWAYS_SOURCE_DIR "/tests/published/data/examples/morning.csv"), {});
        options.noise = core::BorrowedNoise{morning.headline->s, morning.headline->df};
    }
    return options;
}

} // namespace bothways::tests
