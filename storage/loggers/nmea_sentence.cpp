// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/nmea_sentence.h"

#include "core/base/number_text.h"
#include "core/study/units.h"

#include <algorithm>
#include <chrono>
#include <cmath>

namespace bothways::storage {
namespace {

using core::kSecond_us;

std::optional<int> digits(std::string_view text, std::size_t at, std::size_t count)
{
    if (at + count > text.size())
        return std::nullopt;
    int value = 0;
    for (const char c : text.substr(at, count)) {
        if (c < '0' || c > '9')
            return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

SentenceFault checksumFault(std::string_view body, std::string_view checksum)
{
    while (!checksum.empty() && (checksum.back() == ' ' || checksum.back() == '\r'))
        checksum.remove_suffix(1);
    const auto given = core::wholeNumber<unsigned>(checksum, 16);
    if (checksum.size() != 2 || !given)
        return SentenceFault::wrongChecksum;
    unsigned sum = 0;
    for (const char c : body)
        sum ^= static_cast<unsigned char>(c);
    return sum == *given ? SentenceFault::none : SentenceFault::wrongChecksum;
}

} // namespace

Sentence parseSentence(std::string_view line)
{
    Sentence sentence;
    const std::size_t start = line.find('$');
    if (start == std::string_view::npos) {
        sentence.fault = SentenceFault::notASentence;
        return sentence;
    }
    std::string_view body = line.substr(start + 1);
    const std::size_t star = body.find('*');
    if (star == std::string_view::npos) {
        sentence.fault = SentenceFault::noChecksum;
    } else {
        sentence.fault = checksumFault(body.substr(0, star), body.substr(star + 1));
        body = body.substr(0, star);
    }
    for (;;) {
        const std::size_t comma = body.find(',');
        if (sentence.count < Sentence::kMostFields)
            sentence.fields[sentence.count++] = body.substr(0, comma);
        if (comma == std::string_view::npos)
            break;
        body.remove_prefix(comma + 1);
    }
    const std::string_view address = sentence.field(0);
    const bool letters = std::all_of(address.begin(), address.end(), [](char c) {
        return (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    });
    if (!letters || address.empty())
        sentence.fault = SentenceFault::notASentence;
    else if (address.size() == 5 && address.front() != 'P')
        sentence.type = address.substr(2);
    return sentence;
}

std::optional<std::int64_t> sentenceTime_us(std::string_view field)
{
    const auto hour = digits(field, 0, 2), minute = digits(field, 2, 2),
               second = digits(field, 4, 2);
    if (!hour || !minute || !second || *hour > 23 || *minute > 59 || *second > 60)
        return std::nullopt;
    std::int64_t us = ((*hour * 60 + *minute) * 60 + *second) * kSecond_us;
    field.remove_prefix(6);
    if (field.empty())
        return us;
    if (field.front() != '.')
        return std::nullopt;
    std::int64_t unit = kSecond_us / 10;
    for (const char c : field.substr(1)) {
        if (c < '0' || c > '9')
            return std::nullopt;
        us += unit * (c - '0');
        unit /= 10;
    }
    return us;
}

std::optional<std::int64_t> sentenceDate_us(std::string_view field)
{
    const auto day = digits(field, 0, 2), month = digits(field, 2, 2), year = digits(field, 4, 2);
    if (field.size() != 6 || !day || !month || !year)
        return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year{*year + (*year < 80 ? 2000 : 1900)},
                                           std::chrono::month{static_cast<unsigned>(*month)},
                                           std::chrono::day{static_cast<unsigned>(*day)}};
    if (!date.ok())
        return std::nullopt;
    return std::chrono::sys_days(date).time_since_epoch().count() * 86'400 * kSecond_us;
}

std::optional<double> sentenceNumber(std::string_view field)
{
    return core::finiteNumber(field);
}

std::optional<double> sentenceDegrees(std::string_view field, std::string_view hemisphere)
{
    const bool latitude = hemisphere == "N" || hemisphere == "S";
    if (!latitude && hemisphere != "E" && hemisphere != "W")
        return std::nullopt;
    const std::size_t width = latitude ? 2 : 3;
    const auto whole = digits(field, 0, width);
    const auto minutes = whole ? sentenceNumber(field.substr(width)) : std::nullopt;
    if (!minutes || *minutes < 0.0 || *minutes >= 60.0)
        return std::nullopt;
    const double value = std::round((*whole + *minutes / 60.0) * 1e9) / 1e9;
    if (value > (latitude ? 90.0 : 180.0))
        return std::nullopt;
    return (hemisphere == "S" || hemisphere == "W") && value > 0.0 ? -value : value;
}

} // namespace bothways::storage
