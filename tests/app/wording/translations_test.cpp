// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/catalogue/catalogue.h"
#include "app/wording/language.h"

#include <gmock/gmock.h>

namespace bothways::app::catalogue {
namespace {

using ::testing::IsEmpty;

const char* const kWhatToDo =
    "\nRun the target update_sentences (ninja update_sentences) and translate what is new in "
    "resources/translations/sentences_de.ts.";

std::set<std::string> sourceKeys()
{
    const std::filesystem::path root = BOTHWAYS_SOURCE_DIR;
    std::set<std::string> keys = textsBelow({root / "core", root / "storage", root / "app"});
    keys.erase(""); // nothing to say is alike in every language
    return keys;
}

Translations german()
{
    Translations known = readTs(std::filesystem::path(BOTHWAYS_SOURCE_DIR) /
                                "resources/translations/sentences_de.ts");
    known.erase("");
    return known;
}

TEST(Translations, AreThereForEverySentenceOfTheSources)
{
    const Translations known = german();
    std::vector<std::string> lacking;
    const std::set<std::string> keys = sourceKeys();
    EXPECT_GT(keys.size(), 500u) << "the sources were not found";
    for (const std::string& key : keys)
        if (known.count(key) == 0)
            lacking.push_back(key);
    EXPECT_THAT(lacking, IsEmpty()) << kWhatToDo;
}

TEST(Translations, AreOfSentencesThatTheSourcesHave)
{
    const std::set<std::string> keys = sourceKeys();
    std::vector<std::string> left;
    for (const auto& [key, translation] : german())
        if (keys.count(key) == 0)
            left.push_back(key);
    EXPECT_THAT(left, IsEmpty()) << kWhatToDo;
}

TEST(Translations, AreAllMade)
{
    std::vector<std::string> empty;
    for (const auto& [key, translation] : german())
        if (translation.empty())
            empty.push_back(key);
    EXPECT_THAT(empty, IsEmpty()) << kWhatToDo;
}

TEST(Translations, HaveThePlacesOfTheirSentences)
{
    for (const auto& [key, translation] : german())
        EXPECT_EQ(faultOf(key, translation), "") << key;
}

TEST(Translations, BeginAndEndWithBlanksWhereTheirSentencesDo)
{
    const auto blankAt = [](const std::string& text, bool end) {
        return !text.empty() && (end ? text.back() : text.front()) == ' ';
    };
    for (const auto& [key, translation] : german()) {
        const std::string shown = key.substr(0, key.find("##"));
        EXPECT_EQ(blankAt(shown, true), blankAt(translation, true)) << key;
        EXPECT_EQ(blankAt(shown, false), blankAt(translation, false)) << key;
    }
}

TEST(Translations, AreInTheProgramsAsTheyAreInTheFile)
{
    const Language language = Language::named("de").value();
    EXPECT_EQ(language.say("No verdict: there are no runs yet."_t),
              german().at("No verdict: there are no runs yet."));
}

} // namespace
} // namespace bothways::app::catalogue
