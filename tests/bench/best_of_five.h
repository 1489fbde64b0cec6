// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <chrono>
#include <functional>
#include <limits>

namespace bothways::bench {

/// Time of the quickest of five goes, ms: what the machine does else only ever adds to it.
inline double best_ms(const std::function<void()>& job)
{
    double best = std::numeric_limits<double>::infinity();
    for (int k = 0; k < 5; ++k) {
        const auto begin = std::chrono::steady_clock::now();
        job();
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - begin;
        best = std::min(best, took.count());
    }
    return best;
}

} // namespace bothways::bench
