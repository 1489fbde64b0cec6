// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/number_forms.h"

#include "storage/bytes/csv.h"
#include "storage/sheet/run_columns.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace bothways::storage {
namespace {

/// With ' ' for every blank and apostrophe between digits, and a plain minus.
std::string withPlainSigns(std::string_view text)
{
    std::string plain(csv::trimmed(text));
    const auto replaceAll = [&plain](std::string_view what, std::string_view by) {
        for (std::size_t at = plain.find(what); at != std::string::npos;
             at = plain.find(what, at + by.size()))
            plain.replace(at, what.size(), by);
    };
    for (const std::string_view blank : {"\xC2\xA0", "\xE2\x80\xAF", "\xE2\x80\x89"})
        replaceAll(blank, " ");
    replaceAll("\xE2\x80\x99", " ");
    replaceAll("'", " ");
    replaceAll("\xE2\x88\x92", "-");
    return std::string(csv::trimmed(plain));
}

/// A number's parts, the sign aside: digits, and what stands between them.
struct Shape {
    std::size_t points = 0, commas = 0, blanks = 0;
    char lastSign = 0;
    std::size_t after = 0;  ///< digits behind the last point or comma
    std::size_t before = 0; ///< digits in front of the first sign
    bool leadingZero = false;
};

std::optional<Shape> shapeOf(std::string_view text)
{
    Shape shape;
    if (text.starts_with('-') || text.starts_with('+'))
        text.remove_prefix(1);
    if (text.empty() || text.find_first_not_of("0123456789., ") != std::string_view::npos)
        return std::nullopt;
    shape.leadingZero = text.front() == '0';
    shape.before = std::min(text.find_first_of("., "), text.size());
    for (const char c : text) {
        if (c >= '0' && c <= '9') {
            ++shape.after;
            continue;
        }
        shape.points += c == '.' ? 1U : 0U;
        shape.commas += c == ',' ? 1U : 0U;
        shape.blanks += c == ' ' ? 1U : 0U;
        if (c != ' ')
            shape.lastSign = c;
        shape.after = 0;
    }
    return shape;
}

/// "1,008,216": one to three digits, then groups of three.
bool isGrouped(std::string_view digits, char sign)
{
    const std::size_t first = digits.find(sign);
    if (first == std::string_view::npos)
        return true;
    if (first == 0 || first > 3)
        return false;
    for (std::size_t at = first; at < digits.size(); at += 4)
        if (digits[at] != sign || at + 4 > digits.size() ||
            digits.substr(at + 1, 3).find_first_not_of("0123456789") != std::string_view::npos)
            return false;
    return true;
}

} // namespace

void NumberSigns::look(std::string_view text)
{
    const std::string plainText = withPlainSigns(text);
    const auto shape = shapeOf(plainText);
    if (!shape)
        return;
    const std::size_t signs = shape->points + shape->commas;
    if (signs == 0) {
        ++plain;
        return;
    }
    const bool both = shape->points > 0 && shape->commas > 0;
    if (both || (signs == 1 && (shape->after != 3 || shape->before > 3 || shape->before == 0 ||
                                shape->leadingZero || shape->blanks > 0)))
        ++(shape->lastSign == ',' ? commas : points);
    else if (signs > 1)
        ++(shape->lastSign == ',' ? points : commas); // it stands between thousands
    else
        ++(shape->lastSign == ',' ? weakCommas : weakPoints);
}

void NumberSigns::add(const NumberSigns& other)
{
    points += other.points;
    commas += other.commas;
    weakPoints += other.weakPoints;
    weakCommas += other.weakCommas;
    plain += other.plain;
}

char NumberSigns::decimal() const
{
    if (points != commas)
        return commas > points ? ',' : '.';
    return weakCommas > weakPoints ? ',' : '.';
}

std::optional<PlainNumber> plainNumber(std::string_view text, char decimal,
                                       const NumberSigns& column)
{
    if (parseNumber(text, decimal == ',')) {
        std::string plain(csv::trimmed(text));
        std::replace(plain.begin(), plain.end(), ',', '.');
        return PlainNumber{std::move(plain), false};
    }
    std::string plain = withPlainSigns(text);
    const auto shape = shapeOf(plain);
    if (!shape)
        return std::nullopt;
    const std::string sign = plain.starts_with('-') ? "-" : "";
    if (plain.starts_with('-') || plain.starts_with('+'))
        plain.erase(0, 1);
    const char group = shape->blanks > 0 ? ' ' : decimal == ',' ? '.' : ',';
    const std::size_t at = std::min(plain.find(decimal), plain.size());
    const std::string whole = plain.substr(0, at);
    std::string rest = plain.substr(at);
    if (rest.find_first_not_of("0123456789", 1) != std::string::npos || !isGrouped(whole, group))
        return std::nullopt;
    const auto groups = static_cast<std::size_t>(std::count(whole.begin(), whole.end(), group));
    const bool sure = group == ' ' || groups > 1 || !rest.empty();
    const bool decimalsHere = decimal == ',' ? column.commas > 0 : column.points > 0;
    if (groups > 0 && !sure && (column.plain == 0 || decimalsHere))
        return std::nullopt; // 1.008 may be a little more than one
    std::string digits = whole;
    std::erase(digits, group);
    if (!rest.empty())
        rest.front() = '.';
    if (!parseNumber(sign + digits + rest))
        return std::nullopt;
    return PlainNumber{sign + digits + rest, groups > 0};
}

std::string convertedNumber(std::string_view number, double before, double times, double by)
{
    const auto given = parseNumber(number);
    if (!given || (before == 0.0 && times == by))
        return std::string(number);
    const double power = std::log10(times / by);
    const int shift = static_cast<int>(std::lround(power));
    const bool exponent = number.find_first_of("eE") != std::string_view::npos;
    if (before == 0.0 && !exponent && std::abs(power - shift) < 1e-12)
        if (const auto shifted = parseNumber(fmt::format("{}e{}", csv::trimmed(number), shift)))
            return formatNumber(shifted->value, shifted->decimals);
    return formatNumber((given->value + before) * times / by);
}

} // namespace bothways::storage
