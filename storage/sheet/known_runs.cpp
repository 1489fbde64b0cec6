// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/run_rules.h"

#include <algorithm>
#include <cmath>
#include <map>

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

std::vector<int> alreadyThere(const core::Study& existing, std::span<const core::Run> added)
{
    std::multimap<std::int64_t, const core::Run*> byStart;
    for (const core::Run& run : existing.runs)
        byStart.emplace(run.start.us, &run);
    std::vector<int> numbers;
    for (const core::Run& run : added) {
        const auto [first, last] = byStart.equal_range(run.start.us);
        const auto same = std::find_if(first, last, [&](const auto& entry) {
            const core::Run& known = *entry.second;
            return core::sameWord(known.configuration, run.configuration) &&
                   core::sameWord(known.direction, run.direction) && sameConsumption(known, run);
        });
        if (same != last)
            numbers.push_back(same->second->number);
    }
    std::sort(numbers.begin(), numbers.end());
    numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
    return numbers;
}

} // namespace bothways::storage
