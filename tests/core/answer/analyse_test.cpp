// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answer/analyse.h"
#include "core/effect/answer.h"

#include "core/planning/plan.h"
#include "core/study/units.h"
#include "tests/support/study_builder.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <limits>
#include <random>

using namespace bothways;
using core::Qualifier;
using core::VerdictClass;

namespace {

/// A closed day with two settings, a discard and an unpaired run: something of everything.
core::Study aWholeDay()
{
    core::Study study = tests::aDay("ABABA", 3, -0.015, 0.012, 3);
    for (core::Run& run : study.runs)
        if (run.configuration == "B")
            run.setting = run.number % 4 < 2 ? "18" : "22";
    study.runs[9].discard = core::Discard{"overspeed", ""};
    return study;
}

void expectSame(const core::Analysis& a, const core::Analysis& b, double tolerance = 1e-12)
{
    ASSERT_TRUE(a.headline && b.headline);
    EXPECT_NEAR(a.headline->effect_log, b.headline->effect_log, tolerance);
    EXPECT_NEAR(a.headline->se_log, b.headline->se_log, tolerance);
    EXPECT_NEAR(a.headline->p, b.headline->p, 1e3 * tolerance);
    EXPECT_EQ(a.verdict.cls, b.verdict.cls);
    EXPECT_EQ(a.unpaired, b.unpaired);
    ASSERT_EQ(a.pairs.size(), b.pairs.size());
    for (std::size_t k = 0; k < a.pairs.size(); ++k)
        EXPECT_EQ(a.pairs[k].out_run, b.pairs[k].out_run);
    ASSERT_EQ(a.discards_restored.each.size(), b.discards_restored.each.size());
    for (std::size_t k = 0; k < a.discards_restored.each.size(); ++k)
        EXPECT_NEAR(*a.discards_restored.each[k].effect_log,
                    *b.discards_restored.each[k].effect_log, tolerance);
    EXPECT_NEAR(*a.leave_one_out->min_effect_log, *b.leave_one_out->min_effect_log, tolerance);
}

core::Analysis analyseWith(const core::Study& study,
                           const std::function<void(core::AnalysisOptions&)>& change)
{
    core::AnalysisOptions options;
    change(options);
    return core::analyse(study, options);
}

bool has(const core::Analysis& analysis, Qualifier qualifier)
{
    const auto& all = analysis.verdict.qualifiers;
    return std::find(all.begin(), all.end(), qualifier) != all.end();
}

} // namespace

TEST(Analysis, SwappingBaselineAndDeviceFlipsTheSign)
{
    const core::Study study = aWholeDay();
    const core::Analysis ab = core::analyse(study, {});
    const core::Analysis ba =
        analyseWith(study, [](core::AnalysisOptions& o) { o.baseline = "B"; });
    EXPECT_NEAR(ba.headline->effect_log, -ab.headline->effect_log, 1e-14);
    EXPECT_NEAR(ba.headline->se_log, ab.headline->se_log, 1e-14);
    EXPECT_NEAR(ba.headline->low_log, -ab.headline->high_log, 1e-14);
    EXPECT_NEAR(*ba.headline->drift_log_per_h, *ab.headline->drift_log_per_h, 1e-13);
    EXPECT_EQ(ab.verdict.cls, VerdictClass::less);
    EXPECT_EQ(ba.verdict.cls, VerdictClass::more);
}

TEST(Analysis, ACommonFactorOnConsumptionChangesOnlyTheLevel)
{
    core::Study study = aWholeDay();
    const core::Analysis before = core::analyse(study, {});
    for (core::Run& run : study.runs)
        run.consumption->value *= 1.7;
    const core::Analysis after = core::analyse(study, {});
    expectSame(before, after);
    EXPECT_NEAR(after.headline->baseline_l_per_100km, 1.7 * before.headline->baseline_l_per_100km,
                1e-11);
}

TEST(Analysis, TheUnitOfConsumptionChangesNothing)
{
    core::Study study = aWholeDay();
    const core::Analysis litres = core::analyse(study, {});
    for (core::Run& run : study.runs)
        run.consumption = core::Consumption{
            core::fromLPer100km(run.consumption->value, core::ConsumptionUnit::mpgImp),
            core::ConsumptionUnit::mpgImp, 2, false};
    expectSame(litres, core::analyse(study, {}));
}

TEST(Analysis, ShiftingTheClockChangesNothing)
{
    core::Study study = aWholeDay();
    const core::Analysis before = core::analyse(study, {});
    for (core::Run& run : study.runs)
        run.start.us += std::int64_t{56} * 365 * 86'400 * 1'000'000 + 12'345'678;
    expectSame(before, core::analyse(study, {}), 0.0);
}

