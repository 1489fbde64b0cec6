// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

/// Sentences before they are in a language.
///
/// A sentence is written once, in English, with the suffix _t: "there is no run {}"_t. It is the
/// key to its translations; app/wording/language.h says it in the reader's language. What has no
/// suffix does not become a Message. Where one English text wants two translations, what follows
/// "##" tells them apart and is never shown: "note##grade of a finding"_t.
namespace bothways::core {

template <std::size_t Size>
struct Literal {
    char chars[Size]{};
    consteval Literal(const char (&text)[Size])
    {
        for (std::size_t i = 0; i < Size; ++i)
            chars[i] = text[i];
    }
    /// How many values the text has room for: {} in order, or {0}, {1} in any; {{ and }} are
    /// braces.
    [[nodiscard]] consteval int places() const
    {
        int inOrder = 0;
        int highest = 0;
        for (std::size_t i = 0; i + 1 < Size; ++i) {
            if ((chars[i] == '{' || chars[i] == '}') && chars[i + 1] == chars[i]) {
                ++i;
                continue;
            }
            if (chars[i] == '}')
                throw "a '}' without its '{' in a sentence";
            if (chars[i] != '{')
                continue;
            if (chars[i + 1] == '}') {
                ++inOrder;
                ++i;
            } else if (chars[i + 1] >= '0' && chars[i + 1] <= '9' && chars[i + 2] == '}') {
                highest = highest > chars[i + 1] - '0' + 1 ? highest : chars[i + 1] - '0' + 1;
                i += 2;
            } else {
                throw "a place in a sentence is {} or {0}; say how a number looks with its value";
            }
        }
        if (inOrder > 0 && highest > 0)
            throw "a sentence has either {} or {0}, not both";
        return inOrder > highest ? inOrder : highest;
    }
};

/// A sentence, or a piece of one, with room for `Places` values. Only a literal becomes one.
template <int Places>
class Text {
public:
    /// As it is written in the source, with places and "##".
    [[nodiscard]] constexpr const char* key() const { return m_key; }

private:
    constexpr explicit Text(const char* key) : m_key(key) {}
    template <Literal text>
    friend consteval auto operator""_t();
    const char* m_key;
};

template <Literal text>
consteval auto operator""_t()
{
    return Text<text.places()>(text.chars);
}

struct Message;

/// What stands in a place of a sentence.
class Value {
public:
    /// Given by people or files: a name, a path, a number as typed. Never translated.
    Value(std::string text) : m_value(std::move(text)) {}
    Value(std::string_view text) : m_value(std::string(text)) {}
    Value(const char* text) : m_value(std::string(text)) {}
    template <class Integer,
              std::enable_if_t<std::is_integral_v<Integer> && !std::is_same_v<Integer, bool> &&
                                   !std::is_same_v<Integer, char>,
                               int> = 0>
    Value(Integer number) : m_value(static_cast<long long>(number))
    {
    }
    /// The shortest text of at most 9 digits, with the reader's decimal sign.
    Value(double number) : m_value(number) {}
    /// They would become numbers, which nobody means.
    Value(bool) = delete;
    Value(char) = delete;
    /// Another sentence, said in the same language.
    Value(Text<0> text) : m_value(text) {}
    Value(Message message);

    using Kinds =
        std::variant<std::string, long long, double, Text<0>, std::shared_ptr<const Message>>;
    [[nodiscard]] const Kinds& get() const { return m_value; }

private:
    Kinds m_value;
};

/// A sentence with its values: nothing that a reader sees yet.
struct Message {
    Message() = default;
    Message(Text<0> text) : key(text.key()) {}
    /// Words that are nobody's to translate: what SQLite or the system said.
    [[nodiscard]] static Message verbatim(std::string words);

    const char* key = ""; ///< of the sentence
    std::vector<Value> values = {};
    [[nodiscard]] bool empty() const { return *key == '\0'; }
    /// For tests, JSON, and whoever has no language.
    [[nodiscard]] std::string english() const;
};

/// message("there is no run {}"_t, 12): one value for each place, or it does not compile.
template <int Places, class... Values>
[[nodiscard]] Message message(Text<Places> text, Values&&... values)
{
    static_assert(Places == sizeof...(Values), "a sentence takes one value for each of its places");
    Message made;
    made.key = text.key();
    made.values.reserve(sizeof...(Values));
    (made.values.emplace_back(std::forward<Values>(values)), ...);
    return made;
}

/// What a reader sees of a key in English: without "##" and what follows.
[[nodiscard]] std::string_view shownPart(std::string_view key);
/// The text with its places filled; a place without a value stays as it is.
[[nodiscard]] std::string filled(std::string_view text, const std::vector<std::string>& values);
/// What the system calls a problem: "No space left on device" for ENOSPC.
[[nodiscard]] Message systemProblem(int number);

} // namespace bothways::core

namespace bothways {
using core::operator""_t;
}
