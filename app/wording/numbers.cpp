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

std::string size_pct(const Language& in, double pct, int decimals)
{
    return in.say("{} %"_t, fixed(in, std::abs(pct), decimalsThatShow(pct, decimals)));
}

/// Sentences for two ends: both below zero, both above, one on each side.
struct Joint {
    core::Text<2> less, more, across;
};

std::string twoEnds(const Language& in, double low_pct, double high_pct, int decimals,
                    const Joint& joint)
{
    const std::string low = size_pct(in, low_pct, decimals);
    const std::string high = size_pct(in, high_pct, decimals);
    if (high_pct < 0.0)
        return in.say(joint.less, high, low);
    if (low_pct > 0.0)
        return in.say(joint.more, low, high);
    return in.say(joint.across, low, high);
}

std::string listed(const Language& in, const std::vector<std::string>& parts, core::Text<2> lastTwo)
{
    std::string text;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i == 0)
            text = parts[i];
        else if (i + 1 < parts.size())
            text = in.say("{}, {}"_t, text, parts[i]);
        else
            text = in.say(lastTwo, text, parts[i]);
    }
    return text;
}

/// Digits with a point, and `group` between thousands before it.
std::string withGroups(std::string text, const std::string& group)
{
    const std::size_t first = text.front() == '-' ? 1 : 0;
    std::size_t at = std::min(text.find('.'), text.size());
    while (at > first + 3) {
        at -= 3;
        text.insert(at, group);
    }
    return text;
}

std::string plainFixed(double value, int decimals)
{
    if (roundsToNothing(value, decimals))
        value = 0.0;
    return fmt::format("{:.{}f}", value, decimals);
}

} // namespace

std::string localised(const Language& in, std::string digits)
{
    if (const std::size_t point = digits.find('.'); point != std::string::npos)
        digits.replace(point, 1, in.numbers().decimal);
    return digits;
}

std::string fixed(const Language& in, double value, int decimals)
{
    return localised(in, plainFixed(value, decimals));
}

std::string grouped(const Language& in, double value, int decimals)
{
    const std::string plain = plainFixed(value, decimals);
    const std::size_t point = std::min(plain.find('.'), plain.size());
    return withGroups(plain.substr(0, point), in.numbers().group) +
           localised(in, plain.substr(point));
}

std::string lengthOf(double seconds)
{
    const auto whole = std::llround(std::max(seconds, 0.0));
    const auto hours = whole / 3600, minutes = whole / 60 % 60, rest = whole % 60;
    return hours > 0 ? fmt::format("{}:{:02}:{:02}", hours, minutes, rest)
                     : fmt::format("{}:{:02}", minutes, rest);
}

std::string shortest(const Language& in, double value)
{
    return localised(in, fmt::format("{:.9g}", value));
}

Rounded roundedTo(double value, int digits)
{
    if (value == 0.0 || !std::isfinite(value))
        return {value, 0};
    const int magnitude = static_cast<int>(std::floor(std::log10(std::abs(value))));
    const int decimals = digits - 1 - magnitude;
    if (decimals >= 0)
        return {value, std::min(decimals, 9)};
    const double unit = std::pow(10.0, -decimals);
    return {std::round(value / unit) * unit, 0};
}

std::string significant(const Language& in, double value, int digits)
{
    const Rounded rounded = roundedTo(value, digits);
    return std::isfinite(value) ? grouped(in, rounded.value, rounded.decimals) : "0";
}

int decimalsThatShow(double value, int decimals)
{
    while (decimals < kMostDecimals && value != 0.0 && roundsToNothing(value, decimals))
        ++decimals;
    return decimals;
}

int decimalsFor(double uncertainty)
{
    if (!(uncertainty > 0.0) || !std::isfinite(uncertainty))
        return 2;
    const int magnitude = static_cast<int>(std::floor(std::log10(uncertainty)));
    return std::clamp(1 - magnitude, 0, kMostDecimals);
}

std::string change(const Language& in, double pct, int decimals)
{
    if (roundsToNothing(pct, decimals))
        return in.say("{} %"_t, fixed(in, 0.0, decimals));
    return in.say(pct < 0.0 ? "{} less"_t : "{} more"_t, size_pct(in, pct, decimals));
}

std::string changeRange(const Language& in, double low_pct, double high_pct, int decimals)
{
    return twoEnds(in, low_pct, high_pct, decimals,
                   {"{} to {} less"_t, "{} to {} more"_t, "{} less to {} more"_t});
}

std::string changeBetween(const Language& in, double low_pct, double high_pct, int decimals)
{
    return twoEnds(in, low_pct, high_pct, decimals,
                   {"{} and {} less"_t, "{} and {} more"_t, "{} less and {} more"_t});
}

std::string pText(const Language& in, double p)
{
    return p < 0.001 ? in.say("p < {}"_t, fixed(in, 0.001, 3))
                     : in.say("p = {}"_t, significant(in, p, 2));
}

std::string percentText(const Language& in, double share)
{
    return in.say("{} %"_t, shortest(in, 100.0 * share));
}

std::string intervalPercent(const Language& in, double share)
{
    return in.say("{} %##stands before the word interval"_t, shortest(in, 100.0 * share));
}

std::string counted(const Language& in, long long n, core::Text<0> one, core::Text<0> many)
{
    return in.say("{} {}"_t, grouped(in, static_cast<double>(n), 0), n == 1 ? one : many);
}

std::string joined(const Language& in, const std::vector<std::string>& parts)
{
    return listed(in, parts, "{} and {}"_t);
}

std::string anyOf(const Language& in, const std::vector<std::string>& parts)
{
    return listed(in, parts, "{} or {}"_t);
}

} // namespace bothways::app