TEST(Analysis, NamesOfRunsConfigurationsAndDirectionsChangeNothing)
{
    core::Study study = aWholeDay();
    const core::Analysis before = core::analyse(study, {});
    for (core::Run& run : study.runs) {
        run.configuration = run.configuration == "A" ? "off" : "on";
        run.direction = run.direction == "out" ? "Nord" : "Süd";
    }
    expectSame(before, core::analyse(study, {}), 0.0);
}

// A pair's drift is that of its two runs, and a mean of exponentials is not the exponential of a
// mean: with equal runs a pair of 7 minutes and 5 %/h bends by (0.05 * 7/120)^2/2 = 4e-6, alike in
// every pair, so what is left is far smaller.
TEST(Analysis, AStraightDriftLeavesAClosedDesignsEffect)
{
    core::Study study = tests::aDay("ABABA", 3, -0.015, 0.004);
    const core::Analysis before = core::analyse(study, {});
    for (core::Run& run : study.runs)
        run.consumption->value *=
            std::exp(0.05 * static_cast<double>(core::midTime_us(run)) / 3.6e9);
    const core::Analysis after = core::analyse(study, {});
    EXPECT_NEAR(after.headline->effect_log, before.headline->effect_log, 1e-5);
    EXPECT_NEAR(*after.headline->drift_log_per_h, *before.headline->drift_log_per_h + 0.05, 1e-5);
}

TEST(Analysis, AStraightDriftIsTakenForAnEffectByAnOpenDesign)
{
    core::Study study = tests::aDay("AB", 4, 0.0, 0.004);
    const double before = core::analyse(study, {}).headline->effect_log;
    for (core::Run& run : study.runs)
        run.consumption->value *=
            std::exp(0.05 * static_cast<double>(core::midTime_us(run)) / 3.6e9);
    const core::Analysis after = core::analyse(study, {});
    EXPECT_GT(after.headline->effect_log, before + 0.04);
    EXPECT_TRUE(has(after, Qualifier::openDesign));
}

TEST(Analysis, OrderOfTheRunsInTheListDoesNotMatter)
{
    core::Study study = aWholeDay();
    const core::Analysis before = core::analyse(study, {});
    std::mt19937_64 random(11);
    std::shuffle(study.runs.begin(), study.runs.end(), random);
    core::sortByStart(study);
    expectSame(before, core::analyse(study, {}), 0.0);
}

TEST(Analysis, TheMarginDecidesBetweenEquivalentAndUndecided)
{
    const core::Study study = tests::aDay("ABABA", 4, 0.0, 0.004);
    const auto classAt = [&](double margin) {
        return analyseWith(study, [&](core::AnalysisOptions& o) { o.margin_pct = margin; })
            .verdict.cls;
    };
    EXPECT_EQ(classAt(5.0), VerdictClass::equivalent);
    EXPECT_EQ(classAt(0.05), VerdictClass::undecided);
}

TEST(Analysis, AnEffectSmallerThanTheMarginSaysSo)
{
    const core::Study study = tests::aDay("ABABA", 6, 0.02, 0.003);
    const auto at = [&](double margin) {
        return analyseWith(study, [&](core::AnalysisOptions& o) { o.margin_pct = margin; });
    };
    EXPECT_EQ(at(5.0).verdict.cls, VerdictClass::more);
    EXPECT_TRUE(has(at(5.0), Qualifier::smallerThanMargin));
    EXPECT_FALSE(has(at(1.0), Qualifier::smallerThanMargin));
}

TEST(Analysis, IsInterimUntilThePlanIsFulfilled)
{
    core::Study study = tests::aDay("ABA", 4, 0.02);
    EXPECT_FALSE(has(core::analyse(study, {}), Qualifier::interim));
    study.properties.plan = core::PlannedStudy{"ABA", 5, 1.0, 0.95};
    EXPECT_TRUE(has(core::analyse(study, {}), Qualifier::interim));
    study.properties.plan->pairs_per_block = 4;
    EXPECT_FALSE(has(core::analyse(study, {}), Qualifier::interim));
    study.properties.plan->sequence = "ABABA";
    EXPECT_TRUE(has(core::analyse(study, {}), Qualifier::interim));
}

TEST(Analysis, QualifiersComeInTheirOrder)
{
    core::Study study = tests::aDay("AB", 2, 0.03, 0.001);
    study.properties.plan = core::PlannedStudy{"ABA", 5, 1.0, 0.95};
    core::AnalysisOptions options;
    options.margin_pct = 20.0;
    const core::Analysis analysis = core::analyse(study, options);
    std::vector<Qualifier> sorted = analysis.verdict.qualifiers;
    std::sort(sorted.begin(), sorted.end());
    EXPECT_EQ(analysis.verdict.qualifiers, sorted);
    EXPECT_GE(sorted.size(), 3U);
}

