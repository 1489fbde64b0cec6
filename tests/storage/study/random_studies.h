// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/study/study.h"

#include <cstdint>
#include <random>
#include <string>

/// Studies that nobody would drive and that must be kept all the same. Same seed, same studies.
namespace bothways::tests {

class RandomStudies {
public:
    explicit RandomStudies(std::uint32_t seed) : m_random(seed) {}

    /// Runs in the form in which a study holds them, numbered, in order of start, ids 0.
    core::Study study(int runs);
    /// A run that fits into `study` (its names, units and offsets), without a number.
    core::Run run(const core::Study& study);
    /// Words with everything that means something in CSV, SQL or C.
    std::string nastyText();

    /// 0 <= result < n
    int below(int n) { return static_cast<int>(m_random() % static_cast<std::uint32_t>(n)); }
    bool oneIn(int n) { return below(n) == 0; }
    double number(double low, double high);

private:
    std::optional<double> maybe(double low, double high);
    core::Consumption consumption(core::ConsumptionUnit unit);
    void fill(core::Run& run, bool electric);

    std::mt19937 m_random;
};

} // namespace bothways::tests
