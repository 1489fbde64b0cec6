// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/effect/headline.h"

#include "core/effect/effect_model.h"
#include "tests/support/study_builder.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace bothways;
using core::HeadlineFit;
using core::NoVerdict;
using tests::aDrivenRun;
using tests::StudyBuilder;

namespace {

core::HeadlineOrReason answer(const core::Study& study, const core::AnalysisOptions& options = {})
{
    return core::headlineOf(core::prepareStudy(study, options), options);
}

HeadlineFit headline(const core::Study& study, const core::AnalysisOptions& options = {})
{
    const auto found = answer(study, options);
    EXPECT_TRUE(std::holds_alternative<HeadlineFit>(found));
    return std::holds_alternative<HeadlineFit>(found) ? std::get<HeadlineFit>(found)
                                                      : HeadlineFit{};
}

NoVerdict reason(const core::Study& study)
{
    const auto found = answer(study);
    EXPECT_TRUE(std::holds_alternative<NoVerdict>(found));
    return std::holds_alternative<NoVerdict>(found) ? std::get<NoVerdict>(found) : NoVerdict{};
}

/// Adds a pair whose log is `m` (both runs alike).
void addPairOf(StudyBuilder& study, const char* configuration, double at_min, double m)
{
    study.addPair(configuration, at_min, std::exp(m), std::exp(m));
}

core::Study onTheNextDay(core::Study first, const core::Study& second)
{
    for (core::Run run : second.runs) {
        run.start.us += std::int64_t{24} * 3600 * 1'000'000;
        run.number += static_cast<int>(first.runs.size());
        first.runs.push_back(run);
    }
    return first;
}

} // namespace

// Student's sleep data (Student 1908, after Cushny & Peebles 1905; R datasets::sleep), its two
// drugs as an open design. R 4.2.2: t.test(extra ~ group, var.equal = TRUE): df 18, p
// 0.0791867142159382, 95 % interval -3.3638740322876 to 0.203874032287599; t has the sign of drug 1
// - drug 2. Tolerance 1e-12: consumption is exp(extra), and exp and log cost an ulp each.
TEST(Headline, OfAnOpenDesignIsThePooledTTest)
{
    const double kDrug1[] = {0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0};
    const double kDrug2[] = {1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4};
    StudyBuilder study;
    double minute = 0.0;
    for (const double extra : kDrug1)
        addPairOf(study, "A", minute += 15.0, extra);
    for (const double extra : kDrug2)
        addPairOf(study, "B", minute += 15.0, extra);
    const core::Headline h = headline(study).headline;
    EXPECT_NEAR(h.effect_log, 1.58, 1e-12);
    EXPECT_EQ(h.df, 18.0);
    EXPECT_NEAR(h.t, 1.86081346748685, 1e-12);
    EXPECT_NEAR(h.p, 0.0791867142159382, 1e-12);
    EXPECT_NEAR(h.low_log, -0.203874032287599, 1e-12);
    EXPECT_NEAR(h.high_log, 3.3638740322876, 1e-12);
    EXPECT_FALSE(h.drift_log_per_h);
    EXPECT_NEAR(h.baseline_l_per_100km, std::exp(0.75), 1e-12); // mean of drug 1
    EXPECT_NEAR(h.difference_l_per_100km, std::exp(0.75 + 1.58) - std::exp(0.75), 1e-12);
}

// Balanced A/B/A with two pairs a block, an hour apart, so that x is orthogonal to t. By hand, from
// the logs 2.0, 2.2 | 2.5, 2.7 | 2.2, 2.4: delta = 2.6 - 2.2; beta = sum(t m)/sum(t^2) =
// (-5 - 3.3 - 1.25 + 1.35 + 3.3 + 6)/17.5 = 1.1/17.5 an hour; about the means of A and B 0.08 +
// 0.02 are left, of which the slope takes beta^2 17.5.
TEST(Headline, OfABalancedClosedDesignIsTheDifferenceOfMeans)
{
    const double m[] = {2.0, 2.2, 2.5, 2.7, 2.2, 2.4};
    StudyBuilder study;
    for (int k = 0; k < 6; ++k)
        addPairOf(study, k / 2 == 1 ? "B" : "A", 10.0 + 60.0 * k, m[k]);
    const core::Headline h = headline(study).headline;
    EXPECT_NEAR(h.effect_log, 0.4, 1e-13);
    EXPECT_EQ(h.df, 3.0);
    ASSERT_TRUE(h.drift_log_per_h);
    const double beta = 1.1 / 17.5;
    EXPECT_NEAR(*h.drift_log_per_h, beta, 1e-13);
    const double rss = 0.08 + 0.02 - beta * beta * 17.5;
    EXPECT_NEAR(h.s, std::sqrt(rss / 3.0), 1e-13);
    EXPECT_NEAR(h.sqrt_v, std::sqrt(1.0 / 4.0 + 1.0 / 2.0), 1e-14);
    EXPECT_NEAR(h.baseline_l_per_100km, std::exp(2.2), 1e-12);
    EXPECT_EQ(h.residuals.size(), 6U);
}

