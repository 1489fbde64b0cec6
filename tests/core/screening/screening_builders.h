// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/screening/finding.h"
#include "core/study/rule.h"
#include "core/study/study.h"

#include <ostream>
#include <string>
#include <utility>
#include <vector>

/// Builders for the tests of screening: runs and studies in a line each.
namespace bothways::core {

inline void PrintTo(Rule rule, std::ostream* out)
{
    *out << ruleName(rule);
}

inline void PrintTo(const Finding& finding, std::ostream* out)
{
    *out << ruleName(finding.rule) << " run " << finding.run;
    if (finding.from_s)
        *out << " from " << *finding.from_s << " s";
    if (finding.to_s)
        *out << " to " << *finding.to_s << " s";
    if (finding.value)
        *out << " value " << *finding.value << " " << finding.unit;
    *out << " " << gradeName(finding.grade) << " '" << detailOf(finding) << "'";
}

} // namespace bothways::core

namespace bothways::core::tests {

/// A run in configuration A, direction out, of 200 s and 8 L/100 km, unless said otherwise.
class RunBuilder {
public:
    explicit RunBuilder(int number)
    {
        m_run.number = number;
        m_run.configuration = "A";
        m_run.direction = "out";
        m_run.start.us = std::int64_t{1'778'305'200'000'000} + number * std::int64_t{420'000'000};
        m_run.duration_s = 200.0;
        m_run.consumption = Consumption{8.0, ConsumptionUnit::lPer100km, 2, false};
    }
    RunBuilder& device()
    {
        return with([](Run& run) { run.configuration = "B"; });
    }
    RunBuilder& back()
    {
        return with([](Run& run) { run.direction = "return"; });
    }
    RunBuilder& mark(double at_s, std::string word, std::string words = {})
    {
        m_run.marks.push_back({at_s, std::move(word), std::move(words)});
        return *this;
    }
    /// Anything else: with([](Run& run) { run.accessory_w = 200; }).
    template <class Change>
    RunBuilder& with(Change change)
    {
        change(m_run);
        return *this;
    }
    operator Run() const { return m_run; }

private:
    Run m_run;
};

inline RunBuilder aRun(int number = 1)
{
    return RunBuilder(number);
}

inline Study studyOf(std::vector<Run> runs, Limits limits = {})
{
    Study study;
    study.runs = std::move(runs);
    study.properties.limits = std::move(limits);
    return study;
}

inline std::vector<Finding> findingsOf(const Screening& screening, Rule rule)
{
    std::vector<Finding> wanted;
    for (const Finding& finding : screening.findings)
        if (finding.rule == rule)
            wanted.push_back(finding);
    return wanted;
}

/// Why `rule` was not checked for run `run`; nothing where it was checked.
inline std::optional<NotChecked> whyNot(const Screening& screening, Rule rule, int run = 1)
{
    for (const NotChecked& skipped : screening.not_checked)
        if (skipped.rule == rule && skipped.run == run)
            return skipped;
    return std::nullopt;
}

} // namespace bothways::core::tests
