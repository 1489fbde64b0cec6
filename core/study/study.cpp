// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/study.h"

#include "core/base/number_text.h"

#include <algorithm>
#include <cmath>

namespace bothways::core {
namespace {

constexpr char lower(char c)
{
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

void addIfNew(std::vector<std::string>& names, const std::string& name)
{
    const auto same = [&](const std::string& known) { return sameWord(known, name); };
    if (std::none_of(names.begin(), names.end(), same))
        names.push_back(name);
}

} // namespace

bool sameWord(std::string_view a, std::string_view b)
{
    if (a == b) // nearly always, and far quicker to say
        return true;
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](char x, char y) { return lower(x) == lower(y); });
}

bool beginsBlock(const Run* before, std::string_view configuration, Instant start)
{
    return before == nullptr || !sameWord(before->configuration, configuration) ||
           start.us - before->start.us > kNewDay_us;
}

std::string inSmallLetters(std::string_view word)
{
    std::string small(word);
    std::ranges::transform(small, small.begin(), lower);
    return small;
}

bool sameSetting(std::string_view a, std::string_view b)
{
    const auto x = finiteNumber(a);
    const auto y = finiteNumber(b);
    return x && y ? *x == *y : sameWord(a, b);
}

std::vector<std::string> configurations(const Study& study)
{
    std::vector<std::string> names;
    for (const Run& run : study.runs)
        addIfNew(names, run.configuration);
    return names;
}

std::vector<std::string> directions(const Study& study)
{
    std::vector<std::string> names;
    for (const Run& run : study.runs)
        addIfNew(names, run.direction);
    return names;
}

std::string baselineName(const Study& study, std::string_view asked)
{
    if (asked.empty())
        asked = study.properties.baseline;
    const std::vector<std::string> names = configurations(study);
    const auto known = [&](std::string_view wanted) {
        return std::find_if(names.begin(), names.end(),
                            [&](const std::string& name) { return sameWord(name, wanted); });
    };
    if (!asked.empty()) {
        const auto found = known(asked);
        return found != names.end() ? *found : std::string(asked);
    }
    if (const auto found = known("A"); found != names.end())
        return *found;
    return names.empty() ? std::string() : names.front();
}

namespace {

std::optional<double> lPer100kmOf(double value, ConsumptionUnit unit, const Run& run)
{
    if (!(value > 0.0) || (needsDistance(unit) && !(run.distance_km.value_or(0.0) > 0.0)))
        return std::nullopt;
    return toLPer100km(value, unit, run.distance_km.value_or(0.0));
}

} // namespace

std::optional<double> lPer100km(const Run& run)
{
    if (!run.consumption)
        return std::nullopt;
    return lPer100kmOf(run.consumption->value, run.consumption->unit, run);
}

std::optional<double> controlLPer100km(const Run& run)
{
    if (!run.control || !run.consumption)
        return std::nullopt;
    return lPer100kmOf(*run.control, run.consumption->unit, run);
}

std::optional<double> duration_s(const Run& run)
{
    if (run.duration_s)
        return run.duration_s;
    if (run.distance_km && run.speed_kmh)
        return *run.distance_km / *run.speed_kmh * 3600.0;
    return std::nullopt;
}

std::int64_t midTime_us(const Run& run)
{
    constexpr double kLongest_us = 1e18; // keeps the sum in 64 bits, whatever was typed
    const double half_us = duration_s(run).value_or(0.0) * 0.5e6;
    return run.start.us + (half_us > 0.0 ? std::llround(std::min(half_us, kLongest_us)) : 0);
}

void sortByStart(Study& study)
{
    const auto before = [](const Run& a, const Run& b) { return a.start.us < b.start.us; };
    if (!std::is_sorted(study.runs.begin(), study.runs.end(), before))
        std::stable_sort(study.runs.begin(), study.runs.end(), before);
}

} // namespace bothways::core
