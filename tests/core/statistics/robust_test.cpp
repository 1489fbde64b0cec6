// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/robust.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>
#include <random>
#include <vector>

using namespace bothways::core;

namespace {

double bySorting(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : std::midpoint(values[half - 1], values[half]);
}

using Series = std::function<double(std::size_t, std::mt19937&)>;

std::vector<double> make(std::size_t count, const Series& series)
{
    std::mt19937 random(1979);
    std::vector<double> values(count);
    for (std::size_t i = 0; i < count; ++i)
        values[i] = series(i, random);
    return values;
}

} // namespace

TEST(Median, IsTheMiddleOrTheMeanOfTheMiddleTwo)
{
    EXPECT_TRUE(std::isnan(median({})));
    EXPECT_EQ(median(std::vector{3.0}), 3.0);
    EXPECT_EQ(median(std::vector{3.0, 1.0}), 2.0);
    EXPECT_EQ(median(std::vector{3.0, 1.0, 7.0}), 3.0);
    EXPECT_EQ(median(std::vector{3.0, 1.0, 7.0, 4.0}), 3.5);
}

TEST(Median, OfLongSeriesIsExact)
{
    const std::pair<const char*, Series> kinds[] = {
        {"noise", [](std::size_t, std::mt19937& r) { return std::ldexp(r(), -31) - 1.0; }},
        {"few values", [](std::size_t, std::mt19937& r) { return static_cast<double>(r() % 3); }},
        {"two values", [](std::size_t i, std::mt19937&) { return i % 2 == 0 ? 1.0 : 2.0; }},
        {"constant", [](std::size_t, std::mt19937&) { return 5.0; }},
        {"slope", [](std::size_t i, std::mt19937&) { return static_cast<double>(i); }},
        {"step", [](std::size_t i, std::mt19937&) { return i < 9000 ? 0.0 : 1.0; }},
        {"huge", [](std::size_t, std::mt19937& r) { return r() % 2 ? 1e308 : -1e308; }},
        // Every sampled value is extreme, so the bracket misses the median.
        {"resonant",
         [](std::size_t i, std::mt19937& r) { return i % 8 == 0 ? 1e6 : std::ldexp(r(), -32); }}};
    for (const auto& [name, series] : kinds)
        for (const std::size_t count : {8191u, 16384u, 16385u, 20001u}) {
            const std::vector<double> values = make(count, series);
            EXPECT_EQ(median(values), bySorting(values)) << name << ", " << count;
        }
}

TEST(MedianAbsoluteDeviation, IsThatOfTheDistances)
{
    EXPECT_EQ(medianAbsoluteDeviation(std::vector{1.0, 1.0, 2.0, 2.0, 4.0, 6.0, 9.0}, 2.0), 1.0);
    const std::vector<double> normal =
        make(100001, [](std::size_t, std::mt19937& r) { return std::normal_distribution<>()(r); });
    EXPECT_NEAR(kMadToSigma * medianAbsoluteDeviation(normal, median(normal)), 1.0, 0.012)
        << "three standard errors of the estimate, 1.17/sqrt(n)";
}
