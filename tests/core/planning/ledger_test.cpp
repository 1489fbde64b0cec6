// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planning/ledger.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

using namespace bothways::core;

namespace {

Ledger ledgerOf(const LedgerOptions& options)
{
    Result<Ledger> ledger = makeLedger(options);
    EXPECT_TRUE(ledger) << (ledger ? "" : ledger.error().message.english());
    return ledger ? ledger.value() : Ledger{};
}

/// Every factor exactly known, so that a published figure can be met.
LedgerOptions oneFactor(double output_w, double speed_kmh, double alternator, double marginal)
{
    LedgerOptions options;
    options.output_w = output_w;
    options.speed_kmh = speed_kmh;
    options.alternator = {alternator, alternator, alternator};
    options.marginal = {marginal, marginal, marginal};
    return options;
}

} // namespace

// The middles of the method: relief = P/(0.60 0.37 H V), cost = P/(0.70 2/3 0.93 0.37 H V) with
// P = 600 W, H = 32.2 MJ/L, V = 100/3.6 m/s. By hand: P/(H V) = 600/(32.2e6 27.7778) per metre
// = 0.0670807 L/100 km.
TEST(Ledger, TheMiddleIsThatOfTheFormula)
{
    const Ledger ledger = ledgerOf({});
    const double fuel = 600.0 / (32.2e6 * (100.0 / 3.6)) * 1e5;
    EXPECT_NEAR(ledger.relief_l_per_100km.middle, fuel / (0.60 * 0.37), 1e-14);
    EXPECT_NEAR(ledger.cost_l_per_100km.middle, fuel / (0.70 * (2.0 / 3.0) * 0.93 * 0.37), 1e-14);
    EXPECT_NEAR(ledger.net_l_per_100km.middle,
                ledger.cost_l_per_100km.middle - ledger.relief_l_per_100km.middle, 1e-15);
    EXPECT_NEAR(ledger.net_pct.middle, ledger.net_l_per_100km.middle / 8.0 * 100.0, 1e-12);
}

TEST(Ledger, LowAndHighAreTheSmallestAndLargestOfAllCorners)
{
    const Ledger ledger = ledgerOf({});
    const double fuel = 600.0 / (32.2e6 * (100.0 / 3.6)) * 1e5;
    EXPECT_NEAR(ledger.relief_l_per_100km.low, fuel / (0.70 * 0.43), 1e-14);
    EXPECT_NEAR(ledger.relief_l_per_100km.high, fuel / (0.50 * 0.33), 1e-14);
    EXPECT_NEAR(ledger.cost_l_per_100km.low, fuel / (0.80 * (2.0 / 3.0) * 0.96 * 0.43), 1e-14);
    EXPECT_NEAR(ledger.cost_l_per_100km.high, fuel / (0.60 * (2.0 / 3.0) * 0.90 * 0.33), 1e-14);
    // Net at best: best generator and drive against the worst alternator; the marginal efficiency
    // is the same in both terms, and at that corner net is negative, so the smallest one is the
    // low.
    const double best = 1.0 / (0.80 * (2.0 / 3.0) * 0.96) - 1.0 / 0.50;
    ASSERT_LT(best, 0.0);
    EXPECT_NEAR(ledger.net_l_per_100km.low, fuel * best / 0.33, 1e-14);
    const double worst = 1.0 / (0.60 * (2.0 / 3.0) * 0.90) - 1.0 / 0.70;
    EXPECT_NEAR(ledger.net_l_per_100km.high, fuel * worst / 0.33, 1e-14);
}

TEST(Ledger, NetIsPositiveExactlyWhenTheRotorsChainIsWorseThanTheAlternator)
{
    // Method, section 11: net > 0 iff eta_gen (1 - a) eta_drive < eta_alt; 0.434 < 0.60 at the
    // middles.
    LedgerOptions options;
    for (const double alternator : {0.30, 0.43, 0.4339, 0.4341, 0.44, 0.60}) {
        options.alternator = {alternator, alternator, alternator};
        EXPECT_EQ(ledgerOf(options).net_pct.middle > 0.0, 0.70 * (2.0 / 3.0) * 0.93 < alternator)
            << alternator;
    }
}

TEST(Ledger, AgreesWithThePublishedEuropeanFactors)
{
    // Commission Implementing Decision (EU) 2020/728, table 2: petrol 0.264 L/kWh, diesel 0.220
    // L/kWh at the crankshaft; alternator 67 %. 100 W then cost 0.11734 L/100 km at 33.58 km/h and
    // 0.03940 at 100 km/h (petrol). A marginal efficiency of 3.6/(0.264 32.2) says the same.
    const double petrol = 3.6 / (0.264 * 32.2);
    EXPECT_NEAR(ledgerOf(oneFactor(100, 33.58, 0.67, petrol)).relief_l_per_100km.middle, 0.11734,
                5e-6);
    EXPECT_NEAR(ledgerOf(oneFactor(100, 100, 0.67, petrol)).relief_l_per_100km.middle, 0.03940,
                5e-6);
    EXPECT_NEAR(ledgerOf(oneFactor(100, 120, 0.55, petrol)).relief_l_per_100km.middle, 0.04000,
                5e-6);
}

