// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/property_values.h"

#include <fast_float/fast_float.h>

#include <array>
#include <charconv>
#include <cmath>

namespace bothways::core {

std::string_view withoutBlanks(std::string_view text)
{
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t'))
        text.remove_prefix(1);
    while (!text.empty() && (text.back() == ' ' || text.back() == '\t'))
        text.remove_suffix(1);
    return text;
}

std::optional<double> propertyNumber(std::string_view text)
{
    text = withoutBlanks(text);
    if (text.starts_with('+'))
        text.remove_prefix(1);
    double value = 0.0;
    const char* end = text.data() + text.size();
    const auto [rest, problem] = fast_float::from_chars(text.data(), end, value);
    if (problem != std::errc() || rest != end || !std::isfinite(value))
        return std::nullopt;
    return value;
}

std::string propertyText(double value)
{
    std::array<char, 400> digits{};
    const auto result = std::to_chars(digits.data(), digits.data() + digits.size(), value,
                                      std::chars_format::fixed);
    return std::string(digits.data(), result.ptr);
}

Error propertyRefusal(std::string_view name, std::string_view value, const Message& expected)
{
    return Error{ErrorCode::wrongUse,
                 message("'{}' is not permitted; expected {}"_t, value, expected),
                 std::string(name)};
}

} // namespace bothways::core
