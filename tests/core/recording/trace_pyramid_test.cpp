// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/trace_pyramid.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

using namespace bothways::core;

namespace {

std::optional<MinMax> bruteForce(const std::vector<double>& values, std::size_t first,
                                 std::size_t last)
{
    std::optional<MinMax> sum;
    for (std::size_t i = first; i < last; ++i) {
        if (std::isnan(values[i]))
            continue;
        if (!sum)
            sum = MinMax{values[i], values[i]};
        sum->minimum = std::min(sum->minimum, values[i]);
        sum->maximum = std::max(sum->maximum, values[i]);
    }
    return sum;
}

std::vector<double> noise(std::size_t n, unsigned seed, double holes = 0.0)
{
    std::mt19937 random(seed);
    std::normal_distribution<double> value;
    std::uniform_real_distribution<double> chance(0.0, 1.0);
    std::vector<double> values(n);
    for (double& v : values)
        v = chance(random) < holes ? std::nan("") : value(random);
    return values;
}

/// Irregular times, some of them equal.
std::vector<double> times(std::size_t n, unsigned seed)
{
    std::mt19937 random(seed);
    std::exponential_distribution<double> gap(100.0);
    std::vector<double> at(n);
    double t = -5.0;
    for (std::size_t i = 0; i < n; ++i) {
        at[i] = t;
        if (i % 17 != 0)
            t += gap(random) + (i % 1000 == 1 ? 3.0 : 0.0);
    }
    return at;
}

TEST(TracePyramid, AgreesWithBruteForceOverEveryStretchOfSmallOnes)
{
    for (const std::size_t n : {0U, 1U, 63U, 64U, 65U, 130U, 513U}) {
        const std::vector<double> values = noise(n, 1);
        const TracePyramid pyramid(values);
        for (std::size_t first = 0; first <= n; ++first)
            for (std::size_t last = first; last <= n; ++last)
                ASSERT_EQ(pyramid.over(first, last), bruteForce(values, first, last))
                    << n << ": " << first << " to " << last;
    }
}

TEST(TracePyramid, AgreesWithBruteForceOverRandomStretchesOfLongOnes)
{
    const std::vector<double> values = noise(200'003, 2, 0.01);
    const TracePyramid pyramid(values);
    std::mt19937 random(3);
    std::uniform_int_distribution<std::size_t> place(0, values.size());
    for (int i = 0; i < 300; ++i) {
        std::size_t first = place(random);
        std::size_t last = place(random);
        if (first > last)
            std::swap(first, last);
        ASSERT_EQ(pyramid.over(first, last), bruteForce(values, first, last))
            << first << " to " << last;
    }
}

TEST(TracePyramid, LeavesNotANumberOutAndKeepsInfinities)
{
    constexpr double kInf = std::numeric_limits<double>::infinity();
    const std::vector<double> values{std::nan(""), 2.0, -kInf, std::nan(""), kInf};
    const TracePyramid pyramid(values);
    EXPECT_FALSE(pyramid.over(0, 1));
    EXPECT_EQ(pyramid.over(0, 2), (MinMax{2.0, 2.0}));
    EXPECT_EQ(pyramid.over(0, 5), (MinMax{-kInf, kInf}));
}

TEST(TraceColumns, HoldTheTrueMinimumAndMaximumOfEveryColumn)
{
    const std::vector<double> values = noise(50'000, 4, 0.02);
    const std::vector<double> at = times(values.size(), 5);
    const TracePyramid pyramid(values);
    std::mt19937 random(6);
    std::uniform_real_distribution<double> place(at.front() - 20.0, at.back() + 20.0);
    for (int round = 0; round < 60; ++round) {
        double from = place(random);
        double to = place(random);
        if (from > to)
            std::swap(from, to);
        const std::size_t count = 1 + static_cast<std::size_t>(round) * 23;
        const auto columns = columnsOf(at, pyramid, from, to, count);
        std::vector<std::optional<MinMax>> found(count);
        for (const PlacedColumn& column : columns)
            found[column.column] = MinMax{column.what.minimum, column.what.maximum};
        // brute force: each sample into the column that its place falls into
        std::vector<std::vector<double>> expected(count);
        for (std::size_t i = 0; i < at.size(); ++i) {
            if (at[i] < from || at[i] >= to)
                continue;
            std::size_t column = 0;
            while (column + 1 < count &&
                   at[i] >= from + (to - from) * (static_cast<double>(column + 1) /
                                                  static_cast<double>(count)))
                ++column;
            expected[column].push_back(values[i]);
        }
        for (std::size_t column = 0; column < count; ++column)
            ASSERT_EQ(found[column], bruteForce(expected[column], 0, expected[column].size()))
                << "round " << round << ", column " << column << " of " << count;
    }
}

TEST(TraceColumns, NeverLoseASpikeOfOneSample)
{
    std::vector<double> values(1'000'000, 1.0);
    std::vector<double> at(values.size());
    for (std::size_t i = 0; i < at.size(); ++i)
        at[i] = 0.01 * static_cast<double>(i);
    values[123'457] = 99.0;
    const TracePyramid pyramid(values);
    for (const std::size_t count : {1U, 10U, 1200U, 2400U}) {
        const auto columns = columnsOf(at, pyramid, 0.0, 10'000.0, count);
        EXPECT_EQ(std::count_if(columns.begin(), columns.end(),
                                [](const PlacedColumn& c) { return c.what.maximum == 99.0; }),
                  1)
            << count << " columns";
    }
}

TEST(TraceColumns, CoverEverySampleInOrderWithoutOverlap)
{
    const std::vector<double> values = noise(10'000, 7);
    const std::vector<double> at = times(values.size(), 8);
    const TracePyramid pyramid(values);
    const auto columns = columnsOf(at, pyramid, at.front(), at.back() + 1.0, 777);
    std::size_t next = 0;
    for (const PlacedColumn& column : columns) {
        EXPECT_EQ(column.what.first, next);
        next = column.what.last;
    }
    EXPECT_EQ(next, values.size());
}

TEST(TraceColumns, AreEmptyWhereNothingIsSeen)
{
    const std::vector<double> values = noise(100, 9);
    const std::vector<double> at = times(values.size(), 10);
    const TracePyramid pyramid(values);
    EXPECT_TRUE(columnsOf(at, pyramid, 1e6, 2e6, 100).empty());
    EXPECT_TRUE(columnsOf(at, pyramid, -1e6, -2e5, 100).empty());
    EXPECT_TRUE(columnsOf(at, pyramid, 1.0, 1.0, 100).empty());
    EXPECT_TRUE(columnsOf(at, pyramid, 0.0, 1.0, 0).empty());
    EXPECT_TRUE(columnsOf({}, TracePyramid{}, 0.0, 1.0, 10).empty());
}

} // namespace
