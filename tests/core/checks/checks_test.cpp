// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/checks/checks.h"

#include "core/answer/analyse.h"
#include "core/checks/air.h"
#include "core/effect/effect_model.h"
#include "core/effect/headline.h"
#include "core/statistics/distributions.h"
#include "core/study/units.h"
#include "tests/support/study_builder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>

using namespace bothways;
using namespace bothways::core;
using bothways::tests::aDay;
using bothways::tests::StudyBuilder;

namespace {

Checks checksIn(const Study& study)
{
    const Analysis analysis = analyse(study, {});
    EXPECT_TRUE(analysis.headline);
    return analysis.checks;
}

/// Changes each pair of runs; `device` says which configuration it is in.
Study changePairs(Study study,
                  const std::function<void(core::Run& out, core::Run& back, double hours)>& change)
{
    for (std::size_t i = 0; i + 1 < study.runs.size(); i += 2)
        change(study.runs[i], study.runs[i + 1],
               static_cast<double>(study.runs[i].start.us) / 3.6e9);
    return study;
}

void stretch(core::Run& run, double log)
{
    run.consumption->value *= std::exp(log);
}

Study withWeather(Study study, double a_c, double b_c)
{
    for (core::Run& run : study.runs) {
        run.temperature_c = run.configuration == "A" ? a_c : b_c;
        run.pressure_hpa = 1000.0;
        run.humidity_pct = 50.0;
    }
    return study;
}

} // namespace

TEST(Checks, CurveIsAnFTestBetweenTwoFits)
{
    const Study study = aDay("ABABA", 3, 0.01);
    const AnalysisOptions options;
    const PreparedStudy prepared = prepareStudy(study, options);
    const auto pairs = pairObservations(prepared);
    Columns columns = effectColumns(pairs, prepared.sloped());
    const LeastSquaresFit plain = leastSquares(columns, responses(pairs));
    const auto curve = columns.add();
    for (std::size_t i = 0; i < pairs.size(); ++i)
        curve[i] = std::pow(pairs[i].t_h - 1.5, 2); // any origin: the line is in the model
    const LeastSquaresFit curved = leastSquares(columns, responses(pairs));
    const double f = (plain.rss - curved.rss) / (curved.rss / curved.df);
    const Check check = checksIn(study).curve;
    EXPECT_NEAR(*check.statistic, f, 1e-8 * f);
    EXPECT_NEAR(*check.p, fUpper(f, 1.0, curved.df), 1e-9);
}

TEST(Checks, CurveSeesABendAndIsSilentInAnOpenDesign)
{
    const auto bend = [](core::Run& out, core::Run& back, double hours) {
        stretch(out, 0.03 * hours * hours);
        stretch(back, 0.03 * hours * hours);
    };
    EXPECT_EQ(checksIn(changePairs(aDay("ABABA", 4), bend)).curve.state, CheckState::fails);
    EXPECT_EQ(checksIn(aDay("AB", 4)).curve.state, CheckState::notComputed);
}

TEST(Checks, DirectionSeesTheWindTurn)
{
    const auto wind = [](double strength) {
        return [strength](core::Run& out, core::Run& back, double hours) {
            stretch(out, strength * (hours - 1.5));
            stretch(back, -strength * (hours - 1.5));
        };
    };
    const DirectionCheck turned = checksIn(changePairs(aDay("ABA", 4), wind(0.03))).direction;
    EXPECT_EQ(turned.state, CheckState::fails);
    EXPECT_NEAR(*turned.slope_per_h, 0.06, 0.01);
    EXPECT_EQ(*turned.df, 9.0); // 12 pairs, an intercept, the device, the slope
    EXPECT_EQ(checksIn(aDay("ABA", 4)).direction.state, CheckState::holds);
    // A wind that stays changes both directions once for all.
    const Study steady = changePairs(aDay("ABA", 4), [](core::Run& out, core::Run& back, double) {
        stretch(out, 0.05);
        stretch(back, -0.05);
    });
    EXPECT_NEAR(*checksIn(steady).direction.statistic,
                *checksIn(aDay("ABA", 4)).direction.statistic, 1e-9);
}

TEST(Checks, SpreadNeedsTwoDegreesOfFreedomInEachConfigurationAlone)
{
    EXPECT_EQ(checksIn(aDay("ABA", 3)).spread.state, CheckState::notComputed); // 3 of B, a slope
    EXPECT_NE(checksIn(aDay("ABA", 4)).spread.state, CheckState::notComputed);
    EXPECT_NE(checksIn(aDay("AB", 3)).spread.state, CheckState::notComputed); // no slope
}

