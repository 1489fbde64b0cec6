// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/run_columns.h"

#include "core/base/nearest_word.h"
#include "core/base/number_text.h"
#include "core/base/utf8.h"
#include "storage/bytes/csv.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <utility>

namespace bothways::storage {
namespace {

using core::Run;

constexpr double kAny = 1e12; // W, V, s: beyond everything that a car could hold

// In driving order of a notebook. `control` has its own range in the rules of a run.
constexpr std::array kNumbers = {
    NumberColumn{"duration_s", &Run::duration_s, 1.0, 0.0, 1e6, true},
    NumberColumn{"distance_km", &Run::distance_km, 1.0, 0.0, 1e5, true},
    NumberColumn{"distance_mi", &Run::distance_km, core::kKmPerMile, 0.0, 6e4, true},
    NumberColumn{"speed_kmh", &Run::speed_kmh, 1.0, 0.0, 2000.0, true},
    NumberColumn{"speed_mph", &Run::speed_kmh, core::kKmPerMile, 0.0, 1240.0, true},
    NumberColumn{"control", &Run::control, 1.0, 0.0, kAny, true},
    NumberColumn{"accessory_w", &Run::accessory_w, 1.0, -kAny, kAny, false},
    NumberColumn{"output_w", &Run::output_w, 1.0, -kAny, kAny, false},
    NumberColumn{"rotor_rpm_max", &Run::rotor_rpm_max, 1.0, 0.0, 1e6, false},
    NumberColumn{"battery_v_start", &Run::battery_v_start, 1.0, 0.0, 1e5, false},
    NumberColumn{"battery_v_end", &Run::battery_v_end, 1.0, 0.0, 1e5, false},
    NumberColumn{"wind_ms", &Run::wind_ms, 1.0, 0.0, 150.0, false},
    NumberColumn{"wind_from_deg", &Run::wind_from_deg, 1.0, 0.0, 360.0, false},
    NumberColumn{"temperature_c", &Run::temperature_c, 1.0, -100.0, 100.0, false},
    NumberColumn{"pressure_hpa", &Run::pressure_hpa, 1.0, 300.0, 1200.0, false},
    NumberColumn{"humidity_pct", &Run::humidity_pct, 1.0, 0.0, 100.0, false}};

constexpr std::array kTexts = {TextColumn{"setting", &Run::setting},
                               TextColumn{"accessories", &Run::accessories},
                               TextColumn{"trace", &Run::trace}, TextColumn{"notes", &Run::notes}};

constexpr std::array<std::string_view, 11> kOthers = {"run",
                                                      "configuration",
                                                      "direction",
                                                      "start",
                                                      "status",
                                                      "reason",
                                                      "evidence",
                                                      "pair",
                                                      "marks",
                                                      "consumption_source",
                                                      "consumption_given"};

constexpr std::string_view kOnSuffix = "_on_s";

/// "31.2 passing_traffic lorry": one mark.
std::optional<core::Mark> parseMark(std::string_view text, bool decimalComma)
{
    const auto takeWord = [&text] {
        const std::size_t end = std::min(text.find_first_of(" \t\r\n"), text.size());
        const std::string_view word = text.substr(0, end);
        text = csv::trimmedLines(text.substr(end));
        return word;
    };
    const std::string_view seconds = takeWord();
    auto at = parseNumber(seconds, decimalComma);
    if (!at && decimalComma)
        at = parseNumber(seconds); // marks are often noted in another form than columns
    const std::string_view word = takeWord();
    if (!at || word.empty())
        return std::nullopt;
    return core::Mark{at->value, std::string(word), std::string(text)};
}

constexpr ColumnWords kColumnWords[] = {
    {"run", "run##column"_t},
    {"configuration", "configuration##column"_t},
    {"direction", "direction##column"_t},
    {"start", "start##column"_t},
    {"date", "date##column"_t},
    {"consumption", "consumption##column"_t},
    {"status", "status##column"_t},
    {"reason", "reason##column"_t},
    {"evidence", "evidence##column"_t},
    {"pair", "pair##column"_t},
    {"marks", "marks##column"_t},
    {"duration_s", "duration##column"_t, "s##unit"_t},
    {"distance_km", "distance##column"_t, "km##unit"_t},
    {"distance_mi", "distance##column"_t, "mi##unit"_t},
    {"speed_kmh", "speed##column"_t, "km/h##unit"_t},
    {"speed_mph", "speed##column"_t, "mph##unit"_t},
    {"control", "control vehicle##column"_t},
    {"accessory_w", "accessory load##column"_t, "W##unit"_t},
    {"output_w", "output##column"_t, "W##unit"_t},
    {"rotor_rpm_max", "highest rotor speed##column"_t, "rpm"_t},
    {"battery_v_start", "battery at the start##column"_t, "V##unit"_t},
    {"battery_v_end", "battery at the end##column"_t, "V##unit"_t},
    {"wind_ms", "wind##column"_t, "m/s##unit"_t},
    {"wind_from_deg", "wind from##column"_t, "°##unit"_t},
    {"temperature_c", "temperature##column"_t, "°C##unit"_t},
    {"pressure_hpa", "pressure##column"_t, "hPa##unit"_t},
    {"humidity_pct", "humidity##column"_t, "%##unit"_t},
    {"setting", "setting##column"_t},
    {"accessories", "accessories##column"_t},
    {"trace", "recording##column"_t},
    {"notes", "notes##column"_t},
    {"other columns", "columns of your own##column"_t}};

} // namespace

std::span<const NumberColumn> numberColumns()
{
    return kNumbers;
}

std::span<const TextColumn> textColumns()
{
    return kTexts;
}

core::Message expectedNumber(const NumberColumn& column)
{
    if (column.largest >= kAny)
        return column.aboveZero ? "a number above 0"_t : "a number"_t;
    if (column.aboveZero)
        return core::message("a number above 0 and at most {}"_t, formatNumber(column.largest));
    return core::message("a number from {} to {}"_t, formatNumber(column.smallest),
                         formatNumber(column.largest));
}

bool isPossible(const NumberColumn& column, double value)
{
    return std::isfinite(value) && value >= column.smallest && value <= column.largest &&
           !(column.aboveZero && value == 0.0);
}

const ColumnWords* columnWords(std::string_view column)
{
    const auto* const at = std::ranges::find(kColumnWords, column, &ColumnWords::column);
    return at == std::end(kColumnWords) ? nullptr : at;
}

std::string canonicalColumn(std::string_view name)
{
    std::string canonical = core::inSmallLetters(csv::trimmed(name));
    for (char& c : canonical)
        if (c == ' ' || c == '\t')
            c = '_';
    return canonical;
}

std::string_view timedAccessoryOf(std::string_view name)
{
    if (name.size() <= kOnSuffix.size() || !name.ends_with(kOnSuffix))
        return {};
    return name.substr(0, name.size() - kOnSuffix.size());
}

bool isKnownColumn(std::string_view name)
{
    const auto named = [name](const auto& column) { return column.name == name; };
    return std::any_of(kNumbers.begin(), kNumbers.end(), named) ||
           std::any_of(kTexts.begin(), kTexts.end(), named) ||
           std::find(kOthers.begin(), kOthers.end(), name) != kOthers.end() ||
           core::unitFromName(name).has_value() || !timedAccessoryOf(name).empty();
}

std::string nearestColumn(std::string_view name)
{
    std::vector<std::string_view> known(kOthers.begin(), kOthers.end());
    for (const NumberColumn& column : kNumbers)
        known.push_back(column.name);
    for (const TextColumn& column : kTexts)
        known.push_back(column.name);
    for (const core::ConsumptionUnit unit : core::kConsumptionUnits)
        known.push_back(core::unitName(unit));
    return std::string(core::nearestWord(name, known));
}

std::optional<GivenNumber> parseNumber(std::string_view text, bool decimalComma)
{
    text = csv::trimmed(text);
    std::string pointed;
    if (decimalComma) {
        if (text.find('.') != std::string_view::npos)
            return std::nullopt;
        pointed = text;
        std::replace(pointed.begin(), pointed.end(), ',', '.');
        text = pointed;
    }
    if (text.starts_with('+'))
        text.remove_prefix(1);
    const auto value = core::finiteNumber(text);
    if (!value)
        return std::nullopt;
    GivenNumber number;
    number.value = *value;
    const std::size_t exponentAt = std::min(text.find_first_of("eE"), text.size());
    const std::size_t point = text.find('.');
    if (point < exponentAt)
        number.decimals = static_cast<int>(std::min<std::size_t>(exponentAt - point - 1, 1000));
    if (exponentAt < text.size()) {
        int exponent = 0;
        const char* first = text.data() + exponentAt + 1;
        std::from_chars(*first == '+' ? first + 1 : first, text.data() + text.size(), exponent);
        number.decimals = std::clamp(number.decimals - exponent, 0, 1000);
    }
    return number;
}

std::string formatNumber(double value)
{
    std::array<char, 400> text{};
    const auto result =
        std::to_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    return std::string(text.data(), result.ptr);
}

std::string formatNumber(double value, int decimals)
{
    std::string text = fmt::format("{:.{}f}", value, std::clamp(decimals, 0, 1000));
    const auto back = parseNumber(text);
    return back && back->value == value ? text : formatNumber(value);
}

std::string shownCell(std::string_view cell)
{
    constexpr std::size_t kLongest = 60;
    const bool cut = cell.size() > kLongest;
    cell = cell.substr(0, kLongest);
    while (cut && !cell.empty() && static_cast<unsigned char>(cell.back()) >= 0x80U)
        cell.remove_suffix(1); // half a letter, perhaps
    const bool readable = core::isUtf8(cell);
    std::string text;
    for (const char c : cell) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '\n')
            text += "\\n";
        else if (c == '\r')
            text += "\\r";
        else if (byte < 0x20U || byte == 0x7FU || (byte >= 0x80U && !readable))
            text += '?';
        else
            text += c;
    }
    return text + (cut ? "..." : "");
}

