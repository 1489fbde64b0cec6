// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/numbers.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace bothways::app {
namespace {

constexpr int kMostDecimals = 4;

bool roundsToNothing(double value, int decimals)
{
    return std::abs(value) < 0.5 * std::pow(10.0, -decimals);
}

/// Decimals at which `pct` is seen to differ from nothing.
int decimalsThatShow(double pct, int decimals)
{
    while (decimals < kMostDecimals && pct != 0.0 && roundsToNothing(pct, decimals))
        ++decimals;
    return decimals;
}

std::string size_pct(double pct, int decimals)
{
    return fixed(std::abs(pct), decimalsThatShow(pct, decimals)) + " %";
}

std::string twoEnds(double low_pct, double high_pct, int decimals, const char* joint)
{
    const std::string low = size_pct(low_pct, decimals);
    const std::string high = size_pct(high_pct, decimals);
    if (high_pct < 0.0)
        return high + joint + low + " less";
    if (low_pct > 0.0)
        return low + joint + high + " more";
    return low + " less" + joint + high + " more";
}

} // namespace

std::string fixed(double value, int decimals)
{
    if (roundsToNothing(value, decimals))
        value = 0.0;
    return fmt::format("{:.{}f}", value, decimals);
}

std::string grouped(double value, int decimals)
{
    std::string text = fixed(value, decimals);
    const std::size_t first = text.front() == '-' ? 1 : 0;
    std::size_t at = std::min(text.find('.'), text.size());
    while (at > first + 3) {
        at -= 3;
        text.insert(at, 1, ',');
    }
    return text;
}

std::string shortest(double value)
{
    return fmt::format("{:.9g}", value);
}

std::string significant(double value, int digits)
{
    if (value == 0.0 || !std::isfinite(value))
        return "0";
    const int magnitude = static_cast<int>(std::floor(std::log10(std::abs(value))));
    const int decimals = digits - 1 - magnitude;
    if (decimals >= 0)
        return grouped(value, std::min(decimals, 9));
    const double unit = std::pow(10.0, -decimals);
    return grouped(std::round(value / unit) * unit);
}

int decimalsFor(double uncertainty)
{
    if (!(uncertainty > 0.0) || !std::isfinite(uncertainty))
        return 2;
    const int magnitude = static_cast<int>(std::floor(std::log10(uncertainty)));
    return std::clamp(1 - magnitude, 0, kMostDecimals);
}

std::string change(double pct, int decimals)
{
    if (roundsToNothing(pct, decimals))
        return fixed(0.0, decimals) + " %";
    return size_pct(pct, decimals) + (pct < 0.0 ? " less" : " more");
}

std::string changeRange(double low_pct, double high_pct, int decimals)
{
    return twoEnds(low_pct, high_pct, decimals, " to ");
}

std::string changeBetween(double low_pct, double high_pct, int decimals)
{
    return twoEnds(low_pct, high_pct, decimals, " and ");
}

std::string pText(double p)
{
    return p < 0.001 ? std::string("p < 0.001") : "p = " + significant(p);
}

std::string percentText(double share)
{
    return shortest(100.0 * share) + " %";
}

std::string counted(long long n, const std::string& one, const std::string& many)
{
    return grouped(static_cast<double>(n)) + " " + (n == 1 ? one : many);
}

} // namespace bothways::app