TEST(Checks, SpreadIsTheRatioOfTwoFits)
{
    const Study study = aDay("AB", 5, 0.0, 0.01);
    const Analysis analysis = analyse(study, {});
    double sum[2] = {}, square[2] = {};
    for (const Pair& pair : analysis.pairs)
        sum[pair.device] += pair.log / 5.0;
    for (const Pair& pair : analysis.pairs)
        square[pair.device] += std::pow(pair.log - sum[pair.device], 2) / 4.0;
    const double f = square[1] / square[0];
    EXPECT_NEAR(*analysis.checks.spread.statistic, f, 1e-9 * f);
    EXPECT_NEAR(*analysis.checks.spread.p,
                2.0 * std::min(fUpper(f, 4.0, 4.0), 1.0 - fUpper(f, 4.0, 4.0)), 1e-9);
}

TEST(Checks, NormalIsNotAskedWhereItCouldNotFail)
{
    EXPECT_EQ(checksIn(aDay("ABA", 2)).normal.state, CheckState::notComputed); // df 3
    EXPECT_NE(checksIn(aDay("ABA", 3)).normal.state, CheckState::notComputed);
}

TEST(Checks, WaysSeesADeviceThatWorksOneWayOnly)
{
    Study study = aDay("ABA", 4, 0.0, 0.002);
    for (core::Run& run : study.runs)
        if (run.configuration == "B" && run.direction == "out")
            stretch(run, -0.05);
    const WaysCheck check = checksIn(study).ways;
    EXPECT_EQ(check.state, CheckState::fails);
    EXPECT_NEAR(*check.effect_log, -0.05, 0.01);
    EXPECT_EQ(*check.df, 9.0);
    EXPECT_EQ(checksIn(aDay("ABA", 4, 0.02)).ways.state, CheckState::holds);
    // The wind that turns is not taken for it, in a closed design.
    const auto turn = [](core::Run& out, core::Run& back, double hours) {
        stretch(out, 0.03 * hours);
        stretch(back, -0.03 * hours);
    };
    EXPECT_EQ(checksIn(changePairs(aDay("ABA", 4), turn)).ways.state, CheckState::holds);
}

TEST(Checks, SettlingSeesAColdFirstPairOfEachBlock)
{
    Study study = aDay("ABABA", 4, 0.0, 0.002);
    for (std::size_t i = 0; i < study.runs.size(); ++i)
        if (i % 8 < 2) // 4 pairs a block
            stretch(study.runs[i], 0.02);
    const SettlingCheck check = checksIn(study).settling;
    EXPECT_EQ(check.state, CheckState::fails);
    EXPECT_NEAR(*check.effect_log, 0.02, 0.004);
    EXPECT_NE(checksIn(aDay("ABABA", 4)).settling.state, CheckState::fails);
    // Blocks of one pair have no other to compare with.
    EXPECT_EQ(checksIn(aDay("ABABABA", 1)).settling.state, CheckState::notComputed);
}

TEST(Checks, DaysIsAnFTestBetweenTwoFits)
{
    Study study = aDay("ABA", 3, -0.05, 0.003, 1);
    for (core::Run run : aDay("ABA", 3, 0.0, 0.003, 2).runs) {
        run.start.us += std::int64_t{24} * 3600 * 1'000'000;
        run.number += 100;
        study.runs.push_back(run);
    }
    const PreparedStudy prepared = prepareStudy(study, {});
    const auto pairs = pairObservations(prepared);
    Columns columns = effectColumns(pairs, true);
    const LeastSquaresFit one = leastSquares(columns, responses(pairs));
    const auto second = columns.add();
    for (std::size_t i = 0; i < pairs.size(); ++i)
        second[i] = pairs[i].device && pairs[i].day == 1 ? 1.0 : 0.0;
    const LeastSquaresFit each = leastSquares(columns, responses(pairs));
    const double f = (one.rss - each.rss) / (each.rss / each.df);
    const Analysis analysis = analyse(study, {});
    EXPECT_NEAR(*analysis.checks.days.statistic, f, 1e-8 * f);
    EXPECT_EQ(analysis.checks.days.df1, 1.0);
    EXPECT_EQ(analysis.checks.days.df2, each.df);
    EXPECT_EQ(analysis.checks.days.state, CheckState::fails);
    ASSERT_EQ(analysis.companions.days.size(), 2U);
    EXPECT_NEAR(analysis.companions.days[0].effect_log, each.coefficients[0], 1e-12);
    EXPECT_NEAR(analysis.companions.days[1].effect_log,
                each.coefficients[0] + each.coefficients.back(), 1e-12);
    EXPECT_EQ(checksIn(aDay("ABA", 4)).days.state, CheckState::notComputed);
}

TEST(Checks, BaselineInformsAndNeverFails)
{
    const auto drift = [](core::Run& out, core::Run& back, double hours) {
        stretch(out, 0.05 * hours);
        stretch(back, 0.05 * hours);
    };
    const BaselineCheck moved = checksIn(changePairs(aDay("ABA", 4), drift)).baseline;
    EXPECT_EQ(moved.state, CheckState::note);
    EXPECT_LT(*moved.p, 0.01);
    EXPECT_GT(*moved.effect_log, 0.05);
    EXPECT_EQ(*moved.df, 8.0); // 3 blocks of 4 pairs, one slope
    EXPECT_EQ(checksIn(aDay("AB", 4)).baseline.state, CheckState::notComputed);
}

