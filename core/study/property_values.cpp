// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/property_values.h"

#include "core/base/number_text.h"
#include "core/base/text_parts.h"
#include "core/study/study.h"
#include "core/study/units.h"

#include <array>
#include <charconv>
#include <cmath>

namespace bothways::core {

std::optional<double> propertyNumber(std::string_view text)
{
    text = trimmed(text);
    if (text.starts_with('+'))
        text.remove_prefix(1);
    return finiteNumber(text);
}

std::string withDecimalPoint(std::string_view text)
{
    std::string pointed(text);
    const auto digitAt = [&](std::size_t at) {
        return at < text.size() && text[at] >= '0' && text[at] <= '9';
    };
    const std::size_t comma = text.find(',');
    const bool one = comma != std::string_view::npos && comma > 0 &&
                     text.find_first_of(",.", comma + 1) == std::string_view::npos &&
                     text.find('.') == std::string_view::npos;
    if (one && digitAt(comma - 1) && digitAt(comma + 1))
        pointed[comma] = '.';
    return pointed;
}

std::optional<double> typedNumber(std::string_view text)
{
    return propertyNumber(withDecimalPoint(text));
}

std::string inUnit(std::string_view text, std::string_view unit)
{
    struct Unit {
        std::string_view property, typed;
        double factor;
    };
    constexpr Unit kUnits[] = {{"km", "km", 1.0},        {"km", "miles", kKmPerMile},
                               {"km", "mi", kKmPerMile}, {"km/h", "km/h", 1.0},
                               {"km/h", "kmh", 1.0},     {"km/h", "mph", kKmPerMile}};
    const std::string_view given = trimmed(text);
    for (const Unit& known : kUnits) {
        if (known.property != unit || given.size() <= known.typed.size() ||
            !sameWord(given.substr(given.size() - known.typed.size()), known.typed))
            continue;
        const std::string_view number = trimmed(given.substr(0, given.size() - known.typed.size()));
        constexpr double kKept = 1e9; // 55 mph are 88.51392 km/h, not 88.51392000000001
        if (const auto value = typedNumber(number))
            return known.factor == 1.0
                       ? std::string(number)
                       : propertyText(std::round(*value * known.factor * kKept) / kKept);
    }
    return std::string(text);
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
