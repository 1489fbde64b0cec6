// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/plan.h"

#include "core/effect/effect_model.h"
#include "core/statistics/distributions.h"
#include "core/statistics/least_squares.h"
#include "core/study/units.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string>

using namespace bothways::core;

namespace {

PlanOptions options(const char* sequence, int pairs, double switch_min = 0.0)
{
    PlanOptions plan;
    plan.sequence = sequence;
    plan.pairs_per_block = pairs;
    plan.switch_min = switch_min;
    return plan;
}

Plan planOf(const PlanOptions& given)
{
    Result<Plan> plan = makePlan(given);
    EXPECT_TRUE(plan) << (plan ? "" : plan.error().message.english());
    return plan ? plan.value() : Plan{};
}

/// E(s)/sigma for `df` degrees of freedom.
double c4(double df)
{
    return std::sqrt(2.0 / df) * std::exp(std::lgamma((df + 1.0) / 2.0) - std::lgamma(df / 2.0));
}

/// v by least squares over the slots one by one.
/// v by least squares over the slots one by one, with a slope a day where any day has two switches
/// (or `sloped` says so), and with a bend common to all days. Infinite where it cannot be told.
double sqrtVBySlots(std::string_view sequence, int k, double pair_min, double switch_min,
                    bool sloped = false, bool bent = false)
{
    std::vector<Observation> slots;
    double minute = 0.0;
    int day = 0, switches = 0;
    char before = 0;
    for (const char letter : sequence) {
        if (letter == '/') {
            ++day;
            switches = 0;
            before = 0;
            minute = 0.0;
            continue;
        }
        if (before != 0 && letter != before) {
            minute += switch_min;
            ++switches;
        }
        sloped = sloped || switches >= 2;
        before = letter;
        for (int i = 0; i < k; ++i, minute += pair_min)
            slots.push_back({(minute + pair_min / 2.0) / 60.0, day, letter == 'B', 0.0});
    }
    Columns columns = effectColumns(slots, sloped);
    if (bent) {
        const std::vector<double> times = centredTimes(slots);
        std::ranges::transform(times, columns.add().begin(), [](double t) { return t * t; });
    }
    const auto fit = leastSquares(columns, responses(slots));
    return fit.estimable[kEffectColumn] ? std::sqrt(fit.cov(kEffectColumn, kEffectColumn))
                                        : std::numeric_limits<double>::infinity();
}

void expectSame(double actual, double expected, const std::string& what)
{
    if (std::isinf(expected)) {
        EXPECT_TRUE(std::isinf(actual)) << what;
        return;
    }
    EXPECT_NEAR(actual, expected, 1e-10 * expected) << what;
}

} // namespace

// Method, section 12: half-widths simulated with 40,000 repeats or more, 1 % noise a pair, 15
// minutes a pair, no time for switches. They are means over s, so E(s) = c4 sigma; the third
// decimal is rounded and simulated.
TEST(Plan, HalfWidthsAgreeWithSimulatedOnes)
{
    const struct {
        const char* sequence;
        int pairs;
        double half;
    } kSimulated[] = {{"ABA", 2, 2.539},   {"ABA", 4, 1.347},   {"ABA", 8, 0.890},
                      {"ABBA", 2, 1.730},  {"ABBA", 4, 1.060},  {"ABBA", 8, 0.717},
                      {"ABABA", 2, 1.473}, {"ABABA", 4, 0.949}, {"ABABA", 8, 0.650}};
    for (const auto& s : kSimulated) {
        const Plan plan = planOf(options(s.sequence, s.pairs));
        EXPECT_NEAR(100.0 * plan.half_width_log * c4(plan.df), s.half, 0.0015)
            << s.sequence << ' ' << s.pairs;
    }
}

// Method, section 12: "prints 1.395 % for A/B/A with 4 and no switch time".
TEST(Plan, AbaWithFourPairsHasTheHalfWidthOfTheMethod)
{
    const Plan plan = planOf(options("ABA", 4));
    EXPECT_NEAR(pctFromLog(plan.half_width_log), 1.395, 0.0005);
    EXPECT_EQ(plan.pairs, 12);
    EXPECT_EQ(plan.df, 9.0);
    EXPECT_NEAR(plan.sqrt_v, std::sqrt(0.375), 1e-14); // balanced: v = 1/8 + 1/4, no loss to drift
    EXPECT_DOUBLE_EQ(plan.road_hours, 3.0);
    EXPECT_DOUBLE_EQ(plan.distance_km, 2.0 * 5.0 * 12.0);
}