TEST(Checks, ResolutionNotesADisplayTooCoarseForTheNoise)
{
    // Steps of 0.1 in 10: rounding adds 1/sqrt(24) per cent to a pair.
    Study coarse = aDay("ABA", 3, 0.0, 0.0005);
    for (core::Run& run : coarse.runs)
        run.consumption->decimals = 1;
    const ResolutionCheck check = checksIn(coarse).resolution;
    EXPECT_NEAR(*check.step_pct, 1.0, 1e-3);
    EXPECT_NEAR(*check.rounding_pct, 1.0 / std::sqrt(24.0), 1e-3);
    // s against what rounding alone gives: fails below 1.5 times, a note below 2.
    const double s = analyse(coarse, {}).headline->s;
    EXPECT_LT(100.0 * s, 1.5 * *check.rounding_pct);
    EXPECT_EQ(check.state, CheckState::fails);
    EXPECT_EQ(checksIn(aDay("ABA", 3, 0.0, 0.01)).resolution.state, CheckState::holds);
}

TEST(Checks, ResolutionNeedsOneDisplay)
{
    Study recorded = aDay("ABA", 3);
    for (core::Run& run : recorded.runs)
        run.consumption->from_trace = true;
    EXPECT_EQ(checksIn(recorded).resolution.state, CheckState::notComputed);
    Study mixed = aDay("ABA", 3);
    mixed.runs[0].consumption =
        Consumption{toLPer100km(10.0, ConsumptionUnit::mpgUs), ConsumptionUnit::mpgUs, 1, false};
    EXPECT_EQ(checksIn(mixed).resolution.state, CheckState::notComputed);
}

TEST(Checks, AirWeighsDensityByItsShareOfConsumption)
{
    Study study = withWeather(aDay("ABA", 4, 0.0, 0.002), 16.0, 22.0);
    study.properties.aero_share = 0.5;
    const AirCheck check = checksIn(study).air;
    const double a = airDensity_kg_m3({16.0, 1000.0, 50.0}),
                 b = airDensity_kg_m3({22.0, 1000.0, 50.0});
    ASSERT_TRUE(check.density_pct);
    EXPECT_NEAR(*check.density_pct, 50.0 * (b - a) / a, 1e-12);
    EXPECT_FALSE(check.wind_pct);
    EXPECT_FALSE(check.outside_range);
    EXPECT_EQ(check.state, CheckState::fails); // one per cent against intervals of some 0.2
    EXPECT_EQ(checksIn(withWeather(aDay("ABA", 4), 16.0, 16.0)).air.state, CheckState::holds);
    EXPECT_TRUE(checksIn(withWeather(aDay("ABA", 4), 5.0, 16.0)).air.outside_range);
}

TEST(Checks, AirWeighsTheWindAlongTheStretch)
{
    Study study = aDay("ABA", 4, 0.0, 0.002);
    study.properties.stretch_bearing_deg = 70.0;
    for (core::Run& run : study.runs) {
        run.speed_kmh = 90.0; // 25 m/s
        run.wind_ms = run.configuration == "A" ? 1.0 : 5.0;
        run.wind_from_deg = run.configuration == "A" ? 250.0 : 130.0; // along; 60 degrees off
    }
    const AirCheck check = checksIn(study).air;
    ASSERT_TRUE(check.wind_pct);
    EXPECT_NEAR(*check.wind_pct, 60.0 * (2.5 * 2.5 - 1.0) / 625.0, 1e-12);
    EXPECT_EQ(check.state, CheckState::fails);
    study.properties.stretch_bearing_deg.reset();
    EXPECT_EQ(checksIn(study).air.state, CheckState::notComputed);
}

TEST(Checks, AirNeedsBothConfigurationsAndNoControlVehicle)
{
    Study half = withWeather(aDay("ABA", 3), 10.0, 20.0);
    for (core::Run& run : half.runs)
        if (run.configuration == "B")
            run.humidity_pct.reset();
    EXPECT_EQ(checksIn(half).air.state, CheckState::notComputed);
    Study control = withWeather(aDay("ABA", 3), 10.0, 20.0);
    for (core::Run& run : control.runs)
        run.control = 9.0;
    EXPECT_EQ(checksIn(control).air.state, CheckState::notComputed);
}

TEST(Checks, AFailingCheckQualifiesTheVerdict)
{
    const Analysis analysis = analyse(withWeather(aDay("ABA", 4, 0.0, 0.002), 10.0, 25.0), {});
    EXPECT_EQ(analysis.checks.air.state, CheckState::fails);
    EXPECT_NE(std::find(analysis.verdict.qualifiers.begin(), analysis.verdict.qualifiers.end(),
                        Qualifier::assumptions),
              analysis.verdict.qualifiers.end());
}
