// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answer/pooled.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <vector>

using namespace bothways::core;

namespace {

// Thirteen trials of BCG vaccine against tuberculosis, cases and others among vaccinated and
// controls: G. A. Colditz et al., JAMA 271 (1994) 698-702 (facts). Log risk ratios.
struct Trial {
    double cases, others, controlCases, controlOthers;
};
constexpr Trial kTrials[] = {
    {4, 119, 11, 128},       {6, 300, 29, 274},        {3, 228, 11, 209},
    {62, 13536, 248, 12619}, {33, 5036, 47, 5761},     {180, 1361, 372, 1079},
    {8, 2537, 10, 619},      {505, 87886, 499, 87892}, {29, 7470, 45, 7232},
    {17, 1699, 65, 1600},    {186, 50448, 141, 27197}, {5, 2493, 3, 2338},
    {27, 16886, 29, 17825}};

std::vector<StudyEffect> vaccineTrials()
{
    std::vector<StudyEffect> studies;
    for (const Trial& t : kTrials) {
        const double n = t.cases + t.others, control = t.controlCases + t.controlOthers;
        studies.push_back({"trial", std::log(t.cases / n) - std::log(t.controlCases / control),
                           std::sqrt(1 / t.cases - 1 / n + 1 / t.controlCases - 1 / control),
                           n + control - 2});
    }
    return studies;
}

} // namespace

TEST(Pooled, BcgVaccineTrials)
{
    const auto pooled = pool(vaccineTrials());
    ASSERT_TRUE(pooled);
    // Published: the test suite of R's metafor (test_misc_metan_vs_rma.uni_with_dat.bcg) compares
    // with the program metan: effect -0.7141, tau^2 0.3088, I^2 92.1 %, Q 152.2330 (read there).
    EXPECT_NEAR(pooled->effect_log, -0.7141, 5e-5);
    EXPECT_NEAR(pooled->tau * pooled->tau, 0.3088, 5e-5);
    EXPECT_NEAR(pooled->i2, 0.921, 5e-4);
    EXPECT_NEAR(pooled->q, 152.2330, 5e-5);
    // The same to 15 digits, and the interval with Hartung and Knapp's variance (scale 1.02199 >
    // 1), calculated in R 4.2.2 from the formulas of the sources.
    EXPECT_NEAR(pooled->effect_log, -0.714117222073227, 1e-13);
    EXPECT_NEAR(pooled->tau * pooled->tau, 0.308760262862376, 1e-13);
    EXPECT_NEAR(pooled->low_log, -1.10782135416833, 1e-12);
    EXPECT_NEAR(pooled->high_log, -0.320413089978126, 1e-12);
    EXPECT_NEAR(pooled->p, 0.00192076676704735, 1e-14);
    EXPECT_EQ(pooled->df, 12.0);
}

TEST(Pooled, StudiesThatAgreeGiveThePlainWeightedMean)
{
    // Closed form: weights 4 and 1, mean 0.02, Q = 0.02^2/(0.01^2 + 0.02^2) = 0.8 < 1, so tau = 0;
    // Hartung and Knapp's factor is below 1 and is not used: se = sqrt(1/12500).
    const std::vector<StudyEffect> studies = {{"a", 0.016, 0.01, 9}, {"b", 0.036, 0.02, 9}};
    const auto pooled = pool(studies);
    ASSERT_TRUE(pooled);
    EXPECT_NEAR(pooled->effect_log, 0.02, 1e-15);
    EXPECT_NEAR(pooled->q, 0.8, 1e-12);
    EXPECT_EQ(pooled->tau, 0.0);
    EXPECT_EQ(pooled->i2, 0.0);
    const double t = std::tan(0.475 * 3.14159265358979323846); // t(0.975, 1), exact
    EXPECT_NEAR(pooled->high_log, 0.02 + t / std::sqrt(12500.0), 1e-12);
    EXPECT_NEAR(pooled->low_log, 0.02 - t / std::sqrt(12500.0), 1e-12);
}

TEST(Pooled, SwappingBaselineAndDeviceFlipsTheSign)
{
    auto studies = vaccineTrials();
    const auto pooled = pool(studies, 0.9);
    for (StudyEffect& study : studies)
        study.effect_log = -study.effect_log;
    const auto flipped = pool(studies, 0.9);
    ASSERT_TRUE(pooled && flipped);
    EXPECT_DOUBLE_EQ(pooled->effect_log, -flipped->effect_log);
    EXPECT_DOUBLE_EQ(pooled->low_log, -flipped->high_log);
    EXPECT_DOUBLE_EQ(pooled->p, flipped->p);
}

TEST(Pooled, NeedsTwoStudiesWithAStandardError)
{
    EXPECT_FALSE(pool({}));
    EXPECT_FALSE(pool(std::vector<StudyEffect>{{"a", 0.01, 0.01, 9}}));
    EXPECT_FALSE(pool(std::vector<StudyEffect>{{"a", 0.01, 0.01, 9}, {"b", 0.01, 0.0, 9}}));
    EXPECT_FALSE(
        pool(std::vector<StudyEffect>{{"a", 0.01, 0.01, 9}, {"b", std::nan(""), 0.01, 9}}));
    EXPECT_FALSE(pool(std::vector<StudyEffect>{
        {"a", 0.01, 0.01, 9}, {"b", 0.01, std::numeric_limits<double>::infinity(), 9}}));
}

