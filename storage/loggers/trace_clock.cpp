// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/trace_clock.h"

#include "core/base/number_text.h"
#include "core/study/units.h"

#include <chrono>

namespace bothways::storage {
namespace {

using core::kSecond_us;

constexpr std::int64_t kDay_us = 86'400 * kSecond_us;

std::optional<std::int64_t> dayFrom(std::optional<int> year, std::optional<int> month,
                                    std::optional<int> day)
{
    if (!year || !month || !day)
        return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year{*year},
                                           std::chrono::month{static_cast<unsigned>(*month)},
                                           std::chrono::day{static_cast<unsigned>(*day)}};
    if (!date.ok() || *year < 1970 || *year > 2200) // a year as far off as this is no clock's
        return std::nullopt;
    return std::chrono::sys_days(date).time_since_epoch().count() * kDay_us;
}

std::optional<std::int64_t> takeDate_us(std::string_view text)
{
    std::optional<std::int64_t> day;
    if (text.size() == 10 && text[2] == '.' && text[5] == '.') {
        const auto d = core::takeDigits(text, 2, 2);
        core::take(text, '.');
        const auto m = core::takeDigits(text, 2, 2);
        core::take(text, '.');
        day = dayFrom(core::takeDigits(text, 4, 4), m, d);
    } else {
        const auto y = core::takeDigits(text, 4, 4);
        const char between = text.empty() ? '\0' : text.front();
        const bool parted = between == '-' || between == '/';
        if (parted)
            text.remove_prefix(1);
        const auto m = core::takeDigits(text, 2, 2);
        if (parted && !core::take(text, between))
            return std::nullopt;
        day = dayFrom(y, m, core::takeDigits(text, 2, 2));
    }
    return text.empty() ? day : std::nullopt;
}

/// "H:MM", "HH:MM:SS", "HH:MM:SS.f"; further digits than microseconds are read and let go.
std::optional<std::int64_t> takeTime_us(std::string_view& text)
{
    const auto hour = core::takeDigits(text, 1, 2);
    if (!hour || *hour > 23 || !core::take(text, ':'))
        return std::nullopt;
    const auto minute = core::takeDigits(text, 2, 2);
    if (!minute || *minute > 59)
        return std::nullopt;
    std::int64_t us = (*hour * 60 + *minute) * 60 * kSecond_us;
    if (!core::take(text, ':'))
        return us;
    const auto second = core::takeDigits(text, 2, 2);
    if (!second || *second > 60) // 60: a leap second
        return std::nullopt;
    us += *second * kSecond_us;
    if (core::take(text, '.') || core::take(text, ',')) {
        if (text.empty() || !core::isDigit(text.front()))
            return std::nullopt;
        for (std::int64_t unit = kSecond_us / 10; !text.empty() && core::isDigit(text.front());
             unit /= 10, text.remove_prefix(1))
            us += unit * (text.front() - '0');
    }
    return us;
}

/// "Z", "+HH:MM", "+HHMM" or "+HH", to the end of the text.
std::optional<int> takeOffset_min(std::string_view text)
{
    if (text == "Z" || text == "z")
        return 0;
    const int sign = text.front() == '-' ? -1 : 1;
    if (!core::take(text, '+') && !core::take(text, '-'))
        return std::nullopt;
    const auto hours = core::takeDigits(text, 2, 2);
    if (!hours || *hours > 14)
        return std::nullopt;
    if (text.empty())
        return sign * *hours * 60;
    core::take(text, ':');
    const auto minutes = core::takeDigits(text, 2, 2);
    if (!minutes || *minutes > 59 || !text.empty())
        return std::nullopt;
    return sign * (*hours * 60 + *minutes);
}

/// Whole and fraction of a number, as microseconds of the unit that its size tells.
std::optional<std::int64_t> epoch_us(std::string_view text)
{
    constexpr std::uint64_t kYear2200_us = 7'258'118'400'000'000;
    std::uint64_t whole = 0;
    std::size_t digits = 0;
    for (; digits < text.size() && core::isDigit(text[digits]); ++digits) {
        if (digits == 19)
            return std::nullopt;
        whole = whole * 10 + static_cast<std::uint64_t>(text[digits] - '0');
    }
    text.remove_prefix(digits);
    std::uint64_t unit = 0; // us
    switch (digits) {
    case 10: unit = 1'000'000; break;
    case 13: unit = 1'000; break;
    case 16: unit = 1; break;
    case 19:
        whole /= 1000;
        unit = 1;
        break;
    default: return std::nullopt;
    }
    std::uint64_t us = whole * unit;
    if (us > kYear2200_us)
        return std::nullopt;
    if (unit > 1 && (core::take(text, '.') || core::take(text, ',')))
        for (; !text.empty() && core::isDigit(text.front()); text.remove_prefix(1))
            us += (unit /= 10) * static_cast<std::uint64_t>(text.front() - '0');
    if (!text.empty())
        return std::nullopt;
    return static_cast<std::int64_t>(us);
}

} // namespace

std::optional<std::int64_t> ClockParser::date_us(std::string_view text)
{
    if (text == m_lastDate && !text.empty())
        return m_lastDate_us;
    const auto day = takeDate_us(text);
    if (day) {
        m_lastDate = text;
        m_lastDate_us = *day;
    }
    return day;
}

std::optional<ClockTime> ClockParser::dateTime(std::string_view cell)
{
    const std::size_t end = cell.find_first_of("Tt ");
    if (end == std::string_view::npos)
        return std::nullopt;
    const auto day = date_us(cell.substr(0, end));
    cell.remove_prefix(end + 1);
    while (core::take(cell, ' ')) {
    }
    const auto time = takeTime_us(cell);
    if (!day || !time)
        return std::nullopt;
    ClockTime result{*day + *time, std::nullopt};
    while (core::take(cell, ' ')) {
    }
    if (!cell.empty()) {
        result.utc_offset_min = takeOffset_min(cell);
        if (!result.utc_offset_min)
            return std::nullopt;
        result.us -= std::int64_t{60} * kSecond_us * *result.utc_offset_min;
    }
    return result;
}

std::optional<ClockTime> ClockParser::parse(std::string_view cell, ClockForm form)
{
    std::optional<std::int64_t> us;
    switch (form) {
    case ClockForm::dateTime: return dateTime(cell);
    case ClockForm::date: us = date_us(cell); break;
    case ClockForm::timeOfDay:
        us = takeTime_us(cell);
        if (!cell.empty())
            us.reset();
        break;
    case ClockForm::epoch:
        if (const auto since = epoch_us(cell))
            return ClockTime{*since, 0};
        break;
    }
    if (!us)
        return std::nullopt;
    return ClockTime{*us, std::nullopt};
}

std::optional<ClockForm> clockFormOf(std::string_view cell)
{
    ClockParser parser;
    for (const ClockForm form :
         {ClockForm::dateTime, ClockForm::timeOfDay, ClockForm::epoch, ClockForm::date})
        if (parser.parse(cell, form))
            return form;
    return std::nullopt;
}

} // namespace bothways::storage
