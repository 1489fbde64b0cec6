// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/spreadsheet/cell_values.h"

#include "core/base/number_text.h"
#include "core/study/clock.h"
#include "core/study/study.h"

#include <fmt/format.h>

#include <array>
#include <charconv>
#include <cmath>
#include <optional>

namespace bothways::storage {
namespace {

constexpr std::int64_t kMsPerDay = std::int64_t{86'400} * 1000;

std::optional<double> numberIn(std::string_view text)
{
    return core::finiteNumber(csv::trimmedLines(text));
}

std::string shortest(double value)
{
    std::array<char, 400> text{};
    const auto result =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    return std::string(text.data(), result.ptr);
}

/// "05:40:00", "30:00:00", "05:40:00.5"
std::string timeText(std::int64_t ms)
{
    std::string text =
        fmt::format("{:02}:{:02}:{:02}", ms / 3'600'000, ms / 60'000 % 60, ms / 1000 % 60);
    if (ms % 1000 != 0) {
        text += fmt::format(".{:03}", ms % 1000);
        text.erase(text.find_last_not_of('0') + 1);
    }
    return text;
}

Cell momentCell(double serial, NumberShape shape, bool from1904)
{
    constexpr double kLastDay = 2'958'466.0; // 9999-12-31, and a day
    if (serial < 0.0 || serial >= kLastDay)
        return {CellKind::number, shortest(serial)};
    const auto all_ms = static_cast<std::int64_t>(std::llround(serial * 86'400'000.0));
    const std::int64_t day = all_ms / kMsPerDay;
    const std::int64_t rest_ms = all_ms % kMsPerDay;
    if (shape == NumberShape::elapsed || (day == 0 && !from1904))
        return {CellKind::time, timeText(all_ms)};
    if (from1904 && day == 0 && shape == NumberShape::time)
        return {CellKind::time, timeText(rest_ms)};
    if (!from1904 && day == 60)
        return {CellKind::error, "1900-02-29"}; // the day that never was
    // Days before 1970-01-01 of 1899-12-30, of 1899-12-31 (up to serial 59), of 1904-01-01.
    const std::int64_t zero = from1904 ? -24'107 : day < 60 ? -25'568 : -25'569;
    core::Instant instant;
    instant.us = (zero + day) * kMsPerDay * 1000 + rest_ms * 1000;
    const std::string date = core::formatDate(instant);
    if (rest_ms == 0 && shape == NumberShape::date)
        return {CellKind::date, date};
    return {CellKind::dateTime, date + "T" + timeText(rest_ms)};
}

} // namespace

NumberShape shapeOfBuiltIn(int format)
{
    const auto within = [format](int first, int last) { return format >= first && format <= last; };
    if (within(9, 10))
        return NumberShape::percentage;
    if (within(14, 17) || within(27, 31) || format == 36 || within(50, 54) || within(57, 58))
        return NumberShape::date;
    if (within(18, 21) || within(32, 35) || within(55, 56) || format == 45 || format == 47)
        return NumberShape::time;
    if (format == 46)
        return NumberShape::elapsed;
    return format == 22 ? NumberShape::dateTime : NumberShape::number;
}

NumberShape shapeOfCode(std::string_view code)
{
    if (core::sameWord(code, "general"))
        return NumberShape::number;
    std::string signs; // without texts, colours, fillers
    bool elapsed = false;
    for (std::size_t i = 0; i < code.size() && code[i] != ';'; ++i) {
        const char c = code[i];
        if (c == '"') {
            i = std::min(code.find('"', i + 1), code.size() - 1);
        } else if (c == '[') {
            const std::size_t end = std::min(code.find(']', i), code.size() - 1);
            const std::string inside = core::inSmallLetters(code.substr(i + 1, end - i - 1));
            elapsed = elapsed || (!inside.empty() &&
                                  inside.find_first_not_of(inside[0]) == std::string::npos &&
                                  std::string_view("hms").find(inside[0]) != std::string::npos);
            i = end;
        } else if (c == '\\' || c == '_' || c == '*') {
            ++i;
        } else {
            signs += c;
        }
    }
    signs = core::inSmallLetters(signs);
    for (const std::string_view halves : {"am/pm", "a/p"})
        if (const std::size_t at = signs.find(halves); at != std::string::npos)
            signs.replace(at, halves.size(), "h");
    const auto has = [&signs](std::string_view any) {
        return signs.find_first_of(any) != std::string::npos;
    };
    if (elapsed)
        return NumberShape::elapsed;
    const bool time = has("hs");
    const bool date = has("yd") || (has("m") && !time);
    if (date || time)
        return date && time ? NumberShape::dateTime : date ? NumberShape::date : NumberShape::time;
    return has("%") ? NumberShape::percentage : NumberShape::number;
}

Cell cellOfNumber(std::string_view text, NumberShape shape, bool from1904)
{
    const auto value = numberIn(text);
    if (!value)
        return {CellKind::text, std::string(text)};
    if (shape == NumberShape::number)
        return {CellKind::number, shortest(*value)};
    if (shape == NumberShape::percentage)
        return {CellKind::percentage, shortest(*value)};
    return momentCell(*value, shape, from1904);
}

Cell cellOfDate(std::string_view text)
{
    text = csv::trimmedLines(text);
    if (core::parseDate_us(text))
        return {CellKind::date, std::string(text)};
    std::string moment(text);
    const std::size_t point = moment.find('.');
    if (point != std::string::npos &&
        moment.find_first_not_of("0123456789", point + 1) == std::string::npos) {
        moment.resize(std::min(moment.size(), point + 7)); // to the microsecond
        moment.erase(moment.find_last_not_of('0') + 1);
        if (moment.back() == '.')
            moment.pop_back();
    }
    const bool known = static_cast<bool>(core::parseDateTime(moment));
    return {known ? CellKind::dateTime : CellKind::text, known ? moment : std::string(text)};
}

Cell cellOfDuration(std::string_view text)
{
    text = csv::trimmedLines(text);
    std::string_view rest = text;
    const Cell unknown{CellKind::text, std::string(text)};
    if (!rest.starts_with('P'))
        return unknown;
    rest.remove_prefix(1);
    double seconds = 0.0;
    bool inTime = false, any = false;
    while (!rest.empty()) {
        if (rest.front() == 'T') {
            inTime = true;
            rest.remove_prefix(1);
            continue;
        }
        const std::size_t end = rest.find_first_not_of("0123456789.");
        if (end == 0 || end == std::string_view::npos)
            return unknown;
        const auto value = numberIn(rest.substr(0, end));
        const char unit = rest[end];
        const double factor = !inTime && unit == 'D'  ? 86'400.0
                              : inTime && unit == 'H' ? 3600.0
                              : inTime && unit == 'M' ? 60.0
                              : inTime && unit == 'S' ? 1.0
                                                      : 0.0;
        if (!value || factor == 0.0)
            return unknown;
        seconds += *value * factor;
        any = true;
        rest.remove_prefix(end + 1);
    }
    if (!any || seconds > 1e9)
        return unknown;
    return {CellKind::time, timeText(std::llround(seconds * 1000.0))};
}

} // namespace bothways::storage
