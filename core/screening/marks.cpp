// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/marks.h"

#include "core/base/text_parts.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

namespace bothways::core::rules {
namespace {

/// How far beyond its limit; marks have neither and come last.
double excess(const Finding& finding)
{
    if (!finding.value)
        return -1.0;
    const double size = std::abs(*finding.value);
    return finding.limit && *finding.limit != 0.0 ? size / std::abs(*finding.limit) : size;
}

/// "adjusted: belt" is a mark of that rule, too.
std::optional<Rule> ruleOf(std::string_view word)
{
    while (!word.empty() && std::string_view(":,;.!-").find(word.back()) != std::string_view::npos)
        word.remove_suffix(1);
    for (const Rule rule : allRules())
        if (sameWord(ruleName(rule), word))
            return rule;
    return std::nullopt;
}

template <class Fact>
void addNew(std::vector<Fact>& facts, const std::vector<Fact>& more)
{
    for (const Fact& fact : more)
        if (std::find(facts.begin(), facts.end(), fact) == facts.end())
            facts.push_back(fact);
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
    addNew(earlier.lost, later.lost);
    addNew(earlier.channels, later.channels);
    addNew(earlier.words, later.words);
    earlier.of_mean = earlier.of_mean || later.of_mean;
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
    const auto take = [&](double at_s, std::string_view word, std::string_view words) {
        const std::optional<Rule> rule = ruleOf(word);
        if (!rule || at_s < 0.0 || at_s > end_s)
            return;
        Finding& finding = context.found(*rule, gradeOf(*rule), std::nullopt, std::nullopt, "");
        finding.from_s = finding.to_s = at_s;
        if (!words.empty())
            finding.words.emplace_back(words);
    };
    for (const Mark& mark : run.marks)
        take(mark.at_s, mark.word, mark.words);
    if (!context.channels.hasTrace())
        return;
    for (const RunTrace::TextMark& mark : context.channels.trace().marks()) {
        const std::string_view text = trimmed(mark.words);
        const std::size_t blank = std::min(text.find_first_of(" \t"), text.size());
        take(mark.at_s, text.substr(0, blank), trimmed(text.substr(blank)));
    }
}

void joinNeighbours(std::vector<Finding>& findings)
{
    std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
        const auto key = [](const Finding& finding) {
            return std::tuple(finding.run, finding.rule, std::string_view(finding.part),
                              finding.from_s);
        };
        return key(a) < key(b);
    });
    std::vector<Finding> joined;
    for (Finding& finding : findings) {
        const bool near = !joined.empty() && finding.rule != Rule::accessoryTimer &&
                          joined.back().run == finding.run && joined.back().rule == finding.rule &&
                          joined.back().part == finding.part && joined.back().to_s &&
                          finding.from_s &&
                          *finding.from_s - *joined.back().to_s < kApart_s - kTimeGrace_s;
        if (near)
            absorb(joined.back(), finding);
        else
            joined.push_back(std::move(finding));
    }
    findings = std::move(joined);
}

} // namespace bothways::core::rules
