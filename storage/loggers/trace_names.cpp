// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/loggers/trace_names.h"

#include "core/study/parts.h"
#include "core/study/study.h"
#include "storage/bytes/csv.h"

#include <fast_float/fast_float.h>

#include <algorithm>
#include <map>

namespace bothways::storage {

TimeName timeName(std::string_view header, std::string_view unit)
{
    static const std::map<std::string_view, TimeName> names = {
        {"time_s", TimeName::seconds},
        {"t_s", TimeName::seconds},
        {"elapsed_s", TimeName::seconds},
        {"seconds", TimeName::seconds},
        {"time_sec", TimeName::seconds},
        {"time_ms", TimeName::milliseconds},
        {"t_ms", TimeName::milliseconds},
        {"elapsed_ms", TimeName::milliseconds},
        {"milliseconds", TimeName::milliseconds},
        {"millis", TimeName::milliseconds},
        {"time_us", TimeName::microseconds},
        {"t_us", TimeName::microseconds},
        {"microseconds", TimeName::microseconds},
        {"micros", TimeName::microseconds},
        {"time", TimeName::clock},
        {"timestamp", TimeName::clock},
        {"date_time", TimeName::clock},
        {"datetime", TimeName::clock},
        {"time_utc", TimeName::clock},
        {"time_of_day", TimeName::clock},
        {"elapsed_time", TimeName::clock},
        {"t", TimeName::clock},
        {"date", TimeName::date},
    };
    const auto found = names.find(plainName(header));
    if (found == names.end())
        return TimeName::none;
    if (found->second == TimeName::clock) {
        if (unit == "ms")
            return TimeName::milliseconds;
        if (unit == "us" || unit == "\u00b5s" || unit == "\u03bcs")
            return TimeName::microseconds;
        if (unit == "s" || unit == "sec")
            return TimeName::seconds;
    }
    return found->second;
}

std::string plainName(std::string_view header)
{
    std::string name;
    for (const char c : header.substr(0, header.find_first_of("[(")))
        name += c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c == ' ' ? '_' : c;
    while (!name.empty() && name.back() == '_')
        name.pop_back();
    return name;
}

std::string bracketUnit(std::string_view header)
{
    const std::size_t open = header.find_first_of("[(");
    if (open == std::string_view::npos)
        return {};
    const std::size_t close = header.find(header[open] == '[' ? ']' : ')', open);
    if (close == std::string_view::npos)
        return {};
    return std::string(csv::trimmed(header.substr(open + 1, close - open - 1)));
}

std::string_view channelUnit(std::string_view channel)
{
    static const std::map<std::string_view, std::string_view> units = {
        {"road_speed_kmh", "km/h"}, {"distance_m", "m"},        {"lat_deg", "°"},
        {"lon_deg", "°"},           {"altitude_m", "m"},        {"fuel_rate_l_per_h", "L/h"},
        {"fuel_used_l", "L"},       {"energy_used_kwh", "kWh"}, {"power_kw", "kW"},
        {"accessory_w", "W"},       {"output_w", "W"},          {"rotor_rpm", "rpm"},
        {"generator_rpm", "rpm"},   {"setting", "°"},           {"setting_set", "°"},
        {"vibration_ms2", "m/s²"},  {"wind_ms", "m/s"},         {"yaw_deg_per_s", "°/s"},
        {"battery_v", "V"},
    };
    // A part of the device has the same quantity: "rotor_rpm@left".
    const auto found = units.find(core::partedName(channel).base);
    return found == units.end() ? std::string_view() : found->second;
}

const ChannelMapping* mappingOf(const std::vector<ChannelMapping>& mapping, std::string_view header)
{
    for (const ChannelMapping& column : mapping)
        if (column.column == header)
            return &column;
    for (const ChannelMapping& column : mapping)
        if (core::sameWord(column.column, header))
            return &column;
    return nullptr;
}

bool isNumber(std::string_view cell, bool decimalComma)
{
    std::string text(cell);
    if (decimalComma)
        std::replace(text.begin(), text.end(), ',', '.');
    if (!text.empty() && text.front() == '+')
        text.erase(0, 1);
    double value = 0.0;
    const auto [end, problem] =
        fast_float::from_chars(text.data(), text.data() + text.size(), value);
    return problem == std::errc() && end == text.data() + text.size();
}

core::Error faultAt(std::string_view name, std::int64_t line, core::Message message)
{
    core::Place where{std::string(name)};
    where.line = line;
    return core::Error{core::ErrorCode::badInput, std::move(message), std::move(where)};
}

} // namespace bothways::storage
