// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/answer/looks.h"

#include "storage/study/history_detail.h"

#include <algorithm>

namespace bothways::app {

std::vector<int> pairsLookedAt(const std::vector<storage::HistoryEntry>& history)
{
    std::vector<int> pairs;
    for (const storage::HistoryEntry& entry : history) {
        if (entry.kind != "look")
            continue;
        const auto detail = storage::HistoryDetail::read(entry.detail);
        if (detail && detail->form == "look" && !detail->values.empty())
            pairs.push_back(static_cast<int>(detail->values.front().number()));
    }
    return pairs;
}

bool isLookForTheRecord(const core::StudyProperties& properties, const core::Analysis& analysis,
                        const std::vector<int>& lookedAtPairs)
{
    if (properties.plan)
        return true;
    const auto pairs = static_cast<int>(analysis.pairs.size());
    return analysis.headline && std::ranges::find(lookedAtPairs, pairs) == lookedAtPairs.end();
}

std::string lookDetail(const core::Analysis& analysis)
{
    return storage::HistoryDetail{"look", {analysis.pairs.size(), core::name(analysis.verdict.cls)}}
        .written();
}

} // namespace bothways::app