TEST(Plan, VarianceIsThatOfLeastSquaresOverTheSlots)
{
    for (const char* sequence : {"AB", "BA", "ABA", "ABAB", "ABBA", "AABBB", "ABABA", "BABAAB",
                                 "ABA/ABA", "ABA/BAB", "ABA/AB", "AB/BA", "A/ABA"})
        for (const int k : {1, 2, 5})
            for (const double switch_min : {0.0, 20.0})
                expectSame(plannedDesign(sequence, k, 15.0, switch_min).sqrt_v,
                           sqrtVBySlots(sequence, k, 15.0, switch_min),
                           fmt::format("{} {} {}", sequence, k, switch_min));
}

TEST(Plan, TheOtherWidthsAreThoseOfLeastSquaresOverTheSlots)
{
    for (const char* sequence : {"ABA", "ABAB", "ABBA", "AABBA", "ABABA", "BABAAB", "ABA/ABA",
                                 "ABA/BAB", "ABA/AB", "A/ABA"})
        for (const int k : {2, 5}) {
            const auto bent = curvedDesign(sequence, k, 15.0, 20.0);
            ASSERT_TRUE(bent) << sequence;
            expectSame(bent->sqrt_v, sqrtVBySlots(sequence, k, 15.0, 20.0, true, true),
                       fmt::format("curved {} {}", sequence, k));
            EXPECT_EQ(bent->df, plannedDesign(sequence, k, 15.0, 20.0).df - 1);
        }
    for (const char* sequence : {"AB", "ABA", "AB/BA", "ABBA"})
        expectSame(slopedDesign(sequence, 3, 15.0, 20.0).sqrt_v,
                   sqrtVBySlots(sequence, 3, 15.0, 20.0, true), sequence);
    EXPECT_FALSE(curvedDesign("AB", 4, 15.0, 20.0)); // open
    EXPECT_FALSE(curvedDesign("AB/BA", 4, 15.0, 20.0));
    EXPECT_FALSE(curvedDesign("ABA", 1, 15.0, 20.0)); // the bend is the device
}

TEST(Plan, AbbaPaysForABendAndLookingCostsWidth)
{
    const Plan abba = planOf(options("ABBA", 4)), aba = planOf(options("ABA", 4));
    ASSERT_TRUE(abba.curved_half_width_log && aba.curved_half_width_log);
    EXPECT_LT(abba.half_width_log, aba.half_width_log);
    EXPECT_GT(*abba.curved_half_width_log, 1.85 * abba.half_width_log);
    ASSERT_TRUE(aba.any_look_half_width_log);
    EXPECT_NEAR(*aba.any_look_half_width_log / aba.half_width_log, 1.65, 0.15);
    EXPECT_FALSE(planOf(options("AB", 4)).curved_half_width_log);
    EXPECT_FALSE(planOf(options("AB", 2)).any_look_half_width_log);
}

TEST(Plan, DegreesOfFreedomCountTheDaysOwnTerms)
{
    EXPECT_EQ(plannedDesign("AB", 4, 15, 20).df, 8 - 2);
    EXPECT_EQ(plannedDesign("ABA", 4, 15, 20).df, 12 - 3);
    EXPECT_EQ(plannedDesign("ABA/ABA", 4, 15, 20).df, 24 - 5);
    EXPECT_EQ(plannedDesign("ABA/BA", 4, 15, 20).df, 20 - 5); // closed: every day has a slope
    EXPECT_EQ(plannedDesign("AB/BA", 4, 15, 20).df, 16 - 3);
    EXPECT_EQ(plannedDesign("A/ABA", 1, 15, 20).df, 4 - 4); // one pair has no slope
}

TEST(Plan, AnEffectThatEachDayHasWhollyIsNotToBeHad)
{
    EXPECT_TRUE(std::isinf(plannedDesign("A/B", 4, 15, 20).sqrt_v));
    EXPECT_FALSE(makePlan(options("A/B", 4)));
}

TEST(Plan, RoadTimeHasASwitchOnlyBetweenUnequalNeighbours)
{
    EXPECT_DOUBLE_EQ(planOf(options("ABA", 4, 20)).road_hours, 3.0 + 2.0 / 3.0);
    EXPECT_DOUBLE_EQ(planOf(options("ABBA", 4, 20)).road_hours, 4.0 + 2.0 / 3.0);
}

