// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/companions/companions.h"

#include "core/answer/analyse.h"
#include "core/statistics/distributions.h"
#include "core/study/units.h"
#include "tests/core/companions/timed_pairs.h"
#include "tests/support/study_builder.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <random>

using namespace bothways;
using namespace bothways::core;
using bothways::tests::aDay;
using bothways::tests::aDrivenRun;
using bothways::tests::companionsIn;
using bothways::tests::StudyBuilder;

namespace {

Study changed(Study study, const std::function<void(core::Run&)>& change)
{
    for (core::Run& run : study.runs)
        change(run);
    return study;
}

void scale(core::Run& run, double factor)
{
    run.consumption->value *= factor;
}

/// Fails when any number is not finite or out of its range.
void expectSane(const Analysis& analysis, const std::string& what)
{
    const auto finite = [&](double value, const char* name) {
        EXPECT_TRUE(std::isfinite(value)) << what << ": " << name;
    };
    const auto probability = [&](double p, const char* name) {
        EXPECT_TRUE(p >= 0.0 && p <= 1.0) << what << ": " << name << " " << p;
    };
    const auto interval = [&](const Interval& i, const char* name) {
        finite(i.effect_log, name);
        EXPECT_LE(i.low_log, i.effect_log) << what << ": " << name;
        EXPECT_GE(i.high_log, i.effect_log) << what << ": " << name;
        finite(i.high_log - i.low_log, name);
        EXPECT_GE(i.df, 1.0) << what << ": " << name;
        probability(i.p, name);
    };
    const Companions& c = analysis.companions;
    if (c.bracket)
        interval(*c.bracket, "bracket");
    if (c.runs)
        interval(*c.runs, "runs");
    if (c.blocks)
        interval(*c.blocks, "blocks");
    if (c.correlated)
        interval(*c.correlated, "correlated");
    if (c.labels)
        probability(c.labels->p, "labels");
    for (const SettingEffect& s : c.settings) {
        finite(s.low_bonferroni_log, "settings");
        finite(s.high_bonferroni_log, "settings");
        EXPECT_LE(s.low_bonferroni_log, s.low_log) << what;
    }
    const Checks& k = analysis.checks;
    for (const Check* check :
         {&k.normal, &k.curve, &k.spread, static_cast<const Check*>(&k.outlier),
          static_cast<const Check*>(&k.order), static_cast<const Check*>(&k.direction)}) {
        EXPECT_EQ(check->statistic.has_value(), check->p.has_value()) << what;
        EXPECT_EQ(check->statistic.has_value(), check->state != CheckState::notComputed) << what;
        if (check->statistic) {
            finite(*check->statistic, "check");
            probability(*check->p, "check");
        }
    }
    if (k.baseline.effect_log)
        finite(*k.baseline.low_log, "baseline");
}

} // namespace

TEST(Blocks, WithOnePairABlockAreTheHeadline)
{
    const Analysis analysis = analyse(aDay("ABABABA", 1), {});
    ASSERT_TRUE(analysis.headline && analysis.companions.blocks);
    EXPECT_NEAR(analysis.companions.blocks->effect_log, analysis.headline->effect_log, 1e-14);
    EXPECT_NEAR(analysis.companions.blocks->low_log, analysis.headline->low_log, 1e-13);
    EXPECT_EQ(analysis.companions.blocks->df, analysis.headline->df);
}

TEST(Runs, UseWhatPairingLeavesAlone)
{
    StudyBuilder builder;
    const Study even = aDay("ABA", 3, 0.01);
    for (const core::Run& run : even.runs)
        builder.add(run);
    builder.add(
        aDrivenRun().a().out().at_min(400).using_l(10.1)); // no return run within half an hour
    const Analysis analysis = analyse(builder.build(), {});
    EXPECT_EQ(analysis.unpaired.size(), 1U);
    ASSERT_TRUE(analysis.companions.runs);
    EXPECT_EQ(analysis.companions.runs->df, 19.0 - 4.0);
    EXPECT_EQ(companionsIn(even).runs->df, 18.0 - 4.0);
    EXPECT_EQ(companionsIn(aDay("AB", 3)).runs->df, 12.0 - 3.0);
}

