// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/visible_text.h"

#include "app/output/markup.h"
#include "app/wording/language.h"
#include "core/base/utf8.h"

#include <gmock/gmock.h>

#include <string>

using namespace bothways;
using app::visibleText;

namespace {

TEST(VisibleText, ShowsWhatCommandsATerminal)
{
    EXPECT_EQ(visibleText("a\033[31mb\x07\x7F"), "a␛[31mb␇␡");
    EXPECT_EQ(visibleText(std::string("a\0b", 3)), "a␀b");
    EXPECT_EQ(visibleText("a\r\n\tb"), "a␍␊␉b");
    EXPECT_EQ(visibleText("a\r\n\tb", app::Breaks::kept), "a␍\n\tb");
    EXPECT_EQ(visibleText("\xC2\x9B"
                          "31m"),
              "<U+009B>31m")
        << "of C1, which some obey as well";
}

TEST(VisibleText, ShowsWhatHidesOrTurnsTheDirection)
{
    EXPECT_EQ(visibleText("\u202Etxt.exe"), "<U+202E>txt.exe");
    for (const char* hidden : {"\u00AD", "\u061C", "\u200B", "\u200F", "\u2028", "\u202A", "\u2066",
                               "\u2069", "\uFEFF", "\uFFF9", "\U000E0041", "\uFFFE"})
        EXPECT_THAT(visibleText(hidden), testing::StartsWith("<U+")) << hidden;
}

TEST(VisibleText, LeavesWordsOfAllLanguagesAsTheyAre)
{
    for (const char* words : {"Föhnwind – 3 °C", "Ω µ ½", "Київ", "東京", "عربي", "🚗", "a b"})
        EXPECT_EQ(visibleText(words), words);
}

TEST(VisibleText, IsUtf8WhateverItWasMadeFrom)
{
    EXPECT_EQ(visibleText("a\xFF"
                          "b"),
              "a\uFFFD"
              "b");
    for (int first = 0; first < 256; ++first)
        for (int second = 0; second < 256; ++second) {
            const std::string bytes{static_cast<char>(first), static_cast<char>(second), 'x'};
            const std::string shown = visibleText(bytes);
            ASSERT_TRUE(core::isUtf8(shown)) << first << " " << second;
            ASSERT_EQ(visibleText(shown), shown) << "twice is as once";
        }
}

TEST(VisibleText, IsWhatSentencesAndPagesAreMadeOf)
{
    const core::Message sentence = core::message("there is no run {}"_t, "\033[2J");
    EXPECT_EQ(app::Language().say(sentence), "there is no run ␛[2J");
    EXPECT_EQ(app::Language::english().say(sentence), "there is no run \033[2J") << "for programs";
    core::Place place("evil\033[2J.csv");
    place.line = 2;
    EXPECT_EQ(app::Language().place(place), "evil␛[2J.csv:2");
    EXPECT_EQ(app::escaped("<\x1B\u202E\xFF>\n"), "&lt;␛&lt;U+202E&gt;\uFFFD&gt;\n");
}

TEST(Utf8, IsReadAsTheStandardHasIt)
{
    EXPECT_EQ(core::firstCodePoint("\u20AC").value, U'\u20AC');
    EXPECT_EQ(core::firstCodePoint("\U0001F697x").bytes, 4U);
    for (const char* wrong : {"\xC0\x80", "\xE0\x80\x80", "\xED\xA0\x80", "\xF4\x90\x80\x80",
                              "\x80", "\xF8\x88\x80\x80", "\xE2\x82", "\xC1\xBF"})
        EXPECT_FALSE(core::isUtf8(wrong));
    EXPECT_TRUE(core::isUtf8("\xED\x9F\xBF\xEE\x80\x80\xF4\x8F\xBF\xBF"));
}

} // namespace
