// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/language.h"

#include "app/wording/numbers.h"

#include <gtest/gtest.h>

#include <map>

namespace bothways::app {
namespace {

Language inSurroundings(std::map<std::string, std::string> variables)
{
    return Language::ofEnvironment(
        [variables = std::move(variables)](const char* name) -> std::string {
            const auto found = variables.find(name);
            return found == variables.end() ? "" : found->second;
        });
}

TEST(LanguageNamed, GoesByTheFirstPartOfATag)
{
    for (const char* tag : {"de", "de_AT.UTF-8", "de-CH", "de@euro"})
        EXPECT_EQ(Language::named(tag).value().tag(), "de") << tag;
    for (const char* tag : {"en", "en_GB", "C", "C.UTF-8", "POSIX"})
        EXPECT_EQ(Language::named(tag).value().tag(), "en") << tag;
    for (const char* tag : {"", "den", "d", "fr_FR", "DE"})
        EXPECT_FALSE(Language::named(tag)) << tag;
}

TEST(LanguageNamed, IsOneOfAll)
{
    EXPECT_EQ(Language::all(), (std::vector<std::string_view>{"en", "de"}));
    for (const std::string_view tag : Language::all())
        EXPECT_EQ(Language::named(tag).value().tag(), tag);
}

TEST(LanguageOfEnvironment, TakesTheFirstVariableThatIsSet)
{
    EXPECT_EQ(inSurroundings({{"LC_ALL", "de_DE"}, {"LANG", "en_GB"}}).tag(), "de");
    EXPECT_EQ(inSurroundings({{"LC_ALL", "C"}, {"LC_MESSAGES", "de"}, {"LANG", "de"}}).tag(), "en");
    EXPECT_EQ(inSurroundings({{"LC_MESSAGES", "de_DE"}, {"LANG", "en_GB"}}).tag(), "de");
    EXPECT_EQ(inSurroundings({{"LANG", "de_DE.UTF-8"}}).tag(), "de");
}

TEST(LanguageOfEnvironment, IsEnglishWhereThereIsNoneOrAnother)
{
    EXPECT_EQ(inSurroundings({}).tag(), "en");
    EXPECT_EQ(inSurroundings({{"LC_ALL", "fr_FR"}, {"LANG", "de_DE"}}).tag(), "en");
}

TEST(Language, BringsItsDecimalSign)
{
    const Language german = Language::named("de").value();
    EXPECT_EQ(fixed(german, 1.25, 2), "1,25");
    EXPECT_EQ(grouped(german, 3410.5, 1), "3.410,5");
    EXPECT_EQ(german.say("{} %"_t, 0.5), "0,5 %");
    EXPECT_EQ(change(german, -1.23, 1), "1,2 % weniger");
    EXPECT_EQ(intervalPercent(german, 0.95) + "-Intervall", "95\u2011%-Intervall");
    EXPECT_EQ(intervalPercent(Language::english(), 0.95), "95 %");
    EXPECT_EQ(localised(german, "-12.5"), "-12,5");
}

TEST(Language, SaysASentenceThatItDoesNotKnowInEnglish)
{
    // Made from pieces, so that it is no sentence of the sources.
    core::Message unknown = core::message("{} and {}"_t, 1, 2);
    unknown.key = "never {} translated {}##by anybody";
    EXPECT_EQ(Language::named("de").value().say(unknown), "never 1 translated 2");
}

TEST(Language, NamesTheFaultAndItsPlace)
{
    core::Place place("a.csv");
    place.line = 3;
    const core::Error error{core::ErrorCode::badInput, "No space left on device"_t, place};
    EXPECT_EQ(Language::english().describe(error), "a.csv:3: No space left on device");
    EXPECT_EQ(Language::named("de").value().describe(error),
              "a.csv:3: kein Platz mehr auf dem Datenträger");
}

} // namespace
} // namespace bothways::app
