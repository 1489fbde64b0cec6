// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/units.h"

#include <gtest/gtest.h>

using namespace bothways::core;

// Source: NIST SP 811 (2008), appendix B: gallon (US) 3.785411784 L, gallon (imperial) 4.54609 L
// and mile 1609.344 m are exact. So L/100 km times mpg is 112903/480 (US) and 56826125/201168
// (imperial), exactly. Tolerance: four units in the last place of a double.
TEST(Units, MilesAGallonBecomeLitresPer100km)
{
    EXPECT_DOUBLE_EQ(kLPer100kmTimesMpgUs, 112903.0 / 480.0);
    EXPECT_DOUBLE_EQ(kLPer100kmTimesMpgImp, 56826125.0 / 201168.0);
    EXPECT_DOUBLE_EQ(toLPer100km(30.0, ConsumptionUnit::mpgUs), 112903.0 / 480.0 / 30.0);
    EXPECT_DOUBLE_EQ(toLPer100km(40.0, ConsumptionUnit::mpgImp), 56826125.0 / 201168.0 / 40.0);
}

TEST(Units, AnAmountOfFuelNeedsItsDistance)
{
    EXPECT_DOUBLE_EQ(toLPer100km(0.5, ConsumptionUnit::fuelL, 5.0), 10.0);
    EXPECT_DOUBLE_EQ(toLPer100km(1.0, ConsumptionUnit::fuelGalUs, 100.0), kLitresPerUsGallon);
    EXPECT_TRUE(needsDistance(ConsumptionUnit::fuelL));
    EXPECT_FALSE(needsDistance(ConsumptionUnit::mpgUs));
}

TEST(Units, EveryUnitGoesThereAndBack)
{
    for (const ConsumptionUnit unit : kConsumptionUnits) {
        EXPECT_NEAR(fromLPer100km(toLPer100km(7.3, unit, 5.2), unit, 5.2), 7.3, 1e-14 * 7.3)
            << unitName(unit);
        EXPECT_EQ(unitFromName(unitName(unit)), unit);
    }
}

TEST(Units, PerCentAndLogAreInverse)
{
    EXPECT_DOUBLE_EQ(pctFromLog(logFromPct(-37.5)), -37.5);
    EXPECT_DOUBLE_EQ(logFromPct(0.0), 0.0);
}