// R 4.2.2: power.t.test(..., strict = TRUE), 12 digits; paired, n pairs: ncp = delta/(sd/sqrt(n)).
TEST(Plan, PowerAgreesWithR)
{
    const auto paired = [](double n, double delta, double sd) {
        return powerToSee(delta, sd, 1.0 / std::sqrt(n), n - 1.0, 0.95);
    };
    EXPECT_NEAR(paired(10, 1.0, 1.0), 0.803096856633, 1e-11);
    EXPECT_NEAR(paired(6, 1.5, 1.2), 0.689273116367, 1e-11);
    EXPECT_NEAR(paired(5, 2.0, 1.0), 0.908884868101, 1e-11);
}

// R 4.2.2: power.t.test(n = 15, power = .8, sd = 1, type = "paired", strict = TRUE, tol = 1e-14),
// and uniroot(function(d) 1 - pt(q, df, d/g) + pt(-q, df, d/g) - .8, tol = 1e-14) with g and df as
// below. R's pt is good to 1e-12.
TEST(Plan, DetectableEffectAgreesWithR)
{
    EXPECT_NEAR(detectableEffect_log(1.0, 1.0 / std::sqrt(15.0), 14.0), 0.77802256978544, 1e-10);
    EXPECT_NEAR(detectableEffect_log(1.0, 1.0 / std::sqrt(5.0), 4.0), 1.68199696595358, 1e-10);
    EXPECT_NEAR(detectableEffect_log(1.0, std::sqrt(0.5), 6.0), 2.38075421327048, 1e-10);
    EXPECT_NEAR(detectableEffect_log(1.0, 1.0, 2.0), 5.65348926619228, 1e-10);
}

TEST(Plan, DetectableEffectHasExactlyTheAskedPower)
{
    for (const double df : {2.0, 3.0, 9.0, 37.0, 500.0})
        for (const double power : {0.3, 0.5, 0.8, 0.99})
            for (const double confidence : {0.8, 0.95, 0.999}) {
                const double effect = detectableEffect_log(0.013, 0.61, df, confidence, power);
                EXPECT_NEAR(powerToSee(effect, 0.013, 0.61, df, confidence), power, 1e-10)
                    << df << ' ' << power << ' ' << confidence;
            }
}

TEST(Plan, PowerIsTheLevelWithoutAnEffectAndSymmetric)
{
    EXPECT_NEAR(powerToSee(0.0, 0.01, 0.6, 9, 0.95), 0.05, 1e-14);
    EXPECT_DOUBLE_EQ(powerToSee(-0.01, 0.01, 0.6, 9, 0.95), powerToSee(0.01, 0.01, 0.6, 9, 0.95));
    EXPECT_NEAR(powerToSee(1e9, 0.01, 0.6, 9, 0.95), 1.0, 1e-15);
    EXPECT_EQ(detectableEffect_log(0.01, 0.6, 9, 0.80, 0.1), 0.0); // the level alone has that
    EXPECT_EQ(detectableEffect_log(0.01, 0.6, 0, 0.95), std::numeric_limits<double>::infinity());
}

TEST(Plan, TheInverseIsTheFewestPairsThatSuffice)
{
    for (const char* sequence : {"AB", "ABA", "ABBA", "ABABA"})
        for (const double want_pct : {3.0, 1.0, 0.5, 0.2}) {
            PlanOptions given = options(sequence, 4, 20);
            const Result<Plan> found = planFor(logFromPct(want_pct), given);
            ASSERT_TRUE(found) << sequence << ' ' << want_pct;
            EXPECT_LE(pctFromLog(found.value().detectable_log), want_pct * (1 + 1e-9));
            given.pairs_per_block = found.value().pairs_per_block - 1;
            if (const Result<Plan> fewer = makePlan(given)) {
                EXPECT_GT(pctFromLog(fewer.value().detectable_log), want_pct);
            }
        }
}

