// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/language.h"

#include "app/wording/numbers.h"
#include "app/wording/translations.h"
#include "app/wording/visible_text.h"
#include "core/base/place_words.h"
#include "storage/bytes/file_bytes.h"

#include <algorithm>
#include <cstring>

namespace bothways::app {

Language::Language() : m_tag("en") {}

std::optional<Language> Language::named(std::string_view tag)
{
    const std::string_view first = tag.substr(0, tag.find_first_of("_-.@"));
    if (first == "en" || first == "C" || first == "POSIX")
        return Language();
    for (const TranslatedSentences& known : translatedSentences())
        if (known.tag == first) {
            Language language;
            language.m_tag = known.tag;
            language.m_sentences = known.sentences;
            language.m_numbers = {language.say(".##decimal sign"_t),
                                  language.say(",##between thousands"_t)};
            return language;
        }
    return std::nullopt;
}

Language Language::ofEnvironment(const std::function<std::string(const char*)>& variable)
{
    for (const char* name : {"LC_ALL", "LC_MESSAGES", "LANG"})
        if (const std::string value = variable(name); !value.empty())
            return named(value).value_or(Language());
    return {};
}

std::vector<std::string_view> Language::all()
{
    std::vector<std::string_view> tags{"en"};
    for (const TranslatedSentences& known : translatedSentences())
        tags.push_back(known.tag);
    return tags;
}

std::string_view Language::translated(const char* key) const
{
    const auto found = std::lower_bound(m_sentences.begin(), m_sentences.end(), key,
                                        [](const auto& sentence, const char* asked) {
                                            return std::strcmp(sentence.first, asked) < 0;
                                        });
    if (found != m_sentences.end() && std::strcmp(found->first, key) == 0)
        return found->second;
    return core::shownPart(key);
}

std::string Language::value(const core::Value& value) const
{
    return std::visit(
        [this](const auto& kind) -> std::string {
            using Kind = std::remove_cvref_t<decltype(kind)>;
            if constexpr (std::is_same_v<Kind, std::string>)
                return m_forPeople ? visibleText(kind) : kind;
            else if constexpr (std::is_same_v<Kind, long long>)
                return std::to_string(kind);
            else if constexpr (std::is_same_v<Kind, double>)
                return shortest(*this, kind);
            else if constexpr (std::is_same_v<Kind, core::Text<0>>)
                return std::string(translated(kind.key()));
            else
                return say(*kind);
        },
        value.get());
}

std::string Language::say(const core::Message& message) const
{
    std::vector<std::string> values;
    values.reserve(message.values.size());
    for (const core::Value& given : message.values)
        values.push_back(value(given));
    return core::filled(translated(message.key), values);
}

std::string Language::place(const core::Place& place) const
{
    core::Place shownPlace = place;
    if (place.file == storage::kStandardInput)
        shownPlace.file = say("standard input"_t);
    else if (m_forPeople)
        shownPlace.file = visibleText(place.file);
    return core::placeIn(shownPlace, [this](const core::Message& part) { return say(part); });
}

std::string Language::describe(const core::Error& error) const
{
    std::string text = say(error.message);
    if (!error.where.empty())
        text = place(error.where) + ": " + text;
    for (const core::Error& other : error.others)
        text += '\n' + describe(other);
    return text;
}

} // namespace bothways::app
