// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/answer/analyse.h"
#include "tests/support/study_builder.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace bothways::tests {

inline core::Companions companionsIn(const core::Study& study,
                                     const core::AnalysisOptions& options = {})
{
    const core::Analysis analysis = core::analyse(study, options);
    EXPECT_TRUE(analysis.headline);
    return analysis.companions;
}

struct TimedPair {
    std::string configuration;
    double minute, l_per_100km;
};

/// A pair each, both of its runs alike.
inline core::Study pairsAt(const std::vector<TimedPair>& pairs)
{
    StudyBuilder builder;
    for (const TimedPair& pair : pairs)
        builder.addPair(pair.configuration, pair.minute, pair.l_per_100km, pair.l_per_100km);
    return builder.build();
}

inline constexpr double kDay_min = 24.0 * 60.0;

} // namespace bothways::tests
