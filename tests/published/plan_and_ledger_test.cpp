// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/ledger.h"
#include "core/planning/plan.h"
#include "core/study/units.h"
#include "tests/published/published_data.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace bothways;
using core::LedgerOptions;
using core::Range;

namespace {

/// Rows of power_t_test.csv in which `asked` was computed.
struct PowerRow {
    int n; ///< pairs a group; where `n` was asked the whole number above it
    double delta, sd, level, power;
};

std::vector<PowerRow> rowsThatAsk(const std::string& asked)
{
    const published::Table table = published::readTable("power_t_test.csv");
    const auto numbers = [&](const char* name) { return published::asNumbers(table.at(name)); };
    const auto n = numbers("n"), delta = numbers("delta"), sd = numbers("sd"),
               level = numbers("level"), power = numbers("power");
    std::vector<PowerRow> rows;
    for (std::size_t i = 0; i < n.size(); ++i)
        if (table.at("asked")[i] == asked)
            rows.push_back(
                {static_cast<int>(std::ceil(n[i])), delta[i], sd[i], level[i], power[i]});
    return rows;
}

/// One switch and no term for the drift: the design that is a two-sample t test.
core::PlanOptions openPlan(const PowerRow& row)
{
    core::PlanOptions options;
    options.sequence = "AB";
    options.pairs_per_block = row.n;
    options.s = row.sd;
    options.confidence = 1.0 - row.level;
    options.power = row.power;
    return options;
}

core::Ledger ledgerOf(const LedgerOptions& options)
{
    const auto ledger = core::makeLedger(options);
    EXPECT_TRUE(ledger);
    return ledger ? ledger.value() : core::Ledger{};
}

} // namespace

// 12 digits were written; powers near 0.06 have 1e-13 of them, effects 1e-14: 1e-10 leaves room for
// R's own pt (1e-12) and its root finder.
TEST(PlanAndR, PowerOfAnOpenDesignIsThatOfTwoSamples)
{
    ASSERT_EQ(rowsThatAsk("power").size(), 6U);
    for (const PowerRow& row : rowsThatAsk("power")) {
        const core::PlannedDesign design = core::plannedDesign("AB", row.n, 15.0, 20.0);
        EXPECT_EQ(design.df, 2 * row.n - 2);
        EXPECT_NEAR(core::powerToSee(row.delta, row.sd, design.sqrt_v, design.df, 1.0 - row.level),
                    row.power, 1e-10)
            << row.n;
    }
}

TEST(PlanAndR, DetectableEffectOfAnOpenDesignIsThatOfTwoSamples)
{
    ASSERT_EQ(rowsThatAsk("delta").size(), 5U);
    for (const PowerRow& row : rowsThatAsk("delta")) {
        const auto plan = core::makePlan(openPlan(row));
        ASSERT_TRUE(plan);
        EXPECT_NEAR(plan.value().detectable_log / row.delta, 1.0, 1e-9) << row.n;
    }
}

TEST(PlanAndR, TheInverseGivesTheNextWholeNumberOfPairs)
{
    ASSERT_EQ(rowsThatAsk("n").size(), 4U);
    for (const PowerRow& row : rowsThatAsk("n")) {
        const auto plan = core::planFor(row.delta, openPlan(row));
        ASSERT_TRUE(plan);
        EXPECT_EQ(plan.value().pairs_per_block, row.n) << row.delta;
    }
}

// Common practice, no source: some hundred watts cannot be told from nothing in a handful of runs;
// about 600 W would be needed to be sure. So the output whose relief alone is what a short A/B/A
// detects lies between 400 and 1,200 W at 100 km/h and 8 L/100 km.
TEST(FactsOfTheTrade, SomeSixHundredWattsAreNeededToBeSure)
{
    core::PlanOptions day;
    day.sequence = "ABA";
    day.pairs_per_block = 2;
    day.s = 0.01;
    const auto plan = core::makePlan(day);
    ASSERT_TRUE(plan);
    LedgerOptions options; // 100 km/h, 8 L/100 km, petrol
    options.cost = false;
    const auto watts = core::wattsToSee(options, core::pctFromLog(plan.value().detectable_log));
    ASSERT_TRUE(watts);
    EXPECT_GT(*watts, 400.0);
    EXPECT_LT(*watts, 1200.0);
    // A hundred watts, at the most that the factors allow, are far below.
    options.output_w = 100.0;
    EXPECT_LT(ledgerOf(options).relief_l_per_100km.high / 8.0,
              std::expm1(plan.value().detectable_log) / 2.0);
}

// Common practice, no source: 200 W of electrical load are about 1 % of a car's motorway
// consumption.
TEST(FactsOfTheTrade, TwoHundredWattsAreAboutOnePerCent)
{
    LedgerOptions options;
    options.output_w = 200.0;
    options.cost = false;
    const core::Ledger ledger = ledgerOf(options);
    EXPECT_LT(ledger.net_pct.low, -1.0);
    EXPECT_GT(ledger.net_pct.high, -1.0);
}

