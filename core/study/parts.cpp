// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/parts.h"

#include "core/base/number_text.h"

#include <algorithm>

namespace bothways::core {

bool isPartName(std::string_view part)
{
    constexpr std::size_t kLongest = 40;
    const auto fits = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
               c == '_' || c == '-' || static_cast<unsigned char>(c) >= 0x80;
    };
    return !part.empty() && part.size() <= kLongest && std::all_of(part.begin(), part.end(), fits);
}

PartedName partedName(std::string_view name)
{
    const std::size_t at = name.find('@');
    if (at == 0 || at == std::string_view::npos || !isPartName(name.substr(at + 1)))
        return {name, {}};
    return {name.substr(0, at), name.substr(at + 1)};
}

std::string ofPart(std::string_view base, std::string_view part)
{
    std::string name(base);
    if (!part.empty())
        name.append("@").append(part);
    return name;
}

bool mayHavePart(std::string_view column)
{
    return column == "output_w" || column == "rotor_rpm_max";
}

std::optional<double> notedNumber(std::string_view text)
{
    while (!text.empty() && (text.front() == ' ' || text.front() == '+'))
        text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ')
        text.remove_suffix(1);
    std::string digits(text);
    if (digits.find('.') == std::string::npos)
        if (const std::size_t comma = digits.find(','); comma != std::string::npos)
            digits[comma] = '.';
    return finiteNumber(digits);
}

std::vector<NotedPart> notedParts(const Run& run, std::string_view column)
{
    std::vector<NotedPart> parts;
    for (const auto& [name, text] : run.extra) {
        const PartedName parted = partedName(name);
        std::string base(parted.base); // blanks are as good as underscores
        std::replace(base.begin(), base.end(), ' ', '_');
        if (parted.part.empty() || !sameWord(base, column))
            continue;
        if (const auto value = notedNumber(text))
            parts.push_back({std::string(parted.part), *value});
    }
    return parts;
}

} // namespace bothways::core