// A-B-B-A weighing, readings 10.00, 12.05, 12.15, 10.30: d = (O2 - O1 + O3 - O4)/2 = 1.95 and drift
// (-3 O1 - O2 + O3 + 3 O4)/10 = 0.10 a step, by formula (NIST SOP 4's scheme of double
// substitution, without buoyancy).
TEST(Headline, ModelEliminatesDriftAsTheWeighingSchemeDoes)
{
    const double o[] = {10.00, 12.05, 12.15, 10.30};
    std::vector<core::Observation> readings;
    for (int k = 0; k < 4; ++k)
        readings.push_back({static_cast<double>(k), 0, k == 1 || k == 2, o[k]});
    const auto fit =
        core::leastSquares(core::effectColumns(readings, {true}), core::responses(readings));
    EXPECT_NEAR(fit.coefficients[core::kEffectColumn], 1.95, 1e-13);
    EXPECT_NEAR(fit.coefficients[core::kEffectColumn + 2], 0.10, 1e-13);
}

TEST(Headline, EachDayHasItsOwnLevelAndSlope)
{
    // Two noisy days; the second is 30 % higher and drifts the other way. Neither shows in delta.
    core::Study first = tests::aDay("ABA", 3, 0.02, 0.003, 1);
    core::Study second = tests::aDay("BAB", 3, 0.02, 0.003, 2);
    const core::Headline before = headline(onTheNextDay(first, second)).headline;
    for (core::Run& run : second.runs) {
        const double hours = static_cast<double>(core::midTime_us(run)) / 3.6e9;
        run.consumption->value *= 1.3 * std::exp(-0.05 * hours);
    }
    const core::Headline after = headline(onTheNextDay(first, second)).headline;
    EXPECT_EQ(after.df, 18.0 - 5.0);
    // Both runs of a pair are scaled by the drift at their own time, hence not exactly.
    EXPECT_NEAR(after.effect_log, before.effect_log, 2e-5);
    EXPECT_FALSE(after.drift_log_per_h);
    EXPECT_NEAR(before.effect_log, 0.02, 0.005);
}

TEST(Headline, ADayOfOneConfigurationAddsNothingToTheEffectButItsNoise)
{
    const core::Study alone = tests::aDay("ABA", 3, 0.02);
    const core::Study both = onTheNextDay(alone, tests::aDay("A", 4, 0.0, 0.01, 9));
    const core::Headline one = headline(alone).headline, two = headline(both).headline;
    EXPECT_NEAR(two.effect_log, one.effect_log, 1e-12);
    EXPECT_NEAR(two.sqrt_v, one.sqrt_v, 1e-12);
    EXPECT_EQ(two.df, one.df + 2.0); // 4 pairs, less an intercept and a slope
}

TEST(Headline, TheBaselineOfSeveralDaysIsTheMeanOverTheirPairs)
{
    // Levels of 10 and 15 L/100 km, 9 and 6 pairs; the device adds 2 % on both days.
    core::Study second = tests::aDay("ABA", 2, 0.02, 1e-6, 2);
    for (core::Run& run : second.runs)
        run.consumption->value *= 1.5;
    const core::Headline h =
        headline(onTheNextDay(tests::aDay("ABA", 3, 0.02, 1e-6, 1), second)).headline;
    EXPECT_NEAR(h.baseline_l_per_100km, 10.0 * std::exp(6.0 / 15.0 * std::log(1.5)), 1e-4);
    EXPECT_NEAR(h.difference_l_per_100km, h.baseline_l_per_100km * std::expm1(0.02), 1e-4);
}

TEST(Headline, WithAControlVehicleTheWindThatBothMetIsGone)
{
    core::Study study = tests::aDay("ABA", 3, 0.02, 0.001);
    const core::Headline calm = headline(study).headline;
    int k = 0;
    for (core::Run& run : study.runs) {
        const double wind = 1.0 + 0.05 * std::sin(1.7 * ++k);
        run.consumption->value *= wind;
        run.control = 6.0 * wind;
        run.distance_km.reset(); // equal weights: then a common factor a pair cancels nearly
    }
    const core::Headline windy = headline(study).headline;
    EXPECT_NEAR(windy.effect_log, calm.effect_log, 1e-4);
    // Litres again: the vehicle's own level at the control's mean, not the ratio.
    EXPECT_NEAR(windy.baseline_l_per_100km, 10.0, 0.3);
}

