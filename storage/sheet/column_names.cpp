// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/sheet/column_names.h"

#include "core/base/utf8.h"
#include "core/study/units.h"
#include "storage/bytes/csv.h"
#include "storage/sheet/run_columns.h"

#include <algorithm>
#include <array>
#include <unordered_map>

namespace bothways::storage {
namespace {

/// The letters of European languages without their accents; empty for what is none of them.
std::string_view withoutAccent(char32_t letter)
{
    constexpr std::array<std::pair<std::u32string_view, std::string_view>, 11> kLetters = {{
        {U"àáâãäåÀÁÂÃÄÅ", "a"},
        {U"èéêëÈÉÊË", "e"},
        {U"ìíîïÌÍÎÏ", "i"},
        {U"òóôõöøÒÓÔÕÖØ", "o"},
        {U"ùúûüÙÚÛÜ", "u"},
        {U"ñÑ", "n"},
        {U"çÇ", "c"},
        {U"ß", "ss"},
        {U"œŒ", "oe"},
        {U"æÆ", "ae"},
        {U"ýÿÝ", "y"},
    }};
    for (const auto& [letters, plain] : kLetters)
        if (letters.find(letter) != std::u32string_view::npos)
            return plain;
    return {};
}

bool isPlain(char32_t c)
{
    return (c >= U'a' && c <= U'z') || (c >= U'0' && c <= U'9');
}

/// Small letters without accents; what `keep` has stays, other signs become `other`.
std::string folded(std::string_view text, std::string_view keep, std::string_view other)
{
    std::string result;
    while (!text.empty()) {
        const core::CodePoint point = core::firstCodePoint(text);
        if (point.bytes == 0)
            return result;
        char32_t c = point.value;
        if (c >= U'A' && c <= U'Z')
            c += U'a' - U'A';
        if (c == U'º' || c == U'°')
            result += keep.empty() ? "" : "°";
        else if (isPlain(c) || (c < 0x80 && keep.find(static_cast<char>(c)) != keep.npos))
            result += static_cast<char>(c);
        else if (const std::string_view plain = withoutAccent(c); !plain.empty())
            result += plain;
        else
            result += other;
        text.remove_prefix(point.bytes);
    }
    return result;
}

std::string foldedUnit(std::string_view unit)
{
    return folded(unit, "/%():-+", "");
}

/// "distance|length" one by one.
template <class Each>
void eachOf(std::string_view list, const Each& each)
{
    while (!list.empty()) {
        const std::size_t bar = std::min(list.find('|'), list.size());
        each(list.substr(0, bar));
        list.remove_prefix(std::min(bar + 1, list.size()));
    }
}

template <class Each>
void eachName(const Quantity& quantity, const Each& each)
{
    for (const std::string_view list :
         {quantity.english, quantity.german, quantity.french, quantity.spanish})
        eachOf(list, each);
}

/// The table, found by what people write.
struct NameIndex {
    std::unordered_map<std::string, std::vector<const Quantity*>> names;
    std::unordered_map<std::string, std::vector<std::pair<const Quantity*, const UnitForm*>>> units;