TEST(Ledger, TwoHundredWattsAreAboutOnePerCentOnTheMotorway)
{
    // Common practice, no source.
    LedgerOptions options;
    options.output_w = 200.0;
    options.cost = false;
    const Ledger ledger = ledgerOf(options);
    EXPECT_LT(ledger.relief_l_per_100km.low, 0.08);
    EXPECT_GT(ledger.relief_l_per_100km.high, 0.08);
    EXPECT_EQ(ledger.net_l_per_100km.high, -ledger.relief_l_per_100km.low);
    EXPECT_EQ(ledger.net_l_per_100km.low, -ledger.relief_l_per_100km.high);
}

TEST(Ledger, ATermCanBeSwitchedOff)
{
    LedgerOptions options;
    options.relief = false;
    const Ledger dragOnly = ledgerOf(options);
    EXPECT_EQ(dragOnly.relief_l_per_100km, (Range{0.0, 0.0, 0.0}));
    EXPECT_EQ(dragOnly.net_l_per_100km, dragOnly.cost_l_per_100km);
    options.cost = false;
    EXPECT_EQ(ledgerOf(options).net_pct, (Range{0.0, 0.0, 0.0}));
    EXPECT_FALSE(wattsToSee(options, 1.0));
}

TEST(Ledger, WattsToSeeTurnBackIntoTheEffect)
{
    LedgerOptions options;
    const auto watts = wattsToSee(options, 1.2);
    ASSERT_TRUE(watts);
    options.output_w = *watts;
    EXPECT_NEAR(ledgerOf(options).net_pct.middle, 1.2, 1e-12);
    EXPECT_EQ(wattsToSee(options, -1.2), watts); // the size counts
    EXPECT_FALSE(wattsToSee(options, std::nan("")));
}

TEST(Ledger, NamesTheFactorThatIsAbsurd)
{
    const auto refusal = [](const LedgerOptions& options) {
        const Result<Ledger> ledger = makeLedger(options);
        return ledger ? std::string() : ledger.error().message.english();
    };
    LedgerOptions options;
    options.speed_kmh = 0.0;
    EXPECT_THAT(refusal(options), testing::HasSubstr("speed"));
    options = {};
    options.output_w = std::nan("");
    EXPECT_THAT(refusal(options), testing::HasSubstr("output"));
    options = {};
    options.alternator.high = 1.4;
    EXPECT_THAT(refusal(options), testing::HasSubstr("alternator"));
    options = {};
    options.marginal = {0.43, 0.37, 0.33};
    EXPECT_THAT(refusal(options), testing::HasSubstr("marginal"));
    options = {};
    options.induction = 1.0;
    EXPECT_THAT(refusal(options), testing::HasSubstr("induction"));
    options = {};
    options.heating_value_mj_per_l = -3.0;
    EXPECT_FALSE(wattsToSee(options, 1.0));
    EXPECT_EQ(makeLedger(options).error().code, ErrorCode::wrongUse);
}

TEST(Ledger, EveryFuelHasUsableFactors)
{
    for (const Fuel fuel : {Fuel::petrol, Fuel::e10, Fuel::diesel, Fuel::electric})
        EXPECT_TRUE(makeLedger(LedgerOptions::forFuel(fuel)));
    EXPECT_EQ(LedgerOptions::forFuel(Fuel::diesel).marginal, (Range{0.38, 0.42, 0.46}));
    EXPECT_EQ(LedgerOptions::forFuel(Fuel::e10).heating_value_mj_per_l, 31.1);
}

TEST(Ledger, OfElectricDriveIsInKilowattHoursAndTheMotorHasNoPartInTheRelief)
{
    LedgerOptions options = LedgerOptions::forFuel(Fuel::electric);
    options.output_w = 600.0;
    options.speed_kmh = 100.0;
    const Ledger ledger = ledgerOf(options);
    // 600 W over the hour that 100 km take are 0.6 kWh; the converter gives 0.94 of what it takes.
    EXPECT_NEAR(ledger.relief_l_per_100km.middle, 0.6 / 0.94, 1e-12);
    EXPECT_NEAR(ledger.relief_l_per_100km.low, 0.6 / 0.97, 1e-12);
    EXPECT_NEAR(ledger.relief_l_per_100km.high, 0.6 / 0.90, 1e-12);
    EXPECT_NEAR(ledger.cost_l_per_100km.middle, 0.6 / (0.70 * (2.0 / 3.0) * 0.93 * 0.87), 1e-12);
    EXPECT_NEAR(ledger.net_l_per_100km.middle,
                ledger.cost_l_per_100km.middle - ledger.relief_l_per_100km.middle, 1e-15);
}
