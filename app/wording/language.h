// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/message.h"
#include "core/base/result.h"

#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace bothways::app {

/// How numbers look to a reader.
struct NumberStyle {
    std::string decimal = ".";
    std::string group = ","; ///< between thousands
    friend bool operator==(const NumberStyle&, const NumberStyle&) = default;
};

/// Says sentences in a reader's language. A value: whoever makes words is handed one.
///
/// A sentence without a translation comes out in English; a test sees to it that there is none.
/// Translations are resources/translations/sentences_*.ts, compiled in. JSON and CSV are for
/// programs: they use english() and numbers of their own.
class Language {
public:
    /// English.
    Language();
    /// For JSON, CSV and what a study keeps: English, with names and paths byte for byte. All other
    /// languages show them through visibleText().
    [[nodiscard]] static Language english()
    {
        Language language;
        language.m_forPeople = false;
        return language;
    }
    /// "de", "de_AT.UTF-8", "en": by its first part. Nothing for a language that there is none of.
    [[nodiscard]] static std::optional<Language> named(std::string_view tag);
    /// That of LC_ALL, else LC_MESSAGES, else LANG; English where it is another.
    /// @param variable  gives an environment variable's value, empty where it is not set
    [[nodiscard]] static Language
    ofEnvironment(const std::function<std::string(const char*)>& variable);
    /// "en", "de": those that can be named.
    [[nodiscard]] static std::vector<std::string_view> all();

    /// "en", "de": as HTML's lang has it.
    [[nodiscard]] std::string_view tag() const { return m_tag; }
    [[nodiscard]] const NumberStyle& numbers() const { return m_numbers; }
    void setNumbers(NumberStyle style) { m_numbers = std::move(style); }

    [[nodiscard]] std::string say(const core::Message& message) const;
    template <int Places, class... Values>
    [[nodiscard]] std::string say(core::Text<Places> text, Values&&... values) const
    {
        return say(core::message(text, std::forward<Values>(values)...));
    }
    /// `one` for 1, else `many`, whose places the values fill.
    template <int One, int Many, class... Values>
    [[nodiscard]] std::string sayCount(long long n, core::Text<One> one, core::Text<Many> many,
                                       Values&&... values) const
    {
        if (n == 1)
            return say(one, std::forward<Values>(values)...);
        return say(many, std::forward<Values>(values)...);
    }

    /// "morning.csv:14: column 'start'".
    [[nodiscard]] std::string place(const core::Place& place) const;
    /// "WHERE: MESSAGE" of the first fault alone: a message is worded to be read behind its place,
    /// "day.csv:14: column 'start': is empty; …", and by itself where it has none.
    [[nodiscard]] std::string describeFirst(const core::Error& error) const;
    /// "WHERE: MESSAGE", one line a fault, however many lines or runs have it.
    [[nodiscard]] std::string describe(const core::Error& error) const;

    friend bool operator==(const Language& a, const Language& b)
    {
        return a.m_tag == b.m_tag && a.m_numbers == b.m_numbers;
    }

private:
    [[nodiscard]] std::string value(const core::Value& value) const;
    [[nodiscard]] std::string_view translated(const char* key) const;

    std::string_view m_tag;
    std::span<const std::pair<const char*, const char*>> m_sentences; ///< by key, ascending
    NumberStyle m_numbers;
    bool m_forPeople = true;
};

} // namespace bothways::app
