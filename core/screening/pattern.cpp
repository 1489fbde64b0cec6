// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/pattern.h"

#include "core/statistics/binomial.h"

#include <algorithm>
#include <limits>
#include <set>

namespace bothways::core::rules {
std::optional<OverspeedPattern> overspeedPattern(const Study& study,
                                                 const std::vector<Finding>& findings,
                                                 const std::vector<Leftover>& leftovers,
                                                 double confidence)
{
    double first_w = std::numeric_limits<double>::infinity();
    std::set<int> oversped;
    for (const Finding& finding : findings) {
        if (finding.rule != Rule::overspeed)
            continue;
        oversped.insert(finding.run);
        if (finding.output_w)
            first_w = std::min(first_w, *finding.output_w);
    }
    OverspeedPattern pattern;
    pattern.first_output_w = first_w;
    for (std::size_t i = 0; i < leftovers.size(); ++i) {
        if (!(leftovers[i].highest_output_w >= first_w))
            continue;
        ++pattern.reached;
        pattern.oversped += oversped.contains(study.runs[i].number) ? 1 : 0;
    }
    if (pattern.reached == 0)
        return std::nullopt;
    pattern.share = static_cast<double>(pattern.oversped) / pattern.reached;
    const auto [low, high] = clopperPearson(pattern.oversped, pattern.reached, confidence);
    pattern.low = low;
    pattern.high = high;
    return pattern;
}

void channelsNeverFilled(const Study& study, const std::vector<Leftover>& leftovers,
                         std::vector<Finding>& findings)
{
    std::set<std::string, std::less<>> known;
    for (const Leftover& leftover : leftovers)
        known.insert(leftover.channels.begin(), leftover.channels.end());
    for (std::size_t i = 0; i < leftovers.size(); ++i)
        for (const std::string& channel : leftovers[i].empty) {
            if (!known.contains(channel) || leftovers[i].end_s <= 1.0)
                continue;
            findings.push_back({.rule = Rule::sensorLost,
                                .run = study.runs[i].number,
                                .from_s = 0.0,
                                .to_s = leftovers[i].end_s,
                                .value = leftovers[i].end_s,
                                .limit = longestGap_s(0.0),
                                .unit = "s",
                                .grade = gradeOf(Rule::sensorLost),
                                .detail = std::string(channel).append(":gap"),
                                .length_s = {},
                                .output_w = {}});
        }
}

} // namespace bothways::core::rules