TEST(Analysis, UndecidedSaysHowManyMorePairsWouldDetectTheMargin)
{
    const core::Study study = tests::aDay("ABA", 2, 0.0, 0.03);
    const core::Analysis analysis = core::analyse(study, {});
    ASSERT_EQ(analysis.verdict.cls, VerdictClass::undecided);
    ASSERT_TRUE(analysis.verdict.more_pairs_per_block);
    core::PlanOptions plan;
    plan.s = analysis.headline->s;
    plan.pairs_per_block = 2 + *analysis.verdict.more_pairs_per_block;
    EXPECT_LE(core::pctFromLog(core::makePlan(plan).value().detectable_log), 1.0 + 1e-9);
    --plan.pairs_per_block;
    EXPECT_GT(core::pctFromLog(core::makePlan(plan).value().detectable_log), 1.0);
}

TEST(Analysis, ADecidedVerdictAsksForNoMorePairs)
{
    EXPECT_FALSE(core::analyse(tests::aDay("ABA", 4, 0.05), {}).verdict.more_pairs_per_block);
    EXPECT_FALSE(core::analyse({}, {}).verdict.more_pairs_per_block);
}

TEST(Analysis, WithoutAVerdictNumbersAreAbsentAndFactsAreThere)
{
    const core::Analysis analysis = core::analyse(tests::aDay("AB", 1), {});
    EXPECT_EQ(analysis.verdict.cls, VerdictClass::none);
    EXPECT_EQ(analysis.verdict.reason, core::NoVerdict::tooFewPairs);
    EXPECT_FALSE(analysis.headline || analysis.detectable || analysis.leave_one_out);
    EXPECT_TRUE(analysis.verdict.qualifiers.empty());
    EXPECT_EQ(analysis.pairs.size(), 2U);
    EXPECT_EQ(analysis.design, core::Design::open);
}

// Whatever the runs are like, there is an answer, and no number in it is a NaN.
TEST(Analysis, EveryStudyHasAnAnswer)
{
    std::mt19937_64 random(13);
    const auto upTo = [&](int most) { return std::uniform_int_distribution<int>(0, most)(random); };
    const double kOdd[] = {1e-300,
                           1e300,
                           8.0,
                           8.0,
                           8.1,
                           7.9,
                           0.0,
                           -3.0,
                           std::numeric_limits<double>::quiet_NaN(),
                           std::numeric_limits<double>::infinity()};
    for (int k = 0; k < 2'000; ++k) {
        tests::StudyBuilder builder;
        const int runs = upTo(16);
        double minute = 0.0;
        for (int i = 0; i < runs; ++i) {
            tests::DrivenRun run = tests::aDrivenRun();
            run.configuration(std::string(1, static_cast<char>('A' + upTo(10) / 5)));
            run.direction(upTo(20) == 0 ? "up" : i % 2 == 0 ? "out" : "return");
            run.at_min(minute += upTo(5) == 0 ? upTo(500) : 7).using_l(8.0 + 0.1 * upTo(9));
            if (upTo(8) == 0)
                run.using_l(kOdd[upTo(9)]);
            if (upTo(8) == 0)
                run.over_km(kOdd[upTo(9)]);
            if (upTo(8) == 0)
                run.lasting_s(kOdd[upTo(9)]);
            if (upTo(10) == 0)
                run.tied("x");
            if (upTo(5) == 0)
                run.discarded();
            if (upTo(10) == 0)
                run.control(kOdd[upTo(9)]);
            if (upTo(20) == 0)
                run.without_consumption();
            builder.add(run);
        }
        const core::Analysis analysis = core::analyse(builder.build(), {});
        EXPECT_EQ(analysis.headline.has_value(), analysis.verdict.cls != VerdictClass::none);
        EXPECT_EQ(analysis.counted + analysis.discarded, runs);
        EXPECT_EQ(static_cast<int>(2 * analysis.pairs.size() + analysis.unpaired.size()),
                  analysis.counted)
            << "study " << k;
        if (analysis.headline) {
            const core::Headline& h = *analysis.headline;
            for (const double value :
                 {h.effect_log, h.se_log, h.low_log, h.high_log, h.p, h.t, h.s,
                  h.baseline_l_per_100km, h.difference_l_per_100km, analysis.detectable->log})
                EXPECT_TRUE(std::isfinite(value)) << "study " << k;
        }
    }
}
