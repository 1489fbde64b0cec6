// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/study/units.h"
#include "storage/sheet/column_names.h"
#include "storage/sheet/run_columns.h"

#include <algorithm>

namespace bothways::storage {
namespace {

using core::Message;

struct Listed {
    std::string_view name, unit, example;
};

/// In the order of a written sheet.
constexpr Listed kListed[] = {
    {"run", "", "7"},
    {"configuration", "", "A"},
    {"setting", "", "20"},
    {"direction", "", "out"},
    {"date", "", "2026-05-09"},
    {"start", "", "2026-05-09T05:40:00"},
    {"duration_s", "s", "213"},
    {"distance_km", "km", "5.2"},
    {"distance_mi", "mi", "3.23"},
    {"speed_kmh", "km/h", "88"},
    {"speed_mph", "mph", "55"},
    {"l_per_100km", "", "8.41"},
    {"mpg_us", "", "27.9"},
    {"mpg_imp", "", "33.5"},
    {"km_per_l", "", "11.9"},
    {"kwh_per_100km", "", "17.1"},
    {"fuel_l", "", "0.437"},
    {"fuel_gal_us", "", "0.115"},
    {"control", "", "7.62"},
    {"status", "", "discarded"},
    {"reason", "", "overspeed"},
    {"evidence", "", "3410 rpm beside a road train"},
    {"pair", "", "x"},
    {"marks", "", "31.2 passing_traffic lorry"},
    {"accessory_w", "W", "450"},
    {"accessories", "", "lights"},
    {"NAME_on_s", "s", "-518"},
    {"output_w", "W", "610"},
    {"rotor_rpm_max", "rpm", "3050"},
    {"battery_v_start", "V", "12.6"},
    {"battery_v_end", "V", "12.8"},
    {"wind_ms", "m/s", "1.4"},
    {"wind_from_deg", "°", "240"},
    {"temperature_c", "°C", "14.5"},
    {"pressure_hpa", "hPa", "1013"},
    {"humidity_pct", "%", "81"},
    {"trace", "", "run07.csv"},
    {"notes", "", "wet road"},
    {"consumption_source", "", "typed"},
    {"consumption_given", "", "28.1 mpg_us"},
};

Message unitOfListed(const Listed& listed)
{
    if (listed.name == "control")
        return "that of the consumption"_t;
    if (const auto unit = core::unitFromName(listed.name))
        return core::unitSign(*unit);
    return listed.unit.empty() ? Message() : Message::verbatim(std::string(listed.unit));
}

/// Words where a cell is no number.
Message wordsFor(std::string_view name)
{
    if (name == "run")
        return core::message("a whole number from 1 to {}, none twice"_t, kLargestRunNumber);
    if (name == "configuration")
        return "a name; two in a study"_t;
    if (name == "direction")
        return "a name; two in a study, the first is out"_t;
    if (name == "date")
        return "a day, where the start is a time of day"_t;
    if (name == "start")
        return "a date and time, or a time of day"_t;
    if (name == "status")
        return "counted or discarded; empty: counted"_t;
    if (name == "reason")
        return "of a discarded run: a rule's name, or other"_t;
    if (name == "evidence")
        return "of a discarded run: words"_t;
    if (name == "pair")
        return "the same mark on the two runs of a pair"_t;
    if (name == "marks")
        return "seconds and a word, between semicolons"_t;
    if (name == "trace")
        return "name of the run's recording, beside the sheet"_t;
    if (name == "NAME_on_s")
        return "when accessory NAME went on, from the run's start"_t;
    if (name == "consumption_source")
        return "typed or trace; empty: typed"_t;
    if (name == "consumption_given")
        return "as the run was noted, a number and a unit"_t;
    return "text##what a cell of a run sheet must be"_t;
}

Message rangeOf(std::string_view name)
{
    if (core::unitFromName(name))
        return "a number above 0"_t;
    for (const NumberColumn& column : numberColumns())
        if (column.name == name)
            return expectedNumber(column);
    return wordsFor(name);
}

template <class Each>
void eachPart(std::string_view list, const Each& each)
{
    while (!list.empty()) {
        const std::size_t bar = std::min(list.find('|'), list.size());
        each(list.substr(0, bar));
        list.remove_prefix(std::min(bar + 1, list.size()));
    }
}

/// Names as they may stand in a header, the unit in brackets where one is needed.
std::vector<std::string> namesOf(std::string_view column)
{
    std::vector<std::string> names;
    const auto add = [&](std::string name) {
        const bool known = std::find(names.begin(), names.end(), name) != names.end();
        if (!known && canonicalColumn(name) != column)
            names.push_back(std::move(name));
    };
    for (const Quantity& quantity : quantities()) {
        std::vector<std::string_view> units;
        for (const UnitForm& form : quantity.units)
            if (form.column == column) {
                units.push_back(form.units.substr(0, form.units.find('|')));
                if (form.alone)
                    add(std::string(units.back()));
            }
        const bool bare = quantity.without == column;
        if (!bare && units.empty())
            continue;
        for (const std::string_view list :
             {quantity.english, quantity.german, quantity.french, quantity.spanish})
            eachPart(list, [&](std::string_view name) {
                if (bare)
                    return add(std::string(name));
                add(std::string(name) + " (" + std::string(units.front()) + ")");
            });
        for (std::size_t i = 1; i < units.size() && !bare; ++i)
            add(std::string(quantity.english.substr(0, quantity.english.find('|'))) + " (" +
                std::string(units[i]) + ")");
    }
    return names;
}

} // namespace

std::vector<ColumnInfo> allColumns()
{
    std::vector<ColumnInfo> columns;
    for (const Listed& listed : kListed)
        columns.push_back({std::string(listed.name), unitOfListed(listed), rangeOf(listed.name),
                           std::string(listed.example), namesOf(listed.name)});
    return columns;
}

} // namespace bothways::storage
