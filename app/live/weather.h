// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/study/study.h"

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>

/// The weather that is asked for once a block. It goes into the run that is driven next, and into
/// no other: nothing is noted that nobody saw.
namespace bothways::app {

inline constexpr std::array<std::string_view, 5> kWeatherColumns = {
    "temperature_c", "wind_ms", "wind_from_deg", "pressure_hpa", "humidity_pct"};

/// A run's column -> what was read; without what was not.
using Weather = std::map<std::string, double, std::less<>>;

/// Takes a value in; nothing takes the column out.
/// @return  an Error (badInput) where there is no such column, or the value cannot be
[[nodiscard]] core::Outcome noteWeather(Weather& weather, std::string_view column,
                                        std::optional<double> value);
/// Into the run's columns, but for those that it has.
void putWeather(core::Run& run, const Weather& weather);

} // namespace bothways::app
