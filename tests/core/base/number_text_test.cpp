// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number_text.h"

#include <gtest/gtest.h>

#include <cstdint>

using namespace bothways;

TEST(NumberText, IsAFiniteNumberWholeOrNone)
{
    EXPECT_EQ(core::finiteNumber("-8.25"), -8.25);
    EXPECT_EQ(core::finiteNumber(".5"), 0.5);
    EXPECT_EQ(core::finiteNumber("1e-3"), 0.001);
    for (const char* text :
         {"", "-", "nan", "inf", "-infinity", "1e999", "8,25", " 8", "8 ", "+8", "8 l", "0x10"})
        EXPECT_EQ(core::finiteNumber(text), std::nullopt) << text;
}

TEST(NumberText, IsAnIntegerThatItsTypeHoldsOrNone)
{
    EXPECT_EQ(core::wholeNumber<int>("-12"), -12);
    EXPECT_EQ(core::wholeNumber<unsigned>("fF", 16), 255U);
    EXPECT_EQ(core::wholeNumber<std::uint8_t>("255"), 255);
    EXPECT_EQ(core::wholeNumber<std::uint8_t>("256"), std::nullopt);
    EXPECT_EQ(core::wholeNumber<unsigned>("-1"), std::nullopt);
    for (const char* text : {"", "-", "+1", " 1", "1 ", "1.0", "1e3", "99999999999"})
        EXPECT_EQ(core::wholeNumber<int>(text), std::nullopt) << text;
}

TEST(NumberText, GivesItsDigitsFromTheFrontAndLeavesTheRest)
{
    std::string_view text = "12345:6";
    EXPECT_EQ(core::takeDigits(text, 2, 4), 1234);
    EXPECT_EQ(core::takeDigits(text, 2, 4), std::nullopt) << "one digit is left";
    EXPECT_EQ(core::takeDigits(text, 1, 4), 5);
    EXPECT_FALSE(core::take(text, '.'));
    EXPECT_TRUE(core::take(text, ':'));
    EXPECT_EQ(text, "6");
}
