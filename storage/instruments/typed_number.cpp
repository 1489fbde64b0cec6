// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/instruments/typed_number.h"

#include "core/base/number_text.h"
#include "core/study/study.h"
#include "storage/bytes/decimal.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace bothways::storage {
namespace {

constexpr int kMostDecimals = 22;

/// Another form, or more digits than fit: the nearest double.
std::optional<TypedNumber> nearestNumber(std::string_view text, bool decimalComma)
{
    std::string copy;
    if (decimalComma) {
        copy = text;
        std::replace(copy.begin(), copy.end(), ',', '.');
        text = copy;
    }
    if (text.starts_with('+'))
        text.remove_prefix(1);
    const auto value = core::finiteNumber(text);
    return value ? std::optional(oddNumber(*value)) : std::nullopt;
}

} // namespace

double TypedNumber::value() const
{
    return decimals < 0
               ? odd
               : static_cast<double>(integer) / kPowersOfTen[static_cast<std::size_t>(decimals)];
}

TypedNumber oddNumber(double value)
{
    return {0, -1, value};
}

TypedNumber typedNumber(std::int64_t integer, int decimals)
{
    if (decimals < 0) {
        const auto more = withMoreDecimals(integer, -decimals);
        if (more)
            return {*more, 0, 0.0};
    } else if (decimals <= kMostDecimals && integer <= kMaxScaled && integer >= -kMaxScaled) {
        return {integer, static_cast<std::int16_t>(decimals), 0.0};
    }
    return oddNumber(static_cast<double>(integer) * std::pow(10.0, -decimals));
}

std::optional<TypedNumber> typedNumber(std::string_view text, bool decimalComma)
{
    const char point = decimalComma ? ',' : '.';
    std::size_t at = 0;
    const bool negative = !text.empty() && text[0] == '-';
    if (negative || (!text.empty() && text[0] == '+'))
        ++at;
    std::int64_t integer = 0;
    int decimals = -1, digits = 0;
    for (; at < text.size(); ++at) {
        const char c = text[at];
        if (c >= '0' && c <= '9') {
            integer = integer * 10 + (c - '0');
            ++digits;
            decimals += decimals >= 0;
            if (integer > kMaxScaled)
                return nearestNumber(text, decimalComma);
        } else if (c == point && decimals < 0) {
            decimals = 0;
        } else {
            break;
        }
    }
    if (digits == 0 || (at < text.size() && (text[at] | 0x20) != 'e'))
        return std::nullopt;
    if (at < text.size() || decimals > kMostDecimals || (negative && integer == 0))
        return nearestNumber(text, decimalComma);
    return TypedNumber{negative ? -integer : integer,
                       static_cast<std::int16_t>(std::max(decimals, 0)), 0.0};
}

bool saysNoValue(std::string_view text)
{
    if (text.size() > 1 && (text.front() == '-' || text.front() == '+'))
        text.remove_prefix(1);
    for (const std::string_view word :
         {"", "-", "--", "na", "n/a", "nan", "null", "none", "nil", "inf", "infinity", "ovf"})
        if (core::sameWord(text, word))
            return true;
    return false;
}

} // namespace bothways::storage