TEST(Settings, SplitTheDeviceByWhatWasVaried)
{
    StudyBuilder builder;
    const auto pair = [&](const char* configuration, const char* setting, double minute, double l,
                          const char* other = nullptr) {
        builder.add(aDrivenRun()
                        .configuration(configuration)
                        .out()
                        .at_min(minute)
                        .setting(setting)
                        .using_l(l));
        builder.add(aDrivenRun()
                        .configuration(configuration)
                        .back()
                        .at_min(minute + 7)
                        .setting(other ? other : setting)
                        .using_l(l));
    };
    pair("A", "", 0, 8.00);
    pair("A", "", 15, 8.05);
    pair("B", "18", 45, 7.90);
    pair("B", "18.0", 60, 7.92); // the same number
    pair("B", "22", 75, 7.70);
    pair("B", "22", 90, 7.75);
    pair("B", "", 105, 7.99); // a setting of its own, one pair: left out
    pair("B", "18", 120, 7.0, "22");
    pair("A", "", 150, 8.02);
    pair("A", "", 165, 8.03);
    const Analysis analysis = analyse(builder.build(), {});
    ASSERT_EQ(analysis.companions.settings.size(), 2U);
    const SettingEffect& eighteen = analysis.companions.settings[0];
    const SettingEffect& twentyTwo = analysis.companions.settings[1];
    EXPECT_EQ(eighteen.setting, "18");
    EXPECT_EQ(eighteen.pairs, 2);
    EXPECT_EQ(twentyTwo.pairs, 2);
    EXPECT_LT(twentyTwo.effect_log, eighteen.effect_log);
    // Eight pairs, four terms. The shared interval is for two settings.
    const double plain = eighteen.high_log - eighteen.effect_log;
    const double shared = eighteen.high_bonferroni_log - eighteen.effect_log;
    EXPECT_NEAR(shared / plain, tQuantile(1 - 0.0125, 4.0) / tQuantile(0.975, 4.0), 1e-12);
    // The mixed pair, 7.0, is in the headline and must not be here.
    EXPECT_NEAR(eighteen.effect_log, std::log(7.91 / 8.025), 2e-3);
}

TEST(Settings, NeedTwoWithTwoPairs)
{
    EXPECT_TRUE(companionsIn(aDay("ABA", 4)).settings.empty()); // one, the blank one
    Study study = aDay("ABA", 2);
    study.runs[4].setting = study.runs[5].setting = "5"; // the B pairs: 5 and 6
    study.runs[6].setting = study.runs[7].setting = "6";
    EXPECT_TRUE(companionsIn(study).settings.empty());
}

TEST(Companions, SwappingBaselineAndDeviceFlipsTheSign)
{
    const Study study = aDay("ABABA", 3, 0.012);
    AnalysisOptions swapped;
    swapped.baseline = "B";
    const Companions there = companionsIn(study), back = companionsIn(study, swapped);
    for (const auto& [a, b] : {std::pair{there.runs, back.runs}, {there.blocks, back.blocks}}) {
        ASSERT_TRUE(a && b);
        EXPECT_NEAR(a->effect_log, -b->effect_log, 1e-14);
        EXPECT_NEAR(a->low_log, -b->high_log, 1e-13);
        EXPECT_NEAR(a->p, b->p, 1e-12);
    }
    EXPECT_NEAR(there.correlated->effect_log, -back.correlated->effect_log, 1e-13);
    EXPECT_NEAR(there.correlated->low_log, -back.correlated->high_log, 1e-12);
    EXPECT_EQ(there.labels->p, back.labels->p);
    // bracket is not symmetric: it has one B block between A blocks less.
    EXPECT_NEAR(there.bracket->effect_log, -back.bracket->effect_log, 0.02);
}

