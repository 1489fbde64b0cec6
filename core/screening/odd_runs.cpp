// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/screening/odd_runs.h"

#include "core/statistics/descriptive.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace bothways::core {
namespace {

constexpr std::int64_t kGrace_us = 1'000'000;

std::int64_t end_us(const Run& run)
{
    constexpr double kLongest_us = 1e18; // keeps the sum in 64 bits, whatever was typed
    const double length_us = duration_s(run).value_or(0.0) * 1e6;
    return run.start.us + (length_us > 0.0 ? std::llround(std::min(length_us, kLongest_us)) : 0);
}

/// The rule same_run_twice says it better.
bool typedTwice(const Run& a, const Run& b)
{
    const auto left = lPer100km(a), right = lPer100km(b);
    return a.start.us == b.start.us && sameWord(a.direction, b.direction) && left && right &&
           std::abs(*left - *right) <= 1e-9 * *left;
}

/// What the consumption of a run is compared with; nothing where there is too little.
class Usual {
public:
    explicit Usual(const std::vector<const Run*>& runs)
    {
        for (const Run* run : runs)
            if (const auto c = lPer100km(*run))
                m_values.push_back(*c);
        if (m_values.size() > 2)
            m_median = median(m_values);
    }
    /// @param place  of the run among those that have a consumption
    [[nodiscard]] std::optional<double> forRun(std::size_t place) const
    {
        const bool second = m_values.size() == 2 && place == 1;
        return second ? std::optional(m_values.front()) : m_median;
    }

private:
    std::vector<double> m_values;
    std::optional<double> m_median;
};

std::optional<OddRun> oddConsumption(const Run& run, double c, std::optional<double> usual)
{
    if (!usual)
        return std::nullopt;
    const double times = c / *usual;
    if (times <= kOddConsumptionRatio && times * kOddConsumptionRatio >= 1.0)
        return std::nullopt;
    return OddRun{OddRun::What::consumption, run.number, 0, times, c, *usual};
}

} // namespace

std::vector<OddRun> oddRuns(const Study& study)
{
    std::vector<const Run*> counted;
    for (const Run& run : study.runs)
        if (run.counted())
            counted.push_back(&run);
    const Usual usual(counted);
    std::vector<OddRun> odd;
    const Run* driving = nullptr; // the one before that ends last
    std::size_t place = 0;
    for (const Run* run : counted) {
        if (driving && end_us(*driving) > run->start.us + kGrace_us && !typedTwice(*driving, *run))
            odd.push_back({OddRun::What::stillDriving, run->number, driving->number});
        if (!driving || end_us(*run) > end_us(*driving))
            driving = run;
        const auto c = lPer100km(*run);
        if (!c)
            continue;
        if (auto one = oddConsumption(*run, *c, usual.forRun(place++)))
            odd.push_back(*one);
    }
    return odd;
}

} // namespace bothways::core