core::Message inQuotes(std::string_view cell)
{
    return core::message("'{}'"_t, shownCell(cell));
}

std::optional<std::vector<core::Mark>> parseMarks(std::string_view text, bool decimalComma)
{
    std::vector<core::Mark> marks;
    std::string entry;
    const auto finish = [&] {
        const std::string whole = std::exchange(entry, {});
        const std::string_view words = csv::trimmedLines(whole);
        if (words.empty())
            return true;
        const auto mark = parseMark(words, decimalComma);
        if (mark)
            marks.push_back(*mark);
        return mark.has_value();
    };
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool escape =
            text[i] == '\\' && i + 1 < text.size() && (text[i + 1] == ';' || text[i + 1] == '\\');
        if (escape)
            entry += text[++i];
        else if (text[i] != ';')
            entry += text[i];
        else if (!finish())
            return std::nullopt;
    }
    if (!finish())
        return std::nullopt;
    return marks;
}

std::string formatMarks(const std::vector<core::Mark>& marks)
{
    std::string text;
    const auto append = [&text](std::string_view words) {
        for (const char c : words) {
            if (c == ';' || c == '\\')
                text += '\\';
            text += c;
        }
    };
    for (const core::Mark& mark : marks) {
        if (!text.empty())
            text += "; ";
        text += formatNumber(mark.at_s) + ' ';
        append(mark.word);
        if (!mark.words.empty()) {
            text += ' ';
            append(mark.words);
        }
    }
    return text;
}

} // namespace bothways::storage