TEST(Pooled, StudiesThatAreAlikeAreNoDivisionByZero)
{
    const auto pooled = pool(std::vector<StudyEffect>{{"a", 0.01, 0.01, 9}, {"b", 0.01, 0.01, 9}});
    ASSERT_TRUE(pooled);
    EXPECT_NEAR(pooled->effect_log, 0.01, 1e-16);
    EXPECT_EQ(pooled->i2, 0.0);
    EXPECT_TRUE(pooled->low_log < 0.01 && pooled->high_log > 0.01);
}

namespace {

/// A study of one group each: mean, and s^2/n.
StudyEffect groupOf(const std::vector<double>& values)
{
    const auto n = static_cast<double>(values.size());
    double mean = 0.0, squares = 0.0;
    for (const double value : values)
        mean += value / n;
    for (const double value : values)
        squares += (value - mean) * (value - mean);
    const double s = std::sqrt(squares / (n - 1.0));
    return {"group", mean, s / std::sqrt(n), n - 1.0, s};
}

} // namespace

// R's data set PlantGrowth (A. J. Dobson, *An Introduction to Statistical Modelling*, 1983).
// oneway.test(weight ~ group, data = PlantGrowth): F = 5.181, num df = 2.000, denom df = 17.128,
// p-value = 0.01739.
TEST(Pooled, AgreementIsWelchsTestOfSeveralMeans)
{
    const auto pooled = pool(std::vector<StudyEffect>{
        groupOf({4.17, 5.58, 5.18, 6.11, 4.50, 4.61, 5.17, 4.53, 5.33, 5.14}),
        groupOf({4.81, 4.17, 4.41, 3.59, 5.87, 3.83, 6.03, 4.89, 4.32, 4.69}),
        groupOf({6.31, 5.12, 5.54, 5.50, 5.37, 5.29, 4.92, 6.15, 5.80, 5.26})});
    ASSERT_TRUE(pooled);
    EXPECT_NEAR(pooled->agreement.statistic, 5.181, 5e-4);
    EXPECT_EQ(pooled->agreement.df1, 2.0);
    EXPECT_NEAR(pooled->agreement.df2, 17.128, 5e-4);
    EXPECT_NEAR(pooled->agreement.p, 0.01739, 5e-6);
    EXPECT_EQ(pooled->agreement.state, CheckState::note);
}

// R: t.test(extra ~ group, data = sleep) (Student 1908): t = -1.8608, df = 17.776, p = 0.07939. Of
// two studies Welch's F is the square of his t.
TEST(Pooled, OfTwoStudiesAgreementIsWelchsTTest)
{
    const auto pooled = pool(
        std::vector<StudyEffect>{groupOf({0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0}),
                                 groupOf({1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4})});
    ASSERT_TRUE(pooled);
    EXPECT_NEAR(std::sqrt(pooled->agreement.statistic), 1.8608, 5e-5);
    EXPECT_NEAR(pooled->agreement.df2, 17.776, 5e-4);
    EXPECT_NEAR(pooled->agreement.p, 0.07939, 5e-6);
}

TEST(Pooled, TheCommonEffectIsWeighedByTheDesignsAlone)
{
    // v = 0.5 and 0.25: shares 1/3 and 2/3, whatever the noise came out as.
    const std::vector<StudyEffect> studies = {{"a", 0.03, 0.01 * std::sqrt(0.5), 6, 0.01},
                                              {"b", 0.00, 0.02 * std::sqrt(0.25), 9, 0.02}};
    const auto pooled = pool(studies);
    ASSERT_TRUE(pooled && pooled->common);
    EXPECT_NEAR(pooled->common->effect_log, 0.01, 1e-15);
    const double a = 0.5e-4 / 9.0, b = 4.0 * 1e-4 / 9.0;
    EXPECT_NEAR(pooled->common->df, (a + b) * (a + b) / (a * a / 6.0 + b * b / 9.0), 1e-10);
    EXPECT_NEAR(pooled->common->high_log + pooled->common->low_log, 0.02, 1e-15);
    EXPECT_FALSE(
        pool(std::vector<StudyEffect>{{"a", 0.01, 0.01, 9}, {"b", 0.02, 0.01, 9}})->common);
}

TEST(Pooled, ThreeStudiesAlikeToTheLastDigitStillHaveAWidth)
{
    const StudyEffect one{"a", 0.01, 0.01, 6, 0.02};
    const auto pooled = pool(std::vector<StudyEffect>{one, one, one});
    ASSERT_TRUE(pooled);
    EXPECT_LT(pooled->low_log, 0.01 - 0.001);
    EXPECT_GT(pooled->high_log, 0.01 + 0.001);
}
