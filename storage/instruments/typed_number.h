// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

/// A number as an instrument prints it.
namespace bothways::storage {

/// `integer / 10^decimals`, or `odd` where decimals is -1. (Reading has the same.)
struct TypedNumber {
    std::int64_t integer = 0;
    std::int16_t decimals = 0;
    double odd = 0.0;
    [[nodiscard]] double value() const;
    friend bool operator==(const TypedNumber&, const TypedNumber&) = default;
};

/// Digits with a sign, a point (or a comma) and an exponent or without. Nothing for other text,
/// and for what is no finite number.
[[nodiscard]] std::optional<TypedNumber> typedNumber(std::string_view text,
                                                     bool decimalComma = false);
/// The decimal with so many digits after the point; the nearest double where that does not fit.
[[nodiscard]] TypedNumber typedNumber(std::int64_t integer, int decimals);
[[nodiscard]] TypedNumber oddNumber(double value);

/// Ways to write that there is no value: "", "-", "nan", "NA", "null", "inf".
[[nodiscard]] bool saysNoValue(std::string_view text);

} // namespace bothways::storage