TEST(Plan, TheInverseLosesNothingByNotTryingEveryNumber)
{
    // It leaves out numbers of pairs that cannot do; here every one is tried, for all sequences of
    // up to five blocks and some of several days.
    std::vector<std::string> sequences = {"AB/BA", "ABA/BAB", "AAB/A/ABBA", "AABBB"};
    for (unsigned length = 2; length <= 5; ++length)
        for (unsigned bits = 1; bits < 1U << (length - 1); ++bits) {
            std::string sequence = "A";
            for (unsigned k = 0; k + 1 < length; ++k)
                sequence += (bits >> k & 1U) != 0 ? 'B' : 'A';
            sequences.push_back(sequence);
        }
    for (const std::string& sequence : sequences)
        for (const double want_pct : {10.0, 2.0, 0.5, 0.2, 0.1, 0.08, 0.05, 0.01}) {
            PlanOptions given;
            given.sequence = sequence;
            const double want_log = logFromPct(want_pct);
            int fewest = 0;
            for (int k = 1; k <= kMostPairsPerBlock && fewest == 0; ++k) {
                const PlannedDesign design =
                    plannedDesign(sequence, k, given.pair_min, given.switch_min);
                if (design.df >= 2 && powerToSee(want_log, given.s, design.sqrt_v, design.df,
                                                 given.confidence) >= given.power)
                    fewest = k;
            }
            const Result<Plan> found = planFor(want_log, given);
            EXPECT_EQ(found ? found.value().pairs_per_block : 0, fewest)
                << sequence << ' ' << want_pct << " %";
        }
}

TEST(Plan, TheInverseSaysWhenAThousandPairsWouldNotDo)
{
    const Result<Plan> plan = planFor(1e-6, options("ABA", 4));
    ASSERT_FALSE(plan);
    EXPECT_EQ(plan.error().code, ErrorCode::wrongUse);
    EXPECT_FALSE(pairsPerBlockToDetect("ABA", 0.01, 1e-6, 0.95));
    EXPECT_FALSE(planFor(0.0, options("ABA", 4)));
}

// R 4.2.2: qchisq(0.2, 6), 15 digits.
TEST(Plan, ShowsTheUpperLimitOfAMeasuredNoise)
{
    PlanOptions given = options("ABA", 4);
    EXPECT_FALSE(planOf(given).s_upper80);
    given.s_df = 6.0;
    const Plan plan = planOf(given);
    ASSERT_TRUE(plan.s_upper80);
    EXPECT_NEAR(*plan.s_upper80, 0.01 * std::sqrt(6.0 / 3.07008840528929), 1e-14);
    EXPECT_NEAR(*plan.half_width_upper80_log / plan.half_width_log, *plan.s_upper80 / 0.01, 1e-12);
    EXPECT_NEAR(*plan.detectable_upper80_log / plan.detectable_log, *plan.s_upper80 / 0.01, 1e-12);
}

TEST(Plan, RefusesWhatCannotBePlanned)
{
    const auto refused = [](auto change) {
        PlanOptions given;
        change(given);
        const Result<Plan> plan = makePlan(given);
        return !plan && plan.error().code == ErrorCode::wrongUse && !plan.error().message.empty();
    };
    const double nan = std::numeric_limits<double>::quiet_NaN();
    EXPECT_TRUE(refused([](PlanOptions& o) { o.sequence = ""; }));
    EXPECT_TRUE(refused([](PlanOptions& o) { o.sequence = "AAA"; }));
    EXPECT_TRUE(refused([](PlanOptions& o) { o.sequence = "ABC"; }));
    EXPECT_TRUE(refused([](PlanOptions& o) { o.sequence = std::string(2000, 'A') + "B"; }));
    EXPECT_TRUE(refused([](PlanOptions& o) { o.pairs_per_block = 0; }));
    EXPECT_TRUE(refused([](PlanOptions& o) { o.pairs_per_block = 1; })); // ABA: no df left
    EXPECT_TRUE(refused([](PlanOptions& o) { o.pairs_per_block = 2'000'000'000; }));
    EXPECT_TRUE(refused([](PlanOptions& o) { o.pair_min = 0.0; }));
    EXPECT_TRUE(refused([&](PlanOptions& o) { o.pair_min = nan; }));
    EXPECT_TRUE(refused([](PlanOptions& o) { o.switch_min = -1.0; }));
    EXPECT_TRUE(refused([](PlanOptions& o) { o.s = 0.0; }));
    EXPECT_TRUE(refused([&](PlanOptions& o) { o.s = nan; }));
    EXPECT_TRUE(refused([](PlanOptions& o) { o.confidence = 1.0; }));
    EXPECT_TRUE(refused([](PlanOptions& o) { o.power = 0.01; }));
    EXPECT_TRUE(refused([](PlanOptions& o) { o.stretch_km = -5.0; }));
    EXPECT_FALSE(refused([](PlanOptions& o) { o.sequence = "abba"; }));
}
