// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/sliding_level.h"

#include "core/statistics/robust.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

using namespace bothways::core;

namespace {

struct TimedValues {
    const char* name;
    std::vector<double> time_s, values;
};

std::vector<double> levelsBySorting(const TimedValues& series, double half_s)
{
    std::vector<double> levels;
    for (const double at_s : series.time_s) {
        std::vector<double> window;
        for (std::size_t i = 0; i < series.values.size(); ++i)
            if (std::abs(series.time_s[i] - at_s) <= half_s + 1e-6)
                window.push_back(series.values[i]);
        levels.push_back(median(window));
    }
    return levels;
}

std::vector<TimedValues> allSorts()
{
    std::mt19937 random(7);
    std::vector<TimedValues> sorts = {{"noise", {}, {}},        {"slope", {}, {}},
                                      {"two values", {}, {}},   {"step", {}, {}},
                                      {"uneven times", {}, {}}, {"one sample", {}, {}}};
    for (std::size_t i = 0; i < 1500; ++i) {
        const auto x = static_cast<double>(i);
        const double noise = std::ldexp(random(), -31) - 1.0;
        for (TimedValues& sort : sorts)
            sort.time_s.push_back(0.1 * x);
        sorts[0].values.push_back(noise);
        sorts[1].values.push_back(x + 0.5 * noise);
        sorts[2].values.push_back(i % 2 == 0 ? 1.0 : 2.0);
        sorts[3].values.push_back((i < 700 ? 0.0 : 100.0) + noise);
        sorts[4].values.push_back(std::floor(8.0 * noise));
        sorts[4].time_s.back() = x * (0.05 + 0.0001 * x);
    }
    sorts[5].time_s = {0.0};
    sorts[5].values = {4.0};
    return sorts;
}

} // namespace

TEST(SlidingLevel, LeavesABandWhereSortingEveryWindowSaysSo)
{
    for (const TimedValues& series : allSorts()) {
        const std::vector<double> levels = levelsBySorting(series, 2.5);
        const SlidingLevel level(series.time_s, series.values, 2.5);
        for (const auto& [low, high] :
             {std::pair{-0.1, 0.1}, {1.0, 1.5}, {1.5, 2.0}, {300., 900.}}) {
            const auto outside = level.outside(low, high);
            for (std::size_t i = 0; i < levels.size(); ++i)
                ASSERT_EQ(outside[i] != 0, levels[i] <= low || levels[i] >= high)
                    << series.name << " at sample " << i << ", level " << levels[i];
        }
    }
}

TEST(SlidingLevel, ExtremesAreThoseOfSortingEveryWindow)
{
    for (const TimedValues& series : allSorts()) {
        const std::vector<double> levels = levelsBySorting(series, 2.5);
        const SlidingLevel level(series.time_s, series.values, 2.5);
        const std::size_t last = levels.size() - 1;
        for (const auto& [from, to] :
             {std::pair<std::size_t, std::size_t>{0, last}, {last / 3, last / 2}, {last, last}}) {
            const auto first = levels.begin() + static_cast<std::ptrdiff_t>(from);
            const auto end = levels.begin() + static_cast<std::ptrdiff_t>(to) + 1;
            EXPECT_EQ(level.largest(from, to), *std::max_element(first, end)) << series.name;
            EXPECT_EQ(level.smallest(from, to), *std::min_element(first, end)) << series.name;
        }
    }
}
