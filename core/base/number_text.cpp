// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/number_text.h"

#include <fast_float/fast_float.h>

#include <cmath>

namespace bothways::core {

std::optional<double> finiteNumber(std::string_view text)
{
    double value = 0.0;
    const char* const end = text.data() + text.size();
    const auto [rest, problem] = fast_float::from_chars(text.data(), end, value);
    if (problem != std::errc() || rest != end || !std::isfinite(value))
        return std::nullopt;
    return value;
}

std::optional<int> takeDigits(std::string_view& text, std::size_t least, std::size_t most)
{
    std::size_t n = 0;
    int value = 0;
    while (n < most && n < text.size() && isDigit(text[n]))
        value = value * 10 + (text[n++] - '0');
    if (n < least)
        return std::nullopt;
    text.remove_prefix(n);
    return value;
}

bool take(std::string_view& text, char c)
{
    if (text.empty() || text.front() != c)
        return false;
    text.remove_prefix(1);
    return true;
}

} // namespace bothways::core
