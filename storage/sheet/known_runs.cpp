// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/known_runs.h"

#include <algorithm>
#include <cmath>

namespace bothways::storage {
namespace {

/// As two notes of one run agree: in any unit.
bool sameConsumption(const core::Run& a, const core::Run& b)
{
    const auto one = core::lPer100km(a);
    const auto other = core::lPer100km(b);
    if (!one || !other)
        return one.has_value() == other.has_value();
    return std::abs(*one - *other) <= 1e-9 * *one;
}

} // namespace

bool sameRun(const core::Run& a, const core::Run& b)
{
    return a.start.us == b.start.us && core::sameWord(a.configuration, b.configuration) &&
           core::sameWord(a.direction, b.direction) && sameConsumption(a, b);
}

KnownRuns::KnownRuns(std::span<const core::Run> runs)
{
    for (const core::Run& run : runs)
        m_byStart.emplace(run.start.us, &run);
}

const core::Run* KnownRuns::find(const core::Run& run) const
{
    const auto [first, last] = m_byStart.equal_range(run.start.us);
    const auto same =
        std::find_if(first, last, [&](const auto& entry) { return sameRun(*entry.second, run); });
    return same == last ? nullptr : same->second;
}

std::vector<int> alreadyThere(const core::Study& existing, std::span<const core::Run> added)
{
    const KnownRuns known(existing.runs);
    std::vector<int> numbers;
    for (const core::Run& run : added)
        if (const core::Run* same = known.find(run))
            numbers.push_back(same->number);
    std::sort(numbers.begin(), numbers.end());
    numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
    return numbers;
}

} // namespace bothways::storage
