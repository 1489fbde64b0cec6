// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/mark_words.h"

#include "core/base/number_text.h"
#include "core/base/text_parts.h"
#include "core/study/study.h"

#include <algorithm>
#include <initializer_list>

namespace bothways::core {
namespace {

bool isOneOf(std::string_view word, std::initializer_list<std::string_view> list)
{
    return std::any_of(list.begin(), list.end(),
                       [&](std::string_view other) { return sameWord(word, other); });
}

} // namespace

std::optional<MarkOfRun> markOfRun(std::string_view text,
                                   const std::vector<std::string>& directions)
{
    const auto words = wordsBetween(" \t,;:", text);
    if (words.empty())
        return std::nullopt;
    MarkOfRun mark;
    mark.begins = isOneOf(words.front(), {"start", "begin"});
    if (!mark.begins && !isOneOf(words.front(), {"end", "stop", "finish"}))
        return std::nullopt;
    for (std::size_t i = 1; i < words.size(); ++i) {
        const auto known =
            std::find_if(directions.begin(), directions.end(),
                         [&](const std::string& name) { return sameWord(name, words[i]); });
        if (const auto number = wholeNumber<int>(words[i]); number && *number > 0)
            mark.run = number;
        else if (known == directions.end())
            mark.rest.emplace_back(words[i]);
        if (known != directions.end()) {
            mark.direction = *known;
            mark.outward = known == directions.begin();
        }
    }
    return mark;
}

} // namespace bothways::core
