// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/live/weather.h"

#include "storage/sheet/run_columns.h"

#include <algorithm>

namespace bothways::app {
namespace {

const storage::NumberColumn* weatherColumn(std::string_view name)
{
    if (std::find(kWeatherColumns.begin(), kWeatherColumns.end(), name) == kWeatherColumns.end())
        return nullptr;
    const auto columns = storage::numberColumns();
    const auto column =
        std::find_if(columns.begin(), columns.end(),
                     [&](const storage::NumberColumn& one) { return one.name == name; });
    return column == columns.end() ? nullptr : &*column;
}

} // namespace

core::Outcome noteWeather(Weather& weather, std::string_view column, std::optional<double> value)
{
    const storage::NumberColumn* known = weatherColumn(column);
    if (known == nullptr)
        return core::Error{core::ErrorCode::badInput,
                           core::message("'{}' is no weather; expected temperature_c, wind_ms, "
                                         "wind_from_deg, pressure_hpa or humidity_pct"_t,
                                         column),
                           {}};
    if (value && !storage::isPossible(*known, *value)) {
        core::Place where;
        where.column = column;
        return core::Error{
            core::ErrorCode::badInput,
            core::message("expected {}##a number"_t, storage::expectedNumber(*known)), where};
    }
    const auto place = weather.find(column);
    if (value)
        weather.insert_or_assign(std::string(column), *value);
    else if (place != weather.end())
        weather.erase(place);
    return core::Done{};
}

void putWeather(core::Run& run, const Weather& weather)
{
    for (const auto& [name, value] : weather)
        if (const storage::NumberColumn* column = weatherColumn(name);
            column != nullptr && !(run.*column->field))
            run.*column->field = value;
}

} // namespace bothways::app