    NameIndex()
    {
        for (const Quantity& quantity : quantities()) {
            eachName(quantity, [&](std::string_view name) {
                auto& known = names[foldedName(name)];
                if (std::find(known.begin(), known.end(), &quantity) == known.end())
                    known.push_back(&quantity);
            });
            for (const UnitForm& form : quantity.units)
                eachOf(form.units, [&](std::string_view unit) {
                    units[foldedUnit(unit)].emplace_back(&quantity, &form);
                });
        }
    }
    static const NameIndex& get()
    {
        static const NameIndex index;
        return index;
    }
    [[nodiscard]] const UnitForm* unitOf(const Quantity& quantity, const std::string& unit) const
    {
        const auto found = units.find(unit);
        if (found == units.end())
            return nullptr;
        for (const auto& [of, form] : found->second)
            if (of == &quantity)
                return form;
        return nullptr;
    }
    /// A unit that says by itself what is meant; one letter is too little.
    [[nodiscard]] const UnitForm* aloneAs(const std::string& unit) const
    {
        const auto found = units.find(unit);
        if (found == units.end() || unit.size() < 2)
            return nullptr;
        for (const auto& [of, form] : found->second)
            if (form->alone)
                return form;
        return nullptr;
    }
};

ColumnMeaning meaningBy(const UnitForm& form, std::string_view unit)
{
    ColumnMeaning meaning;
    meaning.column = form.column;
    meaning.before = form.before;
    meaning.times = form.times;
    meaning.by = form.by;
    meaning.unit = unit;
    return meaning;
}

ColumnMeaning unclear(const std::vector<const Quantity*>& known, const std::string& unit)
{
    ColumnMeaning meaning;
    const auto add = [&](std::string_view column) {
        auto& list = meaning.candidates;
        if (std::find(list.begin(), list.end(), column) == list.end())
            list.push_back(column);
    };
    if (unit == "mpg") {
        add("mpg_us");
        add("mpg_imp");
        return meaning;
    }
    for (const Quantity* quantity : known)
        for (const UnitForm& form : quantity->units)
            add(form.column);
    return meaning;
}

/// @param unit  folded; empty: none is said
/// @param loose  what is said beside the name may be no unit: "Start (local time)"
std::optional<ColumnMeaning> byNameAndUnit(std::string_view name, std::string_view unit, bool loose)
{
    const NameIndex& index = NameIndex::get();
    const auto found = index.names.find(foldedName(name));
    if (found == index.names.end())
        return std::nullopt;
    const std::string asUnit = foldedUnit(unit);
    for (const Quantity* quantity : found->second)
        if (const UnitForm* form = index.unitOf(*quantity, asUnit))
            return meaningBy(*form, unit);
    if (!asUnit.empty() && !loose)
        return std::nullopt;
    for (const Quantity* quantity : found->second) {
        const bool takes =
            !quantity->without.empty() && (asUnit.empty() || quantity->units.empty());
        if (!takes)
            continue;
        ColumnMeaning meaning;
        meaning.column = quantity->without;
        return meaning;
    }
    return unclear(found->second, asUnit);
}

/// "Ø-Verbrauch", "Average temp": the name without the word that says how it was measured.
std::string withoutMean(std::string_view name)
{
    static constexpr std::array<std::string_view, 17> kMeans = {"o",          "avg",
                                                                "average",    "mean",
                                                                "measured",   "durchschnittlicher",
                                                                "gemessener", "durchschnittliche",
                                                                "mittlerer",  "mittlere",
                                                                "gemessene",  "moyen",
                                                                "moyenne",    "mesuree",
                                                                "medio",      "media",
                                                                "promedio"};
    const std::string folded = foldedName(name);
    for (const std::string_view mean : kMeans) {
        if (folded.size() <= mean.size() + 1)
            continue;
        const std::size_t rest = folded.size() - mean.size();
        if (folded.starts_with(mean) && folded[mean.size()] == ' ')
            return folded.substr(mean.size() + 1);
        if (mean.size() > 1 && folded.ends_with(mean) && folded[rest - 1] == ' ')
            return folded.substr(0, rest - 1);
    }
    return {};
}

/// What is left to go by where the table knows no such name.
std::optional<ColumnMeaning> guessed(std::string_view name, std::string_view unit)
{
    std::optional<ColumnMeaning> meaning;
    if (const std::string plain = withoutMean(name); !plain.empty())
        meaning = byNameAndUnit(plain, unit, true);
    // "Display (L/100 km)": no other quantity has such a unit.
    const UnitForm* form = NameIndex::get().aloneAs(foldedUnit(unit));
    if (!meaning && form && core::unitFromName(form->column))
        meaning = meaningBy(*form, unit);
    if (meaning)
        meaning->guessed = true;
    return meaning;
}

/// "Speed in km/h", "Strecke/km", "Fuel l": name and unit with nothing but a sign between them.
std::optional<ColumnMeaning> bySplitting(std::string_view written)
{
    for (std::size_t at = written.find_first_of(" ,;:_/"); at != std::string_view::npos;
         at = written.find_first_of(" ,;:_/", at + 1)) {
        std::string_view unit = csv::trimmed(written.substr(at + 1));
        for (const std::string_view word : {"in ", "en ", "/ ", "- "})
            if (unit.starts_with(word))
                unit = csv::trimmed(unit.substr(word.size()));
        if (unit.empty())
            continue;
        if (auto meaning = byNameAndUnit(written.substr(0, at), unit, false);
            meaning && meaning->known())
            return meaning;
    }
    return std::nullopt;
}

std::string onOneLine(std::string_view header)
{
    std::string text(header);
    for (std::size_t at = text.find("\xC2\xA0"); at != text.npos; at = text.find("\xC2\xA0"))
        text.replace(at, 2, " ");
    for (char& c : text)
        if (c == '\n' || c == '\r' || c == '\t')
            c = ' ';
    return std::string(csv::trimmed(text));
}

} // namespace

std::string foldedName(std::string_view name)
{
    std::string text = folded(name, "#", " ");
    std::string result;
    for (const char c : text)
        if (c != ' ' || (!result.empty() && result.back() != ' '))
            result += c;
    if (!result.empty() && result.back() == ' ')
        result.pop_back();
    return result;
}

ColumnMeaning meaningOf(std::string_view header, std::string_view unit)
{
    const std::string written = onOneLine(header);
    ColumnMeaning meaning;
    if (written.empty())
        return meaning;
    const std::string canonical = canonicalColumn(written);
    if (isKnownColumn(canonical) || canonical == kDateColumn) {
        meaning.column = canonical;
        return meaning;
    }
    const NameIndex& index = NameIndex::get();
    if (const UnitForm* form = index.aloneAs(foldedUnit(written)))
        return meaningBy(*form, written);
    const std::size_t open = written.find_first_of("([{");
    const std::size_t close = written.find_last_of(")]}");
    if (open != std::string::npos && close != std::string::npos && open < close) {
        const std::string inside = written.substr(open + 1, close - open - 1);
        const std::string name = written.substr(0, open) + " " + written.substr(close + 1);
        if (foldedName(name).empty()) {
            if (const UnitForm* form = index.aloneAs(foldedUnit(inside)))
                return meaningBy(*form, inside);
            return meaning;
        }
        if (const auto found = byNameAndUnit(name, inside, true))
            return *found;
        if (const auto found = guessed(name, inside))
            return *found;
    }
    if (!unit.empty()) {
        const std::string line = std::string(csv::trimmed(unit));
        const bool bracket = line.size() > 2 && (line[0] == '[' || line[0] == '(');
        const std::string inside = bracket ? line.substr(1, line.size() - 2) : line;
        if (const auto found = byNameAndUnit(written, inside, true))
            return *found;
        if (const auto found = guessed(written, inside))
            return *found;
    }
    if (const auto found = byNameAndUnit(written, {}, true))
        return *found;
    if (const auto found = bySplitting(written))
        return *found;
    if (const auto found = guessed(written, {}))
        return *found;
    return meaning;
}

bool isUnitText(std::string_view text)
{
    const std::string unit = foldedUnit(text);
    if (unit.empty() || unit == "-" || unit == "()")
        return true;
    const bool bracket = unit.size() > 2 && unit.front() == '(' && unit.back() == ')';
    const NameIndex& index = NameIndex::get();
    return index.units.contains(unit) ||
           (bracket && index.units.contains(unit.substr(1, unit.size() - 2)));
}

} // namespace bothways::storage
