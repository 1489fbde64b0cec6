// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/counter_fall.h"

#include <cmath>
#include <cstdint>
#include <numeric>

namespace bothways::core {
namespace {

constexpr double kFinest = 1e-9;

} // namespace

double resolutionOf(std::span<const double> counter)
{
    constexpr double kMostSteps = 9e15; // beyond, a double has no such digits
    std::int64_t common = 0;
    for (std::size_t i = 1; i < counter.size() && common != 1; ++i) {
        const double steps = std::round(std::abs(counter[i] - counter[i - 1]) / kFinest);
        if (steps < kMostSteps)
            common = std::gcd(common, static_cast<std::int64_t>(steps));
    }
    return static_cast<double>(common) * kFinest;
}

std::optional<CounterFall> fallOf(std::span<const double> counter)
{
    CounterFall found;
    std::size_t highest = 0;
    for (std::size_t i = 0; i < counter.size(); ++i) {
        if (counter[i] >= counter[highest])
            highest = i;
        else if (const double fall = counter[highest] - counter[i]; fall > found.fall)
            found = {highest, i, fall, 0.0};
    }
    if (found.fall == 0.0)
        return std::nullopt;
    found.resolution = resolutionOf(counter);
    const bool more = found.fall > 1.5 * found.resolution && found.fall > 1.5 * kFinest;
    return more ? std::optional(found) : std::nullopt;
}

} // namespace bothways::core
