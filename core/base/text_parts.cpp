// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/text_parts.h"

#include <algorithm>

namespace bothways::core {
namespace {

constexpr bool isBlank(char c)
{
    return c == ' ' || c == '\t';
}

} // namespace

std::string_view trimmed(std::string_view text)
{
    while (!text.empty() && isBlank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && isBlank(text.back()))
        text.remove_suffix(1);
    return text;
}

std::string_view trimmedLines(std::string_view text)
{
    constexpr std::string_view kBlanks = " \t\r\n";
    const std::size_t first = text.find_first_not_of(kBlanks);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(kBlanks) + 1 - first);
}

std::vector<std::string_view> wordsBetween(std::string_view separators, std::string_view text,
                                           std::size_t most)
{
    std::vector<std::string_view> words;
    while (words.size() < most) {
        const std::size_t begin = text.find_first_not_of(separators);
        if (begin == std::string_view::npos)
            break;
        const std::size_t end = std::min(text.find_first_of(separators, begin), text.size());
        words.push_back(text.substr(begin, end - begin));
        text.remove_prefix(end);
    }
    return words;
}

} // namespace bothways::core
