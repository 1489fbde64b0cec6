// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"
#include "core/study/rule.h"
#include "core/study/study.h"

#include <cstdint>
#include <map>
#include <vector>

/// Whole days of recordings with known faults, for measuring how good the screening rules are.
/// Invented: what a delivery van with a small generator on its roof might record.
namespace bothways::bench {

/// Something wrong that was put into a run, and when.
struct Planted {
    core::Rule rule;
    int run = 0;
    double from_s = 0.0, to_s = 0.0;
    bool hasSpan = true;               ///< false: known from the sheet alone
    std::vector<core::Rule> implied{}; ///< rules that rightly speak up as well
};

struct MadeDay {
    double rate_hz = 10.0;
    core::Study study;
    std::map<int, core::MemoryTrace> traces; ///< by run number
    std::vector<Planted> planted;
};

/// A day of twelve runs of 180 s: device off, on, off. In nearly half of the runs one fault, well
/// beyond its rule's limit; in a quarter a near miss, which no rule should name; else all is well.
/// The rate is 1, 5, 10 or 50 Hz; the same seed gives the same day.
[[nodiscard]] MadeDay madeDay(std::uint64_t seed);

} // namespace bothways::bench
