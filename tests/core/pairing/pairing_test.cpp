// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/pairing/pairing.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <optional>
#include <random>
#include <sstream>
#include <tuple>

using namespace bothways::core;

namespace {

constexpr std::int64_t kMinute_ms = 60'000;

struct TimesOfABlock {
    std::vector<PairingPoint> outs, returns;
    std::int64_t maxGap_ms = 30 * kMinute_ms;
};

std::string describe(const TimesOfABlock& block)
{
    std::ostringstream text;
    text << "max gap " << block.maxGap_ms << " ms; outs";
    for (const auto& point : block.outs)
        text << " #" << point.position << '@' << point.mid_ms;
    text << "; returns";
    for (const auto& point : block.returns)
        text << " #" << point.position << '@' << point.mid_ms;
    return text.str();
}

/// The definition itself: every matching is made and compared. Nothing here is shared with
/// pairing.cpp.
class EveryMatching {
public:
    explicit EveryMatching(const TimesOfABlock& block)
        : m_block(block), m_taken(block.returns.size(), false)
    {
        std::sort(m_block.outs.begin(), m_block.outs.end(),
                  [](const auto& a, const auto& b) { return a.position < b.position; });
        extend(0, {}, 0, 0);
    }
    [[nodiscard]] const std::vector<MatchedPair>& best() const { return m_best; }

private:
    void extend(std::size_t i, std::vector<MatchedPair> pairs, std::int64_t sum,
                std::int64_t squares)
    {
        if (i == m_block.outs.size()) {
            std::sort(pairs.begin(), pairs.end());
            const auto score =
                std::tuple(-static_cast<std::int64_t>(pairs.size()), sum, squares, pairs);
            if (!m_score || score < *m_score) {
                m_score = score;
                m_best = pairs;
            }
            return;
        }
        extend(i + 1, pairs, sum, squares);
        for (std::size_t j = 0; j < m_block.returns.size(); ++j) {
            const std::int64_t gap = std::abs(m_block.outs[i].mid_ms - m_block.returns[j].mid_ms);
            if (m_taken[j] || gap > m_block.maxGap_ms)
                continue;
            m_taken[j] = true;
            auto longer = pairs;
            longer.push_back({m_block.outs[i].position, m_block.returns[j].position});
            extend(i + 1, std::move(longer), sum + gap, squares + gap * gap);
            m_taken[j] = false;
        }
    }

    TimesOfABlock m_block;
    std::vector<bool> m_taken;
    std::optional<std::tuple<std::int64_t, std::int64_t, std::int64_t, std::vector<MatchedPair>>>
        m_score;
    std::vector<MatchedPair> m_best;
};

/// `inDrivingOrder`: positions follow the times, as they do when all runs are equally long.
TimesOfABlock randomBlock(std::mt19937_64& random, bool inDrivingOrder)
{
    const auto upTo = [&](int most) { return std::uniform_int_distribution<int>(0, most)(random); };
    TimesOfABlock block;
    const int outs = upTo(5), returns = upTo(5);
    const int span = 1 + upTo(12); // few distinct times: many ties
    block.maxGap_ms = upTo(8);
    std::vector<std::int64_t> times;
    for (int k = 0; k < outs + returns; ++k)
        times.push_back(upTo(span));
    std::vector<std::size_t> positions(times.size());
    std::iota(positions.begin(), positions.end(), std::size_t{1});
    if (inDrivingOrder)
        std::sort(times.begin(), times.end());
    else
        std::shuffle(positions.begin(), positions.end(), random);
    std::vector<bool> isOut(times.size(), false);
    std::fill(isOut.begin(), isOut.begin() + outs, true);
    std::shuffle(isOut.begin(), isOut.end(), random);
    for (std::size_t k = 0; k < times.size(); ++k)
        (isOut[k] ? block.outs : block.returns).push_back({times[k], positions[k]});
    return block;
}

std::vector<MatchedPair> match(const TimesOfABlock& block)
{
    Matching matching = matchRuns(block.outs, block.returns, block.maxGap_ms);
    EXPECT_TRUE(matching.exact);
    return matching.pairs;
}

} // namespace

TEST(Pairing, IsTheBestOfAllMatchingsWhenRunsAreInDrivingOrder)
{
    std::mt19937_64 random(20260509);
    for (int k = 0; k < 20'000; ++k) {
        const TimesOfABlock block = randomBlock(random, true);
        ASSERT_EQ(match(block), EveryMatching(block).best())
            << "block " << k << ": " << describe(block);
    }
}

TEST(Pairing, IsTheBestOfAllMatchingsWhenMidTimesOvertakeOneAnother)
{
    std::mt19937_64 random(20260510);
    for (int k = 0; k < 20'000; ++k) {
        const TimesOfABlock block = randomBlock(random, false);
        ASSERT_EQ(match(block), EveryMatching(block).best())
            << "block " << k << ": " << describe(block);
    }
}

TEST(Pairing, ALongBlockOfAlternatingRunsPairsNeighbours)
{
    TimesOfABlock block;
    std::vector<MatchedPair> expected;
    for (std::size_t k = 0; k < 10'000; ++k) {
        const auto minute = static_cast<std::int64_t>(k) * 7;
        (k % 2 == 0 ? block.outs : block.returns).push_back({minute * kMinute_ms, k});
        if (k % 2 == 0)
            expected.push_back({k, k + 1});
    }
    EXPECT_EQ(match(block), expected);
}

TEST(Pairing, AThousandRunsAtOneMomentPairInDrivingOrder)
{
    TimesOfABlock block;
    std::vector<MatchedPair> expected;
    for (std::size_t k = 0; k < 1'000; ++k) {
        block.outs.push_back({0, 2 * k});
        block.returns.push_back({0, 2 * k + 1});
        expected.push_back({2 * k, 2 * k + 1});
    }
    EXPECT_EQ(match(block), expected);
}

TEST(Pairing, SaysWhenABlockIsTooLargeToBeMatchedExactly)
{
    TimesOfABlock block; // 30,000 runs that must stay alone, all within reach
    for (std::size_t k = 0; k < 20'000; ++k)
        block.outs.push_back({0, k});
    for (std::size_t k = 0; k < 50'000; ++k)
        block.returns.push_back({0, 20'000 + k});
    const Matching matching = matchRuns(block.outs, block.returns, block.maxGap_ms);
    EXPECT_FALSE(matching.exact);
    EXPECT_EQ(matching.pairs.size(), 20'000U); // still as many as can be
}

TEST(Pairing, NothingPairsWithNothing)
{
    EXPECT_TRUE(match({}).empty());
    EXPECT_TRUE(match({{{0, 1}}, {}, kMinute_ms}).empty());
    EXPECT_TRUE(match({{{0, 1}}, {{1, 2}}, 0}).empty());
    EXPECT_EQ(match({{{5, 1}}, {{5, 2}}, 0}), (std::vector<MatchedPair>{{1, 2}}));
}
