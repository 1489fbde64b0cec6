// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/marks.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

namespace bothways::core::rules {
namespace {

constexpr double kApart_s = 1.0;
constexpr double kGrace_s = 1e-6;

/// How far beyond its limit; marks have neither and come last.
double excess(const Finding& finding)
{
    if (!finding.value)
        return -1.0;
    const double size = std::abs(*finding.value);
    return finding.limit && *finding.limit != 0.0 ? size / std::abs(*finding.limit) : size;
}

std::optional<Rule> ruleOf(const Mark& mark)
{
    for (const Rule rule : allRules())
        if (sameWord(ruleName(rule), mark.word))
            return rule;
    return std::nullopt;
}

void addDetail(std::string& details, const std::string& more)
{
    const std::string both = ", " + details + ", ";
    if (more.empty() || both.find(", " + more + ", ") != std::string::npos)
        return;
    details += details.empty() ? more : ", " + more;
}

void absorb(Finding& earlier, const Finding& later)
{
    earlier.to_s = std::max(*earlier.to_s, *later.to_s);
    earlier.grade = std::max(earlier.grade, later.grade);
    if (excess(later) > excess(earlier)) {
        earlier.value = later.value;
        earlier.limit = later.limit;
        earlier.unit = later.unit;
    }
    addDetail(earlier.detail, later.detail);
    if (later.length_s)
        earlier.length_s = std::max(earlier.length_s.value_or(0.0), *later.length_s);
    if (!earlier.output_w)
        earlier.output_w = later.output_w;
}

} // namespace

void marks(RunContext& context)
{
    const Run& run = context.run();
    const double end_s = duration_s(run).value_or(std::numeric_limits<double>::infinity());
    for (const Mark& mark : run.marks) {
        const std::optional<Rule> rule = ruleOf(mark);
        if (!rule || mark.at_s < 0.0 || mark.at_s > end_s)
            continue;
        Finding& finding = context.found(*rule, gradeOf(*rule), std::nullopt, std::nullopt, "");
        finding.from_s = finding.to_s = mark.at_s;
        finding.detail = mark.words;
    }
}

void joinNeighbours(std::vector<Finding>& findings)
{
    std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
        const auto key = [](const Finding& finding) {
            return std::tuple(finding.run, finding.rule, finding.from_s);
        };
        return key(a) < key(b);
    });
    std::vector<Finding> joined;
    for (Finding& finding : findings) {
        const bool near = !joined.empty() && finding.rule != Rule::accessoryTimer &&
                          joined.back().run == finding.run && joined.back().rule == finding.rule &&
                          joined.back().to_s && finding.from_s &&
                          *finding.from_s - *joined.back().to_s < kApart_s - kGrace_s;
        if (near)
            absorb(joined.back(), finding);
        else
            joined.push_back(std::move(finding));
    }
    findings = std::move(joined);
}

} // namespace bothways::core::rules
