// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/date_forms.h"

#include "core/base/number_text.h"
#include "core/study/clock.h"
#include "storage/bytes/csv.h"
#include "storage/sheet/column_names.h"
#include "storage/sheet/run_columns.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <vector>

namespace bothways::storage {
namespace {

/// Beginnings of the months' names, folded, in four languages.
constexpr std::array<std::array<std::string_view, 4>, 12> kMonths = {{
    {"jan", "jan", "janv", "ene"},
    {"feb", "feb", "fev", "feb"},
    {"mar", "mrz", "mars", "marz"},
    {"apr", "apr", "avr", "abr"},
    {"may", "mai", "mai", "mayo"},
    {"jun", "jun", "juin", "jun"},
    {"jul", "jul", "juil", "jul"},
    {"aug", "aug", "aou", "ago"},
    {"sep", "sep", "sept", "sep"},
    {"oct", "okt", "oct", "oct"},
    {"nov", "nov", "nov", "nov"},
    {"dec", "dez", "dec", "dic"},
}};

constexpr std::size_t kLongestMoment = 80; // bytes: a weekday, a date in words, a time

int monthNamed(std::string_view word)
{
    for (std::size_t i = 0; i < kMonths.size(); ++i)
        for (const std::string_view begin : kMonths[i])
            if (word.starts_with(begin))
                return static_cast<int>(i) + 1;
    return 0;
}

bool isWeekday(std::string_view word)
{
    constexpr std::array<std::string_view, 26> kDays = {
        "mo",  "mon", "tu", "tue", "we", "wed", "th",  "thu", "fr",  "fri", "sa",  "sat", "su",
        "sun", "di",  "mi", "do",  "so", "lun", "mar", "mer", "jeu", "ven", "sam", "dim", "mie"};
    return std::find(kDays.begin(), kDays.end(), word) != kDays.end() ||
           (word.size() > 4 &&
            (word.ends_with("day") || word.ends_with("tag") || word.ends_with("woch") ||
             word.ends_with("di") || word.ends_with("manche") || word.ends_with("nes") ||
             word.ends_with("ado") || word.ends_with("ingo") || word.ends_with("ves")));
}

std::optional<int> smallNumber(std::string_view digits)
{
    return digits.size() <= 4 ? core::wholeNumber<int>(digits) : std::nullopt;
}

/// "26" is 2026.
int fullYear(std::string_view digits, int value)
{
    return digits.size() <= 2 ? 2000 + value : value;
}

std::vector<std::string> wordsBetween(std::string_view text, std::string_view signs)
{
    std::vector<std::string> words;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of(signs), text.size());
        if (end > 0)
            words.emplace_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

/// "9 mai 2026", "May 9, 2026", "9-May-26", "9 de mayo de 2026".
std::optional<WrittenDate> dateWithName(std::string_view text)
{
    std::vector<std::string> words = wordsBetween(foldedName(text), " ");
    std::erase_if(words, [](const std::string& w) {
        return w == "de" || w == "of" || w == "the" || w == "den" || w == "le" || w == "el";
    });
    if (words.size() == 4 && isWeekday(words.front()))
        words.erase(words.begin());
    if (words.size() != 3)
        return std::nullopt;
    const bool nameFirst = monthNamed(words[0]) > 0;
    const std::string& name = nameFirst ? words[0] : words[1];
    std::string dayText = nameFirst ? words[1] : words[0];
    for (const std::string_view ending : {"st", "nd", "rd", "th", "er"})
        if (dayText.ends_with(ending))
            dayText.resize(dayText.size() - ending.size());
    const auto day = smallNumber(dayText);
    const auto year = smallNumber(words[2]);
    const int month = monthNamed(name);
    if (month == 0 || !day || !year || (words[2].size() != 2 && words[2].size() != 4))
        return std::nullopt;
    return WrittenDate{fullYear(words[2], *year), *day, month, true};
}

/// "09.05.2026", "5/9/26", "9-5-2026", "2026/05/09".
std::optional<WrittenDate> dateOfNumbers(std::string_view text)
{
    const std::size_t at = text.find_first_of("./-");
    if (at == std::string_view::npos)
        return std::nullopt;
    const char sign = text[at];
    if (text.find_first_not_of("0123456789" + std::string(1, sign)) != std::string_view::npos)
        return std::nullopt;
    if (sign == '.' && text.ends_with('.'))
        text.remove_suffix(1);
    const std::vector<std::string> parts = wordsBetween(text, std::string(1, sign));
    if (parts.size() != 3 || std::count(text.begin(), text.end(), sign) != 2)
        return std::nullopt;
    std::array<int, 3> numbers{};
    for (std::size_t i = 0; i < 3; ++i) {
        const auto number = smallNumber(parts[i]);
        if (!number)
            return std::nullopt;
        numbers[i] = *number;
    }
    if (parts[0].size() == 4 && parts[1].size() <= 2 && parts[2].size() <= 2)
        return WrittenDate{numbers[0], numbers[2], numbers[1], true};
    if (parts[0].size() > 2 || parts[1].size() > 2 ||
        (parts[2].size() != 4 && parts[2].size() != 2))
        return std::nullopt;
    return WrittenDate{fullYear(parts[2], numbers[2]), numbers[0], numbers[1], sign == '.'};
}

std::optional<WrittenDate> dateIn(std::string_view text)
{
    text = csv::trimmed(text);
    while (text.ends_with(','))
        text.remove_suffix(1);
    if (auto date = dateOfNumbers(text))
        return date;
    if (auto date = dateWithName(text))
        return date;
    const std::size_t blank = text.find_first_of(" ,"); // "Sa., 09.05.2026"
    if (blank == std::string_view::npos || !isWeekday(foldedName(text.substr(0, blank))))
        return std::nullopt;
    return dateOfNumbers(
        csv::trimmed(text.substr(text.find_first_not_of(" ,", blank) == std::string_view::npos
                                     ? text.size()
                                     : text.find_first_not_of(" ,", blank))));
}

/// Drops a half of the day from the end: 'a', 'p', or 0 where there is none.
char takeHalf(std::string& text)
{
    std::string folded;
    for (const char c : text)
        if (c != '.' && c != ' ')
            folded += static_cast<char>(c >= 'A' && c <= 'Z' ? c + ('a' - 'A') : c);
    if (!folded.ends_with("am") && !folded.ends_with("pm"))
        return 0;
    const char half = folded[folded.size() - 2];
    text.resize(text.find_last_of("aApP"));
    text = std::string(csv::trimmed(text));
    return half;
}

/// "5:40", "05:40:12,5", "5:40 PM", "5h40", "05:40 Uhr": as "05:40:12.5".
std::optional<std::string> timeIn(std::string_view written)
{
    std::string text(csv::trimmed(written));
    for (const std::string_view word : {"Uhr", "uhr", "hrs", "h"})
        if (text.size() > word.size() + 3 && text.ends_with(word) &&
            text.find(':') != std::string::npos)
            text = std::string(
                csv::trimmed(std::string_view(text).substr(0, text.size() - word.size())));
    const char half = takeHalf(text);
    if (const std::size_t h = text.find_first_of("hH");
        h != std::string::npos && text.find(':') == std::string::npos) { // "5h40", "5 h 40"
        std::string minutes(csv::trimmed(std::string_view(text).substr(h + 1)));
        if (minutes.ends_with("min"))
            minutes = std::string(csv::trimmed(minutes.substr(0, minutes.size() - 3)));
        text = std::string(csv::trimmed(std::string_view(text).substr(0, h))) + ":" +
               (minutes.empty() ? "00" : minutes);
    }
    std::replace(text.begin(), text.end(), ',', '.');
    const std::size_t colon = text.find(':');
    const std::string_view hours = std::string_view(text).substr(0, colon);
    auto hour = smallNumber(hours);
    if (!hour || hours.size() > 2 || (half == 0 && colon == std::string::npos))
        return std::nullopt;
    if (half != 0) {
        if (*hour < 1 || *hour > 12)
            return std::nullopt;
        hour = *hour % 12 + (half == 'p' ? 12 : 0);
    }
    std::string rest = colon == std::string::npos ? ":00" : text.substr(colon);
    std::string time = fmt::format("{:02}{}", *hour, rest);
    if (!core::parseTimeOfDay_us(time))
        return std::nullopt;
    return time;
}

/// A date and a time of day in any order, with a blank or a comma between.
std::optional<WrittenMoment> dateAndTime(std::string_view text)
{
    for (std::size_t at = text.find_first_of(" ,T"); at != std::string_view::npos;
         at = text.find_first_of(" ,T", at + 1)) {
        const std::string_view left = text.substr(0, at);
        const std::string_view right = text.substr(at + 1);
        WrittenMoment moment;
        if (const auto time = timeIn(right))
            if (auto date = dateIn(left)) {
                moment.date = date;
                moment.time = *time;
                return moment;
            }
        if (const auto time = timeIn(left))
            if (auto date = dateIn(right)) {
                moment.date = date;
                moment.time = *time;
                return moment;
            }
    }
    return std::nullopt;
}

} // namespace

std::optional<std::string> WrittenDate::inIso(DateOrder order) const
{
    const bool swapped = !certain && order == DateOrder::monthFirst;
    const int day = swapped ? second : first;
    const int month = swapped ? first : second;
    std::string iso = fmt::format("{:04}-{:02}-{:02}", year, month, day);
    return core::parseDate_us(iso) ? std::optional(std::move(iso)) : std::nullopt;
}

std::optional<WrittenMoment> writtenMoment(std::string_view written)
{
    std::string text(csv::trimmedLines(written));
    for (const std::string_view blank : {"\xC2\xA0", "\xE2\x80\xAF"})
        for (std::size_t at = text.find(blank); at != std::string::npos; at = text.find(blank))
            text.replace(at, blank.size(), " ");
    WrittenMoment moment;
    if (core::parseDateTime(text) || core::parseTimeOfDay_us(text)) {
        moment.asIs = true;
        moment.own_form = text;
        if (core::parseDateTime(text)) {
            moment.date = dateOfNumbers(std::string_view(text).substr(0, 10));
            moment.time = text.substr(11);
        } else {
            moment.time = text;
        }
        return moment;
    }
    if (auto date = dateIn(text)) {
        moment.date = date;
        return moment;
    }
    if (const auto time = timeIn(text)) {
        moment.time = *time;
        return moment;
    }
    if (text.size() > kLongestMoment)
        return std::nullopt;
    return dateAndTime(text);
}

bool isTwoPartLength(std::string_view text)
{
    text = csv::trimmed(text);
    return std::count(text.begin(), text.end(), ':') == 1 &&
           text.find_first_not_of("0123456789:") == std::string_view::npos && text.front() != ':' &&
           text.back() != ':';
}

std::optional<std::string> secondsOfLength(std::string_view written, bool minutesFirst)
{
    std::string text(csv::trimmed(written));
    std::replace(text.begin(), text.end(), ',', '.');
    const auto colons = std::count(text.begin(), text.end(), ':');
    if (colons != 2 && !(colons == 1 && minutesFirst))
        return std::nullopt;
    double seconds = 0.0;
    int decimals = 0;
    std::string_view rest = text;
    for (auto part = colons; part >= 0; --part) {
        const std::size_t colon = std::min(rest.find(':'), rest.size());
        const auto number = parseNumber(rest.substr(0, colon));
        const bool first = part == colons;
        if (!number || number->value < 0.0 || (!first && number->value >= 60.0) ||
            (part > 0 && number->decimals > 0))
            return std::nullopt;
        seconds = seconds * 60.0 + number->value;
        decimals = number->decimals;
        rest.remove_prefix(std::min(colon + 1, rest.size()));
    }
    return formatNumber(seconds, decimals);
}

} // namespace bothways::storage
