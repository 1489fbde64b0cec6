// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/numbers.h"

#include "app/output/analysis_text.h"

#include <gtest/gtest.h>

namespace bothways::app {
namespace {

const Language english;

TEST(Numbers, NeverShowAMinusBeforeNothing)
{
    EXPECT_EQ(fixed(english, -0.04, 1), "0.0");
    EXPECT_EQ(fixed(english, -0.06, 1), "-0.1");
}

TEST(Numbers, GroupThousandsWithCommas)
{
    EXPECT_EQ(grouped(english, 3410), "3,410");
    EXPECT_EQ(grouped(english, 999), "999");
    EXPECT_EQ(grouped(english, -1234567.25, 2), "-1,234,567.25");
    EXPECT_EQ(grouped(english, -410), "-410");
}

TEST(Numbers, KeepSignificantDigitsWithoutAnExponent)
{
    EXPECT_EQ(significant(english, 0.0636), "0.064");
    EXPECT_EQ(significant(english, 0.000012), "0.000012");
    EXPECT_EQ(significant(english, 12.4), "12");
    EXPECT_EQ(significant(english, 3449.0), "3,400");
    EXPECT_EQ(significant(english, 0.0), "0");
}

TEST(Numbers, GiveAnUncertaintyTwoSignificantDigits)
{
    EXPECT_EQ(decimalsFor(0.88), 2);
    EXPECT_EQ(decimalsFor(1.3), 1);
    EXPECT_EQ(decimalsFor(13.0), 0);
    EXPECT_EQ(decimalsFor(1e-9), 4);
    EXPECT_EQ(decimalsFor(0.0), 2);
}

TEST(Numbers, SayLessAndMoreInPlaceOfSigns)
{
    EXPECT_EQ(change(english, -1.23, 1), "1.2 % less");
    EXPECT_EQ(change(english, 0.81, 2), "0.81 % more");
    EXPECT_EQ(change(english, 0.001, 1), "0.0 %");
}

TEST(Numbers, PutTheSmallerSizeFirstInARange)
{
    EXPECT_EQ(changeRange(english, -2.0, -0.4, 1), "0.4 % to 2.0 % less");
    EXPECT_EQ(changeRange(english, 0.4, 2.0, 1), "0.4 % to 2.0 % more");
    EXPECT_EQ(changeRange(english, -0.1, 1.7, 1), "0.1 % less to 1.7 % more");
}

TEST(Numbers, ShowOnWhichSideOfZeroAnIntervalEnds)
{
    // Rounded to two decimals the upper end would read as if it reached zero.
    EXPECT_EQ(changeRange(english, -1.0, -0.003, 2), "0.003 % to 1.00 % less");
}

TEST(Numbers, RoundConfidenceToWhatWasTyped)
{
    EXPECT_EQ(percentText(english, 0.95), "95 %");
    EXPECT_EQ(percentText(english, 1.0 - 2.0 * (1.0 - 0.95)), "90 %");
    EXPECT_EQ(percentText(english, 0.999), "99.9 %");
}

TEST(Wrapping, BreaksAtBlanksAndKeepsTheLeadingOnes)
{
    EXPECT_EQ(wrapped("  - one two three", 4, 12), "  - one two\n    three");
    EXPECT_EQ(wrapped("unbreakableword next", 2, 5), "unbreakableword\n  next");
    EXPECT_EQ(wrapped("", 2), "");
    EXPECT_EQ(wrapped("one two 95 % three", 0, 10), "one two\n95 % three");
}

} // namespace
} // namespace bothways::app
