// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/pattern.h"

#include "core/statistics/binomial.h"
#include "core/study/parts.h"

#include <algorithm>
#include <limits>
#include <set>

namespace bothways::core::rules {
std::optional<OverspeedPattern> overspeedPattern(const Study& study,
                                                 const std::vector<Finding>& findings,
                                                 const std::vector<Leftover>& leftovers,
                                                 double confidence, std::string_view part)
{
    double first_w = std::numeric_limits<double>::infinity();
    std::set<int> oversped;
    for (const Finding& finding : findings) {
        if (finding.rule != Rule::overspeed || (!part.empty() && finding.part != part))
            continue;
        oversped.insert(finding.run);
        if (finding.output_w && finding.part == part)
            first_w = std::min(first_w, *finding.output_w);
    }
    for (const Leftover& leftover : leftovers)
        if (part.empty() && leftover.total_before_w)
            first_w = std::min(first_w, *leftover.total_before_w);
    OverspeedPattern pattern;
    pattern.part = part;
    pattern.first_output_w = first_w;
    for (std::size_t i = 0; i < leftovers.size(); ++i) {
        const auto highest = leftovers[i].highest_output_w.find(part);
        if (highest == leftovers[i].highest_output_w.end() || !(highest->second >= first_w))
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

std::vector<OverspeedPattern> overspeedPatternsOfParts(const Study& study,
                                                       const std::vector<Finding>& findings,
                                                       const std::vector<Leftover>& leftovers,
                                                       double confidence)
{
    std::set<std::string> parts;
    for (const Finding& finding : findings)
        if (finding.rule == Rule::overspeed && !finding.part.empty())
            parts.insert(finding.part);
    std::vector<OverspeedPattern> patterns;
    for (const std::string& part : parts)
        if (auto pattern = overspeedPattern(study, findings, leftovers, confidence, part))
            patterns.push_back(std::move(*pattern));
    return patterns;
}

void channelsNeverFilled(const Run& run, const Leftover& leftover,
                         const std::set<std::string, std::less<>>& known,
                         std::vector<Finding>& findings)
{
    for (const std::string& channel : leftover.empty) {
        if (!known.contains(channel) || leftover.end_s <= 1.0)
            continue;
        findings.push_back({.rule = Rule::sensorLost,
                            .run = run.number,
                            .from_s = 0.0,
                            .to_s = leftover.end_s,
                            .value = leftover.end_s,
                            .limit = longestGap_s(0.0),
                            .unit = "s",
                            .grade = gradeOf(Rule::sensorLost),
                            .lost = {{channel, LostSensor::How::gap}},
                            .length_s = {},
                            .output_w = {},
                            .part = std::string(partedName(channel).part)});
    }
}

void channelsNeverFilled(const Study& study, const std::vector<Leftover>& leftovers,
                         std::vector<Finding>& findings)
{
    std::set<std::string, std::less<>> known;
    for (const Leftover& leftover : leftovers)
        known.insert(leftover.channels.begin(), leftover.channels.end());
    for (std::size_t i = 0; i < leftovers.size(); ++i)
        channelsNeverFilled(study.runs[i], leftovers[i], known, findings);
}

} // namespace bothways::core::rules
