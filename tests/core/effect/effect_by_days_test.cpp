// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/effect_by_days.h"

#include "core/effect/headline.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

using namespace bothways::core;

namespace {

struct Sample {
    std::vector<EffectByDays::Day> days;
    std::vector<Observation> pairs;
    bool sloped = false;
};

Sample randomSample(std::mt19937_64& random)
{
    const auto upTo = [&](int most) { return std::uniform_int_distribution<int>(0, most)(random); };
    std::normal_distribution<double> normal;
    Sample sample;
    sample.sloped = upTo(1) == 1;
    const int days = 1 + upTo(3);
    for (int day = 0; day < days; ++day) {
        EffectByDays::Day one;
        const int pairs = upTo(6);
        for (int k = 0; k < pairs; ++k) {
            const bool device = upTo(1) == 1;
            // Few distinct times, so that slopes and effect are confounded now and then.
            const double t_h = 24.0 * day + (upTo(2) == 0 ? 0.25 * upTo(3) : 0.3 * k);
            one.pairs.push_back({t_h, day, device, 2.3 + 0.01 * normal(random)});
        }
        sample.pairs.insert(sample.pairs.end(), one.pairs.begin(), one.pairs.end());
        sample.days.push_back(std::move(one));
    }
    return sample;
}

/// The same by the general fit, with the headline's reasons for giving none.
std::optional<EffectEstimate> byLeastSquares(const Sample& sample)
{
    int device = 0;
    for (const Observation& pair : sample.pairs)
        device += pair.device ? 1 : 0;
    const int n = static_cast<int>(sample.pairs.size());
    if (device < 2 || n - device < 2)
        return std::nullopt;
    const Columns columns = effectColumns(sample.pairs, sample.sloped);
    const auto fit = leastSquares(columns, responses(sample.pairs));
    if (fit.df < 2 || !fit.estimable[kEffectColumn] || fit.s() < 1e-12)
        return std::nullopt;
    return EffectEstimate{fit.coefficients[kEffectColumn],
                          fit.s() * std::sqrt(fit.cov(kEffectColumn, kEffectColumn)), fit.df};
}

void expectSame(const std::optional<EffectEstimate>& actual,
                const std::optional<EffectEstimate>& expected, int sample)
{
    ASSERT_EQ(actual.has_value(), expected.has_value()) << "sample " << sample;
    if (!actual)
        return;
    EXPECT_EQ(actual->df, expected->df) << "sample " << sample;
    EXPECT_NEAR(actual->effect_log, expected->effect_log, 1e-12) << "sample " << sample;
    EXPECT_NEAR(actual->se_log, expected->se_log, 1e-10 * expected->se_log) << "sample " << sample;
}

} // namespace

TEST(EffectByDays, IsLeastSquaresOverTheHeadlinesColumns)
{
    std::mt19937_64 random(7);
    int answers = 0;
    for (int k = 0; k < 3'000; ++k) {
        const Sample sample = randomSample(random);
        const auto expected = byLeastSquares(sample);
        answers += expected ? 1 : 0;
        expectSame(EffectByDays(sample.days, sample.sloped).estimate(), expected, k);
    }
    EXPECT_GT(answers, 1'000); // the samples do ask something
    EXPECT_LT(answers, 2'900);
}

TEST(EffectByDays, AChangedDayIsAsGoodAsANewStart)
{
    std::mt19937_64 random(8);
    for (int k = 0; k < 500; ++k) {
        Sample sample = randomSample(random);
        const EffectByDays before(sample.days, sample.sloped);
        const Sample other = randomSample(random);
        const std::size_t day = static_cast<std::size_t>(k) % sample.days.size();
        const auto actual = before.estimateWith(day, other.days[0]);
        sample.days[day] = other.days[0];
        expectSame(actual, EffectByDays(sample.days, sample.sloped).estimate(), k);
    }
}