TEST(Companions, ACommonFactorTheClockAndTheUnitChangeNothing)
{
    const Study study = aDay("ABABA", 3, 0.012);
    const Companions plain = companionsIn(study);
    const Study dearer = changed(study, [](core::Run& run) { scale(run, 3.7); });
    const Study later = changed(study, [](core::Run& run) { run.start.us += 7'200'000'000; });
    const Study gallons = changed(study, [](core::Run& run) {
        run.consumption = Consumption{kLPer100kmTimesMpgUs / run.consumption->value,
                                      ConsumptionUnit::mpgUs, 2, false};
    });
    for (const Study& other : {dearer, later, gallons}) {
        const Companions same = companionsIn(other);
        EXPECT_NEAR(same.bracket->effect_log, plain.bracket->effect_log, 1e-13);
        EXPECT_NEAR(same.bracket->high_log, plain.bracket->high_log, 1e-13);
        EXPECT_NEAR(same.runs->high_log, plain.runs->high_log, 1e-13);
        EXPECT_NEAR(same.blocks->high_log, plain.blocks->high_log, 1e-12);
        EXPECT_NEAR(same.correlated->high_log, plain.correlated->high_log, 1e-12);
        EXPECT_EQ(same.labels->p, plain.labels->p);
    }
}

TEST(Companions, AStraightDriftLeavesAClosedDesignAsItIs)
{
    // Both runs of a pair share the factor of their pair time, so that it is straight in the pairs.
    const auto drifting = [](double log_per_h) {
        StudyBuilder builder;
        const Study day = aDay("ABABA", 3, 0.012);
        for (std::size_t i = 0; i < day.runs.size(); i += 2)
            for (std::size_t k = i; k < i + 2; ++k) {
                core::Run run = day.runs[k];
                const double hours =
                    static_cast<double>(day.runs[i].start.us + day.runs[i + 1].start.us) / 2 /
                    3.6e9;
                scale(run, std::exp(log_per_h * hours));
                builder.add(run);
            }
        return companionsIn(builder.build());
    };
    const Companions still = drifting(0.0), warm = drifting(0.02);
    EXPECT_NEAR(still.bracket->effect_log, warm.bracket->effect_log, 1e-13);
    EXPECT_NEAR(still.bracket->low_log, warm.bracket->low_log, 1e-12);
    EXPECT_NEAR(still.blocks->effect_log, warm.blocks->effect_log, 1e-13);
    EXPECT_NEAR(still.correlated->effect_log, warm.correlated->effect_log, 1e-12);
    EXPECT_EQ(still.labels->p, warm.labels->p);
}

TEST(Companions, OddStudiesGiveNumbersOrNothing)
{
    expectSane(analyse(aDay("ABA", 1), {}), "one pair a block");
    expectSane(analyse(aDay("AB", 2), {}), "two blocks of two");
    expectSane(analyse(aDay("A", 4), {}), "one block");
    expectSane(analyse(aDay("ABA", 3, 0.0, 0.0), {}), "all alike");
    expectSane(analyse(aDay("ABA", 3, 0.5, 0.0), {}), "alike but for the device");
    expectSane(analyse(Study{}, {}), "no runs");
    Study outlier = aDay("ABA", 3, 0.0, 0.0);
    outlier.runs[3].consumption->value = 1e6;
    const Analysis gross = analyse(outlier, {});
    expectSane(gross, "one enormous reading");
    ASSERT_TRUE(gross.headline);
    EXPECT_EQ(gross.checks.outlier.state, CheckState::fails);
    EXPECT_EQ(gross.checks.outlier.pair, 2);
    Study sameTime = aDay("ABA", 3);
    for (core::Run& run : sameTime.runs)
        run.start.us = 0;
    expectSane(analyse(sameTime, {}), "all at one time");
}

TEST(Companions, RandomStudiesGiveNumbersOrNothing)
{
    std::mt19937_64 random(7);
    const auto below = [&](unsigned n) { return static_cast<unsigned>(random() % n); };
    int verdicts = 0;
    for (int round = 0; round < 1500; ++round) {
        StudyBuilder builder;
        double minute = 0.0;
        const double step = below(2) == 0 ? 0.1 : 0.01; // what the display shows
        for (unsigned block = 0, blocks = 1 + below(7); block < blocks; ++block) {
            if (below(6) == 0)
                minute += 24 * 60;
            for (unsigned pair = 0, pairs = 1 + below(3); pair < pairs; ++pair) {
                for (const bool out : {true, false}) {
                    const double noise = static_cast<double>(below(7)) * step;
                    bothways::tests::DrivenRun run = aDrivenRun();
                    run.configuration(block % 2 == 0 ? "A" : "B").at_min(minute).using_l(8 + noise);
                    out ? run.out() : run.back();
                    if (below(4) == 0)
                        run.setting(below(2) == 0 ? "18" : "22");
                    if (below(12) == 0)
                        run.discarded();
                    builder.add(run);
                    minute += 5 + below(30);
                }
            }
            minute += 20;
        }
        AnalysisOptions options;
        options.confidence = below(2) == 0 ? 0.95 : 0.8;
        const Analysis analysis = analyse(builder.build(), options);
        verdicts += analysis.headline ? 1 : 0;
        expectSane(analysis, "round " + std::to_string(round));
        if (::testing::Test::HasFailure())
            return;
    }
    EXPECT_GT(verdicts, 300);
}