TEST(Headline, OnlyTwoDegreesOfFreedomAreEnough)
{
    EXPECT_EQ(headline(tests::aDay("AB", 2)).headline.df, 2.0);
}

TEST(Headline, SaysThatNoRunsCount)
{
    EXPECT_EQ(reason({}), NoVerdict::noRuns);
    core::Study study = tests::aDay("ABA", 2);
    for (core::Run& run : study.runs)
        run.discard = core::Discard{"other", "rain"};
    EXPECT_EQ(reason(study), NoVerdict::noRuns);
}

TEST(Headline, SaysThatOnlyOneConfigurationCounts)
{
    EXPECT_EQ(reason(tests::aDay("A", 5)), NoVerdict::oneConfiguration);
    EXPECT_EQ(reason(tests::aDay("B", 5)), NoVerdict::oneConfiguration);
    core::Study study = tests::aDay("AB", 3);
    for (core::Run& run : study.runs)
        if (run.configuration == "B")
            run.discard = core::Discard{"other", "rain"};
    EXPECT_EQ(reason(study), NoVerdict::oneConfiguration);
}

TEST(Headline, SaysThatPairsAreTooFew)
{
    EXPECT_EQ(reason(tests::aDay("AB", 1)), NoVerdict::tooFewPairs);
    EXPECT_EQ(reason(tests::aDay("ABA", 1)), NoVerdict::tooFewPairs);
    EXPECT_EQ(reason(tests::aDay("ABAB", 1)), NoVerdict::tooFewPairs); // 4 pairs, but df 1
    StudyBuilder oneWay;                                               // plenty of runs, no pair
    for (int k = 0; k < 6; ++k)
        oneWay.add(aDrivenRun().configuration(k < 3 ? "A" : "B").out().at_min(7.0 * k));
    EXPECT_EQ(reason(oneWay), NoVerdict::tooFewPairs);
    // Ample pairs on two days, but too few degrees of freedom: 6 pairs less 1 + 2 + 2.
    EXPECT_EQ(reason(onTheNextDay(tests::aDay("ABA", 1), tests::aDay("ABA", 1, 0, 0.01, 2))),
              NoVerdict::tooFewPairs);
}

TEST(Headline, TakesOutADriftOnlyWhereTimesTellIt)
{
    // Every block at one moment: A at 0, B and A at 60 min. Time is then x by another name.
    StudyBuilder study;
    const auto four = [&](const char* configuration, double at_min, double scatter) {
        for (int k = 0; k < 2; ++k) {
            study.add(aDrivenRun()
                          .configuration(configuration)
                          .out()
                          .at_min(at_min)
                          .lasting_s({})
                          .using_l(8 + scatter * k));
            study.add(aDrivenRun()
                          .configuration(configuration)
                          .back()
                          .at_min(at_min)
                          .lasting_s({})
                          .using_l(8));
        }
    };
    four("A", 0, 0.1);
    four("B", 60, 0.2);
    four("A", 60, 0.3); // same start as B, entered after it
    EXPECT_NE(core::prepareStudy(study, {}).design, core::Design::open);
    // A has two times, so this one can be told; with all at one moment the slope goes.
    EXPECT_TRUE(std::holds_alternative<HeadlineFit>(answer(study)));
    EXPECT_TRUE(headline(study).headline.drift_log_per_h);
    core::Study still = study;
    for (core::Run& run : still.runs)
        run.start.us = 0;
    const core::Headline without = headline(still).headline;
    EXPECT_FALSE(without.drift_log_per_h);
    EXPECT_EQ(without.df, 6.0 - 2.0);
}

TEST(Headline, SaysThatDaysOfOneConfigurationEachCannotBeCompared)
{
    EXPECT_EQ(reason(onTheNextDay(tests::aDay("A", 4), tests::aDay("B", 4))),
              NoVerdict::noTimeSpread);
}

TEST(Headline, SaysThatReadingsDoNotVary)
{
    EXPECT_EQ(reason(tests::aDay("ABA", 3, 0.0, 0.0)), NoVerdict::noVariation);
    EXPECT_EQ(reason(tests::aDay("AB", 3, 0.05, 0.0)), NoVerdict::noVariation);
}

TEST(Headline, AnEnormousOutlierIsAnOrdinaryNumber)
{
    core::Study study = tests::aDay("ABA", 3);
    study.runs[7].consumption->value = 1e300;
    const core::Headline h = headline(study).headline;
    EXPECT_TRUE(std::isfinite(h.effect_log) && std::isfinite(h.low_log) && std::isfinite(h.p));
    EXPECT_TRUE(std::isfinite(h.baseline_l_per_100km));
}
