// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/clock.h"

#include "core/base/number_text.h"

#include <fmt/format.h>

#include <chrono>

namespace bothways::core {
namespace {

constexpr std::int64_t kDay_us = 86'400 * kSecond_us;

std::optional<std::int64_t> takeDate_us(std::string_view& text)
{
    const auto year = takeDigits(text, 4, 4);
    if (!year || !take(text, '-'))
        return std::nullopt;
    const auto month = takeDigits(text, 2, 2);
    if (!month || !take(text, '-'))
        return std::nullopt;
    const auto day = takeDigits(text, 2, 2);
    if (!day)
        return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year{*year},
                                           std::chrono::month{static_cast<unsigned>(*month)},
                                           std::chrono::day{static_cast<unsigned>(*day)}};
    if (!date.ok())
        return std::nullopt;
    return std::chrono::sys_days(date).time_since_epoch().count() * kDay_us;
}

/// Digits after the point, to the microsecond; further digits are read and let go.
std::optional<std::int64_t> takeFraction_us(std::string_view& text)
{
    std::int64_t us = 0;
    std::int64_t unit = kSecond_us / 10;
    if (text.empty() || !isDigit(text.front()))
        return std::nullopt;
    while (!text.empty() && isDigit(text.front())) {
        us += unit * (text.front() - '0');
        unit /= 10;
        text.remove_prefix(1);
    }
    return us;
}

std::optional<std::int64_t> takeTimeOfDay_us(std::string_view& text)
{
    const auto hour = takeDigits(text, 2, 2);
    if (!hour || *hour > 23 || !take(text, ':'))
        return std::nullopt;
    const auto minute = takeDigits(text, 2, 2);
    if (!minute || *minute > 59)
        return std::nullopt;
    std::int64_t us = (*hour * 60 + *minute) * 60 * kSecond_us;
    if (!take(text, ':'))
        return us;
    const auto second = takeDigits(text, 2, 2);
    if (!second || *second > 59)
        return std::nullopt;
    us += *second * kSecond_us;
    if (take(text, '.') || take(text, ',')) {
        const auto fraction = takeFraction_us(text);
        if (!fraction)
            return std::nullopt;
        us += *fraction;
    }
    return us;
}

/// "Z", "+HH:MM", "+HHMM" or "+HH".
std::optional<int> takeOffset_min(std::string_view& text)
{
    if (take(text, 'Z') || take(text, 'z'))
        return 0;
    const int sign = text.front() == '-' ? -1 : 1;
    text.remove_prefix(1);
    const auto hours = takeDigits(text, 2, 2);
    if (!hours || *hours > 14)
        return std::nullopt;
    if (text.empty())
        return sign * *hours * 60;
    take(text, ':');
    const auto minutes = takeDigits(text, 2, 2);
    if (!minutes || *minutes > 59)
        return std::nullopt;
    return sign * (*hours * 60 + *minutes);
}

Error expected(std::string_view text, Text<0> form)
{
    return Error{ErrorCode::badInput, message("'{}' is not {}"_t, text, form), {}};
}

/// Microseconds on the instant's own clock.
std::int64_t local_us(const Instant& instant)
{
    return instant.us + std::int64_t{60} * kSecond_us * instant.utc_offset_min.value_or(0);
}

std::int64_t dayOf_us(std::int64_t us)
{
    return (us >= 0 ? us / kDay_us : -((-us + kDay_us - 1) / kDay_us)) * kDay_us;
}

} // namespace

Result<Instant> parseDateTime(std::string_view text)
{
    constexpr auto kForm = "a date and time like 2026-05-09T05:40:00"_t;
    std::string_view rest = text;
    const auto date = takeDate_us(rest);
    if (!date || (!take(rest, 'T') && !take(rest, 't') && !take(rest, ' ')))
        return expected(text, kForm);
    const auto time = takeTimeOfDay_us(rest);
    if (!time)
        return expected(text, kForm);
    Instant instant{*date + *time, std::nullopt};
    if (!rest.empty() && (rest.front() == 'Z' || rest.front() == 'z' || rest.front() == '+' ||
                          rest.front() == '-')) {
        instant.utc_offset_min = takeOffset_min(rest);
        if (!instant.utc_offset_min)
            return expected(text, kForm);
        instant.us -= std::int64_t{60} * kSecond_us * *instant.utc_offset_min;
    }
    if (!rest.empty())
        return expected(text, kForm);
    return instant;
}

Result<std::int64_t> parseTimeOfDay_us(std::string_view text)
{
    std::string_view rest = text;
    const auto time = takeTimeOfDay_us(rest);
    if (!time || !rest.empty())
        return expected(text, "a time of day like 05:40 or 05:40:30"_t);
    return *time;
}

Result<std::int64_t> parseDate_us(std::string_view text)
{
    std::string_view rest = text;
    const auto date = takeDate_us(rest);
    if (!date || !rest.empty())
        return expected(text, "a date like 2026-05-09"_t);
    return *date;
}

std::string formatDate(const Instant& instant)
{
    const std::chrono::year_month_day date{
        std::chrono::sys_days(std::chrono::days(dayOf_us(local_us(instant)) / kDay_us))};
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                       static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

std::string formatTimeOfDay(const Instant& instant, bool withSeconds)
{
    const std::int64_t second = (local_us(instant) - dayOf_us(local_us(instant))) / kSecond_us;
    std::string text = fmt::format("{:02}:{:02}", second / 3600, second / 60 % 60);
    if (withSeconds)
        text += fmt::format(":{:02}", second % 60);
    return text;
}

std::string formatDateTime(const Instant& instant)
{
    std::string text = formatDate(instant) + 'T' + formatTimeOfDay(instant);
    if (const std::int64_t fraction =
            (local_us(instant) - dayOf_us(local_us(instant))) % kSecond_us) {
        std::string digits = fmt::format("{:06}", fraction);
        digits.erase(digits.find_last_not_of('0') + 1);
        text += '.' + digits;
    }
    if (instant.utc_offset_min) {
        const int offset = *instant.utc_offset_min;
        text += offset == 0 ? std::string("Z")
                            : fmt::format("{}{:02}:{:02}", offset < 0 ? '-' : '+',
                                          std::abs(offset) / 60, std::abs(offset) % 60);
    }
    return text;
}

} // namespace bothways::core