// Commission Implementing Decision (EU) 2020/728, tables 2 and 3: consumption of effective power
// 0.264 L/kWh (petrol), 0.220 L/kWh (diesel), 2,330 and 2,640 g CO2 a litre. 100 W at the
// alternator's terminals then cost, by fuel = P/eta * V_Pe / v (elementary), L/100 km:
TEST(PublishedFactors, GiveTheFuelOfAHundredWatts)
{
    struct Row {
        double litresPerKwh, eta, speed_kmh, l_per_100km;
    };
    constexpr Row kRows[] = {{0.264, 0.67, 33.58, 0.11734}, {0.264, 0.67, 50.0, 0.07881},
                             {0.264, 0.67, 80.0, 0.04925},  {0.264, 0.67, 100.0, 0.03940},
                             {0.264, 0.67, 120.0, 0.03284}, {0.264, 0.55, 33.58, 0.14294},
                             {0.264, 0.55, 50.0, 0.09600},  {0.264, 0.55, 100.0, 0.04800},
                             {0.220, 0.67, 33.58, 0.09778}, {0.220, 0.67, 50.0, 0.06567},
                             {0.220, 0.67, 80.0, 0.04104},  {0.220, 0.67, 120.0, 0.02736}};
    for (const Row& row : kRows) {
        LedgerOptions options;
        options.output_w = 100.0;
        options.speed_kmh = row.speed_kmh;
        options.alternator = {row.eta, row.eta, row.eta};
        const double marginal = 3.6 / (row.litresPerKwh * options.heating_value_mj_per_l);
        options.marginal = {marginal, marginal, marginal};
        EXPECT_NEAR(ledgerOf(options).relief_l_per_100km.middle, row.l_per_100km, 5e-6)
            << row.speed_kmh;
    }
}

// The same decision's factors lie within what the ledger assumes: its marginal efficiencies are the
// published ones at the upper end (42.6 % petrol at 32.05 MJ/L, 45.7 % diesel at 35.81 MJ/L).
TEST(PublishedFactors, LieWithinTheLedgersRanges)
{
    const LedgerOptions petrol = LedgerOptions::forFuel(core::Fuel::petrol);
    const LedgerOptions diesel = LedgerOptions::forFuel(core::Fuel::diesel);
    const auto within = [](const Range& range, double value) {
        return range.low <= value && value <= range.high;
    };
    EXPECT_TRUE(within(petrol.marginal, 3.6 / (0.264 * 32.05)));
    EXPECT_TRUE(within(diesel.marginal, 3.6 / (0.220 * 35.81)));
    EXPECT_TRUE(within(petrol.alternator, 0.67)); // the decision's usual alternator
}

// Momentum theory (Betz 1920, Glauert 1935; from memory, the relations are elementary): power
// coefficient 4a(1 - a)^2, largest 16/27 at a = 1/3; thrust coefficient 4a(1 - a); so the drag
// takes 1/(1 - a) times the shaft's power, 1.5 times at the Betz point and never less than once.
TEST(ActuatorDisc, TakesOneAndAHalfTimesTheShaftsPowerAtTheBetzPoint)
{
    struct Row {
        double a, cp, ct;
    };
    constexpr Row kRows[] = {{0.1, 81.0 / 250, 9.0 / 25},  {0.2, 64.0 / 125, 16.0 / 25},
                             {0.25, 9.0 / 16, 3.0 / 4},    {1.0 / 3, 16.0 / 27, 8.0 / 9},
                             {0.4, 72.0 / 125, 24.0 / 25}, {0.5, 1.0 / 2, 1.0}};
    for (const Row& row : kRows) {
        // With everything else lossless the cost is the drag's fuel and P/(H V) the shaft's.
        LedgerOptions options;
        options.relief = false;
        options.generator = options.drive = options.marginal = {1.0, 1.0, 1.0};
        options.induction = row.a;
        const double shaft = options.output_w /
                             (options.heating_value_mj_per_l * 1e6 * options.speed_kmh / 3.6) * 1e5;
        EXPECT_NEAR(ledgerOf(options).cost_l_per_100km.middle / shaft, row.ct / row.cp, 1e-12)
            << row.a;
        EXPECT_LE(row.cp, 16.0 / 27.0 + 1e-15);
    }
    LedgerOptions betz;
    betz.relief = false;
    betz.generator = betz.drive = betz.marginal = {1.0, 1.0, 1.0};
    const double shaft =
        betz.output_w / (betz.heating_value_mj_per_l * 1e6 * betz.speed_kmh / 3.6) * 1e5;
    EXPECT_NEAR(ledgerOf(betz).cost_l_per_100km.low / shaft, 1.5, 1e-12); // the ledger's own a
}

// A generator whose every other part is lossless still costs more than it relieves, unless the
// alternator loses more than a third.
TEST(ActuatorDisc, IsNoGainAgainstAnAlternatorThatLosesLessThanTheDisc)
{
    LedgerOptions options;
    options.generator = options.drive = {1.0, 1.0, 1.0};
    options.alternator = {0.67, 0.67, 0.67};
    EXPECT_GT(ledgerOf(options).net_pct.low, 0.0);
    options.alternator = {0.66, 0.66, 0.66};
    EXPECT_LT(ledgerOf(options).net_pct.high, 0.0);
}
