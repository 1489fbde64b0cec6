// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/watching/standing.h"

#include "core/statistics/events.h"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <utility>

namespace bothways::core {
namespace {

bool sameThing(const Finding& a, const Finding& b)
{
    const auto facts = [](const Finding& finding) {
        return std::tie(finding.rule, finding.part, finding.lost, finding.channels,
                        finding.accessory, finding.of_mean, finding.words);
    };
    return facts(a) == facts(b) && a.from_s.has_value() == b.from_s.has_value();
}

/// Neighbours under a second apart are one, as when the run is over.
bool touch(const Finding& a, const Finding& b)
{
    if (!a.from_s || !a.to_s || !b.from_s || !b.to_s)
        return true;
    constexpr double kApart = kApart_s - kTimeGrace_s;
    return *b.from_s - *a.to_s < kApart && *a.from_s - *b.to_s < kApart;
}

bool isMark(const Finding& finding)
{
    return finding.from_s && finding.from_s == finding.to_s && !finding.value;
}

/// Is `a` further beyond the limit than `b`? Of a run that stopped, the slower.
bool worse(const Finding& a, const Finding& b)
{
    if (!a.value || !b.value)
        return a.value.has_value();
    const double x = std::abs(*a.value), y = std::abs(*b.value);
    return a.rule == Rule::interrupted ? x < y : x > y;
}

void grow(Finding& standing, const Finding& found)
{
    if (worse(found, standing))
        standing.value = found.value;
    standing.limit = found.limit;
    standing.grade = std::max(standing.grade, found.grade);
    if (!standing.output_w)
        standing.output_w = found.output_w;
    if (!standing.from_s || !found.from_s)
        return;
    if (found.from_s < standing.from_s && found.output_w)
        standing.output_w = found.output_w;
    standing.from_s = std::min(*standing.from_s, *found.from_s);
    standing.to_s = std::max(standing.to_s.value_or(0.0), found.to_s.value_or(0.0));
    if (standing.length_s)
        standing.length_s = *standing.to_s - *standing.from_s;
    if (standing.rule == Rule::sensorLost && standing.value)
        standing.value = *standing.to_s - *standing.from_s;
}

std::string keyOf(const Finding& finding)
{
    std::string key = "finding:" + std::string(ruleName(finding.rule));
    if (!finding.part.empty())
        key += '@' + finding.part;
    if (const std::string detail = detailOf(finding); !detail.empty())
        key += ':' + detail;
    if (finding.from_s)
        key += ':' + std::to_string(std::llround(*finding.from_s * 1000.0));
    return key;
}

} // namespace

void StandingFindings::take(std::span<const Finding> found)
{
    for (const Finding& finding : found) {
        const auto isIt = [&](const Standing& standing) {
            return sameThing(standing.finding, finding) &&
                   (isMark(finding) ? standing.finding == finding
                                    : touch(standing.finding, finding));
        };
        const auto first = std::find_if(m_standing.begin(), m_standing.end(), isIt);
        if (first == m_standing.end()) {
            m_standing.push_back({finding, keyOf(finding)});
            continue;
        }
        // What it touches besides has become one with it.
        grow(first->finding, finding);
        for (auto other = first + 1; other != m_standing.end();)
            if (isIt(*other)) {
                grow(first->finding, other->finding);
                other = m_standing.erase(other);
            } else {
                ++other;
            }
    }
}

} // namespace bothways::core
