// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answer/spoiled_runs.h"

#include <set>

namespace bothways::core {

std::vector<int> spoiledButCounted(const Analysis& analysis, const Screening& screening)
{
    std::set<int> counted(analysis.unpaired.begin(), analysis.unpaired.end());
    for (const Pair& pair : analysis.pairs)
        counted.insert({pair.out_run, pair.return_run});
    std::set<int> spoiled;
    for (const Finding& finding : screening.findings)
        if (finding.grade == Grade::spoils && counted.contains(finding.run))
            spoiled.insert(finding.run);
    return {spoiled.begin(), spoiled.end()};
}

} // namespace bothways::core
